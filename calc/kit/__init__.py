"""Which adapters to carry: what mates, what stands it, chains of adapters, and the smallest set of them."""
