"""What a station file holds, declared once: its readers and its published schema are made of this.

The ranges are the core's own: a kept line is the request of a line, of which a station may give all but the elements;
the settings of a station are the fields of a cell's request. What the page alone keeps has the bounds of the page's
readers, which the tests compare with these.
"""

from typing import Annotated, Any, Literal, get_type_hints

import msgspec
from msgspec import UNSET, Meta, Struct, UnsetType

from jointwise.calc.catalogue.mating import Gender
from jointwise.calc.cell.requests import CellRequest
from jointwise.calc.feedline.elements import Element, Load
from jointwise.calc.fields import Field, Number, object_of
from jointwise.calc.kit.requests import KitRequest, OwnedAdapter, Port
from jointwise.calc.line.requests import LineRequest
from jointwise.calc.matrix.requests import MatrixRequest
from jointwise.calc.physics.scenario import Bands, Identifier, Power, SpokenUnits
from jointwise.calc.waves.touchstone import MOST_CHARACTERS

__all__ = ["FORMAT", "VERSION", "Kept", "station_schema"]

FORMAT = "jointwise station"
VERSION = 1
DIALECT = "https://json-schema.org/draft/2020-12/schema"
MOST_IN_USE = 59
"""Last place in the longest of a station's lists."""

Name = Annotated[str, Meta(max_length=60)]
InUse = Annotated[int, Meta(ge=-1, le=MOST_IN_USE)]
PackText = Annotated[str, Meta(description="Text of the pack's file, JSON by the schema of packs")]
Day = Annotated[
    str, Meta(pattern=r"^\d{4}-\d{2}-\d{2}$", description="Day", extra={"allowed": "a day such as 2026-11-29"})
]

Moment = Annotated[
    str,
    Meta(
        pattern=r"^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}\.\d{3}Z$",
        description="When it was written",
        extra={"allowed": "a moment such as 2026-11-29T12:00:00.000Z"},
    ),
]
JointCode = Annotated[
    str,
    Meta(pattern="^[0-9A-HJKMNP-TV-Z]{8}$", description="Code", extra={"allowed": "eight digits and capital letters"}),
]


class Rig(Struct, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """A transmitter with its greatest power, what it does at a bad SWR, and its output socket."""

    name: Annotated[Name, Meta(description="What it is")] = ""
    power_w: Annotated[Power, Meta(description="Greatest power, peak envelope")] = 100.0
    behaviour: Annotated[Identifier | None, Meta(description="At a bad SWR, an id of the transmitters")] = None
    family: Annotated[Identifier | None, Meta(description="Its output socket, an id of the connectors")] = None
    gender: Annotated[Gender | None, Meta(description="Plug or jack")] = None


class Antenna(Struct, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """An antenna, known as the load of a line is."""

    name: Annotated[Name, Meta(description="What it is")] = ""
    load: Annotated[Load, Meta(description="How it is known")]


class OwnPack(Struct, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """A pack of the reader's own."""

    text: PackText
    on: Annotated[bool, Meta(description="Whether it counts")] = False
    refused: Annotated[str, Meta(description="Why it is no longer taken")] = ""
    id: str = ""
    name: str = ""


class ServerPack(Struct, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """A pack of the server that the page came from."""

    text: PackText
    id: str = ""
    name: str = ""


class KeptPacks(Struct, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """The packs of the page; those of the server count, and of one's own those that are on."""

    own: Annotated[list[OwnPack], Meta(description="Own packs")]
    server: Annotated[list[ServerPack], Meta(description="Packs of the server")]


class SweptJoint(Struct, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """What a sweep said of one joint: the reflection it has beyond that of a good one."""

    element: Annotated[int, Meta(ge=0, le=59)]
    name: Name
    excess: float | None


class KeptSweep(Struct, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """A measured sweep with its verdict of that day."""

    date: Day
    line: Annotated[Name, Meta(description="Name of the line")]
    ports: Annotated[int, Meta(ge=1, le=2, description="Ports of the file")]
    name: Annotated[str, Meta(max_length=200, description="Name of the file")]
    text: Annotated[str, Meta(max_length=MOST_CHARACTERS, description="The Touchstone file")]
    verdict: Annotated[str, Meta(max_length=2000, description="Verdict")]
    joints: Annotated[list[SweptJoint], Meta(max_length=60, description="Joints")]
    resistance_ohm: Annotated[float | None, Meta(description="Resistance of a part", extra={"unit": "Ω"})]


class JointEntry(Struct, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """What was written of a joint, once and for all; of a field the newest entry counts, and empty takes it back."""

    at: Moment
    field: Annotated[
        Literal["fitted_by", "fitted_on", "torque", "sealed", "inspected_on", "state", "note", "belongs_to"],
        Meta(description="What it is about"),
    ]
    value: Annotated[str, Meta(max_length=500, description="Entry")]


class JointRecord(Struct, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """What the joint book holds of one joint."""

    code: JointCode
    line: Annotated[Name, Meta(description="Name of the line")]
    name: Annotated[Name, Meta(description="Name of the joint")]
    joins: Annotated[str, Meta(max_length=300, description="What it joins")]
    months: Annotated[int, Meta(ge=1, le=1200, description="Months between inspections")]
    entries: Annotated[list[JointEntry], Meta(max_length=5000, description="Entries")]


class JointBook(Struct, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """What was done to each joint, as dated entries."""

    joints: Annotated[list[JointRecord], Meta(max_length=5000, description="Joints")]


class Checklist(Struct, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """Which boxes of the checklist are ticked, by their ids."""

    ticked: Annotated[list[Annotated[str, Meta(max_length=400)]], Meta(max_length=5000, description="Ticks")]


def _made(name: str, docstring: str, fields: dict[str, Any], *, required: dict[str, Any]) -> type[Struct]:
    """A Struct of fields that may be left out, and of some that may not."""
    left_out = [(field, type_ | UnsetType, UNSET) for field, type_ in fields.items()]
    return msgspec.defstruct(
        name,
        [*required.items(), *left_out],
        kw_only=True,
        frozen=True,
        forbid_unknown_fields=True,
        namespace={"__doc__": docstring},
    )


def _of(request: type[Struct], *without: str) -> dict[str, Any]:
    """The fields of a request, with their types; the page asks in the units of the station."""
    hints = get_type_hints(request, include_extras=True)
    return {name: hints[name] for name in object_of(request).fields if name not in (*without, "units")}


def _of_any_size(name: str, type_: Any) -> Any:
    """A setting may be out of range, as what is typed into a form may: it is refused where it is asked."""
    field: Field = object_of(CellRequest).fields[name]
    if not isinstance(field.shape, Number):
        return type_
    described = Meta(description=field.description, extra={"unit": field.unit} if field.unit else None)
    return Annotated[float | None, described] if field.nullable else Annotated[float, described]


Settings = _made(
    "Settings",
    "Fields that requests of several operations share; what is left out is what the core takes then.",
    {name: _of_any_size(name, type_) for name, type_ in _of(CellRequest, "family").items()}
    | {"bands": Annotated[Bands, Meta(description=object_of(MatrixRequest).fields["bands"].description)]},
    required={},
)

KeptStation = _made(
    "KeptStation",
    "The station that every question is asked about.",
    {
        "version": Annotated[int, Meta(ge=1, le=1)],
        "name": Annotated[Name, Meta(description="Name of the station")],
        "address": Annotated[str, Meta(max_length=200, description="Address of the page on the web")],
        "units": SpokenUnits,
        "settings": Annotated[Settings, Meta(description="Settings")],
        "rigs": Annotated[list[Rig], Meta(max_length=12, description="Transmitters")],
        "rig": Annotated[InUse, Meta(description="Place of the transmitter in use; -1 for none")],
        "antennas": Annotated[list[Antenna], Meta(max_length=24, description="Antennas")],
        "antenna": Annotated[InUse, Meta(description="Place of the antenna in use; -1 for none")],
        "gear": Annotated[list[Port], Meta(max_length=60, description="Ports of the gear")],
        "cables": Annotated[
            list[Annotated[str, Meta(max_length=40)]], Meta(max_length=40, description="Cables in use, by id")
        ],
    },
    required={},
)

OpenLine = _made(
    "OpenLine",
    "The request of a line; the station gives what it leaves out.",
    _of(LineRequest, "elements", "explain"),
    required={
        "elements": Annotated[
            list[Element], Meta(max_length=60, description="Parts of the line, from the transmitter to the antenna")
        ]
    },
)

KeptLine = _made(
    "KeptLine",
    "A line under its name.",
    {},
    required={"name": Annotated[Name, Meta(description="Name")], "request": OpenLine},
)

KeptLines = _made(
    "KeptLines",
    "The lines, and which of them is shown.",
    {"current": Annotated[int, Meta(ge=0, le=47, description="Line shown")]},
    required={
        "lines": Annotated[list.__class_getitem__(KeptLine), Meta(min_length=1, max_length=48, description="Lines")]
    },
)

KeptKit = _made(
    "KeptKit",
    "The request of a kit, and which rows of its packing list are ticked.",
    _of(KitRequest, "ports", "owned", "pairs")
    | {
        "owned": Annotated[list[OwnedAdapter], Meta(max_length=200, description="The adapters you have")],
        "pairs": Annotated[
            list[Annotated[list[Annotated[int, Meta(ge=0, le=59)]], Meta(min_length=2, max_length=2)]],
            Meta(max_length=400, description="Which ports must join which"),
        ],
        "ticked": Annotated[list[Annotated[str, Meta(max_length=200)]], Meta(max_length=400, description="Ticks")],
        "cable_dielectric": Annotated[str, Meta(description="Of kits of before 0.3; it is left behind")],
    },
    required={"ports": Annotated[list[Port], Meta(max_length=60, description="The ports of your gear")]},
)

Kept = _made(
    "Kept",
    "What the page keeps for its reader. A later version may keep more.",
    {
        "station": Annotated[KeptStation, Meta(description="Station")],
        "lines": Annotated[KeptLines, Meta(description="Lines")],
        "kit": Annotated[KeptKit, Meta(description="Kit")],
        "packs": Annotated[KeptPacks, Meta(description="Packs")],
        "sweeps": Annotated[list[KeptSweep], Meta(max_length=200, description="Sweeps")],
        "joints": Annotated[JointBook, Meta(description="Joint book")],
        "checklist": Annotated[Checklist, Meta(description="Checklist")],
    },
    required={},
)

_Whole = _made(
    "StationFile",
    "All that a reader of the page keeps, under a name and a date.",
    {
        "snapshot": Annotated[
            dict[str, Any],
            Meta(description="The answer of the operation `snapshot` about this station, for a website"),
        ]
    },
    required={
        "format": Literal["jointwise station"],
        "version": Annotated[int, Meta(ge=VERSION, le=VERSION)],
        "name": Annotated[Name, Meta(description="What the reader calls it")],
        "date": Annotated[str, Meta(max_length=10, description="Day it was last changed, such as 2026-11-29")],
        "kept": Kept,
    },
)


def station_schema() -> dict[str, Any]:
    """The JSON Schema of a station file, draft 2020-12, made from the types."""
    schema = msgspec.json.schema(_Whole)
    for name in ("StationFile", "Kept"):
        del schema["$defs"][name]["additionalProperties"]
    return {"$schema": DIALECT, "title": "Jointwise station file", **schema}
