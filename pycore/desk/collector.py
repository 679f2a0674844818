"""Python's collector of cycles, kept still while one request is answered.

A request with a log holds millions of objects until its reply is written, and no entry of it in a
cycle. The collector would look through all of them again and again and find nothing; what few
cycles an answer leaves behind are collected with the next ones.
"""

from __future__ import annotations

import gc
from collections.abc import Iterator
from contextlib import contextmanager


@contextmanager
def collector_paused() -> Iterator[None]:
    """No collection inside; afterwards it stands as it stood before, whatever was raised."""
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            gc.enable()
