"""Whether the entries of a pack can be computed with: what a type alone does not say.

`check` takes an entry, its path and the tables it is laid into, and raises
an InputError that names the field, the value and what is allowed.
"""

from collections.abc import Callable, Mapping
from itertools import pairwise
from typing import Any

from msgspec import Struct

from ..errors import InputError, known
from .schema import (
    Adapter,
    AdapterFigures,
    Band,
    Cable,
    CableBuild,
    CablePower,
    HouseLimit,
    Interface,
    Label,
    Mating,
    Mode,
    PowerRating,
    WireLine,
)
from .tables import Catalogue

__all__ = ["CHOICES", "TIGHTENED_BY", "Choice", "check", "choices_of"]

PLATING = ("conductivity_s_per_m", "relative_permeability")
"""Of inner and outer platings; the outer one radiates as well."""
HEAT = ("thermal_conductivity_w_per_m_k", "heat_capacity_j_per_m3_k")
FILLING = ("relative_permittivity", "loss_tangent", "thermal_conductivity_w_per_m_k")
RATIOS = (1.05, 12.0)
"""Outer over inner diameter, as far as the TE11 cutoff is computed (formulas/coax.py)."""

TIGHTENED_BY = ("torque wrench", "hand or torque wrench", "hand")
VIBRATIONS = ("none", "vehicle", "severe")
SEALINGS = "none, or an IP code of two numerals such as IP67"


def _words(*words: str) -> dict[str, str]:
    return {word: word for word in words}


def _with(tables: Catalogue, properties: tuple[str, ...]) -> dict[str, str]:
    """The materials that have all of some properties."""
    materials = tables.materials.values()
    having = [one for one in materials if all(getattr(one, name) is not None for name in properties)]
    return {material.id: material.name for material in having}


def _metals(tables: Catalogue) -> list[str]:
    """The names under which the metals of the galvanic table are found."""
    return [name for metal in tables.galvanic_metals.values() for name in metal.found_as]


def _filling(tables: Catalogue) -> dict[str, str]:
    return _with(tables, FILLING)


def _plating(tables: Catalogue, *more: str) -> dict[str, str]:
    metals = set(_metals(tables))
    return {name: words for name, words in _with(tables, (*PLATING, *more)).items() if name in metals}


def _conducting(tables: Catalogue) -> dict[str, str]:
    return _with(tables, HEAT)


Choice = str | Callable[[Catalogue], Mapping[str, str]]
"""The entries of a table, or words each with its name."""

CHOICES: Mapping[type[Struct], Mapping[str, Choice]] = {
    Interface: {
        "dielectric": _filling,
        "bead_material": _filling,
        "inner_plating": _plating,
        "outer_plating": lambda tables: _plating(tables, "emissivity"),
        "vibration": lambda _: _words(*VIBRATIONS),
        "customary_cable": "cables",
        "generous_dielectric": _filling,
        "generous_bead_material": _filling,
        "tightened_by": lambda _: _words(*TIGHTENED_BY),
    },
    PowerRating: {"cable": "cables"},
    Cable: {"dielectric": "cable_dielectrics", "centre_conductor": lambda tables: _words(*_metals(tables))},
    CableBuild: {
        "inner_metal": _conducting,
        "screen_metal": _conducting,
        "jacket_material": lambda tables: _with(tables, (*HEAT, "emissivity")),
    },
    Mating: {"plug": "interfaces", "jack": "interfaces"},
    Adapter: {"id": "interfaces", "joins": "interfaces"},
    AdapterFigures: {"to": "interfaces"},
    HouseLimit: {"interfaces": "interfaces", "bands": "bands"},
}
"""What the fields of an entry and of its parts choose among: forms offer it, and nothing else is taken."""


def choices_of(choice: Choice, tables: Catalogue) -> Mapping[str, str]:
    """What can be chosen, each with its name."""
    if isinstance(choice, str):
        return {name: entry.name for name, entry in getattr(tables, choice).items()}
    return choice(tables)


def check(table: str, entry: Any, path: str, tables: Catalogue) -> None:
    """Raise InputError for the first thing of an entry of a table that can't be computed with."""
    _chosen(entry, path, tables)
    if table in CHECKS:
        CHECKS[table](entry, path, tables)


def _chosen(entry: Struct, path: str, tables: Catalogue) -> None:
    """What an entry and its parts name is among the choices."""
    offered = CHOICES.get(type(entry), {})
    for name in entry.__struct_fields__:
        value, place = getattr(entry, name), f"{path}.{name}"
        if isinstance(value, Label) and name in offered:
            known(f"{place}.value", value.value, choices_of(offered[name], tables))
        elif isinstance(value, Struct):
            _chosen(value, place, tables)
        elif isinstance(value, str) and name in offered:
            known(place, value, choices_of(offered[name], tables))
        for at, one in enumerate(value if isinstance(value, list) else []):
            if isinstance(one, Struct):
                _chosen(one, f"{place}[{at}]", tables)
            elif name in offered:
                known(f"{place}[{at}]", one, choices_of(offered[name], tables))


def _interface(entry: Interface, path: str, tables: Catalogue) -> None:
    ratio = entry.outer_diameter_m.value / entry.inner_diameter_m.value
    if not RATIOS[0] <= ratio <= RATIOS[1]:
        allowed = f"{RATIOS[0]:g} to {RATIOS[1]:g} times inner_diameter_m, {entry.inner_diameter_m.value:g}"
        raise InputError(f"{path}.outer_diameter_m.value", entry.outer_diameter_m.value, allowed)
    _less(path, "outer_diameter_m", entry.outer_diameter_m.value, "body_diameter_m", entry.body_diameter_m.value)
    if entry.bead_length_m.value > entry.section_length_m.value:
        allowed = f"no more than section_length_m, {entry.section_length_m.value:g}"
        raise InputError(f"{path}.bead_length_m.value", entry.bead_length_m.value, allowed)
    _less(path, "lowest_temperature_c", entry.lowest_temperature_c.value, *_hottest(entry))
    for at, rating in enumerate(entry.average_power):
        _heats(f"{path}.average_power[{at}]", rating, "contact_temperature_c")
    sealing, numerals = entry.sealing_mated.value, tables.ip_numerals
    coded = sealing.startswith("IP") and len(sealing) == len("IP67")
    if sealing != "none" and not (coded and {f"solids_{sealing[2]}", f"water_{sealing[3]}"} <= set(numerals)):
        raise InputError(f"{path}.sealing_mated.value", sealing, SEALINGS)
    if entry.receive_only and not entry.receive_only_reason:
        raise InputError(f"{path}.receive_only_reason", "", "a reason, as the family is receive only")
    if entry.constant_impedance != (entry.section is None):
        allowed = "true without a section, false with one"
        raise InputError(f"{path}.constant_impedance", entry.constant_impedance, allowed)
    limit = entry.vswr_limit
    if limit.at_dc.value + limit.slope_per_hz.value * entry.rated_frequency_hz.low.value <= 1:
        raise InputError(f"{path}.vswr_limit.at_dc.value", limit.at_dc.value, "a limit above 1 at the rated frequency")


def _cable(entry: Cable, path: str, tables: Catalogue) -> None:
    _less(path, "lowest_temperature_c", entry.lowest_temperature_c.value, *_hottest(entry))
    _fitted(entry, f"{path}.attenuation")
    for at, rating in enumerate(entry.power):
        _heats(f"{path}.power[{at}]", rating, "conductor_temperature_c")
    if entry.build is not None:
        _build(entry.build, entry.outer_diameter_m.value, f"{path}.build", tables)


def _build(build: CableBuild, outer_m: float, path: str, tables: Catalogue) -> None:
    """Layers that lie one around the other, of materials that carry and store heat."""
    _less(
        path,
        "inner_diameter_m",
        build.inner_diameter_m.value,
        "dielectric_diameter_m",
        build.dielectric_diameter_m.value,
    )
    layers = {
        "dielectric_diameter_m": build.dielectric_diameter_m.value,
        "screen_diameter_m": build.screen_diameter_m.value,
        "the cable's outer_diameter_m": outer_m,
    }
    for (name, value), (larger_name, larger) in pairwise(layers.items()):
        if value > larger:
            raise InputError(f"{path}.{name}.value", value, f"no more than {larger_name}, {larger:g}")
    if build.jacket_material is None:
        known(f"{path}.screen_metal.value", build.screen_metal.value, _with(tables, (*HEAT, "emissivity")))


def _wire_line(entry: WireLine, path: str, tables: Catalogue) -> None:
    _less(path, "lowest_temperature_c", entry.lowest_temperature_c.value, *_hottest(entry))
    _fitted(entry, f"{path}.attenuation")
    if entry.wire_diameter_m is not None and entry.spacing_m is not None:
        _less(path, "wire_diameter_m", entry.wire_diameter_m.value, "spacing_m", entry.spacing_m.value)


def _fitted(entry: Cable | WireLine, path: str) -> None:
    """Figures enough for the law of a line's attenuation."""
    fitted = {point.frequency_hz for point in entry.attenuation if point.fit}
    if len(fitted) < 2:
        raise InputError(path, len(fitted), "figures to fit at two frequencies or more")
    _clad(entry, path)


def _clad(entry: Cable | WireLine, path: str) -> None:
    """Of a clad conductor: figures below those fitted that rise with frequency, more slowly than its root."""
    lowest = min((point for point in entry.attenuation if point.fit), key=lambda point: point.frequency_hz)
    through = [point for point in entry.attenuation if point.through]
    for point, above in pairwise([*through, lowest]):
        root = above.db_per_m * (point.frequency_hz / above.frequency_hz) ** 0.5
        if point.fit or not (point.frequency_hz < above.frequency_hz and root < point.db_per_m < above.db_per_m):
            allowed = "figures to go through by frequency, below those fitted, that rise more slowly than its root"
            raise InputError(path, point.db_per_m, allowed)


def _band(entry: Band, path: str, tables: Catalogue) -> None:
    if not entry.regions:
        raise InputError(f"{path}.regions", {}, "edges in at least one of the Regions 1, 2 and 3")
    for region, edges in entry.regions.items():
        if edges.low_hz >= edges.high_hz:
            raise InputError(f"{path}.regions.{region}.low_hz", edges.low_hz, f"less than high_hz, {edges.high_hz:g}")


def _mode(entry: Mode, path: str, tables: Catalogue) -> None:
    if (entry.on_time_s is None) != (entry.off_time_s is None):
        missing = "on_time_s" if entry.on_time_s is None else "off_time_s"
        raise InputError(f"{path}.{missing}", None, "a time, as the other of the two is given")


def _adapter(entry: Adapter, path: str, tables: Catalogue) -> None:
    for at, figures in enumerate(entry.figures):
        known(f"{path}.figures[{at}].to", figures.to, dict.fromkeys(entry.joins))


CHECKS: Mapping[str, Callable[[Any, str, Catalogue], None]] = {
    "interfaces": _interface,
    "cables": _cable,
    "wire_lines": _wire_line,
    "adapters": _adapter,
    "bands": _band,
    "modes": _mode,
}


def _hottest(entry: Interface | Cable | WireLine) -> tuple[str, float]:
    return "highest_temperature_c", entry.highest_temperature_c.value


def _less(path: str, name: str, value: float, larger_name: str, larger: float) -> None:
    if value >= larger:
        raise InputError(f"{path}.{name}.value", value, f"less than {larger_name}, {larger:g}")


def _heats(path: str, rating: PowerRating | CablePower, name: str) -> None:
    """A rating's conductor must be hotter than its air."""
    air, reached = rating.ambient_temperature_c, getattr(rating, name)
    if not air < reached:
        raise InputError(f"{path}.{name}", reached, f"above the air, {air:g} °C")
