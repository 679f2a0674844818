"""pycore.journal.file: header, lines, trailer. Every cut and every flip stand in properties."""

import json
from typing import Any

import pytest

from pycore.journal.file import OFFICE, PHONE, Head, Limits, read_file, write_file
from pycore.quantity.fault import Fault
from tests.phones import Phone, check, moment

PHONE_A = Phone("a")
for _second in (60, 120, 180):
    PHONE_A.save("check", check(), _second)
TEXT = PHONE_A.export()


def code_of(text: str, limits: Limits = PHONE) -> str:
    with pytest.raises(Fault) as caught:
        read_file(text, limits)
    assert caught.value.path == "file"
    return caught.value.code


def test_there_and_back() -> None:
    file = read_file(TEXT, PHONE)
    assert (file.lines, file.heads) == (PHONE_A.lines, PHONE_A.head())
    assert (file.findings, file.missing) == ([], 0)
    assert (file.written_at, file.build) == (moment(8 * 3600), "example")


def test_header_is_plain_json() -> None:
    header = json.loads(TEXT.split("\n")[0])
    assert (header["pailwright"], header["format"], header["lines"]) == ("log", 1, 3)
    assert header["logs"] == [{"log": PHONE_A.log, "count": 3, "head": PHONE_A.hash_of(3)}]


@pytest.mark.parametrize("mailed", ["\ufeff{}", "{}\r\n", "{}\n\n"])
def test_what_a_mail_program_adds_is_accepted(mailed: str) -> None:
    text = mailed.format(TEXT.replace("\n", "\r\n"))
    assert read_file(text, PHONE) == read_file(TEXT, PHONE)


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("", "file_empty"),
        ("\r\n\n", "file_empty"),
        ("a;b;c\n1;2;3", "file_foreign"),
        ('{"log":1}', "file_foreign"),
        ("PK\x03\x04 and more", "file_foreign"),
        (TEXT.encode("utf-16").decode("utf-8", "surrogateescape"), "file_foreign"),
        (TEXT.replace('"format":1', '"format":2'), "file_newer"),
        ("\ud800", "not_json"),
    ],
)
def test_refused_as_a_whole(text: str, code: str) -> None:
    assert code_of(text) == code


@pytest.mark.parametrize(
    ("text", "limits", "got", "limit"),
    [
        (TEXT, Limits(9, 3), len(TEXT), {"most": 9}),
        (TEXT, Limits(9999, 2), 5, {"most": 2}),
        (TEXT.replace('"format":1', '"format":3'), PHONE, 3, {"most": 1}),
        ("x" * 50, PHONE, "x" * 40, {}),
        ("{}\ud800", PHONE, "character 2", {}),
    ],
)
def test_a_refusal_says_what_was_found_and_allowed(
    text: str, limits: Limits, got: object, limit: dict[str, Any]
) -> None:
    with pytest.raises(Fault) as caught:
        read_file(text, limits)
    assert (caught.value.got, caught.value.limit) == (got, limit)


def test_what_a_phone_and_an_office_take() -> None:
    assert Limits(20 << 20, 50_000) == PHONE
    assert Limits(200 << 20, 1_000_000) == OFFICE


def test_limits_themselves_are_allowed() -> None:
    assert read_file(TEXT, Limits(len(TEXT), 3)).lines == PHONE_A.lines
    assert code_of(TEXT, Limits(len(TEXT) - 1, 3)) == "too_large"
    assert code_of(TEXT, Limits(len(TEXT), 2)) == "too_many"


def test_cut_file_gives_its_whole_lines_and_says_how_many_are_missing() -> None:
    lines = TEXT.split("\n")
    file = read_file("\n".join(lines[:3]), PHONE)
    assert (file.lines, file.findings, file.missing) == (PHONE_A.lines[:2], ["cut"], 1)
    file = read_file("\n".join(lines[:3])[:-1], PHONE)
    assert (file.findings, file.missing) == (["cut"], 2)


@pytest.mark.parametrize(("whole", "missing"), [(0, 3), (1, 2), (2, 1)])
def test_the_piece_at_which_a_file_was_cut_is_no_line(whole: int, missing: int) -> None:
    lines = TEXT.split("\n")[: whole + 2]
    file = read_file("\n".join(lines)[:-1], PHONE)
    assert (len(file.lines), file.findings, file.missing) == (whole + 1, ["cut"], missing)


def test_one_whole_line_among_others_makes_a_log_of_a_text() -> None:
    file = read_file(f"a;b;c\n{PHONE_A.lines[0]}\n1;2;3", PHONE)
    assert (len(file.lines), file.findings) == (3, ["no_header", "cut"])


def test_every_changed_line_is_damage() -> None:
    for line in TEXT.split("\n")[1:-1]:
        file = read_file(TEXT.replace(line, line.replace('"342"', '"343"')), PHONE)
        assert (file.findings, file.missing) == (["damaged"], 0)


def test_a_header_alone_knows_what_is_missing() -> None:
    file = read_file(TEXT.split("\n")[0], PHONE)
    assert (file.lines, file.heads, file.findings) == ([], PHONE_A.head(), ["cut"])
    assert file.missing == 3


def test_file_without_header_gives_its_lines() -> None:
    file = read_file("\n".join(PHONE_A.lines), PHONE)
    assert (file.lines, file.findings, file.missing) == (
        PHONE_A.lines,
        ["no_header", "cut"],
        None,
    )
    assert (file.written_at, file.build) == ("", "")


def test_line_taken_out_and_line_put_in() -> None:
    lines = TEXT.split("\n")
    assert read_file("\n".join(lines[:2] + lines[3:]), PHONE).findings == ["damaged"]
    assert read_file("\n".join([*lines[:2], "x", *lines[2:]]), PHONE).findings == ["damaged"]


def test_a_trailer_that_counts_wrong() -> None:
    text = TEXT.replace('"end":"log","lines":3', '"end":"log","lines":4')
    assert read_file(text, PHONE).findings == ["damaged"]


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ('"lines":3', '"lines":true'),
        ('"lines":3', '"lines":"3"'),
        ('"logs":[', '"logs":[7,'),
        ('"count":3', '"count":0'),
        ('"count":3', '"count":true'),
        ('"count":3', '"count":1000000001'),
        ('"count":3', '"count":3.5'),
        ('"count":3', '"count":-3'),
        ('"head":"', '"head":"0'),
        ('"log":"', '"log":"0'),
        ('"written_at":"', '"written_at":7,"was":"'),
        ('"written_at":"2026-11-25T15:00:00+01:00"', '"written_at":7'),
        ('"count":3', '"count":3,"colour":"blue"'),
        ('"logs":', '"logs_":'),
        ('"build":"example"', '"build":7'),
        ('"build":"example"', '"colour":"blue"'),
        ('"build":"example"', '"build":"a","build":"b"'),
    ],
)
def test_damaged_header_is_kept_as_a_line(old: str, new: str) -> None:
    head, rest = TEXT.split("\n", 1)
    file = read_file(f"{head.replace(old, new)}\n{rest}", PHONE)
    assert file.findings == ["no_header", "damaged"]
    assert file.lines == [head.replace(old, new), *PHONE_A.lines]
    assert file.heads == []


def test_bytes_that_were_no_utf_8_are_carried() -> None:
    dirty = b"\xff\xfe\x80".decode("utf-8", "surrogateescape")
    text = write_file([dirty], [Head(PHONE_A.log, 1, PHONE_A.hash_of(1))])
    file = read_file(text, PHONE)
    assert (file.lines, file.findings, file.missing) == ([dirty], [], 0)
    assert text.encode("utf-8", "surrogateescape").count(b"\xff\xfe\x80") == 1


def test_heads_stand_in_one_order_and_signs_as_they_are() -> None:
    heads = [Head("b" * 32, 2, "1" * 64), Head("a" * 32, 1, "2" * 64)]
    text = write_file([], heads, build="Wägeraum")
    assert '"build":"Wägeraum"' in text
    assert read_file(text, PHONE).heads == heads[::-1]
    assert text == write_file([], heads[::-1], build="Wägeraum")


def test_the_largest_number_that_a_line_has_may_be_promised() -> None:
    # The contract's maximum of seq.
    head = Head("a" * 32, 1_000_000_000, "1" * 64)
    assert read_file(write_file([], [head]), PHONE).heads == [head]


def test_without_time_and_build_the_header_names_neither() -> None:
    file = read_file(write_file([], []), PHONE)
    assert (file.written_at, file.build) == ("", "")
    assert json.loads(write_file([], []).split("\n")[0]).keys() == {
        "pailwright",
        "format",
        "lines",
        "logs",
    }
