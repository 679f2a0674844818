"""``python3 -m tests.bench keys``: from a key of the one screen to the drawn recipe.

The last digit of the reading is taken back and typed again with another one; every digit gives
another recipe. Counted is from the browser's time of the press to the picture with the new recipe.
"""

import argparse
import statistics
import tempfile
from pathlib import Path

from playwright.sync_api import Page, expect, sync_playwright

from tests.bench.startup import launch
from tests.bench.startup.slowed import slowed
from tests.bench.startup.used import make_used
from tests.browser.walk import field
from web.build.paths import DIST

RATES = (1, 4)
PRESSES = 60
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


def presses(page: Page, count: int) -> list[float]:
    """Milliseconds of so many digits."""
    keys = page.locator("button.key")
    line = page.locator(".result-main")
    page.evaluate("() => { window.took = []; }")
    for turn in range(count):
        # Without its last digit the reading is "4.", with which there is no recipe.
        keys.last.click()
        expect(line).to_have_count(0)
        keys.get_by_text(str(turn % 9 + 1), exact=True).click()
        launch.asked(page, f"() => window.took.length === {turn + 1}")
    took: list[float] = page.evaluate("window.took")
    return took


def main() -> None:
    """Prints the figures."""
    parser = argparse.ArgumentParser(prog="python3 -m tests.bench keys")
    parser.add_argument("--presses", type=int, default=PRESSES)
    wanted = parser.parse_args()
    expect.set_options(timeout=SLACK_MS)
    print(f"{'key to drawn recipe':<24}{'median ms':>12}{'95 %':>12}{'most':>12}{'n':>6}")
    with sync_playwright() as playwright, tempfile.TemporaryDirectory() as folder:
        profile = Path(folder)
        with (
            launch.served(DIST, 0) as address,
            launch.browser(playwright, profile) as context,
        ):
            page = context.pages[0]
            page.goto(address)
            make_used(page)
            field(page, "Reading").click()
            page.evaluate(LISTEN)
            for rate in RATES:
                with slowed(profile, rate):
                    took = sorted(presses(page, wanted.presses))
                high = took[min(len(took) - 1, round(0.95 * len(took)))]
                middle = statistics.median(took)
                figures = "".join(f"{ms:>12,.0f}" for ms in (middle, high, took[-1]))
                print(f"{f'{rate}x':<24}{figures}{len(took):>6}", flush=True)


if __name__ == "__main__":
    main()
