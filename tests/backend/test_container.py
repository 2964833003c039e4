"""The container files and the service of systemd run what README says, with options that the programs know."""

import configparser
import json
import os
import re
import shlex
import subprocess
import sys
from pathlib import Path

import pytest
import yaml
from many_users import APP, PROXY, ROOT, command

from jointwise.backend.settings import read

pytestmark = pytest.mark.slow

FOLDER = ROOT / "backend/container"
CONTAINERFILE = (FOLDER / "Containerfile").read_text()
STAGES = re.findall(r"^FROM \S+ AS (\w+)$", CONTAINERFILE, re.M)
COMPOSED = yaml.safe_load((FOLDER / "compose.yaml").read_text())["services"]


def of_the_service() -> tuple[list[str], dict[str, str]]:
    """Command and environment of the service of systemd."""
    unit = configparser.ConfigParser(strict=False, interpolation=None)
    unit.optionxform = str
    unit.read(FOLDER / "jointwise.service")
    service = unit["Service"]
    return shlex.split(service["ExecStart"]), dict(one.split("=", 1) for one in shlex.split(service["Environment"]))


def of_the_container() -> tuple[list[str], dict[str, str]]:
    """Command and environment of the server's container."""
    told = dict(re.findall(r'^ENV (\w+)="(.*)"$', CONTAINERFILE, re.M))
    return json.loads(re.search(r"^CMD (.*)$", CONTAINERFILE, re.M)[1]), told | COMPOSED["server"]["environment"]


@pytest.mark.parametrize("described", [of_the_service, of_the_container])
def test_it_runs_the_command_of_the_readme(described):
    """Its program and options are README's, and gunicorn and the server know all that the environment sets."""
    (program, *words), environment = described()

    assert Path(program).name == "gunicorn"
    assert words == command(APP, 8073)[1:]
    assert read(environment, {}).proxies == 1
    gunicorn = [Path(sys.executable).with_name("gunicorn"), "--check-config", APP]
    run = subprocess.run(gunicorn, env=os.environ | environment, capture_output=True, text=True, check=False)
    assert run.returncode == 0, run.stderr


def test_images_have_a_version_and_files_come_from_the_tree():
    """Every image is an official one of a stated version, and what is copied is there."""
    images = re.findall(r"^FROM (\S+)", CONTAINERFILE, re.M)
    copied = [word for line in re.findall(r"^COPY (?!--from)(.*) \S+$", CONTAINERFILE, re.M) for word in line.split()]

    assert images
    assert all(re.fullmatch(r"docker\.io/library/\w+:\d+\.\d+[\w.-]*", image) for image in images), images
    assert copied
    assert [name for name in copied if not (ROOT / name).exists()] == []


def test_the_proxy_is_opened_to_outside_its_container():
    """The one line that the container changes is in the proxy's file, once."""
    found, put = re.search(r"sed -i 's/(.*)/(.*)/'", CONTAINERFILE).groups()

    assert PROXY.read_text().count(found) == 1
    assert f"EXPOSE {put.split()[1].rstrip(';')}\n" in CONTAINERFILE


def test_the_services_are_built_from_here():
    """Each is a stage of the container file, and the server is reached by the proxy only."""
    for service in COMPOSED.values():
        built = service["build"]
        context = (FOLDER / built["context"]).resolve()
        assert (context, context / built["dockerfile"]) == (ROOT, FOLDER / "Containerfile")
        assert built["target"] in STAGES
    assert "ports" not in COMPOSED["server"]
    assert COMPOSED["server"]["network_mode"] == "service:proxy"
