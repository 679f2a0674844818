"""From what an instrument shows to the strength of the coolant."""
