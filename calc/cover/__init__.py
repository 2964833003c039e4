"""The smallest set of elements that covers every group: search, bound and proof."""
