"""The project's own Python in ``.venv``, filled from lock files with hashes."""

import os
import sys
from importlib.util import find_spec
from pathlib import Path

from web.build.paths import LOCKS, ROOT, VENV
from web.build.run import run_tool
from web.build.steps import Steps
from web.build.trouble import Trouble

TOOLS_LOCK = LOCKS / "tools.lock"


def venv_python() -> Path:
    """The interpreter inside ``.venv``."""
    return VENV / "Scripts" / "python.exe" if os.name == "nt" else VENV / "bin" / "python"


def ensure_venv(steps: Steps | None = None) -> Path:
    """Makes ``.venv`` with the build's tools unless it is there; returns its interpreter.

    Raises Trouble when this Python cannot make virtual environments or a package is refused.
    """
    steps = steps or Steps()
    # A virtual environment holds absolute paths: one that was moved is made anew.
    steps.run(
        "Python environment",
        [str(ROOT), "{}.{}".format(*sys.version_info)],
        [venv_python(), VENV / "pyvenv.cfg"],
        _make_venv,
    )
    install(TOOLS_LOCK, steps, name="Build tools")
    return venv_python()


def install(lock: Path, steps: Steps | None = None, name: str | None = None) -> None:
    """Installs what ``lock`` pins into ``.venv``: wheels only, each with its hash.

    Runs again only when the lock file or the environment changed. Raises Trouble.
    """
    name = name or f"Packages of {lock.stem}"
    made = (VENV / "pyvenv.cfg").stat().st_mtime_ns
    (steps or Steps()).run(
        name,
        [lock, str(made)],
        [venv_python()],
        lambda: _install(lock, name),
    )


def _make_venv() -> None:
    if find_spec("ensurepip") is None or find_spec("venv") is None:
        raise Trouble(
            "This Python came without the part that makes virtual environments.",
            "On Debian and Ubuntu: apt install python3-venv. Then start again.",
        )
    # Clearing through a link would empty another folder's environment.
    if VENV.is_symlink():
        VENV.unlink()
    run_tool("Making the Python environment", [sys.executable, "-m", "venv", "--clear", VENV])


def _install(lock: Path, name: str) -> None:
    run_tool(
        f"Installing {name[0].lower()}{name[1:]}",
        [
            venv_python(), "-m", "pip", "install", "--quiet", "--require-hashes",
            "--only-binary", ":all:", "--no-deps", "-r", lock,
        ],
    )  # fmt: skip
