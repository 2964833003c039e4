"""What keeps water out of a joint: what its interface does by itself, the layers over it, and how much tape it is."""

import math
from collections.abc import Mapping

from ..catalogue import catalogue
from ..catalogue.fitting import SealingLayer
from ..catalogue.schema import Interface
from ..numeric.measures import prose
from ..physics.gates import EXPOSURES, SEALED_TO, SEALING_WORDS, WEATHER_WORDS
from ..physics.scenario import Exposure
from .advice import advice
from .results import Advice, Layer, Sealing

__all__ = ["ip_meaning", "sealing", "tape_length"]

ALWAYS_SEALED = "exposed"
"""In the open the trade tapes every joint, gasket or not (common practice)."""


def sealing(interface: Interface, exposure: Exposure, wished: bool, words: Mapping[str, str]) -> Sealing:
    """The sealing of a mated pair in some exposure; `wished` tapes it even where it needs none."""
    unsealed, asked = EXPOSURES.index(interface.exposure_mated), EXPOSURES.index(exposure)
    refused = asked > max(unsealed, SEALED_TO)
    needed = asked > unsealed
    sealed = not refused and asked <= SEALED_TO and (needed or wished or exposure == ALWAYS_SEALED)
    layers = [_layer(layer, interface) for layer in catalogue().sealing_layers.values() if exposure in layer.exposures]
    circumstances = {"exposure": exposure, "sealed": "yes" if sealed else "no"}
    label = interface.sealing_mated
    return Sealing(
        mated=label.value,
        mated_meaning=ip_meaning(label.value),
        stands_mated=interface.exposure_mated,
        stands_sealed=EXPOSURES[max(unsealed, SEALED_TO)] if sealed else interface.exposure_mated,
        asked=exposure,
        refused=refused,
        sentence=_sentence(interface, exposure, refused, needed, sealed),
        source=label.source,
        kind=label.kind,
        preparation=advice("sealing", circumstances, words),
        layers=layers if sealed else [],
        water=advice("water", circumstances, words),
    )


def ip_meaning(code: str) -> list[Advice]:
    """The meaning of the two numerals of an IP code; empty for a part that has none."""
    if not code.startswith("IP"):
        return []
    numerals = catalogue().ip_numerals
    meanings = numerals[f"solids_{code[2]}"], numerals[f"water_{code[3]}"]
    return [Advice(prose(meaning.text), meaning.source, meaning.kind) for meaning in meanings]


def tape_length(diameter_m: float, span_m: float, width_m: float, overlap: float, passes: int) -> float:
    """Tape [m] wound `passes` times over a cylinder [m, m]: each turn moves on by what it does not lap."""
    return passes * math.pi * diameter_m * span_m / (width_m * (1 - overlap))


def _layer(layer: SealingLayer, interface: Interface) -> Layer:
    span = interface.body_length_m.value + 2 * layer.beyond_m
    length = tape_length(interface.body_diameter_m.value, span, layer.width_m, layer.overlap, layer.passes)
    return Layer(prose(layer.name), prose(layer.text), length, layer.source, layer.kind)


def _sentence(interface: Interface, exposure: Exposure, refused: bool, needed: bool, sealed: bool) -> str:
    is_mated = SEALING_WORDS[interface.exposure_mated]
    mated = f"Mated it is {is_mated}; the joint sits {WEATHER_WORDS[exposure]}."
    if refused:
        return f"{mated} No tape is enough: take the joint out of the water."
    if not sealed:
        return f"{mated} It needs no sealing here."
    if needed:
        return f"{mated} Sealed as below it is {SEALING_WORDS[EXPOSURES[SEALED_TO]]}."
    return f"{mated} The tape is a second guard."
