"""One end of a family's ratings as plain numbers, which the formulas are called with.

The cautious end takes the lowest credible rating, the highest contact
resistance and the standard's VSWR limit; the generous end the others.
"""

from typing import Generic, Literal, NamedTuple, TypeVar

import numpy as np

from ..catalogue import catalogue, per_edition
from ..catalogue.schema import Interface, Quantity
from ..formulas.coax import te11_root
from ..formulas.formula import Number, Sourced
from .sourced import sourced

__all__ = [
    "CAUTIOUS",
    "ENDS",
    "GENEROUS",
    "NOTHING_DOCUMENTED",
    "Documented",
    "RatingEnd",
    "Ratings",
    "assumption",
    "bare_ratings",
    "material_figure",
    "material_interval",
]

RatingEnd = Literal["low", "high"]
ENDS: tuple[RatingEnd, RatingEnd] = ("low", "high")
"""The cautious end first, the generous second, wherever both are kept."""

CAUTIOUS, GENEROUS = range(len(ENDS))

BODY_METAL = "brass"
"""Of contacts and bodies under their plating, as far as they store heat (common practice)."""

Value = TypeVar("Value", bound=Number, covariant=True)


class Documented(NamedTuple):
    """A documented power [W] and what is computed at its own conditions [W], where that is more."""

    power_w: Sourced
    computed_w: Sourced


class Ratings(NamedTuple, Generic[Value]):
    """One end of a family's ratings, in SI units and degrees Celsius.

    Of one family scalars that remember their sources, `Ratings[Sourced]`; of
    many families columns of shape (families, 1), `Ratings[np.ndarray]`.
    """

    inner_diameter_m: Value
    """Diameter of the centre conductor [m]."""
    outer_diameter_m: Value
    """Bore of the outer conductor [m]."""
    permittivity: Value
    """Relative permittivity at the mating plane [1]."""
    section_length_m: Value
    """Length of the mated section [m]."""
    bead_length_m: Value
    """Length of the solid supports [m]."""
    bead_permittivity: Value
    """Relative permittivity of the supports [1]."""
    bead_loss_tangent: Value
    """Loss tangent of the supports [1]."""
    bead_thermal_conductivity: Value
    """Thermal conductivity of the supports [W/(m K)]."""
    fill_thermal_conductivity: Value
    """Thermal conductivity of what fills the section beside the supports [W/(m K)]."""
    body_diameter_m: Value
    """Outer diameter of the mated body [m]."""
    body_length_m: Value
    """Length of the mated body [m]."""
    inner_conductivity: Value
    """Conductivity of the centre conductor's plating [S/m]."""
    inner_permeability: Value
    """Relative permeability of the centre conductor's plating [1]."""
    outer_conductivity: Value
    """Conductivity of the outer conductor's plating [S/m]."""
    outer_permeability: Value
    """Relative permeability of the outer conductor's plating [1]."""
    body_emissivity: Value
    """Emissivity of the body's plating [1]."""
    metal_heat_capacity: Value
    """Heat capacity of the metal that contact and body are made of [J/(m³·K)]."""
    body_metal_share: Value
    """Share of the body's volume that is metal [1]."""
    film_share: Value
    """Share of the law of convection counted on [1]."""
    surface_rise_share: Value
    """Share of the rise allowed that is the surface's, where films are reckoned [1]."""
    absorptance: Value
    """Absorptance of the surface in the sun [1]."""
    centre_contact_resistance_ohm: Value
    """Resistance of the centre contact at direct current [Ω]."""
    outer_contact_resistance_ohm: Value
    """Resistance of the outer contact at direct current [Ω]."""
    working_voltage_rms_v: Value
    """Rated working voltage at sea level, rms [V]."""
    highest_temperature_c: Value
    """Highest temperature of the centre contact [°C]."""
    published_loss_db: Value
    """Greatest published insertion loss [dB]."""
    published_loss_at_hz: Value
    """Frequency that it is stated for [Hz]."""
    documented_power_w: Value
    """The lowest documented power below what is computed for it, at the cautious end; infinite for none [W]."""
    computed_for_it_w: Value
    """What is computed at that rating's own conditions [W]."""
    design_impedance_ohm: Value
    """Impedance the family is made for, or that of its section of another impedance [Ω]."""
    match_vswr_at_dc: Value
    """Limit of the VSWR at direct current [1]."""
    match_vswr_slope_per_hz: Value
    """Growth of that limit with frequency [1/Hz]."""
    match_length_m: Value
    """Length of the section that reflects [m]."""
    match_permittivity: Value
    """Relative permittivity that makes it electrically longer [1]."""
    te11_root: Value
    """First root of the TE11 condition [1]."""


@per_edition(maxsize=256)
def bare_ratings(family: str, end: RatingEnd) -> Ratings[Sourced]:
    """One end of a family's ratings but for documented powers. Raises KeyError for an unknown family."""
    interface = catalogue().interfaces[family]
    mating, bead = _insulators(interface, end)
    inner, outer = interface.inner_plating.value, interface.outer_plating.value
    resistance_end = "high" if end == "low" else "low"
    loss = interface.insertion_loss
    match = _match_figures(interface, end)
    return Ratings(
        inner_diameter_m=sourced(interface.inner_diameter_m),
        outer_diameter_m=sourced(interface.outer_diameter_m),
        # the geometry of the mating plane is of the worse parts: better insulators only lose less
        permittivity=material_figure(interface.dielectric.value, "relative_permittivity"),
        section_length_m=sourced(interface.section_length_m),
        bead_length_m=sourced(interface.bead_length_m),
        bead_permittivity=material_figure(bead, "relative_permittivity"),
        bead_loss_tangent=material_figure(bead, "loss_tangent"),
        bead_thermal_conductivity=material_interval(bead, "thermal_conductivity_w_per_m_k", end),
        fill_thermal_conductivity=material_interval(mating, "thermal_conductivity_w_per_m_k", end),
        body_diameter_m=sourced(interface.body_diameter_m),
        body_length_m=sourced(interface.body_length_m),
        inner_conductivity=material_figure(inner, "conductivity_s_per_m"),
        inner_permeability=material_figure(inner, "relative_permeability"),
        outer_conductivity=material_figure(outer, "conductivity_s_per_m"),
        outer_permeability=material_figure(outer, "relative_permeability"),
        body_emissivity=material_interval(outer, "emissivity", end),
        metal_heat_capacity=material_figure(BODY_METAL, "heat_capacity_j_per_m3_k"),
        body_metal_share=assumption("body_metal_share", end),
        film_share=assumption("film_share", end),
        surface_rise_share=assumption("surface_rise_share", end),
        absorptance=assumption("surface_absorptance", end),
        centre_contact_resistance_ohm=sourced(getattr(interface.centre_contact_resistance_ohm, resistance_end)),
        outer_contact_resistance_ohm=sourced(getattr(interface.outer_contact_resistance_ohm, resistance_end)),
        working_voltage_rms_v=sourced(getattr(interface.working_voltage_rms_v, end)),
        highest_temperature_c=sourced(interface.highest_temperature_c),
        published_loss_db=sourced(loss.loss_db),
        published_loss_at_hz=Sourced(loss.at_frequency_hz, loss.loss_db.source, loss.loss_db.kind),
        documented_power_w=NOTHING_DOCUMENTED.power_w,
        computed_for_it_w=NOTHING_DOCUMENTED.computed_w,
        design_impedance_ohm=match.impedance_ohm,
        match_vswr_at_dc=match.vswr_at_dc,
        match_vswr_slope_per_hz=match.vswr_slope_per_hz,
        match_length_m=match.length_m,
        match_permittivity=match.permittivity,
        te11_root=Sourced(_te11_roots()[family], "derived", ""),
    )


@per_edition(maxsize=1)
def _te11_roots() -> dict[str, float]:
    """Of all families at once: a search over an array costs what one over a scalar does."""
    interfaces = catalogue().interfaces
    ratios = [interface.outer_diameter_m.value / interface.inner_diameter_m.value for interface in interfaces.values()]
    return dict(zip(interfaces, te11_root(np.array(ratios)).tolist(), strict=True))


NOTHING_DOCUMENTED = Documented(Sourced(np.inf, "neutral", ""), Sourced(1.0, "neutral", ""))


class _MatchFigures(NamedTuple):
    impedance_ohm: Sourced
    vswr_at_dc: Sourced
    vswr_slope_per_hz: Sourced
    length_m: Sourced
    permittivity: Sourced


def _match_figures(interface: Interface, end: RatingEnd) -> _MatchFigures:
    if interface.section is not None:  # of known impedance, with no VSWR limit of its own
        return _MatchFigures(
            impedance_ohm=sourced(getattr(interface.section.impedance_ohm, end)),
            vswr_at_dc=_neutral(1.0),
            vswr_slope_per_hz=_neutral(0.0),
            length_m=sourced(getattr(interface.section.electrical_length_m, end)),
            permittivity=_neutral(1.0),
        )
    limit = interface.vswr_limit
    at_dc, slope = (limit.at_dc, limit.slope_per_hz) if end == "low" else _typical_law(interface)
    return _MatchFigures(
        impedance_ohm=sourced(interface.nominal_impedance_ohm),
        vswr_at_dc=sourced(at_dc),
        vswr_slope_per_hz=sourced(slope),
        length_m=sourced(interface.section_length_m),
        permittivity=material_figure(interface.bead_material.value, "relative_permittivity"),
    )


def _typical_law(interface: Interface) -> tuple[Quantity, Quantity]:
    """The limit's law with its excess over 1 shrunk so that it passes the typical VSWR at the rated frequency."""
    limit, typical = interface.vswr_limit, interface.vswr_typical
    rated_limit = limit.at_dc.value + limit.slope_per_hz.value * interface.rated_frequency_hz.low.value
    excess = min((typical.value - 1) / (rated_limit - 1), 1.0)
    return (
        Quantity(1 + (limit.at_dc.value - 1) * excess, typical.source, typical.kind),
        Quantity(limit.slope_per_hz.value * excess, typical.source, typical.kind),
    )


def _neutral(value: float) -> Sourced:
    """The value of a term that does not apply to a family."""
    return Sourced(value, "neutral", "")


def _insulators(interface: Interface, end: RatingEnd) -> tuple[str, str]:
    """Materials of the mating plane and of the supports, the better ones at the generous end."""
    worse, better = (
        (interface.dielectric, interface.bead_material),
        (interface.generous_dielectric, interface.generous_bead_material),
    )
    chosen = worse if end == "low" else [good or bad for good, bad in zip(better, worse, strict=True)]
    return chosen[0].value, chosen[1].value


def assumption(name: str, end: RatingEnd = "low") -> Sourced:
    """A number of the assumptions table, the cautious one or the generous one, with its source."""
    entry = catalogue().assumptions[name]
    return sourced(entry.quantity if end == "low" or entry.generous is None else entry.generous)


def material_figure(name: str, figure: str) -> Sourced:
    """A figure that a material must have where it is used, which the catalogue's own checks see to."""
    return sourced(getattr(catalogue().materials[name], figure))


def material_interval(name: str, figure: str, end: RatingEnd) -> Sourced:
    """The low or the high end of a figure that a material must have where it is used."""
    return sourced(getattr(getattr(catalogue().materials[name], figure), end))
