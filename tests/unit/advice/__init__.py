"""pycore.journal, one file per module."""
