"""Laws of every recipe."""
