"""Answers of the core as plain text for a terminal."""

from collections.abc import Iterable, Iterator
from itertools import groupby
from operator import itemgetter
from string import ascii_lowercase

from jointwise.calc.cell.results import CellResult, LimitResult, RatingCheck
from jointwise.calc.datasheets.results import CatalogueResult
from jointwise.calc.formulas.formula import Step, SymbolValue
from jointwise.calc.matrix.results import MatrixResult
from jointwise.calc.numeric.measures import temperature_words, units_spoken
from jointwise.calc.numeric.units import engineering, safe_power
from jointwise.calc.operations import InputError
from jointwise.calc.physics.columns import Column
from jointwise.calc.physics.families import FamilyHead
from jointwise.calc.question.results import QuestionResult, UnreadWord

from .texts import plain

__all__ = ["cell", "matrix", "question"]

USUAL_POWER_W = 100.0  # what most transceivers give, so the level shown unless another is asked for
MATCH = "match"
"""The id of the gate whose refusal shows the return loss."""

WORKING = "The working that follows is in SI units."
REFUSED = "--"
MISSED = "!"
UNDECIDED = "?"
LOWER_FROM_MEMORY = "<"
RETURN_LOSS = "RL"
FROM_PACK = "*"
SIGNS = {
    UNDECIDED: "uncertain: the sources disagree on which side of the limit it lies",
    LOWER_FROM_MEMORY: "a power figure from memory is lower than the margin shown",
    RETURN_LOSS: "return loss of the joint alone in dB; on receive there is no power to carry",
}
MATCHES = {
    "holds": "As asked for",
    "depends": "Uncertain: the sources disagree",
    "misses": "Less than asked for",
}


def matrix(result: MatrixResult, show_power_w: float | None = None) -> str:
    """The margins at one of the powers, return loss in receive, with the reasons of what is refused or marked below.

    Raises InputError when the power asked for is not among the result's.
    """
    level = result.powers_w.index(_shown_power(result.powers_w, show_power_w))
    head = ["", *(f"{column.name}{FROM_PACK if column.pack else ''}" for column in result.columns)]
    rows = [
        [_family(family), *(_margin(result, row, column, level) for column in range(len(result.columns)))]
        for row, family in enumerate(result.families)
    ]
    printed = " ".join(margin for _, *margins in rows for margin in margins)
    return "\n".join([_title(result.powers_w[level]), "", *_aligned([head, *rows]), *_legend(result, level, printed)])


def cell(result: CellResult, catalogue: CatalogueResult) -> str:
    """Verdict, limits, gates and losses of a cell, then every step with its inputs and sources."""
    equations = {sheet.id: f"{sheet.title}: {sheet.equation}" for sheet in catalogue.formulas}
    titles = {source.id: source.reference for source in catalogue.sources}
    packs = {pack.id: pack.name for pack in catalogue.packs}
    steps = [
        *((f"{limit.name}", limit.steps) for limit in result.limits),
        ("Return loss", result.match.steps),
        ("Breakdown of the air gap (for information)", result.air_breakdown),
    ]
    used = {value.source for _, group in steps for step in group for value in step.inputs if value.source}
    used |= {rating.source for rating in result.ratings}
    frequency = engineering(result.frequency_hz, "Hz")
    lines = [
        f"{result.family.name}, {result.column.name}, {_power(result.power_w)} at {frequency}",
        result.verdict,
        *_section("At this power", _state(result)),
        *_section("Limits", (line for limit in result.limits for line in _limit(limit))),
        *_section("Match", [f"{MATCHES[result.match.state]}. {result.match.sentence}"]),
        *_section("Checks", (f"{'pass' if gate.passed else 'FAIL'}  {gate.sentence}" for gate in result.gates)),
        *_section("Loss of the mated pair", _losses(result)),
        *_section("Power ratings as evidence", (line for rating in result.ratings for line in _rating(rating))),
    ]
    if units_spoken() != "metric":
        lines += ["", WORKING]
    for name, group in steps:
        lines += _section(name, (line for step in group for line in _step(step, equations)))
    lines += _section("Cautions", result.cautions)
    lines += _section("Sources", (f"{id_}: {titles.get(id_, '')}{_from(packs, id_)}" for id_ in sorted(used)))
    return "\n".join(lines)


def question(result: QuestionResult) -> str:
    """The question as it was understood, its verdict, and what would make it better."""
    lines = [result.sentence]
    said = ""
    if result.verdict is not None:
        said = result.verdict.sentence
        lines += [result.verdict.headline, said]
    if result.largest_power_w is not None:
        lines.append(f"Largest safe power: {safe_power(result.largest_power_w)}")
    if result.limited_by is not None and result.limited_by.sentence not in said:
        lines += _section("Limited by", [result.limited_by.sentence])
    lines += _section("Mind", (doubt.sentence for doubt in result.doubts))
    lines += _section("Better", (f"{change.title}. {change.sentence}" for change in result.better))
    lines += _section("Not understood", (_unread(word) for word in result.unread))
    lines += _section("Still to say", result.missing)
    lines += _section("Assumed", result.taken)
    if result.verdict is not None:
        lines += _section("Cautions", result.cautions)
    return "\n".join(lines)


def _unread(word: UnreadWord) -> str:
    near = f" Near: {', '.join(word.near)}." if word.near else ""
    named = "" if word.typed in word.words else f"“{word.typed}”: "
    return f"{named}{word.words}{near}"


def _family(family: FamilyHead) -> str:
    return f"{family.name}{FROM_PACK if family.pack else ''}"


def _from(packs: dict[str, str], source: str) -> str:
    """The pack that leads a source's id, in words."""
    pack, led, _ = source.partition(".")
    return f" (from pack {packs[pack]})" if led else ""


def _title(power_w: float) -> str:
    if power_w == 0:
        return "Return loss in dB, receive only (0 W)."
    return f"Margin in dB at {_power(power_w)}: 0 is at the limit, below it is over."


def _shown_power(powers_w: list[float], asked: float | None) -> float:
    if asked is None:
        return max((power for power in powers_w if power <= USUAL_POWER_W), default=min(powers_w))
    if asked not in powers_w:
        raise InputError("show_power", plain(asked), f"one of the powers {plain(powers_w)}")
    return asked


def _margin(result: MatrixResult, row: int, column: int, level: int) -> str:
    refused_by = result.refused_by[row][column][level]
    if refused_by >= 0:
        return f"{_return_loss(result, row, column)}{MISSED}" if result.gates[refused_by].id == MATCH else REFUSED
    margin = result.margin_db[row][column][level]
    shown = _return_loss(result, row, column) if margin is None else f"{margin:+.1f}"
    undecided = UNDECIDED if result.undecided[row][column][level] else ""
    lower = LOWER_FROM_MEMORY if result.rating_below[row] and margin is not None else ""
    marks = "".join(sign for gate, sign in _marks(result).items() if result.marks[row][column][level] >> gate & 1)
    return f"{shown}{undecided}{lower}{marks}"


def _return_loss(result: MatrixResult, row: int, column: int) -> str:
    return f"{RETURN_LOSS} {result.return_loss_db[row][column][0]:.0f}"


def _marks(result: MatrixResult) -> dict[int, str]:
    """A letter for every soft gate, by its index."""
    soft = (at for at, gate in enumerate(result.gates) if not gate.hard)
    return dict(zip(soft, ascii_lowercase, strict=False))


def _legend(result: MatrixResult, level: int, printed: str) -> Iterator[str]:
    """What each sign in the table means, family by family."""
    yield ""
    yield from (f"{sign}  {meaning}" for sign, meaning in SIGNS.items() if sign in printed)
    heads: list[FamilyHead | Column] = [*result.families, *result.columns]
    for head in heads:
        if head.pack:
            yield f"{FROM_PACK}  {head.name}: from pack {head.pack}"
    for row, family in enumerate(result.families):
        for at, gate in enumerate(result.gates):
            failed = [_shows(result, row, column, level, at) for column in range(len(result.columns))]
            if any(failed):
                sign = _sign(result, at)
                where = _runs([column.name for column in result.columns], failed)
                yield f"{sign}  {family.name} ({where}): {family.gate_reasons[gate.id]}"


def _sign(result: MatrixResult, gate: int) -> str:
    if result.gates[gate].id == MATCH:
        return MISSED
    return REFUSED if result.gates[gate].hard else _marks(result)[gate]


def _runs(names: list[str], chosen: list[bool]) -> str:
    """The chosen names, neighbours drawn together as first to last."""
    groups = groupby(zip(names, chosen, strict=True), key=itemgetter(1))
    runs = ([name for name, _ in group] for is_chosen, group in groups if is_chosen)
    return ", ".join(run[0] if len(run) == 1 else f"{run[0]} to {run[-1]}" for run in runs)


def _shows(result: MatrixResult, row: int, column: int, level: int, gate: int) -> bool:
    """Whether the sign of a gate stands in a cell."""
    refused_by = result.refused_by[row][column][level]
    if result.gates[gate].hard:
        return refused_by == gate
    return refused_by < 0 and bool(result.marks[row][column][level] >> gate & 1)


def _limit(limit: LimitResult) -> Iterator[str]:
    margin = _range(f"{end:+.1f} dB" for end in (limit.margin_db, limit.margin_high_db) if end is not None)
    allowed = _range(engineering(end, "W") for end in (limit.allowed_w, limit.allowed_high_w) if end is not None)
    parts = [margin, f"allows {allowed}" if allowed else "", "this one limits" if limit.binding else ""]
    yield f"{limit.name}: {', '.join(part for part in parts if part) or 'does not apply'}"
    yield f"  {limit.sentence}"


def _range(ends: Iterable[str]) -> str:
    """The conservative and the optimistic end, once when they read the same."""
    return " to ".join(dict.fromkeys(ends))


def _state(result: CellResult) -> Iterator[str]:
    yield _heated("centre contact", result.contact_temperature_c, result.allowed_temperature_c)
    yield _heated("cable", result.cable_temperature_c, result.cable_allowed_temperature_c)
    yield f"cable counted: {result.cable_name}{'' if result.cable_given else ', the usual one of the connector'}"
    yield f"peak voltage {engineering(result.peak_voltage_v, 'V')}"
    if result.largest_power_w is not None:
        yield f"largest safe power by these figures {engineering(result.largest_power_w, 'W')}"


def _heated(what: str, temperature_c: float, allowed_c: float) -> str:
    at, allowed = (temperature_words(one, whole=True) for one in (temperature_c, allowed_c))
    return f"{what} at {at}, allowed {allowed}"


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
    yield "guaranteed " + ("none stated" if losses.guaranteed_db is None else f"{losses.guaranteed_db:.4f} dB")
    reach, origin = engineering(losses.published_at_hz, "Hz"), _origin(losses.published_source, losses.published_kind)
    yield f"published at most {losses.published_db:g} dB at {reach}{origin}"


def _rating(rating: RatingCheck) -> Iterator[str]:
    power, reach = engineering(rating.power_w, "W"), engineering(rating.frequency_hz, "Hz")
    air, hottest = (temperature_words(one) for one in (rating.ambient_temperature_c, rating.hottest_temperature_c))
    conditions = f"air {air}, hottest {hottest}, {rating.cable}"
    computed = _range(engineering(end, "W") for end in (rating.computed_w, rating.computed_high_w))
    yield f"{rating.part}: {power} at {reach}, {conditions}{_origin(rating.source, rating.kind)}"
    yield f"  computed there {computed}. {rating.sentence}"
    if rating.note:
        yield f"  {rating.note}"


def _step(step: Step, equations: dict[str, str]) -> Iterator[str]:
    end = "" if step.end == "both" else f" ({step.end} end of the ratings)"
    yield equations.get(step.formula, step.formula)
    if step.purpose or end:
        yield f"  for {step.purpose}{end}" if step.purpose else f"  {end.strip()}"
    yield from (f"    {_value(value)}" for value in step.inputs)
    yield f"  = {_value(step.result)}"


def _value(value: SymbolValue) -> str:
    unit = "" if value.unit == "1" else f" {value.unit}"
    origin = _origin(value.source, value.kind)
    return f"{value.symbol} = {value.value:.6g}{unit}, {value.meaning}{origin}"


def _origin(source: str, kind: str) -> str:
    """Source and kind in brackets; a kind that only repeats its source says nothing new."""
    if not source:
        return ""
    return f" [{source}, {kind}]" if kind and kind.replace(" ", "_") != source else f" [{source}]"


def _power(power_w: float) -> str:
    return engineering(power_w, "W") if power_w else "receive (0 W)"


def _section(title: str, lines: Iterable[str]) -> list[str]:
    shown = [f"  {line}" for line in lines]
    return ["", title, *shown] if shown else []


def _aligned(rows: list[list[str]]) -> Iterator[str]:
    widths = [max(map(len, column)) for column in zip(*rows, strict=True)]
    for name, *values in rows:
        cells = [value.rjust(width) for value, width in zip(values, widths[1:], strict=True)]
        yield "  ".join([name.ljust(widths[0]), *cells]).rstrip()
