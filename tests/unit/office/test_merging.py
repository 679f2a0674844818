"""pycore.office.merging: python3 -m pycore merge."""

import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from pycore.office.merging import merge_command
from pycore.office.opened import DONE, FORKED, MISUSED, REFUSED
from tests.phones import NOW, Phone, check, id_of, newer_phone
from tests.properties.journal.shop import merge_text
from web.build.paths import ROOT


@pytest.fixture
def place(tmp_path: Path) -> Path:
    (tmp_path / "in").mkdir()
    return tmp_path


def phone(title: str, count: int = 3) -> Phone:
    made = Phone(title)
    for number in range(count):
        made.save("check", check(), 60 * number)
    return made


# What a former run has written of the first lines of "a": that is replaced by more of them.
OLD = merge_text(phone("a", 1).export())
NAMES = ("one", "two")


def put(place: Path, name: str, text: str) -> Path:
    path = place / "in" / name
    path.write_text(text, encoding="utf-8")
    return path


def run(place: Path, *inputs: Path, more: tuple[str, ...] = ()) -> int:
    out = str(place / "all.jsonl")
    return merge_command([*map(str, inputs or [place / "in"]), "-o", out, *more])


def test_a_folder_and_files_give_the_union(place: Path, capsys: pytest.CaptureFixture[str]) -> None:
    one, two = phone("a"), phone("b")
    put(place, "one.jsonl", one.export())
    other = put(place, "two.jsonl", two.export())
    assert run(place, place / "in", other, more=("--now", NOW)) == DONE
    wanted = merge_text(one.export(), two.export())
    assert (place / "all.jsonl").read_text(encoding="utf-8") == wanted
    told = capsys.readouterr()
    assert "forks: none" in told.out
    assert "lines: 6, logs: 2" in told.out
    # Each file is read once, and its progress goes where a pipe does not take it.
    assert told.err.count("two.jsonl") == 1
    assert "[2/2]" in told.err


def test_forks_are_status_3_and_both_lines_are_written(
    place: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    one = phone("a")
    two = one.clone()
    one.save("check", check("1"), 900, id=id_of("x"))
    two.save("check", check("2"), 900, id=id_of("y"))
    put(place, "one", one.export())
    put(place, "two", two.export())
    assert run(place) == FORKED
    assert f"log {one.log} number 4" in capsys.readouterr().out
    lines = (place / "all.jsonl").read_text(encoding="utf-8").split("\n")
    assert {*one.lines, *two.lines} <= set(lines)


def test_what_is_odd_is_told(place: Path, capsys: pytest.CaptureFixture[str]) -> None:
    late = Phone("late", fast_s=7200)
    late.save("check", check(), 8 * 3600)
    strange = newer_phone()
    put(place, "late", late.export())
    lines = strange.export().split("\n")
    put(place, "strange", "\n".join([lines[0], lines[1], lines[3], "broken"]))
    assert run(place, more=("--now", NOW)) == DONE
    told = capsys.readouterr().out
    for part in (
        "7200 s ahead of --now",
        "gaps: 1",
        "numbers 2 to 2",
        "schema 2, kind odour_panel: 1",
        "in quarantine: 1",
        "seal_missing at line: 'broken'",
        "clock flags: 1",
        "number 1: future",
        "(cut)",
        "1 missing",
    ):
        assert part in told, part


def test_long_lists_are_cut_and_counted(place: Path, capsys: pytest.CaptureFixture[str]) -> None:
    one = phone("a", 60)
    text = "\n".join([one.export().split("\n")[0], *one.lines[1::2]])
    put(place, "one", text)
    assert run(place) == DONE
    assert "gaps: 30" in (told := capsys.readouterr().out)
    assert "and 10 more" in told


def test_a_file_that_is_no_log_is_status_1_and_the_others_are_written(
    place: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    one = phone("a")
    put(place, "notes.txt", "shopping list")
    put(place, "one", one.export())
    assert run(place) == REFUSED
    assert "notes.txt: refused, file_foreign" in capsys.readouterr().out
    assert (place / "all.jsonl").read_text(encoding="utf-8") == merge_text(one.export())


def test_bytes_that_are_no_utf_8_cost_only_their_line(place: Path) -> None:
    one = phone("a")
    given = one.export().encode().replace(b'"text":"342"', b'"text":"\xff42"', 1)
    (place / "in" / "one").write_bytes(given)
    assert run(place) == DONE
    written = (place / "all.jsonl").read_bytes()
    assert b'"text":"\xff42"' in written
    assert all(line.encode() in written for line in one.lines[1:])


def test_nothing_to_write_writes_nothing(place: Path) -> None:
    put(place, "notes.txt", "shopping list")
    assert run(place) == REFUSED
    assert not (place / "all.jsonl").exists()


@pytest.mark.parametrize("link", [False, True])
def test_an_input_is_never_overwritten(
    link: bool, place: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    one = put(place, "one", phone("a").export())
    before = one.read_bytes()
    target = place / "all.jsonl"
    if link:
        target.symlink_to(one)
    else:
        target = one
    assert merge_command([str(place / "in"), "-o", str(target)]) == MISUSED
    assert one.read_bytes() == before
    assert "one of the inputs" in capsys.readouterr().err


@pytest.mark.parametrize(
    "arguments", [[], ["x"], ["nothing there", "-o", "y"], [".", "-o", "y", "--now", "noon"]]
)
def test_misuse(arguments: list[str], tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    assert merge_command(arguments) == MISUSED
    assert list(tmp_path.iterdir()) == []


def test_a_place_that_cannot_be_written(place: Path, capsys: pytest.CaptureFixture[str]) -> None:
    put(place, "one", phone("a").export())
    assert merge_command([str(place / "in"), "-o", str(place / "no" / "all.jsonl")]) == REFUSED
    assert "was not written" in capsys.readouterr().err


def test_help_names_every_exit_status(capsys: pytest.CaptureFixture[str]) -> None:
    assert merge_command(["--help"]) == DONE
    told = capsys.readouterr().out
    assert all(f"{status} " in told for status in (DONE, REFUSED, MISUSED, FORKED))
    assert "Example:" in told


def test_a_file_that_cannot_be_read_is_told_and_the_others_are_written(
    place: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    put(place, "bad", "x")
    put(place, "good", phone("a").export())
    real = Path.read_bytes

    def broken(path: Path) -> bytes:
        if path.name == "bad":
            raise OSError(5, "Input/output error")
        return real(path)

    monkeypatch.setattr(Path, "read_bytes", broken)
    assert run(place) == REFUSED
    assert "bad: could not be read: Input/output error" in capsys.readouterr().out
    assert (place / "all.jsonl").exists()


def start(place: Path, given: Path | None = None) -> subprocess.Popen[bytes]:
    command = [sys.executable, "-m", "pycore", "merge", str(given or place / "in")]
    return subprocess.Popen(
        [*command, "-o", str(place / "all.jsonl")], cwd=ROOT, stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
    )  # fmt: skip


def test_on_the_command_line(place: Path) -> None:
    put(place, "one", phone("a").export())
    done = start(place)
    out, err = done.communicate(timeout=60)
    assert (done.returncode, b"written" in out, b"[1/1]" in err) == (0, True, True)


def test_two_runs_at_once_never_write_over_each_other(place: Path) -> None:
    for name in ("one", "two"):
        (place / name).mkdir()
        (place / name / "log").write_text(phone(name, 400).export(), encoding="utf-8")
        (place / name / "old").write_text(phone("a").export(), encoding="utf-8")
    whole = {
        name: merge_text(*(path.read_text(encoding="utf-8") for path in (place / name).iterdir()))
        for name in NAMES
    }
    ended = []
    for _ in range(PAIRS):
        (place / "all.jsonl").write_text(OLD, encoding="utf-8")
        pair = {name: start(place, place / name) for name in NAMES}
        out = {name: run.communicate(timeout=120)[1] for name, run in pair.items()}
        written = [name for name, run in pair.items() if run.returncode == DONE]
        found = (place / "all.jsonl").read_text(encoding="utf-8")
        assert found in [whole[name] for name in written]
        # One that began after the other had written finds lines that it does not hold.
        why = {REFUSED: b"another run has written it meanwhile", MISUSED: b"would lose lines"}
        late = [name for name, run in pair.items() if run.returncode in why]
        assert all(why[pair[name].returncode] in out[name] for name in late)
        assert len(written) + len(late) == len(NAMES)
        ended.append(len(late))
    print(f"F52: {PAIRS} pairs at once, {sum(ended)} runs refused, 0 files mixed")
    # Nothing of a run that was refused lies about.
    assert sorted(path.name for path in place.iterdir()) == ["all.jsonl", "in", "one", "two"]


def test_a_file_that_another_run_has_written_stays(
    place: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    put(place, "log", phone("a").export())
    real = Path.read_bytes

    def meanwhile(path: Path) -> bytes:
        if path.name == "log":
            (place / "all.jsonl").write_text("of the other run", encoding="utf-8")
        return real(path)

    monkeypatch.setattr(Path, "read_bytes", meanwhile)
    for before in (None, OLD):
        (place / "all.jsonl").unlink(missing_ok=True)
        if before is not None:
            (place / "all.jsonl").write_text(before, encoding="utf-8")
        assert run(place) == REFUSED
        assert "another run has written it meanwhile" in capsys.readouterr().err
        assert (place / "all.jsonl").read_text(encoding="utf-8") == "of the other run"


PAIRS = 5


@pytest.mark.parametrize(
    "kills", [pytest.param(6, id="6"), pytest.param(50, id="50", marks=pytest.mark.nightly)]
)
def test_killed_at_any_moment_the_output_is_the_old_or_the_new_file(
    place: Path, kills: int
) -> None:
    found = []
    put(place, "one", phone("a", 1500).export())
    done = start(place)
    began_s = time.monotonic()
    done.communicate(timeout=120)
    took_s = time.monotonic() - began_s
    whole = (place / "all.jsonl").read_text(encoding="utf-8")
    for kill in range(kills):
        (place / "all.jsonl").write_text(OLD, encoding="utf-8")
        running = start(place)
        time.sleep(took_s * (kill + 1) / kills)
        running.send_signal(signal.SIGKILL)
        running.communicate(timeout=60)
        found.append((place / "all.jsonl").read_text(encoding="utf-8"))
        assert found[-1] in (OLD, whole)
    print(f"F51: {kills} kills, {found.count(OLD)} old files, {found.count(whole)} new ones")
