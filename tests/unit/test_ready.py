"""Commands of the tests run in the project's environment, whichever Python was asked."""

import runpy
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from tests import ready
from web.build.environment import venv_python


@pytest.mark.parametrize("name", ["fuzz", "mutants"])
def test_another_python_with_pytest_hands_on(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    # A Python of one's own often has pytest or hypothesis, and lacks the rest.
    asked: list[list[str]] = []

    def run(command: list[str], **_: Any) -> subprocess.CompletedProcess[bytes]:
        asked.append(command)
        return subprocess.CompletedProcess(command, 3)

    monkeypatch.setattr(ready, "ensure_venv", lambda _: Path(venv_python()))
    monkeypatch.setattr(ready, "install", lambda *_, **__: None)
    monkeypatch.setattr(subprocess, "run", run)
    monkeypatch.setattr(sys, "argv", ["command", "--one", "two"])
    with pytest.raises(SystemExit) as ended:
        runpy.run_module(f"tests.{name}.__main__", run_name="__main__")
    assert ended.value.code == 3
    (command,) = asked
    assert command[0] == str(venv_python())
    assert command[-2:] == ["--one", "two"]
