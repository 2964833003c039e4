"""The loss of a mated pair by cause."""

from msgspec import Struct

from ..formulas import loss
from .limits import Match, dissipation
from .ratings import family_ratings
from .station import Station

__all__ = ["LossShares", "pair_losses"]


class LossShares(Struct, frozen=True):
    """Loss of the mated pair in dB by cause; expected never mixes with guaranteed."""

    contact_db: float
    conductor_db: float
    dielectric_db: float
    mismatch_db: float
    expected_db: float
    guaranteed_db: float
    guaranteed_source: str
    guaranteed_kind: str


def pair_losses(family: str, frequency_hz: float, station: Station, expected: Match) -> LossShares:
    """What a family's pair loses at a frequency, by its generous ratings and the reflection expected of it."""
    ratings = family_ratings(family, "high")
    shares = dissipation(ratings, frequency_hz, station.added_resistance_ohm, station.impedance_ohm)
    contact, conductor, dielectric = (
        float(loss.dissipative_loss(min(share, shares.total)))
        for share in (shares.contact, shares.conductor, shares.dielectric)
    )
    mismatch = float(loss.mismatch_loss(expected.reflection))
    guaranteed = loss.guaranteed_loss(ratings.guaranteed_loss_db, frequency_hz, ratings.guaranteed_loss_at_hz)
    return LossShares(
        contact_db=contact,
        conductor_db=conductor,
        dielectric_db=dielectric,
        mismatch_db=mismatch,
        expected_db=float(loss.dissipative_loss(shares.total)) + mismatch,
        guaranteed_db=float(guaranteed),
        guaranteed_source=ratings.guaranteed_loss_db.source,
        guaranteed_kind=ratings.guaranteed_loss_db.kind,
    )
