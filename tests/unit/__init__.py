"""Mirrors pycore, one file per module."""
