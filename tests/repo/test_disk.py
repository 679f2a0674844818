"""A whole run once left 22 GB of browser profiles and filled its disk: a test leaves nothing."""

import os
import subprocess
import sys
from pathlib import Path

from web.build.paths import ROOT

WRITES = """
def test_that_writes(tmp_path):
    (tmp_path / "profile").write_bytes(bytes(100_000))
"""


def test_what_a_test_wrote_is_gone_after_the_run(tmp_path: Path) -> None:
    test, folders = tmp_path / "test_one.py", tmp_path / "folders"
    test.write_text(WRITES)
    folders.mkdir()
    command = [sys.executable, "-m", "pytest", "-c", str(ROOT / "pyproject.toml")]
    run = subprocess.run(
        [*command, f"--rootdir={tmp_path}", "-p", "no:cacheprovider", str(test)],
        env={**os.environ, "PYTEST_DEBUG_TEMPROOT": str(folders)},
        capture_output=True,
        text=True,
        check=False,
    )
    assert "1 passed" in run.stdout, run.stdout + run.stderr
    assert [path for path in folders.rglob("*") if path.is_file() and path.stat().st_size] == []
