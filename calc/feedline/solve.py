"""The waves on a chain at both ends of the ratings, and what each link then allows."""

from collections.abc import Mapping, Sequence
from typing import NamedTuple

import numpy as np

from ..formulas.heat import margin
from ..physics.heat_limit import Wave
from ..physics.ratings import CAUTIOUS, GENEROUS
from ..waves.two_port import Waves, drive, seen_through
from .feedline import Feedline
from .link import LinkModel
from .stress import Allowed, Stress, worse

__all__ = [
    "Solution",
    "Solutions",
    "largest_power_w",
    "margins",
    "settled",
    "solve",
    "solve_both_ends",
    "solve_every_way",
    "summed_up",
]

WAYS_AXIS = -2


class Solution(NamedTuple):
    """The chain at frequencies [Hz] with one end of the ratings; the last axis is the frequency.

    Of a load that is not known in all, before it stands the axis of the ways it can be, until
    they are summed up: the worst of them at the cautious end, the middle one at the generous.
    """

    waves: Waves
    """Those that deliver less, where joints may lie on either side of their impedance."""
    reflection: np.ndarray
    """At the transmitter."""
    models: list[LinkModel]
    """As they are set, for every way."""
    stresses: list[Stress]
    allowed: list[Allowed]


class Solutions(NamedTuple):
    """The chain with both ends of the ratings."""

    cautious: Solution
    generous: Solution


def solve(feedline: Feedline, frequency: np.ndarray, end: int, choices: np.ndarray | None = None) -> Solution:
    """Solve the chain with the models of one end of the ratings (0 cautious, 1 generous), and sum its ways up.

    `choices` are the ways of the load that count, by default the likely ones.
    """
    load = feedline.load.likely(frequency) if choices is None else feedline.load.at(frequency, choices)
    return summed_up(solve_every_way(feedline, frequency, end, load), end)


def solve_every_way(
    feedline: Feedline,
    frequency: np.ndarray,
    end: int,
    load: np.ndarray,
    replaced: Mapping[int, LinkModel] | None = None,
) -> Solution:
    """The same for every reflection of the load given, of any shape whose last axis is the frequency's.

    `replaced` puts another model in the place of a link, for a what-if.

    The worst joint that a standard allows lies above its impedance or below, and which is
    worse depends on what stands beside it: at the cautious end the chain is solved with all
    of them above and with all below, and each link bears the worse of both.
    """
    models = [(replaced or {}).get(index, link.models[end]) for index, link in enumerate(feedline.links)]
    turned = [model.other_side() for model in models]
    others = [other or model for other, model in zip(turned, models, strict=True)]
    waves, stresses, models = _solved(feedline, frequency, models, load)
    if end == CAUTIOUS and any(turned):
        other_waves, other_stresses, _ = _solved(feedline, frequency, others, load)
        stresses = [worse(*pair) for pair in zip(stresses, other_stresses, strict=True)]
        less = other_waves.power_w[-1] < waves.power_w[-1]
        waves = Waves(*(np.where(less, other, own) for own, other in zip(waves, other_waves, strict=True)))
    allowed = [model.allowed(frequency, stress) for model, stress in zip(models, stresses, strict=True)]
    reflection = waves.reflection(feedline.station.impedance_ohm)[0]
    return Solution(waves, reflection, models, stresses, allowed)


def settled(
    feedline: Feedline, frequency: np.ndarray, models: Sequence[LinkModel], load: np.ndarray
) -> list[LinkModel]:
    """The models as they are set: a tuner by what it looks at, everything between it and the load being as it is."""
    done, beyond = list(models), load
    first = next((index for index, model in enumerate(models) if model.tuned), len(done))
    for index in reversed(range(first, len(done))):
        done[index] = done[index].settled(frequency, beyond)
        beyond = seen_through(done[index].two_port(frequency), beyond, feedline.station.impedance_ohm)
    return done


def _solved(
    feedline: Feedline, frequency: np.ndarray, models: list[LinkModel], load: np.ndarray
) -> tuple[Waves, list[Stress], list[LinkModel]]:
    models, z_0 = settled(feedline, frequency, models, load), feedline.station.impedance_ohm
    waves = drive([model.two_port(frequency) for model in models], load, z_0, net=feedline.net)
    # a transmitter that folds back sends less of all
    share = np.sqrt(feedline.transmitter.share(np.abs(waves.reflection(z_0)[0])))
    waves = Waves(waves.voltage * share, waves.current * share)
    return waves, [model.stress(waves, plane, frequency) for plane, model in enumerate(models)], models


def solve_both_ends(feedline: Feedline, frequency: np.ndarray, choices: np.ndarray | None = None) -> Solutions:
    """Solve the chain with the models of both ends of the ratings."""
    return Solutions(solve(feedline, frequency, CAUTIOUS, choices), solve(feedline, frequency, GENEROUS, choices))


def summed_up(solution: Solution, end: int) -> Solution:
    """One answer of every way the load can be: at the cautious end each link's worst, at the generous the middle.

    Heat and voltage of a link each have their own worst way, and so have what is delivered
    and what is reflected.
    """
    cautious = end == CAUTIOUS
    by_power = _rank(solution.waves.power_w[-1], cautious)
    waves = Waves(*(_chosen(part, by_power) for part in solution.waves))
    reflection = solution.reflection
    reflected = _rank(-np.abs(reflection), cautious) if cautious else by_power
    stresses, allowed = [], []
    for stress, limit in zip(solution.stresses, solution.allowed, strict=True):
        shape = np.broadcast_shapes(*(np.shape(one) for one in (*stress[:4], *limit)))
        heat_w, voltage_w = (_filled(one, shape) for one in limit)
        by_heat, by_voltage = _rank(heat_w, cautious), _rank(voltage_w, cautious)
        heated = [_chosen(_filled(one, shape), by_heat) for one in (*stress[:4], *stress.hottest)]
        volts = _chosen(_filled(stress.voltage_factor, shape), by_voltage)
        stresses.append(Stress(heated[0], volts, heated[2], heated[3], Wave(*heated[4:])))
        allowed.append(Allowed(_chosen(heat_w, by_heat), _chosen(voltage_w, by_voltage)))
    return Solution(waves, _chosen(reflection, reflected), solution.models, stresses, allowed)


def _filled(values: np.ndarray, shape: tuple[int, ...]) -> np.ndarray:
    return values if np.shape(values) == shape else np.broadcast_to(values, shape)


def _rank(values: np.ndarray, lowest: bool) -> np.ndarray:
    """Which of the ways has the lowest value, or the middle one, by frequency."""
    ways = values.shape[WAYS_AXIS]
    if ways == 1:
        return np.zeros(values.shape[-1], dtype=int)
    if lowest:
        return np.argmin(values, axis=WAYS_AXIS)
    return np.argsort(values, axis=WAYS_AXIS, kind="stable")[ways // 2]


def _chosen(values: np.ndarray, index: np.ndarray) -> np.ndarray:
    """The values of the ways chosen, without their axis."""
    if values.shape[WAYS_AXIS] == 1:
        return values[..., 0, :]
    return values[..., index, np.arange(index.size)]


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
