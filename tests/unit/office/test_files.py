"""pycore.office.files: whole files or none."""

import os
from pathlib import Path

import pytest

from pycore.office.files import files_in, is_same_file, read_text, write_whole
from pycore.quantity.fault import Fault


def test_a_folder_stands_for_its_files(tmp_path: Path) -> None:
    for name in ("b.jsonl", "a.jsonl", ".hidden"):
        (tmp_path / name).write_text("x")
    (tmp_path / "deeper").mkdir()
    assert [path.name for path in files_in(tmp_path)] == ["a.jsonl", "b.jsonl"]
    assert files_in(tmp_path / ".hidden") == [tmp_path / ".hidden"]
    with pytest.raises(FileNotFoundError):
        files_in(tmp_path / "nothing")


def test_one_file_under_two_names(tmp_path: Path) -> None:
    one, link, hard, other = (tmp_path / name for name in ("one", "link", "hard", "other"))
    one.write_text("x")
    other.write_text("x")
    link.symlink_to(one)
    os.link(one, hard)
    assert all(is_same_file(one, same) for same in (one, link, hard, tmp_path / "." / "one"))
    assert not is_same_file(one, other)
    assert not is_same_file(one, tmp_path / "not there")


def test_bytes_come_out_as_they_went_in(tmp_path: Path) -> None:
    given = b"\xef\xbb\xbf\xff\x00\r\n\xc3\xa4"
    (tmp_path / "in").write_bytes(given)
    text = read_text(tmp_path / "in", 100)
    write_whole(tmp_path / "out", text)
    assert (tmp_path / "out").read_bytes() == given


def test_too_large_is_refused_before_reading(tmp_path: Path) -> None:
    with (tmp_path / "sparse").open("wb") as file:
        file.truncate(10**12)
    with pytest.raises(Fault) as caught:
        read_text(tmp_path / "sparse", 100)
    assert (caught.value.code, caught.value.limit) == ("too_large", {"most": 100})


def test_a_file_is_replaced_and_nothing_else_remains(tmp_path: Path) -> None:
    place = tmp_path / "all.jsonl"
    place.write_text("old")
    write_whole(place, "new")
    assert place.read_text() == "new"
    assert [path.name for path in tmp_path.iterdir()] == ["all.jsonl"]


@pytest.mark.parametrize("target", ["real.txt", "deeper/real.txt", "new.txt"])
def test_a_link_stays_and_the_file_that_it_leads_to_is_written(target: str, tmp_path: Path) -> None:
    # The link itself became a file, and whoever read the other name read the old text for ever.
    (tmp_path / "deeper").mkdir()
    real, link = tmp_path / target, tmp_path / "link.txt"
    if target != "new.txt":
        real.write_text("old")
    link.symlink_to(target)
    write_whole(link, "new")
    assert link.is_symlink()
    assert real.read_text() == "new"
    assert not [path for path in tmp_path.rglob("*") if path.suffix == ".part"]


@pytest.mark.parametrize(("of", "step"), [(os, "fsync"), (Path, "write_bytes")])
def test_when_a_step_fails_the_old_file_stays(
    of: object, step: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    place = tmp_path / "all.jsonl"
    place.write_text("old")

    def full(*_: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(of, step, full)
    with pytest.raises(OSError, match="No space"):
        write_whole(place, "new")
    assert place.read_text() == "old"
    assert [path.name for path in tmp_path.iterdir()] == ["all.jsonl"]


def test_the_file_is_synced_before_it_gets_its_name(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    place = tmp_path / "all.jsonl"
    seen: list[bool] = []
    real = os.fsync

    def noted(handle: int) -> None:
        seen.append(place.exists())
        real(handle)

    monkeypatch.setattr(os, "fsync", noted)
    write_whole(place, "new")
    # First the file while its place is still empty, then the folder.
    assert seen == [False, True]
