"""The recorded steps of a derivation are the calls that made its number."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scenarios import BANDS, FAMILIES, STATIONS, examples

import jointwise.calc.formulas  # noqa: F401  (registers every formula)
from jointwise.calc.catalogue import catalogue
from jointwise.calc.cell.cell import cell
from jointwise.calc.cell.requests import CellRequest
from jointwise.calc.formulas.formula import FORMULAS

CELLS = st.builds(
    lambda station, family, band, watts: cell(CellRequest(**station, family=family, band=band, power_w=watts)),
    STATIONS,
    st.sampled_from(FAMILIES),
    st.sampled_from(BANDS),
    st.one_of(st.just(0.0), st.floats(0.01, 100_000)),
)


def all_steps(result):
    """Every recorded step of a cell: of its limits, its match and the air gap."""
    limits = [step for limit in result.limits for step in limit.steps]
    return limits + result.match.steps + result.air_breakdown


def at_end(steps, formula, end):
    """The calls of a formula at one end of the ratings, in order."""
    return [step for step in steps if step.formula == formula and step.end == end]


def last(steps, formula, end):
    """The last call of a formula at one end of the ratings."""
    return at_end(steps, formula, end)[-1]


def put_in(step, symbol):
    """The number that was put in for a letter."""
    return next(value.value for value in step.inputs if value.symbol == symbol)


@examples(50)
@given(result=CELLS)
def test_a_step_recomputes(result):
    """Each step's inputs, put into its formula, give its result."""
    for step in all_steps(result):
        again = FORMULAS[step.formula].function(*(value.value for value in step.inputs))
        assert step.result.value == pytest.approx(float(again), rel=1e-13, abs=1e-300), step.formula


@examples(50)
@given(result=CELLS)
def test_a_step_that_decides_lies_in_the_range_of_its_formula(result):
    """What the limits and the match of a cell that no gate refuses put into a formula, its declaration allows."""
    for part in (*result.limits, result.match) if result.refused_by is None else ():
        for step in part.steps:
            put_in = {value.symbol: value.value for value in step.inputs}
            assert FORMULAS[step.formula].allows(*put_in.values()), (step.formula, put_in)


@examples(50)
@given(result=CELLS)
def test_a_step_names_the_letters_of_its_formula(result):
    """A step's inputs and result carry the declared letters and units, in call order."""
    for step in all_steps(result):
        declared = FORMULAS[step.formula]
        assert tuple(value.symbol for value in step.inputs) == declared.arguments
        assert step.result.symbol == declared.result
        for value in (*step.inputs, step.result):
            assert value.unit == declared.symbols[value.symbol].unit


@pytest.mark.parametrize(
    ("limit", "formula"),
    [("contact", "heat_allowed_power"), ("cable", "heat_allowed_power"), ("voltage", "voltage_allowed_power")],
)
@examples(30)
@given(result=CELLS)
def test_a_limit_is_what_its_steps_end_with(limit, formula, result):
    """At each end the allowed power is the least such step of a limit, and the margin its last one."""
    shown = next(one for one in result.limits if one.id == limit)
    low, high = ((shown.margin_db, shown.allowed_w), (shown.margin_high_db, shown.allowed_high_w))

    for end, (margin, allowed) in (("low", low), ("high", high)):
        assert min(step.result.value for step in at_end(shown.steps, formula, end)) == allowed
        if margin is not None:
            assert put_in(last(shown.steps, "margin", end), "P_a") == allowed
            assert last(shown.steps, "margin", end).result.value == margin


@examples(30)
@given(result=CELLS)
def test_the_return_loss_is_that_of_the_last_steps(result):
    """Return loss, and what it has over the one asked for, are the last steps of the match at each end."""
    match = result.match

    for end, return_loss in (("low", match.return_loss_db), ("high", match.return_loss_high_db)):
        assert last(match.steps, "return_loss", end).result.value == return_loss
        assert last(match.steps, "match_margin", end).result.value == return_loss - match.asked_db


@pytest.mark.parametrize("limit", ["contact", "cable"])
@examples(50)
@given(result=CELLS)
def test_a_temperature_agrees_with_the_margin_of_its_heat(limit, result):
    """The rise of contact or cable by power, raised by its margin, just reaches the allowed temperature."""
    heat = next(one for one in result.limits if one.id == limit)

    if heat.margin_db is not None:
        step = last(heat.steps, "temperature_reached", "low")
        without_power = put_in(step, "t_a") + put_in(step, "dt_s")
        at_limit = without_power + (step.result.value - without_power) * 10 ** (heat.margin_db / 10)
        allowed_c = getattr(result, {"contact": "", "cable": "cable_"}[limit] + "allowed_temperature_c")
        # far over every limit the cable alone may be hotter, and the pin is never cooler than what is soldered to it
        cooler = result.cable_temperature_c if limit == "contact" else step.result.value
        assert max(step.result.value, cooler) == getattr(result, f"{limit}_temperature_c")
        assert at_limit == pytest.approx(allowed_c, rel=1e-9, abs=1e-9)


@examples(50)
@given(result=CELLS)
def test_the_contact_is_never_cooler_than_the_conductor_soldered_to_it(result):
    """At the power that the contact allows, the conductor soldered to it is no hotter than the contact may get."""
    limits = {limit.id: limit for limit in result.limits}
    cable = last(limits["cable"].steps, "temperature_reached", "low")
    watts = limits["contact"].allowed_w
    cable_c = put_in(cable, "t_a") + put_in(cable, "dt_s") + watts * put_in(cable, "D_m") * put_in(cable, "u")

    assert watts <= limits["cable"].allowed_w
    assert limits["contact"].allowed_high_w <= limits["cable"].allowed_high_w
    assert watts == 0 or cable_c <= result.allowed_temperature_c + 1e-9
    assert put_in(cable, "dt_s") > 0 or result.contact_temperature_c >= result.cable_temperature_c - 1e-9


@examples(50)
@given(result=CELLS)
def test_the_peak_voltage_agrees_with_the_voltage_margin(result):
    """The peak voltage, raised by the voltage margin, just reaches the allowed peak."""
    volts = next(one for one in result.limits if one.id == "voltage")

    if volts.margin_db is not None:
        allowed = last(volts.steps, "allowed_peak_voltage", "low").result.value
        assert result.peak_voltage_v * 10 ** (volts.margin_db / 20) == pytest.approx(allowed, rel=1e-12)


@examples(50)
@given(result=CELLS)
def test_every_source_of_a_derivation_is_listed(result):
    """Each source that a derivation, a gate or a loss names is in the list of sources."""
    named = {value.source for step in all_steps(result) for value in step.inputs if value.source}
    named |= {gate.source for gate in result.gates} | {result.losses.published_source}

    assert named <= set(catalogue().sources)


@examples(30)
@given(result=CELLS)
def test_the_binding_limit_comes_first(result):
    """The binding limit comes first and has the smallest margin; in receive none binds and they keep their order."""
    margins = [limit.margin_db for limit in result.limits if limit.margin_db is not None]

    if result.power_w == 0:
        assert not margins
        assert [limit.id for limit in result.limits if not limit.binding] == ["contact", "cable", "voltage"]
        assert result.margin_db is result.margin_high_db is None
    elif margins:
        assert [limit.binding for limit in result.limits] == [True, False, False]
        assert result.limits[0].margin_db == min(margins)
        assert result.margin_db in (None, min(margins))


@examples(50)
@given(result=CELLS)
def test_the_expected_loss_is_the_sum_of_its_causes(result):
    """Expected loss is dissipation and mismatch; the shares by cause add up to the dissipated power."""
    losses = result.losses
    causes = (losses.contact_db, losses.conductor_db, losses.dielectric_db)
    dissipated = sum(1 - 10 ** (-cause / 10) for cause in causes)

    total_db = losses.expected_db - losses.mismatch_db
    assert 1 - 10 ** (-total_db / 10) == pytest.approx(min(dissipated, 0.99), rel=1e-9)
