"""What a caller may ask of the catalogue."""

from typing import Annotated

from msgspec import Meta, Struct

from ..physics.scenario import Identifier, SpokenUnits

__all__ = ["CatalogueRequest"]


class CatalogueRequest(Struct, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """The whole catalogue, the formulas and the sources."""

    entry: Annotated[Identifier | None, Meta(description="Connector to give as a pack holds it; left out, none")] = None
    cable: Annotated[Identifier | None, Meta(description="Cable to give as a pack holds it; left out, none")] = None
    units: SpokenUnits = "metric"
