"""Catalogue values as the formulas are called with them: floats that remember their source."""

from ..catalogue.schema import Quantity
from ..formulas.formula import Sourced

__all__ = ["sourced"]


def sourced(quantity: Quantity) -> Sourced:
    """A quantity's number, in the quantity's unit, with its source and kind."""
    return Sourced(quantity.value, quantity.source, quantity.kind)
