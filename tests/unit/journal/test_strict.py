"""pycore.journal.strict. More hostile texts stand in tests/properties."""

import time

import pytest

from pycore.journal.strict import parsed_object, short
from pycore.quantity.fault import Fault


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("", "not_json"),
        ("{", "not_json"),
        ("[]", "wrong_type"),
        ('{"a": NaN}', "not_finite"),
        ('{"a": 1e999}', "not_finite"),
        ('{"a": -1e999}', "not_finite"),
        ('{"a": 1, "a": 1}', "duplicate_key"),
        ('{"a": [[[[1]]]]}', "too_deep"),
        (f'{{"a": {"9" * 32}}}', "too_long"),
        ('{"a": "\\ud800"}', "not_json"),
        ('{"a": "\ud800"}', "not_json"),
        ('{"b": {"__proto__": 1}}', "unknown_field"),
    ],
)
def test_refused(text: str, code: str) -> None:
    with pytest.raises(Fault) as caught:
        parsed_object(text, "line", 4, frozenset({"__proto__"}))
    assert (caught.value.code, caught.value.path) == (code, "line")


@pytest.mark.parametrize(
    ("text", "got", "limit"),
    [
        ("{", "character 1", {}),
        ("[7]", "a list of 1", {"type": "object"}),
        ('{"a": NaN}', "NaN", {"type": "a finite number"}),
        ('{"a": -1e999}', "-1e999", {"type": "a finite number"}),
        ('{"a": [[[1]]]}', None, {"most": 3}),
        (f'{{"a": {"9" * 32}}}', None, {"most": 31}),
        ('{"a": "\\ud800"}', "half of a surrogate pair", {}),
        # In a refusal it is written out: a reply that nothing can write ended the command.
        ('"\\ud800"', "\\ud800", {"type": "object"}),
        ('{"\\ud800": 1, "\\ud800": 2}', "\\ud800", {}),
        # Always the same one of several.
        ('{"prototype": 1, "__proto__": 1}', "__proto__", {}),
        ('{"A": 1, "prototype": 1}', "prototype", {}),
    ],
)
def test_a_refusal_says_what_was_found_and_allowed(
    text: str, got: object, limit: dict[str, object]
) -> None:
    with pytest.raises(Fault) as caught:
        parsed_object(text, "line", 3, frozenset({"__proto__", "prototype"}))
    assert (caught.value.got, caught.value.limit) == (got, limit)


def test_as_deep_as_allowed_however_often() -> None:
    text = '{"a": [1], "b": {"c": 1}, "d": [1]}'
    assert parsed_object(text, "line", 2) == {"a": [1], "b": {"c": 1}, "d": [1]}
    for other, most in ((text, 1), ('{"a": [1], "b": [1], "c": [[1]]}', 2)):
        with pytest.raises(Fault) as caught:
            parsed_object(other, "line", most)
        assert caught.value.code == "too_deep"


def test_numbers_come_as_json_has_them() -> None:
    assert parsed_object('{"a": 1.5, "b": -2, "c": 1e-3}', "line", 1) == {
        "a": 1.5,
        "b": -2,
        "c": 0.001,
    }


def test_longest_number_has_as_many_signs_as_the_refusal_says() -> None:
    with pytest.raises(Fault) as caught:
        parsed_object(f'{{"a": {"9" * 32}}}', "line", 4)
    most = caught.value.limit["most"]
    assert parsed_object(f'{{"a": {"9" * most}}}', "line", 4) == {"a": int("9" * most)}


def test_what_stands_inside_a_text_does_not_count() -> None:
    text = '{"a": "[[[[[[[[ \\" 99999999999999999999999999999999999999", "\\ud83d\\ude00": "NaN"}'
    assert parsed_object(text, "line", 2)["😀"] == "NaN"


def test_only_the_duplicate_is_named() -> None:
    with pytest.raises(Fault) as caught:
        parsed_object('{"a": 1, "bb": 1, "bb": 2}', "line", 2)
    assert caught.value.got == "bb"


def test_a_text_that_never_ends_costs_no_more_than_its_length() -> None:
    started_s = time.perf_counter()
    for text in ('{"a": "' + '\\"' * 500_000, '{"a": "' + '"x' * 500_000):
        with pytest.raises(Fault):
            parsed_object(text, "line", 4)
    # Going back from every quotation mark would take hours; a busy machine takes seconds.
    assert time.perf_counter() - started_s < 60


def test_short_tells_big_things_by_their_size() -> None:
    assert short("x" * 90) == "x" * 80 + "…"
    assert short("x" * 80) == "x" * 80
    assert short({"a": 1}) == "an object with 1 fields"
    assert short([1, 2]) == "a list of 2"
    assert short(7) == 7
