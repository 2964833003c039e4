"""Pass/fail checks beside the limits.

A hard gate, when it fails, replaces the margin by its reason; a soft one stays
beside the number as a mark. Each gate compares one demand with one catalogue
value; `gate_table` does so for whole columns, `gate_results` for one cell with
sentences.
"""

from typing import NamedTuple

import numpy as np
from msgspec import Struct

from ..catalogue import catalogue, per_edition
from ..catalogue.schema import HouseLimit, Interface, Kind, Label, PowerRating, Quantity
from ..formulas.coax import te11_cutoff
from ..formulas.formula import Broadcast, Sourced
from ..numeric.units import engineering
from .house_limits import house_limit, house_power, house_sentence
from .limits import HeatPath
from .ratings import family_ratings
from .scenario import Exposure, Scenario
from .station import Station

__all__ = [
    "EXPOSURES",
    "GATES",
    "HOUSE",
    "SEALED_TO",
    "VIBRATIONS",
    "Demand",
    "GateKind",
    "GateResult",
    "cable_fits",
    "family_reasons",
    "gate_results",
    "gate_table",
    "heat_room",
    "site_demands",
]


class GateKind(Struct, frozen=True):
    """A pass/fail check; a hard one replaces the margin, a soft one stands beside it."""

    id: str
    name: str
    hard: bool


class GateResult(Struct, frozen=True):
    """One gate at the cell: the value, the limit it met, and a sentence."""

    id: str
    name: str
    hard: bool
    passed: bool
    sentence: str
    source: str
    kind: str


HOUSE = "house"
GATES = [
    GateKind("te11", "TE11 cutoff", hard=True),
    GateKind("no_figures", "Published figures", hard=True),
    GateKind("receive_only", "Receive only", hard=True),
    GateKind("no_heat_room", "Air temperature", hard=True),
    GateKind("immersion", "Immersion", hard=True),
    GateKind("customary_frequency", "Customary frequency", hard=False),
    GateKind("weather", "Weather", hard=False),
    GateKind("vibration", "Vibration", hard=False),
    GateKind("wear", "Wear", hard=False),
    GateKind("cable_fit", "Cable fit", hard=False),
    GateKind("cold", "Cold", hard=False),
    GateKind(HOUSE, "House limit", hard=True),
]
"""In the order they are tried: the first hard one that fails names the refusal, physics before house rules."""

EXPOSURES: list[Exposure] = ["indoor", "sheltered", "exposed", "immersed"]
VIBRATIONS = ["none", "vehicle", "severe"]
SEALED_TO = EXPOSURES.index("exposed")
"""What tape and butyl over a mated joint raise it to: rain, never immersion (common practice)."""


UNDOCUMENTED: set[Kind] = {"common practice", "memory"}
"""The kinds of value that no text vouches for."""


class Demand(NamedTuple):
    """One gate of one family, independent of frequency and power."""

    gate: str
    passed: bool
    sentence: str
    source: str
    kind: str


def gate_table(
    families: list[str],
    demands: list[list[Demand]],
    highest_hz: np.ndarray,
    powers_w: np.ndarray,
    station: Station,
    heat: HeatPath,
) -> np.ndarray:
    """True where a gate fails: booleans of shape (gates, families, columns, powers).

    `demands` are each family's `site_demands`, `highest_hz` is each column's
    upper edge [Hz], `powers_w` the levels [W], `heat` the cautious heat path
    of the same families.
    """
    failed = np.zeros((len(GATES), len(families), highest_hz.size, powers_w.size), dtype=bool)
    frequency = highest_hz[:, None]
    transmitting = powers_w > 0
    order = {gate.id: index for index, gate in enumerate(GATES)}
    thresholds = np.array([_thresholds(family) for family in families])[:, :, None, None]
    cutoff, highest, customary, receive_only = (thresholds[:, column] for column in range(4))
    failed[order["te11"]] = frequency >= cutoff
    failed[order["no_figures"]] = frequency > highest
    failed[order["receive_only"]] = (receive_only > 0) & transmitting
    failed[order["no_heat_room"]] = _no_heat_room(heat, station)[..., None] & transmitting
    failed[order["customary_frequency"]] = frequency > customary
    if catalogue().house_limits:
        failed[order[HOUSE]] = powers_w > house_power(families, highest_hz)[..., None]
    for row, family_demands in enumerate(demands):
        for demand in family_demands:
            failed[order[demand.gate], row] = not demand.passed
    return failed


def gate_results(
    family: str,
    demands: list[Demand],
    highest_hz: float,
    power_w: float,
    station: Station,
    heat: HeatPath,
) -> list[GateResult]:
    """Every gate of one cell with its sentence, in the order they are tried; a house limit's where there is one."""
    interface = catalogue().interfaces[family]
    hottest = _no_heat_room(heat, station)
    cutoff, highest, customary, _ = _thresholds(family)
    rated = interface.rated_frequency_hz
    met: dict[str, tuple[bool, Quantity | PowerRating | HouseLimit]] = {
        "te11": (highest_hz < cutoff, interface.outer_diameter_m),
        "no_figures": (highest_hz <= highest, rated.high),
        "receive_only": (not (interface.receive_only and power_w > 0), interface.average_power.low),
        "no_heat_room": (not (hottest and power_w > 0), interface.highest_temperature_c),
        "customary_frequency": (highest_hz <= customary, rated.low),
    }
    if (limit := house_limit(family, highest_hz)) is not None:
        met[HOUSE] = (power_w <= limit.power_w, limit)
    results = {
        gate: _result(Demand(gate, bool(passed), _family_sentences(family)[gate], origin.source, origin.kind))
        for gate, (passed, origin) in met.items()
    }
    results |= {demand.gate: _result(demand) for demand in demands}
    return [results[gate.id] for gate in GATES if gate.id in results]


def cable_fits(interface: Interface, diameter_m: float) -> bool:
    """Whether a family is made for cables of an outer diameter [m]."""
    return interface.cable_diameter_m.low.value <= diameter_m <= interface.cable_diameter_m.high.value


def heat_room(highest_temperature_c: Sourced, ambient_temperature_c: float) -> GateResult:
    """The gate of a cable, which must be able to get hotter than the air."""
    sentence = f"It may get {highest_temperature_c:g} °C hot; the air: {ambient_temperature_c:g} °C."
    passed = bool(ambient_temperature_c < highest_temperature_c)
    return _result(Demand("no_heat_room", passed, sentence, highest_temperature_c.source, highest_temperature_c.kind))


def family_reasons(family: str, demands: list[Demand]) -> dict[str, str]:
    """The sentence of every gate for a family, shown beside a refused or marked cell."""
    sentences = _family_sentences(family) | {demand.gate: demand.sentence for demand in demands}
    return {gate.id: sentences[gate.id] for gate in GATES}


def site_demands(family: str, scenario: Scenario) -> list[Demand]:
    """What site and use ask of a family, whatever the frequency and power."""
    interface = catalogue().interfaces[family]
    return [
        _immersion(interface, scenario),
        _weather(interface, scenario),
        _vibration(interface, scenario),
        _wear(interface, scenario),
        _cable_fit(interface, scenario),
        _cold(interface, scenario),
    ]


def _result(demand: Demand) -> GateResult:
    gate = next(gate for gate in GATES if gate.id == demand.gate)
    return GateResult(
        id=gate.id,
        name=gate.name,
        hard=gate.hard,
        passed=demand.passed,
        sentence=demand.sentence,
        source=demand.source,
        kind=demand.kind,
    )


def _no_heat_room(heat: HeatPath, station: Station) -> Broadcast:
    return station.ambient_temperature_c + heat.solar_rise_k >= heat.allowed_temperature_c


def _cutoff_hz(family: str) -> float:
    """TE11 cutoff [Hz] of the mating plane as the catalogue has it."""
    ratings = family_ratings(family, "low")
    return float(te11_cutoff(ratings.te11_root, ratings.inner_diameter_m, ratings.permittivity))


def _published_beyond_cutoff(family: str) -> bool:
    """Whether a published frequency limit shows that bore or filling, one of them a guess, is guessed too large."""
    interface = catalogue().interfaces[family]
    guessed = not {interface.outer_diameter_m.kind, interface.dielectric.kind}.isdisjoint(UNDOCUMENTED)
    published = interface.rated_frequency_hz.high
    return guessed and published.kind not in UNDOCUMENTED and published.value >= _cutoff_hz(family)


@per_edition(maxsize=256)
def _thresholds(family: str) -> tuple[float, float, float, float]:
    """TE11 cutoff, highest published and customary frequency [Hz], and receive only as 0 or 1."""
    interface = catalogue().interfaces[family]
    rated = interface.rated_frequency_hz
    return (
        np.inf if _published_beyond_cutoff(family) else _cutoff_hz(family),
        # a section of known impedance is computed at any frequency: it needs no published figure
        rated.high.value if interface.section is None else np.inf,
        rated.low.value,
        float(interface.receive_only),
    )


@per_edition(maxsize=256)
def _family_sentences(family: str) -> dict[str, str]:
    interface = catalogue().interfaces[family]
    _, highest, customary, _ = _thresholds(family)
    cutoff = engineering(_cutoff_hz(family), "Hz")
    return {
        "te11": f"By a guessed bore or filling its TE11 cutoff is {cutoff}; the published limit, higher, counts."
        if _published_beyond_cutoff(family)
        else f"Below its TE11 cutoff, {cutoff}, one wave travels; above it no figure holds.",
        "no_figures": f"Published match figures end at {engineering(highest, 'Hz')}."
        if interface.section is None
        else "Its impedance is known from the geometry, so the match is computed at any frequency.",
        "receive_only": interface.receive_only_reason if interface.receive_only else "Made to transmit through.",
        "no_heat_room": "The air, with the sun's share, must be cooler than the contact and the cable may get.",
        HOUSE: house_sentence(family),
        "customary_frequency": f"Customarily used up to {engineering(customary, 'Hz')}.",
    }


def _immersion(interface: Interface, scenario: Scenario) -> Demand:
    sealing = interface.sealing_mated
    passed = scenario.exposure != "immersed" or interface.exposure_mated == "immersed"
    return _demand(
        "immersion",
        passed,
        f"Sealing when mated: {sealing.value}. Tape does not make it immersion-proof.",
        sealing,
    )


def _weather(interface: Interface, scenario: Scenario) -> Demand:
    rated = EXPOSURES.index(interface.exposure_mated)
    if scenario.added_sealing:
        rated = max(rated, SEALED_TO)
    asked = min(EXPOSURES.index(scenario.exposure), SEALED_TO)  # immersion has a gate of its own
    sealed = " with the added sealing" if scenario.added_sealing else ""
    sentence = f"Mated{sealed} it stands: {EXPOSURES[rated]}; asked: {scenario.exposure}."
    return _demand("weather", rated >= asked, sentence, interface.sealing_mated)


def _vibration(interface: Interface, scenario: Scenario) -> Demand:
    rated = interface.vibration.value
    passed = VIBRATIONS.index(rated) >= VIBRATIONS.index(scenario.vibration)
    sentence = (
        f"{interface.coupling.value.capitalize()} coupling suits vibration: {rated}; asked: {scenario.vibration}."
    )
    return _demand("vibration", passed, sentence, interface.vibration)


def _wear(interface: Interface, scenario: Scenario) -> Demand:
    needed = scenario.matings_per_year * scenario.service_life_years
    durability = interface.durability_matings.low
    sentence = f"Good for {durability.value:g} matings; {needed:g} are needed over the service life."
    return _demand("wear", needed <= durability.value, sentence, durability)


def _cable_fit(interface: Interface, scenario: Scenario) -> Demand:
    low, high = interface.cable_diameter_m.low, interface.cable_diameter_m.high
    made_for = f"Made for cables of {low.value * 1e3:.3g} to {high.value * 1e3:.3g} mm"
    if scenario.cable_diameter_m is None:
        return _demand("cable_fit", True, f"{made_for}; no cable given.", low)
    passed = cable_fits(interface, scenario.cable_diameter_m)
    return _demand("cable_fit", passed, f"{made_for}; yours: {scenario.cable_diameter_m * 1e3:.3g} mm.", low)


def _cold(interface: Interface, scenario: Scenario) -> Demand:
    lowest = interface.lowest_temperature_c
    sentence = f"Rated down to {lowest.value:g} °C; the site: {scenario.ambient_temperature_c:g} °C."
    return _demand("cold", scenario.ambient_temperature_c >= lowest.value, sentence, lowest)


def _demand(gate: str, passed: bool, sentence: str, origin: Quantity | Label) -> Demand:
    return Demand(gate, passed, sentence, origin.source, origin.kind)
