"""Hostile input to the door: always a valid reply, never an exception (reliability F43)."""

import json
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.examples.files import examples
from tests.properties.asking import answer

EXAMPLES = [
    example["request"] for name, example in examples().items() if not name.startswith("error_")
]


def enveloped(body: str) -> str:
    return f'{{"v": 1, "id": "h", "op": "read_quantity", "body": {body}}}'


HOSTILE = {
    "empty": ("", "not_json"),
    "white": (" \n\t ", "not_json"),
    "cut": ('{"v": 1, "id": "h"', "not_json"),
    "two values": ("{} {}", "not_json"),
    "list": ("[]", "wrong_type"),
    "null": ("null", "wrong_type"),
    "number": ("7", "wrong_type"),
    "nan": (enveloped('{"x": NaN}'), "not_finite"),
    "infinity": (enveloped('{"x": -Infinity}'), "not_finite"),
    "1e999": (enveloped('{"x": 1e999}'), "not_finite"),
    "bare 1e999": ("1e999", "not_finite"),
    "duplicate key": ('{"v": 1, "v": 1, "id": "h", "op": "describe", "body": {}}', "duplicate_key"),
    "duplicate deep": (enveloped('{"text": "1", "text": "2"}'), "duplicate_key"),
    "deep lists": ("[" * 100_000, "too_deep"),
    "deep objects": ('{"a":' * 100_000 + "1" + "}" * 100_000, "too_deep"),
    "5,000 digits": (enveloped(f'{{"x": {"9" * 5000}}}'), "too_long"),
    "5,000 decimals": (enveloped(f'{{"x": 0.{"9" * 5000}}}'), "too_long"),
    "lone surrogate": (enveloped('{"text": "\\ud800", "quantity": "depth_mm"}'), "not_json"),
    "lone surrogate in a key": (enveloped('{"\\udfff": 1}'), "not_json"),
    "two megabytes": (enveloped(json.dumps({"text": "7" * 2_000_000})), "too_large"),
    "version 2": ('{"v": 2, "id": "h", "op": "describe", "body": {}}', "unknown_version"),
    "version true": ('{"v": true, "id": "h", "op": "describe", "body": {}}', "unknown_version"),
    "version text": ('{"v": "1", "id": "h", "op": "describe", "body": {}}', "unknown_version"),
    "no version": ('{"id": "h", "op": "describe", "body": {}}', "missing"),
    "no operation": ('{"v": 1, "id": "h", "body": {}}', "missing"),
    "strange operation": ('{"v": 1, "id": "h", "op": "__class__", "body": {}}', "unknown_op"),
    "id a number": ('{"v": 1, "id": 7, "op": "describe", "body": {}}', "wrong_type"),
    "more than the envelope": (
        '{"v": 1, "id": "h", "op": "describe", "body": {}, "x": 1}',
        "unknown_field",
    ),
    "body a list": (enveloped("[]"), "wrong_type"),
    "prototype": (
        '{"v": 1, "id": "h", "op": "describe", "body": {"__proto__": {}}}',
        "unknown_field",
    ),
}


@pytest.mark.parametrize("name", HOSTILE)
def test_refused_with_a_code(name: str) -> None:
    text, code = HOSTILE[name]
    reply = answer(text)
    assert reply["ok"] is False
    assert reply["error"]["code"] == code
    assert len(json.dumps(reply)) < 5_000


def test_byte_order_mark_and_carriage_returns_from_a_mail_program() -> None:
    text = '{"v": 1,\r\n "id": "h", "op": "describe",\r\n "body": {}}\r\n'
    assert answer(text)["ok"] is True


def _numbers(part: Any, path: tuple[Any, ...] = ()) -> list[tuple[Any, ...]]:
    if isinstance(part, dict):
        return [found for name, value in part.items() for found in _numbers(value, (*path, name))]
    if isinstance(part, list):
        return [found for i, value in enumerate(part) for found in _numbers(value, (*path, i))]
    return [path] if isinstance(part, int | float) and not isinstance(part, bool) else []


def _with(part: Any, path: tuple[Any, ...], value: Any) -> Any:
    if not path:
        return value
    fresh = dict(part) if isinstance(part, dict) else list(part)
    fresh[path[0]] = _with(part[path[0]], path[1:], value)
    return fresh


PLACES = [(request, path) for request in EXAMPLES for path in _numbers(request["body"])]


@pytest.mark.parametrize(
    ("request_", "path"),
    PLACES,
    ids=lambda part: ".".join(map(str, part)) if isinstance(part, tuple) else "",
)
@pytest.mark.parametrize("value", [True, "7", None, [], {}])
def test_nothing_else_passes_for_a_number(
    request_: dict[str, Any], path: tuple[Any, ...], value: Any
) -> None:
    reply = answer(json.dumps({**request_, "body": _with(request_["body"], path, value)}))
    assert reply["ok"] is False
    assert reply["error"]["code"] == "wrong_type"
    assert reply["error"]["path"].endswith(str(path[-1]))


JSON_LIKE = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(),
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(st.text(), inner, max_size=4),
    max_leaves=12,
)


@settings(max_examples=300, deadline=None)
@given(st.text())
def test_any_text(text: str) -> None:
    assert answer(text)["ok"] is False


@settings(max_examples=300, deadline=None)
@given(st.sampled_from(EXAMPLES), JSON_LIKE, st.randoms(use_true_random=False))
def test_any_value_anywhere(request_: dict[str, Any], value: Any, random: Any) -> None:
    path: list[Any] = []
    part: Any = request_
    while isinstance(part, dict | list) and part and random.random() < 0.9:
        path.append(random.choice(list(part) if isinstance(part, dict) else range(len(part))))
        part = part[path[-1]]
    reply = answer(json.dumps(_with(request_, tuple(path), value)))
    assert reply["ok"] or reply["error"]["code"] != "internal"


@settings(max_examples=200, deadline=None)
@given(st.text(max_size=40), st.sampled_from([None, "mm", "in", "US gal", "°F", "1"]))
def test_any_typed_text(text: str, unit: str | None) -> None:
    body = {"text": text, "quantity": "depth_mm", **({"unit": unit} if unit else {})}
    reply = answer(json.dumps({"v": 1, "id": "h", "op": "read_quantity", "body": body}))
    if reply["ok"]:
        # Whatever is accepted is made of ASCII digits and one sign or fraction.
        assert any(sign in "0123456789" for sign in text)
    else:
        assert reply["error"]["code"] != "internal"
