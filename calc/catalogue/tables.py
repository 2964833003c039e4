"""The tables of the catalogue and their reading from TOML: families, cables, bands, modes, materials, sources.

`built_in_tables()` reads and checks everything once. A value that names a source or
material the catalogue does not hold is refused at that moment, by name.
"""

from functools import lru_cache
from importlib.resources import files
from importlib.resources.abc import Traversable
from typing import Any, Protocol, TypeVar

import msgspec

from .fitting import (
    Attachment,
    GalvanicLimit,
    GalvanicMetal,
    Inspection,
    IpNumeral,
    PlatingSold,
    Rule,
    Screen,
    SealingLayer,
)
from .schema import (
    Adapter,
    AntennaView,
    Assumption,
    Atmosphere,
    Band,
    Cable,
    CableDielectric,
    Condition,
    HouseLimit,
    Installation,
    Interface,
    Material,
    Mating,
    Mode,
    NoiseEnvironment,
    PackSummary,
    SiteWord,
    SmallWords,
    Source,
    Transmitter,
    WireLine,
)

__all__ = ["Catalogue", "built_in_tables"]


class Identified(Protocol):
    """What every entry of a table has."""

    @property
    def id(self) -> str: ...


class Ordered(Identified, Protocol):
    """What the entries of a folder, each in a file of its own, have as well."""

    @property
    def order(self) -> int: ...


Entry = TypeVar("Entry", bound=Identified)
OrderedEntry = TypeVar("OrderedEntry", bound=Ordered)

PACKED = "packed.json"
"""All files as one, for the browser, where to read TOML or many files takes long."""


class Catalogue(msgspec.Struct, frozen=True):
    """All tables by id, in the order they are shown; the last four are what packs bring along."""

    interfaces: dict[str, Interface]
    cables: dict[str, Cable]
    wire_lines: dict[str, WireLine]
    matings: dict[str, Mating]
    adapters: dict[str, Adapter]
    bands: dict[str, Band]
    modes: dict[str, Mode]
    noise_environments: dict[str, NoiseEnvironment]
    antenna_views: dict[str, AntennaView]
    atmospheres: dict[str, Atmosphere]
    transmitters: dict[str, Transmitter]
    materials: dict[str, Material]
    cable_dielectrics: dict[str, CableDielectric]
    conditions: dict[str, Condition]
    installations: dict[str, Installation]
    site_words: dict[str, SiteWord]
    small_words: dict[str, SmallWords]
    rules: dict[str, Rule]
    attachments: dict[str, Attachment]
    screens: dict[str, Screen]
    sealing_layers: dict[str, SealingLayer]
    inspections: dict[str, Inspection]
    ip_numerals: dict[str, IpNumeral]
    galvanic_metals: dict[str, GalvanicMetal]
    galvanic_limits: dict[str, GalvanicLimit]
    platings_sold: dict[str, PlatingSold]
    assumptions: dict[str, Assumption]
    sources: dict[str, Source]
    house_limits: dict[str, HouseLimit] = {}
    default_powers_w: tuple[float, ...] = (0.0, 5.0, 50.0, 100.0, 400.0, 1500.0)
    packs: tuple[PackSummary, ...] = ()
    pack_names: dict[str, str] = {}
    """The pack that an entry comes from, by "table/id"."""

    def pack_of(self, table: str, entry: str) -> str:
        """The name of the pack that an entry comes from; empty for what is built in."""
        return self.pack_names.get(f"{table}/{entry}", "")


@lru_cache(maxsize=1)
def built_in_tables() -> Catalogue:
    """Read and check the catalogue that comes along. Raises ValueError naming the entry that does not hold together."""
    read = Catalogue(
        interfaces=_folder("interfaces", Interface),
        cables=_folder("cables", Cable),
        wire_lines=_folder("wire_lines", WireLine),
        matings=_table("matings", "mating", Mating),
        adapters=_table("adapters", "adapter", Adapter),
        bands=_table("bands", "band", Band),
        modes=_table("modes", "mode", Mode),
        noise_environments=_table("noise", "noise_environment", NoiseEnvironment),
        antenna_views=_table("noise", "antenna_view", AntennaView),
        atmospheres=_table("noise", "atmosphere", Atmosphere),
        transmitters=_table("transmitters", "transmitter", Transmitter),
        materials=_table("materials", "material", Material),
        cable_dielectrics=_table("cable_dielectrics", "cable_dielectric", CableDielectric),
        conditions=_table("conditions", "condition", Condition),
        installations=_table("installations", "installation", Installation),
        site_words=_table("words", "site_word", SiteWord),
        small_words=_table("words", "small_words", SmallWords),
        rules=_table("fitting", "rule", Rule),
        attachments=_table("fitting", "attachment", Attachment),
        screens=_table("fitting", "screen", Screen),
        sealing_layers=_table("fitting", "sealing_layer", SealingLayer),
        inspections=_table("fitting", "inspection", Inspection),
        ip_numerals=_table("fitting", "ip_numeral", IpNumeral),
        galvanic_metals=_table("galvanic", "galvanic_metal", GalvanicMetal),
        galvanic_limits=_table("galvanic", "galvanic_limit", GalvanicLimit),
        platings_sold=_table("galvanic", "plating_sold", PlatingSold),
        assumptions=_table("assumptions", "assumption", Assumption),
        sources=_table("sources", "source", Source),
    )
    if not _packed().is_file():  # else the build has read and checked it
        _check(read)
    return read


def _folder(name: str, entry: type[OrderedEntry]) -> dict[str, OrderedEntry]:
    entries = [_entry(read, entry, name) for read in _files()[name]]
    return _by_id(sorted(entries, key=lambda one: one.order))


def _table(file: str, key: str, entry: type[Entry]) -> dict[str, Entry]:
    return _by_id([_entry(read, entry, f"{file}.toml") for read in _files()[file][key]])


def _entry(read: dict[str, Any], entry: type[Entry], place: str) -> Entry:
    try:
        return msgspec.convert(read, entry)
    except msgspec.ValidationError as error:
        raise ValueError(f"{place}, {entry.__name__} {read.get('id')!r}: {error}") from None


@lru_cache(maxsize=1)
def _files() -> dict[str, Any]:
    packed = _packed()
    return (
        msgspec.json.decode(packed.read_bytes(), type=dict[str, Any]) if packed.is_file() else _read(files(__package__))
    )


def _packed() -> Traversable:
    return files(__package__) / PACKED


def _read(folder: Traversable) -> dict[str, Any]:
    """What each file holds, by its name without ending, and under a folder's name what its files hold, as a list."""
    return {
        path.name.removesuffix(".toml"): list(_read(path).values()) if path.is_dir() else _toml(path)
        for path in folder.iterdir()
        if path.is_dir() or path.name.endswith(".toml")
    }


def _toml(path: Traversable) -> Any:
    try:
        return msgspec.toml.decode(path.read_bytes())
    except msgspec.DecodeError as error:
        raise ValueError(f"{path.name}: {error}") from None


def _by_id(entries: list[Entry]) -> dict[str, Entry]:
    table = {entry.id: entry for entry in entries}
    if len(table) != len(entries):
        twice = sorted({entry.id for entry in entries if table[entry.id] is not entry})
        raise ValueError(f"two {type(entries[0]).__name__} entries have the same id: {', '.join(twice)}")
    return table


TABLES = [name for name in Catalogue.__struct_fields__ if name != "sources"]


def _check(read: Catalogue) -> None:
    tables = [table for name in TABLES if isinstance(table := getattr(read, name), dict)]
    for entry in (entry for table in tables for entry in table.values()):
        for source in _sources_in(entry):
            if source not in read.sources:
                raise ValueError(f"{entry.id}: source {source!r} is not in sources.toml")
    for interface in read.interfaces.values():
        named = (
            interface.dielectric,
            interface.bead_material,
            interface.inner_plating,
            interface.outer_plating,
            interface.generous_dielectric,
            interface.generous_bead_material,
        )
        for label in named:
            if label is not None and label.value not in read.materials:
                raise ValueError(f"{interface.id}: material {label.value!r} is not in materials.toml")
        customary = interface.customary_cable
        if customary is None or customary.value not in read.cables:
            raise ValueError(f"{interface.id}: customary_cable must be a cable of the catalogue")

    for mating in read.matings.values():
        _check_families(read, mating.id, [mating.plug, mating.jack])
    for adapter in read.adapters.values():
        _check_families(read, adapter.id, [adapter.id, *adapter.joins])
    for cable in read.cables.values():
        if cable.dielectric not in read.cable_dielectrics:
            raise ValueError(f"{cable.id}: dielectric {cable.dielectric!r} is not in cable_dielectrics.toml")
        _check_build(read, cable)


def _check_build(read: Catalogue, cable: Cable) -> None:
    if cable.build is None:
        raise ValueError(f"{cable.id}: no build; only a pack's cable may leave it out")
    for label in (cable.build.inner_metal, cable.build.screen_metal, cable.build.jacket_material):
        if label is not None and label.value not in read.materials:
            raise ValueError(f"{cable.id}: material {label.value!r} is not in materials.toml")


def _check_families(read: Catalogue, entry: str, families: list[str]) -> None:
    for family in families:
        if family not in read.interfaces:
            raise ValueError(f"{entry}: {family!r} is not an interface family")


def _sources_in(value: object) -> list[str]:
    if isinstance(value, (list, tuple)):
        return [source for item in value for source in _sources_in(item)]
    if isinstance(value, dict):
        return [source for item in value.values() for source in _sources_in(item)]
    if not isinstance(value, msgspec.Struct):
        return []
    own = [value.source] if hasattr(value, "source") else []
    return own + [source for name in value.__struct_fields__ for source in _sources_in(getattr(value, name))]
