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

__all__ = ["CAUTIOUS", "ENDS", "GENEROUS", "RatingEnd", "Ratings", "family_ratings", "table_ratings"]

RatingEnd = Literal["low", "high"]
ENDS: tuple[RatingEnd, RatingEnd] = ("low", "high")
"""The cautious end first, the generous second, wherever both are kept."""

CAUTIOUS, GENEROUS = range(len(ENDS))

Value = TypeVar("Value", bound=Number, covariant=True)


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
    conductor_thermal_conductivity: Value
    """Thermal conductivity of the cables' conductors [W/(m K)]."""
    cable_diameter_m: Value
    """Diameter of the cable that is usual on the family, or else of the thickest it takes [m]."""
    cable_conductor_area_m2: Value
    """Cross-section of that cable's conductors [m²]."""
    centre_contact_resistance_ohm: Value
    """Resistance of the centre contact at direct current [Ω]."""
    outer_contact_resistance_ohm: Value
    """Resistance of the outer contact at direct current [Ω]."""
    working_voltage_rms_v: Value
    """Rated working voltage at sea level, rms [V]."""
    time_constant_s: Value
    """Thermal time constant of the centre contact [s]."""
    highest_temperature_c: Value
    """Highest temperature of the centre contact [°C]."""
    published_loss_db: Value
    """Greatest published insertion loss [dB]."""
    published_loss_at_hz: Value
    """Frequency that it is stated for [Hz]."""
    rated_power_w: Value
    """Rated average power [W]."""
    rated_frequency_hz: Value
    """Frequency of the rated power [Hz]."""
    rated_ambient_c: Value
    """Air temperature behind the rated power [°C]."""
    rated_contact_c: Value
    """Contact temperature behind the rated power [°C]."""
    rated_altitude_m: Value
    """Height above sea level behind the rated power [m]."""
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
def family_ratings(family: str, end: RatingEnd) -> Ratings[Sourced]:
    """One end of a family's ratings, each number with its source. Raises KeyError for an unknown family."""
    interface = catalogue().interfaces[family]
    rating = getattr(interface.average_power, end)
    mating, bead = interface.dielectric.value, interface.bead_material.value
    inner, outer = interface.inner_plating.value, interface.outer_plating.value
    resistance_end = "high" if end == "low" else "low"
    loss = interface.insertion_loss
    match = _match_figures(interface, end)

    def rated(value: float) -> Sourced:
        return Sourced(value, rating.source, rating.kind)

    return Ratings(
        inner_diameter_m=sourced(interface.inner_diameter_m),
        outer_diameter_m=sourced(interface.outer_diameter_m),
        permittivity=_material(mating, "relative_permittivity"),
        section_length_m=sourced(interface.section_length_m),
        bead_length_m=sourced(interface.bead_length_m),
        bead_permittivity=_material(bead, "relative_permittivity"),
        bead_loss_tangent=_material(bead, "loss_tangent"),
        bead_thermal_conductivity=_material(bead, "thermal_conductivity_w_per_m_k"),
        fill_thermal_conductivity=_material(mating, "thermal_conductivity_w_per_m_k"),
        body_diameter_m=sourced(interface.body_diameter_m),
        body_length_m=sourced(interface.body_length_m),
        inner_conductivity=_material(inner, "conductivity_s_per_m"),
        inner_permeability=_material(inner, "relative_permeability"),
        outer_conductivity=_material(outer, "conductivity_s_per_m"),
        outer_permeability=_material(outer, "relative_permeability"),
        conductor_thermal_conductivity=_material("copper", "thermal_conductivity_w_per_m_k"),
        cable_diameter_m=sourced(interface.usual_cable_diameter_m or interface.cable_diameter_m.high),
        cable_conductor_area_m2=sourced(interface.cable_conductor_area_m2),
        centre_contact_resistance_ohm=sourced(getattr(interface.centre_contact_resistance_ohm, resistance_end)),
        outer_contact_resistance_ohm=sourced(getattr(interface.outer_contact_resistance_ohm, resistance_end)),
        working_voltage_rms_v=sourced(getattr(interface.working_voltage_rms_v, end)),
        time_constant_s=sourced(getattr(interface.thermal_time_constant_s, end)),
        highest_temperature_c=sourced(interface.highest_temperature_c),
        published_loss_db=sourced(loss.loss_db),
        published_loss_at_hz=Sourced(loss.at_frequency_hz, loss.loss_db.source, loss.loss_db.kind),
        rated_power_w=rated(rating.power_w),
        rated_frequency_hz=rated(rating.frequency_hz),
        rated_ambient_c=rated(rating.ambient_temperature_c),
        rated_contact_c=rated(rating.contact_temperature_c),
        rated_altitude_m=rated(rating.altitude_m),
        design_impedance_ohm=match.impedance_ohm,
        match_vswr_at_dc=match.vswr_at_dc,
        match_vswr_slope_per_hz=match.vswr_slope_per_hz,
        match_length_m=match.length_m,
        match_permittivity=match.permittivity,
        te11_root=Sourced(_te11_roots()[family], "derived", ""),
    )


def table_ratings(families: list[str], end: RatingEnd) -> Ratings[np.ndarray]:
    """One end of the ratings of many families, as columns of shape (len(families), 1)."""
    rows = _rows()
    chosen = np.array([rows[family] for family in families])
    return Ratings._make(column[chosen] for column in _columns(end))


@per_edition(maxsize=1)
def _rows() -> dict[str, int]:
    return {family: row for row, family in enumerate(catalogue().interfaces)}


@per_edition(maxsize=2)
def _columns(end: RatingEnd) -> list[np.ndarray]:
    """Each figure of every family as a column, in the order of the record."""
    rows = [family_ratings(family, end) for family in catalogue().interfaces]
    return [np.array(figures, dtype=np.float64)[:, None] for figures in zip(*rows, strict=True)]


@per_edition(maxsize=1)
def _te11_roots() -> dict[str, float]:
    """Of all families at once: a search over an array costs what one over a scalar does."""
    interfaces = catalogue().interfaces
    ratios = [interface.outer_diameter_m.value / interface.inner_diameter_m.value for interface in interfaces.values()]
    return dict(zip(interfaces, te11_root(np.array(ratios)).tolist(), strict=True))


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
        permittivity=_material(interface.bead_material.value, "relative_permittivity"),
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


def _material(name: str, figure: str) -> Sourced:
    """A figure that a material must have where a family uses it, which the catalogue's own checks see to."""
    return sourced(getattr(catalogue().materials[name], figure))
