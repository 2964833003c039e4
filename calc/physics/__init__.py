"""How much a joint can bear: its ratings, the station around it, limits, gates and margins."""
