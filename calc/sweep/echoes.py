"""Echoes by distance of a line of which nothing is described but how fast its cable is."""

import numpy as np

from ..formulas.constants import C_0
from ..formulas.formula import Step, recording
from ..formulas.sweep import alias_free_distance, sweep_resolution, window_broadening, window_side_lobe
from ..physics.ratings import assumption
from .arrays import ComplexArray, IndexArray, RealArray
from .digits import MILLIONTH_DECIMALS, four_figures, to_millionths
from .results import DistanceProfile, Echo, EchoCheck, Sign
from .transform import DistanceTransform, Propagation, distance_transform

__all__ = ["find_echoes"]

MOST_PLACES, PLACES_IN_A_CELL = 1201, 3
TRANSFORMED_AT_ONCE = 65536
"""Frequencies times distances in one array."""
MOST_ECHOES = 12
LEAST_ECHO = 0.003
"""Reflection below which nothing is an echo: calibration leaves more."""
LARGE = 0.5
"""Share of the strongest echo from which on one may be the end of the line."""
ONE_SIGN = 0.6
"""Share of an echo's height that its real part must reach to tell a rise from a fall."""
BEYOND = 1.3
"""Of the last echo: how far the picture goes."""


def find_echoes(
    frequency: RealArray,
    measured: ComplexArray,
    earlier: tuple[RealArray, ComplexArray] | None,
    velocity: float,
    shape: float,
) -> tuple[EchoCheck, list[Step]]:
    """The echoes of a measured reflection at frequencies [Hz], in cable of a velocity factor, by a Kaiser window."""
    transform = distance_transform(frequency, shape, float(np.clip(measured[0].real, -1, 1)))
    with recording() as steps:
        range_m = float(alias_free_distance(velocity, transform.step_hz))
        side_lobe_db = float(window_side_lobe(shape))
        resolution_m = float(sweep_resolution(velocity, window_broadening(shape), transform.span_hz))
    # the last echo of all is sought over half of what the steps reach: beyond it lie echoes of echoes
    cell_m = C_0 * velocity / (2 * (frequency[-1] - frequency[0]))
    count = int(min(max(range_m / cell_m * PLACES_IN_A_CELL, 64), MOST_PLACES))
    distance = np.linspace(-cell_m, range_m - cell_m, count)
    envelope = np.abs(_transformed(transform._replace(low_pass=False), frequency, measured, velocity, distance))
    floor = float(assumption("sweep_detection_factor")) * float(np.median(envelope))
    side_lobes = float(envelope.max()) * 10 ** (-side_lobe_db / 20)
    threshold = max(floor, 2 * side_lobes, LEAST_ECHO)
    peaks = _peaks(envelope, distance, threshold, resolution_m)
    found = [
        _echo(transform, frequency, measured, velocity, float(distance[at]), float(envelope[at]), cell_m)
        for at in peaks
    ]
    last = max((echo[0] for echo in found), default=range_m)
    end = min(range_m - cell_m, BEYOND * last + 3 * resolution_m)
    shown = np.linspace(-cell_m, end, min(count, 601))
    compared = None
    if earlier is not None:
        real, imaginary = (np.interp(frequency, earlier[0], part, 0, 0) for part in (earlier[1].real, earlier[1].imag))
        compared = _transformed(transform, frequency, real + 1j * imaginary, velocity, shown)
    size = np.real if transform.low_pass else np.abs
    profile = DistanceProfile(
        distance_m=[round(float(one), MILLIONTH_DECIMALS) for one in shown],
        measured=to_millionths(size(_transformed(transform, frequency, measured, velocity, shown))),
        expected=[None] * shown.size,
        earlier=[] if compared is None else to_millionths(size(compared)),
        threshold=to_millionths(np.full(shown.size, threshold)),
    )
    check = EchoCheck(
        velocity_factor=velocity,
        resolution_m=resolution_m,
        range_m=range_m,
        transform="low-pass" if transform.low_pass else "band-pass",
        echoes=_described(found, resolution_m),
        profile=profile,
    )
    return check, steps


def _transformed(
    transform: DistanceTransform,
    frequency: RealArray,
    reflection: ComplexArray,
    velocity: float,
    distance: RealArray,
) -> ComplexArray:
    """The echo at each distance [m], some distances at a time."""
    size = max(TRANSFORMED_AT_ONCE // frequency.size, 1)
    per_metre = 2 * np.pi * frequency / (C_0 * velocity)
    found = []
    for first in range(0, distance.size, size):
        own = distance[first : first + size]
        radians = own[:, None] * per_metre
        kernel = transform.kernel(Propagation(own, radians, np.zeros_like(radians)))
        found.append(transform.echoes(reflection, kernel) + 0j)
    return np.concatenate(found)


def _peaks(envelope: RealArray, distance: RealArray, threshold: float, resolution_m: float) -> IndexArray:
    """The highest places, none nearer to a higher one than the resolution."""
    inner = envelope[1:-1]
    tops = 1 + np.flatnonzero((inner >= envelope[:-2]) & (inner > envelope[2:]) & (inner > threshold))
    chosen: list[int] = []
    for at in tops[np.argsort(-envelope[tops])]:
        if all(abs(distance[at] - distance[other]) > resolution_m for other in chosen):
            chosen.append(int(at))
        if len(chosen) == MOST_ECHOES:
            break
    return np.array(sorted(chosen), dtype=np.int64)


def _echo(
    transform: DistanceTransform,
    frequency: RealArray,
    measured: ComplexArray,
    velocity: float,
    distance: float,
    height: float,
    cell_m: float,
) -> tuple[float, float, Sign]:
    """Where an echo is [m], how high, and whether the impedance rises or falls there."""
    near = distance + np.linspace(-1, 1, 21) * cell_m / 2
    envelope = np.abs(_transformed(transform._replace(low_pass=False), frequency, measured, velocity, near))
    best = float(near[int(np.argmax(envelope))])
    sign: Sign = "mixed"
    if transform.low_pass:
        around = np.real(_transformed(transform, frequency, measured, velocity, best + np.linspace(-1, 1, 21) * cell_m))
        up, down = float(around.max()), float(-around.min())
        if max(up, down) > 0 and min(up, down) < (1 - ONE_SIGN) * max(up, down):
            sign = "higher" if up > down else "lower"
    return max(best, 0.0), height, sign


def _described(found: list[tuple[float, float, Sign]], resolution_m: float) -> list[Echo]:
    """Each echo in words."""
    strongest = max((height for _, height, _ in found), default=0.0)
    ends = [distance for distance, height, _ in found if height >= LARGE * strongest]
    end = ends[0] if ends else 0.0
    echoes = []
    for distance, height, sign in found:
        if distance <= resolution_m / 2:
            words = "the analyser's own socket, an adapter on it or the first connector"
        elif distance == end:
            words = {
                "higher": "the end, if it is open, or a break",
                "lower": "the end, if it is shorted, or a short",
                "mixed": "the end of the line or the worst place on it",
            }[sign]
        elif distance > end + resolution_m:
            words = "the end, where it reflects little, or an echo of an echo: beyond the strongest one nothing is sure"
        else:
            words = {
                "higher": "a bad contact, a broken shield or a piece of higher impedance",
                "lower": "something squeezed or wet, a leak or a piece of lower impedance",
                "mixed": "a connector, an adapter or a damaged place",
            }[sign]
        echoes.append(
            Echo(
                distance_m=four_figures(distance),
                low_m=four_figures(max(distance - resolution_m / 2, 0.0)),
                high_m=four_figures(distance + resolution_m / 2),
                reflection=four_figures(height),
                sign=sign,
                words=f"Could be {words}.",
            )
        )
    return echoes
