"""The families for one joint: every demand checked, those that meet all of them ranked by a stated rule."""

import numpy as np

from ..catalogue import catalogue
from ..physics.cautions import CAUTIONS
from ..physics.gates import EXPOSURES, SEALED_TO
from ..physics.margins import LIMITS
from .evaluation import Evaluation, evaluation_of, harsher
from .ranking import RULE, Contender, contenders
from .reasons import reasons_for
from .rejections import port_doubts, rejections
from .relax import relaxations
from .requests import ChooseRequest
from .results import Choice, ChooseResult, MatingLife, Rejection, Weather
from .verdict import current_notes, place_sentence, verdict

__all__ = ["choose"]


def choose(request: ChooseRequest) -> ChooseResult:
    """Check every family against every demand. Raises InputError for unknown names."""
    evaluation = evaluation_of(request)
    missed = _missed(request, evaluation)
    ranked = contenders(request, evaluation, [row for row, found in missed.items() if not found])
    words = reasons_for(request, evaluation)
    choices = _choices(request, evaluation, missed, ranked)
    return ChooseResult(
        columns=evaluation.columns,
        power_w=evaluation.power_w,
        choices=sorted(choices, key=lambda choice: choice.family != request.plan),
        passing=[one.interface.id for one in ranked],
        port_doubts=port_doubts(request, evaluation),
        place=place_sentence(evaluation),
        notes=current_notes(request),
        rule=RULE,
        verdict=verdict(request, ranked, words),
        relaxations=[] if ranked else relaxations(request, choices, evaluation, _passing_families),
        cautions=CAUTIONS,
    )


def _passing_families(request: ChooseRequest) -> list[str]:
    evaluation = evaluation_of(request)
    return [evaluation.families[row] for row, found in _missed(request, evaluation).items() if not found]


def _missed(request: ChooseRequest, evaluation: Evaluation) -> dict[int, list[Rejection]]:
    """By row, the demands that a family misses."""
    return {row: rejections(request, evaluation, row) for row in range(len(evaluation.families))}


def _choices(
    request: ChooseRequest, evaluation: Evaluation, missed: dict[int, list[Rejection]], ranked: list[Contender]
) -> list[Choice]:
    """Those that pass by rank, then the others by the fewest demands missed."""
    words = reasons_for(request, evaluation)
    before, behind = [None, *ranked], [*ranked[1:], None]
    passing = [
        _choice(request, evaluation, one.row, [], one, words.of_place(one, *beside))
        for one, *beside in zip(ranked, before, behind, strict=False)
    ]
    failing = [_choice(request, evaluation, row, found, None, []) for row, found in missed.items() if found]
    return passing + sorted(failing, key=lambda choice: len({found.demand for found in choice.rejections}))


def _choice(
    request: ChooseRequest,
    evaluation: Evaluation,
    row: int,
    missed: list[Rejection],
    contender: Contender | None,
    reasons: list[str],
) -> Choice:
    family, scenario = evaluation.families[row], evaluation.scenario
    interface = catalogue().interfaces[family]
    low, high = float(evaluation.low_db[row]), float(evaluation.high_db[row])
    shown = np.isfinite(low) and not any(rejection.hard for rejection in missed)
    limit = int(evaluation.tightest_limit[row])
    as_it_is = interface.exposure_mated
    good_for = interface.durability_matings.low.value
    return Choice(
        family=family,
        name=interface.name,
        also_called=interface.also_called,
        pack=catalogue().pack_of("interfaces", family),
        passes=not missed,
        rank=contender.rank if contender else None,
        margin_db=low if shown else None,
        margin_high_db=high if shown and np.isfinite(high) else None,
        undecided=bool(shown and low < 0 <= high),
        binding=LIMITS[limit] if shown else None,
        port_binds=bool(evaluation.by_limit_db[limit, row] > low),
        binding_column=evaluation.columns[evaluation.tightest_column[limit, row]].name if shown else None,
        return_loss_db=float(evaluation.return_loss_db[0, row]),
        return_loss_high_db=float(evaluation.return_loss_db[1, row]),
        loss_db=float(evaluation.loss_db[row]),
        diameter_m=interface.body_diameter_m.value,
        coupling=interface.coupling.value,
        torque_nm=interface.coupling_torque_nm.low.value,
        by_hand=interface.tightened_by is not None and interface.tightened_by.value == "hand",
        needs_adapter=request.port is not None and request.port != family,
        has_margin_asked=contender is not None and contender.merit.short_tenths == 0,
        reasons=reasons,
        dc_stands_a=float(evaluation.direct_current_a[row]),
        rejections=missed,
        wear=MatingLife(
            needed=scenario.matings_per_year * scenario.service_life_years,
            good_for=good_for,
            runs_out_after_years=good_for / scenario.matings_per_year if scenario.matings_per_year > 0 else None,
        ),
        weather=Weather(
            stands=as_it_is,
            stands_sealed=harsher(EXPOSURES, as_it_is, EXPOSURES[SEALED_TO]),
            asked=scenario.exposure,
        ),
    )
