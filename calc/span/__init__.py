"""How to set an analyser for a line: span, points, and what such a sweep will show."""
