"""What would help a line: which changes are offered, what each brings however the unknown falls, and what it costs."""
