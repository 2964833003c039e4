"""Putting the one-file page together: text in, text out, no file read or written.

The page must never reach outside: its policy allows no request, only the
scripts whose hashes it names, and `check` refuses a page that holds an outside
address in its own code or an unexpanded placeholder.
"""

import base64
import hashlib
import re
from collections.abc import Mapping

__all__ = ["check", "expanded", "part_element", "policy", "script_text", "sizes", "source_hash"]

PLACEHOLDER = re.compile(r"\{\{([a-z_]+)\}\}")
OUTSIDE = re.compile(r"""(?:src|href|action|data|poster)\s*=\s*["']?(?:https?:)?//|url\(\s*["']?(?:https?:)?//""", re.I)


def expanded(template: str, parts: Mapping[str, str]) -> str:
    """The template with every {{name}} replaced by its part.

    Raises ValueError for a placeholder without a part or a part without a placeholder.
    """
    wanted = PLACEHOLDER.findall(template)
    if sorted(wanted) != sorted(parts):
        raise ValueError(f"placeholders {sorted(wanted)} and parts {sorted(parts)} differ")
    # a function, so that a backslash in a part is not read as a group
    return PLACEHOLDER.sub(lambda found: parts[found[1]], template)


def script_text(code: str) -> str:
    """JavaScript that may be put inside a <script> element: nothing in it ends the element or opens a comment."""
    return re.sub(r"</(script)", r"<\\/\1", code, flags=re.I).replace("<!--", r"<\!--")


def part_element(name: str, base64_text: str) -> str:
    """The element that holds a part, as the page's code finds it; never seen, with scripts or without."""
    return f'<data id="part-{name}" hidden value="\n{base64_text}\n"></data>'


def source_hash(text: str) -> str:
    """The 'sha256-…' source expression of an inline script (Content Security Policy Level 3, 8.3)."""
    digest = base64.b64encode(hashlib.sha256(text.encode()).digest()).decode()
    return f"'sha256-{digest}'"


def policy(scripts: list[str]) -> str:
    """A policy under which the page runs just these inline scripts and a worker of its own, and asks nobody.

    It bars every request, frame, form and base address, and that text becomes markup or script elsewhere than in
    Lit's templates and the page's own two places. No policy in a file can bar that a script navigates, opens a
    window or makes a peer connection: Chromium knows neither `navigate-to` nor `webrtc`, and takes `sandbox` from a
    header only. Against those stands that no foreign script is ever run.
    """
    hashes = " ".join(source_hash(script) for script in scripts)
    rules = {
        "default-src": "'none'",
        "script-src": f"{hashes} 'wasm-unsafe-eval'",
        "worker-src": "blob:",
        "style-src": "'unsafe-inline'",  # the chart library writes its styles into the page
        "img-src": "data: blob:",
        "base-uri": "'none'",
        "form-action": "'none'",
        "require-trusted-types-for": "'script'",
        "trusted-types": "lit-html jointwise-script jointwise-formula",
    }
    return "; ".join(f"{name} {value}" for name, value in rules.items())


def check(page: str) -> None:
    """Raises ValueError when the page still holds a placeholder or would load something from outside."""
    left = PLACEHOLDER.search(page)
    if left:
        raise ValueError(f"the page holds the unexpanded placeholder {left[0]}")
    outside = OUTSIDE.search(page)
    if outside:
        around = page[outside.start() : outside.end() + 40]
        raise ValueError(f"the page names an outside address: {around!r}")


def sizes(parts: Mapping[str, str]) -> str:
    """The bytes of each part and of all, one line each, largest first."""
    counted = {name: len(text.encode()) for name, text in parts.items()}
    rows = [f"{count:>12,} {name}" for name, count in sorted(counted.items(), key=lambda item: -item[1])]
    return "\n".join([*rows, f"{sum(counted.values()):>12,} in all"])
