"""``python3 -m pycore report``: the log as one page for the shop's wall or its auditor."""

from __future__ import annotations

import argparse
from pathlib import Path

from pycore.office.files import write_whole
from pycore.office.opened import (
    EXIT_STATUS,
    NOW_HELP,
    REFUSED,
    Refused,
    open_log,
    read_arguments,
    refuse_to_overwrite,
    status_of,
)
from pycore.office.outputs import Kind, not_written, refuse_foreign
from pycore.office.report_german import WORDS as GERMAN
from pycore.office.report_of import report_of
from pycore.office.report_page import page_start, report_page
from pycore.office.report_words import WORDS as ENGLISH
from pycore.sheets.language import Language

_LANGUAGES = {"en": Language(ENGLISH), "de": Language(GERMAN, ",", "de")}
_REPORT = Kind(
    "a report of this program",
    tuple(page_start(language).encode() for language in _LANGUAGES.values()),
)
_HELP = f"""Writes a log as one page that any browser opens and prints: how every machine stands,
what is overdue, strength and level over time with the range of each day, what was poured, and
what was corrected. The page fetches nothing and holds no script.

Examples:
  python3 -m pycore report all.jsonl -o report.html
  python3 -m pycore report all.jsonl -o bericht.html --language de

{EXIT_STATUS}"""


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="python3 -m pycore report",
        description=_HELP,
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    parser.add_argument("log", type=Path, metavar="LOG", help="an export or a merged file")
    parser.add_argument("-o", "--output", required=True, type=Path, metavar="HTML")
    parser.add_argument("--now", metavar="MOMENT", help=NOW_HELP)
    parser.add_argument(
        "--language", choices=sorted(_LANGUAGES), default="en", help="words and decimal sign"
    )
    return parser


def _run(arguments: list[str]) -> int:
    wanted = read_arguments(_parser(), arguments)
    refuse_to_overwrite(wanted.log, wanted.output)
    refuse_foreign(wanted.output, _REPORT)
    language = _LANGUAGES[wanted.language]
    log = open_log(wanted.log, wanted.now)
    page = report_page(report_of(log, language), language)
    try:
        write_whole(wanted.output, page)
    except OSError as error:
        raise Refused(REFUSED, not_written(wanted.output, error)) from None
    print(f"written: {wanted.output}, {len(page):,} characters")
    return log.status


def report_command(arguments: list[str]) -> int:
    """Runs ``report`` and returns the exit status."""
    return status_of(_run, arguments)
