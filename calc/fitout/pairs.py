"""The mated pairs of a line: which half sits on which cable, device or adapter."""

from typing import NamedTuple

from ..catalogue import catalogue
from ..catalogue.fitting import Attachment, Screen
from ..catalogue.mating import OPPOSITE, ConnectorEnd, Gender, end_name
from ..catalogue.schema import Cable, Interface
from ..feedline.elements import CableRun, Element, Joint, WireRun
from ..feedline.feedline import Feedline
from ..feedline.joint import JointLink
from ..feedline.surroundings import touching
from .results import Half, JointEnd

__all__ = ["Pair", "Side", "adapter_names", "attachment", "halves", "pairs", "screen_of"]


class Holder(NamedTuple):
    """What one half of a pair sits on; no cable means a device, or the adapter itself."""

    name: str
    cable: Cable | None
    adapter: bool


class Side(NamedTuple):
    """One half of a pair, and what it sits on."""

    half: Gender
    on: Holder


class Pair(NamedTuple):
    """A mated pair; `sides` has the transmitter's first."""

    element: int
    end: JointEnd
    joint: Joint
    interface: Interface
    sides: tuple[Side, Side]
    link: JointLink

    @property
    def cables(self) -> list[Cable]:
        """The cables that end in it, each once."""
        cables = [side.on.cable for side in self.sides if side.on.cable]
        return list({cable.id: cable for cable in cables}.values())


def pairs(elements: list[Element], feedline: Feedline) -> list[Pair]:
    """The pairs of a line in order from the transmitter; an adapter makes two."""
    links = iter([link for link in feedline.links if isinstance(link, JointLink)])
    found = []
    for index, element in enumerate(elements):
        if not isinstance(element, Joint):
            continue
        before, after = touching(elements, index)
        left = Holder(_name(elements, index - 1), before, adapter=False)
        right = Holder(_name(elements, index + 1), after, adapter=False)
        ends: list[tuple[JointEnd, str, Holder, Holder]]
        if element.adapter_to is None:
            ends = [("whole", element.family, left, right)]
        else:
            adapter = Holder("the adapter", None, adapter=True)
            ends = [
                ("transmitter", element.family, left, adapter),
                ("antenna", element.adapter_to, adapter, right),
            ]
        for end, family, first, second in ends:
            interface = catalogue().interfaces[family]
            found.append(Pair(index, end, element, interface, _sides(first, second), next(links)))
    return found


def attachment(interface: Interface, cable: Cable) -> Attachment:
    """How the half of a family is put on a cable."""
    return next(
        candidate
        for candidate in catalogue().attachments.values()
        if (not candidate.families or interface.id in candidate.families)
        and (not candidate.constructions or cable.construction in candidate.constructions)
        and (candidate.thickest_m is None or cable.outer_diameter_m.value <= candidate.thickest_m)
    )


def screen_of(cable: Cable) -> Screen | None:
    """How the screen of a cable is built; a pack's cable says nothing of it."""
    return next((screen for screen in catalogue().screens.values() if cable.id in screen.cables), None)


def halves(pair: Pair) -> list[Half]:
    """The two halves as they are to be ordered, the transmitter's first."""
    return [
        Half(
            half=half,
            on=on.name,
            cable=on.cable.id if on.cable else None,
            cable_diameter_m=on.cable.outer_diameter_m.value if on.cable else None,
            attachment=attachment(pair.interface, on.cable).name if on.cable else "",
        )
        for half, on in pair.sides
    ]


def adapter_names(joints: list[Pair]) -> dict[int, str]:
    """Each adapter of a line, by its element, named by the halves at its own two ends."""
    ends: dict[int, list[str]] = {}
    for joint in joints:
        for side in joint.sides:
            if side.on.adapter:
                ends.setdefault(joint.element, []).append(end_name(ConnectorEnd(joint.interface.id, side.half)))
    return {element: " to ".join(names) for element, names in ends.items()}


def _sides(left: Holder, right: Holder) -> tuple[Side, Side]:
    """The plug goes on a cable, else on an adapter; devices have jacks."""
    plug_left = left.cable is not None or (right.cable is None and left.adapter)
    half: Gender = "plug" if plug_left else "jack"
    return Side(half, left), Side(OPPOSITE[half], right)


def _name(elements: list[Element], index: int) -> str:
    if index < 0:
        return "the transmitter"
    if index == len(elements):
        return "the antenna"
    element = elements[index]
    if element.name:
        return element.name
    if isinstance(element, CableRun):
        return catalogue().cables[element.cable].spoken_name
    if isinstance(element, WireRun):
        return catalogue().wire_lines[element.line].spoken_name
    return "the joint beside it" if isinstance(element, Joint) else "the part beside it"
