"""Refusing bad input: one sentence that names the field, the value and what is allowed."""

import json
import re
from collections.abc import Mapping
from typing import TypeVar

__all__ = ["HIDDEN", "InputError", "known", "shown"]

Entry = TypeVar("Entry")

SHOWN_CHARACTERS = 60  # longest value repeated to the user

HIDDEN = re.compile(r"[\x00-\x1f\x7f-\x9f\xad\u061c\u180e\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb]")
"""Characters that are not seen, but steer a terminal or turn a line of text around: controls, marks of direction."""


class InputError(ValueError):
    """A request that can't be answered as it stands.

    `field` is the path in the request, `value` what was received as short JSON
    text, `allowed` what may stand there; `str()` is the sentence for the user.
    """

    def __init__(self, field: str, value: object, allowed: str) -> None:
        self.field = field
        self.received = value
        self.value = shown(value)
        self.allowed = allowed
        super().__init__(f"{field} is {self.value}; allowed: {allowed}.")

    def renamed(self, field: str) -> "InputError":
        """The same refusal, its field named as it is seen from outside."""
        return InputError(field, self.received, self.allowed)


def known(field: str, name: str, table: Mapping[str, Entry]) -> Entry:
    """The entry of a catalogue table. Raises InputError naming the field when there is none."""
    if name not in table:
        raise InputError(field, name, f"one of {', '.join(table)}")
    return table[name]


def shown(value: object) -> str:
    """A value as short JSON text."""
    text = json.dumps(value, ensure_ascii=False)
    # a lone surrogate is legal JSON text but no UTF-8
    text = text.encode("utf-8", "replace").decode()
    text = HIDDEN.sub(lambda found: f"\\u{ord(found[0]):04x}", text)
    return text if len(text) <= SHOWN_CHARACTERS else f"{text[: SHOWN_CHARACTERS - 1]}…"
