"""Margins of many families at many columns and powers, in one vectorised pass.

Array axes, in this order: family, column, power. A column is computed at
its upper frequency: every limit falls with frequency, so that one decides.
"""

import numpy as np

from ..catalogue import catalogue
from ..errors import InputError, known
from ..numeric.json_numbers import nested
from ..physics.columns import Column, columns
from ..physics.evidence import rated_lower
from ..physics.families import FamilyHead, family_head
from ..physics.gates import GATES, HOUSE, MATCH, gate_table, missed_match, site_demands
from ..physics.house_limits import house_power
from ..physics.margins import LIMITS, Margins, evaluate
from ..physics.station import station_of
from .requests import MOST_CELLS, MatrixRequest
from .results import MatrixResult

__all__ = ["matrix"]


def matrix(request: MatrixRequest) -> MatrixResult:
    """Margins, binding limits and gates of every cell. Raises InputError for unknown names."""
    families = _families(request)
    heads = columns(request.region, request.bands, request.frequencies_hz)
    powers = np.array(request.powers_w, dtype=np.float64)
    cells = len(families) * len(heads) * powers.size
    if cells > MOST_CELLS:
        raise InputError("families x columns x powers_w", cells, f"at most {MOST_CELLS} cells in one matrix")
    station = station_of(request)
    highest_hz = np.array([head.high_hz for head in heads], dtype=np.float64)
    margins = evaluate(families, highest_hz, powers, station)
    demands = [site_demands(family, request) for family in families]
    missed = missed_match(margins.return_loss_db, station)
    failed = gate_table(families, demands, highest_hz, powers, margins.no_heat_room, missed, margins.cable_cutoff_hz)
    rows = [family_head(family, wanted) for family, wanted in zip(families, demands, strict=True)]
    house_w = house_power(families, highest_hz)
    return _result(request, rows, heads, margins, failed, house_w)


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
    cautious, generous = margins.by_limit_db.min(axis=1)
    hard = np.array([gate.hard for gate in GATES])
    refusing = failed & hard[:, None, None, None]
    refused = refusing.any(axis=0)
    receiving = np.isinf(cautious)
    # a house limit leaves room below it, whatever the powers asked for
    always_refused = refusing[[gate.id != HOUSE for gate in GATES]].any(axis=0).all(axis=-1)
    but_for_match = refusing[[gate.id not in (HOUSE, MATCH) for gate in GATES]].any(axis=0).all(axis=-1)
    largest = np.minimum(margins.allowed_w[0].min(axis=0), house_w)
    rated = np.array([not row.receive_only for row in rows])
    largest = np.where(rated[:, None] & ~always_refused & (largest > 0), largest, np.nan)
    weights = np.where(hard, 0, 2 ** np.arange(len(GATES), dtype=np.int64))
    allowed = {
        limit: nested(_ends_last(margins.allowed_w[:, index], but_for_match)) for index, limit in enumerate(LIMITS)
    }
    return MatrixResult(
        families=rows,
        columns=heads,
        powers_w=request.powers_w,
        limits=LIMITS,
        gates=GATES,
        margin_db=nested(np.where(refused | receiving, np.nan, cautious)),
        margin_high_db=nested(np.where(refused | receiving, np.nan, generous)),
        binding=np.where(refused | receiving, -1, margins.by_limit_db[0].argmin(axis=0)).tolist(),
        refused_by=np.where(refused, refusing.argmax(axis=0), -1).tolist(),
        marks=np.einsum("g,gfcp->fcp", weights, failed).tolist(),
        undecided=(~refused & (cautious < 0) & (generous >= 0)).tolist(),
        rating_below=[rated_lower(row.id, request.cable) for row in rows],
        contact_allowed_w=allowed["contact"],
        cable_allowed_w=allowed["cable"],
        voltage_allowed_w=allowed["voltage"],
        return_loss_db=nested(_ends_last(margins.return_loss_db, but_for_match)),
        largest_power_w=nested(largest),
    )


def _ends_last(values: np.ndarray, refused: np.ndarray) -> np.ndarray:
    return np.where(refused[..., None], np.nan, np.moveaxis(values, 0, -1))
