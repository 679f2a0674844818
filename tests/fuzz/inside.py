"""Run by the shipped Python: the door's reply to a request, which comes as a JSON string."""

import json

from pycore.desk import handle


def calculate(line: str) -> str:
    """The reply as it is."""
    return handle(json.loads(line))
