"""One request of each operation that is answered: its first in `frontend/payload/cases.json`."""

import json
from pathlib import Path
from typing import Any

__all__ = ["EXAMPLES"]

CASES = Path(__file__).parents[1] / "frontend/payload/cases.json"

EXAMPLES: dict[str, dict[str, Any]] = {}
for case in json.loads(CASES.read_text()):
    if case["operation"] not in EXAMPLES:
        EXAMPLES[case["operation"]] = json.loads(case["body"])
