"""What to get for all joints of a station."""

from collections import Counter, defaultdict

from ..catalogue import catalogue
from ..catalogue.mating import ConnectorEnd, end_name
from ..feedline.elements import CableRun, Element, Joint, WireRun
from ..numeric.measures import length_words, size_words
from ..physics.ratings import assumption
from .pairs import Pair, Side
from .results import JointSheet, QuantityRow

__all__ = ["quantities"]

Key = tuple[str, str, str, str]
"""What, family, cable, detail."""


def quantities(
    elements: list[Element], pairs: list[Pair], adapters: dict[int, str], sheets: list[JointSheet]
) -> list[QuantityRow]:
    """Plugs, jacks, adapters and parts in pieces, then cables and tapes in metres.

    `adapters` names the adapters by their elements.
    """
    pieces: Counter[Key] = Counter(_half(pair, side) for pair in pairs for side in pair.sides if not side.on.adapter)
    pieces.update(
        ("Adapter", element.family, "", adapters[index])
        for index, element in enumerate(elements)
        if isinstance(element, Joint) and index in adapters
    )
    pieces.update(
        ("Part", "", "", element.name or "as in the line")
        for element in elements
        if not isinstance(element, Joint | CableRun | WireRun)
    )
    rows = [QuantityRow(*key, quantity=count, unit="pieces") for key, count in pieces.items()]
    return rows + _cables(elements) + _wire_lines(elements) + _tapes(sheets)


def _half(pair: Pair, side: Side) -> Key:
    family = pair.interface.id
    what = end_name(ConnectorEnd(family, side.half))
    cable = side.on.cable
    if cable is None:
        return what, family, "", f"on {side.on.name}: see that it is there"
    return what, family, cable.id, f"for {cable.spoken_name}, {size_words(cable.outer_diameter_m.value)}"


def _cables(elements: list[Element]) -> list[QuantityRow]:
    lengths: defaultdict[str, float] = defaultdict(float)
    for element in elements:
        if isinstance(element, CableRun):
            lengths[element.cable] += element.length_m
    return [_metres("Cable", cable, catalogue().cables[cable].spoken_name, length) for cable, length in lengths.items()]


def _wire_lines(elements: list[Element]) -> list[QuantityRow]:
    lengths: defaultdict[str, float] = defaultdict(float)
    for element in elements:
        if isinstance(element, WireRun):
            lengths[element.line] += element.length_m
    return [
        _metres("Two-wire line", "", catalogue().wire_lines[line].spoken_name, length)
        for line, length in lengths.items()
    ]


def _metres(what: str, cable: str, name: str, length: float) -> QuantityRow:
    spare = float(assumption("spare_cable_share"))
    detail = f"{name}: {length_words(length)} in the line and {spare * 100:g} % to spare"
    return QuantityRow(what, "", cable, detail, length * (1 + spare), "m")


def _tapes(sheets: list[JointSheet]) -> list[QuantityRow]:
    lengths: defaultdict[str, float] = defaultdict(float)
    joints: Counter[str] = Counter()
    for sheet in sheets:
        for layer in sheet.sealing.layers:
            lengths[layer.name] += layer.length_m
            joints[layer.name] += 1
    return [
        QuantityRow(name, "", "", f"for {joints[name]} joint{'s' if joints[name] > 1 else ''}", length, "m")
        for name, length in lengths.items()
    ]
