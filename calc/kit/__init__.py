"""Which adapters to carry: what mates and carries the duty, chains of adapters, and the smallest set of them."""
