"""The table of faults in DEVELOPERS.md: no number left out, each test there, and it says so."""

import re
from pathlib import Path

import pytest

from tests.repo.sources import files, name_of
from web.build.paths import ROOT, WEB, files_below

LAST = 62
TEXT = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
PART = TEXT.split("### Faults")[1].split("\n### ")[0]
# Files that are named without a folder lie here.
HOMES = ("tests/browser/faults", "tests/browser", "tests/unit", "tests/properties")


def rows() -> list[tuple[str, str, str]]:
    """What is at fault, where it is tested, what was seen."""
    cells = [line.strip("|").split("|") for line in PART.splitlines() if line.startswith("| F")]
    return [(fault.strip(), tests.strip(), figure.strip()) for fault, tests, figure in cells]


def numbers(fault: str) -> list[int]:
    """F12, F13 -> 12, 13."""
    return [int(number) for number in re.findall(r"\bF(\d\d)\b", fault)]


def test_every_number_has_a_row() -> None:
    found = [number for fault, _, _ in rows() for number in numbers(fault)]
    assert sorted(set(found)) == list(range(1, LAST + 1))


@pytest.mark.parametrize("row", rows(), ids=lambda row: row[0])
def test_a_row_names_tests_that_are_there(row: tuple[str, str, str]) -> None:
    fault, tests, figure = row
    assert figure
    for name in re.findall(r"`([^`]+)`", tests):
        if name.startswith("python3 -m "):
            module = name.removeprefix("python3 -m ").replace(".", "/")
            assert (ROOT / f"{module}.py").exists() or (ROOT / module / "__main__.py").exists()
        elif "/" in name:
            assert (ROOT / name).exists(), name
        else:
            places = [path for path in files() if path.name == name]
            homes = [place for place in places if name_of(place).startswith(HOMES)]
            assert homes, name
    # Without a test only what cannot happen, which the next test looks at.
    assert "`" in tests or numbers(fault) == [17]


def test_no_locks_are_used_so_no_window_can_keep_one() -> None:
    found = [path for path in files_below(WEB / "src") if "navigator.locks" in _text(path)]
    assert found == []


def _text(path: Path) -> str:
    return path.read_text(encoding="utf-8")
