"""Declared equations read by sympy, the independent evaluator."""

import sympy

from jointwise.calc.formulas.constants import CONSTANTS
from jointwise.calc.formulas.formula import Formula

NAMES = {
    "besselj": sympy.besselj,
    "bessely": sympy.bessely,
    "Min": sympy.Min,
    "Max": sympy.Max,
    "Abs": sympy.Abs,
    "Piecewise": sympy.Piecewise,
    "sqrt": sympy.sqrt,
    "log": sympy.log,
    "exp": sympy.exp,
    "sin": sympy.sin,
    "cos": sympy.cos,
    "pi": sympy.pi,
    "True": sympy.true,
}


def expression(formula: Formula) -> sympy.Expr:
    """The right-hand side as a sympy expression in positive symbols."""
    letters = {*formula.arguments, *CONSTANTS}
    table = NAMES | {name: sympy.Symbol(name, positive=True) for name in letters}
    right = formula.equation.partition("=")[2]
    return sympy.parse_expr(right, local_dict=table)
