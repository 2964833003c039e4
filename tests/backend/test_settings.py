"""The settings: where they come from, and what is refused."""

from pathlib import Path

import pytest

from jointwise.backend.settings import Settings, environment_name, read
from jointwise.backend.texts import plain, range_words, single
from jointwise.calc.fields import Text, object_of
from jointwise.calc.operations import InputError

BAD = [
    ("port", "65536", "from 0 to 65535"),
    ("port", "http", "whole number"),
    ("threads", "0", "from 1 to 64"),
    ("max_body_bytes", "999", "from 1000"),
    ("cache_seconds", "-1", "from 0"),
    ("colour", "red", "only the fields"),
]


def test_nothing_given_means_the_defaults():
    """Without environment and options the defaults hold, and the server keeps to this computer."""
    assert read({}, {}) == Settings()
    assert Settings().host == "127.0.0.1"


def test_environment_goes_before_the_default():
    """A variable of the environment sets its setting."""
    assert read({"JOINTWISE_PORT": "8000", "PORT": "9"}, {}) == Settings(port=8000)


def test_option_goes_before_the_environment():
    """What is given to the app is taken rather than the environment's."""
    assert read({"JOINTWISE_PORT": "8000"}, {"port": 8001}) == Settings(port=8001)


@pytest.mark.parametrize(("name", "value", "allowed"), BAD)
def test_bad_setting_is_refused_by_name(name, value, allowed):
    """A setting that can't be taken is refused with its name and its range."""
    with pytest.raises(InputError, match=f"^{name} is .*{allowed}"):
        read({}, {name: value})


def test_bad_environment_is_refused_by_name():
    """A variable of the environment out of range is refused with the setting's name."""
    with pytest.raises(InputError, match=r'^port is "0.5"; allowed: a whole number from 0 to 65535'):
        read({environment_name("port"): "0.5"}, {})


def test_every_setting_explains_itself():
    """Each setting has a sentence for its help, and each number a range."""
    for field in object_of(Settings).fields.values():
        assert field.description, field.name
        assert range_words(field) or isinstance(single(field).shape, Text), field.name


def test_the_readme_lists_every_setting_with_its_default():
    """The table of backend/README.md holds a row for every setting."""
    readme = (Path(__file__).parents[2] / "backend/README.md").read_text()

    for field in object_of(Settings).fields.values():
        assert f"| `{environment_name(field.name)}` | {plain(field.default) or 'none'} |" in readme
