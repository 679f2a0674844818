"""``python3 -m tests.bench``: prints the bytes of ``web/dist``, how long plans take, and starts.

``python3 -m tests.bench plans`` prints only the plans, ``python3 -m tests.bench journal`` how long
a log takes to read, fold and merge, and how that grows, ``python3 -m tests.bench logs`` how long
the app takes to list and open the entries of a log, ``python3 -m tests.bench questions`` how long
Python on the phone works at a question that holds one.
"""

import argparse
import subprocess
import sys

from tests.chromium import ensure_chromium
from web.build.environment import ensure_venv, install, venv_python
from web.build.node import ensure_node
from web.build.paths import ROOT
from web.build.site import build
from web.build.steps import Steps
from web.build.trouble import Trouble

DEFAULT_STARTS = 7


def _module(name: str, *arguments: str) -> int:
    """Runs a figure of this folder in ``.venv``."""
    command = [str(venv_python()), "-m", f"tests.bench.{name}", *arguments]
    return subprocess.run(command, cwd=ROOT, check=True).returncode


def main() -> int:
    """Sets up, then measures in ``.venv``, where the browser's driver is."""
    parser = argparse.ArgumentParser(prog="python3 -m tests.bench")
    parser.add_argument(
        "only", nargs="?", choices=["plans", "journal", "logs", "questions"], help="only that"
    )
    parser.add_argument("--starts", type=int, default=DEFAULT_STARTS, help="default %(default)s")
    parser.add_argument("--no-starts", action="store_true", help="no start times")
    wanted = parser.parse_args()
    steps = Steps()
    try:
        python = ensure_venv(steps)
        install(ROOT / "tests" / "requirements.lock", steps, name="Test tools")
        if wanted.only == "journal":
            return _module("journal")
        build(steps)
        node = ensure_node(steps)
    except Trouble as trouble:
        sys.stderr.write(f"{trouble.sentence}\nWay on: {trouble.way_on}\n")
        return 1
    if wanted.only in ("plans", "questions"):
        return _module(wanted.only)
    if wanted.only == "logs":
        wrong = ensure_chromium(python)
        sys.stderr.write(wrong)
        return 1 if wrong else _module("logs")
    _module("sizes", *node.node)
    _module("plans")
    if wanted.no_starts:
        return 0
    wrong = ensure_chromium(python)
    if wrong:
        sys.stderr.write(f"{wrong}\n")
        return 1
    subprocess.run(
        [str(python), "-m", "tests.bench.starts", str(wanted.starts)], cwd=ROOT, check=True
    )
    return 0


if __name__ == "__main__":
    sys.exit(main())
