"""``python3 -m tests.bench keys``: from a key of the one screen to the drawn recipe.

The last digit of the reading is taken back and typed again with another one; every digit gives
another recipe. Counted is from the browser's time of the press to the picture with the new recipe.
A press types when the finger leaves the key. Playwright's leaves it at once; "held" is a finger
that stays for 80 ms (assumed; no study of gloved fingers was found). "checks" are in the log of
the same machine, one a day, so that every new number is held against them too.
"""

import argparse
import statistics
import tempfile
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from playwright.sync_api import Page, Playwright, expect, sync_playwright

from tests.bench.logs import fill, rows_of
from tests.bench.startup import launch
from tests.bench.startup.slowed import slowed
from tests.bench.startup.used import make_used
from tests.browser.onescreen import expect_recipe, open_one_screen, type_check
from tests.browser.walk import field
from tests.phones import MORNING_S
from web.build.paths import DIST

RATES = (1, 4)
PRESSES = 60
CHECKS = 300
HELD_MS = 80
DAY_S = 86_400
SLACK_MS = 60_000

LISTEN = """() => {
  let pressed = null;
  document.addEventListener("click", (event) => {
    const key = event.target.closest("button.key");
    if (key) pressed = /^[0-9]$/.test(key.textContent) ? event.timeStamp : null;
  }, true);
  const look = () => {
    if (pressed === null || document.querySelector(".result-main") === null) return;
    const from = pressed;
    pressed = null;
    requestAnimationFrame(() => setTimeout(() => window.took.push(performance.now() - from)));
  };
  new MutationObserver(look).observe(document.body,
    { subtree: true, childList: true, characterData: true });
}"""


@dataclass(frozen=True)
class Site:
    """Where the app is."""

    address: str


def presses(page: Page, count: int, held_ms: int) -> list[float]:
    """Milliseconds of so many digits."""
    keys = page.locator("button.key")
    line = page.locator(".result-main")
    page.evaluate("() => { window.took = []; }")
    for turn in range(count):
        # Without its last digit the reading is "4.", with which there is no recipe.
        keys.last.click()
        expect(line).to_have_count(0)
        keys.get_by_text(str(turn % 9 + 1), exact=True).click(delay=held_ms)
        launch.asked(page, f"() => window.took.length === {turn + 1}")
    took: list[float] = page.evaluate("window.took")
    return took


def _begin(page: Page, address: str, checks: int) -> None:
    """To the one screen with a recipe on it, of a machine with so many checks in its log."""
    if checks == 0:
        page.goto(address)
        make_used(page)
        return
    first_s = int(time.time()) - MORNING_S - (checks + 1) * DAY_S
    fill(page, Site(address), rows_of(checks + 1, first_s, DAY_S))
    page.goto(address)
    open_one_screen(page)
    type_check(page)
    expect_recipe(page)


@contextmanager
def _typed(playwright: Playwright, profile: Path, checks: int) -> Iterator[Page]:
    with (
        launch.served(DIST, 0) as address,
        launch.browser(playwright, profile) as context,
    ):
        page = context.pages[0]
        _begin(page, address, checks)
        field(page, "Reading").click()
        page.evaluate(LISTEN)
        yield page


def _row(name: str, took: list[float]) -> None:
    took = sorted(took)
    high = took[min(len(took) - 1, round(0.95 * len(took)))]
    figures = "".join(f"{ms:>12,.0f}" for ms in (statistics.median(took), high, took[-1]))
    print(f"{name:<24}{figures}{len(took):>6}", flush=True)


def main() -> None:
    """Prints the figures."""
    parser = argparse.ArgumentParser(prog="python3 -m tests.bench keys")
    parser.add_argument("--presses", type=int, default=PRESSES)
    wanted = parser.parse_args()
    expect.set_options(timeout=SLACK_MS)
    print(f"{'key to drawn recipe':<24}{'median ms':>12}{'95 %':>12}{'most':>12}{'n':>6}")
    for checks in (0, CHECKS):
        with sync_playwright() as playwright, tempfile.TemporaryDirectory() as folder:
            profile = Path(folder)
            with _typed(playwright, profile, checks) as page:
                for held_ms in (0, HELD_MS):
                    for rate in RATES:
                        with slowed(profile, rate):
                            took = presses(page, wanted.presses, held_ms)
                        held = ", held" if held_ms else ""
                        logged = f", {checks} checks" if checks else ""
                        _row(f"{rate}x{held}{logged}", took)


if __name__ == "__main__":
    main()
