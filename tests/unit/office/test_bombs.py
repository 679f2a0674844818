"""Archives given to the commands: refused unopened, nothing written, little memory (F47).

A log is never taken out of an archive, so there is no limit to unpack up to.
"""

import tracemalloc
from collections.abc import Callable
from pathlib import Path

import pytest

from tests.bombs import gzip_bomb, many_members, zip_bomb
from tests.phones import Phone, check
from tests.unit.office.commanded import command

MOST_GROWTH = 50_000_000


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
def test_an_archive_is_refused_unopened(
    name: str, bomb: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    status, words = COMMANDS[name]
    out = bomb.parent.parent / "out"
    given = {"IN": str(bomb), "OUT": str(out)}
    # What a command stands on is loaded by its help, so that only the archive is counted.
    assert command(name, "--help") == 0
    tracemalloc.start()
    got = command(*[given.get(word, word) for word in words])
    _, peak = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    size = bomb.stat().st_size
    said = capsys.readouterr()
    print(f"{name}: {size / 1e6:.1f} MB given, {peak / 1e6:.1f} MB of memory at the most")
    assert got == status
    assert str(bomb) in said.out + said.err
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
