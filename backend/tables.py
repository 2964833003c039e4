"""Answers of the core as plain text for a terminal."""

from collections.abc import Iterable, Iterator
from string import ascii_lowercase
from typing import Any

from jointwise.calc.operations import InputError
from jointwise.calc.results import CatalogueResult, CellResult, LimitResult, MatrixResult, Step, SymbolValue

__all__ = ["cell", "matrix", "plain"]

USUAL_POWER_W = 100.0  # what most transceivers give, so the level shown unless another is asked for
REFUSED = "--"
UNDECIDED = "?"
HERTZ_PER_MEGAHERTZ = 1e6


def plain(value: Any) -> str:
    """A value as one would type it on the command line."""
    if isinstance(value, list):
        return ",".join(map(plain, value))
    if isinstance(value, bool):
        return str(value).lower()
    return f"{value:.12g}" if isinstance(value, float) else str(value)


def matrix(result: MatrixResult, show_power_w: float | None = None) -> str:
    """The margins at one of the powers, with the reasons of what is refused or marked below.

    Raises InputError when the power asked for is not among the result's.
    """
    level = result.powers_w.index(_shown_power(result.powers_w, show_power_w))
    head = ["", *(column.name for column in result.columns)]
    rows = [
        [family.name, *(_margin(result, row, column, level) for column in range(len(result.columns)))]
        for row, family in enumerate(result.families)
    ]
    title = f"Margin in dB at {_power(result.powers_w[level])}: 0 is the limit, more is room left."
    return "\n".join([title, "", *_aligned([head, *rows]), *_legend(result, level)])


def cell(result: CellResult, catalogue: CatalogueResult) -> str:
    """Verdict, limits, gates and losses of a cell, then every step with its inputs and sources."""
    equations = {sheet.id: f"{sheet.title}: {sheet.equation}" for sheet in catalogue.formulas}
    titles = {source.id: source.title for source in catalogue.sources}
    steps = [
        *((f"{limit.name}", limit.steps) for limit in result.limits),
        ("Heat from first principles (a check, never the verdict)", result.cross_check.steps),
        ("Breakdown of the air gap (for information)", result.air_breakdown),
    ]
    used = {value.source for _, group in steps for step in group for value in step.inputs if value.source}
    lines = [
        f"{result.family.name}, {result.column.name}, {_power(result.power_w)}"
        f" (at {_megahertz(result.frequency_hz)})",
        result.verdict,
        *_section("Limits", (line for limit in result.limits for line in _limit(limit))),
        *_section("Gates", (f"{'pass' if gate.passed else 'FAIL'}  {gate.sentence}" for gate in result.gates)),
        *_section("Loss of the mated pair", _losses(result)),
    ]
    for name, group in steps:
        lines += _section(name, (line for step in group for line in _step(step, equations)))
    lines += _section("Cautions", result.cautions)
    lines += _section("Sources", (f"{id_}: {titles.get(id_, '')}" for id_ in sorted(used)))
    return "\n".join(lines)


def _shown_power(powers_w: list[float], asked: float | None) -> float:
    if asked is None:
        return max((power for power in powers_w if power <= USUAL_POWER_W), default=min(powers_w))
    if asked not in powers_w:
        raise InputError("show_power", plain(asked), f"one of the powers {plain(powers_w)}")
    return asked


def _margin(result: MatrixResult, row: int, column: int, level: int) -> str:
    margin = result.margin_db[row][column][level]
    if margin is None:
        return REFUSED
    marks = "".join(_letters(result.marks[row][column][level]))
    return f"{margin:+.1f}{UNDECIDED if result.undecided[row][column][level] else ''}{marks}"


def _letters(bits: int) -> Iterator[str]:
    return (letter for at, letter in enumerate(ascii_lowercase) if bits >> at & 1)


def _legend(result: MatrixResult, level: int) -> Iterator[str]:
    """What each sign in the table means, family by family."""
    yield ""
    if any(cell_[level] for row in result.undecided for cell_ in row):
        yield f"{UNDECIDED}  undecided: the sign depends on which source one believes"
    for row, family in enumerate(result.families):
        for at, gate in enumerate(result.gates):
            sign = REFUSED if gate.hard else ascii_lowercase[at]
            failed = [
                column.name
                for number, column in enumerate(result.columns)
                if (
                    result.refused_by[row][number][level] == at
                    if gate.hard
                    else result.marks[row][number][level] >> at & 1
                )
            ]
            if failed:
                reason = family.gate_reasons.get(gate.id, gate.name)
                yield f"{sign}  {family.name} ({', '.join(failed)}): {reason}"


def _limit(limit: LimitResult) -> Iterator[str]:
    margin = _range(limit.margin_db, limit.margin_high_db, "+.1f", "dB")
    allowed = _range(limit.allowed_w, limit.allowed_high_w, ".4g", "W")
    parts = [margin, f"allows {allowed}" if allowed else "", "binding" if limit.binding else ""]
    yield f"{limit.name}: {', '.join(part for part in parts if part) or 'does not apply'}"
    yield f"  {limit.sentence}"


def _range(low: float | None, high: float | None, digits: str, unit: str) -> str:
    ends = dict.fromkeys(format(end, digits) for end in (low, high) if end is not None)
    return f"{' to '.join(ends)} {unit}" if ends else ""


def _losses(result: CellResult) -> Iterator[str]:
    losses = result.losses
    causes = {
        "contact": losses.contact_db,
        "conductor": losses.conductor_db,
        "dielectric": losses.dielectric_db,
        "mismatch": losses.mismatch_db,
    }
    shares = ", ".join(f"{cause} {loss:.4f}" for cause, loss in causes.items())
    yield f"expected {losses.expected_db:.4f} dB ({shares})"
    yield f"guaranteed {losses.guaranteed_db:.4f} dB [{losses.guaranteed_source}, {losses.guaranteed_kind}]"


def _step(step: Step, equations: dict[str, str]) -> Iterator[str]:
    end = "" if step.end == "both" else f" ({step.end} end of the ratings)"
    yield equations.get(step.formula, step.formula)
    if step.purpose or end:
        yield f"  for {step.purpose}{end}" if step.purpose else f"  {end.strip()}"
    yield from (f"    {_value(value)}" for value in step.inputs)
    yield f"  = {_value(step.result)}"


def _value(value: SymbolValue) -> str:
    unit = "" if value.unit == "1" else f" {value.unit}"
    origin = f" [{value.source}, {value.kind}]" if value.source else ""
    return f"{value.symbol} = {value.value:.6g}{unit}, {value.meaning}{origin}"


def _power(power_w: float) -> str:
    return f"{plain(power_w)} W" if power_w else "receive (0 W)"


def _megahertz(frequency_hz: float) -> str:
    return f"{plain(frequency_hz / HERTZ_PER_MEGAHERTZ)} MHz"


def _section(title: str, lines: Iterable[str]) -> list[str]:
    shown = [f"  {line}" for line in lines]
    return ["", title, *shown] if shown else []


def _aligned(rows: list[list[str]]) -> Iterator[str]:
    widths = [max(map(len, column)) for column in zip(*rows, strict=True)]
    for name, *values in rows:
        cells = [value.rjust(width) for value, width in zip(values, widths[1:], strict=True)]
        yield "  ".join([name.ljust(widths[0]), *cells]).rstrip()
