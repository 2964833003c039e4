"""The noise that comes in by the antenna, as a temperature."""

import numpy as np

from ..catalogue import catalogue
from ..errors import known
from ..formulas import noise
from ..formulas.formula import Broadcast
from ..physics.ratings import assumption
from .requests import Receiver

__all__ = ["VIEW_FROM_HZ", "outside_temperature_k"]

VIEW_FROM_HZ = 30e6
"""Below it noise comes over the ionosphere from all around, and what the antenna looks at is of no account."""
NO_MAN = "galactic"
"""The environment without man-made noise."""
AIR = "standard_air"


def outside_temperature_k(receiver: Receiver, frequency: np.ndarray) -> Broadcast:
    """Noise temperature of the antenna over frequencies [Hz], by its view and its surroundings [K].

    Below 30 MHz it is the louder of man-made and galactic noise. Raises
    InputError when environment or view is unknown.
    """
    tables = catalogue()
    view = known("receiver.antenna_view", receiver.antenna_view, tables.antenna_views)
    place = known("receiver.environment", receiver.environment, tables.noise_environments)
    sky = tables.noise_environments[NO_MAN]
    man_made, galactic, seen = (
        noise.external_noise_figure(at_1_mhz.value, fall.value, frequency)
        for at_1_mhz, fall in (
            (place.median_at_1_mhz_db, place.fall_per_decade_db),
            (sky.median_at_1_mhz_db, sky.fall_per_decade_db),
            (view.galactic_at_1_mhz_db, view.galactic_fall_per_decade_db),
        )
    )
    below = noise.noise_temperature(noise.external_noise_floor(man_made, galactic))
    above = noise.antenna_temperature(
        view.earth_share.value,
        assumption("earth_noise_temperature"),
        _sky_temperature(receiver.elevation_deg if view.elevation_deg is None else view.elevation_deg.value, frequency),
        noise.noise_temperature(seen),
        view.man_made_share.value,
        0.0 if receiver.environment == NO_MAN else noise.noise_temperature(man_made),
    )
    return np.where(frequency < VIEW_FROM_HZ, below, above)


def _sky_temperature(elevation_deg: float, frequency: np.ndarray) -> Broadcast:
    """Of air and cosmic background [K]."""
    points = catalogue().atmospheres[AIR].zenith_attenuation
    known_hz, known_db = ([point.frequency_hz for point in points], [point.db for point in points])
    zenith_db = np.exp(np.interp(np.log(frequency), np.log(known_hz), np.log(known_db)))
    way = noise.air_mass(elevation_deg, assumption("bent_earth_radius"), assumption("air_height"))
    return noise.sky_temperature(
        zenith_db, way, assumption("air_radiating_temperature"), assumption("cosmic_temperature")
    )
