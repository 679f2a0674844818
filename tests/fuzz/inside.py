"""Run by the shipped Python: the door's reply to a request, both as JSON strings."""

import json

from pycore.desk import handle


def calculate(line: str) -> str:
    """The reply as text: JavaScript on the way reads no number of it."""
    return json.dumps(handle(json.loads(line)))
