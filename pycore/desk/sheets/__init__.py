"""Sheets as they were asked for, the slip of a recipe, and a machine's short code."""
