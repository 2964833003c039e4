"""What the tests of the kit share: ports, answers, and every chain of adapters found by plain trying."""

from collections import Counter
from functools import lru_cache

from jointwise.calc.catalogue import catalogue
from jointwise.calc.catalogue.mating import ConnectorEnd, meeting
from jointwise.calc.cell.cell import cell
from jointwise.calc.cell.requests import CellRequest
from jointwise.calc.kit.adapters import AdapterType, adapter_type, trade
from jointwise.calc.kit.kit import kit
from jointwise.calc.kit.requests import KitRequest, OwnedAdapter, Port

FREQUENCY_HZ = 30e6
POWER_W = 10.0
LOSS_DB = 20.0
"""More than any chain here loses, so that matings alone decide."""


def port(family, gender, highest_frequency_hz=FREQUENCY_HZ, power_w=POWER_W, **fields):
    """A port, by default one of a low-power short-wave station."""
    return Port(family=family, gender=gender, highest_frequency_hz=highest_frequency_hz, power_w=power_w, **fields)


def owned(one, other, count=1):
    """Adapters owned, each end written as "n plug"."""
    (one_family, one_gender), (other_family, other_gender) = one.split(), other.split()
    return OwnedAdapter(
        one_family=one_family, one_gender=one_gender, other_family=other_family, other_gender=other_gender, count=count
    )


def answer(ports, **fields):
    """The kit for these ports."""
    return kit(KitRequest(ports=ports, **({"most_loss_db": LOSS_DB} | fields)))


def types_of(entries) -> Counter[AdapterType]:
    """Adapters to add, or owned, by type."""
    return Counter(
        adapter_type(ConnectorEnd(one.one_family, one.one_gender), ConnectorEnd(one.other_family, one.other_gender))
        for one in entries
        for _ in range(one.count)
    )


@lru_cache(maxsize=1)
def allowed_families():
    """The families whose own cell has room at the usual frequency and power."""
    cells = (
        cell(CellRequest(family=family, frequency_hz=FREQUENCY_HZ, power_w=POWER_W))
        for family in catalogue().interfaces
    )
    return {one.family.id for one in cells if one.refused_by is None and one.margin_db >= 0}


@lru_cache(maxsize=4096)
def tried_chains(first, second, most_in_series, extra=frozenset()):
    """Every chain between two ends at the usual frequency and power, as counts of types, by plain trying."""
    impedance = {family: interface.nominal_impedance_ohm.value for family, interface in catalogue().interfaces.items()}
    if impedance[first.family] != impedance[second.family]:
        return []
    families = {name for name in allowed_families() if impedance[name] == impedance[first.family]}
    if not {first.family, second.family} <= families:
        return []
    types = [adapter for adapter in set(trade()) | extra if {end.family for end in adapter} <= families]
    either_way = {*types, *((far, near) for near, far in types)}
    found, open_chains = [], [((), first)]
    while open_chains:
        chain, face = open_chains.pop()
        if meeting(face, second).mates:
            found.append(Counter(adapter_type(*adapter) for adapter in chain))
        if len(chain) < most_in_series:
            open_chains += [
                ((*chain, adapter), adapter[1]) for adapter in either_way if meeting(face, adapter[0]).mates
            ]
    return found


def tried_pairs(request_ports, pairs, most_in_series, owned_adapters=()):
    """For each pair that can be joined at all, every chain that joins it."""
    ends = [ConnectorEnd(one.family, one.gender) for one in request_ports]
    extra = frozenset(types_of(owned_adapters))
    chains_of_pairs = [tried_chains(ends[first], ends[second], most_in_series, extra) for first, second in pairs]
    return [chains for chains in chains_of_pairs if chains]
