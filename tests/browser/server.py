"""The local server as a process of its own: only a killed process is really gone."""

import subprocess
import sys
from pathlib import Path

from web.build.paths import DIST, ROOT


class Server:
    """Serves a built folder on one port of this computer, and can be killed and started again."""

    def __init__(self, folder: Path = DIST, port: int = 0) -> None:
        self._folder = folder
        self._process = self._start(port)

    def _start(self, port: int) -> subprocess.Popen[str]:
        process = subprocess.Popen(
            [
                sys.executable, "-m", "web.build.server",
                "--port", str(port), "--folder", str(self._folder),
            ],
            cwd=ROOT,
            stdin=subprocess.DEVNULL,
            stdout=subprocess.PIPE,
            text=True,
        )  # fmt: skip
        assert process.stdout is not None
        self.address = process.stdout.readline().strip()
        if not self.address:
            raise RuntimeError("the server ended before it said its address")
        return process

    def kill(self) -> None:
        """Ends the process at once, open connections included."""
        self._process.kill()
        self._process.wait(timeout=10)
