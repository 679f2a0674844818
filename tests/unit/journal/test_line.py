"""pycore.journal.line: text and seal."""

import hashlib
import json

import pytest

from pycore.journal.line import (
    MOST_SEQ,
    from_store,
    hash_of,
    is_sealed,
    opened,
    sealed,
    written,
)
from pycore.quantity.fault import Fault
from tests.phones import stored_in_schema_1
from web.build.paths import SHARED


def test_the_largest_number_of_a_line_is_the_contracts() -> None:
    schema = json.loads(
        (SHARED / "schema" / "log" / "entry.schema.json").read_text(encoding="utf-8")
    )
    assert schema["definitions"]["log_entry"]["properties"]["seq"]["maximum"] == MOST_SEQ


def test_hash_is_sha_256_of_the_text_without_the_hash() -> None:
    text = '{"id":"ü","n":2.0}'
    line = sealed(text)
    # Source: FIPS 180-4 as in hashlib, over the bytes that stand before the last field.
    assert json.loads(line)["hash"] == hashlib.sha256(text.encode()).hexdigest()
    assert opened(line) == (text, json.loads(line)["hash"])


def test_published_hash() -> None:
    # Source: NIST, FIPS 180-2, appendix B.1: SHA-256 of "abc" (value from memory).
    assert hash_of("abc") == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"


@pytest.mark.parametrize(
    ("line", "code"),
    [
        ('{"a":1}', "seal_missing"),
        ("", "seal_missing"),
        (sealed('{"a":1}') + " ", "seal_missing"),
        (sealed('{"a":1}').replace("1", "2", 1), "seal_broken"),
        (sealed('{"a":1}').upper().replace("HASH", "hash"), "seal_missing"),
    ],
)
def test_refused(line: str, code: str) -> None:
    with pytest.raises(Fault) as caught:
        opened(line)
    assert (caught.value.code, caught.value.path) == (code, "line")


def test_half_of_a_surrogate_pair_has_no_hash() -> None:
    with pytest.raises(Fault) as caught:
        hash_of("\ud800")
    assert (caught.value.code, caught.value.path) == ("not_json", "line")


@pytest.mark.parametrize("text", ["", "{}", "[1]", "7", '{"a":1', '"a":1}'])
def test_only_objects_are_sealed(text: str) -> None:
    with pytest.raises(Fault) as caught:
        sealed(text)
    assert (caught.value.code, caught.value.path) == ("wrong_type", "line")
    assert caught.value.limit == {"type": "object"}


@pytest.mark.parametrize("number", [float("nan"), float("inf"), -float("inf")])
def test_what_json_has_no_number_for_is_not_written(number: float) -> None:
    with pytest.raises(ValueError, match="JSON"):
        written({"id": "a", "body": {"x": number}}, "b", 1, "")


def test_numbers_stay_as_they_were_written() -> None:
    text = '{"a":2.0,"b":1e16,"c":-0.0}'
    assert opened(sealed(text))[0] == text


def test_rows_of_the_first_schema_get_their_seal_and_others_stay() -> None:
    row = stored_in_schema_1("check", {"a": 1}, 1)
    assert from_store(row) == sealed(row)
    assert from_store(sealed(row)) == sealed(row)
    assert from_store(row.replace('"schema":1', '"schema":2')) == row.replace(
        '"schema":1', '"schema":2'
    )
    assert from_store("nonsense") == "nonsense"


def test_written_keeps_the_order_and_is_sealed() -> None:
    line = written({"id": "a", "schema": 2, "body": {"text": "ü"}}, "b", 3, "c")
    assert is_sealed(line)
    assert line.startswith('{"id":"a","log":"b","seq":3,"prev":"c","schema":2,"body":{"text":"ü"},')
