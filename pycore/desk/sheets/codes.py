"""A machine's short code, made and read."""

from __future__ import annotations

from pycore.desk.sheets.messages import CodeResult, MakeCodeBody, ReadCodeBody
from pycore.sheets.code import code_of, read_code, shown_code


def make_code(body: MakeCodeBody) -> CodeResult:
    """The short code of a number, which the schema keeps in its range."""
    # The schema calls 3.0 and -0.0 whole numbers too.
    code = code_of(int(body.code_number))
    return CodeResult(code, shown_code(code))


def answer_code(body: ReadCodeBody) -> CodeResult:
    """A typed code, read. Errors: ``empty``, ``not_a_code``, ``code_mismatch`` at body.text."""
    code = read_code(body.text, "body.text")
    return CodeResult(code, shown_code(code))
