"""The catalogue as an answer: data sheets, tables, formulas and sources."""

import msgspec

from ..catalogue import catalogue, per_edition
from ..catalogue.schema import WireLine
from ..errors import known
from ..numeric.measures import prose
from ..physics.cautions import CAUTIONS
from .cable_sheets import cable_sheet
from .family_sheets import family_sheet
from .formula_sheets import formula_sheets
from .requests import CatalogueRequest
from .results import CatalogueResult

__all__ = ["datasheets"]


@per_edition(maxsize=2)
def datasheets(request: CatalogueRequest) -> CatalogueResult:
    """Everything the catalogue holds, ready to show. Raises InputError for an unknown entry."""
    tables = catalogue()
    return CatalogueResult(
        families=[family_sheet(interface) for interface in tables.interfaces.values()],
        cables=[cable_sheet(cable) for cable in tables.cables.values()],
        wire_lines=[_spoken(line) for line in tables.wire_lines.values()],
        matings=list(tables.matings.values()),
        adapters=list(tables.adapters.values()),
        bands=list(tables.bands.values()),
        modes=list(tables.modes.values()),
        cable_dielectrics=list(tables.cable_dielectrics.values()),
        conditions=list(tables.conditions.values()),
        noise_environments=list(tables.noise_environments.values()),
        antenna_views=list(tables.antenna_views.values()),
        atmospheres=list(tables.atmospheres.values()),
        transmitters=list(tables.transmitters.values()),
        formulas=formula_sheets(),
        sources=list(tables.sources.values()),
        cautions=CAUTIONS,
        packs=list(tables.packs),
        house_limits=list(tables.house_limits.values()),
        default_powers_w=list(tables.default_powers_w),
        entry=None if request.entry is None else known("entry", request.entry, tables.interfaces),
        cable=None if request.cable is None else known("cable", request.cable, tables.cables),
    )


def _spoken(line: WireLine) -> WireLine:
    return msgspec.structs.replace(line, name=line.spoken_name, summary=prose(line.summary))
