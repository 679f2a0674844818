"""What lies at the top, what is generated, and words that may not stand anywhere."""

from pathlib import Path

import pytest

from tests.repo.sources import TEXT, files, name_of
from web.build.contract import stale
from web.build.paths import ROOT

TOP = {
    "README.md",
    "DEVELOPERS.md",
    "pyproject.toml",
    "LICENSE",
    "pycore",
    "web",
    "tests",
    "shared",
}
# Written in halves, so that this file does not hold them.
FORBIDDEN = [
    "/wo" + "rk/",
    "/ro" + "ot/",
    "py" + "pi.org",
    "pythonho" + "sted",
    "registry.npm" + "js",
    "deb.deb" + "ian",
    "tran" + "script",
    "seed docu" + "ment",
    "TO" + "DO",
    "FIX" + "ME",
    "XX" + "X:",
    "../sha" + "red",
]
# A tool's own words, not ours.
NOT_OURS = {"web/package-lock.json"}


def test_top_level_holds_what_the_house_lists() -> None:
    top = {name_of(path).split("/")[0] for path in files()}
    assert {name for name in top if not name.startswith(".")} <= TOP
    assert top >= {"README.md", "pyproject.toml", "LICENSE", "pycore", "web", "tests", "shared"}


def test_generated_files_are_those_of_the_contract() -> None:
    assert stale() == []


@pytest.mark.parametrize("path", [p for p in files() if p.suffix in TEXT], ids=name_of)
def test_forbidden_words(path: Path) -> None:
    if name_of(path) in NOT_OURS:
        assert path.exists()
        return
    text = path.read_text(encoding="utf-8").lower()
    found = [word for word in FORBIDDEN if word.lower() in text]
    # The tests' own helper folder is reached by a relative import in the page's code.
    if path.suffix in (".ts", ".tsx"):
        found = [word for word in found if "sha" not in word]
    assert found == []


def test_what_is_made_is_not_committed() -> None:
    ignored = (ROOT / ".gitignore").read_text(encoding="utf-8").split()
    for name in (".venv/", "node_modules/", "web/dist/", "web/.build/", "tests/.output/"):
        assert name in ignored
