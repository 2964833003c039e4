"""One question about one joint: what was understood of it, the verdict, and what would make it better."""

import msgspec
from msgspec import Struct

from ..catalogue import catalogue
from ..errors import known
from ..physics.cautions import CAUTIONS
from ..physics.columns import chosen_column
from ..physics.judgement import judged
from .better import better
from .phrases import BANDS
from .reading import Reading, read
from .requests import QuestionRequest
from .results import FieldValue, QuestionResult
from .verdict import doubts, limited_by, verdict
from .wording import mode_in_words, power_in_words, question_in_words, value_in_words

__all__ = ["question"]

MISSING = {
    "family": "Say which connector, such as SO-239, N or BNC.",
    "band": "Say which band or frequency, such as 10 m or 14.2 MHz.",
}
UNCLEAR = {
    "power_w": "Say the power with its unit, such as 100 W or 1.5 kW.",
    "vswr": "Say the SWR, such as SWR 2.",
}
"""What must be said again before anything is answered: with what is usual in its place the answer would mislead."""

NOT_ASKED = ("text", "family", *BANDS, "power_w", "units")


def question(request: QuestionRequest) -> QuestionResult:
    """Answer a question that is typed, filled in, or both; what is typed wins.

    Raises InputError for unknown names in the fields. What is typed and not
    understood is no error: the answer names it.
    """
    reading = read(request.text, request.region)
    full = _with_typed(request, reading)
    if full.family is not None:
        known("family", full.family, catalogue().interfaces)
    known("mode", full.mode, catalogue().modes)
    known("condition", full.condition, catalogue().conditions)
    if full.cable is not None:
        known("cable", full.cable, catalogue().cables)
    if full.band is not None or full.frequency_hz is not None:
        chosen_column(full.band, full.frequency_hz, full.region)
    missing = [MISSING[field] for field in ("family", "band") if _is_missing(full, field)]
    missing += [sentence for field, sentence in UNCLEAR.items() if field in reading.unclear]
    told = QuestionResult(
        asked=None,
        sentence=question_in_words(full),
        read=reading.read,
        unread=reading.unread,
        missing=missing,
        taken=_taken(request, reading, full),
        verdict=None,
        margin_db=None,
        margin_high_db=None,
        largest_power_w=None,
        limited_by=None,
        doubts=[],
        better=[],
        cautions=CAUTIONS,
    )
    if missing or full.family is None:
        return told
    joint = judged(full.family, chosen_column(full.band, full.frequency_hz, full.region), full.power_w, full)
    return msgspec.structs.replace(
        told,
        asked=_asked(full),
        verdict=verdict(joint, full.mode),
        margin_db=joint.margins_db[0],
        margin_high_db=joint.margins_db[1],
        largest_power_w=joint.largest_power_w,
        limited_by=limited_by(joint, full.vswr),
        doubts=doubts(joint),
        better=better(full, joint),
    )


def _with_typed(request: QuestionRequest, reading: Reading) -> QuestionRequest:
    """The request with what was typed; a band typed replaces a frequency given, and the other way round."""
    typed = dict(reading.values)
    if any(field in typed for field in BANDS):
        typed = dict.fromkeys(BANDS) | typed
    return msgspec.structs.replace(request, **typed)


def _is_missing(request: QuestionRequest, field: str) -> bool:
    return all(getattr(request, one) is None for one in (BANDS if field == "band" else (field,)))


def _asked(request: QuestionRequest) -> dict[str, FieldValue]:
    """The cell's request: what names the cell, and every other field that is not at its default."""
    usual: Struct = QuestionRequest()
    named: dict[str, FieldValue] = {"family": request.family}
    named |= {field: getattr(request, field) for field in BANDS if getattr(request, field) is not None}
    named["power_w"] = request.power_w
    others = (field for field in request.__struct_fields__ if field not in NOT_ASKED)
    return named | {
        field: getattr(request, field) for field in others if getattr(request, field) != getattr(usual, field)
    }


def _taken(request: QuestionRequest, reading: Reading, full: QuestionRequest) -> list[str]:
    """What was neither typed nor given by a field, where it counts."""
    usual = QuestionRequest()
    words = {
        "power_w": f"No power given: {power_in_words(full.power_w)} is taken.",
        "mode": f"No mode given: {mode_in_words(full.mode)} is taken.",
        "vswr": f"No SWR given: {full.vswr:g} is taken.",
        "exposure": f"No place given: {value_in_words('exposure', full.exposure)} is taken.",
    }
    return [
        sentence
        for field, sentence in words.items()
        if field not in (*reading.values, *reading.unclear)
        and getattr(request, field) == getattr(usual, field)
        and (full.power_w > 0 or field == "exposure")
    ]
