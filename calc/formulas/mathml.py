"""An equation in infix notation as MathML, in the order it was typed.

A general printer sorts terms in an order of its own; a derivation should read as the
source prints it, so the equation's own syntax tree is printed.
"""

import ast
from html import escape

__all__ = ["mathml"]

GREEK = {
    "alpha": "α",
    "beta": "β",
    "delta": "δ",
    "dt": "Δt",
    "epsilon": "ε",
    "eta": "η",
    "Gamma": "Γ",
    "mu": "μ",
    "pi": "π",
    "sigma": "σ",
    "tan": "tan",
    "tau": "τ",
    "theta": "θ",
}
FUNCTIONS = {"Min": "min", "Max": "max", "exp": "exp", "sin": "sin", "cos": "cos", "log": "ln"}
BESSEL = {"besselj": "J", "bessely": "Y"}
COMPARISONS = {ast.LtE: "≤", ast.GtE: "≥", ast.Lt: "<", ast.Gt: ">"}
SUM, PRODUCT, POWER, ATOM = range(4)
"""How tightly a piece binds; a looser piece inside a tighter one gets brackets."""


def mathml(equation: str) -> str:
    """The <math> element of "result = expression". Raises SyntaxError when it is not one."""
    left, _, right = equation.partition("=")
    result, expression = (ast.parse(side.strip(), mode="eval").body for side in (left, right))
    body = f"{_print(result)[0]}<mo>=</mo>{_print(expression)[0]}"
    return f'<math xmlns="http://www.w3.org/1998/Math/MathML" display="block"><mrow>{body}</mrow></math>'


def _print(node: ast.expr) -> tuple[str, int]:
    match node:
        case ast.Name(id=name):
            return _symbol(name), ATOM
        case ast.Constant(value=int() | float() as value):
            return _number(value)
        case ast.UnaryOp(op=ast.USub(), operand=operand):
            return f"<mo>−</mo>{_inside(operand, PRODUCT)}", SUM
        case ast.BinOp(left=left, op=ast.Add() | ast.Sub() as op, right=right):
            sign = "+" if isinstance(op, ast.Add) else "−"
            return f"{_inside(left, SUM)}<mo>{sign}</mo>{_inside(right, PRODUCT)}", SUM
        case ast.BinOp(left=left, op=ast.Mult(), right=right):
            return f"{_inside(left, PRODUCT)}<mo>·</mo>{_inside(right, PRODUCT)}", PRODUCT
        case ast.BinOp(left=left, op=ast.Div(), right=right):
            return f"<mfrac>{_row(left)}{_row(right)}</mfrac>", ATOM
        case ast.BinOp(left=left, op=ast.Pow(), right=right):
            return f"<msup><mrow>{_inside(left, ATOM)}</mrow>{_row(right)}</msup>", POWER
        case ast.Compare(left=left, ops=[op], comparators=[right]):
            return f"{_inside(left, SUM)}<mo>{escape(COMPARISONS[type(op)])}</mo>{_inside(right, SUM)}", SUM
        case ast.Call(func=ast.Name(id=name), args=arguments):
            return _call(name, arguments), SUM if name == "Piecewise" else ATOM
    raise SyntaxError(f"unknown notation: {ast.unparse(node)!r}")


def _call(name: str, arguments: list[ast.expr]) -> str:
    first = arguments[0]
    if name == "sqrt":
        return f"<msqrt>{_print(first)[0]}</msqrt>"
    if name == "Abs":
        return f"<mrow><mo>|</mo>{_print(first)[0]}<mo>|</mo></mrow>"
    if name == "Piecewise":
        return _cases(arguments)
    if name == "log" and len(arguments) == 2:
        return f"<mrow><msub><mi>log</mi>{_row(arguments[1])}</msub>{_brackets(_print(first)[0])}</mrow>"
    if name in BESSEL:
        return f"<mrow><msub><mi>{BESSEL[name]}</mi>{_row(first)}</msub>{_brackets(_print(arguments[1])[0])}</mrow>"
    listed = "<mo>,</mo>".join(_print(argument)[0] for argument in arguments)
    return f"<mrow><mi>{FUNCTIONS[name]}</mi>{_brackets(listed)}</mrow>"


def _cases(pairs: list[ast.expr]) -> str:
    rows = "".join(
        f"<mtr><mtd>{_row(value)}</mtd><mtd>{_condition(condition)}</mtd></mtr>"
        for value, condition in (pair.elts for pair in pairs if isinstance(pair, ast.Tuple))
    )
    return f"<mrow><mo>{{</mo><mtable columnalign='left'>{rows}</mtable></mrow>"


def _condition(node: ast.expr) -> str:
    if isinstance(node, ast.Constant):
        return "<mtext>otherwise</mtext>"
    return f"<mrow><mtext>if&#160;</mtext>{_print(node)[0]}</mrow>"


def _row(node: ast.expr) -> str:
    return f"<mrow>{_print(node)[0]}</mrow>"


def _inside(node: ast.expr, tightness: int) -> str:
    text, binds = _print(node)
    return _brackets(text) if binds < tightness else text


def _brackets(text: str) -> str:
    return f"<mrow><mo>(</mo>{text}<mo>)</mo></mrow>"


def _symbol(name: str) -> str:
    base, _, index = name.partition("_")
    letter = f"<mi>{GREEK.get(base, base)}</mi>"
    return f"<msub>{letter}<mi>{GREEK.get(index, index)}</mi></msub>" if index else letter


def _number(value: float) -> tuple[str, int]:
    mantissa, _, exponent = f"{value:.7g}".partition("e")
    if not exponent:
        return f"<mn>{mantissa}</mn>", ATOM
    power = f"<msup><mn>10</mn><mn>{int(exponent)}</mn></msup>".replace("<mn>-", "<mn>−")
    return (power if mantissa == "1" else f"<mn>{mantissa}</mn><mo>·</mo>{power}"), PRODUCT
