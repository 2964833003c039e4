"""Which modules a running Python has read from files. Public function: `under`."""

import sys
from pathlib import PurePosixPath

__all__ = ["under"]


def under(place: str) -> list[str]:
    """The dotted names of all loaded modules whose file lies under `place`, sorted.

    Named by the file, as one file may be loaded under several names.
    """
    files = {getattr(module, "__file__", None) for module in sys.modules.values()}
    paths = [PurePosixPath(file).relative_to(place) for file in files if file and file.startswith(f"{place}/")]
    return sorted(".".join([*path.parent.parts, path.name.split(".")[0]]).removesuffix(".__init__") for path in paths)
