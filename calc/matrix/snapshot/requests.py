"""What a caller may ask of a snapshot: a matrix, and the power level it opens with."""

from ...physics.scenario import Power
from ..requests import MatrixRequest

__all__ = ["SnapshotRequest"]


class SnapshotRequest(MatrixRequest, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """A matrix and the power level that is shown first; the nearest of its levels is taken."""

    power_w: Power = 100.0
