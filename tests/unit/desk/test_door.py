"""pycore.desk.door. Hostile texts stand in tests/properties."""

import json
from typing import Any

import pytest

from pycore.desk import door
from pycore.desk.door import handle
from pycore.desk.operations import OPERATIONS
from tests.examples.workshop import PLAN
from tests.properties.asking import answer, refusal


def test_id_comes_back() -> None:
    for identity in ("", "a", "ü-7", "x" * 80):
        text = json.dumps({"v": 1, "id": identity, "op": "describe", "body": {}})
        assert answer(text)["id"] == identity


def test_id_that_is_too_long_is_refused_and_cut() -> None:
    reply = answer(json.dumps({"v": 1, "id": "x" * 81, "op": "describe", "body": {}}))
    assert reply["error"]["code"] == "too_long"
    assert reply["id"] == "x" * 80


def test_limit_of_size_itself_is_allowed() -> None:
    text = '{"v": 1, "id": "a", "op": "describe", "body": {}}'
    assert answer(text + " " * (1_000_000 - len(text)))["ok"]
    assert answer(text + " " * (1_000_001 - len(text)))["error"]["code"] == "too_large"


def test_brackets_and_digits_inside_a_text_do_not_count() -> None:
    body = {"text": "[[[[[[[[[[[[[[[[", "quantity": "depth_mm", "unit": "mm"}
    reply = answer(json.dumps({"v": 1, "id": "9" * 70, "op": "read_quantity", "body": body}))
    assert reply["error"]["code"] == "not_a_number"


def test_a_defect_inside_becomes_an_answer(monkeypatch: pytest.MonkeyPatch) -> None:
    def broken(_: Any) -> Any:
        raise ZeroDivisionError

    monkeypatch.setitem(OPERATIONS, "describe", (OPERATIONS["describe"][0], broken))
    reply = answer('{"v": 1, "id": "a", "op": "describe", "body": {}}')
    assert reply["error"]["code"] == "internal"
    assert reply["id"] == "a"


def test_not_a_number_never_leaves(monkeypatch: pytest.MonkeyPatch) -> None:
    kind = OPERATIONS["describe"][0]
    monkeypatch.setitem(OPERATIONS, "describe", (kind, lambda _: {"x": float("nan")}))
    reply = answer('{"v": 1, "id": "a", "op": "describe", "body": {}}')
    assert reply["ok"] is False


def test_signs_stay_readable() -> None:
    assert "ü" in handle('{"v": 1, "id": "ü", "op": "describe", "body": {}}')
    assert door.VERSION == 1


def test_byte_order_mark_is_accepted() -> None:
    assert answer('\ufeff{"v": 1, "id": "b", "op": "describe", "body": {}}')["ok"]


def test_a_string_without_an_end_is_read_once() -> None:
    # Looking for its end again from every quote took hours; this many take no time now.
    error = answer('{"v":1,"id":"' + '\\"' * 400_000)["error"]
    assert error["code"] == "not_json"


def test_an_uncertainty_without_bounds_is_refused() -> None:
    body = {**PLAN, "sump": {**PLAN["sump"], "volume_l": {"value": 154, "u": 1e160}}}
    error = refusal("plan_recipe", body)
    assert (error["code"], error["path"]) == ("out_of_range", "body.sump.volume_l.u")
