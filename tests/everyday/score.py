"""What an answer blames, and whether it is right: the one place that knows the shape of an answer."""

from typing import NamedTuple

import numpy as np

VISIBLE = 0.03
"""Change of the reflection, rms, from which on a fault is to be found."""


class Blame(NamedTuple):
    """One accusation: an element, where it is along the described line, and how sure."""

    element: int
    place_m: float
    in_cable: bool
    sure: float | None


class Reading(NamedTuple):
    """What an answer's headline says."""

    blames: list[Blame]
    """Each is said to be bad."""
    maybe: list[Blame]
    """One of them is, and it can't tell which."""
    end: Blame | None
    """It or the antenna beside it is bad."""
    undecided: bool
    """It says that it can't tell, or that the line does not fit."""


def read(answer):
    """The reading of an answer of the operation "sweep" about a one-port file."""
    check = answer["line"]

    def blame(one):
        return Blame(one["element"], one["distance_m"], one["where"] == "cable", one.get("probability"))

    named = [blame(one) for one in check["faults"]]
    maybe = [blame(one) for one in check["candidates"] if one["element"] in check["apart"]]
    ends = [
        Blame(joint["element"], joint["distance_m"], False, None)
        for joint in check["joints"]
        if check["end"] and joint["element"] == check["end"]["element"]
    ]
    undecided = check["finding"] in ("unclear", "end", "cannot tell", "no fit")
    return Reading(named, maybe, ends[-1] if ends else None, undecided)


class Outcome(NamedTuple):
    """One answer against the truth."""

    kinds: list[str]
    quality: str
    end: str
    visible: bool
    """Some fault changes the reflection by more than VISIBLE."""
    verdict: str
    """Of a faulty line: right, wrong, can't tell, missed; of a sound one: sound, can't tell, accused."""
    among: bool
    """It can't tell, and the bad place is among those it names."""
    as_end: bool
    """A bad joint is named with the antenna beside it, and which of the two it is not told."""
    at_end: bool
    """Every fault is at the joint before the end, where it looks like another end."""
    unjudged: bool
    """The answer says that it can't judge a bad joint."""
    apart: bool
    """Every fault is farther from any joint but its own than the resolution."""
    as_cable: bool
    """A damage in a cable is found as such in its place."""
    far_joint: bool
    """A joint is blamed that is farther from every fault than the resolution."""
    told: list[tuple[float, bool]]
    """How sure of each accusation, and whether it is right."""
    seconds: float


def outcome(drawn, answer, seconds=0.0):
    """Judge the answer about a drawn line."""
    reading = read(answer)
    parts = answer["line"]["joints"]
    hits = [any(_is_right(drawn, blame, fault) for fault in drawn.truth) for blame in reading.blames]
    right_cables = [
        blame
        for blame in reading.blames
        if blame.in_cable and any(fault.in_cable and _is_right(drawn, blame, fault) for fault in drawn.truth)
    ]
    return Outcome(
        kinds=[fault.what for fault in drawn.truth],
        quality=drawn.quality,
        end=drawn.end,
        visible=any(change > VISIBLE for change in drawn.changes),
        verdict=_verdict(drawn, reading, hits),
        among=any(_is_right(drawn, blame, fault) for blame in reading.maybe for fault in drawn.truth),
        as_end=_is_at_end(drawn, reading),
        at_end=all(fault.element == len(drawn.request["elements"]) - 1 for fault in drawn.truth),
        unjudged=any(
            one["state"] == "hidden" and one["element"] == fault.element for one in parts for fault in drawn.truth
        ),
        apart=all(_is_apart(drawn, fault) for fault in drawn.truth),
        as_cable=bool(right_cables),
        far_joint=any(not hit and not blame.in_cable for blame, hit in zip(reading.blames, hits, strict=True)),
        told=[(blame.sure, hit) for blame, hit in zip(reading.blames, hits, strict=True) if blame.sure is not None],
        seconds=seconds,
    )


def _is_right(drawn, blame, fault):
    """The same joint, or a place within the resolution; a damage has a length of its own."""
    if not fault.in_cable and blame.element == fault.element:
        return True
    return abs(blame.place_m - fault.place_m) <= drawn.resolution_m + fault.extent_m / 2


def _is_apart(drawn, fault):
    joints = {
        at: start for at, (start, _) in drawn.places_m.items() if drawn.request["elements"][at]["kind"] == "joint"
    }
    gaps = [abs(place - fault.place_m) for at, place in joints.items() if at != fault.element]
    return min(gaps) > drawn.resolution_m + fault.extent_m / 2


def _is_at_end(drawn, reading):
    return reading.end is not None and any(_is_right(drawn, reading.end, fault) for fault in drawn.truth)


def _verdict(drawn, reading, hits):
    if not drawn.truth:
        # to say that one of the joints is bad accuses them too
        accused = reading.blames or reading.maybe or reading.end
        return "accused" if accused else "can't tell" if reading.undecided else "sound"
    if hits:
        return "right" if all(hits) else "wrong"
    if reading.end is not None:
        return "right" if _is_at_end(drawn, reading) else "wrong"
    return "can't tell" if reading.undecided else "missed"


class PartReading(NamedTuple):
    """What an answer says of a two-port."""

    passed: bool
    failed: bool
    resistance_ohm: float
    uncertainty_ohm: float
    limit_loss_db: np.ndarray
    limit_return_loss_db: np.ndarray
    change_ohm: float | None
    change_uncertainty_ohm: float | None

    def loss_over_db(self, real):
        """By how much a part's real loss is over its limit at most [dB]; below 0 within it."""
        return float(np.max(-20 * np.log10(np.abs(real.through)) - self.limit_loss_db))

    def is_within(self, real):
        """Whether a part, by its real scattering, keeps its limits of loss and reflection."""
        reflected = np.maximum(np.abs(real.near), np.abs(real.far))
        return self.loss_over_db(real) <= 0 and bool(np.all(-20 * np.log10(reflected) >= self.limit_return_loss_db))

    def change_holds(self, real_ohm, deviations):
        """Whether the real change lies within so many of the deviations stated."""
        return abs(self.change_ohm - real_ohm) <= deviations * self.change_uncertainty_ohm


def read_part(answer):
    """The reading of an answer of the operation "sweep" about a two-port file."""
    part = answer["part"]
    trend = part["trend"] or {"resistance_change_ohm": None, "uncertainty_ohm": None}
    limits = (np.array(part[f"limit_{what}_db"], dtype=float) for what in ("loss", "return_loss"))
    return PartReading(
        part["finding"] == "passed",
        part["finding"] == "failed",
        part["resistance_ohm"],
        part["resistance_uncertainty_ohm"],
        *limits,
        trend["resistance_change_ohm"],
        trend["uncertainty_ohm"],
    )
