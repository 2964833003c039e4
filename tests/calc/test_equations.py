"""Every declared equation, evaluated by sympy, against its function; and what each declaration must hold."""

from functools import lru_cache
from xml.etree import ElementTree as ET

import mpmath
import numpy as np
import pytest
import sympy
from equations import expression
from hypothesis import given
from hypothesis import strategies as st
from scenarios import examples
from scipy import constants

import jointwise.calc.formulas
from jointwise.calc.catalogue import catalogue
from jointwise.calc.formulas.constants import CONSTANTS
from jointwise.calc.formulas.formula import FORMULAS, formula, recording
from jointwise.calc.formulas.mathml import mathml

RELATIVE = 1e-9
DIGITS = 40  # decimal digits of the independent evaluation

# Where terms nearly cancel the relative error grows while the absolute one stays that of the terms.
TERMS = {
    "te11_condition": 1000.0,
    "margin": 10.0,
    "match_margin": 120.0,
    "section_reflection": 1.0,
    "external_noise_figure": 200.0,
    "system_noise_factor": 1e3,
    "series_resistance": 1e3,
    "snr_cost": 1.0,
    "decibels": 1.0,
    # 1 less a square: below it the evaluator's own digits run out
    "additional_loss": 1e-20,
    "dissipative_loss": 1e-20,
    "mismatch_loss": 1e-20,
}
ROUNDING = 1e-13  # of the terms
SMALLEST = 1e-300  # below it a product of floats loses digits


def inputs(formula):
    """Strategy of the arguments of a formula, in call order, inside its declared ranges and condition."""
    declared = FORMULAS[formula]
    drawn = (
        st.floats(declared.symbols[name].least, declared.symbols[name].most, allow_subnormal=False)
        for name in declared.arguments
    )
    return st.tuples(*drawn).filter(lambda values: declared.allows(*values))


@lru_cache
def independent(formula):
    """The declared equation as a function of its arguments, evaluated with many digits."""
    declared = FORMULAS[formula]
    frozen = {sympy.Symbol(name, positive=True): entry.value for name, entry in CONSTANTS.items()}
    right = expression(declared).subs(frozen)
    letters = [sympy.Symbol(name, positive=True) for name in declared.arguments]
    return sympy.lambdify(letters, right, "mpmath")


def evaluate(formula, values):
    """The right-hand side of a declared equation by sympy and mpmath."""
    with mpmath.workdps(DIGITS):
        return float(independent(formula)(*map(mpmath.mpf, values)))


@pytest.mark.parametrize("formula", FORMULAS)
@examples(60)
@given(data=st.data())
def test_equation_is_what_the_function_computes(formula, data):
    """The declared equation, evaluated by sympy, is the number that the function returns."""
    values = data.draw(inputs(formula))

    computed = FORMULAS[formula].function(*values)

    floor = max(ROUNDING * TERMS.get(formula, 0), SMALLEST)
    assert float(computed) == pytest.approx(evaluate(formula, values), rel=RELATIVE, abs=floor)


@pytest.mark.parametrize("formula", FORMULAS)
@examples(20)
@given(data=st.data())
def test_arrays_give_the_numbers_of_scalars(formula, data):
    """A formula gives an array the numbers that it gives the scalars in it."""
    rows = data.draw(st.lists(inputs(formula), min_size=1, max_size=4))
    function = FORMULAS[formula].function

    together = function(*(np.array(column) for column in zip(*rows, strict=True)))

    apart = [float(function(*row)) for row in rows]
    floor = max(ROUNDING * TERMS.get(formula, 0), SMALLEST)
    assert np.asarray(together) == pytest.approx(np.array(apart), rel=1e-13, abs=floor)


@pytest.mark.parametrize("formula", FORMULAS)
def test_every_letter_has_a_unit(formula):
    """Each letter of a formula is given a meaning and a unit."""
    for name, symbol in FORMULAS[formula].symbols.items():
        assert symbol.meaning.strip(), name
        assert symbol.unit.strip(), name


@pytest.mark.parametrize("formula", FORMULAS)
def test_every_formula_says_where_it_holds(formula):
    """A formula states its title, its validity and a source that the catalogue lists."""
    declared = FORMULAS[formula]

    assert declared.title.strip()
    assert declared.validity.strip()
    assert declared.source in catalogue().sources


@pytest.mark.parametrize("formula", FORMULAS)
def test_every_letter_of_the_equation_is_declared(formula):
    """The right-hand side has just the formula's arguments and known constants as letters."""
    letters = {symbol.name for symbol in expression(FORMULAS[formula]).free_symbols}

    assert letters - set(CONSTANTS) == set(FORMULAS[formula].arguments)


@pytest.mark.parametrize("formula", FORMULAS)
def test_every_equation_prints(formula):
    """An equation's MathML is well-formed, one math element with an equals sign in it."""
    root = ET.fromstring(mathml(FORMULAS[formula].equation))

    assert root.tag == "{http://www.w3.org/1998/Math/MathML}math"
    assert "=" in [element.text for element in root.iter("{http://www.w3.org/1998/Math/MathML}mo")]


@pytest.mark.parametrize("formula", FORMULAS)
def test_every_docstring_is_complete(formula):
    """The called function's docstring names the equation, every unit in brackets, the validity and the source."""
    declared = FORMULAS[formula]
    module = getattr(jointwise.calc.formulas, declared.function.__module__.rpartition(".")[2])
    docstring = getattr(module, formula).__doc__

    assert declared.equation in docstring
    assert all(f"[{symbol.unit}]" in docstring for symbol in declared.symbols.values())
    assert declared.validity in docstring
    assert declared.source in docstring


@pytest.mark.parametrize("formula_id", FORMULAS)
def test_what_a_formula_allows_ends_at_its_ranges(formula_id):
    """Every argument has a range that is not empty, and nothing outside of it is allowed."""
    declared = FORMULAS[formula_id]

    for at, name in enumerate(declared.arguments):
        symbol = declared.symbols[name]
        assert symbol.least < symbol.most
        outside = [declared.symbols[other].least for other in declared.arguments]
        for value in (symbol.least - 1, symbol.most + 1, float("nan")):
            outside[at] = value
            assert not declared.allows(*outside)


def ratio(**changed):
    """A formula's declaration, with some of its words changed."""
    words = {"a": ("above", "1", 1, 10), "b": ("below", "1", 1, 10), "q": ("ratio", "1")}
    return formula(
        **{
            "title": "Ratio",
            "equation": "q = a/b",
            "symbols": words,
            "validity": "a > b",
            "holds": lambda a, b: a > b,
            "source": "derived",
        }
        | changed
    )


@pytest.fixture
def declared():
    """A formula declared for one test."""

    @ratio()
    def quotient(a, b):
        return a / b

    yield quotient
    del FORMULAS["quotient"]


@pytest.mark.parametrize(("values", "allowed"), [((3, 2), True), ((2, 3), False), ((11, 2), False), ((1, 0.5), False)])
@pytest.mark.usefixtures("declared")
def test_a_formula_allows_what_its_ranges_and_condition_allow(values, allowed):
    """Arguments are allowed just inside their ranges and where the condition between them holds."""
    assert FORMULAS["quotient"].allows(*values) == allowed


def test_arguments_by_name_are_recorded_in_call_order(declared):
    """A formula called by the names of its arguments leaves the record of one called without."""
    with recording() as plain:
        declared(6.0, 2.0)
    with recording() as named:
        declared(b=2.0, a=6.0)

    assert named == plain
    assert [value.value for value in named[0].inputs] == [6.0, 2.0]


@pytest.mark.parametrize(
    ("words", "complaint"),
    [
        ({"a": ("above", "1", 1, 10), "b": ("below", "1"), "q": ("ratio", "1")}, "no range declared for b"),
        ({"a": ("above", "1", 1, 10), "q": ("ratio", "1")}, "not its arguments and result"),
    ],
)
def test_a_symbol_without_range_or_word_is_refused(words, complaint):
    """A declaration that leaves a range or a symbol out is refused where it stands."""
    with pytest.raises(ValueError, match=complaint):
        ratio(symbols=words)(lambda a, b: a / b)


def test_constants_are_those_of_scipy():
    """The frozen constants are CODATA's, as scipy carries them, to 1e-9."""
    assert CONSTANTS["c_0"].value == constants.speed_of_light
    assert CONSTANTS["mu_0"].value == pytest.approx(constants.mu_0, rel=1e-9)
    assert CONSTANTS["epsilon_0"].value == pytest.approx(constants.epsilon_0, rel=1e-9)
    assert CONSTANTS["eta_0"].value == pytest.approx(constants.mu_0 * constants.c, rel=1e-9)
    assert CONSTANTS["sigma_SB"].value == pytest.approx(constants.sigma, rel=1e-9)
