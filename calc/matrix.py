"""Margins of many families at many columns and powers, in one vectorised pass.

Array axes, wherever they stand: family, column, power. A column is computed at
its upper frequency: every limit falls with frequency, so that one decides.
"""

from typing import NamedTuple

import numpy as np

from jointwise.calc.catalogue import catalogue
from jointwise.calc.columns import columns
from jointwise.calc.errors import InputError, known
from jointwise.calc.formulas.heat import margin
from jointwise.calc.gates import GATES, HOUSE, Demand, family_reasons, gate_table, site_demands
from jointwise.calc.house import house_power
from jointwise.calc.limits import (
    Heat,
    assumption,
    first_principles_power,
    heat_limit,
    match_limit,
    voltage_limit,
)
from jointwise.calc.requests import MOST_CELLS, MatrixRequest
from jointwise.calc.results import Column, FamilyHead, LimitId, MatrixResult
from jointwise.calc.station import Station, station
from jointwise.calc.views import ENDS, table_view

__all__ = ["LIMITS", "Margins", "agreement_ratio", "evaluate", "family_head", "matrix"]

LIMITS: list[LimitId] = ["heat", "voltage", "match"]


class Margins(NamedTuple):
    """What one pass over the table computes, refused cells included."""

    allowed_w: np.ndarray
    """Ends x (heat, voltage) x family x column [W]."""
    match_db: np.ndarray
    """Ends x family x column [dB]."""
    by_limit_db: np.ndarray
    """Ends x limits x family x column x power [dB]; infinite for heat and voltage in receive."""
    agreement: np.ndarray
    """First principles over the rating, family x column [1]."""
    heat: Heat
    """Conservative heat limit, for the gates."""


def matrix(request: MatrixRequest) -> MatrixResult:
    """Margins, binding limits and gates of every cell. Raises InputError for unknown names."""
    families = _families(request)
    heads = columns(request.region, request.bands, request.frequencies_hz)
    powers = np.array(request.powers_w, dtype=np.float64)
    cells = len(families) * len(heads) * powers.size
    if cells > MOST_CELLS:
        raise InputError("families x columns x powers_w", cells, f"at most {MOST_CELLS} cells in one matrix")
    here = station(request)
    highest_hz = np.array([head.high_hz for head in heads], dtype=np.float64)
    margins = evaluate(families, highest_hz, powers, here)
    demands = [site_demands(family, request) for family in families]
    failed = gate_table(families, demands, highest_hz, powers, here, margins.heat)
    rows = [family_head(family, wanted) for family, wanted in zip(families, demands, strict=True)]
    house_w = house_power(families, highest_hz)
    return _result(request, rows, heads, margins, failed, house_w)


def evaluate(families: list[str], frequency_hz: np.ndarray, powers_w: np.ndarray, here: Station) -> Margins:
    """Every limit of every cell at both ends of the ratings, the more cautious first.

    `frequency_hz` [Hz] and `powers_w` [W] are one-dimensional.
    """
    views = [table_view(families, end) for end in ENDS]
    heats = [heat_limit(view, frequency_hz, here) for view in views]
    voltages = [voltage_limit(view, here).allowed_w for view in views]
    matches = [match_limit(view, frequency_hz, here).margin_db for view in views]
    allowed = [
        (heat.allowed_w, np.broadcast_to(voltage_w, heat.allowed_w.shape))
        for heat, voltage_w in zip(heats, voltages, strict=True)
    ]
    # which end is the cautious one can turn with frequency and line impedance
    allowed_w, match_db = np.sort(np.array(allowed), axis=0), np.sort(np.array(matches), axis=0)
    estimate_w = first_principles_power(views[0], heats[0], here)
    with np.errstate(divide="ignore", invalid="ignore"):  # no room at all is refused by its gate
        powered = np.where(powers_w > 0, margin(allowed_w[..., None], powers_w), np.inf)
        agreement = agreement_ratio(estimate_w, allowed_w[0, 0], allowed_w[1, 0])
    matched = np.broadcast_to(match_db[:, None, ..., None], (len(ENDS), 1, *powered.shape[2:]))
    by_limit = np.concatenate([powered, matched], axis=1)
    return Margins(allowed_w, match_db, by_limit, agreement, heats[0])


def agreement_ratio(estimate_w, rating_low_w, rating_high_w):
    """First principles over the nearer end of the rating, 1 inside its range [1]. Broadcasts."""
    return estimate_w / np.clip(estimate_w, rating_low_w, rating_high_w)


def family_head(family: str, demands: list[Demand]) -> FamilyHead:
    """The head of a family's row, with the sentence of each gate."""
    interface = catalogue().interfaces[family]
    return FamilyHead(
        id=family,
        name=interface.name,
        summary=interface.summary,
        receive_only=interface.receive_only,
        gate_reasons=family_reasons(family, demands),
        pack=catalogue().pack_of("interfaces", family),
    )


def _families(request: MatrixRequest) -> list[str]:
    if request.families is None:
        return list(catalogue().interfaces)
    for index, family in enumerate(request.families):
        known(f"families[{index}]", family, catalogue().interfaces)
    return request.families


def _result(
    request: MatrixRequest,
    rows: list[FamilyHead],
    heads: list[Column],
    margins: Margins,
    failed: np.ndarray,
    house_w: np.ndarray,
) -> MatrixResult:
    conservative, optimistic = margins.by_limit_db.min(axis=1)
    hard = np.array([gate.hard for gate in GATES])
    refusing = failed & hard[:, None, None, None]
    refused = refusing.any(axis=0)
    # a house limit leaves room below it, whatever the powers asked for
    physical = np.array([gate.id != HOUSE for gate in GATES])
    always_refused = refusing[physical].any(axis=0).all(axis=-1)
    largest = np.where(margins.match_db[0] >= 0, np.minimum(margins.allowed_w[0].min(axis=0), house_w), np.nan)
    rated = np.array([not row.receive_only for row in rows])
    largest = np.where(rated[:, None] & ~always_refused & (largest > 0), largest, np.nan)
    weights = np.where(hard, 0, 2 ** np.arange(len(GATES), dtype=np.int64))
    factor = assumption("agreement_factor")
    ratio = margins.agreement
    return MatrixResult(
        families=rows,
        columns=heads,
        powers_w=request.powers_w,
        limits=LIMITS,
        gates=GATES,
        margin_db=_lists(np.where(refused, np.nan, conservative)),
        margin_high_db=_lists(np.where(refused, np.nan, optimistic)),
        binding=np.where(refused, -1, margins.by_limit_db[0].argmin(axis=0)).tolist(),
        refused_by=np.where(refused, refusing.argmax(axis=0), -1).tolist(),
        marks=np.einsum("g,gfcp->fcp", weights, failed).tolist(),
        undecided=(~refused & (conservative < 0) & (optimistic >= 0)).tolist(),
        heat_disagrees=((ratio > factor) | (ratio < 1 / factor)).tolist(),
        heat_allowed_w=_lists(_ends_last(margins.allowed_w[:, 0], always_refused)),
        voltage_allowed_w=_lists(_ends_last(margins.allowed_w[:, 1], always_refused)),
        match_margin_db=_lists(_ends_last(margins.match_db, always_refused)),
        largest_power_w=_lists(largest),
    )


def _ends_last(values: np.ndarray, refused: np.ndarray) -> np.ndarray:
    return np.where(refused[..., None], np.nan, np.moveaxis(values, 0, -1))


def _lists(values: np.ndarray) -> list:
    """Nested lists with None where no finite number stands."""
    return np.where(np.isfinite(values), values, None).tolist()
