"""The tools for a joint and the steps of the work, on each cable first and then on the pair."""

from collections.abc import Mapping

from .advice import advice
from .circumstances import Circumstances, at_cable
from .pairs import Pair
from .results import Advice, WorkStep

__all__ = ["steps", "tools"]


def tools(pair: Pair, circumstances: Circumstances, words: Mapping[str, str]) -> list[Advice]:
    """What to have at hand, no tool twice."""
    found = []
    for cable in pair.cables:
        found += advice("tools", *at_cable(pair.interface, cable, circumstances, words))
    found += advice("tools", circumstances, words)
    return list({tool.text: tool for tool in found}.values())


def steps(pair: Pair, circumstances: Circumstances, words: Mapping[str, str]) -> list[WorkStep]:
    """The work in its order."""
    found = []
    for cable in pair.cables:
        rules = advice("cable", *at_cable(pair.interface, cable, circumstances, words))
        found += [WorkStep(cable.spoken_name, rule.text, rule.source, rule.kind) for rule in rules]
    return found + [WorkStep("", rule.text, rule.source, rule.kind) for rule in advice("mate", circumstances, words)]
