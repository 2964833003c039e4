"""The data sheet of an interface family: its values and what it is dangerous to mate it with."""

from ..catalogue import catalogue
from ..catalogue.mating import ConnectorEnd, meeting
from ..catalogue.schema import Interface
from .results import DataSheet, DataValue, HazardText
from .values import data_value, data_values

__all__ = ["family_sheet"]


def family_sheet(interface: Interface) -> DataSheet:
    """Everything the catalogue in force holds about a family."""
    return DataSheet(
        id=interface.id,
        name=interface.name,
        summary=interface.summary,
        also_called=interface.also_called,
        values=_values(interface),
        power=interface.average_power,
        hazards=_hazards(interface),
        pack=catalogue().pack_of("interfaces", interface.id),
    )


def _hazards(interface: Interface) -> list[HazardText]:
    """What comes of mating the family with another, the plug and jack named where it matters which is which."""
    hazards = []
    for mating in catalogue().matings.values():
        if interface.id in (mating.plug, mating.jack):
            relative = mating.jack if interface.id == mating.plug else mating.plug
            text = (
                mating.text
                if mating.either_way
                else meeting(ConnectorEnd(mating.plug, "plug"), ConnectorEnd(mating.jack, "jack")).sentence
            )
            hazards.append(HazardText(relative, text, mating.source, mating.kind))
    return hazards


def _values(interface: Interface) -> list[DataValue]:
    """The values of the family, then those of its limits and of its section without constant impedance."""
    values = data_values(interface)
    limit, loss = interface.vswr_limit, interface.insertion_loss
    values.append(data_value("vswr_limit_at_dc", "VSWR limit at DC", "1", limit.at_dc, limit.at_dc))
    values.append(data_value("vswr_limit_growth", "VSWR limit, growth", "1/Hz", limit.slope_per_hz, limit.slope_per_hz))
    loss_field = f"insertion_loss_limit_at_{loss.at_frequency_hz / 1e9:g}_ghz"
    loss_label = f"Insertion loss limit at {loss.at_frequency_hz / 1e9:g} GHz"
    values.append(data_value(loss_field, loss_label, "dB", loss.loss_db, loss.loss_db))
    if interface.section is not None:
        impedance, length = interface.section.impedance_ohm, interface.section.electrical_length_m
        values.append(data_value("section_impedance", "Section impedance", "Ω", impedance.low, impedance.high))
        values.append(
            data_value("section_electrical_length", "Section electrical length", "m", length.low, length.high)
        )
    return values
