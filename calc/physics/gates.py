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
from ..catalogue.schema import Cable, HouseLimit, Interface, Label, Quantity
from ..formulas.coax import te11_cutoff
from ..formulas.formula import Broadcast, Number, Sourced
from ..numeric.measures import size_span_words, size_words, temperature_words
from ..numeric.units import engineering
from .cable_ratings import bare_cable_ratings, cable_cutoff
from .evidence import UNDOCUMENTED
from .family_ratings import family_ratings
from .house_limits import house_limit, house_power, house_sentence
from .scenario import Exposure, Scenario
from .station import Station

__all__ = [
    "CABLE_TE11",
    "EXPOSURES",
    "GATES",
    "HOUSE",
    "MATCH",
    "MATCH_DOUBT",
    "SEALED_TO",
    "VIBRATIONS",
    "Demand",
    "GateKind",
    "GateResult",
    "MissedMatch",
    "cable_fits",
    "cable_te11",
    "family_reasons",
    "gate_results",
    "gate_table",
    "heat_room",
    "missed_match",
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


CABLE_TE11, HOUSE, MATCH, MATCH_DOUBT = "cable_te11", "house", "match", "match_doubt"
GATES = [
    GateKind("te11", "TE11 cutoff", hard=True),
    GateKind(CABLE_TE11, "TE11 cutoff of the cable", hard=True),
    GateKind("no_figures", "Published figures", hard=True),
    GateKind("receive_only", "Receive only", hard=True),
    GateKind("no_heat_room", "Air temperature", hard=True),
    GateKind("immersion", "Immersion", hard=True),
    GateKind(MATCH, "Match", hard=True),
    GateKind("customary_frequency", "Usual frequency", hard=False),
    GateKind("weather", "Weather", hard=False),
    GateKind("vibration", "Vibration", hard=False),
    GateKind("wear", "Wear", hard=False),
    GateKind("cable_fit", "Cable fit", hard=False),
    GateKind("cold", "Cold", hard=False),
    GateKind(MATCH_DOUBT, "Match uncertain", hard=False),
    GateKind(HOUSE, "House limit", hard=True),
]
"""In the order they are tried: the first hard one that fails names the refusal, physics before house rules."""

EXPOSURES: list[Exposure] = ["indoor", "sheltered", "exposed", "immersed"]
VIBRATIONS = ["none", "vehicle", "severe"]
WEATHER_WORDS: dict[Exposure, str] = {
    "indoor": "indoors",
    "sheltered": "outdoors, sheltered",
    "exposed": "outdoors, in the weather",
    "immersed": "under water",
}
"""The site as it reads after "the joint sits"."""
SEALING_WORDS: dict[Exposure, str] = {
    "indoor": "for indoors only",
    "sheltered": "safe from damp, not from rain",
    "exposed": "weatherproof",
    "immersed": "watertight",
}
"""What a mated joint is against the weather, as it reads after "it is"."""
VIBRATION_WORDS = {"none": "no vibration", "vehicle": "the vibration of a vehicle", "severe": "severe vibration"}
"""As it reads after "stands"."""
SEALED_TO = EXPOSURES.index("exposed")
"""What tape and butyl over a mated joint raise it to: rain, never immersion (common practice)."""


class Demand(NamedTuple):
    """One gate of one family, independent of frequency and power."""

    gate: str
    passed: bool
    sentence: str
    source: str
    kind: str


class MissedMatch(NamedTuple):
    """Where a joint alone misses the return loss asked for: by the cautious sources, and even by the generous ones."""

    cautious: Broadcast
    even_generous: Broadcast


def missed_match(return_loss_db: Broadcast, station: Station) -> MissedMatch:
    """By return losses [dB], the cautious end first along axis 0."""
    cautious, generous = return_loss_db
    return MissedMatch(cautious < station.return_loss_asked_db, generous < station.return_loss_asked_db)


def gate_table(
    families: list[str],
    demands: list[list[Demand]],
    highest_hz: np.ndarray,
    powers_w: np.ndarray,
    no_heat_room: Broadcast,
    missed: MissedMatch | None,
    cable_cutoff_hz: np.ndarray | None,
) -> np.ndarray:
    """True where a gate fails: booleans of shape (gates, families, columns, powers).

    `demands` are each family's `site_demands`, `highest_hz` is each column's
    upper edge [Hz], `powers_w` the levels [W]; `no_heat_room` says by family
    whether the air alone is too hot, `missed` where the match is not good
    enough, by family and column, `cable_cutoff_hz` is that of each family's
    cable, one column [Hz]; without them neither is asked about.
    """
    failed = np.zeros((len(GATES), len(families), highest_hz.size, powers_w.size), dtype=bool)
    frequency = highest_hz[:, None]
    transmitting = powers_w > 0
    order = {gate.id: index for index, gate in enumerate(GATES)}
    thresholds = np.array([_thresholds(family) for family in families])[:, :, None, None]
    cutoff, highest, customary, receive_only = (thresholds[:, column] for column in range(4))
    failed[order["te11"]] = frequency >= cutoff
    failed[order["no_figures"]] = frequency > highest
    if cable_cutoff_hz is not None:
        failed[order[CABLE_TE11]] = frequency >= cable_cutoff_hz[..., None]
    failed[order["receive_only"]] = (receive_only > 0) & transmitting
    failed[order["no_heat_room"]] = np.asarray(no_heat_room)[..., None] & transmitting
    failed[order["customary_frequency"]] = frequency > customary
    if missed is not None:
        failed[order[MATCH]] = missed.even_generous[..., None]
        failed[order[MATCH_DOUBT]] = (missed.cautious & ~missed.even_generous)[..., None]
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
    no_heat_room: bool,
    return_loss_db: tuple[float, float] | None,
    cable: Cable | None,
) -> list[GateResult]:
    """Every gate of one cell with its sentence, in the order they are tried; a house limit's where there is one.

    `return_loss_db` is that of the joint alone, cautious and generous, `cable` the one at
    the joint; without them neither is asked about.
    """
    interface = catalogue().interfaces[family]
    cutoff, highest, customary, _ = _thresholds(family)
    rated = interface.rated_frequency_hz
    met: dict[str, tuple[bool, Quantity | Label | HouseLimit]] = {
        "te11": (highest_hz < cutoff, interface.outer_diameter_m),
        "no_figures": (highest_hz <= highest, rated.high),
        "receive_only": (not (interface.receive_only and power_w > 0), interface.outer_plating),
        "no_heat_room": (not (no_heat_room and power_w > 0), interface.highest_temperature_c),
        "customary_frequency": (highest_hz <= customary, rated.low),
    }
    if (limit := house_limit(family, highest_hz)) is not None:
        met[HOUSE] = (power_w <= limit.power_w, limit)
    results = {
        gate: _result(Demand(gate, bool(passed), _family_sentences(family)[gate], origin.source, origin.kind))
        for gate, (passed, origin) in met.items()
    }
    results |= {demand.gate: _result(demand) for demand in demands}
    if cable is not None:
        results[CABLE_TE11] = cable_te11(cable, highest_hz)
    if return_loss_db is not None:
        results |= {demand.gate: _result(demand) for demand in _match_demands(interface, return_loss_db, station)}
    return [results[gate.id] for gate in GATES if gate.id in results]


def _match_demands(interface: Interface, return_loss_db: tuple[float, float], station: Station) -> list[Demand]:
    low, high = return_loss_db
    missed = missed_match(return_loss_db, station)
    origin = interface.section.impedance_ohm.low if interface.section else interface.vswr_limit.at_dc
    asked = f"asked: {station.return_loss_asked_db:g} dB"
    sentence = f"The joint alone has {low:.1f} dB of return loss by the cautious sources, {high:.1f} dB by the generous"
    demands = [_demand(MATCH, not missed.even_generous, f"{sentence}; {asked}.", origin)]
    if missed.cautious and not missed.even_generous:
        demands.append(_demand(MATCH_DOUBT, False, "Only the generous sources have the return loss asked for.", origin))
    return demands


def cable_fits(interface: Interface, diameter_m: float) -> bool:
    """Whether a family is made for cables of an outer diameter [m]."""
    return interface.cable_diameter_m.low.value <= diameter_m <= interface.cable_diameter_m.high.value


def cable_te11(cable: Cable, highest_hz: float) -> GateResult:
    """The gate of a cable, in which one wave alone may travel."""
    cutoff_hz = float(cable_cutoff(bare_cable_ratings(cable.id, "low")))
    sentence = f"Below the TE11 cutoff of {cable.spoken_name}, {engineering(cutoff_hz, 'Hz')}, one wave travels in it."
    origin = cable.velocity_factor
    return _result(Demand(CABLE_TE11, highest_hz < cutoff_hz, sentence, origin.source, origin.kind))


def heat_room(highest_temperature_c: Number, solar_rise_k: float, station: Station) -> GateResult:
    """The gate of a cable, which must be able to get hotter than air and sun make it."""
    air_c = station.ambient_temperature_c + solar_rise_k
    surroundings = "the air with the sun" if solar_rise_k else "the air"
    highest, heated = temperature_words(float(highest_temperature_c)), temperature_words(air_c, whole=True)
    sentence = f"It may get as hot as {highest}; {surroundings} here: {heated}."
    origin = highest_temperature_c if isinstance(highest_temperature_c, Sourced) else Sourced(0.0, "", "")
    passed = bool(air_c < highest_temperature_c)
    return _result(Demand("no_heat_room", passed, sentence, origin.source, origin.kind))


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
        "te11": f"Its TE11 cutoff, by a guessed bore or filling, is {cutoff}; the published limit, higher, counts."
        if _published_beyond_cutoff(family)
        else f"Below its TE11 cutoff, {cutoff}, one wave travels; above it no figure holds.",
        CABLE_TE11: "Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",
        "no_figures": f"Published match figures end at {engineering(highest, 'Hz')}."
        if interface.section is None
        else "Its impedance is known from the geometry, so the match is computed at any frequency.",
        "receive_only": interface.receive_only_reason if interface.receive_only else "Made to transmit through.",
        "no_heat_room": "The air, with the sun's share, must be cooler than the contact and the cable may get.",
        MATCH: "The joint alone misses the return loss asked for, even by the generous sources.",
        MATCH_DOUBT: "The joint alone misses the return loss asked for by the cautious sources, not by the generous.",
        HOUSE: house_sentence(family),
        "customary_frequency": f"Usually used up to {engineering(customary, 'Hz')}.",
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
    sealed = "Mated and sealed" if scenario.added_sealing else "Mated"
    sentence = f"{sealed} it is {SEALING_WORDS[EXPOSURES[rated]]}; the joint sits {WEATHER_WORDS[scenario.exposure]}."
    return _demand("weather", rated >= asked, sentence, interface.sealing_mated)


def _vibration(interface: Interface, scenario: Scenario) -> Demand:
    rated = interface.vibration.value
    passed = VIBRATIONS.index(rated) >= VIBRATIONS.index(scenario.vibration)
    coupling = interface.coupling.value.capitalize()
    sentence = f"{coupling} coupling stands {VIBRATION_WORDS[rated]}; asked: {VIBRATION_WORDS[scenario.vibration]}."
    return _demand("vibration", passed, sentence, interface.vibration)


def _wear(interface: Interface, scenario: Scenario) -> Demand:
    needed = scenario.matings_per_year * scenario.service_life_years
    durability = interface.durability_matings.low
    sentence = f"Made for {durability.value:g} matings; {needed:g} are needed over the service life."
    return _demand("wear", needed <= durability.value, sentence, durability)


def _cable_fit(interface: Interface, scenario: Scenario) -> Demand:
    low, high = interface.cable_diameter_m.low, interface.cable_diameter_m.high
    made_for = f"Made for cables of {size_span_words(low.value, high.value, 3)}"
    diameter_m = scenario.cable_diameter_m
    if scenario.cable is not None:
        diameter_m = catalogue().cables[scenario.cable].outer_diameter_m.value
    if diameter_m is None:
        return _demand("cable_fit", True, f"{made_for}; no cable given.", low)
    yours = size_words(diameter_m, 3)
    return _demand("cable_fit", cable_fits(interface, diameter_m), f"{made_for}; yours: {yours}.", low)


def _cold(interface: Interface, scenario: Scenario) -> Demand:
    lowest = interface.lowest_temperature_c
    site = temperature_words(scenario.ambient_temperature_c)
    sentence = f"Rated down to {temperature_words(lowest.value)}; the air here: {site}."
    return _demand("cold", scenario.ambient_temperature_c >= lowest.value, sentence, lowest)


def _demand(gate: str, passed: bool, sentence: str, origin: Quantity | Label) -> Demand:
    return Demand(gate, passed, sentence, origin.source, origin.kind)
