"""pycore.journal.file: header, lines, trailer. Every cut and every flip stand in properties."""

import json

import pytest

from pycore.journal.file import PHONE, Head, Limits, read_file, write_file
from pycore.quantity.fault import Fault
from tests.phones import Phone, check, moment

PHONE_A = Phone("a")
for _second in (60, 120, 180):
    PHONE_A.save("check", check(), _second)
TEXT = PHONE_A.export()


def code_of(text: str, limits: Limits = PHONE) -> str:
    with pytest.raises(Fault) as caught:
        read_file(text, limits)
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


def test_file_without_header_gives_its_lines() -> None:
    file = read_file("\n".join(PHONE_A.lines), PHONE)
    assert (file.lines, file.findings, file.missing) == (
        PHONE_A.lines,
        ["no_header", "cut"],
        None,
    )


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
    assert (file.lines, file.findings) == ([dirty], [])
    assert text.encode("utf-8", "surrogateescape").count(b"\xff\xfe\x80") == 1


def test_without_time_and_build_the_header_names_neither() -> None:
    assert json.loads(write_file([], []).split("\n")[0]).keys() == {
        "pailwright",
        "format",
        "lines",
        "logs",
    }
