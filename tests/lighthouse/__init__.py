"""Lighthouse's accessibility and best practices of the main screens, at the size of a phone."""
