"""Trend of a machine: sentence, charts and table say the same, in both themes."""

import re

import pytest
from playwright.sync_api import Page, expect

from tests.browser.log.test_example_shop import look_at_example
from tests.browser.looking import Look
from tests.browser.phone import Phone, Theme, heading
from tests.browser.server import Server
from tests.browser.walk import field, press

PAINTED = """
(canvas) => {
  const { data } = canvas.getContext("2d").getImageData(0, 0, canvas.width, canvas.height);
  const shades = new Set();
  for (let i = 0; i < data.length; i += 4) if (data[i + 3] > 250) shades.add(data[i]);
  return shades.size;
}
"""


LONGEST_LINES = """
(canvas) => {
  const { width, height } = canvas;
  const { data } = canvas.getContext("2d").getImageData(0, 0, width, height);
  let lines = 0;
  for (let y = 0; y < height; y++) {
    let run = 0, longest = 0;
    for (let x = 0; x < width; x++) {
      run = data[4 * (y * width + x) + 3] > 0 ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
    if (longest > width / 2) lines += 1;
  }
  return lines;
}
"""


def to_trend(page: Page, machine: str) -> None:
    """From the example's list to the trend of a machine, charts drawn."""
    page.get_by_role("link", name=machine).first.click()
    page.get_by_role("link", name="Trend").click()
    expect(heading(page)).to_have_text("Trend")
    expect(page.locator(".chart canvas")).to_have_count(4)


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_chart_sentence_and_table_agree(phone: Phone, server: Server, theme: Theme) -> None:
    page = phone.start(theme)
    page.goto(server.address)
    look_at_example(page)
    to_trend(page, "Wheel lathe")
    said = page.locator(".trend-said").inner_text()
    last = re.search(r"([\d.]+)\s% last", said)
    assert last is not None
    assert page.locator(".chart canvas").first.evaluate(PAINTED) > 2
    name = page.get_by_role("img", name=re.compile("Chart of the strength")).first
    expect(name).to_have_attribute("aria-label", re.compile(re.escape(said)))
    look = Look(f"{theme}-trend")
    look(page)
    press(page, "Show the same numbers as a table")
    rows = page.locator(".trend-table tbody tr")
    expect(rows.first).to_contain_text(last[1])
    few = rows.count()
    page.get_by_role("radio", name="4 weeks").check(force=True)
    expect(rows.first).to_contain_text(last[1])
    expect(page.locator(".trend-said")).not_to_have_text(said)
    assert rows.count() < few
    look.seen.clear()
    look.kind = f"{theme}-trend-table"
    look(page)
    page.get_by_role("link", name="How often to check and clean").click()
    field(page, "Check at least").fill("0")
    press(page, "Save to the log")
    expect(page.get_by_role("main")).to_contain_text("between 1 and 365")
    field(page, "Check at least").fill("1")
    look(page)
    press(page, "Save to the log")
    expect(page.get_by_text(re.compile(r"(By|Due since) .*: every day\."))).to_be_visible()
    assert look.wrong == []


def test_axis_marks_have_lines_and_days_with_several_rows_their_times(
    phone: Phone, server: Server
) -> None:
    page = phone.start()
    page.goto(server.address)
    look_at_example(page)
    to_trend(page, "Milling machine")
    for chart in page.locator(".chart canvas").all():
        assert chart.evaluate(LONGEST_LINES) >= 2
    press(page, "Show the same numbers as a table")
    heads = [cell.inner_text().split("\n") for cell in page.locator(".trend-table tbody th").all()]
    days = [day for day, *_ in heads]
    several = [head for head in heads if days.count(head[0]) > 1]
    assert len(several) > 2
    assert all(re.match(r"\d+:\d\d", head[1]) for head in several)
    alone = [head for head in heads if days.count(head[0]) == 1]
    assert alone
    assert not any(":" in " ".join(head) for head in alone)


def test_trend_on_a_desk_screen(desk: Phone, server: Server) -> None:
    page = desk.start()
    page.goto(server.address)
    look_at_example(page)
    to_trend(page, "Drill line")
    look = Look("desk-trend")
    look(page)
    assert look.wrong == []


@pytest.mark.usefixtures("machine_on_phone")
def test_nothing_measured_yet_promises_nothing(page: Page) -> None:
    page.get_by_role("link", name="Wheel lathe").click()
    page.get_by_role("link", name="Trend").click()
    main = page.get_by_role("main")
    expect(main).to_contain_text("No reading in this time.")
    expect(main).to_contain_text("Check now.")
    expect(main).to_contain_text("Too few checks yet")
