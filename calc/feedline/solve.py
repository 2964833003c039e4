"""The waves on a chain at both ends of the ratings, and what each link then allows."""

from collections.abc import Mapping
from typing import NamedTuple

import numpy as np

from ..formulas.heat import margin
from ..physics.ratings import CAUTIOUS, GENEROUS
from ..waves.two_port import TwoPort, Waves, drive, seen_through
from .feedline import Feedline
from .link import LinkModel
from .stress import Allowed, Stress, worse

__all__ = ["Solution", "Solutions", "largest_power_w", "margins", "solve", "solve_both_ends"]


class Solution(NamedTuple):
    """The chain at frequencies [Hz] with one end of the ratings; the last axis is the frequency."""

    waves: Waves
    """Those that deliver less, where joints may lie on either side of their impedance."""
    stresses: list[Stress]
    allowed: list[Allowed]


class Solutions(NamedTuple):
    """The chain with both ends of the ratings."""

    cautious: Solution
    generous: Solution


def solve(
    feedline: Feedline, frequency: np.ndarray, end: int, replaced: Mapping[int, LinkModel] | None = None
) -> Solution:
    """Solve the chain with the models of one end of the ratings (0 cautious, 1 generous).

    The worst joint that a standard allows lies above its impedance or below, and which is
    worse depends on what stands beside it: at the cautious end the chain is solved with all
    of them above and with all below, and each link bears the worse of both.
    `replaced` puts another model in the place of a link, for a what-if.
    """
    models = [(replaced or {}).get(index, link.models[end]) for index, link in enumerate(feedline.links)]
    turned = [model.other_side() for model in models]
    others = [other or model for other, model in zip(turned, models, strict=True)]
    models, waves = _set(feedline, frequency, models)
    stresses = _stresses(models, waves, frequency)
    if end == CAUTIOUS and any(turned):
        others, other_waves = _set(feedline, frequency, others)
        other_stresses = _stresses(others, other_waves, frequency)
        stresses = [worse(*pair) for pair in zip(stresses, other_stresses, strict=True)]
        less = other_waves.power_w[-1] < waves.power_w[-1]
        waves = Waves(*(np.where(less, other, own) for own, other in zip(waves, other_waves, strict=True)))
    allowed = [model.allowed(frequency, stress) for model, stress in zip(models, stresses, strict=True)]
    return Solution(waves, stresses, allowed)


def _set(feedline: Feedline, frequency: np.ndarray, models: list[LinkModel]) -> tuple[list[LinkModel], Waves]:
    """The models as they are set for what they look at, and the waves on them."""
    load, impedance = feedline.load(frequency), feedline.station.impedance_ohm
    beyond = load
    are_set: list[LinkModel] = []
    ports: list[TwoPort] = []
    for model in reversed(models):
        are_set.append(model.settled(frequency, beyond))
        ports.append(are_set[-1].two_port(frequency))
        beyond = seen_through(ports[-1], beyond, impedance)
    return are_set[::-1], drive(ports[::-1], load, impedance, net=feedline.net)


def _stresses(models: list[LinkModel], waves: Waves, frequency: np.ndarray) -> list[Stress]:
    return [model.stress(waves, plane, frequency) for plane, model in enumerate(models)]


def solve_both_ends(feedline: Feedline, frequency: np.ndarray) -> Solutions:
    """Solve the chain with the models of both ends of the ratings."""
    return Solutions(solve(feedline, frequency, CAUTIOUS), solve(feedline, frequency, GENEROUS))


def margins(allowed: Allowed, power_w: float) -> np.ndarray:
    """Margins of heat and voltage [dB] along axis 0; infinite in receive."""
    shape = np.broadcast_shapes(*(np.shape(limit) for limit in allowed))
    with np.errstate(divide="ignore"):  # no room at all is refused by its gate
        heat_db, voltage_db = (
            margin(limit_w, power_w) if power_w > 0 else np.inf for limit_w in (allowed.heat_w, allowed.voltage_w)
        )
    return np.stack([np.broadcast_to(margin_db, shape) for margin_db in (heat_db, voltage_db)])


def largest_power_w(allowed: Allowed) -> np.ndarray:
    """Largest source power that heat and voltage allow [W]."""
    return np.minimum(allowed.heat_w, allowed.voltage_w)
