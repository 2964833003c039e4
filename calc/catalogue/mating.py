"""What comes of it when two coaxial ends meet: by family and gender, from the catalogue's matings."""

from typing import Literal, NamedTuple

from .edition import catalogue, per_edition
from .schema import EVERYDAY_MARK, Mating

__all__ = ["OPPOSITE", "ConnectorEnd", "Gender", "Meeting", "end_name", "mates_of", "meeting"]

Gender = Literal["plug", "jack"]
OPPOSITE: dict[Gender, Gender] = {"plug": "jack", "jack": "plug"}
PRACTICE = "common practice"
"""The kind of what everybody in the trade knows."""
HOLDING = ("mates", "mates with care")
"""Verdicts that make a joint."""


class ConnectorEnd(NamedTuple):
    """One coaxial end: a port, or one side of an adapter."""

    family: str
    gender: Gender


class Meeting(NamedTuple):
    """Whether two ends make a joint, and a sentence with its source; no sentence where it is as it should be."""

    mates: bool
    verdict: str
    sentence: str
    source: str
    kind: str

    @property
    def trap(self) -> bool:
        """Whether it looks as if it mated and must not be tried."""
        return not self.mates and self.verdict not in ("same gender", "unrelated")


def end_name(end: ConnectorEnd) -> str:
    """The end in words, "N plug", with its everyday name where it has one: "UHF plug (PL-259)"."""
    interface = catalogue().interfaces[end.family]
    plug, _, jack = interface.everyday_names.partition(EVERYDAY_MARK)
    everyday = plug if end.gender == "plug" else jack
    return f"{interface.name} {end.gender}" + (f" ({everyday})" if everyday else "")


def meeting(near: ConnectorEnd, far: ConnectorEnd) -> Meeting:
    """What comes of joining two ends."""
    if near.gender == far.gender:
        two = f"Two {catalogue().interfaces[near.family].name} {near.gender}s"
        pair = two if near == far else f"{end_name(near)} and {end_name(far)}"
        return Meeting(False, "same gender", f"{pair} do not mate: a plug needs a jack.", "common_practice", PRACTICE)
    if near.family == far.family:
        return Meeting(True, "mates", "", "common_practice", PRACTICE)
    plug, jack = (near, far) if near.gender == "plug" else (far, near)
    mating = _matings().get((plug.family, jack.family))
    if mating is None:
        sentence = f"{end_name(plug)} and {end_name(jack)} do not fit each other."
        return Meeting(False, "unrelated", sentence, "common_practice", PRACTICE)
    sentence = f"{end_name(plug)} in {end_name(jack)}: {mating.text}"
    return Meeting(mating.verdict in HOLDING, mating.verdict, sentence, mating.source, mating.kind)


@per_edition(maxsize=256)
def mates_of(end: ConnectorEnd) -> tuple[ConnectorEnd, ...]:
    """Every end that makes a joint with this one, its own family first."""
    own = ConnectorEnd(end.family, OPPOSITE[end.gender])
    others = (ConnectorEnd(family, own.gender) for family in catalogue().interfaces if family != end.family)
    return (own, *(other for other in others if meeting(end, other).mates))


@per_edition(maxsize=1)
def _matings() -> dict[tuple[str, str], Mating]:
    """The catalogue's matings by family of the plug and family of the jack."""
    matings = catalogue().matings.values()
    as_listed = {(mating.plug, mating.jack): mating for mating in matings}
    turned = {(mating.jack, mating.plug): mating for mating in matings if mating.either_way}
    return turned | as_listed
