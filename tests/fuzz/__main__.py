"""``python3 -m tests.fuzz --minutes 10``: odd requests and files, until the time is over.

Each defect is printed, and kept in ``tests/fuzz/corpus``, which every run of the tests replays.
"""

import subprocess
import sys
from importlib.util import find_spec

from web.build.environment import ensure_venv, install, venv_python
from web.build.paths import ROOT
from web.build.steps import Steps
from web.build.trouble import Trouble


def main() -> int:
    """Exit status 1 when anything was wrong."""
    if find_spec("hypothesis") is None:
        try:
            ensure_venv()
            install(ROOT / "tests" / "requirements.lock", Steps(), name="Test tools")
        except Trouble as trouble:
            sys.stderr.write(f"{trouble.sentence}\nWay on: {trouble.way_on}\n")
            return 1
        command = [str(venv_python()), "-m", "tests.fuzz", *sys.argv[1:]]
        return subprocess.run(command, cwd=ROOT, check=False).returncode
    from tests.fuzz.loop import main as run

    return run()


if __name__ == "__main__":
    sys.exit(main())
