"""A log as a file of text lines: a header, one line for each entry, a trailer.

The header names the logs with their count and head, so that a file knows of entries it does not
hold; the trailer has the number of lines and the SHA-256 of everything before it. A file that was
cut off still yields its whole lines. The last sign of a file is the bracket that closes the
trailer, so that nothing can be cut off without a trace.
"""

from __future__ import annotations

import hashlib
import json
import re
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from pycore.journal.line import MOST_SEQ, is_sealed
from pycore.journal.strict import parsed_object
from pycore.quantity.fault import Fault

# Of the file, not of the entries in it.
FORMAT = 1


@dataclass(frozen=True)
class Limits:
    """How much one file may hold."""

    characters: int
    lines: int


# 20 MiB and 200 MiB: a phone holds the text twice while it reads, an office computer has room for
# fifty phones. 20,000 entries take some 10 MB.
PHONE = Limits(20 * 1024 * 1024, 50_000)
OFFICE = Limits(200 * 1024 * 1024, 1_000_000)

# Levels of a header.
_MOST_DEPTH = 3
# How every exported log and every merged file begins.
START = '{"pailwright":"log","format":'
_FORMAT = re.compile(re.escape(START) + r"([1-9][0-9]{0,8}),")
_END = re.compile(r'\{"end":"log","lines":(0|[1-9][0-9]{0,8}),"sha256":"([0-9a-f]{64})"\}')
_ID = re.compile(r"[0-9a-f]{32}")
_LONE = re.compile("[\ud800-\udc7f\udd00-\udfff]")
_HASH = re.compile(r"[0-9a-f]{64}")


@dataclass(frozen=True, order=True)
class Head:
    """The last line of a log that somebody knows of: its number and hash."""

    log: str
    count: int
    head: str


@dataclass(frozen=True)
class LogFile:
    """What a file holds. findings: ``no_header``, ``cut``, ``damaged``.

    missing: how many lines the header promises more than there are; the piece of a line at which a
    file was cut does not count. None without a header.
    written_at: the writing device's own time.
    """

    lines: list[str]
    heads: list[Head]
    findings: list[str]
    missing: int | None = None
    written_at: str = ""
    build: str = ""


@dataclass
class _Header:
    lines: int
    heads: list[Head]
    written_at: str
    build: str


def _head_from(part: Any) -> Head:
    log, count, head = part["log"], part["count"], part["head"]
    fits = _ID.fullmatch(log) and _HASH.fullmatch(head) and type(count) is int
    if not fits or not 0 < count <= MOST_SEQ or len(part) > 3:
        raise ValueError(log)
    return Head(log, count, head)


def _header_from(line: str) -> _Header | None:
    """The header in a line, or None for a line that is none or a damaged one."""
    if not _FORMAT.match(line):
        return None
    try:
        message = parsed_object(line, "file.header", _MOST_DEPTH)
        header = _Header(
            message["lines"],
            [_head_from(part) for part in message["logs"]],
            message.get("written_at", ""),
            message.get("build", ""),
        )
    except (Fault, KeyError, TypeError, ValueError):
        return None
    texts = isinstance(header.written_at, str) and isinstance(header.build, str)
    known = message.keys() <= {"pailwright", "format", "lines", "logs", "written_at", "build"}
    return header if texts and known and type(header.lines) is int else None


def _lines_of(text: str) -> list[str]:
    """Lines without the carriage returns and the byte order mark that a mail program adds."""
    lines = (line.removesuffix("\r") for line in text.removeprefix("\ufeff").split("\n"))
    return [line for line in lines if line]


def _refuse_what_is_no_log(lines: list[str], limits: Limits) -> None:
    if not lines:
        raise Fault("file_empty", "file")
    if len(lines) > limits.lines + 2:
        raise Fault("too_many", "file", len(lines), {"most": limits.lines})
    found = _FORMAT.match(lines[0])
    if found and int(found[1]) > FORMAT:
        raise Fault("file_newer", "file", int(found[1]), {"most": FORMAT})
    if not found and not any(is_sealed(line) for line in lines):
        raise Fault("file_foreign", "file", lines[0][:40].encode(errors="replace").decode())


def read_file(text: str, limits: Limits) -> LogFile:
    """The lines of an exported file, none of them read yet.

    Errors: ``too_large``, ``too_many`` above the limits; ``not_json`` for half of a surrogate
    pair; ``file_empty``; ``file_newer`` for a later format of files; ``file_foreign`` for a text
    without a header and without a sealed line.
    """
    if len(text) > limits.characters:
        raise Fault("too_large", "file", len(text), {"most": limits.characters})
    # Bytes that were no UTF-8 stand as surrogates of their own range; others belong to no file.
    lone = _LONE.search(text)
    if lone:
        raise Fault("not_json", "file", f"character {lone.start()}")
    lines = _lines_of(text)
    _refuse_what_is_no_log(lines, limits)
    findings = []
    header = _header_from(lines[0])
    before = lines
    if header is None:
        findings.append("no_header")
    else:
        lines = lines[1:]
    end = _END.fullmatch(lines[-1]) if lines else None
    if end is None:
        findings.append("cut")
    else:
        lines, before = lines[:-1], before[:-1]
        whole = hash_of_lines(before)
        if whole != end[2] or int(end[1]) != len(lines):
            findings.append("damaged")
    if header is None:
        return LogFile(lines, [], findings)
    whole_lines = len(lines) - (end is None and bool(lines) and not is_sealed(lines[-1]))
    missing = header.lines - whole_lines
    return LogFile(lines, header.heads, findings, missing, header.written_at, header.build)


def hash_of_lines(lines: Iterable[str]) -> str:
    """SHA-256 of lines, each with its line feed; bytes that were no UTF-8 count as they were."""
    digest = hashlib.sha256()
    for line in lines:
        digest.update(f"{line}\n".encode(errors="surrogateescape"))
    return digest.hexdigest()


def write_file(
    lines: list[str], heads: Iterable[Head], written_at: str = "", build: str = ""
) -> str:
    """Lines as the text of a file, which ends with the bracket of its trailer.

    ``written_at`` and ``build`` are left out where they are empty: the file of a merge does not
    depend on when it was made.

    >>> write_file([], []).splitlines()[0]
    '{"pailwright":"log","format":1,"lines":0,"logs":[]}'
    """
    logs = [{"log": head.log, "count": head.count, "head": head.head} for head in sorted(heads)]
    header: dict[str, Any] = {"pailwright": "log", "format": FORMAT, "lines": len(lines)}
    header |= {"logs": logs}
    header |= {k: v for k, v in (("written_at", written_at), ("build", build)) if v}
    first = json.dumps(header, ensure_ascii=False, separators=(",", ":"))
    digest = hash_of_lines([first, *lines])
    trailer = f'{{"end":"log","lines":{len(lines)},"sha256":"{digest}"}}'
    return "\n".join([first, *lines, trailer])
