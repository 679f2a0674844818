"""Everything that is checked: ``python3 -m tests``."""
