"""The sentences of a kit's answer."""

from ..catalogue.schema import Adapter
from ..numeric.units import engineering
from .adapters import AdapterType, adapter_name, families_of
from .chains import AdapterChain

__all__ = ["joined_sentence", "stated_words", "verdict"]


def joined_sentence(chain: AdapterChain) -> str:
    """How a pair is joined."""
    if not chain.adapters:
        return "They mate as they are."
    return f"Joined by {', then '.join(adapter_name(adapter) for adapter in chain.adapters)}."


def verdict(added: int, lower_bound: int, pairs: int, joined: int, joined_by_owned: int) -> str:
    """How many adapters are added for how many pairs, and whether fewer could do."""
    what = f"{added} more adapter{'' if added == 1 else 's'}" if added else "Nothing to add"
    which = "all" if joined == pairs else f"{joined} of {pairs}"
    outcome = f"{what}: {which} pairs can be joined, {joined_by_owned} with what you have"
    proof = "no smaller set does" if added == lower_bound else f"at least {lower_bound} are needed"
    return f"{outcome}; {proof}." if added else f"{outcome}."


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
