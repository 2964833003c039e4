"""Every part of a line at the frequency looked at: losses, stresses, temperature, margins; and the weakest."""

from typing import NamedTuple

import numpy as np

from ..feedline.feedline import Feedline
from ..feedline.link import Link, LinkModel
from ..feedline.part import PartLink
from ..feedline.solve import Solutions, largest_power_w, margins
from ..feedline.tuner import TunerModel
from ..feedline.tuner_state import TunerState, tuner_state
from ..formulas import voltage
from ..formulas.formula import Broadcast
from ..formulas.meter import least_reading, most_reading
from ..numeric.json_numbers import fine, number, share_of
from ..physics.limits import LimitId
from ..physics.ratings import CAUTIOUS, GENEROUS
from .quantities import loss_db, vswr
from .results import LinePart

__all__ = ["Weakest", "line_parts", "weakest_of"]

TIGHT_DB = 3.0
"""A margin below it is called tight."""


class Weakest(NamedTuple):
    """The smallest margin over the parts and its optimistic end [dB], none for a line that is refused."""

    margin_db: float | None
    margin_high_db: float | None
    part: int | None
    """Index of the part that binds, or of the first that is refused."""
    undecided: bool
    """Whether the two ends of the margin differ in sign."""


def line_parts(feedline: Feedline, solutions: Solutions, power_w: float) -> list[LinePart]:
    """Every part under `power_w` [W], by the line solved at the one frequency looked at."""
    return [_part(feedline, index, solutions, power_w) for index in range(len(feedline.links))]


def weakest_of(parts: list[LinePart]) -> Weakest:
    """The part that decides about the line."""
    refused = next((index for index, part in enumerate(parts) if part.refused_by), None)
    if refused is not None:
        return Weakest(None, None, refused, False)
    low = np.nan_to_num(_floats([part.margin_db for part in parts]), nan=np.inf)
    high = np.nan_to_num(_floats([part.margin_high_db for part in parts]), nan=np.inf)
    if not np.isfinite(low).any():
        return Weakest(None, None, None, False)
    return Weakest(float(low.min()), number(high.min()), int(low.argmin()), bool(low.min() < 0 <= high.min()))


def _part(feedline: Feedline, index: int, solutions: Solutions, power_w: float) -> LinePart:
    link, frequency = feedline.links[index], np.array([feedline.frequency_hz])
    by_end = np.sort([margins(solution.allowed[index], power_w)[:, 0] for solution in solutions], axis=0)
    gates = link.gates(feedline.frequency_hz, power_w)
    refusing = next((gate for gate in gates if gate.hard and not gate.passed), None)
    low, high = (number(margin) for margin in by_end.min(axis=1))
    stress = solutions.cautious.stresses[index]
    model, z_0 = link.models[CAUTIOUS], feedline.station.impedance_ohm
    waves, expected = solutions.cautious.waves, solutions.generous.waves.power_w[:, 0]
    by_limits = min(float(largest_power_w(solution.allowed[index])[0]) for solution in solutions)
    largest = min(by_limits, float(link.house_power_w(frequency)[0]))
    heat = model.heat(frequency, stress)
    return_loss = model.return_loss_db(frequency)
    limits: list[LimitId] = [model.heat_limit, "voltage"]
    likely = link.models[GENEROUS]
    looks_at = solutions.generous.waves.reflection(z_0)[index + 1]
    return LinePart(
        element=link.element,
        kind=link.kind,
        name=link.name,
        family=link.family or None,
        pack=link.pack,
        distance_m=feedline.distance_m(index),
        loss_db=loss_db(expected[index + 1] / expected[index]),
        matched_loss_db=fine(np.ravel(likely.settled(frequency, looks_at).matched_loss_db(frequency))[0]),
        lost_w=share_of(power_w, expected[index] - expected[index + 1]),
        forward_w=number(np.abs(waves.forward(z_0)[index, 0]) ** 2 * power_w),
        reflected_w=share_of(power_w, np.abs(waves.backward(z_0)[index, 0]) ** 2),
        vswr=vswr(waves.reflection(z_0)[index, 0]),
        peak_voltage_v=number(voltage.peak_voltage(power_w, z_0, stress.voltage_factor[0])),
        allowed_voltage_v=number(model.peak_v),
        peak_current_a=number(np.sqrt(2 * power_w * stress.current_factor[0] / z_0)),
        temperature_c=None if heat is None else number(np.ravel(heat.temperature_c(power_w, model.station))[0]),
        allowed_temperature_c=None if heat is None else float(np.ravel(heat.allowed_temperature_c)[0]),
        margin_db=None if refusing else low,
        margin_high_db=None if refusing else high,
        undecided=not refusing and low is not None and high is not None and low < 0 <= high,
        binding=limits[int(by_end[0].argmin())] if not refusing and low is not None else None,
        margin_by_limit_db=dict(zip(limits, map(number, by_end[0]), strict=True)),
        return_loss_db=None if return_loss is None else number(np.ravel(return_loss)[0]),
        largest_power_w=None if refusing else number(largest),
        reads_vswr=_reading(link, looks_at[0]),
        tuner=_tuner(likely, solutions, index, frequency, power_w),
        refused_by=refusing.id if refusing else None,
        refusal=refusing.sentence if refusing else "",
        marks=link.marks
        + [gate.sentence for gate in gates if not gate.hard and not gate.passed]
        + _limit_marks(link.at_voltage_limit, by_end[0, 1])
        + _match_marks(link.name, return_loss, model.station.return_loss_asked_db),
    )


def _limit_marks(sentence: str, voltage_margin_db: float) -> list[str]:
    """What happens at a voltage limit that is near [dB], where that is no breakdown."""
    return [sentence] if sentence and voltage_margin_db < TIGHT_DB else []


def _reading(link: Link, behind: complex) -> list[float | None] | None:
    """Least and most VSWR that a meter shows for the reflection behind it."""
    if not isinstance(link, PartLink) or link.directivity_db is None:
        return None
    size = float(np.abs(behind))
    return [vswr(reading(size, link.directivity_db)) for reading in (least_reading, most_reading)]


def _tuner(
    model: LinkModel, solutions: Solutions, plane: int, frequency: np.ndarray, power_w: float
) -> TunerState | None:
    """How a tuner is set for what is expected."""
    if not isinstance(model, TunerModel):
        return None
    return tuner_state(model, solutions.generous.waves, plane, frequency, power_w)


def _match_marks(name: str, return_loss_db: Broadcast | None, asked_db: float) -> list[str]:
    """A sentence where a part alone, by its cautious figures, misses the return loss [dB] asked for."""
    if return_loss_db is None or not np.ravel(return_loss_db)[0] < asked_db:
        return []
    alone_db = float(np.ravel(return_loss_db)[0])
    return [f"{name} alone has a return loss of {alone_db:.1f} dB; asked: {asked_db:g} dB."]


def _floats(values: list[float | None]) -> np.ndarray:
    return np.array([np.nan if value is None else value for value in values], dtype=np.float64)
