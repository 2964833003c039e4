"""Reciprocal two-ports as scattering against 50 Ω, joined by their wave equations."""

from typing import NamedTuple

import numpy as np

Z_REF = 50.0
C_LIGHT = 299_792_458.0


class Section(NamedTuple):
    """Reflection at the near side, transmission, reflection at the far side; frequency is the last axis."""

    near: np.ndarray
    through: np.ndarray
    far: np.ndarray


def join(first, second):
    """Two sections in a row."""
    between = 1 / (1 - first.far * second.near)
    return Section(
        first.near + first.through**2 * second.near * between,
        first.through * second.through * between,
        second.far + second.through**2 * first.far * between,
    )


def chain(sections):
    """Any number of sections in a row."""
    whole = sections[0]
    for section in sections[1:]:
        whole = join(whole, section)
    return whole


def chain_pieces(pieces):
    """The pieces along axis 0 in a row, joined two by two."""
    while len(pieces.near) > 1:
        even = len(pieces.near) // 2 * 2
        first, second = (Section(*(part[start:even:2] for part in pieces)) for start in (0, 1))
        joined = join(first, second)
        if even < len(pieces.near):
            joined = Section(*(np.concatenate([part, rest[even:]]) for part, rest in zip(joined, pieces, strict=True)))
        pieces = joined
    return Section(*(part[0] for part in pieces))


def ended(section, reflection):
    """What is reflected at the near side of a section with a reflection at its far side."""
    return section.near + section.through**2 * reflection / (1 - section.far * reflection)


def run(impedance, angle):
    """A run of line of an impedance [Ω] and gamma*l [Np + j rad]."""
    step = (impedance - Z_REF) / (impedance + Z_REF)
    onward = np.exp(-angle)
    whole = 1 - step**2 * onward**2
    reflected = step * (1 - onward**2) / whole
    return Section(reflected, onward * (1 - step**2) / whole, reflected)


def in_series(impedance):
    """An impedance in one of the conductors [Ω]."""
    share = impedance / (impedance + 2 * Z_REF)
    return Section(share, 1 - share, share)


def across(admittance):
    """An admittance between the conductors [S]."""
    share = admittance / (admittance + 2 / Z_REF)
    return Section(-share, 1 - share, -share)


def reflection_of(impedance):
    """The reflection of an impedance [Ω]."""
    return (impedance - Z_REF) / (impedance + Z_REF)
