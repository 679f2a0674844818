"""How the buckets are found."""
