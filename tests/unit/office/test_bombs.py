"""Archives given to the commands: refused unopened, nothing written, little memory (F47).

A log is never taken out of an archive, so there is no limit to unpack up to.
"""

import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest

from tests.bombs import gzip_bomb, many_members, zip_bomb
from tests.phones import Phone, check
from tests.unit.office.commanded import command

MOST_GROWTH = 60_000_000
# In a process of its own: threads and remains of other tests would be counted too. What a command
# stands on is loaded by its help, so that only the archive is counted.
COUNTED = """
import sys, tracemalloc
from pycore.__main__ import main
assert main([sys.argv[1], "--help"]) == 0
tracemalloc.start()
status = main(sys.argv[1:])
print(tracemalloc.get_traced_memory()[1])
sys.exit(status)
"""


@pytest.fixture(scope="module", params=[zip_bomb, gzip_bomb, many_members])
def bomb(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The archive as a file, named as a log is."""
    make: Callable[[], bytes] = request.param
    path = tmp_path_factory.mktemp("bomb") / "in" / "log.txt"
    path.parent.mkdir()
    path.write_bytes(make())
    return path


COMMANDS = {
    "merge": (1, ["merge", "IN", "-o", "OUT"]),
    "table": (1, ["table", "IN", "-o", "OUT"]),
    "report": (1, ["report", "IN", "-o", "OUT"]),
    "tombstone": (1, ["tombstone", "IN", "a" * 32, "-o", "OUT", "--reason", "asked"]),
    "sheet": (2, ["sheet", "IN", "--to", "OUT"]),
}


@pytest.mark.parametrize("name", COMMANDS)
def test_an_archive_is_refused_unopened(name: str, bomb: Path) -> None:
    status, words = COMMANDS[name]
    out = bomb.parent.parent / "out"
    given = {"IN": str(bomb), "OUT": str(out)}
    run = subprocess.run(
        [sys.executable, "-c", COUNTED, *[given.get(word, word) for word in words]],
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        check=False,
    )
    *_, last = run.stdout.splitlines()
    peak = int(last)
    size = bomb.stat().st_size
    print(f"{name}: {size / 1e6:.1f} MB given, {peak / 1e6:.1f} MB of memory at the most")
    assert run.returncode == status
    assert str(bomb) in run.stdout + run.stderr
    assert peak < MOST_GROWTH
    # Neither the output nor anything that the names in the archive ask for.
    assert [path.name for path in bomb.parent.parent.rglob("*")] == ["in", "log.txt"]


def test_beside_an_archive_the_log_is_merged(bomb: Path, tmp_path: Path) -> None:
    phone = Phone("a")
    phone.save("check", check(), 60)
    log = tmp_path / "log.jsonl"
    log.write_text(phone.export(), encoding="utf-8")
    assert command("merge", str(log), str(bomb), "-o", str(tmp_path / "all.jsonl")) == 1
    assert phone.lines[0] in (tmp_path / "all.jsonl").read_text(encoding="utf-8")


def test_a_request_for_a_sheet_that_is_too_large_is_not_read(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    with (tmp_path / "request").open("wb") as file:
        file.truncate(10**12)
    assert command("sheet", str(tmp_path / "request"), "--to", str(tmp_path)) == 2
    assert "too long" in capsys.readouterr().err
