"""A tuner of coil and capacitors: the setting with which it matches, its two-port, and what goes on inside it.

Three networks, all of a capacitor near the transmitter, a coil and a capacitor
near the antenna. T: the capacitors in series, the coil across; Pi: the coil in
series, the capacitors across; L: a Pi without one of its capacitors, and where
that can't match a T without one. The parts are ideal but for a series
resistance by their quality. All arrays broadcast; currents and voltages are rms.
"""

from typing import Literal, NamedTuple

import numpy as np

from ..formulas.formula import Broadcast
from ..formulas.tuner import capacitive_reactance, component_resistance, inductive_reactance
from .matching import MATCHED, Arms, Ladder, Range, matched, nearest, no_match
from .two_port import TwoPort

__all__ = ["Branches", "Network", "Parts", "Setting", "branches", "settled", "tuner_two_port"]

Network = Literal["l", "t", "pi"]

MOST_REFLECTION = 1 - 1e-12  # of a load; a total one has no resistance to match
NOTHING, INFINITE = Range(0.0, 0.0), np.inf


class Parts(NamedTuple):
    """What a tuner is made of; every part goes down to nothing."""

    network: Network
    coil_q: float
    capacitor_q: float
    largest_capacitor_f: float
    largest_coil_h: float


class Setting(NamedTuple):
    """Of one tuner at any loads and frequencies; a part that is not in is an infinite one in series or 0 F across."""

    tee: np.ndarray
    """Whether the capacitors are in series and the coil across; else the other way round."""
    near_f: np.ndarray
    coil_h: np.ndarray
    far_f: np.ndarray
    reflection: np.ndarray
    """What is left of it, looking into the tuner, magnitude."""

    @property
    def reachable(self) -> np.ndarray:
        """Whether it matches; else it is the nearest its parts can do."""
        return self.reflection < MATCHED


class Branches(NamedTuple):
    """Voltages across [V] and currents through [A] near capacitor, coil and far capacitor, along the first axis."""

    voltage: np.ndarray
    current: np.ndarray

    @property
    def lost_w(self) -> np.ndarray:
        """Power turned into heat in each [W]."""
        return np.real(self.voltage * np.conj(self.current))


def settled(parts: Parts, frequency: Broadcast, load_reflection: Broadcast, impedance: float) -> Setting:
    """The setting of least loss that matches to `impedance` [Ω]; where there is none, the one of smallest SWR.

    `load_reflection` is against the same impedance; frequencies in Hz.
    """
    shape = np.broadcast_shapes(np.shape(frequency), np.shape(load_reflection))
    size = np.abs(load_reflection)
    within = load_reflection * np.minimum(1, MOST_REFLECTION / np.maximum(size, MOST_REFLECTION))
    load = np.ravel(np.broadcast_to((1 + within) / (1 - within), shape)).astype(np.complex128)
    hertz = np.ravel(np.broadcast_to(frequency, shape)).astype(np.float64)
    setting = Setting(np.zeros(load.shape, dtype=bool), *np.full((4, *load.shape), np.nan))
    with np.errstate(all="ignore"):  # settings out of reach divide by zero and are left out
        left = np.arange(load.size)
        for group in _GROUPS[parts.network]:
            left = _fill(setting, left, group, parts, hertz, load, impedance, matching=True)
        every = [layout for group in _GROUPS[parts.network] for layout in group]
        _fill(setting, left, every, parts, hertz, load, impedance, matching=False)
    return Setting(*(one.reshape(shape) for one in setting))


class _Layout(NamedTuple):
    """A T or a Pi, perhaps without one capacitor."""

    tee: bool
    near: bool = True
    far: bool = True


_GROUPS: dict[Network, list[list[_Layout]]] = {
    "t": [[_Layout(True)]],
    "pi": [[_Layout(False)]],
    "l": [[_Layout(tee, near=False), _Layout(tee, far=False)] for tee in (False, True)],
}
"""Layouts of a network; of those in a group the one with less loss is used, a later group only where none matches."""


def _fill(
    setting: Setting,
    left: np.ndarray,
    layouts: list[_Layout],
    parts: Parts,
    hertz: np.ndarray,
    load: np.ndarray,
    impedance: float,
    *,
    matching: bool,
) -> np.ndarray:
    """Put the best of the layouts into the columns `left`; which of them are still not matched."""
    if not left.size:
        return left
    best, tee = no_match(left.shape), np.zeros(left.shape, dtype=bool)
    for layout in layouts:
        ladder = _ladder(layout, parts, hertz[left], impedance)
        seen_load = load[left] if layout.tee else np.conj(1 / load[left])
        found = matched(ladder, seen_load) if matching else nearest(ladder, seen_load)
        better = found.efficiency > best.efficiency if matching else found.reflection < best.reflection
        best, tee = best.or_where(better, found), np.where(better, layout.tee, tee)
    values = (tee, *_values(parts, tee, best.arms, hertz[left], impedance), best.reflection)
    for whole, part in zip(setting, values, strict=True):
        whole[left] = part
    return left[~(best.reflection < MATCHED)]


def _ladder(layout: _Layout, parts: Parts, hertz: np.ndarray, impedance: float) -> Ladder:
    """The ladder of a layout; a Pi's is that of its dual, conjugated, so that both have the same directions."""
    capacitor, coil = 1 / parts.capacitor_q, 1 / parts.coil_q
    largest_ohm = inductive_reactance(hertz, parts.largest_coil_h)
    smallest_ohm = capacitive_reactance(hertz, parts.largest_capacitor_f)
    if layout.tee:
        outer = Range(smallest_ohm / impedance, INFINITE)
        inner = Range(impedance / (largest_ohm * (1 + coil**2)), INFINITE)
    else:
        outer = Range(0.0, impedance / (smallest_ohm * (1 + capacitor**2)))
        inner = Range(0.0, largest_ohm / impedance)
    near, far = (outer if there else NOTHING for there in (layout.near, layout.far))
    return Ladder(capacitor - 1j, coil - 1j, near, inner, far)


def _values(
    parts: Parts, tee: np.ndarray, arms: Arms, hertz: np.ndarray, impedance: float
) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Capacitances [F] and inductance [H] of the arms' sizes."""
    pulsation = 2 * np.pi * hertz
    across = 1 + 1 / parts.capacitor_q**2
    near, far = (
        np.where(tee, 1 / (pulsation * impedance * size), across * size / (pulsation * impedance))
        for size in (arms.near, arms.far)
    )
    coil_ohm = impedance * np.where(tee, 1 / (arms.inner * (1 + 1 / parts.coil_q**2)), arms.inner)
    return near, coil_ohm / pulsation, far


class _Immittances(NamedTuple):
    """Of near capacitor, coil and far capacitor, in series [Ω] or across [S]; 0 where a part is the other way."""

    series: tuple[Broadcast, Broadcast, Broadcast]
    across: tuple[Broadcast, Broadcast, Broadcast]


def _immittances(parts: Parts, setting: Setting, frequency: Broadcast) -> _Immittances:
    with np.errstate(divide="ignore"):  # of no capacitor
        near, far = (capacitive_reactance(frequency, farad) for farad in (setting.near_f, setting.far_f))
    coil = inductive_reactance(frequency, setting.coil_h)
    series, across = [], []
    for ohm, in_series, quality, sign in (
        (near, setting.tee, parts.capacitor_q, -1),
        (coil, ~setting.tee, parts.coil_q, 1),
        (far, setting.tee, parts.capacitor_q, -1),
    ):
        there = np.where(in_series, ohm, 0)
        series.append(component_resistance(there, quality) + sign * 1j * there)
        across.append(1 / np.where(in_series, np.inf, ohm) / (component_resistance(1, quality) + sign * 1j))
    return _Immittances((series[0], series[1], series[2]), (across[0], across[1], across[2]))


def tuner_two_port(parts: Parts, setting: Setting, frequency: Broadcast) -> TwoPort:
    """The chain matrix of a setting at frequencies [Hz]."""
    (near, coil, far), (near_across, coil_across, far_across) = _immittances(parts, setting, frequency)
    # the products of a T's arms vanish in a Pi and the other way round
    return TwoPort(
        1 + near * coil_across + coil * far_across,
        near + coil + far + near * coil_across * far,
        near_across + coil_across + far_across + near_across * coil * far_across,
        1 + coil_across * far + near_across * coil,
    )


def branches(
    parts: Parts,
    setting: Setting,
    frequency: Broadcast,
    before: tuple[Broadcast, Broadcast],
    after: tuple[Broadcast, Broadcast],
) -> Branches:
    """What stands across and flows through each part, by voltage [V] and current [A] at both ends of the tuner."""
    (near, coil, far), (near_across, coil_across, far_across) = _immittances(parts, setting, frequency)
    (voltage_in, current_in), (voltage_out, current_out) = before, after
    behind = voltage_in - current_in * near
    onward = current_in - voltage_in * near_across
    near_there, far_there = setting.near_f > 0, setting.far_f > 0
    tee = setting.tee
    voltage = (
        np.where(tee, current_in * near, voltage_in * near_there),
        np.where(tee, behind, onward * coil),
        np.where(tee, current_out * far, voltage_out * far_there),
    )
    current = (
        np.where(tee, current_in, voltage_in * near_across),
        np.where(tee, behind * coil_across, onward),
        np.where(tee, current_out, voltage_out * far_across),
    )
    return Branches(np.array(voltage), np.array(current))
