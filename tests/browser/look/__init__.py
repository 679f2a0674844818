"""What every screen looks like: pictures, sizes, contrast, both themes."""
