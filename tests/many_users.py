"""Runs the server as backend/README.md's "Many users" does: gunicorn with its workers, and nginx in front of it."""

import os
import re
import shlex
import shutil
import socket
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import NamedTuple

ROOT = Path(__file__).parents[1]
README = ROOT / "backend/README.md"
PROXY = ROOT / "backend/nginx.conf"
APP = "jointwise.backend.app:create_app()"
PATIENCE_S = 600

NGINX = """
daemon off;
pid {folder}/pid;
error_log stderr;
worker_rlimit_nofile 8192;
events {{ worker_connections 4096; }}
http {{
    access_log off;
    client_body_temp_path {folder}/body;
    proxy_temp_path {folder}/proxy;
    fastcgi_temp_path {folder}/fastcgi;
    uwsgi_temp_path {folder}/uwsgi;
    scgi_temp_path {folder}/scgi;
    include {folder}/jointwise.conf;
}}
"""
"""What Debian's own file has around the included one, for a user without rights, and room for a crowd."""


class Served(NamedTuple):
    """A running server."""

    port: int
    master: int
    """Process of the master, whose children are the workers."""

    def workers(self) -> list[int]:
        """The processes that answer now."""
        return [int(one) for one in Path(f"/proc/{self.master}/task/{self.master}/children").read_text().split()]


def command(app: str, port: int) -> list[str]:
    """The command of README with another app and port."""
    line = re.search(r"^\.venv/bin/(gunicorn .*)$", README.read_text(), re.M)[1]
    program, *words = shlex.split(line.replace(APP, app).replace("127.0.0.1:8073", f"127.0.0.1:{port}"))
    return [str(Path(sys.executable).with_name(program)), *words]


def free_port() -> int:
    """A port nobody listens on."""
    with socket.socket() as taken:
        taken.bind(("127.0.0.1", 0))
        return taken.getsockname()[1]


def comes(condition: Callable[[], object]) -> bool:
    """Whether a condition comes to hold."""
    end = time.monotonic() + PATIENCE_S
    while not condition():
        if time.monotonic() > end:
            return False
        time.sleep(0.02)
    return True


def listens(port: int) -> bool:
    """Whether somebody listens on a port."""
    with socket.socket() as asking:
        return asking.connect_ex(("127.0.0.1", port)) == 0


@contextmanager
def running(words: list[str], port: int, **options: object) -> Iterator[subprocess.Popen]:
    """A command that listens on a port, ended with the block."""
    with subprocess.Popen(words, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, **options) as process:
        try:
            assert comes(lambda: listens(port) or process.poll() is not None), words
            assert process.poll() is None, words
            yield process
        finally:
            process.terminate()


@contextmanager
def gunicorn(app: str = APP, *more: str, env: dict[str, str] | None = None, **options: object) -> Iterator[Served]:
    """The app behind README's command and more words, on a free port, with README's environment."""
    port = free_port()
    options["env"] = os.environ | dict(re.findall(r"^export (\w+)=(\S+)", README.read_text(), re.M)) | (env or {})
    with running([*command(app, port), *more], port, **options) as process:
        yield Served(port, process.pid)


@contextmanager
def nginx(behind: int, folder: Path) -> Iterator[int]:
    """The port of a proxy with the file of the repository, in front of a server's port."""
    port = free_port()
    conf = PROXY.read_text().replace("127.0.0.1:8073", f"127.0.0.1:{behind}")
    (folder / "jointwise.conf").write_text(conf.replace("127.0.0.1:8080", f"127.0.0.1:{port}"))
    (folder / "nginx.conf").write_text(NGINX.format(folder=folder))
    program = shutil.which("nginx", path="/usr/sbin:/usr/local/sbin:/usr/bin:/usr/local/bin")
    with running([program, "-c", str(folder / "nginx.conf"), "-p", str(folder)], port):
        yield port
