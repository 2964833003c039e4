"""The sentences of a kit's answer."""

from .adapters import adapter_name
from .chains import AdapterChain

__all__ = ["joined_sentence", "verdict"]


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
