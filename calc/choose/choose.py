"""The families for one joint: every demand checked, those that meet all of them ranked by a stated rule."""

import numpy as np

from ..catalogue import catalogue
from ..physics.cautions import CAUTIONS
from ..physics.gates import EXPOSURES, SEALED_TO
from ..physics.margins import LIMITS
from .evaluation import Evaluation, evaluation_of, harsher
from .ranking import RULE, ranks, undominated
from .rejections import port_doubts, rejections
from .relax import relaxations
from .requests import ChooseRequest
from .results import Choice, ChooseResult, MatingLife, Rejection, Weather
from .verdict import verdict

__all__ = ["choose"]


def choose(request: ChooseRequest) -> ChooseResult:
    """Check every family against every demand. Raises InputError for unknown names."""
    evaluation = evaluation_of(request)
    choices = _choices(request, evaluation)
    passing = _passing(choices)
    return ChooseResult(
        columns=evaluation.columns,
        power_w=evaluation.power_w,
        choices=sorted(choices, key=lambda choice: choice.family != request.plan),
        passing=passing,
        port_doubts=port_doubts(request, evaluation),
        rule=RULE,
        verdict=verdict(request, choices),
        relaxations=[] if passing else relaxations(request, choices, evaluation, _passing_families),
        cautions=CAUTIONS,
    )


def _passing_families(request: ChooseRequest) -> list[str]:
    return _passing(_choices(request, evaluation_of(request)))


def _passing(choices: list[Choice]) -> list[str]:
    return [choice.family for choice in choices if choice.passes]


def _choices(request: ChooseRequest, evaluation: Evaluation) -> list[Choice]:
    """Those that pass by rank, then the others by the fewest demands missed."""
    missed = [rejections(request, evaluation, row) for row in range(len(evaluation.families))]
    passing = [row for row, found in enumerate(missed) if not found]
    ranked_by = evaluation.low_db if evaluation.power_w > 0 else evaluation.return_loss_db[0]
    rank = dict(zip(passing, ranks(ranked_by[passing].tolist()), strict=True))
    pareto = dict(zip(passing, undominated(_merits(evaluation)[passing]), strict=True))
    choices = [
        _choice(request, evaluation, row, found, rank.get(row), pareto.get(row, False))
        for row, found in enumerate(missed)
    ]
    return sorted(choices, key=_order)


def _order(choice: Choice) -> tuple[bool, int]:
    if choice.rank is not None:
        return False, choice.rank
    return True, len({rejection.demand for rejection in choice.rejections})


def _merits(evaluation: Evaluation) -> np.ndarray:
    """What families are compared by, (families, criteria), larger being better: margin, loss, size and torque."""
    interfaces = [catalogue().interfaces[family] for family in evaluation.families]
    diameter_m = [interface.body_diameter_m.value for interface in interfaces]
    torque_nm = [interface.coupling_torque_nm.low.value for interface in interfaces]
    return np.stack([evaluation.low_db, -evaluation.loss_db, -np.array(diameter_m), -np.array(torque_nm)], axis=1)


def _choice(
    request: ChooseRequest,
    evaluation: Evaluation,
    row: int,
    missed: list[Rejection],
    rank: int | None,
    best_in_something: bool,
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
        pack=catalogue().pack_of("interfaces", family),
        passes=not missed,
        rank=rank,
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
        best_in_something=best_in_something,
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
