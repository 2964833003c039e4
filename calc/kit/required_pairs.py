"""The pairs of ports that must be joined: their ends, and the duty of what joins them."""

from typing import NamedTuple

from ..catalogue import catalogue
from ..catalogue.mating import ConnectorEnd
from ..errors import InputError, known
from .joint_figures import Duty
from .requests import MOST_PAIRS, KitRequest, Port

__all__ = ["RequiredPair", "impedances_differ", "required_pairs"]


class RequiredPair(NamedTuple):
    """Two ends that must be joined under a duty; pairs of like ports are equal."""

    first: ConnectorEnd
    second: ConnectorEnd
    duty: Duty


def required_pairs(request: KitRequest) -> list[tuple[list[int], RequiredPair]]:
    """Every pair by the numbers of its ports, and what it requires.

    Raises InputError naming the field of an unknown family, an impedance the
    family does not have, or a senseless pair.
    """
    impedances = [_impedance(request, port, f"ports[{index}]") for index, port in enumerate(request.ports)]
    return [(numbers, _required(request.ports, impedances, numbers)) for numbers in _port_numbers(request)]


def impedances_differ(request: KitRequest, pair: RequiredPair) -> bool:
    """Whether the ports' impedances forbid a joint."""
    low, high = pair.duty.impedances_ohm
    return low != high and not request.impedance_steps


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
    """Families of another impedance that the catalogue's matings name together with this one."""
    interfaces = catalogue().interfaces
    named_together = [{mating.plug, mating.jack} for mating in catalogue().matings.values()]
    near = {other for pair in named_together if family in pair for other in pair} - {family}
    own = interfaces[family].nominal_impedance_ohm.value
    return {other for other in near if interfaces[other].nominal_impedance_ohm.value != own}


def _port_numbers(request: KitRequest) -> list[list[int]]:
    """The pairs asked for, or else every two ports."""
    count = len(request.ports)
    if request.pairs is None:
        every = [[first, second] for first in range(count) for second in range(first + 1, count)]
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


def _required(ports: list[Port], impedances: list[float], numbers: list[int]) -> RequiredPair:
    first, second = (ports[index] for index in numbers)
    low, high = sorted(impedances[index] for index in numbers)
    duty = Duty(
        min(first.highest_frequency_hz, second.highest_frequency_hz), min(first.power_w, second.power_w), (low, high)
    )
    return RequiredPair(ConnectorEnd(first.family, first.gender), ConnectorEnd(second.family, second.gender), duty)
