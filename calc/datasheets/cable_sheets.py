"""The data sheet of a cable, with the law fitted to its published attenuation."""

from ..catalogue import catalogue
from ..catalogue.defaults import build_of
from ..catalogue.schema import Cable
from ..numeric.measures import prose
from ..physics.cable_fit import attenuation_coefficients
from .results import CableSheet
from .values import data_values

__all__ = ["cable_sheet"]


def cable_sheet(cable: Cable) -> CableSheet:
    """Everything the catalogue in force holds about a cable."""
    law = attenuation_coefficients(cable.attenuation)
    return CableSheet(
        id=cable.id,
        name=cable.spoken_name,
        summary=prose(cable.summary),
        also_called=cable.also_called,
        dielectric=cable.dielectric,
        construction=cable.construction,
        outdoor_use=cable.outdoor_use,
        k1_db_per_m_sqrt_hz=law.k1,
        k2_db_per_m_hz=law.k2,
        residual=law.residual,
        law_low_hz=law.lowest,
        fit_low_hz=law.f_low,
        fit_high_hz=law.f_high,
        fit_note=cable.fit_note,
        values=data_values(cable) + data_values(build_of(cable, catalogue())),
        attenuation=cable.attenuation,
        power=cable.power,
        pack=catalogue().pack_of("cables", cable.id),
    )
