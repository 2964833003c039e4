"""Why a family stands where it stands, in words: beside each, and of the first against the second."""

from typing import NamedTuple

from ..catalogue import catalogue
from ..physics.margin_words import margin_step
from .adapters import NONE_SOLD
from .evaluation import Evaluation
from .ranking import OTHER_CABLES, Contender
from .requests import ChooseRequest

__all__ = ["Reasons", "reasons_for"]

NUMBERS = {2: "two", 3: "three", 4: "four"}


class Reasons(NamedTuple):
    """What the words speak of, beside the families themselves."""

    margin_asked_db: float
    port: str | None
    """Name of the port's family."""
    cable_known: bool
    highest: str
    """Name of the highest column, where loss is told."""

    def of_place(self, contender: Contender, before: Contender | None, behind: Contender | None) -> list[str]:
        """How a family stands, the criteria in their order, with what sets it off from those before and behind it."""
        found = [
            self.shortfall(contender).removeprefix("is "),
            *self._changes(contender),
            *([one.words for one in contender.unusual] or [self._usual()]),
            *self._loss(contender, before),
            *_closely(contender, before, behind),
        ]
        return [words for words in found if words]

    def over(self, first: Contender, second: Contender) -> str:
        """What puts one family before another, in the words of the criterion that decides."""
        one, two, name = first.merit, second.merit, second.interface.name
        if one.short_tenths != two.short_tenths:
            return f"{name} {self.shortfall(second)}"
        if one.changes != two.changes:
            good = " and ".join(self._changes(first)) or "needs no tape against the weather"
            return f"it {good}, {name} {' and '.join(self._changes(second))}"
        if one.unusual != two.unusual:
            against = max((one for one in second.unusual if one not in first.unusual), key=lambda one: one.weight).words
            if against == OTHER_CABLES and not first.unusual:
                return f"it is made for this cable, {name} is seldom put on it"
            return f"{name} is {against}"
        if one.loss_steps != two.loss_steps:
            return f"it loses {second.loss_db - first.loss_db:.2f} dB less than {name} on {self.highest}"
        if one.size_tenths != two.size_tenths:
            return f"{name} would do as well but is larger"
        return f"it lasts {-one.wear:g} matings, {name} {-two.wear:g}"

    def shortfall(self, contender: Contender) -> str:
        """What a family has of the margin asked for; empty where it has enough."""
        margin_db = contender.margin_db
        if margin_db is None or contender.merit.short_tenths == 0:
            return ""
        word = {"at": "is at the limit, with", "tight": "is tight, with"}.get(margin_step(margin_db), "has")
        return f"{word} {margin_db:.1f} dB of the {self.margin_asked_db:g} dB asked for"

    def _changes(self, contender: Contender) -> list[str]:
        match contender.adapters:
            case None:
                found = []
            case 0:
                found = [f"fits the {self.port} socket as it is"]
            case 1:
                found = ["needs an adapter"]
            case number if number < NONE_SOLD:
                found = [f"needs {NUMBERS.get(number, number)} adapters"]
            case _:
                found = [f"no adapter from {self.port} is sold"]
        return [*found, "needs its tape against the weather"] if contender.taped else found

    def _usual(self) -> str:
        return "made for this cable" if self.cable_known else "usual for such a joint"

    def _loss(self, contender: Contender, before: Contender | None) -> list[str]:
        if before is None or contender.merit.loss_steps <= before.merit.loss_steps:
            return []
        more_db = contender.loss_db - before.loss_db
        return [f"loses {more_db:.2f} dB more than {before.interface.name} on {self.highest}"]


def _closely(contender: Contender, before: Contender | None, behind: Contender | None) -> list[str]:
    """Size and life, where nothing weightier tells a family from the one before, or the first from the second."""
    other = before or behind
    if other is None or contender.merit[:4] != other.merit[:4]:
        return []
    own, others, name = contender.merit, other.merit, other.interface.name
    if own.size_tenths != others.size_tenths:
        return [f"{'smaller' if own.size_tenths < others.size_tenths else 'larger'} than {name}"]
    if own.wear != others.wear:
        return [f"lasts {'longer' if own.wear < others.wear else 'fewer matings'} than {name}"]
    return [f"equal to {name}"]


def reasons_for(request: ChooseRequest, evaluation: Evaluation) -> Reasons:
    """The words for the families of an evaluation."""
    port = catalogue().interfaces[request.port].name if request.port is not None else None
    highest = max(evaluation.columns, key=lambda column: column.high_hz)
    return Reasons(request.margin_asked_db, port, evaluation.cable_diameter_m is not None, highest.name)
