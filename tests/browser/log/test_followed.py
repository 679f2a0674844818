"""What followed a check stands in its row of the log, and the day's own axis shows it."""

import re

import pytest
from playwright.sync_api import Page, expect

from tests.browser.check.test_recheck import poured, read_again
from tests.browser.phone import heading, picture
from tests.browser.walk import press

pytestmark = pytest.mark.usefixtures("machine_on_phone")

# Share of the strength's chart that is painted between its lines, right of the middle.
HATCHED = """
(canvas) => {
  const { width, height } = canvas;
  const { data } = canvas.getContext("2d").getImageData(0, 0, width, height);
  let painted = 0, all = 0;
  for (let y = 0; y < height; y++)
    for (let x = Math.round(width * 0.5); x < width * 0.75; x++) {
      all += 1;
      if (data[4 * (y * width + x) + 3] > 0) painted += 1;
    }
  return painted / all;
}
"""


def expect_followed(page: Page, strength: str) -> None:
    row = page.locator(".log-row").filter(has_text="Dip 342 mm")
    expect(row).to_contain_text(re.compile(r"Poured: \d buckets? of"))
    expect(row).to_contain_text(f"Second reading: {strength}")


def test_the_row_of_a_check_says_what_was_poured_and_read(page: Page) -> None:
    poured(page)
    read_again(page, "5.3")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    # 5.3 Brix by the factor of 1.5, rounded half up.
    strength = "8.0\u00a0%"
    page.evaluate("() => { location.hash = '#/log'; }")
    expect_followed(page, strength)
    picture(page, "light-log-followed")
    # The next start reads a part of the log.
    page.reload()
    expect_followed(page, strength)


def test_the_first_day_has_its_range_over_the_whole_axis(page: Page) -> None:
    poured(page)
    page.get_by_role("link", name="Trend").click()
    chart = page.locator(".chart canvas").first
    expect(chart).to_be_visible()
    picture(page, "light-trend-first-day")
    assert chart.evaluate(HATCHED) > 0.08
