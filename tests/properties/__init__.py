"""Hypothesis: what must hold for every input."""
