"""The waves on a chain at both ends of the ratings, and what each link then allows."""

from typing import NamedTuple

import numpy as np

from ..formulas.heat import margin
from ..physics.gates import GATES, gate_table
from ..physics.house_limits import house_power
from ..waves.two_port import Waves, drive
from .feedline import Feedline, Link
from .stress import Allowed, Stress

__all__ = ["Solution", "house_allows", "largest_power_w", "margins", "refused", "solve"]


class Solution(NamedTuple):
    """The chain at frequencies [Hz] with one end of the ratings; the last axis is the frequency."""

    waves: Waves
    stresses: list[Stress]
    allowed: list[Allowed]


def solve(feedline: Feedline, frequency: np.ndarray, end: int, replaced: dict[int, object] | None = None) -> Solution:
    """Solve the chain with the models of one end of the ratings (0 cautious, 1 generous).

    `replaced` puts another model in the place of a link, for a what-if.
    """
    models = [(replaced or {}).get(at, link.models[end]) for at, link in enumerate(feedline.links)]
    ports = [model.two_port(frequency) for model in models]
    waves = drive(ports, feedline.load(frequency), feedline.station.impedance_ohm, net=feedline.net)
    stresses = [model.stress(waves, at, frequency) for at, model in enumerate(models)]
    allowed = [model.allowed(frequency, stress) for model, stress in zip(models, stresses, strict=True)]
    return Solution(waves, stresses, allowed)


def margins(allowed: Allowed, power_w: float) -> np.ndarray:
    """Margins of heat, voltage and match [dB] along axis 0; infinite for the first two in receive."""
    shape = np.broadcast_shapes(*(np.shape(one) for one in allowed))
    with np.errstate(divide="ignore"):  # no room at all is refused by its gate
        by_power = [margin(one, power_w) if power_w > 0 else np.inf for one in allowed[:2]]
    return np.stack([np.broadcast_to(one, shape) for one in (*by_power, allowed.match_db)])


def largest_power_w(allowed: Allowed) -> np.ndarray:
    """Largest source power that heat and voltage allow [W]."""
    return np.minimum(allowed.heat_w, allowed.voltage_w)


def house_allows(link: Link, frequency: np.ndarray) -> np.ndarray:
    """Most power the station's own rules allow through a link [W] by frequency [Hz]; infinite where there is none."""
    if link.family is None:
        return np.full(np.shape(frequency), np.inf)
    return house_power([link.family], frequency)[0]


def refused(feedline: Feedline, link: Link, frequency: np.ndarray, power_w: float) -> np.ndarray:
    """Where a hard gate of a link fails, by frequency [Hz]; of a cable the heat room, of parts none."""
    model = link.models[0]
    if link.kind == "cable" and power_w > 0:
        room = model.ratings.highest_temperature_c > model.station.ambient_temperature_c
        return np.full(np.shape(frequency), not room)
    if link.family is None:
        return np.zeros(np.shape(frequency), dtype=bool)
    powers = np.array([power_w], dtype=np.float64)
    failed = gate_table([link.family], [link.demands], frequency, powers, model.station, model.path)
    hard = np.array([gate.hard for gate in GATES])
    return failed[hard].any(axis=0)[0, :, 0]
