"""Sources for the plain start: without comments, docstrings and assertions, else the same."""

import ast
import dis
import importlib.util
from pathlib import Path
from types import CodeType, ModuleType
from typing import Any

import pytest

from web.build.paths import PYCORE, SCRIPTS, files_below


def _module() -> ModuleType:
    spec = importlib.util.spec_from_file_location("strip_source", SCRIPTS / "strip_source.py")
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


stripped = _module().stripped


def meaning(code: CodeType) -> list[Any]:
    """Instructions with their lines, and what they name; nothing for what does nothing."""
    said: list[Any] = [code.co_name, code.co_flags]
    line = None
    for step in dis.get_instructions(code):
        line = step.starts_line or line
        if step.opname not in ("NOP", "RESUME", "CACHE", "SETUP_ANNOTATIONS"):
            value = step.argval
            said.append((step.opname, line, None if _is_place(step) else _plain(value)))
    return said


def _is_place(step: dis.Instruction) -> bool:
    return step.opcode in dis.hasjrel or step.opcode in dis.hasjabs


def _plain(value: Any) -> Any:
    return meaning(value) if isinstance(value, CodeType) else value


# A module with nothing but a docstring has no line left.
SOURCES = [path for path in files_below(PYCORE, ".py") if len(ast.parse(path.read_text()).body) > 1]


@pytest.mark.parametrize("path", SOURCES, ids=lambda path: path.stem)
def test_stripped_source_compiles_to_what_python_makes_of_it_without_docstrings(path: Path) -> None:
    source = path.read_text()
    whole = compile(source, "m.py", "exec", dont_inherit=True, optimize=2)
    short = compile(stripped(source), "m.py", "exec", dont_inherit=True)
    assert meaning(short) == meaning(whole)


def test_lines_keep_their_numbers_and_texts_their_signs() -> None:
    source = (
        '"""Module."""\nfrom __future__ import annotations\n\n'
        'def f(x: int) -> str:  # said\n    """Of two\n    lines."""\n'
        '    assert x, (\n        "no"\n    )\n    return "# °\u2009é"  # the end\n'
    )
    got = stripped(source)
    assert got.count("\n") == source.count("\n")
    assert got.splitlines()[9] == '    return "# °\u2009é"'
    for gone in ("said", "Module", "assert"):
        assert gone not in got
    space: dict[str, Any] = {}
    exec(compile(got, "m.py", "exec", dont_inherit=True), space)
    assert space["f"](0) == "# °\u2009é"
    assert space["f"].__doc__ is None
