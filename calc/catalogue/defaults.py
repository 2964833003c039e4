"""What stands for what an entry leaves out: the customary cable of a family, and what a cable is built of."""

import msgspec

from .schema import Cable, CableBuild, Interface, Quantity
from .tables import Catalogue

__all__ = ["build_of", "customary_cable_of", "model_cable"]

DIAMETERS = ("inner_diameter_m", "dielectric_diameter_m", "screen_diameter_m")
AREAS = ("inner_area_m2", "screen_area_m2")

LIKE_IMPEDANCE = 0.2
"""Cables of one impedance, or of a family's, differ less from it than this share (common practice)."""


def customary_cable_of(interface: Interface, tables: Catalogue) -> str:
    """The id of a family's customary cable; where none is named, the thickest of like impedance that it takes."""
    if interface.customary_cable is not None:
        return interface.customary_cable.value
    impedance, most = interface.nominal_impedance_ohm.value, interface.cable_diameter_m.high.value
    alike = _of_impedance(impedance, list(tables.cables.values()))
    taken = [cable for cable in alike if cable.outer_diameter_m.value <= most]
    if taken:
        return max(taken, key=_diameter).id
    return min(alike, key=_diameter).id


def build_of(cable: Cable, tables: Catalogue) -> CableBuild:
    """The layers of a cable; where it does not say, those of its model, scaled to its diameter."""
    if cable.build is not None:
        return cable.build
    model = model_cable(cable, tables)
    if model.build is None:
        raise ValueError(f"{model.id}: no build")
    scale = _diameter(cable) / _diameter(model)
    scaled = {name: _scaled(getattr(model.build, name), scale) for name in DIAMETERS}
    scaled |= {name: _scaled(getattr(model.build, name), scale**2) for name in AREAS}
    return msgspec.structs.replace(model.build, **scaled)


def model_cable(cable: Cable, tables: Catalogue) -> Cable:
    """The cable whose build stands for that of one that gives none.

    Of like insulation and impedance, on which the diameters of its layers depend, the nearest in diameter.
    """
    known = [other for other in tables.cables.values() if other.build is not None]
    insulated = [other for other in known if other.dielectric == cable.dielectric] or known
    alike = _of_impedance(cable.impedance_ohm.value, insulated)
    return min(alike, key=lambda other: abs(_diameter(other) - _diameter(cable)))


def _of_impedance(impedance_ohm: float, cables: list[Cable]) -> list[Cable]:
    """Those of like impedance, or all of them where none is."""
    return [one for one in cables if abs(one.impedance_ohm.value / impedance_ohm - 1) < LIKE_IMPEDANCE] or cables


def _diameter(cable: Cable) -> float:
    return cable.outer_diameter_m.value


def _scaled(quantity: Quantity, scale: float) -> Quantity:
    return msgspec.structs.replace(quantity, value=quantity.value * scale)
