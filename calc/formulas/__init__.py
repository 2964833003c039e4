"""The declared formulas, one module per subject; importing this package registers them all."""

from . import (
    air,
    antenna,
    cable_heat,
    coax,
    films,
    heat,
    joint_heat,
    line,
    loss,
    match,
    noise,
    skin,
    sweep,
    transmitter,
    tuner,
    voltage,
)

__all__ = [
    "air",
    "antenna",
    "cable_heat",
    "coax",
    "films",
    "heat",
    "joint_heat",
    "line",
    "loss",
    "match",
    "noise",
    "skin",
    "sweep",
    "transmitter",
    "tuner",
    "voltage",
]
