"""Doubts about a line's figures at a frequency and a site that are no gate, each a sentence."""

from collections.abc import Mapping
from typing import Literal

from ..catalogue import catalogue, per_edition
from ..catalogue.schema import Cable, WireLine
from ..numeric.measures import temperature_words
from ..numeric.units import engineering
from ..physics.cable_fit import attenuation_coefficients
from ..physics.gates import EXPOSURES
from ..physics.scenario import Surroundings

__all__ = ["figure_marks"]


def figure_marks(entry: Cable | WireLine, weathered: str, frequency: float, site: Surroundings) -> list[str]:
    """Where its losses are not published [Hz], and where the site's weather and cold are not what it stands.

    `weathered` names what of it stands the weather.
    """
    marks = []
    lowest_hz, highest_hz = _published_hz("cables" if isinstance(entry, Cable) else "wire_lines", entry.id)
    if not lowest_hz <= frequency <= highest_hz:
        reach = f"{engineering(lowest_hz, 'Hz')} to {engineering(highest_hz, 'Hz')}"
        marks.append(
            f"Published loss figures of {entry.spoken_name} reach from {reach}; beyond them the law is drawn on."
        )
    if EXPOSURES.index(site.exposure) > EXPOSURES.index(entry.outdoor_use):
        marks.append(f"{weathered} stands: {entry.outdoor_use}; the site: {site.exposure}.")
    lowest_c = entry.lowest_temperature_c.value
    if site.ambient_temperature_c < lowest_c:
        rated, here = temperature_words(lowest_c), temperature_words(site.ambient_temperature_c)
        marks.append(f"{entry.spoken_name} is rated down to {rated}; the site: {here}.")
    return marks


@per_edition(maxsize=256)
def _published_hz(table: Literal["cables", "wire_lines"], line: str) -> tuple[float, float]:
    """From where to where a line's published loss figures reach [Hz]."""
    entries: Mapping[str, Cable | WireLine] = getattr(catalogue(), table)
    fit = attenuation_coefficients(entries[line].attenuation)
    return fit.lowest, fit.f_high
