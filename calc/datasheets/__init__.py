"""The catalogue as an answer."""
