"""What share of the power a mated pair turns into heat, by cause."""

from typing import NamedTuple

from ..formulas import joint_heat, loss, skin
from ..formulas.formula import Broadcast, Number
from .ratings import Ratings

__all__ = ["Shares", "dissipation"]


class Shares(NamedTuple):
    """Shares of a matched wave's power turned into heat [1]."""

    conductor: Broadcast
    dielectric: Broadcast
    contact: Broadcast
    total: Broadcast
    inner_surface_ohm: Broadcast
    """Surface resistance of the centre conductor [Ω]."""


def dissipation(
    ratings: Ratings[Number],
    frequency: Number,
    added_ohm: float,
    impedance: float,
    temperature_c: Number | None = None,
) -> Shares:
    """Shares of a matched wave's power lost in a mated pair with `added_ohm` of contact resistance.

    At 20 °C, or with conductors as hot as `temperature_c`.
    """
    inner_metal, outer_metal = ratings.inner_conductivity, ratings.outer_conductivity
    if temperature_c is not None:
        inner_metal = joint_heat.hot_conductivity(inner_metal, temperature_c)
        outer_metal = joint_heat.hot_conductivity(outer_metal, temperature_c)
    inner = skin.surface_resistance(frequency, inner_metal, ratings.inner_permeability)
    outer = skin.surface_resistance(frequency, outer_metal, ratings.outer_permeability)
    metre = skin.conductor_resistance(inner, outer, ratings.inner_diameter_m, ratings.outer_diameter_m)
    conductor = loss.conductor_share(metre, ratings.section_length_m, impedance)
    dielectric = loss.dielectric_share(
        frequency, ratings.bead_permittivity, ratings.bead_loss_tangent, ratings.bead_length_m
    )
    contact = loss.contact_share(
        ratings.centre_contact_resistance_ohm, ratings.outer_contact_resistance_ohm, added_ohm, impedance
    )
    total = loss.dissipated_share(conductor, dielectric, contact)
    return Shares(conductor, dielectric, contact, total, inner)
