"""A measured sweep against the line it was measured on: which joint is worse than it should be."""
