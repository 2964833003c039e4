"""A matrix to take along: margins with the derivation of every cell, small enough for a club's website."""
