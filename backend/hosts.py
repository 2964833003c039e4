"""Which names a request may be addressed to.

A browser takes a page of another website for the server's own once that website's name leads to this computer (DNS
rebinding), and what the page asks then comes under that name. So a server for this computer answers to its own names.
"""

from ipaddress import ip_address
from urllib.parse import urlsplit

from .settings import ANY, Settings

__all__ = ["is_answered", "names_answered"]

LOOPBACK_NAMES = frozenset({"localhost", "127.0.0.1", "::1"})


def names_answered(chosen: Settings) -> frozenset[str] | None:
    """The names that are answered to; None for any."""
    if chosen.hosts:
        return None if ANY in chosen.hosts else frozenset(_bare(host) for host in chosen.hosts)
    if chosen.proxies == 0 and _is_loopback(chosen.host):
        return LOOPBACK_NAMES | {_bare(chosen.host)}
    return None  # others than this computer reach the server anyway, or its proxy judges the name


def is_answered(host_header: str, names: frozenset[str] | None) -> bool:
    """Whether a request with this Host header is addressed to one of the names, at whatever port."""
    if names is None:
        return True
    try:
        return urlsplit(f"//{host_header}").hostname in names
    except ValueError:  # brackets without an address
        return False


def _bare(host: str) -> str:
    return host.strip("[]").lower()


def _is_loopback(host: str) -> bool:
    try:
        return host == "localhost" or ip_address(host).is_loopback
    except ValueError:
        return False
