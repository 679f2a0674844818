"""A check at the machine, from dip to second reading."""
