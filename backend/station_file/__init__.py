"""A station file: all that a reader of the page keeps, and what the core says of it."""
