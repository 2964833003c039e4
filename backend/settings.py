"""The settings of the server: one table of name, default, range and help.

Each is read from the environment as JOINTWISE_ and its name in capitals; an
option of `jointwise serve` or the mapping given to `create_app` goes before it.
"""

import re
from collections.abc import Mapping
from typing import Annotated

from msgspec import Meta, Struct, field

from jointwise.calc.errors import InputError
from jointwise.calc.refusal import MOST_REQUEST_BYTES, decoded

from .texts import plain, request_body

__all__ = ["Settings", "environment_name", "read"]

PREFIX = "JOINTWISE_"

ANY = "*"
HOST = re.compile(r"\*|[A-Za-z0-9.-]+|\[[0-9A-Fa-f:.]+\]")
ORIGIN = re.compile(r"\*|https?://[A-Za-z0-9.-]+(:\d{1,5})?")


class Settings(Struct, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """The settings of the server; README lists them from here."""

    host: Annotated[str, Meta(description="Address to listen on; the default is this computer only")] = "127.0.0.1"
    hosts: Annotated[
        list[str],
        Meta(
            max_length=100,
            description="Names it answers to, without a port: such as club.example, * for any; "
            "empty for those of this computer while it listens there and has no proxy in front, else any",
        ),
    ] = field(default_factory=list)
    port: Annotated[int, Meta(ge=0, le=65535, description="Port to listen on; 0 takes a free one")] = 8073
    threads: Annotated[int, Meta(ge=1, le=64, description="Requests answered at the same time")] = 4
    max_body_bytes: Annotated[
        int, Meta(ge=1000, le=MOST_REQUEST_BYTES, description="Longest request body", extra={"unit": "bytes"})
    ] = MOST_REQUEST_BYTES
    max_unread_bytes: Annotated[
        int,
        Meta(
            ge=1000,
            le=1_000_000_000,
            description="Body from which on the server hangs up without reading or explaining",
            extra={"unit": "bytes"},
        ),
    ] = 16_000_000
    cache_seconds: Annotated[
        int,
        Meta(ge=0, le=31_536_000, description="How long a browser may reuse an answer", extra={"unit": "s"}),
    ] = 3600
    kept_bytes: Annotated[
        int,
        Meta(
            ge=0, le=1_000_000_000, description="Answers each process keeps in memory; 0, none", extra={"unit": "bytes"}
        ),
    ] = 32_000_000
    deadline_s: Annotated[
        float,
        Meta(ge=0.1, le=3600, description="Longest that one of many workers computes an answer", extra={"unit": "s"}),
    ] = 20.0
    embed_origins: Annotated[
        list[str],
        Meta(
            max_length=100,
            description="Websites that may show the matrix: origins such as https://club.example, * for all, or empty",
        ),
    ] = field(default_factory=lambda: ["*"])
    requests_per_minute: Annotated[
        int,
        Meta(ge=0, le=100_000, description="Answers an address may ask each process for in a minute; 0, any number"),
    ] = 0
    proxies: Annotated[
        int, Meta(ge=0, le=5, description="Proxies in front of the server whose X-Forwarded-For is believed")
    ] = 0
    page_folder: Annotated[
        str, Meta(description="Folder with the files of the page; empty for the page that came along")
    ] = ""
    packs_folder: Annotated[
        str,
        Meta(description="Folder with packs, its visible files *.json; empty for none but those of installed packages"),
    ] = ""


def environment_name(name: str) -> str:
    """The environment variable of a setting."""
    return PREFIX + name.upper()


def read(environment: Mapping[str, str], options: Mapping[str, object]) -> Settings:
    """The settings in force. Raises InputError naming the setting, its value and the range."""
    variables = {name: environment_name(name) for name in Settings.__struct_fields__}
    found = {name: environment[variable] for name, variable in variables.items() if variable in environment}
    body = request_body(Settings, {name: [plain(value)] for name, value in {**found, **options}.items()})
    chosen = decoded(body, Settings)
    _check(chosen.hosts, "hosts", HOST, "a name such as club.example without a port, an address such as [::1], or *")
    _check(chosen.embed_origins, "embed_origins", ORIGIN, "an origin such as https://club.example, or *")
    return chosen


def _check(texts: list[str], name: str, pattern: re.Pattern[str], allowed: str) -> None:
    for index, text in enumerate(texts):
        if not pattern.fullmatch(text):
            raise InputError(f"{name}[{index}]", text, allowed)
