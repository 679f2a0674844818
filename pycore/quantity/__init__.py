"""A number one can trust: exact units, reading what was typed, uncertainty, rounding for people."""
