"""Whether the mutation run itself tells the truth."""
