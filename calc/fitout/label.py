"""The label of a joint: what it should measure, and the way back to its derivation."""

from typing import NamedTuple

import msgspec

from ..catalogue import catalogue, per_edition
from ..physics.columns import chosen_column
from ..physics.family_ratings import family_ratings
from ..physics.limits import match_of
from ..physics.losses import pair_losses
from ..physics.ratings import ENDS
from ..physics.scenario import Scenario
from ..physics.station import station_of
from .results import JointLabel

__all__ = ["LabelledJoint", "fragment", "label"]

MOST_LABELS = 256
"""Kept of one edition of the catalogue."""


class LabelledJoint(NamedTuple):
    """A joint with its own station, at a band or a frequency [Hz] and a power [W]."""

    family: str
    band: str | None
    frequency_hz: float | None
    power_w: float
    scenario: Scenario


def label(name: str, date: str, joint: LabelledJoint) -> JointLabel:
    """The label of a joint. Raises InputError unless just one of band and frequency is given."""
    return msgspec.structs.replace(_measures(joint), name=name, date=date)


def fragment(joint: LabelledJoint) -> str:
    """The page's address fragment that opens the joint's cell, with what differs from an ordinary station."""
    words = joint._asdict()
    scenario, ordinary = words.pop("scenario"), Scenario()
    for name in Scenario.__struct_fields__:
        if getattr(scenario, name) != getattr(ordinary, name):
            words[name] = getattr(scenario, name)
    return "&".join(f"{name}={_written(value)}" for name, value in words.items() if value is not None)


@per_edition(maxsize=MOST_LABELS)
def _measures(joint: LabelledJoint) -> JointLabel:
    """The label without name and date: joints alike share it."""
    frequency = chosen_column(joint.band, joint.frequency_hz, joint.scenario.region).high_hz
    station = station_of(joint.scenario)
    matches = [match_of(family_ratings(joint.family, end), frequency, station) for end in ENDS]
    least, expected = sorted(matches, key=lambda match: float(match.return_loss_db))
    return JointLabel(
        name="",
        family=catalogue().interfaces[joint.family].spoken_name,
        date="",
        frequency_hz=frequency,
        expected_loss_db=pair_losses(joint.family, frequency, station, expected).expected_db,
        expected_return_loss_db=float(expected.return_loss_db),
        least_return_loss_db=float(least.return_loss_db),
        fragment=fragment(joint),
    )


def _written(value: object) -> str:
    """As the page writes it: true and false small, whole numbers without a point, nothing that needs escaping."""
    if isinstance(value, bool):
        return str(value).lower()
    if isinstance(value, float):
        return f"{value:.0f}" if value.is_integer() else repr(value)
    return str(value)
