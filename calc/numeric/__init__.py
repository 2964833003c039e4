"""Numbers: random draws, rounding, units, and how an answer writes them."""
