"""Memory of a tab that nobody drives.

A driver's developer tools keep the bytes of every response in the tab.
"""

import subprocess
import time
from pathlib import Path

from tests.bench.startup.launch import kilobytes
from tests.bench.startup.slowed import processes_of
from tests.browser.phone import PHONE_SIZE
from tests.chromium import chromium_path, launch_arguments

# A start at full speed on a busy machine, and the check of the files after it.
WATCHED_S = 9.0
LOOK_EVERY_S = 0.01
# How often new processes of the browser are looked for.
LIST_EVERY_S = 0.2


def memory_alone_mb(profile: Path, where: str) -> tuple[float, float]:
    """Resident at the most and at the end: the largest tab of a start on ``profile``."""
    size = ",".join(str(side) for side in PHONE_SIZE)
    browser = subprocess.Popen(
        [
            chromium_path(),
            "--headless",
            f"--window-size={size}",
            *launch_arguments,
            f"--user-data-dir={profile}",
            where,
        ],
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    try:
        return _watched(profile)
    finally:
        browser.terminate()
        browser.wait()


def _watched(profile: Path) -> tuple[float, float]:
    most: dict[int, float] = {}
    last: dict[int, float] = {}
    tabs: list[int] = []
    begun_s = listed_s = time.monotonic() - LIST_EVERY_S
    while time.monotonic() - begun_s < WATCHED_S:
        if time.monotonic() - listed_s >= LIST_EVERY_S:
            tabs, listed_s = _tabs(profile), time.monotonic()
        for pid in tabs:
            resident_mb = _resident_mb(pid)
            if resident_mb > 0:
                most[pid], last[pid] = max(most.get(pid, 0.0), resident_mb), resident_mb
        time.sleep(LOOK_EVERY_S)
    largest = max(most, key=lambda pid: most[pid])
    return most[largest], last[largest]


def _tabs(profile: Path) -> list[int]:
    found = []
    for pid in processes_of(profile):
        try:
            command = Path("/proc", str(pid), "cmdline").read_bytes()
        except OSError:
            continue
        if b"--type=renderer" in command:
            found.append(pid)
    return found


def _resident_mb(pid: int) -> float:
    try:
        return kilobytes(Path("/proc", str(pid), "status").read_text(), "VmRSS:") / 1e3
    except (OSError, StopIteration):
        # It has ended.
        return 0.0
