"""Hostile files: refused with a code, or their line is in quarantine with its code (F42, F43)."""

import json
import time
import tracemalloc

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pycore.journal.entry import MOST_LINE
from pycore.journal.file import PHONE, read_file, write_file
from pycore.journal.line import sealed
from pycore.quantity.fault import Fault
from tests.phones import Phone, check, moment, newer_phone, typed
from tests.properties.asking import ask, refusal
from tests.properties.journal.shop import merge, merge_text, state_of

GOOD = Phone("a")
GOOD.save("check", check(), 60)
GOOD.save("note", {"text": "whole"}, 120, machine="")


def entry(part: str, value: str) -> str:
    """A sealed line of which one part's JSON is ours, whatever it is."""
    parts = {
        "id": '"' + "a" * 32 + '"',
        "log": '"' + "b" * 32 + '"',
        "seq": "1",
        "prev": '""',
        "schema": "2",
        "kind": '"note"',
        "measured_at": f'"{moment(0)}"',
        "wall": f'"{moment(0)}"',
        "clock_flags": "[]",
        "body": '{"text":"x"}',
        "versions": '{"build":"x","pycore":"x"}',
    }
    parts[part] = value
    return sealed("{" + ",".join(f'"{name}":{text}' for name, text in parts.items()) + "}")


LINES = {
    "nan": (entry("body", '{"text":NaN}'), "not_finite"),
    "infinity": (entry("body", '{"text":-Infinity}'), "not_finite"),
    "1e999": (entry("body", '{"text":1e999}'), "not_finite"),
    "duplicate key": (entry("body", '{"text":"a","text":"b"}'), "duplicate_key"),
    "duplicate field": (entry("body", '{"text":"a"},"seq":2'), "duplicate_key"),
    "second hash": (entry("body", '{"text":"a"},"hash":"x"'), "unknown_field"),
    "deep lists": (entry("shown", "[" * 20_000 + "]" * 20_000), "too_deep"),
    "deep objects": (entry("shown", '{"a":' * 9_000 + "1" + "}" * 9_000), "too_deep"),
    "5,000 digits": (entry("shown", f'{{"a":{"9" * 5000}}}'), "too_long"),
    "lone surrogate": (entry("body", '{"text":"\\ud800"}'), "not_json"),
    "true as a number": (entry("seq", "true"), "wrong_type"),
    "text as a number": (entry("seq", '"1"'), "wrong_type"),
    "number as a text": (entry("body", '{"text":7}'), "wrong_type"),
    "prototype": (entry("body", '{"__proto__":{"x":1},"text":"a"}'), "unknown_field"),
    "constructor deep": (entry("shown", '{"a":[{"constructor":1}]}'), "unknown_field"),
    "unknown field": (entry("body", '{"text":"a","colour":"blue"}'), "unknown_field"),
    "no body": (entry("body", "null"), "wrong_type"),
    "body a list": (entry("body", "[]"), "wrong_type"),
    "10,000 characters": (entry("body", f'{{"text":"{"x" * 10_000}"}}'), "too_long"),
    "a line too long": (entry("shown", f'{{"a":"{"x" * MOST_LINE}"}}'), "too_large"),
    "list with a seal": (f'["{"x" * 9}","hash":"{"0" * 64}"}}', "seal_broken"),
    "no seal": ('{"id":"a"}', "seal_missing"),
    "another's seal": (GOOD.lines[0].replace("342", "343"), "seal_broken"),
    "two values": (sealed('{"a":1}{"b":2}'), "not_json"),
    "negative number": (entry("seq", "-1"), "out_of_range"),
    "fraction": (entry("seq", "1.5"), "wrong_type"),
    "schema 0": (entry("schema", "0"), "out_of_range"),
    "schema in words": (entry("schema", '"two"'), "wrong_type"),
    "month 13": (entry("wall", '"2026-13-01T00:00:00Z"'), "not_a_date"),
    "control character": (entry("body", '{"text":"a\tb"}'), "not_json"),
}


@pytest.mark.parametrize("name", LINES)
def test_bad_line_is_kept_told_of_and_never_used(name: str) -> None:
    line, code = LINES[name]
    text = write_file([*GOOD.lines, line], GOOD.head())
    done = merge([text])
    assert [(bad.line, bad.code) for bad in done.union.quarantined] == [(line, code)]
    assert [found.line for found in done.union.entries] == GOOD.lines
    assert merge_text(merge_text(text)) == merge_text(text)
    assert line in merge_text(text).split("\n")
    assert len(state_of(text).entries) == 2


FILES = {
    "empty": ("", "file_empty"),
    "white": ("\r\n\r\n", "file_empty"),
    "a picture": ("\x89PNG\r\n\x1a\n\0\0\0\rIHDR", "file_foreign"),
    "UTF-16": ("\x00".join(GOOD.export()), "file_foreign"),
    "another program's lines": ('{"id":1}\n{"id":2}', "file_foreign"),
    "comma-separated": ("time,machine\n1,2\n", "file_foreign"),
    "a zip": ("PK\x03\x04\x14\x00", "file_foreign"),
    "a later format": ('{"pailwright":"log","format":2,"zones":[]}', "file_newer"),
    "100 MB": ("x" * (PHONE.characters + 1), "too_large"),
    "too many lines": ("x\n" * (PHONE.lines + 3), "too_many"),
    "half of a surrogate pair": ("\ud800", "not_json"),
    "deep header": ('{"pailwright":"log","format":1,"logs":' + "[" * 100_000, None),
}


@pytest.mark.parametrize("name", FILES)
def test_bad_file(name: str) -> None:
    text, code = FILES[name]
    tracemalloc.start()
    started_s = time.process_time()
    done = merge([text]) if code not in ("too_large", "too_many") else None
    try:
        read_file(text, PHONE)
        found = None
    except Fault as fault:
        found = fault.code
    took_s, (_, peak) = time.process_time() - started_s, tracemalloc.get_traced_memory()
    tracemalloc.stop()
    assert found == code
    assert done is None or not done.union.entries
    assert took_s < 2
    assert peak < 200e6


def test_what_a_mail_program_adds_is_taken() -> None:
    text = "\ufeff" + GOOD.export().replace("\n", "\r\n") + "\r\n"
    assert merge_text(text) == merge_text(GOOD.export())
    assert merge([text]).files[0].findings == ()


def test_newer_lines_survive_byte_for_byte_and_are_not_used() -> None:
    strange = newer_phone()
    out = merge_text(merge_text(strange.export()), GOOD.export())
    assert set(strange.lines) <= set(out.split("\n"))
    found = ask("fold_log", {"lines": strange.lines, "now": moment(9000)})
    assert (found["counts"]["newer"], found["counts"]["as_written"]) == (2, 1)


PAYLOADS = ["<script>alert(1)</script>", "=1+1", "javascript:alert(1)", "\u202egnirts", "a\u0000b"]


@pytest.mark.parametrize("payload", PAYLOADS)
def test_text_given_is_text_shown(payload: str) -> None:
    phone = Phone("a")
    phone.save("note", {"text": payload}, 9000, machine="")
    body = {"lines": phone.lines, "now": moment(9999), "since": moment(0)}
    assert ask("handover", body)["said"][0]["text"] == payload


def test_a_refused_file_names_the_field_of_the_request() -> None:
    error = refusal("read_export", {"text": "nonsense", "lines": []})
    assert (error["code"], error["path"]) == ("file_foreign", "body.text")


@settings(max_examples=200, deadline=None)
@given(st.text(max_size=400), st.sampled_from(["", '{"pailwright":"log","format":1,']))
def test_any_text_is_refused_or_yields_no_entry(text: str, start: str) -> None:
    done = merge([start + text])
    assert done.union.entries == ()


PLAIN = st.none() | st.booleans() | st.integers(-(10**30), 10**30) | st.text(max_size=8)
FINITE = st.floats(allow_nan=False, allow_infinity=False)


def json_of(leaves: st.SearchStrategy[object]) -> st.SearchStrategy[object]:
    """Any small value that is made of the leaves."""
    names = st.sampled_from(["text", "unit", "pours", "count", "shows", "a"])
    return st.recursive(
        leaves,
        lambda inner: st.lists(inner, max_size=3) | st.dictionaries(names, inner, max_size=3),
        max_leaves=8,
    )


@settings(max_examples=300, deadline=None)
@given(
    json_of(PLAIN | st.floats()),
    st.sampled_from(["body", "seq", "kind", "schema", "wall", "prev", "shown", "id", "x"]),
)
def test_any_value_anywhere_is_used_or_kept(value: object, part: str) -> None:
    line = entry(part, json.dumps(value))
    text = write_file([line], [])
    done = merge([text])
    assert line in merge_text(text).split("\n")
    assert len(done.union.entries) + len(done.union.quarantined) == 1
    state_of(text)


@settings(max_examples=100, deadline=None)
@given(json_of(PLAIN | FINITE))
def test_any_dip_is_folded_without_a_defect(value: object) -> None:
    phone = Phone("a")
    phone.save("check", {"dip": {"depth": typed("1", "mm")}, "reading": value}, 0)
    found = ask("fold_log", {"lines": phone.lines, "now": moment(60)})
    assert found["counts"]["lines"] == 1
