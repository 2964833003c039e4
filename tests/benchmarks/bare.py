"""A Flask app with one bare route: so many bytes, and nothing else. What any answer of that length costs at least."""

from flask import Flask, Response

app = Flask(__name__, static_folder=None)


@app.route("/<int:count>", methods=["GET", "POST"])
def answer(count: int) -> Response:
    """So many bytes of JSON's media type."""
    return Response(b"0" * count, mimetype="application/json")
