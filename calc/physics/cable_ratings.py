"""One end of a cable's ratings as plain numbers, with attenuation fitted to published points."""

from functools import lru_cache
from typing import Generic, NamedTuple, TypeVar

import numpy as np

from ..catalogue import catalogue, per_edition
from ..catalogue.defaults import build_of
from ..catalogue.schema import Cable, WireLine
from ..formulas import line
from ..formulas.coax import te11_rule
from ..formulas.formula import Broadcast, Number, Sourced
from .cable_fit import LowFigure, attenuation_coefficients
from .ratings import NOTHING_DOCUMENTED, RatingEnd, assumption, material_figure, material_interval
from .sourced import sourced

__all__ = ["CableRatings", "CladCoefficients", "attenuation_law", "bare_cable_ratings", "cable_cutoff"]

Value = TypeVar("Value", bound=Number, covariant=True)


class CladCoefficients(NamedTuple):
    """Conductor coefficients of a clad core at its published figures below the fit, and last where the fit begins."""

    frequency_hz: tuple[Sourced, ...]
    """The lowest first [Hz]."""
    k_1: tuple[Sourced, ...]
    """At 20 °C [dB/(m·√Hz)]."""

    def at(self, frequency: Broadcast) -> Broadcast:
        """The coefficient at a frequency or at many [Hz]."""
        scalar = not isinstance(frequency, np.ndarray)
        f, k_1 = self if scalar else _arrays(self)
        if scalar and frequency >= f[-1]:
            return k_1[-1]
        lower = np.searchsorted(f[1:-1], frequency, side="right")
        below = line.clad_coefficient(k_1[lower], k_1[lower + 1], frequency, f[lower], f[lower + 1])
        return below if scalar else np.where(frequency < f[-1], below, k_1[-1])


@lru_cache(maxsize=64)
def _arrays(clad: CladCoefficients) -> tuple[np.ndarray, np.ndarray]:
    """The frequencies and their coefficients, without their sources."""
    return np.array(clad.frequency_hz), np.array(clad.k_1)


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
    inner_diameter_m: Value
    """Of the inner conductor [m]."""
    dielectric_diameter_m: Value
    """Over the insulation [m]."""
    screen_diameter_m: Value
    """Over the outer conductor [m]."""
    outer_diameter_m: Value
    """Over all [m]."""
    inner_area_m2: Value
    """Cross-section of the inner conductor's metal [m²]."""
    screen_area_m2: Value
    """Cross-section of the outer conductor's metal [m²]."""
    inner_thermal_conductivity: Value
    """Of the inner conductor's metal [W/(m·K)]."""
    screen_thermal_conductivity: Value
    """Of the outer conductor's metal [W/(m·K)]."""
    plastic_thermal_conductivity: Value
    """Of the insulation's plastic, without the gas of a foam [W/(m·K)]."""
    plastic_permittivity: Value
    """Relative permittivity of that plastic [1]."""
    jacket_thermal_conductivity: Value
    """Of the jacket; of a bare cable, where it doesn't count, that of the plastic [W/(m·K)]."""
    inner_heat_capacity: Value
    """Of the inner conductor's metal [J/(m³·K)]."""
    plastic_heat_capacity: Value
    """Of the insulation's plastic [J/(m³·K)]."""
    screen_heat_capacity: Value
    """Of the outer conductor's metal [J/(m³·K)]."""
    jacket_heat_capacity: Value
    """Of the jacket [J/(m³·K)]."""
    emissivity: Value
    """Of its surface [1]."""
    film_share: Value
    """Share of the law of convection counted on [1]."""
    surface_rise_share: Value
    """Share of the rise allowed that is the surface's, where films are reckoned [1]."""
    absorptance: Value
    """Absorptance of its surface in the sun [1]."""
    documented_power_w: Value
    """The lowest documented power below what is computed for it, at the cautious end; infinite for none [W]."""
    computed_for_it_w: Value
    """What is computed at that rating's own conditions [W]."""
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


def cable_cutoff(ratings: CableRatings[Number]) -> Broadcast:
    """Frequency [Hz] above which a second wave travels in the cable."""
    permittivity = 1 / ratings.velocity_factor**2
    return te11_rule(ratings.dielectric_diameter_m, ratings.inner_diameter_m, permittivity)


@per_edition(maxsize=256)
def bare_cable_ratings(cable: str, end: RatingEnd) -> CableRatings[Sourced]:
    """Scalars of one end of a cable's ratings, each a `Sourced` float, but for documented powers."""
    entry = catalogue().cables[cable]
    k_1, k_2, clad = attenuation_law(entry)

    build = build_of(entry, catalogue())
    plastic = catalogue().cable_dielectrics[entry.dielectric].material
    jacket = build.jacket_material.value if build.jacket_material else plastic
    surface = build.jacket_material or build.screen_metal
    return CableRatings(
        velocity_factor=sourced(entry.velocity_factor),
        impedance_ohm=sourced(entry.impedance_ohm),
        highest_temperature_c=sourced(entry.highest_temperature_c),
        working_voltage_rms_v=sourced(getattr(entry.working_voltage_rms_v, end)),
        inner_diameter_m=sourced(build.inner_diameter_m),
        dielectric_diameter_m=sourced(build.dielectric_diameter_m),
        screen_diameter_m=sourced(build.screen_diameter_m if build.jacket_material else entry.outer_diameter_m),
        outer_diameter_m=sourced(entry.outer_diameter_m),
        inner_area_m2=sourced(build.inner_area_m2),
        screen_area_m2=sourced(build.screen_area_m2),
        inner_thermal_conductivity=_conductivity(build.inner_metal.value, end),
        screen_thermal_conductivity=_conductivity(build.screen_metal.value, end),
        plastic_thermal_conductivity=_conductivity(plastic, end),
        plastic_permittivity=material_figure(plastic, "relative_permittivity"),
        jacket_thermal_conductivity=_conductivity(jacket, end),
        inner_heat_capacity=_capacity(build.inner_metal.value),
        plastic_heat_capacity=_capacity(plastic),
        screen_heat_capacity=_capacity(build.screen_metal.value),
        jacket_heat_capacity=_capacity(jacket),
        emissivity=material_interval(surface.value, "emissivity", end),
        film_share=assumption("film_share", end),
        surface_rise_share=assumption("surface_rise_share", end),
        absorptance=assumption("surface_absorptance", end),
        documented_power_w=NOTHING_DOCUMENTED.power_w,
        computed_for_it_w=NOTHING_DOCUMENTED.computed_w,
        k_1=k_1,
        k_2=k_2,
        clad=(clad,),
    )


def attenuation_law(entry: Cable | WireLine) -> tuple[Sourced, Sourced, CladCoefficients | None]:
    """Both coefficients of a line at 20 °C, and those of its clad conductor."""
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


def _conductivity(material: str, end: RatingEnd) -> Sourced:
    return material_interval(material, "thermal_conductivity_w_per_m_k", end)


def _capacity(material: str) -> Sourced:
    return material_figure(material, "heat_capacity_j_per_m3_k")
