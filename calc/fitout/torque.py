"""Coupling torque as a wrench shows it."""

from ..catalogue.schema import Interface
from .results import Torque

__all__ = ["torque"]

INCH_POUND_NM = 0.0254 * 4.4482216152605
"""One inch-pound [N m], exact by the definitions of inch and pound-force."""


def torque(interface: Interface) -> Torque:
    """The range of a family's coupling torque with its sources; a bayonet or a snap has none."""
    ends = (interface.coupling_torque_nm.low, interface.coupling_torque_nm.high)
    newton_metres = [end.value for end in ends]
    inch_pounds = [value / INCH_POUND_NM for value in newton_metres]
    tightened = newton_metres[1] > 0
    return Torque(
        tightened=tightened,
        low_nm=newton_metres[0],
        high_nm=newton_metres[1],
        low_in_lb=inch_pounds[0],
        high_in_lb=inch_pounds[1],
        sentence=f"{_span(newton_metres)} N·m ({_span(inch_pounds)} in-lb)"
        if tightened
        else f"none: the {interface.coupling.value} coupling is not tightened",
        sources=list(dict.fromkeys(end.source for end in ends)),
        kinds=list(dict.fromkeys(end.kind for end in ends)),
        notes=[note for note in dict.fromkeys(end.note for end in ends) if note],
    )


def _span(ends: list[float]) -> str:
    low, high = (f"{end:.2g}" if end < 100 else f"{end:.0f}" for end in ends)
    return low if low == high else f"{low} to {high}"
