"""Odd requests get the same reply here and from the Python that is shipped to the phone."""

import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, Phase, given, seed, settings

from pycore.desk import handle
from tests.browser.app.test_shipped_core import assert_alike
from tests.fuzz.slips import requests
from tests.published.checks import Shipped

SEED = 55
FEW, MANY = 150, 10_000


@pytest.fixture
def phone_python() -> Iterator[Shipped]:
    """The shipped Python with the door in front."""
    engine = Shipped(Path(__file__).with_name("inside.py"))
    yield engine
    engine.close()


def _comparable(reply: Any) -> Any:
    """The reply; where text is no JSON, two versions of Python may name another character of it."""
    if reply["ok"] or reply["error"]["code"] != "not_json":
        return reply
    return {**reply, "error": {**reply["error"], "got": "", "message": ""}}


def compared(engine: Shipped, count: int) -> int:
    """How many of so many requests were answered, and not refused, by both alike."""
    answered = 0

    @seed(SEED)
    @settings(
        max_examples=count,
        database=None,
        phases=[Phase.generate],
        suppress_health_check=list(HealthCheck),
    )
    @given(requests())
    def ask_both(text: str) -> None:
        nonlocal answered
        # Half of a surrogate pair is no text that a worker could be sent.
        text = text.encode("utf-8", "replace").decode("utf-8")
        here: Any = json.loads(handle(text))
        there = json.loads(str(engine.answer(json.dumps(text))))
        assert_alike(_comparable(here), _comparable(there), text[:90])
        answered += here["ok"]

    ask_both()
    return answered


def test_some_requests(phone_python: Shipped) -> None:
    assert compared(phone_python, FEW) > 0


@pytest.mark.nightly
def test_ten_thousand_requests(phone_python: Shipped) -> None:
    answered = compared(phone_python, MANY)
    print(f"{MANY} requests, {answered} of them answered, all alike")
    assert answered > MANY / 10
