"""Whatever is fetched has a hash in the repository, and no package's own script is run."""

import ast
import json
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.repo.sources import files, name_of, python_files, tree_of

NPM_LOCKS = [path for path in files() if path.name == "package-lock.json"]
FETCHING = {"install", "download", "add", "ci", "i", "npx", "exec"}
HASHED = {"--require-hashes", "--only-binary", ":all:", "--no-deps"}
# Where it cannot be so: file -> what stands in the place of a hash.
WITHOUT_HASH = {
    "tests/packages.py": "apt checks the signature of its own lists",
    "tests/chromium.py": "Playwright's Chromium, where a computer has none: https alone",
}
OUTSIDE = re.compile(r"urlopen|urlretrieve|import (requests|httpx|aiohttp)|curl|wget|git clone|npx")


def words_of(path: Path) -> Iterator[set[str]]:
    """The words of each command in a file: all texts of a list, also of the lists in it."""
    lists = {
        target.id: node.value
        for node in ast.walk(tree_of(path))
        if isinstance(node, ast.Assign) and isinstance(node.value, ast.List)
        for target in node.targets
        if isinstance(target, ast.Name)
    }
    for node in ast.walk(tree_of(path)):
        if isinstance(node, ast.List):
            inside = list(ast.walk(node))
            for name in [one.id for one in inside if isinstance(one, ast.Name)]:
                inside += ast.walk(lists.get(name, node))
            yield {str(one.value) for one in inside if isinstance(one, ast.Constant)}


def is_pinned(words: set[str]) -> bool:
    """Whether a command takes only what a lock file names, and runs no script of a package."""
    if "pip" in words:
        return words >= HASHED and "-r" in words
    return "ci" in words and "--ignore-scripts" in words


def test_every_command_that_fetches_is_pinned() -> None:
    loose, pinned = [], 0
    for path in python_files("web", "tests", "pycore"):
        if name_of(path) in WITHOUT_HASH or path == Path(__file__):
            continue
        for words in words_of(path):
            # A file of words and not a command has no option.
            if not words & FETCHING or not any(word.startswith("--") for word in words):
                continue
            pinned += is_pinned(words)
            if not is_pinned(words):
                loose.append(f"{name_of(path)}: {sorted(words)}")
    assert loose == []
    # pip twice and npm once in the build, pip once in tests.reproduce.
    assert pinned == 4


@pytest.mark.parametrize(
    ("words", "wanted"),
    [
        ("pip install --quiet x==1", False),
        ("pip install --require-hashes --only-binary :all: --no-deps -r x.lock", True),
        ("npm ci", False),
        ("npm ci --ignore-scripts", True),
        ("npm install --ignore-scripts", False),
    ],
)
def test_what_counts_as_pinned(words: str, wanted: bool) -> None:
    assert is_pinned(set(words.split())) is wanted


def test_nothing_else_in_the_build_fetches() -> None:
    found = [
        name_of(path)
        for path in files()
        if name_of(path).startswith(("web/build/", "web/vite", ".ci/", "pycore/"))
        and path.suffix in (".py", ".mjs", ".ts", ".js", "")
        and not name_of(path).startswith("web/build/licences/")
        and OUTSIDE.search(path.read_text(encoding="utf-8"))
    ]
    assert found == []


@pytest.mark.parametrize("lock", NPM_LOCKS, ids=name_of)
def test_every_npm_package_has_a_hash(lock: Path) -> None:
    packages = json.loads(lock.read_text(encoding="utf-8"))["packages"]
    fetched = {name: one for name, one in packages.items() if name}
    assert fetched
    assert [
        name
        for name, one in fetched.items()
        if not one.get("integrity", "").startswith("sha512-") and not one.get("inBundle")
    ] == []
    # Another address would be another registry, or a repository without a hash.
    assert [name for name, one in fetched.items() if "resolved" in one or one.get("link")] == []
