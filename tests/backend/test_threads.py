"""One answer is computed on one thread, so that a busy machine does not make its threads wait for each other."""

import subprocess
import sys

MULTIPLY = """
import os
import jointwise.backend.app
import numpy as np

square = np.ones((512, 512))
square @ square
print(len(os.listdir("/proc/self/task")))
"""


def test_numpy_s_library_starts_no_threads() -> None:
    """A product large enough for several threads is made on the one that asks."""
    done = subprocess.run([sys.executable, "-c", MULTIPLY], capture_output=True, text=True, check=True)

    assert int(done.stdout) == 1
