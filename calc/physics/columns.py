"""Bands and spot frequencies as matrix columns."""

from msgspec import Struct

from ..catalogue import catalogue
from ..errors import InputError, known
from ..numeric.units import engineering

__all__ = ["Column", "band_column", "chosen_column", "columns", "spot_column"]


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
    """Columns by frequency. Raises InputError for a band the Region does not have."""
    names = bands
    if names is None:
        names = [band.id for band in catalogue().bands.values() if str(region) in band.regions]
    chosen = [band_column(name, region, f"bands[{index}]") for index, name in enumerate(names)]
    chosen += [spot_column(frequency) for frequency in frequencies_hz]
    if not chosen:
        raise InputError("bands", bands, "at least one band or spot frequency")
    return sorted(chosen, key=lambda column: (column.high_hz, column.low_hz))


def chosen_column(band: str | None, frequency_hz: float | None, region: int) -> Column:
    """The one column that a request names. Raises InputError unless just one of band and frequency [Hz] is given."""
    if band is not None and frequency_hz is None:
        return band_column(band, region)
    if frequency_hz is not None and band is None:
        return spot_column(frequency_hz)
    raise InputError("band", band, "either a band or a spot frequency, one of the two")


def band_column(name: str, region: int, field: str = "band") -> Column:
    """The band with its edges [Hz] in an ITU Region. Raises InputError where the Region does not have it."""
    band = known(field, name, catalogue().bands)
    edges = next((edges for allocated, edges in band.regions.items() if allocated == str(region)), None)
    if edges is None:
        regions = ", ".join(sorted(band.regions))
        raise InputError(field, name, f"a band of Region {region}; this one is allocated in Region {regions}")
    pack = catalogue().pack_of("bands", name)
    return Column(id=name, name=band.name, low_hz=edges.low_hz, high_hz=edges.high_hz, pack=pack)


def spot_column(frequency_hz: float) -> Column:
    """One frequency [Hz] as a column."""
    name = engineering(frequency_hz, "Hz")
    return Column(id=f"{frequency_hz:.0f}_hz", name=name, low_hz=frequency_hz, high_hz=frequency_hz)
