"""Direct current up the coax: resistances of cables against a published table, and what the network makes of them."""

import pytest

from jointwise.calc.catalogue import catalogue
from jointwise.calc.formulas import direct_current
from jointwise.calc.physics.cable_heat import cable_path
from jointwise.calc.physics.cable_ratings import bare_cable_ratings
from jointwise.calc.physics.direct_current import allowed_current, drop_v_per_m
from jointwise.calc.physics.scenario import Scenario
from jointwise.calc.physics.station import station_of

# "Grunddämpfung verschiedener Koaxialkabel", a table of cable data on a hobby page, undated, as quoted:
# inner and outer conductor [Ω/km]. The tolerance is that of the law of Wiedemann and Franz.
RESISTANCES = [("rg_58", 39, 13.5), ("rg_213", 6, 4.1), ("rg_174", 300, 38)]
LAW = 0.11


@pytest.mark.parametrize(("cable", "inner", "outer"), RESISTANCES, ids=[row[0] for row in RESISTANCES])
def test_resistances_of_cables_are_those_published(cable, inner, outer):
    """Metal and section of the catalogue have the direct-current resistance printed, there and back."""
    ratings = bare_cable_ratings(cable, "low")

    in_km, out_km = (
        1e3 * direct_current.conductor_resistance(20.0, *metal)
        for metal in (
            (ratings.inner_thermal_conductivity, ratings.inner_area_m2),
            (ratings.screen_thermal_conductivity, ratings.screen_area_m2),
        )
    )

    assert in_km == pytest.approx(inner, rel=LAW)
    assert out_km == pytest.approx(outer, rel=LAW)
    assert drop_v_per_m(cable, 3.0) == pytest.approx(3e-3 * (inner + outer), rel=LAW)


def test_copper_of_a_square_millimetre_has_its_handbook_resistance():
    """1/58 Ω for a metre of a square millimetre at 20 °C, IEC 60028, from memory."""
    ohm = direct_current.conductor_resistance(20.0, 398.0, 1e-6)

    assert ohm == pytest.approx(1 / 58, rel=0.05)


def test_a_current_heats_what_its_square_says():
    """Half the allowed current leaves three quarters of the power's heat; a tenth of the voltage 81 %."""
    assert direct_current.heat_share_left(5.0, 10.0) == pytest.approx(0.75)
    assert direct_current.voltage_share_left(10.0, 100.0) == pytest.approx(0.81)
    assert direct_current.heat_share_left(11.0, 10.0) == 0


@pytest.mark.parametrize("cable", ["rg_174", "rg_58", "rg_213"])
def test_a_cable_far_away_stands_what_its_own_layers_say(cable):
    """The current whose heat, by hand through insulation, jacket and film, reaches the allowed temperature."""
    station, ratings = station_of(Scenario(cable=cable)), bare_cable_ratings(cable, "low")
    path, hot = cable_path(ratings, station), ratings.highest_temperature_c
    inner = direct_current.conductor_resistance(hot, ratings.inner_thermal_conductivity, ratings.inner_area_m2)
    outer = direct_current.conductor_resistance(hot, ratings.screen_thermal_conductivity, ratings.screen_area_m2)
    amperes = float(allowed_current(["n"], station).cable_a[0, 0])

    rise = amperes**2 * ((inner + outer) * (path.to_air + path.jacket) + inner * path.insulation)

    assert station.ambient_temperature_c + rise == pytest.approx(hot)


def test_the_contact_decides_only_where_it_is_worse_than_its_cable():
    """No family stands more than its cable; a UHF contact of the worst resistance stands less than N's."""
    families = list(catalogue().interfaces)

    found = allowed_current(families, station_of(Scenario(cable="rg_213")))

    assert (found.contact_a <= found.cable_a * (1 + 1e-12)).all()
    assert found.contact_a[0, families.index("uhf")] < found.contact_a[0, families.index("n")]
    assert (found.contact_a[0] <= found.contact_a[1]).all()
