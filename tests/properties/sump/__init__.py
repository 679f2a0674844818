"""Laws of depth and litres."""
