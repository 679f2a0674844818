"""The project's own files, and small helpers to read Python with its own parser."""

import ast
import subprocess
from collections.abc import Iterator
from functools import cache
from pathlib import Path

from web.build.paths import ROOT

TEXT = {
    ".py",
    ".ts",
    ".tsx",
    ".js",
    ".mjs",
    ".css",
    ".json",
    ".md",
    ".toml",
    ".html",
    ".in",
    ".lock",
    "",
}
CODE = {".py", ".ts", ".tsx", ".js", ".mjs", ".css", ".html"}


@cache
def files() -> tuple[Path, ...]:
    """Every file that belongs to the project: what git holds or would take."""
    done = subprocess.run(
        ["git", "ls-files", "--cached", "--others", "--exclude-standard", "-z"],
        cwd=ROOT,
        capture_output=True,
        check=True,
    )
    names = sorted(filter(None, done.stdout.decode().split("\0")))
    return tuple(ROOT / name for name in names if (ROOT / name).is_file())


def name_of(path: Path) -> str:
    """A file's name from the project folder."""
    return path.relative_to(ROOT).as_posix()


def is_generated(path: Path) -> bool:
    """Whether the file's first lines say that it is generated, or it is a lock file."""
    if path.suffix == ".lock" or path.name == "package-lock.json":
        return True
    head = path.read_text(encoding="utf-8")[:300]
    return "Generated from shared/" in head and "Do not edit" in head


def python_files(*folders: str) -> list[Path]:
    """Python files below the folders that are written by hand."""
    return [
        path
        for path in files()
        if path.suffix == ".py"
        and name_of(path).split("/")[0] in folders
        and not is_generated(path)
    ]


@cache
def tree_of(path: Path) -> ast.Module:
    """A file's syntax tree."""
    return ast.parse(path.read_text(encoding="utf-8"), filename=name_of(path))


def functions(path: Path) -> Iterator[ast.FunctionDef | ast.AsyncFunctionDef]:
    """Every function and method in a file."""
    for node in ast.walk(tree_of(path)):
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef):
            yield node


def imported(path: Path) -> set[str]:
    """Full names of the modules that a file imports, wherever in it."""
    names: set[str] = set()
    for node in ast.walk(tree_of(path)):
        if isinstance(node, ast.Import):
            names.update(alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and node.module:
            names.add(node.module)
    return names
