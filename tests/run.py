"""Sets up what the checks need, runs them one after the other, and sums up."""

import argparse
import os
import subprocess
import sys
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from pathlib import Path

from tests.chromium import ensure_chromium
from tests.engines.browsers import ensure_engines
from web.build.environment import ensure_venv, install, venv_python
from web.build.node import Node, ensure_node, ensure_packages
from web.build.paths import ROOT, WEB
from web.build.site import build
from web.build.steps import Steps
from web.build.trouble import Trouble, trouble_from_os_error

LOCK = ROOT / "tests" / "requirements.lock"
# These need neither a browser nor the built app.
WITHOUT_SITE = {"unit", "properties"}


@dataclass
class Outcome:
    """Names of the steps that passed and failed, with what each failure said."""

    passed: list[str] = field(default_factory=list)
    failed: dict[str, str] = field(default_factory=dict)

    def run(self, name: str, action: Callable[[], str]) -> None:
        """Runs a step; ``action`` returns what is wrong, or nothing. Later steps go on."""
        print(f"\n== {name}", flush=True)
        started_s = time.monotonic()
        try:
            wrong = action()
        except (Trouble, OSError) as error:
            trouble = error if isinstance(error, Trouble) else trouble_from_os_error(error)
            wrong = f"{trouble.sentence} Way on: {trouble.way_on}"
        if wrong:
            self.failed[name] = wrong
        else:
            self.passed.append(name)
        state = f"FAILED: {wrong}" if wrong else "ok"
        print(f"== {name}: {state} ({time.monotonic() - started_s:.1f} s)", flush=True)

    def summary(self) -> str:
        """One line per step that failed, then one line that counts."""
        lines = [f"FAILED  {name}: {wrong}" for name, wrong in self.failed.items()]
        counts = f"Steps: {len(self.passed)} passed, {len(self.failed)} failed"
        return "\n".join(["", *lines, counts])


def main(arguments: Sequence[str]) -> int:
    """Exit status of ``python3 -m tests``: 0 only when every step passed."""
    wanted = _parser().parse_args(arguments)
    places = [_place(part) for part in wanted.parts]
    is_part = bool(places or wanted.keyword or wanted.nightly)
    needs_site = not places or any(part not in WITHOUT_SITE for part in wanted.parts)
    # Line by line, also into a file, so that a run that is cut off shows where.
    sys.stdout.reconfigure(line_buffering=True)  # type: ignore[union-attr]
    outcome = Outcome()
    outcome.run("Python environment", _environment)
    if outcome.failed:
        print(outcome.summary())
        return 1
    if needs_site:
        outcome.run("Chromium", lambda: ensure_chromium(venv_python()))
        outcome.run("Other browser engines", ensure_engines)
        outcome.run("Web build", _site)
    if not is_part:
        _static_checks(outcome)
    outcome.run("pytest", lambda: _pytest(places, wanted.keyword, wanted.nightly))
    print(outcome.summary())
    return 1 if outcome.failed else 0


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(prog="python3 -m tests", description="Runs every check.")
    parser.add_argument(
        "parts", nargs="*", metavar="PART", help="a folder of tests or a path, such as unit"
    )
    parser.add_argument("-k", dest="keyword", help="only tests whose name holds this")
    parser.add_argument(
        "--nightly", action="store_true", help="only the long forms, which every run leaves out"
    )
    return parser


def _place(part: str) -> str:
    for path in (ROOT / "tests" / part, ROOT / part.split("::")[0]):
        if path.exists():
            return str(path) + part[len(part.split("::")[0]) :]
    raise SystemExit(f"There is no {part!r} below tests or the project folder.")


def _environment() -> str:
    steps = Steps()
    ensure_venv(steps)
    install(LOCK, steps, name="Test tools")
    return ""


def _site() -> str:
    build(Steps())
    return ""


def _static_checks(outcome: Outcome) -> None:
    python = str(venv_python())
    for name, command in {
        "ruff check": ["ruff", "check", "."],
        "ruff format": ["ruff", "format", "--check", "."],
        "mypy": ["mypy"],
    }.items():
        outcome.run(name, lambda command=command: _status([python, "-m", *command], ROOT))
    node: list[Node] = []
    outcome.run("npm packages", lambda: _npm(node))
    for name in ("check:types", "check:lint", "check:format"):
        outcome.run(f"web {name}", lambda name=name: _npm_script(node, name))


def _npm(node: list[Node]) -> str:
    steps = Steps()
    node.append(ensure_node(steps))
    ensure_packages(node[0], steps)
    return ""


def _npm_script(node: list[Node], name: str) -> str:
    if not node:
        return "there is no Node.js to run it with"
    command = [*node[0].npm, "run", "--silent", name]
    return _status(command, WEB, node[0].environment)


def _pytest(places: Sequence[str], keyword: str | None, nightly: bool) -> str:
    # A browser often waits: one process a core, and whoever is free takes the next test.
    spread = ["-n", str(os.cpu_count() or 1), "--dist", "worksteal"]
    command = [str(venv_python()), "-m", "pytest", *spread, *places]
    # Their figures are the point of them: what a test that passed has printed is shown, too.
    command += ["-m", "nightly", "-rP"] if nightly else []
    return _status([*command, "-k", keyword] if keyword else command, ROOT)


def _status(command: Sequence[str], folder: Path, environment: dict[str, str] | None = None) -> str:
    done = subprocess.run(
        command,
        cwd=folder,
        env={**os.environ, **(environment or {})},
        stdin=subprocess.DEVNULL,
        check=False,
    )
    return f"exit status {done.returncode}" if done.returncode else ""
