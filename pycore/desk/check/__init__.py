"""A check at the machine: from dip and reading to a recipe, and what stands beside it."""
