"""What names mean: every name of the catalogue in force, however it is written, with the fields it stands for."""

import re
from collections.abc import Iterator
from typing import NamedTuple

from ..catalogue import catalogue, per_edition
from .results import FieldValue

__all__ = ["BANDS", "Meaning", "Phrases", "phrases", "spoken_names", "squashed", "suggested"]

BANDS = ("band", "frequency_hz")


class Meaning(NamedTuple):
    """A field of a cell's request and its value."""

    field: str
    value: FieldValue


class Phrases(NamedTuple):
    """What each squashed name means; the squashed words that say nothing, and those that deny what follows."""

    meanings: dict[str, list[Meaning]]
    filler: frozenset[str]
    denial: frozenset[str]
    spoken: dict[str, str]
    """Each squashed name as the catalogue writes it."""
    most_words: int
    """Of the longest name, counted between what is neither letter nor digit."""


def squashed(text: str) -> str:
    """A name without case, spaces and marks; between digits a point or a slash stays: "4.3-10" is "4.3/10"."""
    text = text.lower().replace("Ω", "ohm").replace("ω", "ohm")
    text = re.sub(r"(?<=\d)[,.](?=\d)", "·", text)
    text = re.sub(r"(?<=\d)[-/](?=\d)", "|", text)
    text = re.sub(r"(?<=\d) (?=\d)", "_", text)
    return re.sub(r"[^\w·|]", "", text).replace("·", ".").replace("|", "/")


@per_edition(maxsize=1)
def phrases() -> Phrases:
    """Of the catalogue in force; of two entries with one name the first has it."""
    named = list(_named())
    small = catalogue().small_words
    meanings: dict[str, list[Meaning]] = {}
    spoken: dict[str, str] = {}
    for name, meaning in named:
        meanings.setdefault(squashed(name), meaning)
        spoken.setdefault(squashed(name), name)
    texts = [name for name, _ in named] + [word for words in small.values() for word in words.words]
    return Phrases(
        meanings=meanings,
        filler=frozenset(map(squashed, small["filler"].words)),
        denial=frozenset(map(squashed, small["denial"].words)),
        spoken=spoken,
        most_words=max(len(re.findall(r"\w+", text)) for text in texts),
    )


def spoken_names() -> list[str]:
    """Every name that can be typed, as the catalogue writes it."""
    return list(phrases().spoken.values())


def suggested(field: str, value: FieldValue) -> str:
    """The name by which a value of a field is typed."""
    wanted = Meaning(field, value)
    return next((name for name, meaning in _named() if meaning == [wanted]), str(value))


def _named() -> Iterator[tuple[str, list[Meaning]]]:
    """Every name with what it means: connectors first, as they are asked about."""
    tables = catalogue()
    for family in tables.interfaces.values():
        yield from _all_mean([*_each(family.also_called), *family.typed_as, family.name], Meaning("family", family.id))
    for band in tables.bands.values():
        yield from _all_mean([band.name, *band.typed_as], Meaning("band", band.id))
    for mode in tables.modes.values():
        yield from _all_mean([*mode.typed_as, mode.name], Meaning("mode", mode.id))
    for cable in tables.cables.values():
        yield from _all_mean([cable.name, *_each(cable.also_called), *cable.typed_as], Meaning("cable", cable.id))
    for condition in tables.conditions.values():
        yield from _all_mean([*condition.typed_as, condition.name], Meaning("condition", condition.id))
    for installation in tables.installations.values():
        exposure = Meaning("exposure", installation.least_exposure.value)
        vibration = Meaning("vibration", installation.least_vibration.value)
        yield from _all_mean(installation.typed_as, exposure, vibration)
    for word in tables.site_words.values():
        yield from _all_mean(word.typed_as, Meaning(word.field, word.value))


def _all_mean(names: list[str], *meanings: Meaning) -> Iterator[tuple[str, list[Meaning]]]:
    for name in names:
        yield name, list(meanings)


def _each(names: list[str]) -> Iterator[str]:
    """Names, and each of those that stand together as "PL-259 / SO-239"."""
    for name in names:
        yield from name.split(" / ")
        yield name
