"""The label of a joint: what it should measure, and the way back to its derivation."""

import msgspec

from ..catalogue import per_edition
from ..cell.cell import cell
from ..cell.requests import CellRequest
from ..physics.scenario import Scenario
from .results import JointLabel

__all__ = ["fragment", "label"]

ALWAYS_SAID = ("family", "band", "frequency_hz", "power_w")
LABELS_KEPT = 256


def label(name: str, date: str, request: CellRequest) -> JointLabel:
    """The label of a joint whose own station is that of the request."""
    return msgspec.structs.replace(_measures(request), name=name, date=date)


def fragment(request: CellRequest) -> str:
    """The page's address fragment that opens this cell: its place, and what differs from an ordinary station."""
    usual = Scenario()
    said = {name: getattr(request, name) for name in ALWAYS_SAID}
    for name in Scenario.__struct_fields__:
        if getattr(request, name) != getattr(usual, name):
            said[name] = getattr(request, name)
    return "&".join(f"{name}={_written(value)}" for name, value in said.items() if value is not None)


@per_edition(maxsize=LABELS_KEPT)
def _measures(request: CellRequest) -> JointLabel:
    """The label without name and date: joints alike share it."""
    answer = cell(request)
    match = next(limit for limit in answer.limits if limit.id == "match")
    return JointLabel(
        name="",
        family=answer.family.name,
        date="",
        frequency_hz=answer.frequency_hz,
        expected_loss_db=answer.losses.expected_db,
        expected_return_loss_db=match.margin_high_db + request.return_loss_asked_db,
        least_return_loss_db=match.margin_db + request.return_loss_asked_db,
        fragment=fragment(request),
    )


def _written(value: object) -> str:
    """As the page writes it: true and false small, whole numbers without a point, nothing that needs escaping."""
    if isinstance(value, bool):
        return str(value).lower()
    if isinstance(value, float):
        return f"{value:.0f}" if value.is_integer() else repr(value)
    return str(value)
