"""Which interface family to fit at a joint: every demand checked, those that meet all ranked."""
