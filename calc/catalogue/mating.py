"""What comes of it when two coaxial ends meet: by family and gender, from the catalogue's matings."""

from typing import Literal, NamedTuple

from . import catalogue, per_edition

__all__ = ["OPPOSITE", "ConnectorEnd", "Gender", "Meeting", "end_name", "mates_of", "meeting"]

Gender = Literal["plug", "jack"]
OPPOSITE: dict[Gender, Gender] = {"plug": "jack", "jack": "plug"}
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
    """The end in words, "N plug"."""
    return f"{catalogue().interfaces[end.family].name} {end.gender}"


def meeting(one: ConnectorEnd, other: ConnectorEnd) -> Meeting:
    """What comes of joining two ends."""
    if one.gender == other.gender:
        pair = f"Two {end_name(one)}s" if one == other else f"{end_name(one)} and {end_name(other)}"
        return Meeting(False, "same gender", f"{pair} do not mate: a plug needs a jack.", "common_practice", _PRACTICE)
    if one.family == other.family:
        return Meeting(True, "mates", "", "common_practice", _PRACTICE)
    plug, jack = (one, other) if one.gender == "plug" else (other, one)
    told = _matings().get((plug.family, jack.family))
    if told is None:
        sentence = f"{end_name(plug)} and {end_name(jack)} do not fit each other."
        return Meeting(False, "unrelated", sentence, "common_practice", _PRACTICE)
    sentence = f"{end_name(plug)} in {end_name(jack)}: {told.text}"
    return Meeting(told.verdict in HOLDING, told.verdict, sentence, told.source, told.kind)


@per_edition(maxsize=256)
def mates_of(end: ConnectorEnd) -> tuple[ConnectorEnd, ...]:
    """Every end that makes a joint with this one, its own family first."""
    own = ConnectorEnd(end.family, OPPOSITE[end.gender])
    others = (ConnectorEnd(family, own.gender) for family in catalogue().interfaces if family != end.family)
    return (own, *(other for other in others if meeting(end, other).mates))


_PRACTICE = "common practice"


@per_edition(maxsize=1)
def _matings() -> dict:
    """The catalogue's matings by family of the plug and family of the jack."""
    told = {(mating.plug, mating.jack): mating for mating in catalogue().matings.values()}
    turned = {(mating.jack, mating.plug): mating for mating in catalogue().matings.values() if mating.either_way}
    return turned | told
