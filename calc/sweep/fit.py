"""Fitting a line to a sweep from many starts at once, each with a fault of its own or none.

A fit makes `points * log(squares) + sum of x²` small: the squared differences to the measurement
with a noise of unknown level, and what is usual among good parts as a prior. Gauss-Newton with
Levenberg's damping; Source: textbook least squares. All starts are one array, so that the core is as
quick in the browser as its arrays are.
"""

from collections.abc import Sequence
from typing import NamedTuple

import numpy as np

from ..waves.two_port import TwoPort
from .faults import Fault, faults_of
from .model import Line, Planes

__all__ = ["FLOOR", "Fit", "Guess", "Seen", "fitted", "products", "sensitivities"]

Number = np.ndarray
AT_ONCE = 4096
"""Frequencies times starts in one array; more would only need more memory."""

ALONE = 200_000
"""Multiplications up to which numpy's matrix product stays in one thread: waiting for others takes it longer."""

DAMPING = (1e-3, 0.2, 10.0, 1e9)
"""Where it starts, its fall on success and rise on failure, and where the fit gives up."""

ENOUGH = 0.05  # of the judged figure: a step that wins less is the last
FLOOR = 1e-3
"""Least noise a fit goes by, against a full reflection: beyond the accuracy of an analyser in the field."""

LARGEST_LOG_STEP = 1.5
STEP = 1e-5  # of the logarithm of a size, for its slope
TINY = 1e-12
FURTHEST = 6.0
"""Standard deviations a fit may move a good part's numbers."""

MOST_SIZES = 2


class Seen(NamedTuple):
    """A measured reflection, the line it was taken on and every fault of it, at the same frequencies."""

    line: Line
    faults: list[Fault]
    measured: Number

    @classmethod
    def of(cls, line: Line, measured: Number) -> "Seen":
        """With every fault of the line."""
        return cls(line, faults_of(line), measured)

    @property
    def points(self) -> int:
        """Numbers measured."""
        return 2 * self.measured.size

    def at(self, points: Number) -> "Seen":
        """The same at some of the frequencies."""
        return Seen.of(self.line.at(points), self.measured[points])


class Guess(NamedTuple):
    """Where a fit starts: a fault by its index, the good parts' numbers, the logarithms of the fault's sizes."""

    fault: int | None
    values: Number
    logs: Number


class Fit(NamedTuple):
    """One fit: the fault, the good parts' numbers, the fault's sizes as logarithms, and how well it does."""

    fault: Fault | None
    values: Number
    logs: Number
    figure: float
    squares: float
    covariance: Number
    """Of values and then logs."""
    points: int

    def score(self) -> float:
        """What a fault is judged by, lower is better: its sizes count (the Bayesian information criterion)."""
        return self.figure + len(self.logs) * float(np.log(self.points))

    @property
    def sizes(self) -> list[float]:
        """The sizes in their units."""
        return [float(one) for one in np.exp(self.logs)]

    @property
    def guess(self) -> Guess:
        """To go on from here, with all the frequencies or others."""
        return Guess(None if self.fault is None else self.fault.index, self.values, self.logs)


def fitted(seen: Seen, guesses: Sequence[Guess], rounds: int) -> list[Fit]:
    """The fit from each start."""
    most = max(AT_ONCE // seen.measured.size, 1)
    parts = [guesses[start : start + most] for start in range(0, len(guesses), most)]
    return [fit for part in parts for fit in _fitted(seen, part, rounds)]


def _fitted(seen: Seen, guesses: Sequence[Guess], rounds: int) -> list[Fit]:
    faults = [None if guess.fault is None else seen.faults[guess.fault] for guess in guesses]
    count, points = seen.line.count, seen.points
    x = _start(guesses, count)
    low, high, prior = np.full_like(x, -FURTHEST), np.full_like(x, FURTHEST), np.ones_like(x)
    for row, fault in enumerate(faults):
        for at, size in enumerate(fault.kind.sizes if fault else ()):
            low[row, count + at], high[row, count + at] = np.log(size.least), np.log(size.most)
            prior[row, count + at] = 0.0
    start, fall, rise, end = DAMPING
    damping = np.full(len(guesses), start, dtype=np.float64)
    squares, normal, slope = _looked(seen, faults, x)
    figure = _figure(points, squares, prior, x)
    live = np.arange(len(guesses), dtype=np.int64)
    for _ in range(rounds):
        noise = squares[live] / points + FLOOR**2
        curved = normal[live] / noise[:, None, None]
        diagonal = np.arange(x.shape[1], dtype=np.int64)
        curved[:, diagonal, diagonal] += prior[live]
        curved[:, diagonal, diagonal] += damping[live, None] * (curved[:, diagonal, diagonal] + TINY)
        down = slope[live] / noise[:, None] - prior[live] * x[live]
        step = np.linalg.solve(curved, down[..., None])[..., 0]
        step[:, count:] = np.clip(step[:, count:], -LARGEST_LOG_STEP, LARGEST_LOG_STEP)
        there = np.clip(x[live] + step, low[live], high[live])
        then = _looked(seen, [faults[row] for row in live], there)
        better = _figure(points, then[0], prior[live], there)
        won = figure[live] - better
        good = won > 0
        rows = live[good]
        x[rows], figure[rows] = there[good], better[good]
        squares[rows], normal[rows], slope[rows] = (one[good] for one in then)
        damping[live] *= np.where(good, fall, rise)
        live = live[~((won >= 0) & (won < ENOUGH)) & (damping[live] <= end)]
        if not live.size:
            break
    curved = normal / (squares / points + FLOOR**2)[:, None, None]
    diagonal = np.arange(x.shape[1], dtype=np.int64)
    curved[:, diagonal, diagonal] += prior + TINY
    covariance = np.linalg.inv(curved)
    found = []
    for row, (fault, guess) in enumerate(zip(faults, guesses, strict=True)):
        own = count + guess.logs.size
        found.append(
            Fit(
                fault,
                x[row, :count],
                x[row, count:own],
                float(figure[row]),
                float(squares[row]),
                covariance[row, :own, :own],
                points,
            )
        )
    return found


def _figure(points: int, squares: Number, prior: Number, x: Number) -> Number:
    return points * np.log(squares / points + FLOOR**2) + (prior * x**2).sum(axis=-1)


def products(some: Number, others: Number) -> Number:
    """Of each row of some with each of others, real and imaginary parts as numbers of their own."""
    some, others = some.view(np.float64), others.view(np.float64).swapaxes(-1, -2)
    step = max(ALONE // (some.shape[-2] * others.shape[-1]), 1)
    parts = [slice(start, start + step) for start in range(0, some.shape[-1], step)]
    return sum(some[..., part] @ others[..., part, :] for part in parts)


class Sensitivities(NamedTuple):
    """What a fit misses, and how its reflection moves: (numbers or places, frequencies)."""

    missing: Number
    by_number: Number
    """Of the good parts."""
    by_ohm: Number
    """A resistance in series behind a piece."""
    by_siemens: Number
    """A conductance across the line there."""


def sensitivities(seen: Seen, fit: Fit, places: list[int]) -> Sensitivities:
    """Those of a fit, at some pieces."""
    faults, x = [None if fit.fault is None else seen.faults[fit.fault.index]], _start([fit.guess], seen.line.count)
    solved = _solved(seen, faults, x)
    by_ohm, by_siemens = [], []
    for at in places:
        port = solved.ports[at]
        changes = [TwoPort(0.0, port.a, 0.0, port.c), TwoPort(port.b, 0.0, port.d, 0.0)]
        ohm, siemens = solved.planes.slopes(at, port, changes)
        by_ohm.append(ohm[0])
        by_siemens.append(siemens[0])
    missing = seen.measured - solved.planes.reflection(0, solved.ports[0])[0]
    by_number = _slopes(seen, faults, x, solved)[0, : seen.line.count]
    return Sensitivities(missing, by_number, np.array(by_ohm), np.array(by_siemens))


class _Solved(NamedTuple):
    """Every start's line: its pieces with the faults in them and without, and the waves."""

    own: list[TwoPort]
    ports: list[TwoPort]
    planes: Planes


def _start(guesses: Sequence[Guess], count: int) -> Number:
    """All numbers of each start; a size that a fault does not have stays at 0."""
    x = np.zeros((len(guesses), count + MOST_SIZES), dtype=np.float64)
    for row, guess in enumerate(guesses):
        x[row, :count], x[row, count : count + guess.logs.size] = guess.values, guess.logs
    return x


def _looked(seen: Seen, faults: Sequence[Fault | None], x: Number) -> tuple[Number, Number, Number]:
    """Squares of what is missing, products of the slopes with each other and with what is missing."""
    solved = _solved(seen, faults, x)
    missing = seen.measured - solved.planes.reflection(0, solved.ports[0])
    slopes = _slopes(seen, faults, x, solved)
    return (np.abs(missing) ** 2).sum(axis=-1), products(slopes, slopes), products(slopes, missing[:, None])[..., 0]


def _solved(seen: Seen, faults: Sequence[Fault | None], x: Number) -> _Solved:
    line = seen.line
    values, sizes = x[:, : line.count].T[..., None], np.exp(x[:, line.count :])
    own = line.ports(values)
    ports = [_with_faults(at, port, faults, sizes) for at, port in enumerate(own)]
    return _Solved(own, ports, Planes.of(ports, line.end(values), line.impedance_ohm))


def _with_faults(at: int, port: TwoPort, faults: Sequence[Fault | None], sizes: Number) -> TwoPort:
    """A piece, or a change of it, with the fault of each start that stands in it."""
    rows = [row for row, fault in enumerate(faults) if fault and fault.at == at]
    if not rows:
        return port
    shape = np.broadcast_shapes((len(faults), 1), *(one.shape for one in port[:4]))
    port = TwoPort(*(np.broadcast_to(one, shape) for one in port[:4]))
    whole = TwoPort(*(one.copy() for one in port[:4]))
    for row in rows:
        for parts, one in zip(whole[:4], _put(faults[row], _row(port, row), sizes[row])[:4], strict=True):
            parts[row] = one
    return whole


def _put(fault: Fault, own: TwoPort, sizes: Number) -> TwoPort:
    return fault.port(own, list(sizes[: len(fault.kind.sizes)]))


def _row(port: TwoPort, row: int) -> TwoPort:
    return TwoPort(*(one[row] for one in port[:4]))


def _slopes(seen: Seen, faults: Sequence[Fault | None], x: Number, solved: _Solved) -> Number:
    """How the reflection of each start moves with its numbers: (starts, numbers, frequencies)."""
    line = seen.line
    values, sizes = x[:, : line.count].T[..., None], np.exp(x[:, line.count :])
    found = np.zeros((*x.shape, seen.measured.size), dtype=np.complex128)
    for at, piece in enumerate(line.pieces):
        changes = piece.slopes(line.unknowns(values, at), solved.own[at])
        changes = [_with_faults(at, TwoPort(*one[:4]), faults, sizes) for one in changes]
        moved = solved.planes.slopes(at, solved.ports[at], changes)
        for one, (which, share) in enumerate(piece.shares):
            found[:, line.starts[at] + one] = moved[which] * share
    end = solved.planes.end_slope(solved.ports[-1])
    for one, term in enumerate(line.load_terms):
        found[:, line.starts[-1] + one] = end * term
    for row, fault in enumerate(faults):
        for one in range(len(fault.kind.sizes) if fault else 0):
            now, moved = _row(solved.ports[fault.at], row), sizes[row].copy()
            moved[one] *= np.exp(STEP)
            then = _put(fault, _row(solved.own[fault.at], row), moved)
            change = TwoPort(*((new - old) / STEP for new, old in zip(then[:4], now[:4], strict=True)))
            found[row, line.count + one] = solved.planes.alone(fault.at, row).slopes(0, now, [change])[0]
    return found
