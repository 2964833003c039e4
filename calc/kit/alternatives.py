"""What can join each pair: chains of adapters as alternatives of a covering problem, added adapters as its elements."""

from collections import Counter
from collections.abc import Iterable, Iterator
from itertools import islice
from typing import NamedTuple

from ..cover.bits import BitSet, mask
from .adapters import AdapterType, Stock, adapter_type, stock_of, trade
from .chains import AdapterChain, chains, loss_in_steps
from .hubs import HUB_COUNTS, through_hubs
from .joint_figures import Duty, JointFigures
from .requests import KitRequest
from .required_pairs import RequiredPair

__all__ = ["Alternative", "Alternatives", "alternatives", "chain_within"]

NEVER_CUT = 2  # adapters in series: chains up to this length are found however many they are

_Chains = dict[RequiredPair, list[AdapterChain]]


class Alternative(NamedTuple):
    """A chain, and the adapters it takes beside those owned."""

    added: BitSet
    chain: AdapterChain


class Alternatives(NamedTuple):
    """The alternatives of every pair, least loss first."""

    by_pair: dict[RequiredPair, list[Alternative]]
    elements: list[AdapterType]
    """The adapter that each bit of an alternative adds; the second of a type is another bit."""
    complete: bool
    """Whether no chain was left out."""


def chain_within(options: Iterable[Alternative], added: BitSet) -> AdapterChain | None:
    """The first chain that takes none but owned and these added adapters."""
    return next((option.chain for option in options if option.added & added == option.added), None)


def alternatives(
    request: KitRequest,
    pairs: list[RequiredPair],
    figures: dict[Duty, JointFigures],
    types: set[AdapterType],
    owned: Counter[AdapterType],
    most_chains: int,
) -> Alternatives:
    """The alternatives of these pairs with adapters of these types.

    Where there are more than `most_chains` of all pairs together, chains of full
    length are found through few hubs only, and shorter ones through any family.
    """
    stock = stock_of(types)
    found, length = _longest_chains(request, pairs, figures, [stock], most_chains)
    complete = length == request.most_in_series
    if not complete:
        families = {end.family for pair in pairs for end in (pair.first, pair.second)}
        hub_stocks = [stock_of(through_hubs(types, families, count)) for count in reversed(HUB_COUNTS)]
        found_through_hubs, _ = _longest_chains(request, pairs, figures, hub_stocks, most_chains)
        owned_stock = stock_of(owned)
        for pair, joining in found.items():
            joining += found_through_hubs[pair]
            joining += islice(_full_length_chains(request, pair, figures, owned_stock), most_chains)
            if not joining:
                joining += islice(_full_length_chains(request, pair, figures, stock), most_chains)
    return _as_alternatives(found, owned, complete)


def _longest_chains(
    request: KitRequest,
    pairs: list[RequiredPair],
    figures: dict[Duty, JointFigures],
    stocks: list[Stock],
    most_chains: int,
) -> tuple[_Chains, int]:
    """Every pair's chains up to the greatest length at which a stock has not too many, from the first such stock."""
    tried = ((length, stock) for length in range(request.most_in_series, 0, -1) for stock in stocks)
    return next(
        (found, length)
        for length, stock in tried
        if (found := _all_chains(request, pairs, figures, stock, length, most_chains)) is not None
    )


def _all_chains(
    request: KitRequest,
    pairs: list[RequiredPair],
    figures: dict[Duty, JointFigures],
    stock: Stock,
    length: int,
    most_chains: int,
) -> _Chains | None:
    """Every pair's chains up to a length; None when there are too many and the length may be cut."""
    found: _Chains = {}
    total = 0
    for pair in pairs:
        joining: list[AdapterChain] = []
        for chain in chains(pair.first, pair.second, figures[pair.duty], stock, length, request.most_loss_db):
            joining.append(chain)
            if length > NEVER_CUT and total + len(joining) > most_chains:
                return None
        found[pair] = joining
        total += len(joining)
    return found


def _full_length_chains(
    request: KitRequest, pair: RequiredPair, figures: dict[Duty, JointFigures], stock: Stock
) -> Iterator[AdapterChain]:
    limits = (request.most_in_series, request.most_loss_db)
    return chains(pair.first, pair.second, figures[pair.duty], stock, *limits)


def _as_alternatives(found: _Chains, owned: Counter[AdapterType], complete: bool) -> Alternatives:
    """The chains with what each adds; left out are those that would add what the trade does not sell."""
    bit_of: dict[tuple[AdapterType, int], int] = {}
    by_pair = {}
    for pair, joining in found.items():
        options = []
        for chain in dict.fromkeys(joining):
            added = Counter(adapter_type(*adapter) for adapter in chain.adapters) - owned
            if all(adapter in trade() for adapter in added):
                copies = [(adapter, copy) for adapter, count in added.items() for copy in range(count)]
                added_bits = mask(bit_of.setdefault(copy, len(bit_of)) for copy in copies)
                options.append(Alternative(added_bits, chain))
        by_pair[pair] = sorted(options, key=_least_loss_first)
    return Alternatives(by_pair, [adapter for adapter, _ in bit_of], complete)


def _least_loss_first(alternative: Alternative) -> tuple[int, int, tuple[AdapterType, ...]]:
    chain = alternative.chain
    return loss_in_steps(chain), len(chain.adapters), chain.adapters
