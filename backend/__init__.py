"""The Flask app and the command line of Jointwise: two doors to `jointwise.calc.operations`."""

import os

# The core's matrices are small: threads of numpy's library would only wait for each other, the longer the busier the
# machine. It is read when numpy is first imported.
os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
