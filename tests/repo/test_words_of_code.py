"""Docstrings and constants of pycore say what they are and where they come from."""

import ast
import re
from pathlib import Path

import pytest

from tests.repo.sources import name_of, python_files, tree_of

PYCORE = python_files("pycore")
# Held equal to the contract in test_versions.py.
VERSIONS = {"VERSION", "SCHEMA"}
Function = ast.FunctionDef | ast.AsyncFunctionDef


def _public(path: Path) -> list[Function | ast.ClassDef]:
    found: list[Function | ast.ClassDef] = []
    for node in tree_of(path).body:
        if isinstance(node, Function | ast.ClassDef) and not node.name.startswith("_"):
            found.append(node)
            if isinstance(node, ast.ClassDef):
                found += [m for m in node.body if isinstance(m, Function) and m.name[0] != "_"]
    return found


def _raises_fault(node: ast.AST) -> bool:
    return any(
        isinstance(part, ast.Raise)
        and isinstance(part.exc, ast.Call)
        and ast.unparse(part.exc.func) in ("Fault", "ValueError", "placed")
        for part in ast.walk(node)
    )


@pytest.mark.parametrize("path", PYCORE, ids=name_of)
def test_module_and_everything_public_has_a_docstring(path: Path) -> None:
    bare = [node.name for node in _public(path) if not ast.get_docstring(node)]
    assert ast.get_docstring(tree_of(path))
    assert bare == []


@pytest.mark.parametrize("path", PYCORE, ids=name_of)
def test_a_function_that_refuses_says_so(path: Path) -> None:
    silent = [
        node.name
        for node in _public(path)
        if isinstance(node, Function)
        and _raises_fault(node)
        and not re.search(r"[Ee]rror|[Rr]aise|[Rr]efus|Fault", ast.get_docstring(node) or "")
    ]
    assert silent == []


@pytest.mark.parametrize("path", PYCORE, ids=name_of)
def test_every_number_that_stands_fast_has_a_reason_or_a_source(path: Path) -> None:
    lines = path.read_text(encoding="utf-8").splitlines()
    bare = []
    for node in tree_of(path).body:
        if not isinstance(node, ast.Assign) or not isinstance(node.targets[0], ast.Name):
            continue
        if node.targets[0].id in VERSIONS:
            continue
        is_number = isinstance(node.value, ast.Constant) and isinstance(
            node.value.value, int | float
        )
        if is_number and not _is_explained(
            lines, node.lineno - 1, ast.get_docstring(tree_of(path))
        ):
            bare.append(f"{node.targets[0].id} in line {node.lineno}")
    assert bare == []


def _is_explained(lines: list[str], at: int, docstring: str | None) -> bool:
    """Whether a comment stands above the block of constants that the line belongs to."""
    while at > 0 and lines[at - 1].strip() and not lines[at - 1].startswith("#"):
        at -= 1
    return lines[at - 1].startswith("#") or "Source" in (docstring or "")


def test_docstrings_hold_examples_that_run() -> None:
    examples = sum(path.read_text(encoding="utf-8").count(">>> ") for path in PYCORE)
    assert examples >= 10
