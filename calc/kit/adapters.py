"""Types of adapters: what the trade sells, what is owned, and what may be used from either end."""

from collections import Counter
from collections.abc import Iterable

from ..catalogue import catalogue, per_edition
from ..catalogue.mating import OPPOSITE, ConnectorEnd, end_name
from ..catalogue.schema import Adapter
from ..errors import known
from .requests import KitRequest

__all__ = [
    "AdapterType",
    "Stock",
    "adapter_name",
    "adapter_type",
    "families_of",
    "owned_adapters",
    "stock_of",
    "trade",
]

AdapterType = tuple[ConnectorEnd, ConnectorEnd]
"""The two ends of an adapter in a fixed order."""

Stock = dict[ConnectorEnd, dict[ConnectorEnd, None]]
"""Adapters at hand, each listed from both ends: by the near end the far ends, in order."""


def adapter_type(first: ConnectorEnd, second: ConnectorEnd) -> AdapterType:
    """The type of an adapter with these two ends."""
    return (first, second) if first <= second else (second, first)


def adapter_name(adapter: AdapterType) -> str:
    """The adapter in words, its ends as they are given."""
    return f"{end_name(adapter[0])} to {end_name(adapter[1])}"


def families_of(adapter: AdapterType) -> set[str]:
    """The families of its two ends."""
    return {end.family for end in adapter}


@per_edition(maxsize=1)
def trade() -> dict[AdapterType, Adapter]:
    """Every type of adapter the trade sells, with the catalogue entry that says so."""
    return {
        adapter_type(ConnectorEnd(entry.id, gender), ConnectorEnd(family, other_gender)): entry
        for entry in catalogue().adapters.values()
        for family in entry.joins
        for gender in OPPOSITE
        for other_gender in OPPOSITE
        if family != entry.id or gender == other_gender
    }


def owned_adapters(request: KitRequest) -> Counter[AdapterType]:
    """How many of each type are owned. Raises InputError for an unknown family."""
    owned: Counter[AdapterType] = Counter()
    for index, adapter in enumerate(request.owned):
        for field in ("one_family", "other_family"):
            known(f"owned[{index}].{field}", getattr(adapter, field), catalogue().interfaces)
        first = ConnectorEnd(adapter.one_family, adapter.one_gender)
        second = ConnectorEnd(adapter.other_family, adapter.other_gender)
        owned[adapter_type(first, second)] += adapter.count
    return owned


def stock_of(types: Iterable[AdapterType]) -> Stock:
    """Adapters of these types, as many of each as it takes."""
    far_ends: Stock = {}
    for first, second in sorted(types):
        far_ends.setdefault(first, {})[second] = None
        far_ends.setdefault(second, {})[first] = None
    return far_ends
