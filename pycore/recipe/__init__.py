"""From the state of a sump and its target to buckets in whole marks."""
