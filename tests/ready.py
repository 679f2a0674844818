"""Sets up what a figure from the browser needs, then runs it in the project's environment."""

import subprocess
import sys
from collections.abc import Sequence

from tests.chromium import ensure_chromium
from web.build.environment import ensure_venv, install, venv_python
from web.build.paths import ROOT
from web.build.site import build
from web.build.steps import Steps
from web.build.trouble import Trouble


def run_ready(module: str, arguments: Sequence[str]) -> int:
    """Exit status of ``python -m module`` with the built app and a Chromium at hand."""
    steps = Steps()
    try:
        python = ensure_venv(steps)
        install(ROOT / "tests" / "requirements.lock", steps, name="Test tools")
        build(steps)
    except Trouble as trouble:
        sys.stderr.write(f"{trouble.sentence}\nWay on: {trouble.way_on}\n")
        return 1
    wrong = ensure_chromium(venv_python())
    if wrong:
        sys.stderr.write(f"{wrong}\n")
        return 1
    return subprocess.run([str(python), "-m", module, *arguments], cwd=ROOT, check=False).returncode
