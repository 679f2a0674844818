"""Tests loaded once give every mutant the verdict that tests loaded anew give it."""

import json
import subprocess
import sys
from pathlib import Path

import pytest

from web.build.paths import ROOT

pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="the mutation run needs a fork")

# One of each: what runs while it is loaded, and every kind of function that can be changed.
SMALL = """
from dataclasses import dataclass
from functools import cache

def doubled(a):
    return a * 2

LIMIT = doubled(4)
UNTESTED = 7

@cache
def kept(a):
    return a + 1

def made(step):
    def add(a, more=1):
        return a + step * more
    return add

def counted(most):
    n = 0
    while n < most:
        yield n
        n += 1

def listed(values):
    return [v for v in values if v > 2]

@dataclass(frozen=True)
class Room:
    wide: int
    high: int = 3

    def __post_init__(self):
        if self.wide < 0:
            raise ValueError("wide")

    @property
    def size(self):
        return self.wide * self.high

    @staticmethod
    def least(a, b):
        return min(a, b)

def unseen(a):
    return a - 1
"""
# ``kept`` is called while this is loaded, so no mutant of it may take the place of the function.
TESTS_OF_SMALL = """
import pytest
from small import LIMIT, Room, counted, doubled, kept, listed, made

THREE = kept(2)

def test_all():
    assert (LIMIT, doubled(3), kept(2), THREE) == (8, 6, 3, 3)
    assert made(2)(5) == 7
    assert list(counted(2)) == [0, 1]
    assert listed([1, 3]) == [3]

@pytest.mark.parametrize(("wide", "size"), [(2, 6), (0, 0)])
def test_room(wide, size):
    assert Room(wide).size == size
    assert Room.least(wide, 1) <= 1

def test_no_room():
    with pytest.raises(ValueError):
        Room(-1)
"""
# One of every kind of change that is met without loading anew, of every kind that is not, and of
# what no test notices. Only these, since loading anew takes half a second of a processor for each.
IN_FUNCTIONS = [
    "add: a + step * more -> a - step * more",
    "counted: n < most -> n <= most",
    "listed: v > 2 -> v <= 2",
    "__post_init__: self.wide < 0 -> self.wide >= 0",
    "size: self.wide * self.high -> self.wide / self.high",
    "least: min(a, b) -> max(a, b)",
]
RAN_ALREADY = [
    "doubled: a * 2 -> a / 2",  # a constant of the module is made with it
    "kept: a + 1 -> a - 1",  # the tests call it while they are loaded
    ": 3 -> 4",  # a default of a dataclass
]
UNNOTICED = [": 7 -> 8", "unseen: a - 1 -> a + 1", "__post_init__: 'wide' -> 'wide_'"]
ASKED = """
import json, sys
from pathlib import Path
from tests.mutants.changes import compiled, mutants
from tests.mutants.collected import collected
from tests.mutants.trial import Tests, passes

path = Path("small.py").resolve()
source = path.read_text()
tests = Tests([str(path.with_name("test_small.py"))], "small", path, 6)
tried = [each for each in mutants(source, str(path)) if each.name in sys.argv[1:]]
rows, before = {}, 0
with collected(tests, compiled(source, str(path)), [mutant.code for mutant in tried]) as waiting:
    for turn, mutant in enumerate(tried):
        once = waiting.passes(turn)
        rows[mutant.name] = [once, passes(tests, mutant.code), waiting.anew > before]
        before = waiting.anew
print(json.dumps(rows))
"""


def _ask(place: Path, tests: str, names: list[str]) -> "subprocess.CompletedProcess[str]":
    (place / "small.py").write_text(SMALL, encoding="utf-8")
    (place / "test_small.py").write_text(tests, encoding="utf-8")
    code = f"import sys; sys.path.insert(0, {str(ROOT)!r}){ASKED}"
    command = [sys.executable, "-c", code, *names]
    return subprocess.run(command, cwd=place, capture_output=True, text=True, check=False)


@pytest.fixture(scope="module")
def verdicts(tmp_path_factory: pytest.TempPathFactory) -> dict[str, list[bool]]:
    """Of each mutant: passes loaded once, passes loaded anew, was loaded anew both times."""
    names = [*IN_FUNCTIONS, *RAN_ALREADY, *UNNOTICED]
    done = _ask(tmp_path_factory.mktemp("small"), TESTS_OF_SMALL, names)
    assert done.returncode == 0, done.stderr
    answers: dict[str, list[bool]] = json.loads(done.stdout)
    return answers


@pytest.mark.parametrize("name", IN_FUNCTIONS)
def test_change_in_a_function_is_met_without_loading_anew(
    verdicts: dict[str, list[bool]], name: str
) -> None:
    assert verdicts[name] == [False, False, False]


@pytest.mark.parametrize("name", RAN_ALREADY)
def test_what_ran_already_is_loaded_anew(verdicts: dict[str, list[bool]], name: str) -> None:
    assert verdicts[name] == [False, False, True]


@pytest.mark.parametrize("name", UNNOTICED)
def test_both_ways_let_pass_what_no_test_notices(
    verdicts: dict[str, list[bool]], name: str
) -> None:
    assert verdicts[name][:2] == [True, True]


@pytest.mark.parametrize("fault", ["assert LIMIT == 9", "def test_limit():\n    assert LIMIT == 9"])
def test_tests_that_fail_without_a_change_notice_nothing(tmp_path: Path, fault: str) -> None:
    done = _ask(tmp_path, f"from small import LIMIT\n{fault}\n", UNNOTICED)
    assert done.returncode == 1
    assert "fail without any change" in done.stderr
