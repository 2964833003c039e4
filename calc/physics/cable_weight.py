"""What a metre of cable weighs, by the layers it is built of."""

import numpy as np

from ..catalogue import catalogue, per_edition
from ..catalogue.defaults import build_of
from ..formulas.cable_heat import gas_share
from .ratings import material_figure

__all__ = ["cable_weight_kg_per_m"]


@per_edition(maxsize=256)
def cable_weight_kg_per_m(cable: str) -> float:
    """Of a cable of the catalogue: conductors and plastics; the gas of a foam weighs nothing."""
    entry = catalogue().cables[cable]
    build = build_of(entry, catalogue())
    plastic = catalogue().cable_dielectrics[entry.dielectric].material
    gas = gas_share(material_figure(plastic, "relative_permittivity"), entry.velocity_factor.value)
    inside, filled = build.inner_diameter_m.value, build.dielectric_diameter_m.value
    weight = (
        build.inner_area_m2.value * _density(build.inner_metal.value)
        + build.screen_area_m2.value * _density(build.screen_metal.value)
        + _ring_m2(filled, inside) * (1 - gas) * _density(plastic)
    )
    if build.jacket_material is not None:
        jacket = _ring_m2(entry.outer_diameter_m.value, build.screen_diameter_m.value)
        weight += jacket * _density(build.jacket_material.value)
    return float(weight)


def _density(material: str) -> float:
    return float(material_figure(material, "density_kg_per_m3"))


def _ring_m2(outer_m: float, inner_m: float) -> float:
    return float(np.pi / 4 * (outer_m**2 - inner_m**2))
