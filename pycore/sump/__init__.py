"""From a dip to litres and back."""
