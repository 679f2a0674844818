"""Other ways, and what is at hand."""
