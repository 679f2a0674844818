"""The rules of the house, checked."""
