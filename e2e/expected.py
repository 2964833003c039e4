"""What the core itself answers, written as the page must print it."""

import json
from decimal import ROUND_HALF_UP, Decimal
from typing import Any

from jointwise.calc.operations import call

FIRST_BANDS = [
    *("160m", "80m", "40m", "30m", "20m", "17m", "15m", "12m", "10m"),
    *("6m", "2m", "70cm", "23cm", "13cm", "5cm", "3cm"),
]
FIRST_POWER = 100
THREE_CHARACTERS_DB = 99.95
"""From here a margin is printed without its decimal."""

TABLET_COLUMNS = len(FIRST_BANDS)

Numbers = list[str | None]


def asked(operation: str, **request: Any) -> Any:
    """The core's answer, from this process."""
    return json.loads(call(operation, json.dumps(request).encode()))


def matrix_of(**scenario: Any) -> Any:
    """The matrix of a first visit, but for the scenario given."""
    return asked("matrix", **({"bands": FIRST_BANDS} | scenario))


def margins(matrix: Any, power: float = FIRST_POWER) -> list[float | None]:
    """The margins at one power level, family by family; None where the cell is refused."""
    level = matrix["powers_w"].index(power)
    return [levels[level] for family in matrix["margin_db"] for levels in family]


def decibels(margin: float) -> str:
    """A margin as the page prints it: signed, to a tenth, halves away from zero."""
    last = Decimal("0.1") if abs(margin) < THREE_CHARACTERS_DB else Decimal(1)
    size = Decimal(abs(margin)).quantize(last, ROUND_HALF_UP)
    return f"{'−' if margin < 0 else '+'}{size}"


def numbers(power: float = FIRST_POWER, **scenario: Any) -> Numbers:
    """What the cells print; None where a word stands for a refusal."""
    found = margins(matrix_of(**scenario), power)
    return [None if margin is None else decibels(margin) for margin in found]
