"""The fixtures of the end-to-end tests."""

from visits import address, browser, elsewhere, visit

__all__ = ["address", "browser", "elsewhere", "visit"]
