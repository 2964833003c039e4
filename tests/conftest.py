"""What the tests share: a real server on a free loopback port, and a plain client for it."""

from collections.abc import Callable, Iterator
from contextlib import ExitStack

import pytest
from flask import Flask
from wire import Client, serving

from jointwise.backend.app import create_app


@pytest.fixture(scope="session")
def client() -> Iterator[Client]:
    """A client of a server with its default settings."""
    with serving(create_app()) as client:
        yield client


@pytest.fixture
def serve() -> Iterator[Callable[[Flask], Client]]:
    """Starts servers of other apps, and stops them after the test."""
    with ExitStack() as stack:
        yield lambda app: stack.enter_context(serving(app))
