"""Laws of units, readings and factors."""
