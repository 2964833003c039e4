"""A browser that forgets, that keeps nothing, and whose room is used up: the saved page in every engine."""

import pytest
from engines import ENGINES, Engine, View
from expected import numbers
from test_saved_engines import CHARTS_OWN, assert_numbers
from test_served_faults import FILL

LINES = "#view=line"
KEPT_NAME = "() => readers.everywhere('#name')[0]?.value"
SAID = "(words) => readers.everywhere('[role=status]').some(({textContent}) => textContent.includes(words))"
KEEPS_NOTHING = "keeps nothing"
NO_ROOM = "no room"


OFTEN = "chromium"
IN_EVERY = pytest.mark.parametrize("engine", ENGINES.values(), ids=ENGINES)
IN_ONE_OFTEN = pytest.mark.parametrize(
    "engine",
    [pytest.param(engine, marks=[] if name == OFTEN else pytest.mark.nightly) for name, engine in ENGINES.items()],
    ids=ENGINES,
)
"""The others cost minutes and go the same way."""


def opened(view: View, fragment: str) -> View:
    """The page from disk once its core has answered."""
    view.go("about:blank")
    view.open(fragment)
    view.ready()
    return view


def assert_computes(view: View) -> None:
    """The matrix takes a change and shows the core's numbers."""
    opened(view, "").enter("#vswr", "2")
    assert_numbers(view, numbers(vswr=2))
    assert set(view.wrong()) <= CHARTS_OWN


def named(view: View, name: str) -> None:
    """The line gets a name."""
    view.enter("#name", name)


@IN_ONE_OFTEN
def test_a_window_that_forgets_keeps_a_line_while_it_is_open(engine: Engine) -> None:
    """What is kept is there again in the same window, and not in the next."""
    with engine() as view:
        named(opened(view, LINES), "Garden")
        assert opened(view, LINES).run(KEPT_NAME) == "Garden"

    with engine() as view:
        opened(view, LINES)
        assert view.run(KEPT_NAME) != "Garden"


@IN_EVERY
def test_a_browser_that_keeps_nothing_is_no_obstacle(engine: Engine) -> None:
    """With its storage off the page computes, and says that nothing is kept."""
    with engine(storage=False) as view:
        assert_computes(view)

        named(opened(view, LINES), "Garden")
        assert view.comes(SAID, KEEPS_NOTHING)
        assert set(view.wrong()) <= CHARTS_OWN


@IN_ONE_OFTEN
def test_a_browser_without_room_is_no_obstacle(engine: Engine) -> None:
    """With its storage filled to the last byte the page computes, says so, and what was kept before is there."""
    with engine() as view:
        named(opened(view, LINES), "Garden")
        view.run(FILL)

        named(view, "A longer name, for which there is no room any more")
        assert view.comes(SAID, NO_ROOM)
        assert_computes(view)

        assert opened(view, LINES).run(KEPT_NAME) == "Garden"
