"""``python3 -m tests.bench``: prints the bytes of ``web/dist`` and how long plans take.

With a name only that: ``startup`` starts the app beside Pyodide as it comes, ``keys`` times a key
to the drawn recipe, ``plans`` plans, ``journal`` how long a log takes to read, fold, trend and
merge, and how that grows, ``logs`` how long the app takes to list and open the entries of a log,
``questions`` how long Python on the phone works at a question that holds one. What stands behind
the name is handed on.
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

IN_PYTHON = ("plans", "questions", "sizes")
IN_A_BROWSER = {"logs": "logs", "keys": "startup.keys", "startup": "startup"}


def _module(name: str, *arguments: str) -> int:
    """Runs a figure of this folder in ``.venv``."""
    command = [str(venv_python()), "-m", f"tests.bench.{name}", *arguments]
    return subprocess.run(command, cwd=ROOT, check=True).returncode


def main() -> int:
    """Sets up, then measures in ``.venv``, where the browser's driver is."""
    parser = argparse.ArgumentParser(prog="python3 -m tests.bench")
    names = ["journal", *IN_PYTHON, *IN_A_BROWSER]
    parser.add_argument("only", nargs="?", choices=names, help="only that")
    wanted, more = parser.parse_known_args()
    steps = Steps()
    try:
        python = ensure_venv(steps)
        install(ROOT / "tests" / "requirements.lock", steps, name="Test tools")
        if wanted.only == "journal":
            return _module("journal", *more)
        build(steps)
        node = ensure_node(steps)
    except Trouble as trouble:
        sys.stderr.write(f"{trouble.sentence}\nWay on: {trouble.way_on}\n")
        return 1
    if wanted.only in IN_A_BROWSER:
        wrong = ensure_chromium(python)
        sys.stderr.write(wrong)
        counted = ["--node", *node.node] if wanted.only == "startup" else []
        return 1 if wrong else _module(IN_A_BROWSER[wanted.only], *more, *counted)
    for name in [wanted.only] if wanted.only else ["sizes", "plans"]:
        _module(name, *(node.node if name == "sizes" else more))
    return 0


if __name__ == "__main__":
    sys.exit(main())
