"""What somebody reads who builds the app for the first time and is stopped."""

import ast
import errno
import io
import subprocess
import sys
import threading
from pathlib import Path

import pytest

from tests.run import Outcome
from web.build import steps
from web.build.paths import ROOT
from web.build.steps import Steps
from web.build.trouble import Trouble, trouble_from_os_error, trouble_from_output

AS_OLD = """
import runpy, sys
sys.version_info = (3, 9, 2, "final", 0)
runpy.run_module(sys.argv[1], run_name="__main__")
"""
# What tools have printed here, cut to the line that tells: pip, npm, and the system beneath them.
SAID = {
    "WARNING: Retrying after connection broken by 'NewConnectionError'": "needs the internet",
    "npm error code EAI_AGAIN": "needs the internet",
    "npm error network request to the registry failed": "needs the internet",
    "ERROR: THESE PACKAGES DO NOT MATCH THE HASHES FROM THE REQUIREMENTS FILE": "lock file names",
    "npm error code EINTEGRITY": "lock file names",
    "npm error `npm ci` can only install packages when your package.json": "do not agree",
    "OSError: [Errno 28] No space left on device": "disk is full",
    "npm error code EROFS": "may not be written to",
    "ERROR: No matching distribution found for x": "does not offer",
    "Segmentation fault": "Installing x failed",
}


@pytest.mark.parametrize(("output", "wanted"), SAID.items())
def test_a_tools_failure_is_one_sentence_and_a_way_on(output: str, wanted: str) -> None:
    trouble = trouble_from_output("Installing x", f"before\n{output}\nafter", Path("log.txt"))
    assert wanted in trouble.sentence
    assert len(trouble.way_on) > 10


@pytest.mark.parametrize("number", [errno.ENOSPC, errno.EACCES, errno.EROFS, errno.EIO])
def test_a_refused_file_is_named_with_a_way_on(number: int) -> None:
    trouble = trouble_from_os_error(OSError(number, "as the system says", "a/file"))
    assert "(a/file)" in trouble.sentence
    assert "start" in trouble.way_on


def test_the_tests_own_steps_say_the_way_on_too(capsys: pytest.CaptureFixture[str]) -> None:
    def refuse() -> str:
        raise OSError(errno.EROFS, "Read-only file system", "web/.build")

    outcome = Outcome()
    outcome.run("Python environment", refuse)
    assert "Copy the project into a folder of your own" in outcome.summary()
    assert "Errno" not in capsys.readouterr().out


@pytest.mark.parametrize("module", ["web", "tests"])
def test_an_old_python_says_which_one_is_needed(module: str) -> None:
    done = subprocess.run(
        [sys.executable, "-c", AS_OLD, module],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 1
    assert "too old: this needs Python 3.11 or newer" in done.stderr
    assert "python3.11 -m " + module in done.stderr
    # It has to be able to read so far: the oldest form that the parser knows, no f-string.
    text = (ROOT / module / "__main__.py").read_text(encoding="utf-8")
    tree = ast.parse(text, feature_version=(3, 7))
    assert not [node for node in ast.walk(tree) if isinstance(node, ast.JoinedStr)]


def test_a_start_by_its_path_says_where_to_go(tmp_path: Path) -> None:
    done = subprocess.run(
        [sys.executable, ROOT / "web"], cwd=tmp_path, capture_output=True, text=True, check=False
    )
    assert done.returncode == 1
    assert "Traceback" not in done.stderr
    assert "python3 -m web" in done.stderr


def test_a_second_build_in_the_folder_says_that_it_waits(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(steps, "STATE", tmp_path)
    monkeypatch.setattr(steps, "STAMPS", tmp_path / "stamps")
    is_inside, may_end = threading.Event(), threading.Event()
    made: list[str] = []

    def first() -> None:
        is_inside.set()
        may_end.wait(30)
        made.append("first")

    told = io.StringIO()
    one = threading.Thread(target=Steps(io.StringIO()).run, args=["One", [], [], first])
    two = threading.Thread(
        target=Steps(told).run, args=["Two", [], [], lambda: made.append("second")]
    )
    one.start()
    assert is_inside.wait(30)
    two.start()
    while "waiting for it" not in told.getvalue():
        assert two.is_alive()
    may_end.set()
    one.join(30)
    two.join(30)
    assert made == ["first", "second"]
    assert told.getvalue().count("waiting for it") == 1


def test_a_step_that_fails_is_not_taken_for_done(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(steps, "STATE", tmp_path)
    monkeypatch.setattr(steps, "STAMPS", tmp_path / "stamps")

    def fail() -> None:
        raise Trouble("no", "on")

    told = io.StringIO()
    with pytest.raises(Trouble):
        Steps(told).run("One", ["in"], [], fail)
    assert "failed after" in told.getvalue()
    assert Steps(told).run("One", ["in"], [], lambda: None) is True
    assert Steps(told).run("One", ["in"], [], lambda: None) is False
