"""``python3 -m pycore`` in this process."""

import io
import sys

import pytest

from pycore.__main__ import main


def command(*words: str) -> int:
    """Exit status of the command; nothing stands on its standard input."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(sys, "stdin", io.TextIOWrapper(io.BytesIO()))
        return main(list(words))
