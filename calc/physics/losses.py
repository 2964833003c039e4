"""The loss of a mated pair by cause."""

from msgspec import Struct

__all__ = ["LossShares"]


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
