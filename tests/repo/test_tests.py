"""A test that asserts nothing, or a skip without a reason, is a defect."""

import ast
from pathlib import Path

import pytest

from tests.repo.sources import files, functions, name_of, tree_of
from web.build.paths import ROOT

TESTS = [
    path
    for path in files()
    if path.suffix == ".py" and path.name.startswith("test_") and name_of(path).startswith("tests/")
]
# Helpers that assert for the test; each is called by a name that says so.
ASSERTING = ("assert_", "expect", "raises", "check_", "fail")


def _asserts(function: ast.AST) -> bool:
    for node in ast.walk(function):
        if isinstance(node, ast.Assert) and not isinstance(node.test, ast.Constant):
            return True
        if isinstance(node, ast.Call):
            name = ast.unparse(node.func).split(".")[-1]
            if name.startswith(ASSERTING):
                return True
    return False


def test_there_are_tests_in_every_part() -> None:
    parts = {name_of(path).split("/")[1] for path in TESTS}
    assert parts >= {"unit", "published", "properties", "repo", "browser"}


@pytest.mark.parametrize("path", TESTS, ids=name_of)
def test_every_test_asserts(path: Path) -> None:
    empty = [f.name for f in functions(path) if f.name.startswith("test_") and not _asserts(f)]
    assert empty == []


@pytest.mark.parametrize("path", TESTS, ids=name_of)
def test_file_holds_tests(path: Path) -> None:
    assert any(function.name.startswith("test_") for function in functions(path))


@pytest.mark.parametrize("path", TESTS, ids=name_of)
def test_every_skip_says_why(path: Path) -> None:
    silent = [
        node.lineno
        for node in ast.walk(tree_of(path))
        if isinstance(node, ast.Call | ast.Attribute)
        and ast.unparse(node.func if isinstance(node, ast.Call) else node).endswith(
            ("mark.skip", "mark.skipif", "mark.xfail", "pytest.skip", "pytest.xfail")
        )
        and "reason" not in ast.unparse(node)
        and not (isinstance(node, ast.Call) and node.args)
        and isinstance(node, ast.Call)
    ]
    assert silent == []


def room_of(path: Path) -> Path:
    """A file's folder below pycore."""
    return path.parent.relative_to(ROOT / "pycore")


def test_unit_tests_mirror_pycore() -> None:
    modules = [
        path
        for path in files()
        if name_of(path).startswith("pycore/") and path.suffix == ".py" and path.name[0] != "_"
    ]
    missing = [
        name_of(path)
        for path in modules
        if not any((ROOT / "tests" / "unit" / room_of(path)).rglob(f"test_{path.name}"))
    ]
    assert modules
    assert missing == []
