"""What the page's form for packs is made of: every field of every part, with a unit the page knows."""

import re
from pathlib import Path

import pytest

from jointwise.assemble.pack_data import pack_shapes
from jointwise.calc.catalogue import catalogue
from jointwise.calc.catalogue.pack import TABLES, Pack
from jointwise.calc.catalogue.schema import GROUPS
from jointwise.calc.fields import object_of, objects_in

SHAPES = pack_shapes()
PARTS = {part.struct.__name__: part for part in objects_in(object_of(Pack))}
UNITS_OF_THE_PAGE = (Path(__file__).parents[2] / "frontend/src/shared/text/units.js").read_text()


@pytest.mark.parametrize("part", SHAPES)
def test_every_field_of_a_part_is_there_and_has_a_label(part: str) -> None:
    """The form knows the fields of the type itself, each with a label of its own and in a group that is shown."""
    fields = SHAPES[part]

    assert list(fields) == list(PARTS[part].fields)
    labels = [field["label"] for field in fields.values()]
    assert len(set(labels)) == len(labels)
    assert all(field.get("group", GROUPS[0]) in GROUPS for field in fields.values())


def test_the_page_can_convert_every_unit() -> None:
    """Each unit of the core and of data sheets is one that the page reads where they differ."""
    for fields in SHAPES.values():
        for name, field in fields.items():
            if field.get("unit") != field.get("sheet_unit"):
                for unit in (field["unit"], field["sheet_unit"]):
                    assert re.search(rf"\[[^\[\]]*, '{re.escape(unit)}'", UNITS_OF_THE_PAGE), (name, unit)


@pytest.mark.parametrize(("table", "part"), [(name, SHAPES["Pack"][name]["of"]["of"]) for name in TABLES])
def test_what_is_built_in_can_be_chosen(table: str, part: str) -> None:
    """Every word that a built-in entry has in a field with choices is one of them."""
    offering = {name: field["choices"] for name, field in SHAPES[part].items() if "choices" in field}
    for entry in getattr(catalogue(), table).values():
        for name, choices in offering.items():
            value = getattr(getattr(entry, name), "value", getattr(entry, name))
            assert value is None or value in choices, (entry.id, name)
