"""Small defects put into pycore one at a time, to see whether the tests notice each of them."""
