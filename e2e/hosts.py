"""Websites of others, on ports of their own: pages that show a matrix of ours."""

from collections.abc import Iterator
from contextlib import contextmanager
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from threading import Thread
from typing import NamedTuple

STRICT = (
    "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self';"
    " base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'; trusted-types 'none'"
)
"""No inline script or style, nothing from elsewhere, and no text taken for markup."""


class File(NamedTuple):
    """One file of a website."""

    body: bytes
    type: str = "text/html; charset=utf-8"
    policy: str = ""


class Website(NamedTuple):
    """Files by path, which a test may change, and the paths that were asked for with the bytes that went out."""

    address: str
    files: dict[str, File]
    sent: list[tuple[str, int]]


@contextmanager
def website(files: dict[str, File]) -> Iterator[Website]:
    """A website with these files, up for as long as the block runs."""
    sent: list[tuple[str, int]] = []

    class Answers(BaseHTTPRequestHandler):
        def do_GET(self) -> None:
            path = self.path.partition("?")[0]
            if path not in files:
                self.send_error(404)
                return
            page = files[path]
            self.send_response(200)
            self.send_header("Content-Type", page.type)
            self.send_header("Content-Length", str(len(page.body)))
            if page.policy:
                self.send_header("Content-Security-Policy", page.policy)
            self.end_headers()
            self.wfile.write(page.body)
            sent.append((path, len(page.body)))

        def log_message(self, *_: object) -> None:
            """A test says what it has to say by itself."""

    server = ThreadingHTTPServer(("127.0.0.1", 0), Answers)
    thread = Thread(target=server.serve_forever)
    thread.start()
    try:
        yield Website(f"http://127.0.0.1:{server.server_port}/", files, sent)
    finally:
        server.shutdown()
        server.server_close()
        thread.join()
