"""What the rules of the trade are chosen by at a joint, and the words that fill their braces."""

from collections.abc import Mapping

from ..catalogue.schema import Cable, Interface
from ..numeric.measures import size_words
from ..physics.scenario import Exposure, Surroundings
from .pairs import attachment, screen_of
from .results import Torque

__all__ = ["Circumstances", "at_cable", "at_joint"]

Circumstances = Mapping[str, str]
THINNER = 0.9
"""Of the thickest cable a family takes; below it some plugs need a reducer (common practice)."""


def at_joint(
    interface: Interface, exposure: Exposure, site: Surroundings, torque: Torque
) -> tuple[Circumstances, Mapping[str, str]]:
    """The circumstances and words of a mated pair in its own weather."""
    circumstances = {
        "family": interface.id,
        "coupling": interface.coupling.value,
        "tightened_by": torque.tightened_by,
        "exposure": exposure,
        "vibration": site.vibration,
        "gasket": "no" if interface.sealing_mated.value == "none" else "yes",
    }
    return circumstances, {"family": interface.name, "torque": torque.figures}


def at_cable(
    interface: Interface, cable: Cable, circumstances: Circumstances, words: Mapping[str, str]
) -> tuple[Circumstances, Mapping[str, str]]:
    """The circumstances and words of the half on a cable, by those of its pair."""
    screen = screen_of(cable)
    thin = cable.outer_diameter_m.value < THINNER * interface.cable_diameter_m.high.value
    on_cable = {
        "cable": "yes",
        "attachment": attachment(interface, cable).id,
        "screen": screen.id if screen else "",
        "dielectric": cable.dielectric,
        "centre": cable.centre_conductor.value,
        "thin": "yes" if thin else "no",
    }
    named = {"cable": cable.spoken_name, "diameter": size_words(cable.outer_diameter_m.value)}
    return {**circumstances, **on_cable}, {**words, **named}
