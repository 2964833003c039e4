"""One question about one joint, typed or filled in: the answer in words, and what would make it better."""
