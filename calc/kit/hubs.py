"""Families between ports: those never needed, as another does all they do with no more loss, and those most used."""

from collections.abc import Iterable

from ..catalogue import catalogue
from ..catalogue.mating import OPPOSITE, ConnectorEnd, mates_of, meeting
from .chains import AdapterType, trade
from .stand import Standing

__all__ = ["FEW", "through_hubs", "useful"]

FEW = (1, 2)
"""How many families a kit is looked for by way of, before all are."""


def useful(types: Iterable[AdapterType], fixed: set[str], duties: Iterable[Standing]) -> set[AdapterType]:
    """The types without those of superfluous families; families of `fixed`, of ports and owned adapters, stay.

    Where every adapter to one family could be replaced by the same one to
    another, and every joint of it by a joint of the other, no kit needs the
    first: exchanging it leaves as many adapters and no more loss.
    """
    kept, duties = set(types), list(duties)
    families = list(catalogue().interfaces)
    for family in [name for name in families if name not in fixed]:
        others = [name for name in families if name != family and any(name in _families(one) for one in kept)]
        if any(_replaces(other, family, kept, duties) for other in others):
            kept = {one for one in kept if family not in _families(one)}
    return kept


def through_hubs(types: Iterable[AdapterType], joined: set[str], count: int) -> set[AdapterType]:
    """The types to, from or between so many families, and those that mate with them.

    Each is the one that reaches most of the families `joined` that were not reached before.
    """
    types = set(types)
    near: dict[str, set[str]] = {}
    for one, other in types:
        near.setdefault(one.family, {one.family}).add(other.family)
        near.setdefault(other.family, {other.family}).add(one.family)
    kin = {family: {family, *_mating(family)} for family in near}
    reach = {family: set().union(*(near.get(one, ()) for one in kin[family])) for family in near}
    hubs, left = set(), set(joined)
    for _ in range(count):
        others = sorted(near.keys() - hubs)
        if not others:
            break
        hub = max(others, key=lambda family: (len(reach[family] & left), len(reach[family])))
        hubs |= kin[hub]
        left -= reach[hub]
    return {one for one in types if not _families(one).isdisjoint(hubs)}


def _mating(family: str) -> set[str]:
    return {mate.family for gender in OPPOSITE for mate in mates_of(ConnectorEnd(family, gender))}


def _families(one: AdapterType) -> set[str]:
    return {end.family for end in one}


def _replaces(other: str, family: str, types: set[AdapterType], duties: list[Standing]) -> bool:
    sold = types & set(trade())
    return (
        all(
            not duty.stands(family) or (duty.stands(other) and duty.loss_db[other] <= duty.loss_db[family])
            for duty in duties
        )
        and all(_replaced(one, family, other) in sold or _is_idle(one, family, other) for one in types)
        and all(_mates_as_well(family, other, third) for third in catalogue().interfaces)
    )


def _replaced(one: AdapterType, family: str, other: str) -> AdapterType:
    first, second = sorted(ConnectorEnd(other, end.gender) if end.family == family else end for end in one)
    return first, second


def _is_idle(one: AdapterType, family: str, other: str) -> bool:
    """Whether nothing is left of it: plug and jack of one and the same family."""
    first, second = _replaced(one, family, other)
    return first.family == second.family and first.gender != second.gender


def _mates_as_well(family: str, other: str, third: str) -> bool:
    if third in (family, other):
        return True
    return all(
        meeting(ConnectorEnd(other, gender), ConnectorEnd(third, opposite)).mates
        for gender, opposite in (("plug", "jack"), ("jack", "plug"))
        if meeting(ConnectorEnd(family, gender), ConnectorEnd(third, opposite)).mates
    )
