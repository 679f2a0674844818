"""Times answers of pycore, in this Python and in the one that is shipped to the phone.

Runs in both places from this one text: nothing but pycore and the standard library.
"""

import json
import time

from pycore.desk import handle


def calculate(text: str) -> str:
    """JSON list of requests to the JSON list of milliseconds that each took.

    The first is asked once more before, and that does not count.
    """
    requests = json.loads(text)
    handle(requests[0])
    took_ms = []
    for request in requests:
        started_s = time.perf_counter()
        reply = handle(request)
        took_ms.append(1000 * (time.perf_counter() - started_s))
        if not json.loads(reply)["ok"]:
            raise ValueError(reply)
    return json.dumps(took_ms)
