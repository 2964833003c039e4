"""What to have ready for the whole station."""

from collections import Counter

from ..catalogue import catalogue
from ..feedline.elements import CableRun, Element, Joint
from ..physics.limits import assumption
from .pairs import Pair, Side
from .results import JointSheet, QuantityRow

__all__ = ["adapter_name", "quantities"]

Key = tuple[str, str, str, str]
"""What, family, cable, detail."""


def quantities(elements: list[Element], pairs: list[Pair], sheets: list[JointSheet]) -> list[QuantityRow]:
    """Plugs, jacks, adapters and parts in pieces, then cables and tapes in metres."""
    pieces: Counter[Key] = Counter(_half(pair, side) for pair in pairs for side in pair.sides if not side.adapter)
    pieces.update(
        ("Adapter", element.family, "", _adapter_at(at, sheets))
        for at, element in enumerate(elements)
        if isinstance(element, Joint) and element.adapter_to is not None
    )
    pieces.update(
        ("Part", "", "", element.name or "as in the line")
        for element in elements
        if not isinstance(element, Joint | CableRun)
    )
    rows = [QuantityRow(*key, quantity=count, unit="pieces") for key, count in pieces.items()]
    return rows + _cables(elements) + _tapes(sheets)


def adapter_name(first: Pair, second: Pair) -> str:
    """An adapter by the halves at its two ends."""
    ends = [f"{pair.interface.name} {side.half}" for pair, side in ((first, first.sides[1]), (second, second.sides[0]))]
    return f"{ends[0]} to {ends[1]}"


def _adapter_at(element: int, sheets: list[JointSheet]) -> str:
    return next(sheet.adapter for sheet in sheets if sheet.element == element)


def _half(pair: Pair, side: Side) -> Key:
    what = f"{side.half.capitalize()}, {pair.interface.name}"
    if side.cable is None:
        return (what, pair.interface.id, "", f"on {side.on}: see that it is there")
    return (
        what,
        pair.interface.id,
        side.cable.id,
        f"for {side.cable.name}, {side.cable.outer_diameter_m.value * 1e3:g} mm",
    )


def _cables(elements: list[Element]) -> list[QuantityRow]:
    spare = float(assumption("spare_cable_share"))
    lengths: Counter[str] = Counter()
    for element in elements:
        if isinstance(element, CableRun):
            lengths[element.cable] += element.length_m
    return [
        QuantityRow(
            "Cable",
            "",
            cable,
            f"{catalogue().cables[cable].name}: {length:g} m in the line and {spare * 100:g} % to spare",
            length * (1 + spare),
            "m",
        )
        for cable, length in lengths.items()
    ]


def _tapes(sheets: list[JointSheet]) -> list[QuantityRow]:
    lengths: Counter[str] = Counter()
    joints: Counter[str] = Counter()
    for sheet in sheets:
        for layer in sheet.sealing.layers:
            lengths[layer.name] += layer.length_m
            joints[layer.name] += 1
    return [
        QuantityRow(name, "", "", f"for {joints[name]} joint{'s' if joints[name] > 1 else ''}", length, "m")
        for name, length in lengths.items()
    ]
