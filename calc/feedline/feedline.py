"""A request's elements and load with their names looked up: the chain the waves are solved on."""

from typing import NamedTuple

import numpy as np

from ..catalogue import catalogue
from ..catalogue.schema import Cable
from ..errors import InputError, known
from ..formulas.match import reflection_of_vswr
from ..numeric.measures import length_words
from ..physics.cable_table import cable_ratings
from ..physics.columns import Column, chosen_column
from ..physics.family_ratings import family_ratings
from ..physics.ratings import CAUTIOUS, ENDS
from ..physics.scenario import Surroundings
from ..physics.station import Station, station_of
from ..physics.wire_ratings import wire_ratings
from ..waves.tuner import Parts
from .cable import CableLink, cable_marks, cable_model
from .dummy import dummy_links
from .elements import (
    CableRun,
    Element,
    FeedlineRequest,
    Joint,
    KnownEnd,
    Load,
    MeasuredPart,
    Part,
    Section,
    Transformer,
    Tuner,
    WireRun,
)
from .joint import JointLink, joint_model
from .link import Link
from .load import LoadReflection, load_reflection
from .measurement import refuse_out_of_reach, usable_measurement
from .part import MeasuredLink, MeasuredModel, PartLink, PartModel
from .section import SectionLink, SectionModel
from .surroundings import cable_of, cables_of, joint_demands, joint_scenario, touching
from .transformer import TransformerLink, TransformerModel, transformer_marks
from .transmitter import HOLDS_AT_ANY, TransmitterModel, transmitter_of
from .tuner import TunerLink, TunerModel
from .wires import WireLink, WireModel, wire_marks

__all__ = ["Feedline", "feedline_at", "feedline_of", "tuner_link"]

HELD = TransmitterModel("", HOLDS_AT_ANY)
"""Of a line that is measured and not sent into."""

USUAL_CAPACITOR_F = {"t": 250e-12, "l": 2e-9, "pi": 2e-9}
"""What the capacitors of a tuner of each network go up to (common practice); across the line they must be larger."""

LEAST_ACCEPTED = 1e-9  # share of a wave; below it what an antenna accepts drowns in rounding


class Feedline(NamedTuple):
    """The links from the transmitter on, and the load's reflection at any frequencies [Hz]."""

    links: list[Link]
    load: LoadReflection
    station: Station
    net: bool
    column: Column
    frequency_hz: float
    transmitter: TransmitterModel

    def distance_m(self, index: int) -> float:
        """How far along the cables a link begins."""
        return sum((link.models[CAUTIOUS].length_m for link in self.links[:index]), 0.0)


def feedline_of(request: FeedlineRequest) -> Feedline:
    """Look a request's line up.

    Raises InputError naming the element for a name that is not in the
    catalogue, and for a measurement that can't be used.
    """
    column = chosen_column(request.band, request.frequency_hz, request.region)
    transmitter = transmitter_of(request)
    feedline = feedline_at(request, request.elements, request.load, column)
    links = feedline.links + dummy_links(request, feedline.station)
    feedline = feedline._replace(links=links, transmitter=transmitter)
    accepted = 1 - np.abs(feedline.load.likely(np.array([feedline.frequency_hz]))).max() ** 2
    if not accepted > LEAST_ACCEPTED:
        raise InputError("load", "an antenna that takes no power", "one that takes some")
    return feedline


def feedline_at(site: Surroundings, elements: list[Element], load: Load | KnownEnd, column: Column) -> Feedline:
    """A line looked up for a column; its load may accept nothing, as an open or short end does."""
    frequency = (column.low_hz + column.high_hz) / 2
    station = station_of(joint_scenario(site))
    links = [link for index in range(len(elements)) for link in _links(site, elements, index, station, frequency)]
    for link in links:
        if isinstance(link, MeasuredLink):
            field = f"elements[{link.element}].touchstone"
            refuse_out_of_reach(field, link.models[CAUTIOUS].measured.frequencies_hz, frequency)
    reflection = load_reflection(load, station.impedance_ohm, frequency)
    return Feedline(links, reflection, station, site.power_is == "net", column, frequency, HELD)


def _links(site: Surroundings, elements: list[Element], index: int, station: Station, frequency: float) -> list[Link]:
    match elements[index]:
        case CableRun() as run:
            return [_cable_link(site, index, run, station, frequency)]
        case WireRun() as run:
            return [_wire_link(site, index, run, station, frequency)]
        case Section() as section:
            return [_section_link(index, section, station)]
        case Transformer() as transformer:
            return [_transformer_link(index, transformer, station)]
        case Part() as part:
            return [_part_link(index, part, station)]
        case MeasuredPart() as measured:
            return [_measured_link(index, measured, station)]
        case Tuner() as tuner:
            return [tuner_link(index, tuner, station)]
        case Joint() as joint:
            return _joint_links(site, elements, index, joint)


def tuner_link(index: int, tuner: Tuner, station: Station) -> TunerLink:
    """The link of a tuner, for the element of that index."""
    largest = tuner.largest_capacitor_f or USUAL_CAPACITOR_F[tuner.network]
    parts = Parts(tuner.network, tuner.coil_q, tuner.capacitor_q, largest, tuner.largest_coil_h)
    model = TunerModel(station, parts, _limit(tuner.voltage_limit_v), _limit(tuner.current_limit_a))
    return TunerLink(element=index, name=tuner.name or "Tuner", models=(model, model))


def _cable_link(site: Surroundings, index: int, run: CableRun, station: Station, frequency: float) -> CableLink:
    cable = cable_of(run, index)
    return CableLink(
        element=index,
        name=run.name or f"{length_words(run.length_m)} of {cable.spoken_name}",
        models=(
            cable_model(cable_ratings(cable.id, "low"), run.length_m, station),
            cable_model(cable_ratings(cable.id, "high"), run.length_m, station),
        ),
        pack=catalogue().pack_of("cables", cable.id),
        cable=cable.id,
        marks=cable_marks(cable, frequency, site),
    )


def _wire_link(site: Surroundings, index: int, run: WireRun, station: Station, frequency: float) -> WireLink:
    entry = known(f"elements[{index}].line", run.line, catalogue().wire_lines)
    cautious, generous = (WireModel(station, run.length_m, wire_ratings(entry.id, end)) for end in ENDS)
    return WireLink(
        element=index,
        name=run.name or f"{length_words(run.length_m)} of {entry.spoken_name}",
        models=(cautious, generous),
        pack=catalogue().pack_of("wire_lines", entry.id),
        marks=wire_marks(entry, frequency, site),
    )


def _section_link(index: int, given: Section, station: Station) -> SectionLink:
    model = SectionModel(
        station,
        given.length_m,
        impedance_ohm=given.impedance_ohm,
        velocity_factor=given.velocity_factor,
        loss_db=given.loss_db,
        voltage_limit_v=_limit(given.voltage_limit_v),
    )
    name = given.name or f"{length_words(given.length_m)} section of {given.impedance_ohm:g} Ω"
    return SectionLink(element=index, name=name, models=(model, model))


def _transformer_link(index: int, given: Transformer, station: Station) -> TransformerLink:
    model = TransformerModel(
        station,
        power_limit_w=_limit(given.power_limit_w),
        peak_v=_limit(given.voltage_limit_v),
        ratio=given.ratio,
        loss_db=given.loss_db,
    )
    name = given.name or "Transformer"
    return TransformerLink(element=index, name=name, models=(model, model), marks=transformer_marks(name, given))


def _part_link(index: int, given: Part, station: Station) -> PartLink:
    model = PartModel(
        station,
        power_limit_w=_limit(given.power_limit_w),
        peak_v=_limit(given.voltage_limit_v),
        loss_db=given.loss_db,
        reflection=float(reflection_of_vswr(given.vswr)),
    )
    name = given.name or (given.what.capitalize() if given.what != "other" else "Part")
    fires = f"At its voltage limit {name} fires and shorts the line." if given.what == "arrester" else ""
    return PartLink(
        element=index,
        name=name,
        models=(model, model),
        at_voltage_limit=fires,
        directivity_db=given.directivity_db,
    )


def _measured_link(index: int, given: MeasuredPart, station: Station) -> MeasuredLink:
    model = MeasuredModel(
        station,
        power_limit_w=_limit(given.power_limit_w),
        peak_v=_limit(given.voltage_limit_v),
        measured=usable_measurement(given.touchstone, f"elements[{index}].touchstone", 2),
    )
    return MeasuredLink(element=index, name=given.name or "Measured part", models=(model, model))


def _joint_links(site: Surroundings, elements: list[Element], index: int, joint: Joint) -> list[Link]:
    families = {"family": joint.family}
    if joint.adapter_to is not None:
        families["adapter_to"] = joint.adapter_to
    for field, family in families.items():
        known(f"elements[{index}].{field}", family, catalogue().interfaces)
    known(f"elements[{index}].condition", joint.condition, catalogue().conditions)
    before, after = touching(elements, index)
    links: list[Link] = []
    for field, family in families.items():
        # an adapter's two joints each touch one cable; a plain joint's halves may sit on two
        near, far = (before, after) if len(families) == 1 else (before, None) if field == "family" else (None, after)
        links.append(_joint_link(site, index, joint, family, (near, far)))
    return links


def _joint_link(
    site: Surroundings, index: int, joint: Joint, family: str, sides: tuple[Cable | None, Cable | None]
) -> JointLink:
    station = station_of(joint_scenario(site, joint))
    cautious, generous = (joint_model(family_ratings(family, end), cables_of(sides, end), station) for end in ENDS)
    return JointLink(
        element=index,
        name=joint.name or catalogue().interfaces[family].name,
        models=(cautious, generous),
        pack=catalogue().pack_of("interfaces", family),
        family=family,
        given=joint,
        demands=joint_demands(site, joint, family, [cable for cable in sides if cable]),
    )


def _limit(value: float | None) -> float:
    return np.inf if value is None else value
