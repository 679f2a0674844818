"""Named build steps: seconds on the terminal, and a stamp by which an unchanged one is skipped."""

import errno
import hashlib
import json
import os
import re
import sys
import threading
import time
from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TextIO

from web.build.paths import ROOT, STATE

STAMPS = STATE / "stamps"
BETWEEN_LOOKS_S = 0.2
Input = Path | str


def digest(inputs: Iterable[Input]) -> str:
    """SHA-256 over texts as they are, and over files by name and content. Order counts."""
    total = hashlib.sha256()
    for item in inputs:
        if isinstance(item, str):
            total.update(b"text\0" + item.encode() + b"\0")
            continue
        content = hashlib.sha256(item.read_bytes()).hexdigest()
        name = item.relative_to(ROOT).as_posix() if item.is_relative_to(ROOT) else item.name
        total.update(f"file\0{name}\0{content}\0".encode())
    return total.hexdigest()


class Steps:
    """Prints each step with its seconds; runs a stamped step only when it has to."""

    def __init__(self, out: TextIO | None = None) -> None:
        self._out = out or sys.stdout

    @contextmanager
    def show(self, name: str) -> Iterator[None]:
        """Prints ``name`` and, while the body runs, the seconds so far; at the end the total."""
        started_s = time.monotonic()
        over = threading.Event()

        def tick() -> None:
            while not over.wait(1):
                self._write(f"\r  {name:<38} … {time.monotonic() - started_s:3.0f} s")

        live = threading.Thread(target=tick, daemon=True)
        if self._out.isatty():
            self._write(f"  {name:<38} …")
            live.start()
        ended = "failed after"
        try:
            yield
            ended = ""
        finally:
            over.set()
            if live.is_alive():
                live.join()
            start = "\r" if self._out.isatty() else ""
            took_s = time.monotonic() - started_s
            self._write(f"{start}  {name:<38} {ended} {took_s:5.1f} s   \n")

    def run(
        self,
        name: str,
        inputs: Iterable[Input],
        outputs: Iterable[Path],
        action: Callable[[], None],
        made_last_time: Iterable[Path] = (),
    ) -> bool:
        """Runs ``action`` unless a stamp says that it ran with these inputs and ``outputs`` exist.

        ``made_last_time`` are outputs whose names change with their content: one that was
        deleted makes the step run, but it may make others. Returns whether it ran. The stamp is
        removed first and written last, so a step that was cut off runs again.
        """
        with _one_step_at_a_time(self._write):
            is_whole = all(path.exists() for path in made_last_time)
            return self._run_alone(name, list(inputs), list(outputs), action, is_whole)

    def _run_alone(
        self,
        name: str,
        inputs: list[Input],
        outputs: list[Path],
        action: Callable[[], None],
        is_whole: bool,
    ) -> bool:
        stamp = STAMPS / (re.sub(r"[^a-z0-9]+", "-", name.lower()) + ".json")
        wanted = digest(inputs)
        if is_whole and _stamped(stamp) == wanted and all(path.exists() for path in outputs):
            return False
        stamp.unlink(missing_ok=True)
        with self.show(name):
            action()
            missing = [str(path) for path in outputs if not path.exists()]
            if missing:
                raise FileNotFoundError(f"the step {name!r} did not make {', '.join(missing)}")
        STAMPS.mkdir(parents=True, exist_ok=True)
        write_whole(stamp, json.dumps({"inputs": wanted}).encode())
        return True

    def _write(self, text: str) -> None:
        self._out.write(text)
        self._out.flush()


@contextmanager
def _one_step_at_a_time(tell: Callable[[str], object]) -> Iterator[None]:
    """Waits, and tells so, until no other process runs a step in this project folder."""
    STATE.mkdir(parents=True, exist_ok=True)
    with (STATE / "lock").open("a+") as lock:
        if not _takes(lock):
            tell("  Another command builds in this folder: waiting for it …\n")
            while not _takes(lock):
                time.sleep(BETWEEN_LOOKS_S)
        yield


def _takes(lock: TextIO) -> bool:
    try:
        if sys.platform == "win32":
            import msvcrt

            msvcrt.locking(lock.fileno(), msvcrt.LK_NBLCK, 1)
        else:
            import fcntl

            fcntl.flock(lock, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except OSError as error:
        # Windows says EACCES, others EAGAIN.
        if error.errno not in (errno.EACCES, errno.EAGAIN):
            raise
        return False
    return True


def _stamped(stamp: Path) -> str | None:
    try:
        content = json.loads(stamp.read_bytes())
    except (OSError, ValueError):
        return None
    return content.get("inputs") if isinstance(content, dict) else None


def write_whole(path: Path, content: bytes) -> None:
    """Writes a file so that nobody ever sees half of it."""
    path.parent.mkdir(parents=True, exist_ok=True)
    beside = path.with_name(f".{path.name}.{os.getpid()}")
    beside.write_bytes(content)
    beside.replace(path)
