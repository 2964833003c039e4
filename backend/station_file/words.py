"""A station file, and what the core says of it, as plain text for a terminal."""

from collections.abc import Iterable, Iterator
from typing import Any

from jointwise.calc.errors import HIDDEN
from jointwise.calc.fitout.results import FitoutResult, JointSheet
from jointwise.calc.kit.results import KitResult, PairResult
from jointwise.calc.line.results import LinePart, LineResult
from jointwise.calc.numeric.units import engineering
from jointwise.calc.sweep.results import SweepResult

from .reading import StationFile

__all__ = ["contents", "fitout", "kit", "line", "listing", "sweep", "visible"]

NOTHING = "–"


def visible(text: str) -> str:
    """The text with whatever would steer a terminal, or turn a line around, spelled out: names are the reader's own."""
    return "\n".join(HIDDEN.sub(lambda found: f"\\u{ord(found[0]):04x}", one) for one in text.split("\n"))


def contents(file: StationFile) -> dict[str, Any]:
    """What is in a file, as plain data."""
    station, kit = (file.kept.get(key, {}) for key in ("station", "kit"))
    return {
        "name": file.name,
        "date": file.date,
        "station": station.get("name", ""),
        "lines": [{"name": one["name"], "parts": len(one["request"]["elements"])} for one in file.lines],
        "kit": {"ports": len(kit.get("ports", [])), "owned": len(kit.get("owned", []))},
        "packs": [{"name": pack.name, "counts": pack.counts} for pack in file.packs],
        "sweeps": [
            {"line": one["line"], "date": one["date"], "file": one["name"], "verdict": one["verdict"]}
            for one in file.sweeps
        ],
        "joints": [
            {"code": one["code"], "line": one["line"], "name": one["name"], "entries": len(one["entries"])}
            for one in file.book
        ],
        "ticked": len(file.kept.get("checklist", {"ticked": []})["ticked"]),
        "unread": file.unread,
    }


def listing(file: StationFile) -> str:
    """What is in a file."""
    held = contents(file)
    lines = [
        f"{held['name'] or 'A station'}, {held['date'] or 'without a date'}",
        f"Station: {held['station'] or 'without a name'}" if "station" in file.kept else "",
        *_section("Lines", (f"{one['name']}, parts: {one['parts']}" for one in held["lines"])),
        f"Kit: ports {held['kit']['ports']}, adapters owned {held['kit']['owned']}" if "kit" in file.kept else "",
        *_section("Packs", (f"{one['name']}{'' if one['counts'] else ', turned off'}" for one in held["packs"])),
        *_section(
            "Sweeps", (f"{one['date']} {one['line']}, {one['file']}: {one['verdict']}" for one in held["sweeps"])
        ),
        *_section(
            "Joint book",
            (f"{one['code']} {one['line']}, {one['name']}, entries: {one['entries']}" for one in held["joints"]),
        ),
        f"Checklist: ticked {held['ticked']}" if "checklist" in file.kept else "",
        *_section("Not read", held["unread"], numbered=False),
    ]
    return "\n".join(line for line in lines if line)


def line(result: LineResult) -> str:
    """Verdict of a line, its figures where it is looked at, its parts, and what would help."""
    at = f"At {engineering(result.frequency_hz, 'Hz')} with {engineering(result.power_w, 'W')}"
    return "\n".join(
        [
            result.verdict,
            f"{at}: loss {_decibels(result.loss_db)}, SWR at the transmitter {_number(result.input.vswr)}",
            *_section("Parts, from the transmitter", map(_part, result.parts)),
            *_section("Would help", (change.title for change in result.changes if not change.same)),
            *_section("Cautions", result.cautions, numbered=False),
        ]
    )


def kit(result: KitResult) -> str:
    """Which adapters to carry, and how each pair is joined."""
    return "\n".join(
        [
            result.verdict,
            *_section("Adapters to carry", (f"{one.count} × {one.name}" for one in result.adapters), numbered=False),
            *_section("Pairs", map(_pair, result.pairs), numbered=False),
            *_section("Cautions", result.cautions, numbered=False),
        ]
    )


def fitout(result: FitoutResult) -> str:
    """A sheet for each joint of a line."""
    sheets = [text for sheet in result.joints for text in (_sheet(sheet), "")]
    return "\n".join([*sheets, *_section("Cautions", result.cautions, numbered=False)])


def sweep(result: SweepResult) -> str:
    """The verdict of a sweep, and what it says of each joint."""
    joints = result.line.joints if result.line else []
    return "\n".join(
        [
            result.verdict,
            *_section("Joints", (f"{one.name}: {one.words}" for one in joints)),
            *_section("Cautions", result.cautions, numbered=False),
        ]
    )


def _part(part: LinePart) -> str:
    margin = part.refusal or (NOTHING if part.margin_db is None else f"{part.margin_db:+.1f} dB")
    limited = f", limited by {part.binding}" if part.binding else ""
    largest = NOTHING if part.largest_power_w is None else engineering(part.largest_power_w, "W")
    return f"{part.name}: margin {margin}{limited}, largest safe power {largest}, loss {_decibels(part.loss_db)}"


def _pair(pair: PairResult) -> str:
    between = " to ".join(pair.names)
    if pair.joined is None:
        return f"{between}: can't be joined. {pair.sentence}"
    return f"{between}: {', '.join(one.name for one in pair.joined.adapters) or 'directly'}"


def _sheet(sheet: JointSheet) -> str:
    inspection = sheet.inspection
    due = f"due {inspection.due}" if inspection.due else f"every {inspection.interval_months} months"
    return "\n".join(
        [
            sheet.heading,
            *_section("Tools", (one.text for one in sheet.tools), numbered=False),
            *_section("Steps", (f"{one.at}: {one.text}" if one.at else one.text for one in sheet.steps)),
            *_section("Tightening", [sheet.torque.sentence] if sheet.torque.tightened else [], numbered=False),
            *_section("Sealing", [sheet.sealing.sentence, *(one.text for one in sheet.sealing.layers)], numbered=False),
            *_section("Inspection", [due, *(one.text for one in inspection.checks)], numbered=False),
        ]
    )


def _section(title: str, entries: Iterable[str], numbered: bool = True) -> Iterator[str]:
    """Entries under a title; nothing where there are none."""
    for at, entry in enumerate(entries):
        if at == 0:
            yield f"{title}:"
        yield f"  {at + 1} {entry}" if numbered else f"  {entry}"


def _decibels(loss: float | None) -> str:
    return NOTHING if loss is None else f"{loss:.2f} dB"


def _number(value: float | None) -> str:
    return NOTHING if value is None else f"{value:.2f}"
