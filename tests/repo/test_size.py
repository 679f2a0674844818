"""A file has one topic and stays under 300 lines, a function under 50."""

import ast
from pathlib import Path

import pytest

from tests.repo.sources import CODE, files, functions, is_generated, name_of, python_files

WRITTEN = [path for path in files() if path.suffix in CODE and not is_generated(path)]
MOST_LINES = 299
MOST_FUNCTION_LINES = 49


@pytest.mark.parametrize("path", WRITTEN, ids=name_of)
def test_file(path: Path) -> None:
    assert len(path.read_text(encoding="utf-8").splitlines()) <= MOST_LINES


@pytest.mark.parametrize("path", python_files("pycore", "web", "tests"), ids=name_of)
def test_function(path: Path) -> None:
    lines = {function.name: _lines(function) for function in functions(path)}
    assert {name: count for name, count in lines.items() if count > MOST_FUNCTION_LINES} == {}


def _lines(function: ast.FunctionDef | ast.AsyncFunctionDef) -> int:
    """Lines of a function without its docstring, which may be as long as it needs."""
    first = function.body[0]
    has_docstring = ast.get_docstring(function) is not None
    docstring = (first.end_lineno or 0) - first.lineno + 1 if has_docstring else 0
    return (function.end_lineno or 0) - function.lineno + 1 - docstring
