"""The only door: messages in, messages out."""

from pycore.desk.door import handle

__all__ = ["handle"]
