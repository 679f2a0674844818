"""``python -m tests.bench.starts N``: from opening the page to Python's first answer.

Cold: a new profile, with the server. Warm: the same profile again, a new browser process, and
the server killed, so that everything comes from the phone.
"""

import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from playwright.sync_api import BrowserContext, Page, Playwright, ViewportSize, sync_playwright

from tests.chromium import chromium_path, launch_arguments
from web.build.paths import ROOT

FIRST_ANSWER_MARK = "core: first answer"
LIMIT_S = 60
PHONE: ViewportSize = {"width": 390, "height": 844}
# The browser keeps compiled code of what was used; the first starts of a profile lack it.
WARM_UPS = 2

ASK_MARK = "name => performance.getEntriesByName(name)[0]?.startTime ?? null"
ASK_STORED = """async () => {
  let stored = 0;
  for (const name of await caches.keys()) stored += (await (await caches.open(name)).keys()).length;
  return navigator.serviceWorker.controller ? stored : 0;
}"""


@contextmanager
def server() -> Iterator[str]:
    """The address of the local server, which is a process of its own and killed at the end."""
    command = [sys.executable, "-m", "web.build.server", "--port", "0"]
    process = subprocess.Popen(command, cwd=ROOT, stdout=subprocess.PIPE, text=True)
    try:
        assert process.stdout is not None
        yield process.stdout.readline().strip()
    finally:
        process.kill()
        process.wait()


@contextmanager
def browser(playwright: Playwright, profile: Path) -> Iterator[BrowserContext]:
    """A new browser process on ``profile``."""
    context = playwright.chromium.launch_persistent_context(
        str(profile),
        executable_path=chromium_path(),
        args=launch_arguments,
        headless=True,
        viewport=PHONE,
    )
    try:
        yield context
    finally:
        context.close()


def first_answer_ms(page: Page, address: str) -> float:
    """Opens the page; milliseconds from the start of navigation to the first answer."""
    page.goto(address, wait_until="commit")
    return float(_poll(page, ASK_MARK, FIRST_ANSWER_MARK))


def _poll(page: Page, question: str, argument: str | None = None) -> float:
    # Not wait_for_function: it is eval, which the page's policy refuses.
    end_s = time.monotonic() + LIMIT_S
    while time.monotonic() < end_s:
        answer = page.evaluate(question, argument)
        if answer:
            return float(answer)
        time.sleep(0.02)
    raise TimeoutError(f"nothing within {LIMIT_S} s for {argument or question}")


def measure(playwright: Playwright, starts: int) -> dict[str, list[float]]:
    """Start times in milliseconds, cold and warm."""
    figures: dict[str, list[float]] = {"cold": [], "warm": []}
    with tempfile.TemporaryDirectory() as folder:
        with server() as address:
            for i in range(starts):
                with browser(playwright, Path(folder, f"profile {i}")) as context:
                    figures["cold"].append(first_answer_ms(context.pages[0], address))
                    _poll(context.pages[0], ASK_STORED)
        for i in range(starts + WARM_UPS):
            with browser(playwright, Path(folder, "profile 0")) as context:
                took_ms = first_answer_ms(context.pages[0], address)
                if i >= WARM_UPS:
                    figures["warm"].append(took_ms)
    return figures


def main(starts: int) -> None:
    """Prints median, least and most of each kind of start."""
    with sync_playwright() as playwright:
        figures = measure(playwright, starts)
    print(f"\n{'start to first answer, ms':<30}{'median':>12}{'least':>12}{'most':>12}{'n':>6}")
    names = {"cold": "cold, from the local server", "warm": "warm, server killed"}
    for kind, values in figures.items():
        row = (statistics.median(values), min(values), max(values))
        print(f"{names[kind]:<30}" + "".join(f"{ms:>12,.0f}" for ms in row) + f"{len(values):>6}")


if __name__ == "__main__":
    main(int(sys.argv[1]))
