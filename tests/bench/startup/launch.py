"""One start: a new browser process on a profile, and what it took."""

import statistics
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Protocol

from playwright.sync_api import BrowserContext, Playwright

from tests.bench.startup.slowed import processes_of, slowed
from tests.bench.startup.tab import Tab, opened
from tests.browser.phone import PHONE_SIZE
from tests.chromium import chromium_path, launch_arguments
from web.build.paths import DIST, ROOT

FIRST_ANSWER_MARK = "core: first answer"
LIMIT_S = 120
# A desktop's browser first loads its own fields and lists, in pages of their own, on both cores:
# some 200 ms that no phone spends there, and that (a) and (b) hide in their seconds.
SETTLED_S = 2.0
# Rare, so that asking does not disturb what is asked about.
ASK_EVERY_S = 0.1

TIMES = """(name) => {
  const worker = performance.getEntriesByType("resource").find(({ name }) => /worker/.test(name));
  const mark = performance.getEntriesByName(name)[0];
  const paint = performance.getEntriesByName("first-contentful-paint")[0];
  return mark && { kind: mark.detail, answer: mark.startTime,
    worker: worker ? mark.startTime - worker.startTime : null, paint: paint?.startTime ?? null };
}"""
STORED = """async () => {
  let stored = 0;
  for (const name of await caches.keys()) stored += (await (await caches.open(name)).keys()).length;
  return navigator.serviceWorker.controller !== null && stored;
}"""
LOOP = """() => {
  const from = performance.now();
  let sum = 0;
  for (let i = 0; i < 3e8; i++) sum += i % 7;
  return sum > 0 ? performance.now() - from : 0;
}"""


@dataclass(frozen=True)
class Site:
    """What is started: a folder with a page, and a place on that page."""

    name: str
    folder: Path
    place: str = ""


@dataclass(frozen=True)
class Start:
    """Milliseconds from the start of navigation, and memory of the tab's process in megabytes."""

    answer_ms: float
    worker_ms: float
    paint_ms: float | None
    peak_mb: float
    present_mb: float


@contextmanager
def served(folder: Path, port: int) -> Iterator[str]:
    """Its address while a process of its own serves it; stock pages get no headers of ours."""
    own = ["-m", "web.build.server", "--port", str(port), "--folder", str(folder)]
    plain = [
        *("-m", "http.server", str(port), "--bind", "127.0.0.1"),
        *("--protocol", "HTTP/1.1", "--directory", str(folder)),
    ]
    process = subprocess.Popen(
        [sys.executable, "-u", *(own if folder == DIST else plain)],
        cwd=ROOT,
        stdout=subprocess.PIPE,
        stderr=subprocess.DEVNULL,
    )
    try:
        assert process.stdout is not None
        said = process.stdout.readline().decode()
        yield said.strip() if folder == DIST else address(port)
    finally:
        process.kill()
        process.wait()


def address(port: int) -> str:
    """Where a site is found."""
    return f"http://localhost:{port}/"


class Asked(Protocol):
    """A page that answers, whoever drives it."""

    def evaluate(self, expression: str, arg: object = None, /) -> object:
        """What a function of the page returns."""


@contextmanager
def settled(profile: Path) -> Iterator[Tab]:
    """The tab of a new browser process on ``profile``, after the browser's own pages have come."""
    with opened(profile) as tab:
        time.sleep(SETTLED_S)
        yield tab


@contextmanager
def browser(playwright: Playwright, profile: Path) -> Iterator[BrowserContext]:
    """The same with a driver that can press and fill in."""
    context = playwright.chromium.launch_persistent_context(
        str(profile),
        executable_path=chromium_path(),
        args=launch_arguments,
        headless=True,
        viewport={"width": PHONE_SIZE[0], "height": PHONE_SIZE[1]},
        has_touch=True,
    )
    try:
        time.sleep(SETTLED_S)
        yield context
    finally:
        context.close()


def asked(page: Asked, question: str, argument: str | None = None) -> object:
    """The first answer that is not empty. Not wait_for_function: our policy refuses eval."""
    end_s = time.monotonic() + LIMIT_S
    while time.monotonic() < end_s:
        answer: object = page.evaluate(question, argument)
        if answer:
            return answer
        time.sleep(ASK_EVERY_S)
    raise TimeoutError(f"nothing within {LIMIT_S} s for {argument or question}")


def memory_mb(profile: Path) -> tuple[float, float]:
    """Most ever resident, and the present proportional share, of the tab's process."""
    found = [(0.0, 0.0)]
    for pid in processes_of(profile):
        home = Path("/proc", str(pid))
        if b"--type=renderer" not in (home / "cmdline").read_bytes():
            continue
        status, rollup = (home / "status").read_text(), (home / "smaps_rollup").read_text()
        found.append((kilobytes(status, "VmHWM:") / 1e3, kilobytes(rollup, "Pss:") / 1e3))
    return max(found)


def kilobytes(text: str, name: str) -> float:
    """The number on the line of ``text`` that begins with ``name``."""
    line = next(line for line in text.splitlines() if line.startswith(name))
    return float(line.split()[1]) * 1.024


def start(page: Tab, where: str, profile: Path, rate: float) -> Start:
    """Opens the page; waits for Python's first answer."""
    with slowed(profile, rate):
        page.goto(where)
        times = asked(page, TIMES, FIRST_ANSWER_MARK)
    assert isinstance(times, dict)
    if times["kind"] == "plain":
        raise RuntimeError("the image was not used")
    return Start(times["answer"], times["worker"], times["paint"], *memory_mb(profile))


def true_rate(page: Tab, profile: Path, rate: float) -> float:
    """How much slower a loop on the page runs, where one ``rate``-th of the speed was asked for."""
    quick = statistics.median(page.evaluate(LOOP) for _ in range(3))
    with slowed(profile, rate):
        slow = statistics.median(page.evaluate(LOOP) for _ in range(3))
    return float(slow / quick)
