"""Sumps to practise on: dealt by a number, worked out by hand, judged step by step."""
