"""The declared formulas, one module per subject; importing this package registers them all."""

from . import air, coax, first_principles, heat, line, loss, match, noise, skin, sweep, voltage

__all__ = ["air", "coax", "first_principles", "heat", "line", "loss", "match", "noise", "skin", "sweep", "voltage"]
