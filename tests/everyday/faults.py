"""What goes wrong on a line: at its joints and anywhere in its cables."""

from typing import NamedTuple

import numpy as np

from .cable import Damage
from .waves import across, in_series

LEAST_FROM_END_M = 0.3
"""Of a damage in a cable; nearer to a joint it is the joint's."""


class Fault(NamedTuple):
    """Where and what, as the description counts."""

    what: str
    element: int
    """Index of the joint or the cable."""
    place_m: float
    """Of its middle from the analyser, along the cables as described."""
    extent_m: float
    """How long it is, 0 at a joint."""
    size: str
    in_cable: bool


def _log(rng, low, high):
    return float(np.exp(rng.uniform(np.log(low), np.log(high))))


def _resistance(rng):
    ohm = _log(rng, 2, 100)
    return f"{ohm:.3g} Ω", lambda frequency: in_series(ohm + 0j * frequency)


def _shield(rng):
    ohm, henry = _log(rng, 1, 50), _log(rng, 10e-9, 200e-9)
    only_inductive = rng.random() < 0.5
    ohm = 0.1 if only_inductive else ohm
    return f"{ohm:.3g} Ω {henry * 1e9:.3g} nH", lambda hz: in_series(ohm + 2j * np.pi * hz * henry)


def _open(rng):
    farad, ohm = _log(rng, 0.2e-12, 3e-12), _log(rng, 500, 1e5)
    return f"{farad * 1e12:.2g} pF", lambda hz: in_series(1 / (1 / ohm + 2j * np.pi * hz * farad))


def _water(rng):
    farad, tangent, siemens = _log(rng, 2e-12, 30e-12), rng.uniform(0.02, 0.4), rng.uniform(0, 1e-3)
    return (
        f"{farad * 1e12:.3g} pF",
        lambda hz: across(siemens + 2j * np.pi * hz * farad * (1 - 1j * tangent)),
    )


def _short(rng):
    ohm, henry = _log(rng, 0.05, 5), _log(rng, 0.3e-9, 5e-9)
    return f"{ohm:.2g} Ω across", lambda hz: across(1 / (ohm + 2j * np.pi * hz * henry))


AT_JOINTS = {"resistance": _resistance, "shield": _shield, "open": _open, "water": _water, "short": _short}


def _crushed(rng):
    length, impedance = _log(rng, 0.02, 0.2), rng.uniform(0.5, 0.9)
    return f"{impedance:.2f} of its impedance", {"length_m": length, "impedance": impedance}


def _wet(rng):
    length, permittivity = _log(rng, 0.2, 2), rng.uniform(1.08, 1.8)
    more = {"permittivity": permittivity, "tangent": rng.uniform(0.005, 0.06)}
    return f"{permittivity:.2f} of its permittivity", {"length_m": length, **more}


def _kink(rng):
    length, impedance = rng.uniform(0.01, 0.03), rng.uniform(0.5, 0.8)
    more = {"resistance_ohm_per_m": rng.uniform(0, 50)}
    return f"{impedance:.2f} of its impedance", {"length_m": length, "impedance": impedance, **more}


IN_CABLES = {"crushed": _crushed, "wet": _wet, "kink": _kink}
WHAT = [*AT_JOINTS, *IN_CABLES]


def draw_damage(rng, what, length_m):
    """A damage of some kind within a cable of some real length [m], and its size in words."""
    words, sizes = IN_CABLES[what](rng)
    sizes["length_m"] = min(sizes["length_m"], length_m / 3)
    margin = min(LEAST_FROM_END_M, length_m / 4)
    return words, Damage(rng.uniform(margin, max(margin, length_m - margin - sizes["length_m"])), **sizes)
