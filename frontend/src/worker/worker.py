"""The door to the core as the browser's worker uses it: packed into the payload as `jointwise.worker`.

Public function: `answer`.
"""

import logging
from os import urandom

from pyodide.ffi import JsBuffer

from jointwise.calc.operations import InputError, call

__all__ = ["answer"]

REFERENCE_BYTES = 6


def answer(name: str, body: JsBuffer) -> bytes | dict[str, str]:
    """The result as JSON, or what the page needs to say why there is none.

    What is unforeseen goes in full to standard error, which is the browser's
    console, and to the user only as a reference to find it there.
    """
    try:
        return call(name, body.to_bytes())
    except InputError as error:
        return {"detail": str(error), "field": error.field, "value": error.value, "allowed": error.allowed}
    except Exception:
        reference = urandom(REFERENCE_BYTES).hex()
        logging.getLogger(__name__).exception("Reference %s: %s", reference, name)
        return {"detail": f"The core failed on this request; the browser's console says why under {reference}."}
