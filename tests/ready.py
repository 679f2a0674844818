"""Sets up what a command of the tests needs, then runs it in the project's environment."""

import subprocess
import sys
from collections.abc import Callable, Sequence

from tests.chromium import ensure_chromium
from web.build.environment import ensure_venv, install, venv_python
from web.build.paths import ROOT
from web.build.site import build
from web.build.steps import Steps
from web.build.trouble import Trouble


def _with_browser(steps: Steps) -> None:
    build(steps)
    if wrong := ensure_chromium(venv_python()):
        raise Trouble(wrong, "Then run this command again.")


def run_with_tools(
    module: str, arguments: Sequence[str], more: Callable[[Steps], None] | None = None
) -> int:
    """Exit status of ``python -m module`` with the test tools at hand, whatever Python asks."""
    steps = Steps()
    try:
        python = ensure_venv(steps)
        install(ROOT / "tests" / "requirements.lock", steps, name="Test tools")
        if more is not None:
            more(steps)
    except Trouble as trouble:
        sys.stderr.write(f"{trouble.sentence}\nWay on: {trouble.way_on}\n")
        return 1
    return subprocess.run([str(python), "-m", module, *arguments], cwd=ROOT, check=False).returncode


def run_ready(module: str, arguments: Sequence[str]) -> int:
    """The same with the built app and a Chromium at hand."""
    return run_with_tools(module, arguments, _with_browser)
