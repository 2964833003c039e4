"""An app for the tests of the deadline, whose work has no end."""

import signal
from pathlib import Path

from flask import Flask, request

from jointwise.backend.deadline import limited_to
from jointwise.backend.problem import problem_response

app = Flask(__name__)
app.register_error_handler(Exception, problem_response)


@app.get("/")
def ready() -> str:
    """Whether a worker is free."""
    return "ready"


@app.get("/wanted")
def wanted() -> None:
    """Works for as long as somebody waits, once it has made the file that `begun` names."""
    Path(request.args["begun"]).touch()
    with limited_to(3600, request.environ):
        while True:
            pass


@app.get("/stuck")
def stuck() -> None:
    """Works on whatever it is told, as a fault inside a library might."""
    signal.pthread_sigmask(signal.SIG_BLOCK, {signal.SIGABRT})
    while True:
        pass
