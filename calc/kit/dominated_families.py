"""Families no kit needs between ports, as another does all they do as well."""

from collections.abc import Iterable

from ..catalogue import catalogue
from ..catalogue.mating import OPPOSITE, ConnectorEnd, meeting
from .adapters import AdapterType, adapter_type, families_of, trade
from .chain_quality import ENOUGH_MARGIN_DB
from .joint_figures import JointFigures
from .requests import Goal

__all__ = ["without_dominated_families"]


def without_dominated_families(
    types: Iterable[AdapterType], fixed: set[str], figures: Iterable[JointFigures], goal: Goal
) -> set[AdapterType]:
    """The adapters without those of dominated families; families of `fixed`, of ports and owned adapters, stay.

    Where every adapter to one family could be replaced by the same one to
    another, and every joint of it by a joint of the other, no kit needs the
    first: exchanging it leaves as many adapters and no more loss, and for the best
    joints no less margin or return loss.
    """
    remaining, every_duty = set(types), list(figures)
    families = list(catalogue().interfaces)
    for family in families:
        if family in fixed:
            continue
        in_use = {name for adapter in remaining for name in families_of(adapter)} - {family}
        if any(_dominates(other, family, remaining, every_duty, goal) for other in in_use):
            remaining = {adapter for adapter in remaining if family not in families_of(adapter)}
    return remaining


def _dominates(other: str, family: str, types: set[AdapterType], every_duty: list[JointFigures], goal: Goal) -> bool:
    sold = types & set(trade())
    return (
        all(
            not figures.allows(family) or (figures.allows(other) and _is_as_good(other, family, figures, goal))
            for figures in every_duty
        )
        and all(_replaced(adapter, family, other) in sold or _is_idle(adapter, family, other) for adapter in types)
        and all(_mates_as_well(family, other, third) for third in catalogue().interfaces)
    )


def _is_as_good(other: str, family: str, figures: JointFigures, goal: Goal) -> bool:
    return figures.loss_db[other] <= figures.loss_db[family] and (
        goal == "fewest"
        or (
            figures.margin_db[other] >= min(figures.margin_db[family], ENOUGH_MARGIN_DB)
            and figures.vswr[other] <= figures.vswr[family]
        )
    )


def _replaced(adapter: AdapterType, family: str, other: str) -> AdapterType:
    first, second = (ConnectorEnd(other, end.gender) if end.family == family else end for end in adapter)
    return adapter_type(first, second)


def _is_idle(adapter: AdapterType, family: str, other: str) -> bool:
    """Whether nothing remains of it: plug and jack of one and the same family."""
    first, second = _replaced(adapter, family, other)
    return first.family == second.family and first.gender != second.gender


def _mates_as_well(family: str, other: str, third: str) -> bool:
    if third in (family, other):
        return True
    return all(
        meeting(ConnectorEnd(other, gender), ConnectorEnd(third, opposite)).mates
        for gender, opposite in OPPOSITE.items()
        if meeting(ConnectorEnd(family, gender), ConnectorEnd(third, opposite)).mates
    )
