"""Choosing the rules of the trade that hold in some circumstances, and filling their numbers in."""

from collections.abc import Mapping

from ..catalogue import catalogue
from ..catalogue.fitting import Rule, SheetPart
from ..numeric.measures import prose
from .results import Advice

__all__ = ["advice"]


def advice(part: SheetPart, circumstances: Mapping[str, str], words: Mapping[str, str]) -> list[Advice]:
    """The rules of a part of the sheet that hold, in the order of the work, `words` filling their braces."""
    return [
        Advice(prose(rule.text).format_map(words), rule.source, rule.kind)
        for rule in catalogue().rules.values()
        if rule.part == part and _holds(rule, circumstances)
    ]


def _holds(rule: Rule, circumstances: Mapping[str, str]) -> bool:
    return all(circumstances.get(name) in allowed for name, allowed in rule.only.items())
