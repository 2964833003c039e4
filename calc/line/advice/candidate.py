"""One change of a line that may be offered."""

from typing import Literal, NamedTuple

from ...feedline.elements import Tuner

__all__ = ["Candidate", "Kind"]

Kind = Literal["joint", "cable", "ends", "everywhere", "adapter", "tuner"]


class Candidate(NamedTuple):
    """What is put in the place of which links, and which are left out."""

    kind: Kind
    about: tuple[int, ...]
    """Links that it is about; changes of a kind about the same ones are alternatives."""
    replaced: dict[int, str]
    """Link by link, the family or the cable in its place; of a change everywhere, also those that have it already."""
    dropped: frozenset[int] = frozenset()
    """Joints of adapters that go with them."""
    tuner: Tuner | None = None
    """A tuner put in front of the one link that the change is about; of one at the antenna, behind the last."""
