"""pycore.office.loss: merge and tombstone replace a log only by one that holds all of it."""

from pathlib import Path

import pytest

from pycore.office.merging import merge_command
from pycore.office.removing import tombstone_command
from tests.phones import Phone, check, id_of


def exported(place: Path, title: str, count: int = 3) -> Path:
    phone = Phone(title)
    for number in range(count):
        phone.save("check", check(), 60 * number)
    path = place / f"{title}{count}.jsonl"
    path.write_text(phone.export(), encoding="utf-8")
    return path


def merge(out: Path, *inputs: Path) -> int:
    return merge_command([*map(str, inputs), "-o", str(out)])


def tombstone(log: Path, out: Path, *ids: str, reason: str = "asked for") -> int:
    named = [id_of(name) for name in ids]
    return tombstone_command([str(log), *named, "-o", str(out), "--reason", reason])


@pytest.mark.parametrize("kind", ["merge", "tombstone"])
def test_the_only_export_of_another_phone_stays(
    kind: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    # The first input was named after -o by slip, and all its lines were gone with status 0.
    one, other = exported(tmp_path, "a"), exported(tmp_path, "b")
    before = other.read_bytes()
    ended = merge(other, one) if kind == "merge" else tombstone(one, other, "a 2")
    assert ended == 2
    assert other.read_bytes() == before
    said = capsys.readouterr().err
    assert f"{other} would lose lines, since the new log does not hold them: 3. " in said
    assert "only a log whose every line stands in the new one is replaced" in said


def test_a_merge_of_more_replaces_its_own_older_output_and_one_of_less_does_not(
    tmp_path: Path,
) -> None:
    out = tmp_path / "all.jsonl"
    first, longer = exported(tmp_path, "a"), exported(tmp_path, "a", 5)
    assert merge(out, first) == 0
    assert merge(out, longer, exported(tmp_path, "b")) == 0
    whole = out.read_bytes()
    assert merge(out, longer) == 2
    assert out.read_bytes() == whole


def test_what_was_taken_out_is_no_loss_and_does_not_come_back(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    log, out, both = exported(tmp_path, "a"), tmp_path / "clean.jsonl", tmp_path / "both.jsonl"
    assert merge(out, log) == 0
    assert tombstone(log, out, "a 2") == 0
    # One more entry, and the same with another reason: every tombstone is still one.
    assert tombstone(log, out, "a 2", "a 3", reason="asked for in writing") == 0
    before = out.read_bytes()
    for ended in (tombstone(log, out, "a 2"), merge(out, log)):
        assert ended == 2
        assert out.read_bytes() == before
    assert capsys.readouterr().err.count("does not hold them: 1. ") == 1
    assert merge(both, out, log) == 0
    assert merge(both, out) == 0


def test_damaged_lines_count_and_bytes_that_are_no_utf_8_too(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out, log = tmp_path / "out.jsonl", exported(tmp_path, "a")
    out.write_bytes(log.read_bytes().replace(b'"342"', b'"\xff42"', 1))
    assert merge(out, log) == 2
    assert "does not hold them: 1. " in capsys.readouterr().err


def test_half_a_line_is_no_loss_where_the_whole_one_has_come(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out, log = tmp_path / "out.jsonl", exported(tmp_path, "a")
    whole = log.read_bytes()
    log.write_bytes(whole[:-200])
    assert merge(out, log) == 0
    torn = out.read_bytes()
    # The next day the file was copied whole, and the merge stayed stuck.
    log.write_bytes(whole)
    assert merge(out, log) == 0
    log.write_bytes(whole[:-400])
    out.write_bytes(torn)
    assert merge(out, log) == 2
    assert "does not hold them: 1. " in capsys.readouterr().err


@pytest.mark.parametrize("kind", ["merge", "tombstone"])
@pytest.mark.parametrize("trouble", ["newer", "unreadable"])
def test_a_log_that_cannot_be_told_stays(
    kind: str,
    trouble: str,
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    log, out = exported(tmp_path, "a"), tmp_path / "out.jsonl"
    out.write_text('{"pailwright":"log","format":2,"lines":0,"logs":[]}', encoding="utf-8")
    before, real = out.read_bytes(), Path.read_bytes

    def broken(path: Path) -> bytes:
        if path == out:
            raise OSError(5, "Input/output error")
        return real(path)

    if trouble == "unreadable":
        monkeypatch.setattr(Path, "read_bytes", broken)
    assert (merge(out, log) if kind == "merge" else tombstone(log, out, "a 2")) == 1
    monkeypatch.undo()
    assert out.read_bytes() == before
    why = {"newer": "file_newer: ", "unreadable": "Input/output error"}[trouble]
    assert f"{out} is there and what it holds cannot be told ({why}" in capsys.readouterr().err
