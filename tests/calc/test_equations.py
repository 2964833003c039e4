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
from jointwise.calc.formulas.formula import FORMULAS
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
}
ROUNDING = 1e-13  # of the terms

LENGTH = (1e-4, 0.1)
SHARE = (1e-6, 0.3)
TEMPERATURE = (-60, 80)
LOSS_FACTOR = (1.0001, 1e4)
NOISE_FACTOR = (1, 1e5)
NEPERS = (0, 0.5)
REFLECTION = (1e-6, 0.999)
RANGES = {  # by symbol: what each letter may be inside the validity of the formulas that use it
    "A_c": (1e-8, 1e-3),
    "B": (1e5, 1e11),
    "D_b": (1e-3, 0.1),
    "D_c": (1e-3, 0.05),
    "D_m": (0.01, 1),
    "E": (0, 1400),
    "G_b": (1e-3, 10),
    "G_f": (0, 10),
    "G_i": (1e-3, 10),
    "F_g": (-20, 80),
    "F_m": (-20, 100),
    "Gamma": (0, 0.999),
    "Gamma_1": REFLECTION,
    "Gamma_2": REFLECTION,
    "Gamma_i": REFLECTION,
    "H": (0, 32_000),
    "L_a": (1e-9, 60),
    "L_r": (1e-3, 1),
    "P": (1e-3, 1e5),
    "P_a": (1e-3, 1e6),
    "P_avg": (0, 1e5),
    "P_r": (1, 1e4),
    "RL": (0, 120),
    "RL_a": (6, 40),
    "R_a": (0, 5),
    "R_b": (0.1, 500),
    "R_i": (0, 0.1),
    "R_m": (1e-4, 1e3),
    "R_o": (0, 0.1),
    "R_r": (0.1, 1e4),
    "R_si": (1e-6, 10),
    "R_so": (1e-6, 10),
    "R_th": (0.1, 1e4),
    "S": (1, 20),
    "T": (1e-6, 1),
    "S_0": (1, 2),
    "V_a": (1, 1e4),
    "V_w": (1, 1e4),
    "X": (-60, 120),
    "Z_0": (25, 150),
    "Z_c": (10, 300),
    "Z_n": (25, 150),
    "a": (1e-6, 0.99),
    "a_c": SHARE,
    "a_d": SHARE,
    "a_k": (0, 3),
    "a_m": (1e-5, 10),
    "a_r": (1e-6, 0.99),
    "alpha": (0.01, 1),
    "alpha_c": NEPERS,
    "alpha_d": NEPERS,
    "b": (0, 1),
    "b_w": (0.5, 20),
    "beta": (1e-3, 1e3),
    "beta_k": (0.1, 20),
    "c": (40, 80),
    "d": (1e-4, 0.05),
    "Delta_f": (1e2, 1e9),
    "d_j": (0.01, 100),
    "delta": (0.01, 1.5),
    "dt": (0.1, 100),
    "dt_s": (0, 100),
    "epsilon": (0.01, 1),
    "epsilon_r": (1, 10),
    "f": (1e5, 5e10),
    "f_1": NOISE_FACTOR,
    "f_2": NOISE_FACTOR,
    "f_a": (1e-3, 1e8),
    "f_c": NOISE_FACTOR,
    "f_d": (1e2, 1e9),
    "f_o": NOISE_FACTOR,
    "f_r": (1e5, 5e10),
    "f_s": (1e5, 1e11),
    "f_t": NOISE_FACTOR,
    "f_w": NOISE_FACTOR,
    "g": (1e-4, 0.1),
    "g_1": (1e-4, 1e4),
    "h": (0, 32_000),
    "h_c": (0.1, 100),
    "h_r": (0.1, 100),
    "h_s": (1, 20),
    "k": (0, 1),
    "k_1": (1e-7, 1e-4),
    "k_2": (0, 1e-9),
    "k_w": (1, 4),
    "k_a": (0.01, 10),
    "k_b": (1, 7),
    "k_m": (1, 500),
    "k_s": (0.01, 10),
    "l": LENGTH,
    "l_b": LENGTH,
    "l_c": LOSS_FACTOR,
    "l_e": LENGTH,
    "l_p": LOSS_FACTOR,
    "l_s": LENGTH,
    "l_t": LOSS_FACTOR,
    "mu_r": (1, 1000),
    "p_r": (0.01, 1.1),
    "q": (1.05, 12),
    "q_e": (1, 12),
    "q_t": (0.8, 1.3),
    "r": (1e-6, 1e12),
    "s": (0, 1e-9),
    "s_t": (1e-3, 1),
    "sigma": (1e5, 1e8),
    "t": TEMPERATURE,
    "t_a": TEMPERATURE,
    "t_ar": TEMPERATURE,
    "t_max": (60, 250),
    "t_off": (0.01, 86_400),
    "t_on": (0.01, 86_400),
    "t_r": (85, 250),
    "tan_delta": (0, 0.1),
    "tau": (1, 1e4),
    "theta": (0, 3.14159),
    "v": (0.5, 1),
    "x": (0.05, 2),
}
OVERRIDES = {  # by formula: a letter that stands for something else there
    ("cable_conductance", "h"): (0.1, 100),
    ("return_loss", "Gamma"): (0, 1),
    ("hot_spot_forward", "Gamma"): (0, 1),
    ("additional_loss", "Gamma"): REFLECTION,
    ("external_noise_figure", "d"): (20, 30),
    ("system_noise_factor", "f_r"): NOISE_FACTOR,
    ("mismatch_loss", "Gamma"): (1e-9, 0.999),  # below it the evaluator's own digits run out: 1 - 1e-18
}
TOGETHER = {  # by formula: a letter that others bound; the drawn value is a factor on what is returned
    ("characteristic_impedance", "D"): (lambda drawn: drawn["d"], (1.05, 12)),
    ("te11_rule", "D"): (lambda drawn: drawn["d"], (1.05, 12)),
    ("radial_conductance", "D"): (lambda drawn: drawn["d"], (1.05, 12)),
    ("radial_conductance", "l"): (lambda drawn: drawn["l_s"], (1, 5)),
    ("conductor_resistance", "D"): (lambda drawn: drawn["d"], (1.05, 12)),
    ("air_gap", "D"): (lambda drawn: drawn["d"], (1.05, 12)),
    ("peek_onset_voltage", "D"): (lambda drawn: drawn["d"], (1.05, 12)),
    ("te11_condition", "x"): (lambda drawn: 6 / drawn["q"], (0.01, 0.98)),
    ("convective_share", "G_b"): (
        lambda drawn: drawn["h_r"] * np.pi * drawn["D_b"] * drawn["l_b"],
        (1.01, 50),
    ),
}


def bounds(formula, name):
    """The range of a letter in one formula."""
    if (formula, name) in TOGETHER:
        return TOGETHER[formula, name][1]
    return OVERRIDES.get((formula, name)) or RANGES[name]


def inputs(formula):
    """Strategy of the arguments of a formula, in call order, inside its validity."""
    names = FORMULAS[formula].arguments

    def together(drawn):
        for name in names:
            if (formula, name) in TOGETHER:
                drawn[name] = TOGETHER[formula, name][0](drawn) * drawn[name]
        return [drawn[name] for name in names]

    return st.fixed_dictionaries({name: st.floats(*bounds(formula, name)) for name in names}).map(together)


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

    floor = ROUNDING * TERMS.get(formula, 0)
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
    floor = ROUNDING * TERMS.get(formula, 0)
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


def test_constants_are_those_of_scipy():
    """The frozen constants are CODATA's, as scipy carries them, to 1e-9."""
    assert CONSTANTS["c_0"].value == constants.speed_of_light
    assert CONSTANTS["mu_0"].value == pytest.approx(constants.mu_0, rel=1e-9)
    assert CONSTANTS["epsilon_0"].value == pytest.approx(constants.epsilon_0, rel=1e-9)
    assert CONSTANTS["eta_0"].value == pytest.approx(constants.mu_0 * constants.c, rel=1e-9)
    assert CONSTANTS["sigma_SB"].value == pytest.approx(constants.sigma, rel=1e-9)
