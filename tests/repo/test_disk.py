"""A whole run once left 22 GB of browser profiles and filled its disk: a test leaves nothing.

Nor does a run take away what another one beside it still needs.
"""

import os
import subprocess
import sys
from pathlib import Path

from web.build.paths import ROOT

WRITES = """
def test_that_writes(tmp_path):
    (tmp_path / "profile").write_bytes(bytes(100_000))
"""


BESIDE = """
import subprocess

def test_beside(tmp_path):
    kept = tmp_path / "kept"
    kept.write_text("of this run")
    subprocess.run({command!r}, check=True)
    assert kept.exists()
"""


def _command(test: Path) -> list[str]:
    shared = [sys.executable, "-m", "pytest", "-c", str(ROOT / "pyproject.toml")]
    return [*shared, f"--rootdir={test.parent}", "-p", "no:cacheprovider", str(test)]


def assert_run_passes(test: Path, folders: Path) -> None:
    folders.mkdir()
    run = subprocess.run(
        _command(test),
        env={**os.environ, "PYTEST_DEBUG_TEMPROOT": str(folders)},
        capture_output=True,
        text=True,
        check=False,
    )
    assert run.returncode == 0, run.stdout + run.stderr


def test_what_a_test_wrote_is_gone_after_the_run(tmp_path: Path) -> None:
    test, folders = tmp_path / "test_one.py", tmp_path / "folders"
    test.write_text(WRITES)
    assert_run_passes(test, folders)
    assert [path for path in folders.rglob("*") if path.is_file() and path.stat().st_size] == []


def test_a_run_that_begins_meanwhile_takes_nothing_away(tmp_path: Path) -> None:
    inner, outer = tmp_path / "test_one.py", tmp_path / "test_beside.py"
    inner.write_text(WRITES)
    outer.write_text(BESIDE.format(command=_command(inner)))
    assert_run_passes(outer, tmp_path / "folders")
