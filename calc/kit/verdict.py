"""The sentences of a kit's answer."""

from collections import Counter
from typing import NamedTuple

from ..catalogue import catalogue
from ..catalogue.schema import Adapter
from ..numeric.units import engineering
from .adapters import AdapterType, adapter_name, families_of
from .chain_quality import ENOUGH_MARGIN_DB, LOSS_STEP_DB, STEP_DB, ChainQuality
from .chains import AdapterChain
from .port_names import listed
from .requests import Goal
from .results import PairResult

__all__ = ["PriceWords", "headline", "joined_sentence", "price_sentence", "stated_words", "verdict"]

MOST_NAMED = 3
"""Partners of one port in a headline, and other pairs apart for the same cause; more are counted."""
MOST_CAUSES = 2
"""Causes in a headline; pairs apart for others are counted."""


class PriceWords(NamedTuple):
    """What a price sentence speaks of."""

    more: int
    """Adapters that the best joints take beside the fewest."""
    ports: list[str]
    """Names of the pair with the greatest difference."""
    frequency_hz: float
    avoided: list[str]
    """Families, by name, that only the fewest put between them."""
    fewest: ChainQuality
    best: ChainQuality
    other_pairs: int
    """How many more there are with a difference."""


def joined_sentence(chain: AdapterChain) -> str:
    """How a pair is joined."""
    if not chain.adapters:
        return "They mate as they are."
    return f"Joined by {', then '.join(adapter_name(adapter) for adapter in chain.adapters)}."


def headline(added: int, pairs: list[PairResult], owns_any: bool) -> str:
    """First what can't be joined and why, then how many adapters beside those owned join the rest."""
    by_cause: dict[str, list[list[str]]] = {}
    for pair in pairs:
        if not pair.joined:
            by_cause.setdefault(pair.cause, []).append(pair.names)
    apart = sum(map(len, by_cause.values()))
    named = list(by_cause.items())[:MOST_CAUSES]
    unnamed = apart - sum(len(names) for _, names in named)
    sentences = [_apart_sentence(names, cause) for cause, names in named]
    if unnamed:
        sentences.append(f"Nor can {_count(unnamed, 'more pair')}.")
    return " ".join([*sentences, *_carried(added, len(pairs) - apart, len(pairs), owns_any)])


def verdict(
    goal: Goal, added: int, lower_bound: int, pairs: list[PairResult], joined_by_owned: int, owns_any: bool
) -> str:
    """The headline, whether fewer adapters could do, and what is joined without any of these."""
    if added > lower_bound:
        proof = f"At least {lower_bound} {'is' if lower_bound == 1 else 'are'} needed."
    else:
        proof = "No smaller set does." if goal == "fewest" else "No smaller set has joints as good."
    alone = f"{'With what you have' if owns_any else 'Without any'}: {joined_by_owned} of {_count(len(pairs), 'pair')}."
    more = ([proof] if added > 1 else []) + ([alone] if joined_by_owned else [])
    return " ".join([headline(added, pairs, owns_any), *(more if added else [])])


def price_sentence(goal: Goal, added: int, words: PriceWords | None) -> str:
    """What the other goal, which adds so many adapters, costs and brings; no words where both have one kit."""
    if words is None:
        return "The fewest adapters have the best joints too." if added else "No adapter is added for either."
    where = f"between {listed(words.ports)} {_frequency_words(words.frequency_hz)}"
    avoided = listed(words.avoided)
    if goal == "fewest":
        count = "One more adapter" if words.more == 1 else f"{words.more} more adapters"
        verb = "" if words.more > 1 else "s"
        does = f"avoid{verb} {avoided} {where}" if avoided else f"make{verb} better joints {where}"
        now, then, change = words.fewest, words.best, "gain"
    else:
        count = "One adapter fewer" if words.more == 1 else f"{words.more} adapters fewer"
        does = f"puts {avoided} {where}" if avoided else f"makes worse joints {where}"
        now, then, change = words.best, words.fewest, "lose"
    also = words.other_pairs
    others = f"; {_count(also, 'more pair')} {change}{'s' if also == 1 else ''} too" if also else ""
    return f"{count} {does}: {_difference(now, then)}{others}."


def _apart_sentence(pairs: list[list[str]], cause: str) -> str:
    """ "Radio can't be joined with Loop or Load, nor Analyser with Mast", and why.

    The port of most pairs stands first.
    """
    times = Counter(name for pair in pairs for name in pair)
    hub = max(times, key=lambda name: times[name])
    partners = [other for pair in pairs if hub in pair for other in pair if other != hub]
    others = [f"nor {one} with {two}" for one, two in (pair for pair in pairs if hub not in pair)]
    if len(others) > MOST_NAMED:
        others = [f"nor {len(others)} more pairs"]
    words = [f"{hub[0].upper()}{hub[1:]} can't be joined with {_few(partners)}", *others]
    # a cause that has a colon of its own is a sentence
    return f"{', '.join(words)}{'. ' if ': ' in cause else ': '}{cause}."


def _few(names: list[str]) -> str:
    """ "A, B or C", and of many how many more there are."""
    left_out = len(names) - MOST_NAMED
    shown = [*names[:MOST_NAMED], f"{left_out} more"] if left_out > 0 else names
    return " or ".join([", ".join(shown[:-1]), shown[-1]] if len(shown) > 1 else shown)


def _carried(added: int, joined: int, pairs: int, owns_any: bool) -> list[str]:
    if joined == 0:
        return [] if pairs else ["No pair is to be joined."]
    which = "the other " if joined < pairs else "all " if joined > 1 else "the "
    what = f"{which}pair" if joined == 1 else f"{which}{joined} pairs"
    if not added:
        return [f"Nothing to add: {what} can be joined."]
    return [f"{_count(added, 'more adapter' if owns_any else 'adapter')} join{'s' if added == 1 else ''} {what}."]


def _difference(now: ChainQuality, then: ChainQuality) -> str:
    """Figures that change by a step or more, else the return loss to a tenth."""
    margins = [min(quality.margin_db, ENOUGH_MARGIN_DB) for quality in (then, now)]
    said = []
    if abs(margins[0] - margins[1]) >= STEP_DB:
        said.append(f"margin {then.margin_db:.1f} dB in place of {now.margin_db:.1f}")
    if abs(then.return_loss_db - now.return_loss_db) >= STEP_DB:
        said.append(f"return loss {then.return_loss_db:.0f} dB in place of {now.return_loss_db:.0f}")
    if abs(then.loss_db - now.loss_db) >= LOSS_STEP_DB:
        less = "less" if then.loss_db < now.loss_db else "more"
        said.append(f"{abs(then.loss_db - now.loss_db):.2f} dB {less} loss")
    return ", ".join(said) or f"return loss {then.return_loss_db:.1f} dB in place of {now.return_loss_db:.1f}"


def _frequency_words(frequency_hz: float) -> str:
    """ "on 70 cm", or the frequency where it lies in no band of any Region."""
    for band in catalogue().bands.values():
        if any(edges.low_hz <= frequency_hz <= edges.high_hz for edges in band.regions.values()):
            return f"on {band.name}"
    return f"at {engineering(frequency_hz, 'Hz')}"


def _count(number: int, thing: str) -> str:
    return f"{number} {thing}{'' if number == 1 else 's'}"


def stated_words(entry: Adapter, adapter: AdapterType) -> str:
    """What the entry of an adapter states for it: loss and return loss up to a frequency."""
    ends = families_of(adapter)
    sentences = []
    for figures in entry.figures:
        if {entry.id, figures.to} == ends:
            loss = [] if figures.loss_db is None else [f"{figures.loss_db:g} dB loss"]
            match = [] if figures.return_loss_db is None else [f"{figures.return_loss_db:g} dB return loss"]
            reach = f"to {engineering(figures.up_to_frequency_hz, 'Hz')}"
            sentences.append(f"{' and '.join(loss + match) or 'good'} {reach}")
    return f"Stated: {'; '.join(sentences)}." if sentences else ""
