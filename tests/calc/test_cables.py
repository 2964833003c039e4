"""The cables hold together: data of every one, impedance against capacitance, the fit, size and loss, ratings."""

import math
from itertools import combinations

import msgspec
import numpy as np
import pytest

from jointwise.calc.catalogue import catalogue
from jointwise.calc.catalogue.schema import Attenuation, Interval, Label, Quantity
from jointwise.calc.datasheets.datasheets import datasheets
from jointwise.calc.datasheets.requests import CatalogueRequest
from jointwise.calc.fitout.pairs import screen_of
from jointwise.calc.formulas.constants import C_0
from jointwise.calc.formulas.line import cable_attenuation
from jointwise.calc.physics.cable_fit import attenuation_coefficients
from jointwise.calc.physics.cable_table import cable_ratings, table_of_cable_ratings
from jointwise.calc.physics.evidence import UNDOCUMENTED

CABLES = catalogue().cables
PROMISED = {
    *("rg_58", "rg_59", "rg_6", "rg_8x", "rg_142", "rg_174", "rg_178", "rg_213", "rg_214", "rg_223"),
    *("rg_316", "rg_400", "rg_402", "rg_405", "foam_6_mm", "foam_10_mm", "foam_15_mm", "corrugated_7_8"),
    *("rg_8", "rg_11", "rg_188", "rg_217", "rg_303", "rg_393", "foam_5_mm", "foam_7_mm", "foam_10_mm_stranded"),
    "corrugated_1_2",
}
CLAD = ["rg_6", "rg_59", "rg_174", "rg_178"]
FITS_WELL = 0.06
IMPEDANCE_AGREES = 0.05  # printed to whole pF/ft and two digits of velocity: 3 % together, 2 Ω of tolerance beside
BIGGER = 1.1  # below this ratio of cores the braids decide, not the size
LEAST_FITTED = 4
MANY_POINTS = 6
SAME_HEAT = 0.2  # ratings rounded to two digits or one, of sheets that differ


def fit(cable):
    """The fitted law of a cable."""
    return attenuation_coefficients(CABLES[cable].attenuation)


def loss(cable, frequency_hz):
    """Fitted attenuation at 20 °C [dB/m]."""
    law = fit(cable)
    return cable_attenuation(law.k1, 1.0, frequency_hz, law.k2)


def points(*pairs):
    """Made-up figures of frequency and dB/m."""
    return [Attenuation(frequency, value, "memory", "memory") for frequency, value in pairs]


def test_all_cables_are_there():
    """The catalogue holds the cables it promises, in one order without a tie."""
    orders = [cable.order for cable in CABLES.values()]

    assert set(CABLES) >= PROMISED
    assert orders == sorted(set(orders))


@pytest.mark.parametrize("cable", CABLES)
def test_every_number_is_sensible(cable):
    """A cable's numbers are positive but for temperatures, its temperatures and voltages in order."""
    entry = CABLES[cable]
    values = {name: getattr(entry, name) for name in entry.__struct_fields__ if not name.endswith("_c")}

    assert all(one.value > 0 for one in values.values() if isinstance(one, Quantity))
    assert all(0 < one.low.value <= one.high.value for one in values.values() if isinstance(one, Interval))
    assert entry.velocity_factor.value < 1
    assert entry.lowest_temperature_c.value < entry.attenuation_temperature_c.value < entry.highest_temperature_c.value


@pytest.mark.parametrize("cable", CABLES)
def test_impedance_agrees_with_capacitance_and_velocity(cable):
    """A cable's impedance is 1/(C v) within the digits that capacitance and velocity are printed to."""
    entry = CABLES[cable]
    velocity = entry.velocity_factor.value * C_0

    assert 1 / (entry.capacitance_f_per_m.value * velocity) == pytest.approx(
        entry.impedance_ohm.value, rel=IMPEDANCE_AGREES
    )


@pytest.mark.parametrize("cable", CABLES)
def test_the_law_fits_the_figures_or_says_why_not(cable):
    """A cable's law meets every figure it was fitted to within 6 %, or the entry says why it does not."""
    law = fit(cable)

    assert law.residual < FITS_WELL or CABLES[cable].fit_note
    assert law.k1 > 0
    assert law.k2 >= 0


@pytest.mark.parametrize("cable", CABLES)
def test_enough_figures_are_fitted_and_enough_held_out(cable):
    """A cable has four fitted figures or more, and of six or more figures a third has no part in the fit."""
    figures = CABLES[cable].attenuation
    held = [figure for figure in figures if not figure.fit]

    assert len(figures) - len(held) >= LEAST_FITTED
    assert len(figures) < MANY_POINTS or len(held) >= len(figures) // 3


@pytest.mark.parametrize("cable", CABLES)
def test_figures_rise_with_frequency_in_order(cable):
    """A cable's figures are listed by frequency, and those fitted rise with it."""
    figures = CABLES[cable].attenuation
    fitted = [figure.db_per_m for figure in figures if figure.fit]

    assert [figure.frequency_hz for figure in figures] == sorted(figure.frequency_hz for figure in figures)
    assert fitted == sorted(set(fitted))


@pytest.mark.parametrize("cable", CABLES)
def test_loss_rises_with_frequency(cable):
    """A cable's fitted loss rises with frequency all over its range."""
    law = fit(cable)
    losses = loss(cable, np.geomspace(law.f_low, law.f_high, 101))

    assert (np.diff(losses) > 0).all()


def whole_law(cable, frequency_hz):
    """Attenuation at 20 °C [dB/m] by all published figures, at one frequency or many."""
    ratings = cable_ratings(cable, "low")
    return cable_attenuation(ratings.conductor_coefficient(frequency_hz), 1.0, frequency_hz, ratings.k_2)


@pytest.mark.parametrize("cable", CLAD)
def test_the_law_of_a_clad_core_goes_through_its_low_figures(cable):
    """Below the fitted figures the loss is each published one, and runs into the fitted law without a step."""
    through = [figure for figure in CABLES[cable].attenuation if figure.through]
    begins = fit(cable).f_low

    assert through
    for figure in through:
        assert whole_law(cable, figure.frequency_hz) == pytest.approx(figure.db_per_m, rel=1e-12)
    assert whole_law(cable, begins * (1 - 1e-9)) == pytest.approx(loss(cable, begins), rel=1e-8)


@pytest.mark.parametrize("cable", CABLES)
def test_the_whole_law_rises_with_frequency(cable):
    """From 100 kHz to its highest figure a cable's loss rises with frequency, no faster than in proportion."""
    f = np.geomspace(1e5, fit(cable).f_high, 2001)
    losses = whole_law(cable, f)

    assert (np.diff(losses) > 0).all()
    assert (np.diff(losses / f) <= 1e-12 * losses[0] / f[0]).all()


@pytest.mark.parametrize("cable", CABLES)
def test_a_cable_in_a_table_has_the_law_it_has_alone(cable):
    """At one frequency, at many and among other cables the coefficient of a cable is the same."""
    f = np.geomspace(1e5, 1e9, 41)
    alone = np.broadcast_to(cable_ratings(cable, "low").conductor_coefficient(f), f.shape)
    table = table_of_cable_ratings(["rg_213", cable, "rg_6"], "low").conductor_coefficient(f)

    assert np.array_equal(table[1], alone)
    one_by_one = [cable_ratings(cable, "low").conductor_coefficient(one) for one in f.tolist()]
    assert alone == pytest.approx(one_by_one, rel=1e-14)


def foil(cable):
    """Whether the screen closes all round, by foil or tube, where a braid alone leaves gaps."""
    return screen_of(cable).id not in {"braid", "two_braids", "two_bare_braids"}


@pytest.mark.parametrize("frequency_hz", [60e6, 150e6, 440e6])
def test_a_bigger_cable_loses_less(frequency_hz):
    """Of two cables of like build, insulation and impedance, the one with a core a tenth or more thicker loses less."""
    compared = 0
    for one, other in combinations(CABLES.values(), 2):
        kinds = [
            (it.dielectric, it.impedance_ohm.value, it.construction == "semi-rigid", foil(it)) for it in (one, other)
        ]
        if kinds[0] != kinds[1]:
            continue
        thin, thick = sorted((one, other), key=lambda cable: cable.build.dielectric_diameter_m.value)
        if thick.build.dielectric_diameter_m.value >= BIGGER * thin.build.dielectric_diameter_m.value:
            compared += 1
            assert loss(thick.id, frequency_hz) < loss(thin.id, frequency_hz), (thin.id, thick.id)
    assert compared > len(CABLES)


@pytest.mark.parametrize("cable", CABLES)
def test_ratings_leave_room_for_heat(cable):
    """A cable's rated conductor is hotter than its air."""
    for rating in CABLES[cable].power:
        assert rating.ambient_temperature_c < rating.conductor_temperature_c


@pytest.mark.parametrize("cable", CABLES)
def test_figures_of_one_source_make_constant_heat(cable):
    """A cable's powers of one source, at one basis, make the same heat per metre at all their frequencies."""
    heat = {}
    for rating in CABLES[cable].power:
        basis = rating.source, rating.kind, rating.conductor_temperature_c
        if rating.kind not in UNDOCUMENTED:
            heat.setdefault(basis, []).append(rating.power_w * loss(cable, rating.frequency_hz))

    for figures in heat.values():
        assert len(figures) < 3 or max(figures) <= (1 + SAME_HEAT) * min(figures)


@pytest.mark.parametrize("cable", CABLES)
def test_the_layers_lie_one_around_the_other(cable):
    """Inner conductor, insulation, screen and jacket, each around the one before; no more metal than its ring holds."""
    entry = CABLES[cable]
    build = entry.build
    inner, insulation, screen, outer = (
        *(build.inner_diameter_m.value, build.dielectric_diameter_m.value, build.screen_diameter_m.value),
        entry.outer_diameter_m.value,
    )

    assert inner < insulation < screen <= outer
    assert (screen == outer) == (build.jacket_material is None)
    assert build.inner_area_m2.value <= math.pi / 4 * inner**2 * 1.01
    assert build.screen_area_m2.value <= math.pi / 4 * (screen**2 - insulation**2) * 1.01


@pytest.mark.parametrize("cable", CABLES)
def test_impedance_follows_from_the_layers(cable):
    """59.96 Ω times velocity factor and the logarithm of diameters is the cable's impedance, within 15 %.

    Stranded conductors and braids are less than their envelopes, so it comes out below rather than above.
    """
    entry = CABLES[cable]
    ratio = entry.build.dielectric_diameter_m.value / entry.build.inner_diameter_m.value

    computed = 59.96 * entry.velocity_factor.value * math.log(ratio)

    assert computed == pytest.approx(entry.impedance_ohm.value, rel=0.15)


@pytest.mark.parametrize("cable", CABLES)
def test_a_repeated_bend_is_no_tighter_than_a_fixed_one(cable):
    """A cable bent again and again needs the larger radius; a semi-rigid one is bent once only."""
    entry = CABLES[cable]

    if entry.construction == "semi-rigid":
        assert entry.repeated_bend_radius_m is None
    else:
        assert entry.fixed_bend_radius_m.value < entry.repeated_bend_radius_m.value
    assert entry.fixed_bend_radius_m.value >= entry.outer_diameter_m.value


@pytest.mark.parametrize("cable", CABLES)
def test_the_answer_shows_every_field_and_the_law(cable):
    """The catalogue's answer shows all sourced fields of a cable and the law fitted to its figures."""
    sheet = next(one for one in datasheets(CatalogueRequest()).cables if one.id == cable)
    entry, law = CABLES[cable], fit(cable)
    sourced = {
        field
        for part in (entry, entry.build)
        for field in part.__struct_fields__
        if isinstance(getattr(part, field), (Quantity, Interval, Label))
    }

    assert {value.field for value in sheet.values} == sourced
    assert (sheet.k1_db_per_m_sqrt_hz, sheet.k2_db_per_m_hz, sheet.residual) == law[:3]
    assert (sheet.law_low_hz, sheet.fit_low_hz, sheet.fit_high_hz) == (law.lowest, law.f_low, law.f_high)


@pytest.mark.parametrize(("k1", "k2"), [(1e-5, 2e-10), (1e-5, 0.0), (0.0, 2e-10)])
def test_the_fit_finds_the_law_again(k1, k2):
    """Figures made by the law give its coefficients back, to rounding."""
    made = [(f, k1 * f**0.5 + k2 * f) for f in (1e6, 30e6, 432e6, 10e9)]

    law = attenuation_coefficients(points(*made))

    assert law.k1 == pytest.approx(k1, rel=1e-9, abs=1e-18)
    assert law.k2 == pytest.approx(k2, rel=1e-9, abs=1e-23)
    assert law.residual < 1e-9
    assert law[3:] == (1e6, 10e9, ())


def test_no_coefficient_falls_below_zero():
    """Figures that rise more slowly than the root get no dielectric loss, more steeply than f no conductor loss."""
    slow = attenuation_coefficients(points((1e6, 0.01), (1e8, 0.05)))
    steep = attenuation_coefficients(points((1e6, 0.01), (1e8, 5.0)))

    assert (slow.k2, steep.k1) == (0.0, 0.0)
    assert slow.k1 > 0
    assert steep.k2 > 0


def test_the_largest_error_is_told():
    """The residual is the largest relative error of the fitted figures."""
    made = points((1e6, 0.01), (1e7, 0.035), (1e8, 0.1))

    law = attenuation_coefficients(made)
    errors = [abs(cable_attenuation(law.k1, 1.0, p.frequency_hz, law.k2) / p.db_per_m - 1) for p in made]

    assert law.residual == pytest.approx(max(errors), rel=1e-12)


def test_a_figure_held_out_has_no_say():
    """A figure held out changes neither the law nor its range."""
    made = points((1e6, 0.01), (1e8, 0.12))
    stray = msgspec.structs.replace(points((1e9, 9.0))[0], fit=False)

    assert attenuation_coefficients([*made, stray]) == attenuation_coefficients(made)


@pytest.mark.parametrize("pairs", [[], [(1e6, 0.01)], [(1e6, 0.01), (1e6, 0.02)]])
def test_one_frequency_is_refused(pairs):
    """Figures at fewer than two frequencies can't give two coefficients, and the message says so."""
    with pytest.raises(ValueError, match="two frequencies or more"):
        attenuation_coefficients(points(*pairs))
