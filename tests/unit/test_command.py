"""``python3 -m pycore``: one request a line in, one reply a line out."""

import json
import os
import pty
import re
import signal
import subprocess
import sys

import pytest

from web.build.paths import ROOT

ASK = '{"v": 1, "id": "ü", "op": "describe", "body": {}}'


def run(*arguments: str, given: bytes = b"") -> subprocess.CompletedProcess[bytes]:
    command = [sys.executable, "-m", "pycore", *arguments]
    return subprocess.run(
        command, cwd=ROOT, input=given, capture_output=True, check=False, timeout=60
    )


def test_a_line_for_a_line_and_status_0_also_for_refusals() -> None:
    done = run(given=f"{ASK}\n\nnonsense\n{ASK}".encode())
    replies = [json.loads(line) for line in done.stdout.decode().splitlines()]
    assert [reply["ok"] for reply in replies] == [True, False, True]
    assert replies[0]["id"] == "ü"
    assert (done.returncode, done.stderr) == (0, b"")


def test_nothing_in_is_nothing_out() -> None:
    done = run()
    assert (done.returncode, done.stdout) == (0, b"")


@pytest.mark.parametrize("given", [b"\xff\xfe{\x00}\x00\n", b"\x89PNG\r\n\x1a\n"])
def test_bytes_that_are_no_text(given: bytes) -> None:
    done = run(given=given)
    assert done.returncode == 0
    assert all(json.loads(line)["ok"] is False for line in done.stdout.splitlines())
    assert done.stdout


def test_half_of_a_surrogate_pair_is_refused_and_the_next_line_answered() -> None:
    done = run(given=f'"\\ud800"\n{ASK}'.encode())
    assert [json.loads(line)["ok"] for line in done.stdout.splitlines()] == [False, True]
    assert (done.returncode, done.stderr) == (0, b"")


@pytest.mark.parametrize("arguments", [["--nonsense"], ["describe", "x"]])
def test_misuse_is_status_2(arguments: list[str]) -> None:
    done = run(*arguments)
    assert done.returncode == 2
    assert done.stderr


def test_help() -> None:
    done = run("--help")
    assert (done.returncode, b"usage" in done.stdout) == (0, True)


@pytest.mark.parametrize("command", ["", "merge", "table", "report", "tombstone", "sheet"])
def test_help_names_the_command_as_the_readme_does(command: str) -> None:
    done = run(*command.split(), "--help")
    told = done.stdout.decode()
    assert done.returncode == 0
    assert told.startswith(f"usage: python3 -m pycore {command}".rstrip())
    assert re.findall(r"python -m \w+", told) == []


def test_the_readme_says_whose_program_sqlite3_is() -> None:
    readme = " ".join((ROOT / "README.md").read_text(encoding="utf-8").split())
    assert "`sqlite3` is a program of its own" in readme


def _heeds_ctrl_c() -> None:
    # A shell's background job ignores it, and so would what that starts.
    signal.signal(signal.SIGINT, signal.default_int_handler)


def test_at_a_terminal_it_says_what_it_waits_for_and_ctrl_c_is_no_trace() -> None:
    mine, its = pty.openpty()
    command = [sys.executable, "-m", "pycore"]
    asked = subprocess.Popen(
        command, cwd=ROOT, stdin=its, stderr=subprocess.PIPE, preexec_fn=_heeds_ctrl_c
    )
    try:
        assert asked.stderr is not None
        assert b"one JSON object a line" in asked.stderr.readline()
        asked.send_signal(signal.SIGINT)
        assert asked.communicate(timeout=60)[1].split() == [b"Stopped."]
        assert asked.returncode == 130
    finally:
        asked.kill()
        asked.wait()
        os.close(mine)
        os.close(its)
