"""One end of a cable's ratings as plain numbers, with attenuation fitted to published points."""

from collections.abc import Callable
from itertools import chain
from typing import Generic, NamedTuple, TypeVar

import numpy as np

from ..catalogue import catalogue, per_edition
from ..catalogue.schema import Cable, CablePower
from ..formulas import line
from ..formulas.formula import Broadcast, Number, Sourced
from ..physics.ratings import RatingEnd
from ..physics.sourced import sourced
from ..waves.cable_fit import LowFigure, attenuation_coefficients

__all__ = ["CableRatings", "CladCoefficients", "cable_ratings", "table_of_cable_ratings"]

Value = TypeVar("Value", bound=Number, covariant=True)


class CladCoefficients(NamedTuple):
    """Conductor coefficients of a clad core at its published figures below the fit, and last where the fit begins."""

    frequency_hz: tuple[Sourced, ...]
    """The lowest first [Hz]."""
    k_1: tuple[Sourced, ...]
    """At 20 °C [dB/(m·√Hz)]."""

    def at(self, frequency: Broadcast) -> Broadcast:
        """The coefficient at a frequency or at many [Hz]."""
        f, k_1 = self
        lower = np.searchsorted(f[1:-1], frequency, side="right")
        if not isinstance(frequency, np.ndarray):  # a scalar keeps its sources
            if frequency >= f[-1]:
                return k_1[-1]
            return line.clad_coefficient(k_1[lower], k_1[lower + 1], frequency, f[lower], f[lower + 1])
        fs, ks = np.array(f), np.array(k_1)
        below = line.clad_coefficient(ks[lower], ks[lower + 1], frequency, fs[lower], fs[lower + 1])
        return np.where(frequency < fs[-1], below, ks[-1])


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
    """Conductor coefficient of the attenuation at 20 °C, but for clad cores at low frequencies [dB/(m·√Hz)]."""
    k_2: Value
    """Dielectric coefficient of the attenuation [dB/(m·Hz)]."""
    clad: tuple[CladCoefficients | None, ...]
    """Of each cable, where it has a clad core with figures of its own at low frequencies."""

    def conductor_coefficient(self, frequency: Broadcast) -> Broadcast:
        """Conductor coefficient of the attenuation at 20 °C [dB/(m·√Hz)] at a frequency or at many [Hz]."""
        by_clad = {clad: clad.at(frequency) for clad in set(self.clad) if clad}
        if not by_clad:
            return self.k_1
        if len(self.clad) == 1:
            (alone,) = by_clad.values()
            return alone
        k_1 = np.repeat(self.k_1, np.size(frequency), axis=1)
        for row, clad in enumerate(self.clad):
            if clad:
                k_1[row] = by_clad[clad]
        return k_1


@per_edition(maxsize=256)
def cable_ratings(cable: str, end: RatingEnd) -> CableRatings[Sourced]:
    """Scalars of one end of a cable's ratings, each a `Sourced` float."""
    entry = catalogue().cables[cable]
    k_1, k_2, clad = _attenuation(entry)

    def share(rating: CablePower) -> float:
        """Share of a matched wave's power lost in a metre at the rating's frequency [1/m]."""
        coefficient = clad.at(rating.frequency_hz) if clad else k_1
        warm = line.conductor_temperature_factor(rating.ambient_temperature_c)
        return 2 * float(line.attenuation_constant(line.cable_attenuation(coefficient, warm, rating.frequency_hz, k_2)))

    rating = _rating(entry, share, end)

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
        rated_share=of_rating(share(rating)),
        k_1=k_1,
        k_2=k_2,
        clad=(clad,),
    )


def table_of_cable_ratings(cables: list[str], end: RatingEnd) -> CableRatings[np.ndarray]:
    """Columns of shape (len(cables), 1) of one end of the ratings."""
    *columns, clad = zip(*(cable_ratings(cable, end) for cable in cables), strict=True)
    figures = (np.array(column, dtype=np.float64)[:, None] for column in columns)
    return CableRatings._make([*figures, tuple(chain.from_iterable(clad))])


def _attenuation(entry: Cable) -> tuple[Sourced, Sourced, CladCoefficients | None]:
    """Both coefficients of a cable at 20 °C, and those of its clad core."""
    fit = attenuation_coefficients(entry.attenuation)
    warm = float(line.conductor_temperature_factor(entry.attenuation_temperature_c.value))
    k_1 = Sourced(fit.k1 / warm, "fitted", "")

    def of_figure(low: LowFigure, value: float) -> Sourced:
        return Sourced(value, low.figure.source, low.figure.kind)

    clad = CladCoefficients(
        frequency_hz=(*(of_figure(low, low.figure.frequency_hz) for low in fit.low), Sourced(fit.f_low, "fitted", "")),
        k_1=(*(of_figure(low, low.k1 / warm) for low in fit.low), k_1),
    )
    return k_1, Sourced(fit.k2, "fitted", ""), clad if fit.low else None


def _rating(entry: Cable, share: Callable[[CablePower], float], end: RatingEnd) -> CablePower:
    """The rating that allows a metre the least heat for its rise, or with "high" the most."""
    ratings = [rating for rating in entry.power if rating.end in ("both", end)]

    def conductance(rating: CablePower) -> float:
        rise = rating.conductor_temperature_c - rating.ambient_temperature_c
        return rating.power_w * share(rating) / rise

    return min(ratings, key=conductance) if end == "low" else max(ratings, key=conductance)
