"""Bands and spot frequencies as matrix columns."""

from msgspec import Struct

from ..catalogue import catalogue
from ..errors import InputError, known
from ..numeric.units import engineering

__all__ = ["Column", "band_column", "columns", "spot_column"]


class Column(Struct, frozen=True):
    """A matrix column: a band of the Region, or one spot frequency (both edges equal).

    Margins are computed at `high_hz`: every limit falls with frequency.
    """

    id: str
    name: str
    low_hz: float
    high_hz: float
    pack: str = ""


def columns(region: int, bands: list[str] | None, frequencies_hz: list[float]) -> list[Column]:
    """Columns in the order asked for. Raises InputError for a band the Region does not have."""
    names = bands
    if names is None:
        names = [band.id for band in catalogue().bands.values() if str(region) in band.regions]
    chosen = [band_column(name, region, f"bands[{index}]") for index, name in enumerate(names)]
    chosen += [spot_column(frequency) for frequency in frequencies_hz]
    if not chosen:
        raise InputError("bands", bands, "at least one band or spot frequency")
    return chosen


def band_column(name: str, region: int, field: str = "band") -> Column:
    """The band with its edges [Hz] in an ITU Region."""
    band = known(field, name, catalogue().bands)
    if str(region) not in band.regions:
        held = ", ".join(sorted(band.regions))
        raise InputError(field, name, f"a band of Region {region}; this one is allocated in Region {held}")
    edges = band.regions[str(region)]
    pack = catalogue().pack_of("bands", name)
    return Column(id=name, name=band.name, low_hz=edges.low_hz, high_hz=edges.high_hz, pack=pack)


def spot_column(frequency_hz: float) -> Column:
    """One frequency [Hz] as a column."""
    name = engineering(frequency_hz, "Hz")
    return Column(id=f"{frequency_hz:.0f}_hz", name=name, low_hz=frequency_hz, high_hz=frequency_hz)
