"""A browser slowed down as a whole: its processes are stopped for most of every ten milliseconds.

The developer tools' own throttle does not reach workers. This one slows every thread alike and
leaves both cores, as a slow phone does; it slows no disk. Linux only.
"""

import multiprocessing
import os
import signal
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

CYCLE_S = 0.010
# How often new processes of the browser are looked for.
LOOK_EVERY_S = 0.25


def processes_of(profile: Path) -> list[int]:
    """Ids of a running browser's processes: that which has the profile, and all below it."""
    parents, mine = {}, set()
    for entry in Path("/proc").iterdir():
        if not entry.name.isdigit():
            continue
        try:
            stat = (entry / "stat").read_text()
            command = (entry / "cmdline").read_bytes().split(b"\0")
        except OSError:
            continue
        parents[int(entry.name)] = int(stat.rpartition(")")[2].split()[1])
        if f"--user-data-dir={profile}".encode() in command:
            mine.add(int(entry.name))
    while more := {pid for pid, parent in parents.items() if parent in mine} - mine:
        mine |= more
    return sorted(mine)


def _send(pids: list[int], which: signal.Signals) -> None:
    for pid in pids:
        try:
            os.kill(pid, which)
        except ProcessLookupError:
            continue


def _stop_and_go(profile: Path, rate: float, parent: int) -> None:
    going_s = CYCLE_S / rate
    pids: list[int] = []
    looked_s = 0.0
    ended: list[bool] = []
    signal.signal(signal.SIGTERM, lambda *_: ended.append(True))
    while not ended and os.getppid() == parent:
        now_s = time.monotonic()
        if now_s - looked_s > LOOK_EVERY_S:
            pids, looked_s = processes_of(profile), now_s
        _send(pids, signal.SIGSTOP)
        time.sleep(CYCLE_S - going_s)
        _send(pids, signal.SIGCONT)
        time.sleep(going_s)
    _send(processes_of(profile), signal.SIGCONT)


@contextmanager
def slowed(profile: Path, rate: float) -> Iterator[None]:
    """Slows the browser with this profile to one ``rate``-th of its speed; 1 leaves it alone."""
    if rate == 1:
        yield
        return
    process = multiprocessing.get_context("fork").Process(
        target=_stop_and_go, args=(profile, rate, os.getpid()), daemon=True
    )
    process.start()
    try:
        yield
    finally:
        process.terminate()
        process.join()
        _send(processes_of(profile), signal.SIGCONT)
