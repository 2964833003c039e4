"""One end of a family's ratings as plain numbers: what the formulas take.

The conservative view takes the lowest credible rating, the highest contact
resistance and the standard's VSWR limit; the optimistic view the other ends.
`family_view` gives scalars that remember their sources, for the derivation;
`table_view` gives columns of shape (families, 1), for the matrix.
"""

from types import SimpleNamespace
from typing import Literal

import numpy as np

from ..catalogue import catalogue, per_edition
from ..catalogue.schema import Interface, Quantity
from ..formulas.coax import te11_root
from ..formulas.formula import Sourced

__all__ = ["CAUTIOUS", "ENDS", "GENEROUS", "RatingEnd", "family_ratings", "table_ratings"]

RatingEnd = Literal["low", "high"]
ENDS: tuple[RatingEnd, RatingEnd] = ("low", "high")
"""Conservative end first, optimistic second, wherever both are kept."""

CAUTIOUS, GENEROUS = range(len(ENDS))


def family_ratings(family: str, end: RatingEnd) -> SimpleNamespace:
    """Scalars of one end of a family's ratings, each a `Sourced` float."""
    return SimpleNamespace(**_values(family, end))


def table_ratings(families: list[str], end: RatingEnd) -> SimpleNamespace:
    """Columns of shape (len(families), 1) of one end of the ratings."""
    rows = _rows()
    chosen = np.array([rows[family] for family in families])
    return SimpleNamespace(**{name: column[chosen] for name, column in _columns(end).items()})


@per_edition(maxsize=1)
def _rows() -> dict[str, int]:
    return {family: row for row, family in enumerate(catalogue().interfaces)}


@per_edition(maxsize=2)
def _columns(end: RatingEnd) -> dict[str, np.ndarray]:
    rows = [_values(family, end) for family in catalogue().interfaces]
    return {name: np.array([float(row[name]) for row in rows], dtype=np.float64)[:, None] for name in rows[0]}


@per_edition(maxsize=256)
def _values(family: str, end: RatingEnd) -> dict[str, Sourced]:
    interface = catalogue().interfaces[family]
    generous = end == "high"
    rating = getattr(interface.average_power, end)
    mating = _material(interface.dielectric.value)
    bead = _material(interface.bead_material.value)
    inner, outer = _material(interface.inner_plating.value), _material(interface.outer_plating.value)
    resistance_end = "low" if generous else "high"
    values = {
        "inner_diameter_m": interface.inner_diameter_m,
        "outer_diameter_m": interface.outer_diameter_m,
        "permittivity": mating.relative_permittivity,
        "section_length_m": interface.section_length_m,
        "bead_length_m": interface.bead_length_m,
        "bead_permittivity": bead.relative_permittivity,
        "bead_loss_tangent": bead.loss_tangent,
        "bead_thermal_conductivity": bead.thermal_conductivity_w_per_m_k,
        "fill_thermal_conductivity": mating.thermal_conductivity_w_per_m_k,
        "body_diameter_m": interface.body_diameter_m,
        "body_length_m": interface.body_length_m,
        "inner_conductivity": inner.conductivity_s_per_m,
        "inner_permeability": inner.relative_permeability,
        "outer_conductivity": outer.conductivity_s_per_m,
        "outer_permeability": outer.relative_permeability,
        "conductor_thermal_conductivity": _material("copper").thermal_conductivity_w_per_m_k,
        "cable_diameter_m": interface.cable_diameter_m.high,
        "cable_conductor_area_m2": interface.cable_conductor_area_m2,
        "centre_contact_resistance_ohm": getattr(interface.centre_contact_resistance_ohm, resistance_end),
        "outer_contact_resistance_ohm": getattr(interface.outer_contact_resistance_ohm, resistance_end),
        "working_voltage_rms_v": getattr(interface.working_voltage_rms_v, end),
        "time_constant_s": getattr(interface.thermal_time_constant_s, end),
        "highest_temperature_c": interface.highest_temperature_c,
        "guaranteed_loss_db": interface.insertion_loss.loss_db,
    }
    sourced = {name: Sourced(value.value, value.source, value.kind) for name, value in values.items()}
    rated = {
        "rated_power_w": rating.power_w,
        "rated_frequency_hz": rating.frequency_hz,
        "rated_ambient_c": rating.ambient_temperature_c,
        "rated_contact_c": rating.contact_temperature_c,
        "rated_altitude_m": rating.altitude_m,
    }
    sourced |= {name: Sourced(value, rating.source, rating.kind) for name, value in rated.items()}
    sourced |= _match_values(interface, end)
    loss = interface.insertion_loss
    sourced["guaranteed_loss_at_hz"] = Sourced(loss.at_frequency_hz, loss.loss_db.source, loss.loss_db.kind)
    sourced["te11_root"] = Sourced(_te11_roots()[family], "derived", "")
    return sourced


@per_edition(maxsize=1)
def _te11_roots() -> dict[str, float]:
    """Of all families at once: a search over an array costs what one over a scalar does."""
    interfaces = catalogue().interfaces
    ratios = [one.outer_diameter_m.value / one.inner_diameter_m.value for one in interfaces.values()]
    return dict(zip(interfaces, te11_root(np.array(ratios)).tolist(), strict=True))


def _match_values(interface: Interface, end: RatingEnd) -> dict[str, Sourced]:
    """A part without constant impedance is a section of known impedance, with no VSWR limit of its own."""
    if interface.section is not None:
        impedance = getattr(interface.section.impedance_ohm, end)
        length = getattr(interface.section.electrical_length_m, end)
        at_dc = slope = permittivity = None
    else:
        impedance, length = interface.nominal_impedance_ohm, interface.section_length_m
        at_dc, slope = interface.vswr_limit.at_dc, interface.vswr_limit.slope_per_hz
        permittivity = _material(interface.bead_material.value).relative_permittivity
        if end == "high":
            at_dc, slope = _typical_law(interface)
    return {
        "design_impedance_ohm": _sourced(impedance, 0.0),
        "match_vswr_at_dc": _sourced(at_dc, 1.0),
        "match_vswr_slope_per_hz": _sourced(slope, 0.0),
        "match_length_m": _sourced(length, 0.0),
        "match_permittivity": _sourced(permittivity, 1.0),
    }


def _typical_law(interface: Interface) -> tuple[Quantity, Quantity]:
    """The limit's law with its excess over 1 shrunk so that it passes the typical VSWR at the rated frequency."""
    limit, typical = interface.vswr_limit, interface.vswr_typical
    rated_limit = limit.at_dc.value + limit.slope_per_hz.value * interface.rated_frequency_hz.low.value
    excess = min((typical.value - 1) / (rated_limit - 1), 1.0)
    return (
        Quantity(1 + (limit.at_dc.value - 1) * excess, typical.source, typical.kind),
        Quantity(limit.slope_per_hz.value * excess, typical.source, typical.kind),
    )


def _sourced(quantity: Quantity | None, otherwise: float) -> Sourced:
    """The quantity, or the neutral value of a term that does not apply to this family."""
    if quantity is None:
        return Sourced(otherwise, "neutral", "")
    return Sourced(quantity.value, quantity.source, quantity.kind)


def _material(name: str):
    return catalogue().materials[name]
