"""What a cell says, in sentences."""

from ..numeric.measures import temperature_words
from ..numeric.units import engineering
from ..physics.columns import Column
from ..physics.derivation import Limits
from ..physics.gates import MATCH, GateResult
from ..physics.limits import LIMIT_NAMES, LimitId
from ..physics.margin_words import margin_in_words

__all__ = ["limit_sentence", "match_sentence", "verdict"]


def verdict(
    family_name: str,
    column: Column,
    power_w: float,
    binding: LimitId | None,
    margins_db: tuple[float | None, float | None],
    refusing: GateResult | None,
    return_loss_db: tuple[float, float],
) -> str:
    """The cell in one sentence or two: its margins are the cautious one and the generous one [dB]."""
    level = f"{engineering(power_w, 'W')} PEP" if power_w else "receive only"
    subject = f"{family_name} on {column.name} at {level}"
    cautious, generous = margins_db
    if refusing:
        refused = "refused for its match" if refusing.id == MATCH else "refused"
        return f"{subject}: {refused}. {refusing.sentence}"
    if binding is None or cautious is None or generous is None:
        return f"{subject}: {return_loss_db[0]:.0f} dB of return loss; no power limit counts in receive."
    binds = f"the {LIMIT_NAMES[binding]}"
    if cautious >= 0:
        return f"{subject}: {margin_in_words(cautious)}; limited by {binds}."
    if generous >= 0:
        return (
            f"{subject}: uncertain. The cautious sources put {binds} {-cautious:.1f} dB over its limit,"
            f" the generous ones leave {generous:.1f} dB margin."
        )
    return f"{subject}: {-cautious:.1f} dB over the limit set by {binds}."


def limit_sentence(limit: LimitId, low: Limits, high: Limits) -> str:
    """One limit in a sentence, by the cautious and the generous end of the ratings."""
    if limit == "voltage":
        return (
            f"The rated peak, {low.voltage.allowed_peak_v:.0f} V in this air, is reached at"
            f" {engineering(low.allowed_w(limit), 'W')} PEP; the generous rating gives"
            f" {high.voltage.allowed_peak_v:.0f} V."
        )
    if limit == "contact":
        place, allowed_c = "The centre contact", low.contact.allowed_temperature_c
    else:
        place, allowed_c = "The cable's centre conductor, away from the joint,", low.cable.allowed_temperature_c
    allowed = temperature_words(allowed_c, whole=True)
    return (
        f"{place} reaches {allowed} at {engineering(low.allowed_w(limit), 'W')} PEP by the cautious figures"
        f" and at {engineering(high.allowed_w(limit), 'W')} by the generous ones."
    )


def match_sentence(return_loss_db: tuple[float, float], asked_db: float) -> str:
    """The match in a sentence, by its cautious and its generous return loss and the one asked for [dB]."""
    low, high = return_loss_db
    return f"The joint alone has at least {low:.1f} dB of return loss, typically {high:.1f} dB; asked: {asked_db:g} dB."
