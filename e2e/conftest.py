"""The fixtures of the end-to-end tests."""

from visits import address, browser, visit

__all__ = ["address", "browser", "visit"]
