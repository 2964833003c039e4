"""The mated pairs of a line: which half sits on which cable, device or adapter."""

from typing import NamedTuple

from ..catalogue import catalogue
from ..catalogue.fitting import Attachment
from ..catalogue.schema import Cable, Interface
from ..feedline.elements import CableRun, Element, Joint
from ..feedline.feedline import Feedline
from ..feedline.joint import JointLink
from ..feedline.surroundings import touching

__all__ = ["Pair", "Side", "attachment", "pairs"]


class Side(NamedTuple):
    """What one half of a pair sits on; no cable means a device, or the adapter itself."""

    half: str
    on: str
    cable: Cable | None
    adapter: bool


class Pair(NamedTuple):
    """A mated pair; `sides` has the transmitter's first."""

    element: int
    end: str
    joint: Joint
    interface: Interface
    sides: tuple[Side, Side]
    link: JointLink

    @property
    def cables(self) -> list[Cable]:
        """The cables that end in it."""
        return [side.cable for side in self.sides if side.cable]


def pairs(elements: list[Element], feedline: Feedline) -> list[Pair]:
    """The pairs of a chain in order from the transmitter; an adapter makes two."""
    links = iter([link for link in feedline.links if isinstance(link, JointLink)])
    found = []
    for at, element in enumerate(elements):
        if not isinstance(element, Joint):
            continue
        before, after = touching(elements, at)
        left, right = (
            Side("", _holder(elements, at - 1), before, False),
            Side("", _holder(elements, at + 1), after, False),
        )
        if element.adapter_to is None:
            places = [("whole", left, right)]
        else:
            middle = Side("", "the adapter", None, True)
            places = [("transmitter", left, middle), ("antenna", middle, right)]
        for end, one, other in places:
            link = next(links)
            interface = catalogue().interfaces[link.family]
            found.append(Pair(at, end, element, interface, _gendered(one, other), link))
    return found


def attachment(interface: Interface, cable: Cable) -> Attachment:
    """How the half of a family is put on a cable."""
    return next(
        way
        for way in catalogue().attachments.values()
        if (not way.families or interface.id in way.families)
        and (not way.constructions or cable.construction in way.constructions)
        and (way.thickest_m is None or cable.outer_diameter_m.value <= way.thickest_m)
    )


def _gendered(left: Side, right: Side) -> tuple[Side, Side]:
    """The plug goes on a cable, else on an adapter; devices have jacks."""
    plug_left = left.cable is not None or (right.cable is None and left.adapter)
    halves = ("plug", "jack") if plug_left else ("jack", "plug")
    return left._replace(half=halves[0]), right._replace(half=halves[1])


def _holder(elements: list[Element], at: int) -> str:
    if at < 0:
        return "the transmitter"
    if at == len(elements):
        return "the antenna"
    element = elements[at]
    if element.name:
        return element.name
    if isinstance(element, CableRun):
        return catalogue().cables[element.cable].name
    return "the joint beside it" if isinstance(element, Joint) else "the part beside it"
