"""One end of a cable's ratings as plain numbers, with attenuation fitted to published points."""

from typing import Generic, NamedTuple, TypeVar

import numpy as np

from ..catalogue import catalogue, per_edition
from ..catalogue.schema import Cable, CablePower
from ..formulas import line
from ..formulas.formula import Number, Sourced
from ..physics.ratings import RatingEnd
from ..physics.sourced import sourced
from ..waves.cable_fit import attenuation_coefficients

__all__ = ["CableRatings", "cable_ratings", "table_of_cable_ratings"]

Value = TypeVar("Value", bound=Number, covariant=True)


class CableRatings(NamedTuple, Generic[Value]):
    """One end of a cable's ratings.

    Of one cable scalars that remember their sources, `CableRatings[Sourced]`; of
    many cables columns of shape (cables, 1), `CableRatings[np.ndarray]`.
    """

    velocity_factor: Value
    """Speed of the wave over that of light [1]."""
    impedance_ohm: Value
    """Characteristic impedance without loss [Ω]."""
    highest_temperature_c: Value
    """Of the centre conductor [°C]."""
    working_voltage_rms_v: Value
    """Rated working voltage, rms [V]."""
    rated_power_w: Value
    """Average power that heats a metre to `rated_conductor_c` in air of `rated_ambient_c` [W]."""
    rated_conductor_c: Value
    """Temperature of the centre conductor at that power [°C]."""
    rated_ambient_c: Value
    """Temperature of the air at that power [°C]."""
    rated_share: Value
    """Share of a matched wave's power lost in a metre at the rating's frequency [1/m]."""
    k_1: Value
    """Conductor coefficient of the attenuation at 20 °C [dB/(m·√Hz)]."""
    k_2: Value
    """Dielectric coefficient of the attenuation [dB/(m·Hz)]."""


@per_edition(maxsize=256)
def cable_ratings(cable: str, end: RatingEnd) -> CableRatings[Sourced]:
    """Scalars of one end of a cable's ratings, each a `Sourced` float."""
    entry = catalogue().cables[cable]
    fit = attenuation_coefficients(entry.attenuation)
    k_1, k_2 = fit.k1 / float(line.conductor_temperature_factor(entry.attenuation_temperature_c.value)), fit.k2
    rating = _rating(entry, k_1, k_2, end)

    def of_rating(value: float) -> Sourced:
        return Sourced(value, rating.source, rating.kind)

    return CableRatings(
        velocity_factor=sourced(entry.velocity_factor),
        impedance_ohm=sourced(entry.impedance_ohm),
        highest_temperature_c=sourced(entry.highest_temperature_c),
        working_voltage_rms_v=sourced(getattr(entry.working_voltage_rms_v, end)),
        rated_power_w=of_rating(rating.power_w),
        rated_conductor_c=of_rating(rating.conductor_temperature_c),
        rated_ambient_c=of_rating(rating.ambient_temperature_c),
        rated_share=of_rating(_share_per_metre(k_1, k_2, rating)),
        k_1=Sourced(k_1, "fitted", ""),
        k_2=Sourced(k_2, "fitted", ""),
    )


def table_of_cable_ratings(cables: list[str], end: RatingEnd) -> CableRatings[np.ndarray]:
    """Columns of shape (len(cables), 1) of one end of the ratings."""
    columns = zip(*(cable_ratings(cable, end) for cable in cables), strict=True)
    return CableRatings(*(np.array(column, dtype=np.float64)[:, None] for column in columns))


def _rating(entry: Cable, k_1: float, k_2: float, end: RatingEnd) -> CablePower:
    """The rating that allows a metre the least heat for its rise, or with "high" the most."""
    ratings = [rating for rating in entry.power if rating.end in ("both", end)]

    def conductance(rating: CablePower) -> float:
        rise = rating.conductor_temperature_c - rating.ambient_temperature_c
        return rating.power_w * _share_per_metre(k_1, k_2, rating) / rise

    return min(ratings, key=conductance) if end == "low" else max(ratings, key=conductance)


def _share_per_metre(k_1: float, k_2: float, rating: CablePower) -> float:
    """Share of a matched wave's power lost in a metre at the rating's frequency [1/m]."""
    warm = line.conductor_temperature_factor(rating.ambient_temperature_c)
    return 2 * float(line.attenuation_constant(line.cable_attenuation(k_1, warm, rating.frequency_hz, k_2)))
