"""Trend of one machine, and what the shop learns from them."""
