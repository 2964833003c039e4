"""Reading a question as it is typed: in any order, in any case, words that say nothing passed over.

At each place the longest thing that can be read is taken: a name of the
catalogue, a figure with its unit, or a small word. What is said twice, denied
or not known is not taken, and said so.
"""

import re
from collections.abc import Iterator, Sequence
from difflib import get_close_matches
from typing import NamedTuple

from ..catalogue import catalogue
from ..physics.gates import EXPOSURES, VIBRATIONS
from .phrases import BANDS, Meaning, phrases, squashed, suggested
from .quantities import Complaint, Figure, figures_at
from .results import FieldValue, ReadWord, UnreadWord
from .wording import FIELD_NAMES, value_in_words

__all__ = ["Reading", "read"]

LIKE = str.maketrans("−–‑‐’‘′“”″μ\u2126º˚\u00a0\u2009\u202f\t\n\r", "----'''\"\"\"µΩ°°      ")
"""One sign for each of those that look alike."""

MARKS = " ,;:?!()[]{}\"'@=+./\\-&*_|<>~≈≤^…"
"""Between words they mean nothing."""

ITU_RANGES = {"lf": 5, "mf": 6, "hf": 7, "vhf": 8, "uhf": 9, "shf": 10, "ehf": 11}
"""Band numbers of Recommendation ITU-R V.431: number N reaches from 0.3 to 3 times 10^N Hz."""

ORDERED: dict[str, Sequence[str]] = {"exposure": EXPOSURES, "vibration": VIBRATIONS}
"""Of what rises in steps, an installation asks for at least one."""

MOST_NEAR, LIKENESS, DIGITS_LIKE = 3, 0.66, 3


class Reading(NamedTuple):
    """The fields that were typed with their values, what was read for them, and what was not."""

    values: dict[str, FieldValue]
    read: list[ReadWord]
    unread: list[UnreadWord]
    unclear: list[str]
    """Fields that were typed in a way that can't be read, and not said otherwise."""


class _Item(NamedTuple):
    """A piece of the text: names and figures have meanings, complaints say why not; small words have neither."""

    start: int
    end: int
    meanings: Sequence[Meaning] = ()
    complaint: Complaint | None = None
    denies: bool = False
    unknown: bool = False


def read(text: str, region: int) -> Reading:
    """What a text says of a joint in an ITU Region."""
    plain = text.translate(LIKE)
    items = _without_denied(plain, list(_items(plain, region)))
    taking = _Taking(plain, region, items)
    for item in items:
        taking.take(item)
    unclear = [field for field in taking.unclear if field not in taking.values]
    return Reading(taking.values, taking.read, taking.unread, unclear)


def _items(text: str, region: int) -> Iterator[_Item]:
    small = "".join(letter.lower() if len(letter.lower()) == 1 else letter for letter in text)
    at = 0
    while at < len(text):
        if text[at] in MARKS and not re.match(r"[.,+-]\d", text[at : at + 2]):
            at += 1
            continue
        item = _item(text, small, at, region)
        yield item
        at = item.end


def _item(text: str, small: str, start: int, region: int) -> _Item:
    """The longest item that begins at a place; of a name and a figure of one length, the name."""
    found = [
        *_names_at(text, small, start),
        *(_of_figure(start, one) for one in figures_at(text, small, start, region)),
    ]
    if found:
        return max(found, key=lambda item: item.end)
    word = re.compile(r"\w+(?:-\w+)*|.", re.DOTALL).match(text, start)
    return _Item(start, word.end() if word else len(text), unknown=text[start] not in MARKS)


def _of_figure(start: int, figure: Figure) -> _Item:
    return _Item(start, figure.end, [figure.meaning] if figure.meaning else [], figure.complaint)


def _names_at(text: str, small: str, start: int) -> Iterator[_Item]:
    """Every name and small word that begins at a place, the longest first."""
    if not small[start].isalnum():
        return
    known = phrases()
    ends = [word.end() for word in re.finditer(r"\w+", small[start:])][: known.most_words]
    for length in reversed(ends):
        name = squashed(small[start : start + length])
        end = start + length
        singular = name.removesuffix("s") if small[end - 2].isalnum() else name
        meanings = known.meanings.get(name) or (known.meanings.get(singular) if len(singular) > 1 else None)
        if meanings is not None:
            yield _Item(start, end, meanings)
        elif name in ITU_RANGES:
            yield _Item(start, end, complaint=Complaint("", []))
        elif name in known.filler and not re.match(r"[-/]\w", text[end : end + 2]):
            yield _Item(start, end)
        elif name in known.denial:
            yield _Item(start, end, denies=True)


def _without_denied(text: str, items: list[_Item]) -> list[_Item]:
    """The items, what is denied made a complaint, and unknown words that stand together made one."""
    kept: list[_Item] = []
    denial: _Item | None = None
    for item in items:
        says = bool(item.meanings or item.complaint or item.unknown)
        if item.denies:
            denial = denial or item
        elif denial and says:
            kept.append(_Item(denial.start, item.end, complaint=Complaint("Say what it is, not what it isn't.", [])))
            denial = None
        elif item.unknown and kept and kept[-1].unknown and not text[kept[-1].end : item.start].strip():
            kept[-1] = kept[-1]._replace(end=item.end)
        else:
            kept.append(item)
    return kept


class _Taking:
    """Takes items in their order into fields; what was said first stands."""

    def __init__(self, text: str, region: int, items: list[_Item]) -> None:
        self.values: dict[str, FieldValue] = {}
        self.read: list[ReadWord] = []
        self.unread: list[UnreadWord] = []
        self.unclear: list[str] = []
        self._text, self._region = text, region
        self._at_least: set[str] = set()
        families = [item for item in items if any(meaning.field == "family" for meaning in item.meanings)]
        self._other_family = any(self._typed(item).lower() not in ITU_RANGES for item in families)

    def take(self, item: _Item) -> None:
        """Take one more item."""
        typed = self._typed(item)
        if squashed(typed) in ITU_RANGES and (self._other_family or not item.meanings):
            self._refuse(typed, _range_complaint(squashed(typed), self._region))
        elif item.unknown:
            self._refuse(typed, Complaint(f"“{typed}” is not understood.", _near(typed)))
        elif item.complaint is not None:
            self._refuse(typed, item.complaint)
        elif len(item.meanings) > 1:
            for meaning in item.meanings:
                self._take_at_least(typed, meaning)
        elif item.meanings:
            self._take(typed, item.meanings[0])

    def _typed(self, item: _Item) -> str:
        return self._text[item.start : item.end].strip()

    def _refuse(self, typed: str, complaint: Complaint) -> None:
        self.unread.append(UnreadWord(typed, complaint.words, complaint.near))
        if complaint.field is not None:
            self.unclear.append(complaint.field)

    def _take(self, typed: str, meaning: Meaning) -> None:
        field, value = meaning
        if field == "band" and str(self._region) not in catalogue().bands[str(value)].regions:
            self._refuse(typed, Complaint(f"“{typed}” is no amateur band in Region {self._region}.", []))
            return
        said = next((one for one in (BANDS if field in BANDS else (field,)) if one in self.values), None)
        yields = field in self._at_least and self._is_harsher(meaning)
        if said is not None and Meaning(said, self.values[said]) != meaning and not yields:
            self._refuse_second(typed, meaning, value_in_words(said, self.values[said]))
        else:
            self._set(typed, meaning)

    def _take_at_least(self, typed: str, meaning: Meaning) -> None:
        """What an installation brings along, where nothing harsher was said."""
        if self._is_harsher(meaning):
            for before in [one for one in self.read if one.field == meaning.field and one.value != meaning.value]:
                self.read.remove(before)
                self._refuse_second(before.typed, meaning, value_in_words(*meaning))
            self._set(typed, meaning)
            self._at_least.add(meaning.field)

    def _refuse_second(self, typed: str, meaning: Meaning, kept: str) -> None:
        words = f"{FIELD_NAMES[meaning.field]} is given twice: {kept} is taken, “{typed}” is not."
        self._refuse(typed, Complaint(words, []))

    def _is_harsher(self, meaning: Meaning) -> bool:
        order = ORDERED[meaning.field]
        before = self.values.get(meaning.field)
        return before is None or order.index(str(meaning.value)) >= order.index(str(before))

    def _set(self, typed: str, meaning: Meaning) -> None:
        self.values[meaning.field] = meaning.value
        self.read.append(ReadWord(typed, meaning.field, meaning.value, value_in_words(*meaning)))


def _range_complaint(name: str, region: int) -> Complaint:
    """What to say to a range of frequencies, which is many bands."""
    scale = 10.0 ** ITU_RANGES[name]
    near = [
        suggested("band", band.id)
        for band in catalogue().bands.values()
        for allocated, edges in band.regions.items()
        if allocated == str(region) and 0.3 * scale <= edges.low_hz < 3 * scale
    ]
    return Complaint(f"“{name.upper()}” is a range of many bands: which one?", near)


def _near(typed: str) -> list[str]:
    """Names that look like what was typed, or have its digits."""
    spoken, found = phrases().spoken, []
    for word in map(squashed, typed.split()):
        digits = re.sub(r"\D", "", word)
        alike = [name for name in spoken if len(digits) >= DIGITS_LIKE and re.sub(r"\D", "", name) == digits]
        if len(word) >= DIGITS_LIKE:
            alike = get_close_matches(word, spoken, n=MOST_NEAR, cutoff=LIKENESS) + alike
        found += [spoken[name] for name in alike]
    return list(dict.fromkeys(found))[:MOST_NEAR]
