"""The loss of a mated pair by cause."""

from msgspec import Struct

from ..formulas import loss
from .dissipation import dissipation
from .family_ratings import family_ratings
from .limits import Match
from .station import Station

__all__ = ["LossShares", "pair_losses"]


class LossShares(Struct, frozen=True):
    """Loss of the mated pair in dB by cause; expected never mixes with guaranteed or published."""

    contact_db: float
    conductor_db: float
    dielectric_db: float
    mismatch_db: float
    expected_db: float
    guaranteed_db: float | None
    """The most that a standard lets the pair lose here; none where no standard states it."""
    published_db: float
    """The most published for a mated pair, reflection included, whoever published it."""
    published_at_hz: float
    """The highest frequency that it is stated for."""
    published_source: str
    published_kind: str


def pair_losses(family: str, frequency_hz: float, station: Station, expected: Match) -> LossShares:
    """What a family's pair loses at a frequency, by its generous ratings and the reflection expected of it.

    A standard guarantees its figure up to the frequency that it states it for, to a
    pair without added resistance. How reflection and heat would go on from there it
    does not say. Where more is expected than its figure, as in a line of another
    impedance, it is not about this pair.
    """
    ratings = family_ratings(family, "high")
    shares = dissipation(ratings, frequency_hz, station.added_resistance_ohm, station.impedance_ohm)
    contact, conductor, dielectric = (
        float(loss.dissipative_loss(min(share, shares.total)))
        for share in (shares.contact, shares.conductor, shares.dielectric)
    )
    mismatch = float(loss.mismatch_loss(expected.reflection))
    expected_db = float(loss.dissipative_loss(shares.total)) + mismatch
    published, reach = ratings.published_loss_db, ratings.published_loss_at_hz
    guaranteed = (
        published.kind == "standard"
        and frequency_hz <= reach
        and station.added_resistance_ohm == 0
        and expected_db <= published
    )
    return LossShares(
        contact_db=contact,
        conductor_db=conductor,
        dielectric_db=dielectric,
        mismatch_db=mismatch,
        expected_db=expected_db,
        guaranteed_db=float(published) if guaranteed else None,
        published_db=float(published),
        published_at_hz=float(reach),
        published_source=published.source,
        published_kind=published.kind,
    )
