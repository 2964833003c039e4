"""What the line costs on receive: noise from outside, of the lossy parts and of the receiver."""

from typing import NamedTuple

import numpy as np

from ..catalogue import catalogue
from ..errors import InputError
from ..feedline.feedline import Feedline
from ..feedline.solve import settled
from ..formulas import line, noise
from ..formulas.formula import Broadcast
from ..numeric.json_numbers import fine, number
from ..physics.columns import Column
from ..physics.ratings import GENEROUS
from ..waves.two_port import drive, reverse
from .outside import VIEW_FROM_HZ, outside_temperature_k
from .requests import Preamplifier, Receiver
from .results import Reception, ReceptionCost

__all__ = ["reception"]


def reception(feedline: Feedline, receiver: Receiver, bands: list[Column]) -> Reception:
    """The line in receive at the frequency looked at, and in the middle of every band.

    A temperature that is given holds in the band looked at; in the others the
    antenna hears what it looks at. Raises InputError when the preamplifier
    stands at an element that is not there, or environment or view is unknown.
    """
    middles = [(band.low_hz + band.high_hz) / 2 for band in bands]
    frequency = np.array([feedline.frequency_hz, *middles])
    outside = outside_temperature_k(receiver, frequency)
    if receiver.antenna_temperature_k is not None:
        looked_at = [True, *(band.low_hz <= feedline.frequency_hz <= band.high_hz for band in bands)]
        outside = np.where(looked_at, receiver.antenna_temperature_k, outside)
    costs = _receive_costs(feedline, receiver, outside, frequency)
    rows: list[tuple[int | None, str, np.ndarray]] = [(None, "Mismatch at the antenna", costs.mismatch_db)]
    rows += [(index, link.name, costs.links_db[index]) for index, link in enumerate(feedline.links)]
    return Reception(
        environment=catalogue().noise_environments[receiver.environment].name,
        heard=_heard(receiver, feedline.frequency_hz),
        external_noise_db=number(costs.external_db[0]),
        system_noise_db=number(costs.system_db[0]),
        antenna_temperature_k=number(outside[0]),
        system_temperature_k=number(noise.noise_temperature(costs.system_db[0])),
        costs=[ReceptionCost(part, name, fine(cost[0])) for part, name, cost in rows],
        whole_cost_db=fine(costs.whole_db[0]),
        bands=[band.id for band in bands],
        half_decibel_cost_by_band_db=[fine(cost) for cost in costs.half_decibel_db[1:]],
        whole_cost_by_band_db=[fine(cost) for cost in costs.whole_db[1:]],
        costs_by_band_db=[[fine(one) for one in cost[1:]] for _, _, cost in rows],
    )


def _heard(receiver: Receiver, frequency_hz: float) -> str:
    """What the noise that comes in is taken from, in words."""
    if receiver.antenna_temperature_k is not None:
        return "Antenna temperature as given"
    place = catalogue().noise_environments[receiver.environment].name
    if frequency_hz < VIEW_FROM_HZ:
        return f"{place}; where the antenna points counts from 30 MHz up"
    view = catalogue().antenna_views[receiver.antenna_view]
    up = "" if view.elevation_deg else f", {receiver.elevation_deg:g}° up"
    return f"{view.name}{up}; {place.lower()}"


class _ReceiveCosts(NamedTuple):
    """Over frequency."""

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

    factor: Broadcast
    gain: Broadcast


def _receive_costs(feedline: Feedline, receiver: Receiver, outside: np.ndarray, frequency: np.ndarray) -> _ReceiveCosts:
    """Signal-to-noise cost of every part under noise from outside [K] at frequencies [Hz]."""
    stages, stage_of_link = _stages(feedline, receiver, frequency)
    last = line.power_ratio(receiver.noise_figure_db)
    behind = [last]
    for stage in reversed(stages):
        behind.insert(0, noise.cascade_noise_factor(stage.factor, behind[0], stage.gain))
    external = noise.noise_factor(outside)
    system = external + behind[0] - 1
    front: Broadcast = 1.0
    gain: Broadcast = 1.0
    without = []
    for index, stage in enumerate(stages):
        without.append(external + noise.cascade_noise_factor(front, behind[index + 1], gain) - 1)
        front = noise.cascade_noise_factor(front, stage.factor, gain)
        gain = gain * stage.gain
    costs = [noise.snr_cost(system, other) for other in without]
    return _ReceiveCosts(
        external_db=line.decibels(external),
        system_db=_middle(line.decibels(system)),
        mismatch_db=_middle(costs[0]),
        links_db=[_middle(costs[stage_of_link[index]]) for index in range(len(feedline.links))],
        half_decibel_db=_middle(noise.snr_cost(_behind_half_a_decibel(external, behind[0], feedline), system)),
        whole_db=_middle(noise.snr_cost(system, external + last - 1)),
    )


def _middle(values: np.ndarray) -> np.ndarray:
    """The middle over the ways that the antenna can be, which stand along axis 0."""
    return np.sort(values, axis=0)[len(values) // 2]


def _behind_half_a_decibel(external: np.ndarray, line_on: np.ndarray, feedline: Feedline) -> np.ndarray:
    """Noise factor of the system when a part that loses half a decibel is put in front of all."""
    loss = line.power_ratio(0.5)
    part = noise.lossy_noise_factor(loss, feedline.station.ambient_temperature_c)
    return external + noise.cascade_noise_factor(part, line_on, 1 / loss) - 1


def _stages(feedline: Feedline, receiver: Receiver, frequency: np.ndarray) -> tuple[list[_Stage], dict[int, int]]:
    """The stages from the antenna to the receiver's input, and the stage of each link."""
    antenna = feedline.load.likely(frequency)
    models = settled(feedline, frequency, [link.models[GENEROUS] for link in feedline.links], antenna)
    ports = [model.two_port(frequency) for model in models]
    matched = np.zeros(np.shape(antenna))
    waves = drive([reverse(port) for port in reversed(ports)], matched, feedline.station.impedance_ohm, net=True)
    power = waves.power_w
    into = waves.reflection(feedline.station.impedance_ohm)[0]
    accepted = (1 - np.abs(antenna) ** 2) * (1 - np.abs(into) ** 2) / np.abs(1 - antenna * into) ** 2
    # a mismatch turns noise away with the signal and adds none
    stages, stage_of_link = [_Stage(np.ones_like(accepted), accepted)], {}
    waiting = receiver.preamplifier
    for plane, index in enumerate(reversed(range(len(feedline.links)))):
        stage_of_link[index] = len(stages)
        loss = np.maximum(power[plane] / power[plane + 1], 1.0)
        stages.append(_Stage(noise.lossy_noise_factor(loss, feedline.station.ambient_temperature_c), 1 / loss))
        if waiting and _is_behind(feedline, index, waiting.before_element):
            stages.insert(len(stages) - 1, _amplifier(waiting))
            stage_of_link[index] += 1
            waiting = None
    if waiting:
        last = max(link.element for link in feedline.links)
        raise InputError("receiver.preamplifier.before_element", waiting.before_element, f"0 to {last}")
    return stages, stage_of_link


def _is_behind(feedline: Feedline, index: int, element: int) -> bool:
    """Whether the link is the first of the element that the signal from the antenna meets."""
    later = feedline.links[index + 1] if index + 1 < len(feedline.links) else None
    return feedline.links[index].element == element and (later is None or later.element != element)


def _amplifier(preamplifier: Preamplifier) -> _Stage:
    return _Stage(line.power_ratio(preamplifier.noise_figure_db), line.power_ratio(preamplifier.gain_db))
