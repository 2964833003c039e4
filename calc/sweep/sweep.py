"""A sweep as an answer: the file read, the line fitted to it, the joint that is worse than it should be named."""

import numpy as np

from ..errors import InputError
from ..feedline.feedline import Feedline, feedline_at
from ..numeric.units import engineering
from ..physics.cautions import CAUTIONS
from ..physics.columns import spot_column
from ..physics.limits import assumption
from ..waves.measured import Measured
from ..waves.touchstone import read_touchstone
from ..waves.two_port import from_scattering, scattering
from .line_check import Setting, line_check
from .part_check import Scattered, part_check
from .requests import SweepRequest
from .results import SweepResult
from .verdict import line_words, part_words

__all__ = ["SWEEP_CAUTIONS", "sweep"]

LOWEST_HZ = 1e5  # of every frequency the core takes
FEWEST_POINTS, MOST_POINTS = 16, 10_001
MOST_JOINTS, MOST_LINKS = 12, 16
"""Each joint is tried with every fault, all else along the line being free: so many take some two seconds."""

GAIN = 1.05
"""Reflection from which on the file is said to give out more than it takes in; noise alone passes 1."""

SWEEP_CAUTIONS = [
    "Before you connect an analyser: transmitter off and unplugged from the line, so that nobody can key it.",
    "Never transmit into an analyser: its input stands a few milliwatts.",
    "A line to an antenna outdoors holds static charge: short and discharge it before the analyser touches it.",
    "Never measure when thunderstorms are near; the line may carry lightning into your hands.",
]


@np.errstate(divide="ignore", invalid="ignore", over="ignore", under="ignore")  # no number becomes null
def sweep(request: SweepRequest) -> SweepResult:
    """Judge a sweep. Raises InputError, with the line of the file, for one that can't be read or used."""
    measured = read_touchstone(request.touchstone, "touchstone")
    ports = measured.s.shape[-1]
    then = None if request.earlier is None else _earlier(request.earlier, ports)
    column = spot_column(float(np.clip(_middle(measured), LOWEST_HZ, 5e10)))
    feedline = feedline_at(request, request.elements, request.load, column)
    joints = sum(link.kind == "joint" for link in feedline.links)
    if ports == 1 and not 1 <= joints <= MOST_JOINTS:
        allowed = f"a line with 1 to {MOST_JOINTS} joints, as each is tried with every fault; an adapter has two"
        raise InputError("elements", f"{joints} joints", allowed)
    if ports == 1 and len(feedline.links) > MOST_LINKS:
        raise InputError("elements", f"{len(feedline.links)} parts", f"at most {MOST_LINKS} parts; an adapter is two")
    if measured.frequencies_hz.size > MOST_POINTS:
        found = f"{measured.frequencies_hz.size} points"
        raise InputError("touchstone", found, f"a sweep of {FEWEST_POINTS} to {MOST_POINTS} points")
    usable, notes = _usable(measured, feedline, ports)
    frequency, s = measured.frequencies_hz[usable], measured.s[usable]
    z_0 = feedline.station.impedance_ohm
    line = part = None
    if ports == 1:
        earlier = None if then is None else (then.frequencies_hz, _reflection(then, then.s, z_0))
        setting = Setting(
            length_tolerance=request.length_tolerance,
            window_shape=request.window_shape or float(assumption("sweep_window_shape")),
            load=request.load,
        )
        line, steps = line_check(feedline, frequency, _reflection(measured, s, z_0), earlier, setting)
        verdict, advice = line_words(line, request.load)
    else:
        earlier = None if then is None else (then.frequencies_hz, _scattered(then, then.s, z_0, "earlier"))
        part, steps = part_check(feedline, frequency, _scattered(measured, s, z_0, "touchstone"), earlier)
        verdict, advice = part_words(part), []
    return SweepResult(
        ports=ports,
        points=int(frequency.size),
        low_hz=float(frequency[0]),
        high_hz=float(frequency[-1]),
        reference_ohm=measured.reference_ohm,
        notes=[*measured.notes, *notes],
        verdict=verdict,
        advice=advice,
        line=line,
        part=part,
        steps=steps,
        cautions=[*SWEEP_CAUTIONS, *CAUTIONS],
    )


def _middle(measured: Measured) -> float:
    return float(measured.frequencies_hz[0] + measured.frequencies_hz[-1]) / 2


def _earlier(text: str, ports: int) -> Measured:
    earlier = read_touchstone(text, "earlier")
    if earlier.s.shape[-1] != ports:
        raise InputError("earlier", f"{earlier.s.shape[-1]} ports", f"a file of {ports}, as the sweep itself")
    return earlier


def _usable(measured: Measured, feedline: Feedline, ports: int) -> tuple[np.ndarray, list[str]]:
    """Which points can be judged, and a sentence for each reason that others can't."""
    frequency, notes = measured.frequencies_hz, []
    high_enough = frequency >= LOWEST_HZ
    held = np.maximum(frequency, LOWEST_HZ)
    known = np.isfinite(np.broadcast_to(feedline.load(held), held.shape)) if ports == 1 else np.full(held.shape, True)
    for link in feedline.links:
        if link.kind == "measured":
            known = known & np.isfinite(link.models[0].two_port(held).a)
    usable = high_enough & known
    if not high_enough.all():
        notes.append(f"{int((~high_enough).sum())} points below {engineering(LOWEST_HZ, 'Hz')} are not used.")
    if not known.all():
        notes.append(f"{int((~known).sum())} points are not used, as a file of the line does not reach them.")
    if usable.sum() < FEWEST_POINTS:
        raise InputError("touchstone", f"{int(usable.sum())} points", f"a sweep of at least {FEWEST_POINTS} points")
    if (np.abs(measured.s[usable]) > GAIN).any():
        notes.append("The file gives out more than it takes in at some points: check the analyser's calibration.")
    return usable, notes


def _reflection(measured: Measured, s: np.ndarray, z_0: float) -> np.ndarray:
    """A one-port's reflection against the line's impedance."""
    step, own = (measured.reference_ohm - z_0) / (measured.reference_ohm + z_0), s[:, 0, 0]
    return (own + step) / (1 + own * step)


def _scattered(measured: Measured, s: np.ndarray, z_0: float, field: str) -> Scattered:
    if not (np.abs(s[:, 1, 0]) > 0).all():
        raise InputError(field, "s21 = 0", "a two-port that lets something through")
    port = from_scattering(s[:, 0, 0], s[:, 0, 1], s[:, 1, 0], s[:, 1, 1], measured.reference_ohm)
    s11, _, s21, s22 = scattering(port, z_0)
    return Scattered(s11, s21, s22)
