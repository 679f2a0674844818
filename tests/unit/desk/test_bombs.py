"""Archives given to the commands: refused unopened, nothing written, little memory (F47).

A log is never taken out of an archive, so there is no limit to unpack up to.
"""

import gzip
import io
import tracemalloc
import zipfile
from collections.abc import Callable
from pathlib import Path

import pytest

from pycore.__main__ import main
from tests.phones import Phone, check

UNPACKED = 268_000_000
MEMBERS = 100_000
MOST_GROWTH = 50_000_000
AT_ONCE = 1_000_000


def zip_bomb() -> bytes:
    """One member that opens to a thousand times its size."""
    out = io.BytesIO()
    with (
        zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive,
        archive.open("log.txt", "w") as member,
    ):
        for _ in range(UNPACKED // AT_ONCE):
            member.write(b"0" * AT_ONCE)
    return out.getvalue()


def gzip_bomb() -> bytes:
    """The same as one stream, beginning as a log does once it is unpacked."""
    out = io.BytesIO()
    with gzip.open(out, "wb") as stream:
        stream.write(b'{"pailwright":"log","format":1,"lines":1,"logs":[]}\n')
        for _ in range(UNPACKED // AT_ONCE):
            stream.write(b"0" * AT_ONCE)
    return out.getvalue()


def many_members() -> bytes:
    """Names that lead out of the folder, so many that their list alone is megabytes."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as archive:
        for number in range(MEMBERS):
            archive.writestr(f"../../up {number}", "")
    return out.getvalue()


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
    assert main([name, "--help"]) == 0
    tracemalloc.start()
    got = main([given.get(word, word) for word in words])
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
    assert main(["merge", str(log), str(bomb), "-o", str(tmp_path / "all.jsonl")]) == 1
    assert phone.lines[0] in (tmp_path / "all.jsonl").read_text(encoding="utf-8")


def test_a_request_for_a_sheet_that_is_too_large_is_not_read(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    with (tmp_path / "request").open("wb") as file:
        file.truncate(10**12)
    assert main(["sheet", str(tmp_path / "request"), "--to", str(tmp_path)]) == 2
    assert "too long" in capsys.readouterr().err
