"""The door to the core as the browser's worker uses it: packed into the payload as `jointwise.worker`.

Public function: `answer`.
"""

import logging
from functools import lru_cache
from os import urandom

from pyodide.ffi import JsBuffer

from jointwise.calc.catalogue import Edition
from jointwise.calc.operations import InputError, call

__all__ = ["answer"]

REFERENCE_BYTES = 6


def answer(name: str, body: JsBuffer, packs: list[dict[str, str]]) -> bytes | dict[str, str]:
    """The result as JSON with the packs that count, or what the page needs to say why there is none.

    What is unforeseen goes in full to standard error, which is the browser's
    console, and to the user only as a reference to find it there.
    """
    try:
        texts = tuple((pack["label"], pack["text"].encode(errors="replace")) for pack in packs)
        return call(name, body.to_bytes(), _edition(texts) if texts else None)
    except InputError as error:
        return {"detail": str(error), "field": error.field, "value": error.value, "allowed": error.allowed}
    except Exception:
        reference = urandom(REFERENCE_BYTES).hex()
        logging.getLogger(__name__).exception("Reference %s: %s", reference, name)
        return {"detail": f"The core failed on this request; the browser's console says why under {reference}."}


@lru_cache(maxsize=2)  # those in force, and those the page tries out
def _edition(texts: tuple[tuple[str, bytes], ...]) -> Edition:
    # what reads packs is imported once there are some: the start is the sooner over
    from jointwise.calc.catalogue.merge import edition_of
    from jointwise.calc.catalogue.pack import Document

    return edition_of([Document(label, text) for label, text in texts])
