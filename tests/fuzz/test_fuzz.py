"""The fuzzing: what was found once, a short run, a long one, and whether it finds anything."""

import json
from pathlib import Path

import pytest

from pycore.desk import door
from pycore.desk.operations import OPERATIONS
from pycore.journal.file import PHONE, read_file
from tests.fuzz.loop import CORPUS, fuzz
from tests.fuzz.seeds import examples, written
from tests.fuzz.verdict import Wrong, judge

LONG_MINUTES = 10.0
SEED = 20261126


@pytest.mark.parametrize("path", sorted(CORPUS.glob("*.txt")), ids=lambda path: path.stem)
def test_what_was_found_once_stays_mended(path: Path) -> None:
    text = path.read_text(encoding="utf-8", errors="surrogatepass")
    assert "ok" in judge(text)


def test_lines_that_were_opened_are_sealed_and_chained_again() -> None:
    logs = 0
    for request in examples():
        sent = written(request, chained=True)
        reply = judge(json.dumps(sent))
        if request["op"] == "read_export" and isinstance(request["body"]["text"], dict):
            assert reply["ok"], reply
            assert read_file(sent["body"]["text"], PHONE).findings == []
            logs += 1
    assert logs > 0


def test_some_rounds_find_nothing() -> None:
    run = fuzz(minutes=0.25, start=SEED)
    assert run.wrong == {}
    assert run.answers["answered"] > 0


def _boom(_: object) -> object:
    raise ZeroDivisionError


def _off_schema(_: object) -> object:
    return {"pycore": 1}


def _endless(_: object) -> object:
    while True:
        pass


@pytest.mark.parametrize(
    ("answer", "kind"),
    [(_boom, "internal: ZeroDivisionError"), (_off_schema, "describe: "), (_endless, "hang")],
)
def test_a_planted_defect_is_named(
    answer: object, kind: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    known, _ = OPERATIONS["describe"]
    monkeypatch.setitem(door.OPERATIONS, "describe", (known, answer))  # type: ignore[arg-type]
    with pytest.raises(Wrong, match=f"^{kind}"):
        judge('{"v": 1, "id": "a", "op": "describe", "body": {}}')


@pytest.mark.nightly
def test_for_minutes() -> None:
    run = fuzz(LONG_MINUTES, SEED)
    print(f"{run.tried} requests, slowest {run.slowest_s:.2f} s, {dict(run.answers)}")
    assert run.wrong == {}
