"""What the core answers about the families for one joint. Units are in the keys."""

from msgspec import Struct

from ..physics.columns import Column
from ..physics.limits import LimitId

__all__ = ["Choice", "ChooseResult", "FieldValue", "MatingLife", "Rejection", "Relaxation", "Weather"]

FieldValue = bool | float | str | list[str | float] | None
"""What a field of a request may be set to."""


class Rejection(Struct, frozen=True):
    """One demand a family does not meet: a gate, a limit or the room there is."""

    demand: str
    """What would have to be relaxed: power, frequency, weather and so on."""
    name: str
    hard: bool
    sentence: str
    """Value and limit in words."""


class MatingLife(Struct, frozen=True):
    """Matings over the service life against those the family is good for."""

    needed: float
    good_for: float
    runs_out_after_years: float | None
    """null when it is never opened."""


class Weather(Struct, frozen=True):
    """The harshest weather the mated joint is fit for as it is, and with tape or a boot over it."""

    stands: str
    stands_sealed: str
    asked: str


class Choice(Struct, frozen=True):
    """One family against all demands."""

    family: str
    name: str
    also_called: list[str]
    pack: str
    """Name of the pack the family comes from; empty for a built-in one."""
    passes: bool
    rank: int | None
    """1 is best; equal ranks are ties; null when it does not pass."""
    margin_db: float | None
    """Smallest cautious margin over all columns and limits; null in receive too, where none counts."""
    margin_high_db: float | None
    undecided: bool
    binding: LimitId | None
    binding_column: str | None
    port_binds: bool
    """Whether the port's own joint has a smaller margin than this family's."""
    return_loss_db: float
    """Of the joint alone, the smallest over the columns, by the cautious sources,"""
    return_loss_high_db: float
    """and by the generous ones."""
    loss_db: float
    """Expected loss of the mated pair at the highest frequency."""
    diameter_m: float
    coupling: str
    torque_nm: float
    by_hand: bool
    """Whether the trade tightens it by hand and not with a torque wrench."""
    needs_adapter: bool
    """Whether the port is of another family; margin and loss then count the port's own joint too."""
    has_margin_asked: bool
    """Whether it passes with the margin asked for; true in receive."""
    reasons: list[str]
    """Why it stands where it does, in words, the first criterion first; empty where it does not pass."""
    dc_stands_a: float
    """Direct current that the heat of contact and cable allows without power beside it, by the cautious figures."""
    rejections: list[Rejection]
    wear: MatingLife
    weather: Weather


class Relaxation(Struct, frozen=True):
    """One demand that, relaxed alone, lets families pass."""

    demand: str
    sentence: str
    families: list[str]
    field: str | None
    """The field of the request that can be set so that at least one of them passes; null where no single one does."""
    value: FieldValue
    """What to set it to; null too for a field that may be left out."""


class ChooseResult(Struct, frozen=True):
    """Every family: the plan first, then those that pass by rank, then the others by the fewest demands missed."""

    columns: list[Column]
    power_w: float
    choices: list[Choice]
    passing: list[str]
    port_doubts: list[str]
    """What speaks against the port that can't be changed, a sentence each."""
    place: str
    """What weather, shaking and sealing are counted on."""
    notes: list[str]
    """What else is to be known of the direct current; empty without one."""
    rule: str
    verdict: str
    relaxations: list[Relaxation]
    """Only where nothing passes."""
    cautions: list[str]
