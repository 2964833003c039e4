"""What a joint stands: its ratings, the station around it, limits, gates and margins."""
