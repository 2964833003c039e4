"""The catalogue as an answer: data sheets, tables, formulas with MathML, and sources."""

import msgspec

from .. import formulas  # noqa: F401  (registers every formula)
from ..catalogue import catalogue, per_edition
from ..catalogue.mating import ConnectorEnd, meeting
from ..catalogue.schema import Cable, Interface, Interval, Label, PowerRatings, Quantity
from ..errors import known
from ..formulas.formula import FORMULAS, SymbolSheet
from ..formulas.mathml import mathml
from ..physics.cautions import CAUTIONS
from ..waves.cable_fit import attenuation_coefficients
from .requests import CatalogueRequest
from .results import CableSheet, CatalogueResult, DataSheet, DataValue, FormulaSheet, HazardText

__all__ = ["describe"]


@per_edition(maxsize=2)
def describe(request: CatalogueRequest) -> CatalogueResult:
    """Everything the catalogue holds, ready to show. Raises InputError for an unknown entry."""
    tables = catalogue()
    return CatalogueResult(
        families=[_sheet(interface) for interface in tables.interfaces.values()],
        cables=[_cable_sheet(cable) for cable in tables.cables.values()],
        matings=list(tables.matings.values()),
        adapters=list(tables.adapters.values()),
        bands=list(tables.bands.values()),
        modes=list(tables.modes.values()),
        cable_dielectrics=list(tables.cable_dielectrics.values()),
        conditions=list(tables.conditions.values()),
        noise_environments=list(tables.noise_environments.values()),
        formulas=_formulas(),
        sources=list(tables.sources.values()),
        cautions=CAUTIONS,
        packs=list(tables.packs),
        house_limits=list(tables.house_limits.values()),
        default_powers_w=list(tables.default_powers_w),
        entry=request.entry and known("entry", request.entry, tables.interfaces),
    )


def _formulas() -> list[FormulaSheet]:
    return [
        FormulaSheet(
            id=formula.id,
            title=formula.title,
            equation=formula.equation,
            mathml=mathml(formula.equation),
            symbols=[SymbolSheet(name, symbol.meaning, symbol.unit) for name, symbol in formula.symbols.items()],
            validity=formula.validity,
            source=formula.source,
        )
        for formula in FORMULAS.values()
    ]


def _sheet(interface: Interface) -> DataSheet:
    return DataSheet(
        id=interface.id,
        name=interface.name,
        summary=interface.summary,
        also_called=interface.also_called,
        values=_values(interface),
        hazards=_hazards(interface),
        pack=catalogue().pack_of("interfaces", interface.id),
    )


def _cable_sheet(cable: Cable) -> CableSheet:
    law = attenuation_coefficients(cable.attenuation)
    return CableSheet(
        id=cable.id,
        name=cable.name,
        summary=cable.summary,
        also_called=cable.also_called,
        dielectric=cable.dielectric,
        construction=cable.construction,
        outdoor_use=cable.outdoor_use,
        k1_db_per_m_sqrt_hz=law.k1,
        k2_db_per_m_hz=law.k2,
        residual=law.residual,
        fit_low_hz=law.f_low,
        fit_high_hz=law.f_high,
        fit_note=cable.fit_note,
        values=_fields(cable),
        attenuation=cable.attenuation,
        power=cable.power,
        pack=catalogue().pack_of("cables", cable.id),
    )


def _hazards(interface: Interface) -> list[HazardText]:
    """What comes of mating the family with another, the plug and jack named where it matters which is which."""
    told = []
    for mating in catalogue().matings.values():
        if interface.id in (mating.plug, mating.jack):
            other = mating.jack if interface.id == mating.plug else mating.plug
            text = (
                mating.text
                if mating.either_way
                else meeting(ConnectorEnd(mating.plug, "plug"), ConnectorEnd(mating.jack, "jack")).sentence
            )
            told.append(HazardText(other, text, mating.source, mating.kind))
    return told


def _fields(entry: Cable | Interface) -> list[DataValue]:
    shown = []
    for field in msgspec.structs.fields(entry):
        value = getattr(entry, field.name)
        unit = _unit(field.type)
        if isinstance(value, (Quantity, Label)):
            shown.append(_value(field.name, unit, value, value))
        elif isinstance(value, Interval):
            shown.append(_value(field.name, unit, value.low, value.high))
        elif isinstance(value, PowerRatings):
            shown.append(_rating(value))
    return shown


def _values(interface: Interface) -> list[DataValue]:
    shown = _fields(interface)
    limit, loss = interface.vswr_limit, interface.insertion_loss
    shown.append(_value("vswr_limit_at_dc", "1", limit.at_dc, limit.at_dc))
    shown.append(_value("vswr_limit_growth", "1/Hz", limit.slope_per_hz, limit.slope_per_hz))
    shown.append(
        _value(f"insertion_loss_limit_at_{loss.at_frequency_hz / 1e9:g}_ghz", "dB", loss.loss_db, loss.loss_db)
    )
    if interface.section is not None:
        section = interface.section
        shown.append(_value("section_impedance", "Ω", section.impedance_ohm.low, section.impedance_ohm.high))
        length = section.electrical_length_m
        shown.append(_value("section_electrical_length", "m", length.low, length.high))
    return shown


def _rating(ratings: PowerRatings) -> DataValue:
    ends = (ratings.low, ratings.high)
    conditions = [
        f"{end.power_w:g} W at {end.frequency_hz / 1e6:g} MHz, air {end.ambient_temperature_c:g} °C,"
        f" contact {end.contact_temperature_c:g} °C, {end.altitude_m:g} m"
        for end in ends
    ]
    notes = [end.note for end in ends if end.note]
    return DataValue(
        field="average_power",
        name="Average power",
        unit="",
        low=conditions[0],
        high=conditions[1],
        sources=_distinct(end.source for end in ends),
        kinds=_distinct(end.kind for end in ends),
        note=" ".join(_distinct(notes)),
    )


def _value(field: str, unit: str, low: Quantity | Label, high: Quantity | Label) -> DataValue:
    return DataValue(
        field=field,
        name=_name(field),
        unit=unit,
        low=low.value,
        high=high.value,
        sources=_distinct((low.source, high.source)),
        kinds=_distinct((low.kind, high.kind)),
        note=" ".join(_distinct(note for note in (low.note, high.note) if note)),
    )


def _distinct(words) -> list[str]:
    return list(dict.fromkeys(words))


_UNIT_SUFFIXES = ("_ohm_per_m", "_f_per_m", "_ohm", "_m2", "_m", "_hz", "_rms_v", "_c", "_s", "_nm", "_matings", "_db")


def _name(field: str) -> str:
    """The field's name in words, without the unit that stands beside the value."""
    stem = next((field.removesuffix(suffix) for suffix in _UNIT_SUFFIXES if field.endswith(suffix)), field)
    words = stem.replace("_", " ")
    rms = ", rms" if field.endswith("_rms_v") else ""
    return words[0].upper() + words[1:].replace("vswr", "VSWR") + rms


def _unit(annotation) -> str:
    for meta in getattr(annotation, "__metadata__", ()):
        if meta.extra:
            return meta.extra["unit"]
    return ""
