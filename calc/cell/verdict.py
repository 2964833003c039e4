"""What a cell says, in sentences."""

from ..numeric.units import engineering
from ..physics.columns import Column
from ..physics.derivation import Limits
from ..physics.gates import GateResult
from ..physics.limits import LimitId

__all__ = ["limit_sentence", "verdict"]


def verdict(
    family_name: str,
    column: Column,
    power_w: float,
    binding: LimitId,
    margins_db: tuple[float, float],
    refusing: GateResult | None,
) -> str:
    """The cell in one sentence or two: its margins are the cautious one and the generous one [dB]."""
    level = f"{engineering(power_w, 'W')} PEP" if power_w else "receive only"
    subject = f"{family_name} on {column.name} at {level}"
    cautious, generous = margins_db
    if refusing:
        return f"{subject}: refused. {refusing.sentence}"
    if cautious >= 0:
        return f"{subject}: {cautious:.1f} dB of room; {binding} binds."
    if generous >= 0:
        return (
            f"{subject}: undecided. The cautious sources put it {-cautious:.1f} dB over its {binding} limit,"
            f" the generous ones leave {generous:.1f} dB of room."
        )
    return f"{subject}: {-cautious:.1f} dB over its {binding} limit."


def limit_sentence(limit: LimitId, low: Limits, high: Limits) -> str:
    """One limit in a sentence, by the cautious and the generous end of the ratings."""
    if limit == "heat":
        return (
            f"The centre contact reaches {low.heat.path.allowed_temperature_c:.0f} °C at"
            f" {engineering(float(low.heat.allowed_w), 'W')} PEP by the cautious rating and at"
            f" {engineering(float(high.heat.allowed_w), 'W')} by the generous one."
        )
    if limit == "voltage":
        return (
            f"The rated peak, {low.voltage.allowed_peak_v:.0f} V in this air, is reached at"
            f" {engineering(float(low.voltage.allowed_w), 'W')} PEP; the generous rating gives"
            f" {high.voltage.allowed_peak_v:.0f} V."
        )
    return (
        f"The joint alone has at least {low.match.return_loss_db:.1f} dB of return loss, typically"
        f" {high.match.return_loss_db:.1f} dB."
    )
