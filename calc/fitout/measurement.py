"""The first measurement of a line: what a good load at its far end should show."""

import numpy as np

from ..feedline.feedline import Feedline
from ..feedline.reflection import bounds
from ..feedline.solve import solve
from ..formulas.line import decibels
from ..formulas.match import return_loss
from ..numeric.json_numbers import number
from ..physics.ratings import GENEROUS
from .advice import advice
from .results import LineMeasurement

__all__ = ["first_measurement"]

TO_AND_FRO = 2


@np.errstate(divide="ignore", invalid="ignore", over="ignore")  # no number becomes null
def first_measurement(feedline: Feedline) -> LineMeasurement:
    """Expected loss and return loss of a line that ends in a matched load."""
    frequency = np.array([feedline.frequency_hz])
    waves = solve(feedline, frequency, GENEROUS).waves
    worst, _ = bounds(feedline, frequency)
    loss = number(-decibels(waves.power_w[-1, 0]))
    expected = number(return_loss(np.abs(waves.reflection(feedline.station.impedance_ohm)[0, 0])))
    impedance = f"{feedline.station.impedance_ohm:g} Ω"
    return LineMeasurement(
        frequency_hz=feedline.frequency_hz,
        load_ohm=feedline.station.impedance_ohm,
        expected_loss_db=loss,
        expected_return_loss_db=expected,
        least_return_loss_db=number(return_loss(worst[0])),
        shorted_return_loss_db=None if loss is None else TO_AND_FRO * loss,
        advice=advice("measure", {}, {"impedance": impedance}),
    )
