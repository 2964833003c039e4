"""A dummy load as the last link of its line, for what it stands."""

from dataclasses import dataclass
from typing import ClassVar

import numpy as np

from ..physics.station import Station
from .elements import DummyLoad, FeedlineRequest
from .link import Link, LinkKind
from .part import PartModel

__all__ = ["DummyLink", "dummy_links"]


@dataclass(frozen=True, eq=False, kw_only=True)
class DummyLink(Link):
    """What lets everything through into the dummy load; its element is the one after the last."""

    kind: ClassVar[LinkKind] = "load"
    models: tuple[PartModel, PartModel]


def dummy_links(request: FeedlineRequest, station: Station) -> list[DummyLink]:
    """The link of a request whose load is a dummy of known limit; none for any other."""
    load = request.load
    if not isinstance(load, DummyLoad) or load.power_limit_w is None:
        return []
    model = PartModel(station, loss_db=0.0, reflection=0.0, power_limit_w=load.power_limit_w, peak_v=np.inf)
    return [DummyLink(element=len(request.elements), name="Dummy load", models=(model, model))]
