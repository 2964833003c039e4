"""The declared formulas as the method page shows them."""

from .. import formulas  # noqa: F401  (registers every formula)
from ..formulas.formula import FORMULAS, SymbolSheet
from ..formulas.mathml import mathml
from .results import FormulaSheet

__all__ = ["formula_sheets"]


def formula_sheets() -> list[FormulaSheet]:
    """A sheet for every formula, in the order of their declaration."""
    return [
        FormulaSheet(
            id=formula.id,
            title=formula.title,
            equation=formula.equation,
            mathml=mathml(formula.equation),
            symbols=[SymbolSheet(name, symbol.meaning, symbol.unit) for name, symbol in formula.symbols.items()],
            validity=formula.validity,
            source=formula.source,
        )
        for formula in FORMULAS.values()
    ]
