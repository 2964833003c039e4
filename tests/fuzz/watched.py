"""The app as it is served, with a line for each request in the file FUZZ_LOG names: how it ended, and what it took."""

import json
import os
import time
from collections.abc import Callable, Iterable
from io import BytesIO
from typing import Any

from jointwise.backend.app import create_app

SHOWN_FROM_S = 0.5
"""From so many seconds of the processor on, as after a fault, the line holds what was asked."""

served = create_app()
log = os.open(os.environ["FUZZ_LOG"], os.O_WRONLY | os.O_APPEND | os.O_CREAT)


def app(environ: dict[str, Any], start_response: Callable[..., Any]) -> Iterable[bytes]:
    """Answers as the app does."""
    body = environ["wsgi.input"].read()
    ended = []

    def begin(status: str, *rest: Any) -> Callable[[bytes], object]:
        ended.append(int(status.split()[0]))
        return start_response(status, *rest)

    begun = time.thread_time()
    answer = served(environ | {"wsgi.input": BytesIO(body)}, begin)
    seconds = time.thread_time() - begun
    line = {"what": f"{environ['REQUEST_METHOD']} {environ['PATH_INFO']}", "status": ended[-1], "seconds": seconds}
    if seconds > SHOWN_FROM_S or ended[-1] >= 500:
        line["asked"] = environ["QUERY_STRING"] or body.decode("utf-8", "replace")
    os.write(log, json.dumps(line).encode() + b"\n")
    return answer
