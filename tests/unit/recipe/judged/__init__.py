"""How a result is judged."""
