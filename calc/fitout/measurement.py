"""The first measurement of a line: what a good load at its far end should show."""

import msgspec
import numpy as np

from jointwise.calc.fitout.advice import advice
from jointwise.calc.fitout.results import LineMeasurement
from jointwise.calc.formulas.line import decibels
from jointwise.calc.formulas.match import reflection_of_vswr, return_loss
from jointwise.calc.line.chain import Chain
from jointwise.calc.line.requests import LineRequest, SpreadRequest
from jointwise.calc.line.solve import solve
from jointwise.calc.line.spread import spread

__all__ = ["first_measurement"]

GENEROUS = 1
LEAST_DRAWS = 100  # only the bound is read, which no draw changes
TO_AND_FRO = 2


@np.errstate(divide="ignore", invalid="ignore", over="ignore")  # no number becomes null
def first_measurement(request: LineRequest, built: Chain) -> LineMeasurement:
    """Expected loss and return loss of a line that ends in a matched load."""
    waves = solve(built, np.array([built.frequency_hz]), GENEROUS).waves
    loss = _number(-decibels(waves.power_w[-1, 0]))
    expected = _number(return_loss(np.abs(waves.reflection(built.here.impedance_ohm)[0, 0])))
    impedance = f"{built.here.impedance_ohm:g} Ω"
    return LineMeasurement(
        frequency_hz=built.frequency_hz,
        load_ohm=built.here.impedance_ohm,
        expected_loss_db=loss,
        expected_return_loss_db=expected,
        least_return_loss_db=_least(request, expected),
        shorted_return_loss_db=None if loss is None else TO_AND_FRO * loss,
        advice=advice("measure", {}, {"impedance": impedance}),
    )


def _least(request: LineRequest, expected_db: float | None) -> float | None:
    """The bound of all joints in step; it leaves out the reactance of a cable's impedance, so never above expected."""
    fields = msgspec.structs.asdict(request)
    shared = {name: fields[name] for name in SpreadRequest.__struct_fields__ if name in fields}
    worst = spread(SpreadRequest(**shared, draws=LEAST_DRAWS)).bands[0].worst_vswr
    if worst is None or expected_db is None:
        return None
    return min(expected_db, float(return_loss(reflection_of_vswr(worst))))


def _number(value: float) -> float | None:
    return float(value) if np.isfinite(value) else None
