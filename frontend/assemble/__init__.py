"""Builds what `dist/` holds: the served page and the one-file page."""
