"""What the line costs on receive: noise from outside, of the lossy parts and of the receiver."""

from typing import NamedTuple

import numpy as np

from ..catalogue import catalogue
from ..errors import InputError, known
from ..feedline.feedline import Feedline
from ..formulas import line, noise
from ..physics.ratings import GENEROUS
from ..waves.two_port import drive, reverse
from .requests import Receiver

__all__ = ["ReceiveCosts", "external_noise_db", "receive_costs"]


class ReceiveCosts(NamedTuple):
    """Over frequency, the last axis."""

    external_db: np.ndarray
    """External noise figure [dB]."""
    system_db: np.ndarray
    """Noise figure of antenna, line and receiver together [dB]."""
    mismatch_db: np.ndarray
    """Signal-to-noise ratio given away by the mismatch between antenna and line [dB]."""
    links_db: list[np.ndarray]
    """By each link of the chain, from the transmitter's end [dB]."""
    half_decibel_db: np.ndarray
    """By half a decibel more of loss at the antenna [dB]."""
    whole_db: np.ndarray
    """By everything between the antenna and a receiver that could stand right at it [dB]."""


class _Stage(NamedTuple):
    """A stage of the receive path: noise factor and available gain [1]."""

    factor: np.ndarray
    gain: np.ndarray


def receive_costs(feedline: Feedline, receiver: Receiver, frequency: np.ndarray) -> ReceiveCosts:
    """Signal-to-noise cost of every part at frequencies [Hz].

    Raises InputError when the preamplifier stands at an element that is not
    there, or the environment is unknown.
    """
    external_db = external_noise_db(receiver.environment, frequency)
    stages, stage_of_link = _stages(feedline, receiver, frequency)
    last = line.power_ratio(receiver.noise_figure_db)
    behind = [last]
    for stage in reversed(stages):
        behind.insert(0, noise.cascade_noise_factor(stage.factor, behind[0], stage.gain))
    external = line.power_ratio(external_db)
    system = external + behind[0] - 1
    front, gain, without = 1.0, 1.0, []
    for at, stage in enumerate(stages):
        without.append(external + noise.cascade_noise_factor(front, behind[at + 1], gain) - 1)
        front = noise.cascade_noise_factor(front, stage.factor, gain)
        gain = gain * stage.gain
    costs = [noise.snr_cost(system, other) for other in without]
    return ReceiveCosts(
        external_db=external_db,
        system_db=line.decibels(system),
        mismatch_db=costs[0],
        links_db=[costs[stage_of_link[at]] for at in range(len(feedline.links))],
        half_decibel_db=noise.snr_cost(_behind_half_a_decibel(external, behind[0], feedline), system),
        whole_db=noise.snr_cost(system, external + last - 1),
    )


def _behind_half_a_decibel(external: np.ndarray, line_on: np.ndarray, feedline: Feedline) -> np.ndarray:
    """Noise factor of the system when a part that loses half a decibel is put in front of all."""
    loss = line.power_ratio(0.5)
    part = noise.lossy_noise_factor(loss, feedline.station.ambient_temperature_c)
    return external + noise.cascade_noise_factor(part, line_on, 1 / loss) - 1


def external_noise_db(environment: str, frequency: np.ndarray) -> np.ndarray:
    """Median noise around the antenna over k T_0 b [dB]; beyond the Recommendation's range its line is drawn on."""
    tables = catalogue().noise_environments
    known("receiver.environment", environment, tables)
    man_made, galactic = (
        noise.external_noise_figure(one.median_at_1_mhz_db.value, one.fall_per_decade_db.value, frequency)
        for one in (tables[environment], tables["galactic"])
    )
    return noise.external_noise_floor(man_made, galactic)


def _stages(feedline: Feedline, receiver: Receiver, frequency: np.ndarray) -> tuple[list[_Stage], dict[int, int]]:
    """The stages from the antenna to the receiver's input, and the stage of each link."""
    ports = [link.models[GENEROUS].two_port(frequency) for link in feedline.links]
    matched = np.zeros(np.shape(frequency))
    waves = drive([reverse(port) for port in reversed(ports)], matched, feedline.station.impedance_ohm, net=True)
    power = waves.power_w
    antenna, into = feedline.load(frequency), waves.reflection(feedline.station.impedance_ohm)[0]
    accepted = (1 - np.abs(antenna) ** 2) * (1 - np.abs(into) ** 2) / np.abs(1 - antenna * into) ** 2
    # a mismatch turns noise away with the signal and adds none
    stages, stage_of_link = [_Stage(np.ones_like(accepted), accepted)], {}
    preamplifier, waiting = receiver.preamplifier, receiver.preamplifier is not None
    for step, at in enumerate(range(len(feedline.links) - 1, -1, -1)):
        stage_of_link[at] = len(stages)
        loss = np.maximum(power[step] / power[step + 1], 1.0)
        stages.append(_Stage(noise.lossy_noise_factor(loss, feedline.station.ambient_temperature_c), 1 / loss))
        if waiting and _is_behind(feedline, at, preamplifier.before_element):
            stages.insert(len(stages) - 1, _amplifier(preamplifier))
            stage_of_link[at] += 1
            waiting = False
    if waiting:
        last = max(link.element for link in feedline.links)
        raise InputError("receiver.preamplifier.before_element", preamplifier.before_element, f"0 to {last}")
    return stages, stage_of_link


def _is_behind(feedline: Feedline, at: int, element: int) -> bool:
    """Whether the link is the first of the element that the signal from the antenna meets."""
    later = feedline.links[at + 1] if at + 1 < len(feedline.links) else None
    return feedline.links[at].element == element and (later is None or later.element != element)


def _amplifier(preamplifier) -> _Stage:
    return _Stage(line.power_ratio(preamplifier.noise_figure_db), line.power_ratio(preamplifier.gain_db))
