"""What reaches the antenna through a whole line, its weakest part, and what would help."""
