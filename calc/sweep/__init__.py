"""A measured sweep against the line it was taken on: which joint is worse than it should be."""
