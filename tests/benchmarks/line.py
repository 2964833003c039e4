"""Time and memory of a whole line and of its random draws, each against a named baseline in the same run.

Run with `python tests/benchmarks/line.py`. Prints medians of repeated runs, ratios and the largest
difference between what is compared.
"""

import json
import statistics
import time
import tracemalloc
from collections.abc import Callable
from functools import reduce

import msgspec
import numpy as np
import skrf
from skrf.media import DefinedGammaZ0

from jointwise.calc.feedline.elements import CableRun, GivenVswr, Joint, Part
from jointwise.calc.feedline.feedline import feedline_of
from jointwise.calc.feedline.solve import solve
from jointwise.calc.line.line import line
from jointwise.calc.line.requests import LineRequest
from jointwise.calc.numeric.draws import Stream
from jointwise.calc.operations import call
from jointwise.calc.spread.random_line import RandomLine
from jointwise.calc.spread.requests import SpreadRequest
from jointwise.calc.spread.spread import BLOCK, spread
from jointwise.calc.waves.two_port import TwoPort, cascade, drive, line_section, scattering

Z_0 = 50.0
POINTS, SECTIONS = 10_001, 25
DRAWS, BANDS, ELEMENTS = 10_000, 16, 20
FEW = 20
"""Draws of the slow baseline; its time is scaled up."""

PARTS = [
    Joint(family="n"),
    CableRun(cable="rg_213", length_m=20.0),
    Joint(family="uhf"),
    Part(loss_db=0.2, vswr=1.2),
    Joint(family="bnc"),
]
LINE = LineRequest(elements=PARTS * (ELEMENTS // len(PARTS)), load=GivenVswr(vswr=2.0), band="2m")


def seconds(work: Callable[[], object], times: int) -> float:
    """Median wall time of `work` over `times` runs after one warm-up."""
    work()
    durations = []
    for _ in range(times):
        start = time.perf_counter()
        work()
        durations.append(time.perf_counter() - start)
    return statistics.median(durations)


def row(name: str, taken: float, against: float | None = None) -> None:
    """Print one line of a table: milliseconds, and how many times faster than the baseline."""
    ratio = "" if against is None else f"{against / taken:12.2f}"
    print(f"  {name:58}{taken * 1e3:12.3f}{ratio}")


def cascades() -> None:
    """A chain of lines of many impedances, ready made, multiplied by scikit-rf and by the core."""
    frequency = np.linspace(1e6, 1e9, POINTS)
    gamma = 1e-7 * np.sqrt(frequency) + 2j * np.pi * frequency / 2e8
    band = skrf.Frequency.from_f(frequency, unit="Hz")
    impedances, lengths = np.linspace(30, 90, SECTIONS), np.linspace(0.1, 2, SECTIONS)
    networks = [
        DefinedGammaZ0(band, gamma=gamma, z0=impedance, z0_port=Z_0).line(length, "m")
        for impedance, length in zip(impedances, lengths, strict=True)
    ]
    ports = [line_section(np.complex128(z), gamma * length) for z, length in zip(impedances, lengths, strict=True)]
    load = np.full(POINTS, 1 / 3, dtype=complex)
    theirs = reduce(lambda one, other: one**other, networks).s
    ours = np.moveaxis(np.array(scattering(cascade(ports), Z_0)), 0, -1).reshape(-1, 2, 2)
    print(f"{SECTIONS} two-ports at {POINTS} frequencies; largest difference {np.abs(ours - theirs).max():.1e}")
    baseline = seconds(lambda: reduce(lambda one, other: one**other, networks), 3)
    row("scikit-rf, networks connected", baseline)
    row("core, cascade and scattering parameters", seconds(lambda: scattering(cascade(ports), Z_0), 20), baseline)
    row("core, waves at every plane", seconds(lambda: drive(ports, load, Z_0, net=False), 20), baseline)


def bare_products(draws: int) -> None:
    """Elementwise complex 2x2 products of one block after another, and nothing else: no core can be quicker."""
    shape = (BLOCK, BANDS)
    one = np.full(shape, 0.6 + 0.1j)
    for _ in range(0, draws, BLOCK):
        v, i = one, one
        for _ in range(ELEMENTS):
            v, i = one * v + one * i, one * v + one * i


def draw_by_draw(made: RandomLine, draws: int) -> np.ndarray:
    """The same draws one at a time: the same two-ports, numpy over the bands, a Python loop over the draws."""
    random = Stream(1, 0)
    reflections = []
    for _ in range(draws):
        load = made.feedline.load.at(made.frequency, random.uniform(1))[0]
        drawn = [link.draw(random, 1)[:4] for link in made.links]
        ports = [TwoPort(*(np.broadcast_to(one, (1, BANDS))[0] for one in port)) for port in drawn]
        reflections.append(drive(ports, load, Z_0, net=False).reflection(Z_0)[0])
    return np.array(reflections)


def draws() -> None:
    """Random draws of a line of many elements in all bands."""
    request = SpreadRequest(elements=LINE.elements, load=LINE.load, band="2m", draws=DRAWS)
    made = RandomLine(request, feedline_of(request), np.geomspace(1e6, 1e9, BANDS))

    def in_blocks() -> None:
        for number in range(DRAWS // BLOCK):
            made.block(Stream(1, number), BLOCK)

    baseline = seconds(lambda: draw_by_draw(made, FEW), 3) * DRAWS / FEW
    bare = seconds(lambda: bare_products(DRAWS), 5)
    print(f"{DRAWS} draws x {BANDS} bands x {ELEMENTS} elements")
    row(f"one draw after another in Python, {FEW} measured and scaled", baseline)
    row("bare numpy: 2x2 matrix on vector, nothing else", bare, baseline)
    taken = seconds(in_blocks, 5)
    row("core: random numbers, two-ports, waves, margins", taken, baseline)
    row("core: the whole operation with its percentiles", seconds(lambda: spread(request), 5), baseline)
    print(f"  core over bare numpy: {taken / bare:.2f}")


def memory() -> None:
    """Peak memory of the draws."""
    print("peak memory of the draws")
    for count in (2_000, 10_000, 30_000):
        request = SpreadRequest(elements=LINE.elements, load=LINE.load, band="2m", draws=count)
        tracemalloc.start()
        spread(request)
        peak = tracemalloc.get_traced_memory()[1]
        tracemalloc.stop()
        print(f"  {count:>7} draws{peak / 1e6:58.2f} MB")


def answer() -> None:
    """The full answer about a line against nothing but its waves."""
    body, built = msgspec.json.encode(LINE), feedline_of(LINE)
    grid = np.geomspace(1e6, 1e9, 9 * BANDS)
    ports = [link.models[0].two_port(grid) for link in built.links]
    load = built.load.likely(grid)[0]
    bare = seconds(lambda: [drive(ports, load, Z_0, net=False) for _ in range(2)], 50)
    print(f"a line of {len(LINE.elements)} elements with {len(json.loads(call('line', body))['changes'])} exchanges")
    row(f"bare waves at {grid.size} frequencies, both ends of the ratings", bare)
    row("solved with stresses and limits, both ends", seconds(lambda: [solve(built, grid, end) for end in (0, 1)], 20))
    row("the answer", seconds(lambda: line(LINE), 10))
    whole = seconds(lambda: call("line", body), 10)
    row("the answer, JSON to JSON", whole)
    print(f"  answer over bare waves: {whole / bare:.0f}")


def main() -> None:
    """Print all tables."""
    print(f"{'':60}{'ms':>12}{'faster by':>12}")
    for table in (cascades, draws, memory, answer):
        table()


if __name__ == "__main__":
    main()
