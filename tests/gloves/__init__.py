"""Gloved fingers on the real keys: which wrong digits get typed, and which gates ask about them."""
