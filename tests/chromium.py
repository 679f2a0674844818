"""Finds a Chromium, or gets one; used by every test that opens a page."""

import os
import shutil
import subprocess
import sys
from pathlib import Path

from tests.packages import install_with_apt, try_command

NAMES = (
    "chromium",
    "chromium-browser",
    "google-chrome",
    "google-chrome-stable",
    "chrome",
    "microsoft-edge",
)
PLACES = (
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
)
# Asks Playwright where its own browser lies; it lies there only once it was installed.
ASK_PLAYWRIGHT = (
    "from playwright.sync_api import sync_playwright\n"
    "with sync_playwright() as p: print(p.chromium.executable_path)"
)

# Nothing leaves this computer: without these Chromium looks up its maker's hosts at every start.
launch_arguments: list[str] = [
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-gpu",
    "--disable-quic",
    "--disable-sync",
    "--no-first-run",
]
# Chromium's own sandbox refuses to run as root, which is what containers usually are.
if hasattr(os, "geteuid") and os.geteuid() == 0:
    launch_arguments.append("--no-sandbox")


def chromium_path() -> str:
    """The Chromium that tests use. Raises FileNotFoundError when there is none."""
    found = _on_machine() or _of_playwright(Path(sys.executable))
    if found is None:
        raise FileNotFoundError("there is no Chromium here; python3 -m tests gets one")
    return found


def ensure_chromium(python: Path) -> str:
    """Gets a Chromium unless there is one; ``python`` has Playwright. Returns what went wrong."""
    for get in (_nothing, lambda: _install_with_playwright(python), _install_with_apt):
        get()
        found = _on_machine() or _of_playwright(python)
        if found:
            print(f"  {found}")
            return ""
    return "no Chromium was found and none could be installed; install the package chromium"


def _on_machine() -> str | None:
    found = next(filter(None, map(shutil.which, NAMES)), None)
    return found or next((place for place in PLACES if Path(place).exists()), None)


def _of_playwright(python: Path) -> str | None:
    done = subprocess.run(
        [str(python), "-c", ASK_PLAYWRIGHT], capture_output=True, text=True, check=False
    )
    path = done.stdout.strip()
    return path if done.returncode == 0 and path and Path(path).exists() else None


def _nothing() -> None:
    """The first try is what is there already."""


def _install_with_playwright(python: Path) -> None:
    try_command([str(python), "-m", "playwright", "install", "chromium"])


def _install_with_apt() -> None:
    # A font comes along: without one every page is empty boxes.
    install_with_apt("chromium", "fonts-dejavu-core")
