"""``python3 -m pycore sheet``: draws a sheet into files, for a computer without a browser."""

from __future__ import annotations

import json
import sys
from pathlib import Path
from typing import Any

from pycore.desk.door import MOST_CHARACTERS, VERSION, handle
from pycore.office.files import read_text, write_whole
from pycore.office.german import WORDS as GERMAN
from pycore.office.opened import MISUSED, REFUSED, Refused
from pycore.office.outputs import Kind, not_written, refuse_foreign
from pycore.quantity.fault import Fault
from pycore.sheets.english import WORDS as ENGLISH
from pycore.sheets.paper import PAPERS, Paper, new_page
from pycore.sheets.wrapper import print_file

USAGE = """usage: python3 -m pycore sheet REQUEST [--to FOLDER] [--paper A4|Letter]
                               [--measured-100-mm TEXT] [--language en|de]

REQUEST is a file with the body of a draw_sheet request as JSON, or - for standard input, for
example {"kind": "log_sheet", "paper": "A4"}. Writes into FOLDER (here by default) one SVG file
for each page, and one HTML file that prints them in their true size.
--language writes the sheet's own words and its decimal sign; en unless the request has words.
--measured-100-mm says how long the 100 mm line of the last print came out, such as "97.5 mm".
A file that is there is replaced where it is such a page of a former run, and no other.
Exit status 0; 1 when the request is refused or a file was not written, with the reason; 2 when the
command is misused."""

_OPTIONS = ("--to", "--paper", "--measured-100-mm", "--language")
# How every page begins, whatever is drawn on it, on each paper.
_PAGE = Kind(
    "a sheet of this program",
    tuple(
        new_page(Paper(name, is_wide)).svg().partition("</g>")[0].encode()
        for name in PAPERS
        for is_wide in (False, True)
    ),
)
# Sentences and decimal sign of a sheet, by the code of the language.
_LANGUAGES = {"en": (ENGLISH, "."), "de": (GERMAN, ",")}


def _options(arguments: list[str]) -> tuple[str, dict[str, str]] | None:
    """The request's file and the options, or None when the command is misused."""
    request, options = None, {}
    rest = list(arguments)
    while rest:
        argument = rest.pop(0)
        if argument in _OPTIONS and rest and argument not in options:
            options[argument] = rest.pop(0)
        elif request is None and (argument == "-" or not argument.startswith("-")):
            request = argument
        else:
            return None
    if request is None or options.get("--language", "en") not in _LANGUAGES:
        return None
    return request, options


def _body(text: str, options: dict[str, str]) -> dict[str, Any] | None:
    try:
        body = json.loads(text)
    except ValueError:
        return None
    if not isinstance(body, dict):
        return None
    if "--paper" in options:
        body["paper"] = options["--paper"]
    if "--language" in options:
        words, sign = _LANGUAGES[options["--language"]]
        body = {**body, "words": dict(words), "decimal_sign": sign}
    if "--measured-100-mm" in options:
        body["measured_100_mm"] = {"text": options["--measured-100-mm"], "unit": "mm"}
    return body


def drawn_files(reply: dict[str, Any]) -> dict[str, str]:
    """Name and content of every file for an answered draw_sheet request."""
    result = reply["result"]
    kind, pages = result["kind"], result["pages"]
    page_mm = (result["page_width_mm"], result["page_height_mm"])
    files = {f"{kind}_{i}.svg": page for i, page in enumerate(pages, 1)}
    return {**files, f"{kind}.html": print_file(pages, page_mm, kind)}


def _print_page(name: str) -> Kind:
    """The kind of the HTML file of this name: how it begins up to the paper's size."""
    start = print_file((), (0.0, 0.0), name.removesuffix(".html")).partition("0mm")[0]
    return Kind(_PAGE.words, (start.encode(),))


def _write(folder: Path, files: dict[str, str]) -> list[str]:
    """Names of the files in the folder, which is made. Raises ``Refused`` with those that are
    written before the one that could not be; nothing is where a file is no sheet.
    """
    for name in files:
        refuse_foreign(folder / name, _print_page(name) if name.endswith(".html") else _PAGE)
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        reason = f"there can be no folder {folder} ({error.strerror}): nothing was written."
        raise Refused(MISUSED, reason) from None
    done: list[str] = []
    for name, content in files.items():
        try:
            write_whole(folder / name, content)
        except OSError as error:
            before = [f"written before: {', '.join(done)}"] if done else []
            text = "\n".join([*before, not_written(folder / name, error)])
            raise Refused(REFUSED, text) from None
        done.append(str(folder / name))
    return done


def sheet_command(arguments: list[str]) -> tuple[int, str]:
    """Writes the files of a sheet; returns the exit status and what to say."""
    read = _options(arguments)
    if read is None:
        return 2, USAGE
    request, options = read
    try:
        text = sys.stdin.read() if request == "-" else read_text(Path(request), MOST_CHARACTERS)
        body = _body(text, options)
    except (OSError, UnicodeDecodeError) as error:
        why = getattr(error, "strerror", None) or "no UTF-8 text"
        return 2, f"{request} cannot be read: {why}"
    except Fault as fault:
        return 2, f"{request} cannot be read: {fault.sentence()}"
    if body is None:
        return 2, f"{request} does not hold a JSON object"
    ask = {"v": VERSION, "id": "sheet", "op": "draw_sheet", "body": body}
    reply = json.loads(handle(json.dumps(ask)))
    if not reply["ok"]:
        return 1, str(reply["error"]["message"])
    try:
        written = _write(Path(options.get("--to", ".")), drawn_files(reply))
    except Refused as refused:
        return refused.status, str(refused)
    return 0, "\n".join(written)
