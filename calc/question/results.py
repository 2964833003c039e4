"""What the core answers to a question. Every number's unit is in its key."""

from typing import Literal

from msgspec import Struct

from ..physics.margin_words import MarginStep

__all__ = [
    "Better",
    "Doubt",
    "FieldValue",
    "LimitedBy",
    "QuestionResult",
    "ReadWord",
    "UnreadWord",
    "Verdict",
    "VerdictStep",
]

FieldValue = bool | float | str | None
"""What a field of a cell's request may be set to."""

VerdictStep = MarginStep | Literal["uncertain", "refused", "receive"]


class ReadWord(Struct, frozen=True):
    """What something typed was taken for: the value of a field of a cell's request."""

    typed: str
    field: str
    value: FieldValue
    words: str


class UnreadWord(Struct, frozen=True):
    """Something typed that was not understood, or can be read in several ways."""

    typed: str
    words: str
    """A sentence on why."""
    near: list[str]
    """What could be typed in its place."""


class Verdict(Struct, frozen=True):
    """The answer: its step, a short headline and a sentence."""

    step: VerdictStep
    headline: str
    sentence: str


class LimitedBy(Struct, frozen=True):
    """What decides: a limit, or the gate that refuses."""

    id: str
    name: str
    sentence: str


class Doubt(Struct, frozen=True):
    """What speaks against the joint beside its margin: a soft gate that fails."""

    id: str
    name: str
    sentence: str


class Better(Struct, frozen=True):
    """One change, and what the joint then stands, computed."""

    title: str
    sentence: str
    changes: dict[str, FieldValue]
    """Fields of the cell's request with their new values."""
    margin_db: float | None
    largest_power_w: float | None


class QuestionResult(Struct, frozen=True):
    """What was understood, and the answer where connector and band are known."""

    asked: dict[str, FieldValue] | None
    """The request of the cell that is answered, without fields at their defaults; null where one is missing."""
    sentence: str
    """The question in words."""
    read: list[ReadWord]
    unread: list[UnreadWord]
    missing: list[str]
    """What must be said, a sentence each."""
    taken: list[str]
    """What was not said and is taken as usual, a sentence each."""
    verdict: Verdict | None
    margin_db: float | None
    margin_high_db: float | None
    largest_power_w: float | None
    """By the cautious figures."""
    limited_by: LimitedBy | None
    doubts: list[Doubt]
    better: list[Better]
    """What one would do first comes first; each alone."""
    cautions: list[str]
