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
    """The margins at one power level, family by family; None where the cell is refused, and in receive."""
    level = matrix["powers_w"].index(power)
    return [levels[level] for family in matrix["margin_db"] for levels in family]


def decibels(margin: float) -> str:
    """A margin as the page prints it: signed, to a tenth, halves away from zero."""
    last = Decimal("0.1") if abs(margin) < THREE_CHARACTERS_DB else Decimal(1)
    size = Decimal(abs(margin)).quantize(last, ROUND_HALF_UP)
    return f"{'−' if margin < 0 else '+'}{size}"


def return_loss(db: float) -> str:
    """A return loss as a cell prints it: in whole decibels, halves up."""
    return f"RL {Decimal(db).quantize(Decimal(1), ROUND_HALF_UP)}"


def printed(matrix: Any, power: float = FIRST_POWER) -> Numbers:
    """What the cells print: a margin or a return loss; None where a word stands for a refusal."""
    level = matrix["powers_w"].index(power)
    places = [(row, column) for row in range(len(matrix["families"])) for column in range(len(matrix["columns"]))]
    return [_printed(matrix, row, column, level) for row, column in places]


def _printed(matrix: Any, row: int, column: int, level: int) -> str | None:
    refused_by, margin = (matrix[name][row][column][level] for name in ("refused_by", "margin_db"))
    if refused_by >= 0 and matrix["gates"][refused_by]["id"] != "match":
        return None
    return return_loss(matrix["return_loss_db"][row][column][0]) if margin is None else decibels(margin)


def numbers(power: float = FIRST_POWER, **scenario: Any) -> Numbers:
    """What the cells of a scenario print."""
    return printed(matrix_of(**scenario), power)
