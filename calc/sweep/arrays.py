"""Array types of this room. Unless a docstring says otherwise the last axis is frequency."""

import numpy as np
from numpy.typing import NDArray

__all__ = ["ComplexArray", "IndexArray", "NumberArray", "RealArray"]

RealArray = NDArray[np.float64]
ComplexArray = NDArray[np.complex128]
NumberArray = NDArray[np.inexact]
"""Real or complex."""

IndexArray = NDArray[np.int64]
