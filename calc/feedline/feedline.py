"""A request's elements and load with their names looked up: the chain the waves are solved on."""

from collections.abc import Callable
from typing import Any, NamedTuple

import numpy as np

from ..catalogue import catalogue
from ..catalogue.schema import Cable
from ..errors import InputError, known
from ..formulas.match import reflection_of_vswr
from ..numeric.units import engineering
from ..physics.columns import Column, chosen_column
from ..physics.gates import Demand, site_demands
from ..physics.ratings import ENDS, family_ratings
from ..physics.scenario import Scenario, Surroundings
from ..physics.station import Station, station_of
from ..waves.measured import Measured, is_passive
from ..waves.touchstone import read_touchstone
from .cable import CableModel, cable_marks, cable_ratings
from .elements import (
    CableRun,
    Element,
    GivenImpedance,
    GivenVswr,
    ImpedanceTable,
    Joint,
    KnownEnd,
    Load,
    MeasuredPart,
    Part,
)
from .joint import joint_model
from .part import MeasuredModel, PartModel, within

__all__ = ["Feedline", "Link", "feedline_at", "feedline_of", "joint_scenario", "touching"]

KNOWN_ENDS = {"short": -1.0, "open": 1.0, "matched": 0.0}
"""Their reflection."""

LEAST_TAKEN = 1e-9  # share of a wave; below it what an antenna takes drowns in rounding


class Link(NamedTuple):
    """One two-port of the chain: an element, or one of the two joints of an adapter."""

    element: int
    kind: str
    name: str
    family: str | None
    pack: str
    models: tuple[Any, Any]
    """By the cautious and the generous end of the ratings."""
    demands: list[Demand]
    marks: list[str]
    """Doubts about a cable that are no gate."""


class Feedline(NamedTuple):
    """The links from the transmitter on, and the load's reflection at any frequencies [Hz]."""

    links: list[Link]
    load: Callable[[np.ndarray], np.ndarray]
    station: Station
    net: bool
    column: Column
    frequency_hz: float


def feedline_of(request: Any) -> Feedline:
    """Look the line of a LineRequest or SpreadRequest up.

    Raises InputError naming the element for a name that is not in the
    catalogue, and for a measurement that can't be used.
    """
    feedline = feedline_at(request, chosen_column(request.band, request.frequency_hz, request.region))
    taken = 1 - np.abs(feedline.load(np.array([feedline.frequency_hz]))[0]) ** 2
    if not taken > LEAST_TAKEN:
        raise InputError("load", "an antenna that takes no power", "one that takes some")
    return feedline


def feedline_at(request: Any, column: Column) -> Feedline:
    """The line of any request looked up for a column; its load may take nothing, as an open or short end does."""
    frequency = (column.low_hz + column.high_hz) / 2
    station = station_of(joint_scenario(request))
    links = [link for at in range(len(request.elements)) for link in _links(request, at, station, frequency)]
    for link in links:
        if link.kind == "measured":
            field = f"elements[{link.element}].touchstone"
            _refuse_out_of_reach(field, link.models[0].measured.frequencies_hz, frequency)
    load = _load(request.load, station.impedance_ohm, frequency)
    return Feedline(links, load, station, request.power_is == "net", column, frequency)


def joint_scenario(request: Surroundings, joint: Joint | None = None, cable: Cable | None = None) -> Scenario:
    """The scenario of one joint: the site's, with the joint's own contacts, weather and cable."""
    shared = {name: getattr(request, name) for name in Surroundings.__struct_fields__}
    if joint is not None:
        shared |= {"condition": joint.condition, "added_resistance_ohm": joint.added_resistance_ohm}
        shared["exposure"] = joint.exposure or request.exposure
    if cable is not None:
        shared |= {"cable_dielectric": cable.dielectric, "cable_diameter_m": cable.outer_diameter_m.value}
    return Scenario(**shared)


def touching(elements: list[Element], at: int) -> tuple[Cable | None, Cable | None]:
    """The cables that end in the joint at this place: on the transmitter's side and on the antenna's."""
    return _cable_at(elements, at - 1), _cable_at(elements, at + 1)


def _cable_at(elements: list[Element], at: int) -> Cable | None:
    if not 0 <= at < len(elements) or not isinstance(elements[at], CableRun):
        return None
    return known(f"elements[{at}].cable", elements[at].cable, catalogue().cables)


def _links(request: Any, at: int, station: Station, frequency: float) -> list[Link]:
    element = request.elements[at]
    if isinstance(element, CableRun):
        entry = _cable_at(request.elements, at)
        models = tuple(CableModel(cable_ratings(entry.id, end), element.length_m, station) for end in ENDS)
        name, marks = f"{element.length_m:g} m of {entry.name}", cable_marks(entry, frequency, request.exposure)
        pack = catalogue().pack_of("cables", entry.id)
        return [Link(at, "cable", element.name or name, None, pack, models, [], marks)]
    if isinstance(element, Part):
        model = PartModel(
            element.loss_db,
            float(reflection_of_vswr(element.vswr)),
            _limit(element.power_limit_w),
            _limit(element.voltage_limit_v),
            station,
        )
        return [Link(at, "part", element.name or "Part", None, "", (model, model), [], [])]
    if isinstance(element, MeasuredPart):
        model = MeasuredModel(_measured(element.touchstone, f"elements[{at}].touchstone", 2), station)
        return [Link(at, "measured", element.name or "Measured part", None, "", (model, model), [], [])]
    return _joint_links(request, at, element)


def _joint_links(request: Any, at: int, element: Joint) -> list[Link]:
    families = {"family": element.family}
    if element.adapter_to is not None:
        families["adapter_to"] = element.adapter_to
    for field, family in families.items():
        known(f"elements[{at}].{field}", family, catalogue().interfaces)
    known(f"elements[{at}].condition", element.condition, catalogue().conditions)
    before, after = touching(request.elements, at)
    links = []
    for field, family in families.items():
        # an adapter's two joints each touch one cable; a plain joint's halves may sit on two
        cables = [before, after] if len(families) == 1 else [before if field == "family" else after]
        links.append(_joint_link(request, at, element, family, [cable for cable in cables if cable]))
    return links


def _joint_link(request: Any, at: int, element: Joint, family: str, cables: list[Cable]) -> Link:
    coolest = min(cables, key=lambda cable: cable.highest_temperature_c.value, default=None)
    station = station_of(joint_scenario(request, element, coolest))
    if coolest is None:
        station = station._replace(cable_temperature_c=np.inf)
    models = tuple(joint_model(family_ratings(family, end), station) for end in ENDS)
    interface = catalogue().interfaces[family]
    demands = joint_demands(request, element, family, cables)
    pack = catalogue().pack_of("interfaces", family)
    return Link(at, "joint", element.name or interface.name, family, pack, models, demands, [])


def joint_demands(request: Any, element: Joint, family: str, cables: list[Cable]) -> list[Demand]:
    """What the site asks of the joint's family; it must fit every cable that ends in it."""
    asked = [site_demands(family, joint_scenario(request, element, cable)) for cable in cables or [None]]
    return [next((one for one in same if not one.passed), same[0]) for same in zip(*asked, strict=True)]


def _limit(value: float | None) -> float:
    return np.inf if value is None else value


def _measured(text: str, field: str, ports: int) -> Measured:
    measured = read_touchstone(text, field)
    if measured.s.shape[-1] != ports:
        wanted = "one-port" if ports == 1 else "two-port"
        raise InputError(field, f"{measured.s.shape[-1]} ports", f"a {wanted} file")
    passive = is_passive(measured.s)
    if not passive.all():
        at = measured.frequencies_hz[int(np.argmin(passive))]
        raise InputError(field, f"more power out than in at {engineering(at, 'Hz')}", "a passive part")
    if ports == 2 and not (np.abs(measured.s[:, 1, 0]) > 0).all():
        raise InputError(field, "s21 = 0", "a two-port that lets something through")
    return measured


def _load(load: Load | KnownEnd, impedance: float, wanted_hz: float) -> Callable[[np.ndarray], np.ndarray]:
    if isinstance(load, GivenVswr):
        reflection = reflection_of_vswr(load.vswr) * np.exp(1j * np.deg2rad(load.angle_deg))
        return lambda frequency: np.full(np.shape(frequency), reflection)
    if isinstance(load, GivenImpedance):
        reflection = _reflection(load.resistance_ohm, load.reactance_ohm, impedance)
        return lambda frequency: np.full(np.shape(frequency), reflection)
    if isinstance(load, KnownEnd):
        return lambda frequency: np.full(np.shape(frequency), KNOWN_ENDS[load.what], dtype=np.complex128)
    if isinstance(load, ImpedanceTable):
        return _table(load, impedance, wanted_hz)
    measured = _measured(load.touchstone, "load.touchstone", 1)
    _refuse_out_of_reach("load.touchstone", measured.frequencies_hz, wanted_hz)
    # from the file's reference to the line's
    step = (measured.reference_ohm - impedance) / (measured.reference_ohm + impedance)

    def reflection_at(frequency: np.ndarray) -> np.ndarray:
        own = within(measured, frequency)[..., 0, 0]
        return (own + step) / (1 + own * step)

    return reflection_at


def _table(load: ImpedanceTable, impedance: float, wanted_hz: float) -> Callable[[np.ndarray], np.ndarray]:
    frequencies = np.array([point.frequency_hz for point in load.points], dtype=np.float64)
    for index in np.flatnonzero(np.diff(frequencies) <= 0):
        at = int(index) + 1
        raise InputError(f"load.points[{at}].frequency_hz", load.points[at].frequency_hz, "more than the one before")
    _refuse_out_of_reach("load.points", frequencies, wanted_hz)
    reflections = np.array([_reflection(point.resistance_ohm, point.reactance_ohm, impedance) for point in load.points])

    def reflection_at(frequency: np.ndarray) -> np.ndarray:
        inside = (frequency >= frequencies[0]) & (frequency <= frequencies[-1])
        real, imaginary = (np.interp(frequency, frequencies, part) for part in (reflections.real, reflections.imag))
        return np.where(inside, real + 1j * imaginary, np.nan)

    return reflection_at


def _reflection(resistance: float, reactance: float, impedance: float) -> complex:
    load = complex(resistance, reactance)
    return (load - impedance) / (load + impedance)


def _refuse_out_of_reach(field: str, frequencies: np.ndarray, wanted_hz: float) -> None:
    low, high = float(frequencies[0]), float(frequencies[-1])
    if not low <= wanted_hz <= high:
        span = f"{engineering(low, 'Hz')} to {engineering(high, 'Hz')}"
        raise InputError(field, span, f"figures that reach {engineering(wanted_hz, 'Hz')}")
