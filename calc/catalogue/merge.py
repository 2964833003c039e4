"""Laying packs over the catalogue: all of them, or none with the reason.

An entry that a pack brings is its own as a whole. Within an entry that it
overrides, values that stay as they were keep their sources; each value that is
new has its source's id led by the pack's, "club.data_sheet", and so carries
the pack into every derivation.
"""

from collections.abc import Callable, Mapping, Sequence
from itertools import zip_longest
from typing import Any

import msgspec

from ..errors import InputError
from .checks import check
from .defaults import customary_cable_of, model_cable
from .edition import Edition
from .pack import TABLES, Document, Pack, ReadPack, read_pack
from .schema import Band, HouseLimit, PackSummary, Source
from .tables import Catalogue, built_in_tables

__all__ = ["edition_of"]

MOST_PACKS = 20
MOST_ENTRIES = 100
"""Of one table, the built-in ones included: no more can be asked for in one matrix."""

SORTED = ("interfaces", "cables", "wire_lines")
NAMED = ("interfaces", "cables", "wire_lines", "bands", "modes")


def edition_of(documents: Sequence[Document]) -> Edition:
    """The catalogue with every pack laid over it.

    Raises InputError, its field led by the document's label, for the first
    pack that can't be taken: bad in itself, or in conflict with another.
    """
    if len(documents) > MOST_PACKS:
        raise InputError("packs", len(documents), f"up to {MOST_PACKS} packs")
    laying = _Laying(built_in_tables())
    for document in documents:
        try:
            laying.add(read_pack(document))
        except InputError as error:
            raise _labelled(error, document.label) from None
    for document, pack in zip(documents, laying.packs, strict=True):
        try:
            laying.check(pack)
        except InputError as error:
            raise _labelled(error, document.label) from None
    return Edition(laying.finished())


def _labelled(error: InputError, label: str) -> InputError:
    field = "pack" if error.field == "request" else error.field
    return error.renamed(f"{label}: {field}" if label else field)


class _Laying:
    """Tables that packs are laid over one after the other."""

    def __init__(self, built_in: Catalogue) -> None:
        self._built_in = built_in
        self._tables: dict[str, dict[str, Any]] = {name: dict(getattr(built_in, name)) for name in (*TABLES, "sources")}
        self._house_limits: dict[str, HouseLimit] = {}
        self._powers: tuple[float, ...] = ()
        self._names: dict[str, str] = {}
        self._summaries: list[PackSummary] = []
        self.packs: list[Pack] = []

    def add(self, read: ReadPack) -> None:
        """Lay one more pack over the tables. Raises InputError for a conflict and for an unknown source."""
        pack = read.pack
        for other in self.packs:
            if other.id == pack.id:
                raise InputError("id", pack.id, f"an id that no other pack has; {other.name} has it")
        own = self._own_sources(pack)
        added, changed = [], []
        for table in TABLES:
            for at, entry in enumerate(getattr(pack, table)):
                before = self._before(pack, table, at, entry)
                credited, differing = self._credited(pack, own, f"{table}[{at}]", entry, before)
                self._tables[table][entry.id] = credited
                self._names[f"{table}/{entry.id}"] = pack.name
                added += [] if before else [f"{table}/{entry.id}"]
                changed += [f"{table}/{entry.id}{path}" for path in differing] if before else []
            self._refuse_idle_overrides(pack, table)
        for at, limit in enumerate(pack.house_limits):
            self._refuse_given(f"house_limits[{at}].id", limit.id, f"house_limits/{limit.id}")
            self._house_limits[limit.id], _ = self._credited(pack, own, f"house_limits[{at}]", limit, None)
            self._names[f"house_limits/{limit.id}"] = pack.name
            added.append(f"house_limits/{limit.id}")
        if pack.default_powers_w:
            if self._powers:
                giver = self._names["default_powers_w"]
                raise InputError("default_powers_w", pack.default_powers_w, f"left out, as {giver} gives them")
            self._powers = tuple(pack.default_powers_w)
            self._names["default_powers_w"] = pack.name
            changed.append("default_powers_w")
        self.packs.append(pack)
        self._summaries.append(
            PackSummary(pack.id, pack.name, pack.version, pack.note, added, changed, read.changed, read.today)
        )

    def check(self, pack: Pack) -> None:
        """Refuse entries that can't be computed with, now that all packs are there."""
        tables = self.tables()
        for table in (*TABLES, "house_limits"):
            entries = getattr(pack, table)
            for at, entry in enumerate(entries):
                check(table, entry, f"{table}[{at}]", tables)
                if table in NAMED:
                    _refuse_same_name(f"{table}[{at}].name", entry, getattr(tables, table))
            count = len(getattr(tables, table))
            if entries and count > MOST_ENTRIES:
                raise InputError(table, count, f"up to {MOST_ENTRIES} with the built-in ones and those of other packs")

    def tables(self) -> Catalogue:
        """The catalogue as it is with the packs so far."""
        tables = dict(self._tables)
        for name in SORTED:
            tables[name] = _sorted(tables[name], lambda entry: entry.order)
        if any(pack.bands for pack in self.packs):
            tables["bands"] = _sorted(tables["bands"], _lowest_edge)
        return msgspec.structs.replace(
            self._built_in,
            **tables,
            house_limits=dict(self._house_limits),
            default_powers_w=self._powers or self._built_in.default_powers_w,
            packs=tuple(self._summaries),
            pack_names=dict(self._names),
        )

    def finished(self) -> Catalogue:
        """The catalogue with all packs, whose summaries say what stands for what their entries leave out."""
        tables = self.tables()
        summaries = [
            msgspec.structs.replace(summary, taken=[*summary.taken, *_left_out(pack, tables)])
            for pack, summary in zip(self.packs, self._summaries, strict=True)
        ]
        return msgspec.structs.replace(tables, packs=tuple(summaries))

    def _own_sources(self, pack: Pack) -> dict[str, Source]:
        own: dict[str, Source] = {}
        for at, source in enumerate(pack.sources):
            if source.id in own or source.id in self._built_in.sources:
                raise InputError(f"sources[{at}].id", source.id, "an id that no other source has")
            own[source.id] = source
        return own

    def _before(self, pack: Pack, table: str, at: int, entry: Any) -> Any:
        """The built-in entry that this one overrides, if any."""
        built_in = getattr(self._built_in, table)
        field = f"{table}[{at}].id"
        self._refuse_given(field, entry.id, f"{table}/{entry.id}")
        if entry.id in built_in and entry.id not in getattr(pack.overrides, table):
            raise InputError(field, entry.id, f"an id that is not built in, or one that overrides.{table} names")
        return built_in.get(entry.id)

    def _refuse_given(self, field: str, entry: str, key: str) -> None:
        if key in self._names:
            raise InputError(field, entry, f"an id that is given once; {self._names[key]} gives it")

    def _refuse_idle_overrides(self, pack: Pack, table: str) -> None:
        given = {entry.id for entry in getattr(pack, table)}
        for at, entry in enumerate(getattr(pack.overrides, table)):
            field = f"overrides.{table}[{at}]"
            if entry not in getattr(self._built_in, table):
                raise InputError(field, entry, "an id of a built-in entry")
            if entry not in given:
                raise InputError(field, entry, f"an id that {table} of this pack gives")

    def _credited(
        self, pack: Pack, own: dict[str, Source], path: str, entry: Any, before: Any
    ) -> tuple[Any, list[str]]:
        """The entry with the source of every new value led by the pack's id, and the paths of what is new."""
        differing: list[str] = []

        def credited(value: Any, built_in: Any, place: str) -> Any:
            if isinstance(value, list):
                counterparts = built_in if isinstance(built_in, list) else []
                pairs = zip_longest(value, counterparts[: len(value)])
                return [credited(item, counterpart, f"{place}[{at}]") for at, (item, counterpart) in enumerate(pairs)]
            if not isinstance(value, dict):
                return value
            built_in = built_in if isinstance(built_in, dict) else {}
            result = {name: credited(item, built_in.get(name), f"{place}.{name}") for name, item in value.items()}
            plain = {name: item for name, item in value.items() if not isinstance(item, (dict, list))}
            if any(built_in.get(name) != item for name, item in plain.items()):
                differing.append(place)
                if "source" in value:
                    result["source"] = self._lead(pack, own, f"{path}{place}.source", value["source"])
            return result

        result = credited(msgspec.to_builtins(entry), msgspec.to_builtins(before), "")
        return msgspec.convert(result, type(entry)), sorted(differing)

    def _lead(self, pack: Pack, own: dict[str, Source], field: str, name: str) -> str:
        source = own.get(name) or self._built_in.sources.get(name)
        if source is None:
            listed = ", ".join(own) or "none yet"
            raise InputError(field, name, f"a source of the pack ({listed}), or a built-in one")
        lead = f"{pack.id}.{name}"
        self._tables["sources"][lead] = Source(
            lead, source.title, source.seen, source.address, source.body, source.year, source.place
        )
        return lead


def _left_out(pack: Pack, tables: Catalogue) -> list[str]:
    """What entries of a pack leave out, and what stands for it."""
    families = [
        f"{entry.name}: no customary cable is named; {tables.cables[customary_cable_of(entry, tables)].name} is taken."
        for entry in pack.interfaces
        if entry.customary_cable is None
    ]
    cables = [
        f"{entry.name}: no build is given; that of {model_cable(entry, tables).name}, scaled to its diameter, is taken."
        for entry in pack.cables
        if entry.build is None
    ]
    return families + cables


def _sorted(table: dict[str, Any], by: Callable[[Any], float]) -> dict[str, Any]:
    return {entry.id: entry for entry in sorted(table.values(), key=by)}


def _lowest_edge(band: Band) -> float:
    return min(edges.low_hz for edges in band.regions.values()) if band.regions else 0.0


def _refuse_same_name(field: str, entry: Any, table: Mapping[str, Any]) -> None:
    for other in table.values():
        if other.id != entry.id and other.name == entry.name:
            raise InputError(field, entry.name, f"a name that no other entry has; {other.id} has it")
