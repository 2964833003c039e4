"""Which interface family to fit at a joint: every demand checked, the rest ranked."""
