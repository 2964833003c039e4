"""Real lines: measured boards with connectors, as the operation "sweep" is asked about them.

A two-port is ended in software, so that each gives a line with a short, an open and a matched end.
"""

from functools import cache
from pathlib import Path
from typing import NamedTuple

import numpy as np
import skrf
from everyday.lines import touchstone
from packs import built_in, edition, value

FOLDER = Path(__file__).parents[1] / "published" / "measured"
C_LIGHT = 299_792_458.0
ENDS = {"short": -1.0, "open": 1.0, "matched": 0.0}
TOPS_HZ = [3e9, 6e9]
LONGER_M = 0.1
"""By so much the long board is longer than the short one."""

FITTED_HZ = (3e8, 5e9)  # below, the difference of loss is too small to tell; above, the board radiates
SHEET_HZ = [1e8, 3e8, 1e9, 3e9, 6e9]
DAMAGE_M = (0.05, 0.09)


class MeasuredLine(NamedTuple):
    """A measured line, what is asked about it, and where it is damaged, from to [m], or None."""

    name: str
    request: dict
    damage_m: tuple[float, float] | None


def network(name):
    """A measured network by its file's name."""
    return skrf.Network(str(FOLDER / name))


@cache
def board_edition():
    """The catalogue with the board as a cable, by the difference of a long one and a short one."""
    short, long = network("board_100_mm.s2p"), network("board_200_mm.s2p")
    more = long.s[:, 1, 0] / short.s[:, 1, 0]
    chosen = (short.f > FITTED_HZ[0]) & (short.f < FITTED_HZ[1])
    slope = np.polyfit(short.f[chosen], -np.unwrap(np.angle(more))[chosen], 1)[0]
    shapes = np.array([np.sqrt(short.f), short.f])
    law = np.linalg.lstsq(shapes[:, chosen].T, -20 * np.log10(np.abs(more[chosen])) / LONGER_M)[0]
    sheet = [
        {"frequency_hz": hz, "db_per_m": float(law @ [np.sqrt(hz), hz]), "source": "sheet", "kind": "datasheet"}
        for hz in SHEET_HZ
    ]
    velocity = float(LONGER_M * 2 * np.pi / (slope * C_LIGHT))
    board = {"id": "board", "name": "Board", "also_called": [], "velocity_factor": value(velocity)}
    return edition(cables=[built_in("cables", "rg_405", **board, attenuation=sheet)])


def measured_lines():
    """Every measured line, at each span and with each end, two-ports from either side."""
    lines = []
    for top in TOPS_HZ:
        for end, what in (("short", "short"), ("open", "open"), ("load", "matched")):
            one = network(f"board_50_mm_{end}.s1p")
            lines.append(_line(f"50 mm, {end}", top, one.f, one.s[:, 0, 0], 0.05, what, joints=1))
        for name, length, damage in (
            ("100_mm", 0.1, None),
            ("200_mm", 0.2, None),
            ("140_mm_stepped", 0.14, DAMAGE_M),
        ):
            both = network(f"board_{name}.s2p")
            for side, two in (("first", both), ("second", both.flipped())):
                for end, reflection in ENDS.items():
                    s = two.s
                    seen = s[:, 0, 0] + s[:, 0, 1] * s[:, 1, 0] * reflection / (1 - s[:, 1, 1] * reflection)
                    words = f"{name.replace('_', ' ')}, {end}, from its {side} side"
                    # the two middle stretches change places, the whole is as far from either side
                    lines.append(_line(words, top, two.f, seen, length, end, joints=2, damage_m=damage))
    return lines


def _line(name, top, frequency, reflection, length_m, end, joints, damage_m=None):
    kept = frequency <= top
    elements = [{"kind": "joint", "family": "sma"}, {"kind": "cable", "cable": "board", "length_m": length_m}]
    elements += [{"kind": "joint", "family": "sma"}] * (joints - 1)
    text = touchstone(frequency[kept], reflection[kept])
    request = {"elements": elements, "load": {"kind": "end", "what": end}, "touchstone": text}
    return MeasuredLine(f"{name}, to {top / 1e9:g} GHz", request, damage_m)
