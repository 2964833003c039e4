"""The sheets of a line: every joint fitted, sealed, measured and looked after."""

import msgspec

from ..feedline.elements import GivenVswr, Joint
from ..feedline.feedline import Feedline, feedline_at
from ..physics.cautions import CAUTIONS
from ..physics.columns import chosen_column
from .advice import advice
from .measurement import first_measurement
from .pairs import adapter_names, pairs
from .quantities import quantities
from .requests import FitoutRequest
from .results import Advice, FitoutResult
from .sheet import joint_sheet
from .upkeep import day

__all__ = ["fitout"]

MATCHED = GivenVswr(vswr=1.0)


def fitout(request: FitoutRequest) -> FitoutResult:
    """A sheet for every joint of a line, what to buy for all of it, and what to measure first.

    Raises InputError naming the field for a date that is none, and as `line`
    does for a line that can't be solved.
    """
    fitted = day(request.date)
    feedline = _feedline(request)
    joints = pairs(request.elements, feedline)
    adapters = adapter_names(joints)
    sheets = [
        joint_sheet(request, feedline.column, pair, number, adapters.get(pair.element, ""), fitted)
        for number, pair in enumerate(joints, 1)
    ]
    return FitoutResult(
        station=request.station,
        date=request.date,
        column=feedline.column,
        power_w=request.power_w,
        joints=sheets,
        measurement=first_measurement(feedline),
        bonding=_bonding(request),
        marks=list(dict.fromkeys(mark for link in feedline.links for mark in link.marks)),
        quantities=quantities(request.elements, joints, adapters, sheets),
        cautions=CAUTIONS,
    )


def _feedline(request: FitoutRequest) -> Feedline:
    """The line with a matched load; every joint counts as sealed, for the sheets seal it where it must be."""
    sealed = msgspec.structs.replace(request, added_sealing=True)
    column = chosen_column(request.band, request.frequency_hz, request.region)
    return feedline_at(sealed, request.elements, MATCHED, column)


def _bonding(request: FitoutRequest) -> list[Advice]:
    """For a line any part of which is outdoors; by its most exposed joint."""
    exposures = {request.exposure}
    exposures |= {joint.exposure for joint in request.elements if isinstance(joint, Joint) and joint.exposure}
    if exposures == {"indoor"}:
        return []
    return advice("bonding", {"exposure": "exposed" if "exposed" in exposures else "sheltered"}, {})
