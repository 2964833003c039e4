"""A request with its names looked up: ends, duties and the adapters owned."""

from collections import Counter
from typing import NamedTuple

from ..catalogue import catalogue
from ..catalogue.mating import ConnectorEnd
from ..errors import InputError, known
from .chains import AdapterType, adapter_type
from .requests import MOST_PAIRS, KitRequest, Port
from .stand import Duty

__all__ = ["Need", "needs", "owned"]


class Need(NamedTuple):
    """Two ends that must be joined under a duty; pairs that ask for the same have equal needs."""

    first: ConnectorEnd
    second: ConnectorEnd
    duty: Duty


def needs(request: KitRequest) -> list[tuple[list[int], Need]]:
    """Every pair with its need. Raises InputError naming the field of what can't be."""
    impedances = [_impedance(request, port, f"ports[{index}]") for index, port in enumerate(request.ports)]
    return [(pair, _need(request.ports, impedances, pair)) for pair in _pairs(request)]


def owned(request: KitRequest) -> Counter[AdapterType]:
    """How many of each type are owned. Raises InputError for an unknown family."""
    held: Counter[AdapterType] = Counter()
    for index, adapter in enumerate(request.owned):
        for field in ("one_family", "other_family"):
            known(f"owned[{index}].{field}", getattr(adapter, field), catalogue().interfaces)
        one, other = (
            ConnectorEnd(adapter.one_family, adapter.one_gender),
            ConnectorEnd(adapter.other_family, adapter.other_gender),
        )
        held[adapter_type(one, other)] += adapter.count
    return held


def _impedance(request: KitRequest, port: Port, field: str) -> float:
    interface = known(f"{field}.family", port.family, catalogue().interfaces)
    if not interface.constant_impedance:
        return request.system_impedance_ohm if port.impedance_ohm is None else port.impedance_ohm
    own = interface.nominal_impedance_ohm.value
    if port.impedance_ohm not in (None, own):
        kin = [other.id for other in catalogue().interfaces.values() if port.family in _relatives(other.id)]
        hint = f"; another impedance is another family ({', '.join(kin)})" if kin else ""
        allowed = f"left out or {own:g}, as {interface.name} is made for it{hint}"
        raise InputError(f"{field}.impedance_ohm", port.impedance_ohm, allowed)
    return own


def _relatives(family: str) -> set[str]:
    """Families told of together with this one whose impedance differs from its own."""
    interfaces = catalogue().interfaces
    told = [{mating.plug, mating.jack} for mating in catalogue().matings.values()]
    near = set().union(*(pair for pair in told if family in pair)) - {family}
    own = interfaces[family].nominal_impedance_ohm.value
    return {other for other in near if interfaces[other].nominal_impedance_ohm.value != own}


def _pairs(request: KitRequest) -> list[list[int]]:
    count = len(request.ports)
    if request.pairs is None:
        every = [[one, other] for one in range(count) for other in range(one + 1, count)]
        if len(every) > MOST_PAIRS:
            raise InputError("pairs", None, f"at most {MOST_PAIRS} pairs, so name those that {count} ports need")
        return every
    seen: set[frozenset[int]] = set()
    for at, pair in enumerate(request.pairs):
        for side, port in enumerate(pair):
            if port >= count:
                raise InputError(f"pairs[{at}][{side}]", port, f"the number of a port, 0 to {count - 1}")
        if pair[0] == pair[1]:
            raise InputError(f"pairs[{at}]", pair, "two different ports")
        if frozenset(pair) in seen:
            raise InputError(f"pairs[{at}]", pair, "a pair that is not named before")
        seen.add(frozenset(pair))
    return request.pairs


def _need(ports: list[Port], impedances: list[float], pair: list[int]) -> Need:
    one, other = (ports[index] for index in pair)
    duty = Duty(
        min(one.highest_frequency_hz, other.highest_frequency_hz),
        min(one.power_w, other.power_w),
        tuple(sorted(impedances[index] for index in pair)),
    )
    return Need(ConnectorEnd(one.family, one.gender), ConnectorEnd(other.family, other.gender), duty)
