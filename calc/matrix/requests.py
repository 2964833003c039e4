"""What a caller may ask of a matrix."""

from typing import Annotated

from msgspec import Meta, field

from ..catalogue import catalogue
from ..physics.scenario import Bands, Frequency, Identifier, Power, Scenario

__all__ = ["MOST_CELLS", "MatrixRequest"]

MOST_CELLS = 100_000
"""Of one matrix; keeps its answer below some 20 MB."""

Families = Annotated[list[Identifier], Meta(min_length=1, max_length=100)]


class MatrixRequest(Scenario, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """Margins of many families at many bands and powers."""

    families: Annotated[
        Families | None, Meta(description="Connectors, ids of the catalogue; left out, all of them")
    ] = None
    bands: Annotated[Bands | None, Meta(description="Amateur bands; left out, all of the region")] = None
    frequencies_hz: Annotated[
        list[Frequency], Meta(max_length=200, description="Spot frequencies, shown among the bands")
    ] = field(default_factory=list)
    powers_w: Annotated[
        list[Power],
        Meta(
            min_length=1,
            max_length=24,
            description=f"Power levels, in every cell; families x columns x powers at most {MOST_CELLS}",
        ),
    ] = field(default_factory=lambda: list(catalogue().default_powers_w))
