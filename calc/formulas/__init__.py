"""The declared formulas, one module per subject; importing this package registers them all."""

from . import air, cable_heat, coax, films, heat, joint_heat, line, loss, match, noise, skin, sweep, tuner, voltage

__all__ = [
    "air",
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
    "tuner",
    "voltage",
]
