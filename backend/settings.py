"""What the server can be told: one table of name, default, range and help.

Each is read from the environment as JOINTWISE_ and its name in capitals; an
option of `jointwise serve` or the mapping given to `create_app` goes before it.
"""

from collections.abc import Mapping
from typing import Annotated, Any, get_type_hints

import msgspec
from msgspec import Meta, Struct

from jointwise.backend.fields import fields
from jointwise.calc.operations import InputError

__all__ = ["Settings", "environment_name", "read"]

PREFIX = "JOINTWISE_"


class Settings(Struct, kw_only=True, frozen=True):
    """The settings of the server; README lists them from here."""

    host: Annotated[str, Meta(description="Address to listen on; the default is this computer only")] = (
        "127.0.0.1"
    )
    port: Annotated[int, Meta(ge=0, le=65535, description="Port to listen on; 0 takes a free one")] = 8073
    threads: Annotated[int, Meta(ge=1, le=64, description="Requests answered at the same time")] = 4
    max_body_bytes: Annotated[
        int, Meta(ge=1024, le=16_777_216, description="Longest request body", extra={"unit": "bytes"})
    ] = 262_144
    max_unread_bytes: Annotated[
        int,
        Meta(
            ge=1024,
            le=1_073_741_824,
            description="Body from which on the server hangs up without reading or explaining",
            extra={"unit": "bytes"},
        ),
    ] = 16_777_216
    cache_seconds: Annotated[
        int,
        Meta(
            ge=0, le=31_536_000, description="How long a browser may reuse an answer", extra={"unit": "s"}
        ),
    ] = 3600
    page_folder: Annotated[
        str, Meta(description="Folder with the files of the page; empty for the page that came along")
    ] = ""


def environment_name(name: str) -> str:
    """The environment variable of a setting."""
    return PREFIX + name.upper()


def read(environment: Mapping[str, str], given: Mapping[str, Any]) -> Settings:
    """The settings in force. Raises InputError naming the setting, its value and the range."""
    types = get_type_hints(Settings, include_extras=True)
    found = {
        name: environment[environment_name(name)]
        for name in types
        if environment_name(name) in environment
    }
    return Settings(**{name: _converted(name, value, types) for name, value in {**found, **given}.items()})


def _converted(name: str, value: Any, types: Mapping[str, Any]) -> Any:
    if name not in types:
        raise InputError("setting", name, f"one of {', '.join(types)}")
    try:
        return msgspec.convert(value, types[name], strict=False)
    except msgspec.ValidationError as error:
        field = fields(Settings)[name]
        raise InputError(name, value, f"{field.type.__name__} {field.allowed}".strip()) from error
