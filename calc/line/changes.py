"""Which exchange of one part would help most: every part, every candidate that passes the gates."""

from typing import Any, NamedTuple

import numpy as np

from jointwise.calc.catalogue import catalogue
from jointwise.calc.formulas.line import decibels
from jointwise.calc.gates import gate_table
from jointwise.calc.line.cable import CableModel, cable_table
from jointwise.calc.line.chain import Chain, Link, joint_demands, touching
from jointwise.calc.line.joint import joint_model
from jointwise.calc.line.requests import CableRun, Joint
from jointwise.calc.line.results import Change
from jointwise.calc.line.solve import Solution, margins, solve
from jointwise.calc.views import ENDS, table_view

__all__ = ["changes"]

SAME_IMPEDANCE = 0.1
"""A cable is offered in another's place when their impedances differ by less than this share (common practice)."""


class _Candidates(NamedTuple):
    ids: list[str]
    names: list[str]
    models: tuple[Any, Any]


def changes(request: Any, chain: Chain, now: tuple[Solution, Solution]) -> list[Change]:
    """Every exchange with what it brings at the frequency looked at, the most gained at the antenna first.

    `now` are the solutions at that one frequency, cautious and generous end.
    """
    frequency = np.array([chain.frequency_hz])
    delivered = _delivered(now[1])
    smallest = _smallest(now[0], request.power_w)
    found = []
    for at, link in enumerate(chain.links):
        candidates = _candidates(request, chain, link)
        if candidates is None:
            continue
        cautious, generous = (solve(chain, frequency, end, {at: candidates.models[end]}) for end in (0, 1))
        margin = _smallest(cautious, request.power_w)[:, 0]
        brought = zip(
            candidates.ids,
            candidates.names,
            decibels(_delivered(generous) / delivered)[:, 0],
            margin - smallest[0],
            -decibels(_delivered(generous))[:, 0],
            margin,
            strict=True,
        )
        found += [Change(at, id_, name, *map(_number, numbers)) for id_, name, *numbers in brought]
    found.sort(key=lambda change: (-(change.gained_db or 0), -(change.margin_gained_db or 0)))
    return found


def _delivered(solution: Solution) -> np.ndarray:
    return solution.waves.power_w[-1]


def _smallest(solution: Solution, power_w: float) -> np.ndarray:
    by_link = [margins(allowed, power_w).min(axis=0) for allowed in solution.allowed]
    return np.min(np.stack(np.broadcast_arrays(*by_link)), axis=0)


def _number(value: float) -> float | None:
    return float(value) if np.isfinite(value) else None


def _candidates(request: Any, chain: Chain, link: Link) -> _Candidates | None:
    element = request.elements[link.element]
    if isinstance(element, CableRun):
        return _cables(element, link)
    return _families(request, chain, link, element) if isinstance(element, Joint) else None


def _cables(element: CableRun, link: Link) -> _Candidates | None:
    table = catalogue().cables
    own = table[element.cable].impedance_ohm.value
    ids = [
        cable.id
        for cable in table.values()
        if cable.id != element.cable and abs(cable.impedance_ohm.value / own - 1) < SAME_IMPEDANCE
    ]
    if not ids:
        return None
    here = link.models[0].here
    models = tuple(CableModel(cable_table(ids, end), element.length_m, here) for end in ENDS)
    return _Candidates(ids, [table[id_].name for id_ in ids], models)


def _families(request: Any, chain: Chain, link: Link, element: Joint) -> _Candidates | None:
    cables = [cable for cable in touching(request.elements, link.element) if cable]
    here = link.models[0].here
    asked = [family for family in catalogue().interfaces if family != link.family]
    demands = [joint_demands(request, element, family, cables) for family in asked]
    paths = joint_model(table_view(asked, "low"), here).path
    frequency, power = np.array([chain.frequency_hz]), np.array([request.power_w])
    failed = gate_table(asked, demands, frequency, power, here, paths).any(axis=0)[:, 0, 0]
    ids = [family for family, fails in zip(asked, failed, strict=True) if not fails]
    if not ids:
        return None
    models = tuple(joint_model(table_view(ids, end), here) for end in ENDS)
    return _Candidates(ids, [catalogue().interfaces[id_].name for id_ in ids], models)
