"""The operation "sweep": the file read, its points and its reference made those of the line, and judged."""

from typing import NamedTuple

import numpy as np

from ..errors import InputError
from ..feedline.elements import KnownEnd, Load
from ..feedline.feedline import Feedline, feedline_at
from ..feedline.joint import JointLink
from ..feedline.load import load_notes
from ..feedline.part import MeasuredLink, part_notes
from ..formulas.formula import Step
from ..numeric.units import engineering
from ..physics.cautions import CAUTIONS, SWEEP_CAUTIONS
from ..physics.columns import spot_column
from ..physics.ratings import assumption
from ..waves.measured import Measured
from ..waves.touchstone import read_touchstone
from ..waves.two_port import from_scattering, scattering
from .arrays import ComplexArray, RealArray
from .echoes import find_echoes
from .line_check import check_line
from .part_check import SweptPart, check_part
from .prior import SweepSettings
from .requests import SweepRequest
from .results import EchoCheck, LineCheck, PartCheck, SweepResult
from .verdict import echo_advice, echo_verdict, line_advice, line_verdict, part_verdict

__all__ = ["judge_sweep"]

LOWEST_HZ, HIGHEST_HZ = 1e5, 5e10  # of every frequency the core allows
FEWEST_POINTS, MOST_POINTS = 16, 10_001
MOST_JOINTS, MOST_LINKS = 12, 16
"""Each joint is tried with every fault, all else along the line being free: so many need some two seconds."""

ACTIVE = 1.05
"""Reflection from which on the file is said to give out more power than went in; noise alone passes 1."""


@np.errstate(divide="ignore", invalid="ignore", over="ignore", under="ignore")  # no number becomes null
def judge_sweep(request: SweepRequest) -> SweepResult:
    """Judge a sweep: a one-port file against its line, a two-port file against its parts; without either, its echoes.

    Raises InputError, with the line of the file, for one that can't be read or used.
    """
    measured = read_touchstone(request.touchstone, "touchstone")
    ports = measured.s.shape[-1]
    earlier = None if request.earlier is None else _earlier(request.earlier, ports)
    if measured.frequencies_hz.size > MOST_POINTS:
        found = f"{measured.frequencies_hz.size} points"
        raise InputError("touchstone", found, f"a sweep of {FEWEST_POINTS} to {MOST_POINTS} points")
    if not request.elements:
        judged = _judge_echoes(request, measured, earlier)
    else:
        judged = (_judge_line if ports == 1 else _judge_part)(request, measured, earlier)
    used = judged.used
    return SweepResult(
        ports=ports,
        points=int(used.frequencies_hz.size),
        low_hz=float(used.frequencies_hz[0]),
        high_hz=float(used.frequencies_hz[-1]),
        reference_ohm=measured.reference_ohm,
        notes=[*measured.notes, *_notes_of_earlier(earlier), *judged.notes],
        verdict=judged.verdict,
        advice=judged.advice,
        line=judged.line,
        part=judged.part,
        echoes=judged.echoes,
        steps=judged.steps,
        cautions=[*SWEEP_CAUTIONS, *CAUTIONS],
    )


class _Judged(NamedTuple):
    """The points used and what they tell."""

    used: Measured
    notes: list[str]
    verdict: str
    advice: list[str]
    steps: list[Step]
    line: LineCheck | None = None
    part: PartCheck | None = None
    echoes: EchoCheck | None = None


def _judge_echoes(request: SweepRequest, measured: Measured, earlier: Measured | None) -> _Judged:
    if measured.s.shape[-1] != 1:
        raise InputError("elements", "0 parts", "at least 1 for a two-port: what is in it")
    used, notes = _usable(measured, None)
    z_0 = measured.reference_ohm
    echoes, steps = find_echoes(
        used.frequencies_hz,
        _one_port_reflection(used, z_0),
        _compared_reflection(earlier, z_0),
        request.velocity_factor,
        _window_shape(request),
    )
    return _Judged(used, notes, echo_verdict(echoes), echo_advice(echoes), steps, echoes=echoes)


def _judge_line(request: SweepRequest, measured: Measured, earlier: Measured | None) -> _Judged:
    if request.load is None:
        raise InputError("load", "nothing", "what the line ended in during the sweep")
    feedline = _feedline(request, measured, request.load)
    _refuse_size(feedline)
    used, notes = _usable(measured, feedline)
    z_0 = feedline.station.impedance_ohm
    settings = SweepSettings(request.length_tolerance, _window_shape(request), request.load)
    notes += load_notes(request.load)
    line, steps = check_line(
        feedline,
        used.frequencies_hz,
        _one_port_reflection(used, z_0),
        _compared_reflection(earlier, z_0),
        settings,
    )
    return _Judged(used, notes, line_verdict(line), line_advice(line, request.load), steps, line=line)


def _judge_part(request: SweepRequest, measured: Measured, earlier: Measured | None) -> _Judged:
    feedline = _feedline(request, measured, request.load or KnownEnd(what="matched"))
    used, notes = _usable(measured, feedline)
    z_0 = feedline.station.impedance_ohm
    past = None if earlier is None else (earlier.frequencies_hz, _swept_part(earlier, z_0, "earlier"))
    part, steps = check_part(feedline, used.frequencies_hz, _swept_part(used, z_0, "touchstone"), past)
    return _Judged(used, notes, part_verdict(part), [], steps, part=part)


def _feedline(request: SweepRequest, measured: Measured, load: Load | KnownEnd) -> Feedline:
    column = spot_column(float(np.clip(_middle_hz(measured), LOWEST_HZ, HIGHEST_HZ)))
    return feedline_at(request, request.elements, load, column)


def _window_shape(request: SweepRequest) -> float:
    return request.window_shape or float(assumption("sweep_window_shape"))


def _middle_hz(measured: Measured) -> float:
    return float(measured.frequencies_hz[0] + measured.frequencies_hz[-1]) / 2


def _notes_of_earlier(earlier: Measured | None) -> list[str]:
    return [] if earlier is None else [f"The earlier sweep: {note}" for note in earlier.notes]


def _earlier(text: str, ports: int) -> Measured:
    earlier = read_touchstone(text, "earlier")
    if earlier.s.shape[-1] != ports:
        raise InputError("earlier", f"{earlier.s.shape[-1]} ports", f"a file of {ports}, as the sweep itself")
    return earlier


def _refuse_size(feedline: Feedline) -> None:
    """Raise InputError for a line with no joint, or with more joints or two-ports than are judged."""
    joints = sum(isinstance(link, JointLink) for link in feedline.links)
    if not 1 <= joints <= MOST_JOINTS:
        allowed = f"a line with 1 to {MOST_JOINTS} joints, as each is tried with every fault; an adapter has two"
        raise InputError("elements", f"{joints} joints", allowed)
    if len(feedline.links) > MOST_LINKS:
        raise InputError("elements", f"{len(feedline.links)} parts", f"at most {MOST_LINKS} parts; an adapter is two")


def _usable(measured: Measured, feedline: Feedline | None) -> tuple[Measured, list[str]]:
    """The points that can be judged, and a sentence for each reason that others can't."""
    frequency = measured.frequencies_hz
    notes = part_notes(feedline.links) if feedline is not None else []
    high_enough = frequency >= LOWEST_HZ
    allowed = np.maximum(frequency, LOWEST_HZ)
    known = np.full(allowed.shape, True)
    if feedline is not None and measured.s.shape[-1] == 1:
        known = np.isfinite(np.broadcast_to(feedline.load.likely(allowed)[0], allowed.shape))
    for link in feedline.links if feedline is not None else []:
        if isinstance(link, MeasuredLink):
            known = known & np.isfinite(link.models[0].two_port(allowed).a)
    usable = high_enough & known
    if not high_enough.all():
        notes.append(f"{int((~high_enough).sum())} points below {engineering(LOWEST_HZ, 'Hz')} are not used.")
    if not known.all():
        notes.append(f"{int((~known).sum())} points are not used, as a file of the line does not reach them.")
    if usable.sum() < FEWEST_POINTS:
        raise InputError("touchstone", f"{int(usable.sum())} points", f"a sweep of at least {FEWEST_POINTS} points")
    if (np.abs(measured.s[usable]) > ACTIVE).any():
        notes.append("The file gives out more than it takes in at some points: check the analyser's calibration.")
    return measured._replace(frequencies_hz=frequency[usable], s=measured.s[usable]), notes


def _compared_reflection(earlier: Measured | None, z_0: float) -> tuple[RealArray, ComplexArray] | None:
    """Frequencies [Hz] and reflection of an earlier sweep."""
    return None if earlier is None else (earlier.frequencies_hz, _one_port_reflection(earlier, z_0))


def _one_port_reflection(measured: Measured, z_0: float) -> ComplexArray:
    """A one-port's reflection against the line's impedance, (frequencies,)."""
    own: ComplexArray = measured.s[:, 0, 0]
    step = (measured.reference_ohm - z_0) / (measured.reference_ohm + z_0)
    return (own + step) / (1 + own * step)


def _swept_part(measured: Measured, z_0: float, field: str) -> SweptPart:
    """A two-port against the line's impedance. Raises InputError naming the field for one that lets nothing through."""
    s = measured.s
    if not (np.abs(s[:, 1, 0]) > 0).all():
        raise InputError(field, "s21 = 0", "a two-port that lets something through")
    port = from_scattering(s[:, 0, 0], s[:, 0, 1], s[:, 1, 0], s[:, 1, 1], measured.reference_ohm)
    s11, _, s21, s22 = scattering(port, z_0)
    return SweptPart(s11, s21, s22)
