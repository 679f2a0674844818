"""While a request is answered nothing is swept up, and afterwards all is as it was."""

import gc
import io
import json
import sys
from typing import Any

import pytest

from pycore.__main__ import main
from pycore.desk.door import handle
from pycore.desk.operations import OPERATIONS
from pycore.office import merging
from tests.bench.journal import log_of
from tests.examples.files import examples, request_text
from tests.phones import id_of, moment

# Twice as many as the cycles that any answer leaves.
ENTRIES = 300
ASKED = json.dumps({"v": 1, "id": "a", "op": "describe", "body": {}})


@pytest.mark.parametrize("is_on", [True, False])
@pytest.mark.parametrize("is_broken", [True, False])
def test_a_request_pauses_it(is_on: bool, is_broken: bool, monkeypatch: pytest.MonkeyPatch) -> None:
    inside: list[bool] = []

    def answered(_: Any) -> dict[str, str]:
        inside.append(gc.isenabled())
        if is_broken:
            raise ZeroDivisionError
        return {}

    monkeypatch.setitem(OPERATIONS, "describe", (OPERATIONS["describe"][0], answered))
    was_on = gc.isenabled()
    try:
        (gc.enable if is_on else gc.disable)()
        reply = json.loads(handle(ASKED))
        assert gc.isenabled() is is_on
    finally:
        (gc.enable if was_on else gc.disable)()
    assert reply["ok"] is not is_broken
    assert inside == [False]


def test_so_does_the_office(monkeypatch: pytest.MonkeyPatch) -> None:
    inside: list[bool] = []

    def merge_command(_: list[str]) -> int:
        inside.append(gc.isenabled())
        return 0

    monkeypatch.setattr(merging, "merge_command", merge_command)
    # The tests' own streams cannot be told their encoding.
    for name in ("stdin", "stdout", "stderr"):
        monkeypatch.setattr(sys, name, io.TextIOWrapper(io.BytesIO()))
    assert main(["merge", "a.jsonl"]) == 0
    assert inside == [False]
    assert gc.isenabled()


def long_log() -> str:
    lines = log_of("phone", ENTRIES).lines
    body = {"lines": lines, "now": moment(ENTRIES * 600), "machine": id_of("machine 1")}
    return json.dumps({"v": 1, "id": "a", "op": "trend", "body": body})


def test_an_answer_leaves_few_cycles_behind() -> None:
    """None for an entry: else they would pile up while the collector rests."""
    requests = [request_text(example["request"]) for example in examples().values()]
    for request in [*requests, long_log()]:
        handle(request)
        gc.collect()
        handle(request)
        assert gc.collect() < ENTRIES
