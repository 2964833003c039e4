"""The reference resistances of a Touchstone file's ports."""

import math

from .touchstone_lines import FaultError, Line, numbers_of

__all__ = ["commented_references", "references_of"]

SMALLEST_REFERENCE_OHM = 1e-3
LARGEST_REFERENCE_OHM = 1e6

SAME = 1e-3  # share by which printed resistances may differ and still mean the same one


def references_of(line: Line, tokens: list[str], counts: tuple[int, ...], ports: int) -> list[float]:
    """The reference resistance [Ω] of each port; one that stands alone is that of all."""
    values = numbers_of(line, tokens)
    if len(values) not in counts:
        raise FaultError(line, "one reference resistance for each port")
    if not _in_range(values):
        raise FaultError(
            line, f"a reference resistance from {SMALLEST_REFERENCE_OHM:g} to {LARGEST_REFERENCE_OHM:g} ohm"
        )
    return values if len(values) == ports else values * ports


def commented_references(comments: dict[str, Line], stated: list[float] | None, ports: int) -> list[float] | None:
    """The reference resistances [Ω] that comments give as port impedances; None where there are none.

    Simulators write a resistance and a reactance for each port, frequency by frequency. Raises FaultError where these
    are no resistances, change with frequency, or differ from what the option line has `stated`.
    """
    found = {text: [float(word) for word in text.split()] for text in comments if _is_plain(text, 2 * ports)}
    if not found:
        return None
    first = next(iter(found.values()))[::2]
    for text, values in found.items():
        resistances, reactances = values[::2], values[1::2]
        if any(abs(x) > SAME * r for r, x in zip(resistances, reactances, strict=True)) or not _in_range(resistances):
            raise FaultError(comments[text], "a pure resistance as port impedance: export the file for 50 ohm")
        if not _are_same(resistances, first):
            raise FaultError(comments[text], "the same port impedance at all frequencies: export the file for 50 ohm")
        if stated and not _are_same(resistances, stated):
            raise FaultError(
                comments[text],
                f"the option line's {stated[0]:g} ohm as port impedance, as either could be meant: export the file for"
                " one of them",
            )
    return first


def _are_same(values: list[float], others: list[float]) -> bool:
    return all(math.isclose(value, other, rel_tol=SAME) for value, other in zip(values, others, strict=True))


def _in_range(values: list[float]) -> bool:
    return SMALLEST_REFERENCE_OHM <= min(values) <= max(values) <= LARGEST_REFERENCE_OHM


def _is_plain(text: str, count: int) -> bool:
    """Whether a comment's words are so many numbers."""
    try:
        return len([float(word) for word in text.split()]) == count
    except ValueError:
        return False
