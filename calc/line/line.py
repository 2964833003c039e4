"""The line as an answer: losses, stresses and margins of every part, over all bands, in receive, and what helps."""

from typing import Any, NamedTuple

import numpy as np

from ..catalogue import catalogue
from ..errors import InputError
from ..feedline.feedline import Feedline, Link, feedline_of
from ..feedline.joint import joint_model
from ..feedline.solve import Solution, house_allows, largest_power_w, margins, refused, solve
from ..feedline.stress import Stress
from ..formulas import heat, voltage
from ..formulas.formula import Step, recording
from ..formulas.line import decibels
from ..formulas.match import return_loss, vswr_of_reflection
from ..numeric.json_numbers import fine, number, numbers, share_of
from ..numeric.units import engineering
from ..physics.cautions import CAUTIONS
from ..physics.columns import Column, columns
from ..physics.gates import GateResult, gate_results, heat_room
from ..physics.margins import LIMITS
from ..physics.ratings import CAUTIOUS, ENDS, GENEROUS, family_ratings
from ..waves.two_port import scattering
from .changes import changes
from .reception import receive_costs
from .requests import LineRequest
from .results import BandLine, LinePart, LineResult, LineSweep, Reception, ReceptionCost, StandingWave, Terminal

__all__ = ["POINTS_PER_BAND", "line"]

POINTS_PER_BAND = 9
POINTS_PER_CABLE = 81


@np.errstate(divide="ignore", invalid="ignore", over="ignore")  # no number becomes null
def line(request: LineRequest) -> LineResult:
    """Solve a line. Raises InputError, one sentence naming the element, for one that can't be solved."""
    feedline = feedline_of(request)
    if request.explain is not None and request.explain >= len(request.elements):
        raise InputError("explain", request.explain, f"0 to {len(request.elements) - 1}, the elements of the line")
    frequency = np.array([feedline.frequency_hz])
    now = (solve(feedline, frequency, CAUTIOUS), solve(feedline, frequency, GENEROUS))
    if not all(np.isfinite(solution.waves.power_w).all() for solution in now):
        at = f"no power passed at {engineering(feedline.frequency_hz, 'Hz')}"
        raise InputError("elements", at, "parts that let some of the power through")
    parts = [_part(request, feedline, at, now) for at in range(len(feedline.links))]
    bands = columns(request.region, None, [])
    swept = _swept(feedline, bands, request.power_w)
    margin, margin_high, weakest, undecided = _smallest(parts)
    largest = [part.largest_power_w for part in parts]
    # a refused part has no largest power, and so the line has none
    limited = [at for at, one in enumerate(largest) if one is not None]
    whole = limited and all(part.refused_by is None for part in parts)
    set_by = min(limited, key=lambda at: largest[at]) if whole else None
    expected, cautious = (float(solution.waves.power_w[-1, 0]) for solution in reversed(now))
    return LineResult(
        column=feedline.column,
        frequency_hz=feedline.frequency_hz,
        power_w=request.power_w,
        delivered_w=number(expected * request.power_w),
        delivered_low_w=number(cautious * request.power_w),
        loss_db=_decibels(expected),
        loss_high_db=_decibels(cautious),
        mismatch_db=_decibels(now[GENEROUS].waves.power_w[0, 0]),
        input=_terminal(
            now[GENEROUS].waves.reflection(feedline.station.impedance_ohm)[0, 0], feedline.station.impedance_ohm
        ),
        antenna=_terminal(feedline.load(frequency)[0], feedline.station.impedance_ohm),
        margin_db=margin,
        margin_high_db=margin_high,
        undecided=undecided,
        weakest=weakest,
        largest_power_w=None if set_by is None else largest[set_by],
        largest_power_set_by=set_by,
        verdict=_verdict(request, feedline, parts, margin, margin_high, weakest, expected),
        parts=parts,
        standing_wave=_standing_wave(feedline, now[CAUTIOUS], request.power_w),
        sweep=_sweep(feedline, swept),
        bands=_bands(feedline, swept),
        reception=_reception(request, feedline, bands),
        changes=changes(request, feedline, now),
        steps=[] if request.explain is None else _steps(request, feedline, now),
        cautions=CAUTIONS,
    )


def _part(request: LineRequest, feedline: Feedline, at: int, now: tuple[Solution, Solution]) -> LinePart:
    link, power_w, frequency = feedline.links[at], request.power_w, np.array([feedline.frequency_hz])
    by_end = np.sort([margins(solution.allowed[at], power_w)[:, 0] for solution in now], axis=0)
    gates = _gates(link, feedline.frequency_hz, power_w)
    refusing = next((gate for gate in gates if gate.hard and not gate.passed), None)
    low, high = (number(margin) for margin in by_end.min(axis=1))
    stress = now[CAUTIOUS].stresses[at]
    model, z_0 = link.models[CAUTIOUS], feedline.station.impedance_ohm
    waves, expected = now[CAUTIOUS].waves, now[GENEROUS].waves.power_w[:, 0]
    through = scattering(link.models[GENEROUS].two_port(frequency), z_0)[2]
    by_limits = min(float(largest_power_w(solution.allowed[at])[0]) for solution in now)
    largest = min(by_limits, float(house_allows(link, frequency)[0]))
    temperature, allowed_temperature = _temperatures(link, model, stress, feedline, power_w)
    return LinePart(
        element=link.element,
        kind=link.kind,
        name=link.name,
        family=link.family,
        pack=link.pack,
        distance_m=_distance(feedline, at),
        loss_db=_decibels(expected[at + 1] / expected[at]),
        matched_loss_db=_decibels(np.abs(np.ravel(through)[0]) ** 2),
        lost_w=share_of(power_w, expected[at] - expected[at + 1]),
        forward_w=number(np.abs(waves.forward(z_0)[at, 0]) ** 2 * power_w),
        reflected_w=share_of(power_w, np.abs(waves.backward(z_0)[at, 0]) ** 2),
        vswr=_vswr(waves.reflection(z_0)[at, 0]),
        peak_voltage_v=number(voltage.peak_voltage(power_w, z_0, stress.voltage_factor[0])),
        allowed_voltage_v=_allowed_voltage(link),
        peak_current_a=number(np.sqrt(2 * power_w * stress.current_factor[0] / z_0)),
        temperature_c=temperature,
        allowed_temperature_c=allowed_temperature,
        margin_db=None if refusing else low,
        margin_high_db=None if refusing else high,
        undecided=not refusing and low is not None and high is not None and low < 0 <= high,
        binding=LIMITS[int(by_end[0].argmin())] if not refusing and low is not None else None,
        margin_by_limit_db=dict(zip(LIMITS, map(number, by_end[0]), strict=True)),
        largest_power_w=None if refusing else number(largest),
        refused_by=refusing.id if refusing else None,
        refusal=refusing.sentence if refusing else "",
        marks=link.marks + [gate.sentence for gate in gates if not gate.hard and not gate.passed],
    )


def _gates(link: Link, frequency_hz: float, power_w: float) -> list[GateResult]:
    model = link.models[CAUTIOUS]
    if link.kind == "cable" and power_w > 0:
        return [heat_room(model.ratings.highest_temperature_c, model.station.ambient_temperature_c)]
    if link.family is None:
        return []
    return gate_results(link.family, link.demands, frequency_hz, power_w, model.station, model.path)


def _temperatures(
    link: Link, model: Any, stress: Stress, feedline: Feedline, power_w: float
) -> tuple[float | None, float | None]:
    """Of the contact or the cable's centre conductor at its hottest place, and the one allowed [°C]."""
    if link.kind == "joint":
        path, rise = model.path, model.path.solar_rise_k
        resistance, share, allowed = path.resistance_k_per_w, path.time_share, path.allowed_temperature_c
    elif link.kind == "cable":
        resistance, share, rise = model.thermal_resistance(), model.station.transmit_share, 0.0
        allowed = model.ratings.highest_temperature_c
    else:
        return None, None
    mean = heat.average_power(power_w, feedline.station.duty_factor, share)
    reached = heat.contact_temperature(
        feedline.station.ambient_temperature_c, rise, mean, 1.0, float(stress.heat_share[0]), resistance
    )
    return number(reached), float(allowed)


def _allowed_voltage(link: Link) -> float | None:
    if link.kind in ("joint", "cable"):
        return number(link.models[CAUTIOUS].peak_v)
    return number(link.models[CAUTIOUS].voltage_limit_v) if link.kind == "part" else None


def _distance(feedline: Feedline, at: int) -> float:
    return float(sum(link.models[CAUTIOUS].length_m for link in feedline.links[:at] if link.kind == "cable"))


def _smallest(parts: list[LinePart]) -> tuple[float | None, float | None, int | None, bool]:
    """Smallest margin and its optimistic end over the parts, the part that binds, and whether the sign is open."""
    if any(part.refused_by for part in parts):
        return None, None, next(at for at, part in enumerate(parts) if part.refused_by), False
    low = np.nan_to_num(_floats([part.margin_db for part in parts]), nan=np.inf)
    high = np.nan_to_num(_floats([part.margin_high_db for part in parts]), nan=np.inf)
    if not np.isfinite(low).any():
        return None, None, None, False
    return float(low.min()), number(high.min()), int(low.argmin()), bool(low.min() < 0 <= high.min())


def _standing_wave(feedline: Feedline, solution: Solution, power_w: float) -> StandingWave:
    distance, volts, amperes = [], [], []
    frequency = np.array([feedline.frequency_hz])
    peak = np.sqrt(2 * power_w)
    for at, link in enumerate(feedline.links):
        if link.kind != "cable":
            continue
        model = link.models[CAUTIOUS]
        places = np.linspace(0, model.length_m, POINTS_PER_CABLE)
        v, i = model.along(solution.waves, at, frequency, places)
        distance += (_distance(feedline, at) + places).tolist()
        volts += numbers(v * peak)
        amperes += numbers(i * peak)
    return StandingWave(distance, volts, amperes)


class _Swept(NamedTuple):
    """The line over all bands, `POINTS_PER_BAND` frequencies [Hz] in each."""

    bands: list[Column]
    frequency: np.ndarray
    solved: tuple[Solution, Solution]
    margins_db: np.ndarray
    """By end, link, limit and frequency."""
    refused: np.ndarray
    """By link and frequency."""


def _swept(feedline: Feedline, bands: list[Column], power_w: float) -> _Swept:
    edges = [band.low_hz for band in bands], [band.high_hz for band in bands]
    frequency = np.linspace(*edges, POINTS_PER_BAND, axis=1).ravel()
    solved = tuple(solve(feedline, frequency, end) for end in (CAUTIOUS, GENEROUS))
    shape = (len(LIMITS), frequency.size)
    by_end = [[np.broadcast_to(margins(one, power_w), shape) for one in solution.allowed] for solution in solved]
    refusing = np.array([refused(feedline, link, frequency, power_w) for link in feedline.links])
    return _Swept(bands, frequency, solved, np.sort(by_end, axis=0), refusing)


def _sweep(feedline: Feedline, swept: _Swept) -> LineSweep:
    smallest = np.where(swept.refused.any(axis=0), np.nan, swept.margins_db[CAUTIOUS].min(axis=(0, 1)))
    waves = swept.solved[GENEROUS].waves
    return LineSweep(
        band=[band.id for band in swept.bands for _ in range(POINTS_PER_BAND)],
        frequency_hz=swept.frequency.tolist(),
        loss_db=numbers(-decibels(waves.power_w[-1])),
        vswr=[_vswr(one) for one in waves.reflection(feedline.station.impedance_ohm)[0]],
        margin_db=numbers(smallest),
    )


def _bands(feedline: Feedline, swept: _Swept) -> list[BandLine]:
    waves = swept.solved[GENEROUS].waves
    loss = -decibels(waves.power_w[-1])
    reflection = np.abs(waves.reflection(feedline.station.impedance_ohm)[0])
    allowed = [largest_power_w(one) for solution in swept.solved for one in solution.allowed]
    allowed += [house_allows(link, swept.frequency) for link in feedline.links]
    largest = np.min([np.broadcast_to(one, swept.frequency.shape) for one in allowed], axis=0)
    answers = []
    for row, band in enumerate(swept.bands):
        at = slice(row * POINTS_PER_BAND, (row + 1) * POINTS_PER_BAND)
        gone = np.flatnonzero(swept.refused[:, at].any(axis=1)).tolist()
        low = swept.margins_db[CAUTIOUS][..., at].min(axis=2)
        known = np.isfinite(low).any() and not np.isnan(low).any() and not gone
        weakest, limit = np.unravel_index(int(np.nan_to_num(low, nan=np.inf).argmin()), low.shape)
        answers.append(
            BandLine(
                column=band,
                loss_db=number(loss[at].max()),
                vswr=_vswr(reflection[at].max()),
                margin_db=number(low.min()) if known else None,
                margin_high_db=number(swept.margins_db[GENEROUS][..., at].min()) if known else None,
                weakest=int(weakest) if known else None,
                binding=LIMITS[int(limit)] if known else None,
                largest_power_w=number(largest[at].min()) if known else None,
                refused=gone,
            )
        )
    return answers


def _reception(request: LineRequest, feedline: Feedline, bands: list[Column]) -> Reception:
    middles = [(band.low_hz + band.high_hz) / 2 for band in bands]
    costs = receive_costs(feedline, request.receiver, np.array([feedline.frequency_hz, *middles]))
    rows = [(None, "Mismatch at the antenna", costs.mismatch_db)]
    rows += [(at, link.name, costs.links_db[at]) for at, link in enumerate(feedline.links)]
    return Reception(
        environment=catalogue().noise_environments[request.receiver.environment].name,
        external_noise_db=number(costs.external_db[0]),
        system_noise_db=number(costs.system_db[0]),
        costs=[ReceptionCost(at, name, fine(cost[0])) for at, name, cost in rows],
        whole_cost_db=fine(costs.whole_db[0]),
        bands=[band.id for band in bands],
        half_decibel_cost_by_band_db=[fine(cost) for cost in costs.half_decibel_db[1:]],
        whole_cost_by_band_db=[fine(cost) for cost in costs.whole_db[1:]],
        costs_by_band_db=[[fine(one) for one in cost[1:]] for _, _, cost in rows],
    )


def _steps(request: LineRequest, feedline: Feedline, now: tuple[Solution, Solution]) -> list[Step]:
    """The calls behind the margins of one element, both ends of the ratings."""
    steps = []
    for end, solution in zip(ENDS, now, strict=True):
        with recording(end) as recorded:
            for at, link in enumerate(feedline.links):
                if link.element == request.explain:
                    _derive(link, ENDS.index(end), feedline.frequency_hz, solution.stresses[at], request.power_w)
        steps += recorded
    return steps


def _derive(link: Link, end: int, frequency: float, stress: Stress, power_w: float) -> None:
    model = link.models[end]
    if link.kind == "joint":
        model = joint_model(
            family_ratings(link.family, ENDS[end]), model.station
        )  # again, so that the heat path is recorded
    if link.kind == "cable":
        model.constants(frequency)
    if link.kind != "measured":
        allowed = model.allowed(frequency, Stress(*(float(value[0]) for value in stress)))
        if power_w > 0:
            for one in allowed[:2]:
                if np.isfinite(one) and one > 0:
                    heat.margin(float(one), power_w)


def _verdict(
    request: LineRequest,
    feedline: Feedline,
    parts: list[LinePart],
    margin: float | None,
    margin_high: float | None,
    weakest: int | None,
    delivered: float,
) -> str:
    if request.power_w == 0:
        start = f"On {feedline.column.name} the line loses {_decibels(delivered) or 0:.2f} dB."
    else:
        start = (
            f"On {feedline.column.name} {engineering(delivered * request.power_w, 'W')} of"
            f" {engineering(request.power_w, 'W')} reach the antenna."
        )
    if weakest is None:
        return start
    name = parts[weakest].name
    if parts[weakest].refused_by:
        return f"{start} {name} is refused. {parts[weakest].refusal}"
    if margin >= 0:
        return f"{start} The weakest part is {name} with {margin:.1f} dB of room."
    if margin_high is not None and margin_high >= 0:
        return (
            f"{start} Undecided: the cautious sources put {name} {-margin:.1f} dB over its limit,"
            f" the generous ones leave {margin_high:.1f} dB."
        )
    return f"{start} {name} is {-margin:.1f} dB over its limit."


def _terminal(reflection: complex, impedance: float) -> Terminal:
    seen = impedance * (1 + np.complex128(reflection)) / (1 - np.complex128(reflection))
    return Terminal(
        vswr=_vswr(reflection),
        return_loss_db=fine(return_loss(np.abs(reflection))),
        resistance_ohm=fine(seen.real),
        reactance_ohm=fine(seen.imag),
    )


def _vswr(reflection: complex) -> float | None:
    magnitude = float(np.abs(reflection))
    return fine(vswr_of_reflection(magnitude)) if magnitude < 1 else None


def _decibels(ratio: float) -> float | None:
    """Loss of a power ratio out over in [dB]; none where nothing comes out."""
    return fine(-decibels(ratio)) if np.isfinite(ratio) and ratio > 0 else None


def _floats(values: list[float | None]) -> np.ndarray:
    return np.array([np.nan if value is None else value for value in values], dtype=np.float64)
