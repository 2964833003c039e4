"""Coupling torque as a wrench shows it, or what a hand gives."""

from ..catalogue.schema import Interface, Interval, Label, Quantity
from ..numeric.measures import INCH_POUND_NM, prose, torque_words
from .results import Torque

__all__ = ["torque"]

WRENCH = "torque wrench"
SENTENCES = {
    WRENCH: "{figures}",
    "hand or torque wrench": "{figures}; a knurled nut by hand",
    "hand": "by hand or with soft pliers, not with a torque wrench: about {figures}",
}


def torque(interface: Interface) -> Torque:
    """The range of a family's coupling torque with its sources; a bayonet or a snap has none."""
    brass, stainless = interface.coupling_torque_nm, interface.stainless_torque_nm
    tightened = brass.high.value > 0
    tool = interface.tightened_by.value if interface.tightened_by else WRENCH
    figures = _figures(brass)
    if stainless is not None:
        figures = f"{figures} for brass and where the metal is not known, {_figures(stainless)} for stainless steel"
    origins: list[Quantity | Label] = [end for metal in (brass, stainless) if metal for end in (metal.low, metal.high)]
    if interface.tightened_by is not None:
        origins.append(interface.tightened_by)
    return Torque(
        tightened_by=tool if tightened else "",
        tightened=tightened,
        low_nm=brass.low.value,
        high_nm=brass.high.value,
        low_in_lb=brass.low.value / INCH_POUND_NM,
        high_in_lb=brass.high.value / INCH_POUND_NM,
        figures=figures if tightened else "",
        sentence=SENTENCES[tool].format(figures=figures)
        if tightened
        else f"none: the {interface.coupling.value} coupling is not tightened",
        sources=list(dict.fromkeys(origin.source for origin in origins)),
        kinds=list(dict.fromkeys(origin.kind for origin in origins)),
        notes=[prose(note) for note in dict.fromkeys(origin.note for origin in origins) if note],
    )


def _figures(range_nm: Interval) -> str:
    return torque_words(range_nm.low.value, range_nm.high.value)
