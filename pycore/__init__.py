"""Pailwright's calculations: from a dip and a reading to a recipe in whole bucket marks.

The rooms stand in the order in which a check walks through them: quantity, sump, reading,
recipe, desk. A room imports only from rooms before it. The way in is ``pycore.desk.handle``.
"""

__version__ = "0.1.0"
