"""From a weak sump to the trend without a network, killed in bucket 3, recorded as a trace.

``tests/.output/journey-*.zip`` opens with ``playwright show-trace``; the pictures lie beside it.
"""

import re
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import datetime, timedelta
from pathlib import Path

import pytest
from playwright.sync_api import Error, Page, expect

from tests.browser.faults.saving import kill_browser
from tests.browser.phone import PICTURES, Phone, heading, picture
from tests.browser.pouring import pour_all, pour_bucket
from tests.browser.server import Server
from tests.browser.stored import entries
from tests.browser.walk import field, next_page, open_machine, press

pytestmark = [
    pytest.mark.skipif(sys.platform != "linux", reason="needs /proc"),
    pytest.mark.usefixtures("machine_on_phone"),
]
LEVEL_PX = """
() => document.querySelector(".measure .coolant-fill").getBoundingClientRect().height
"""


@contextmanager
def recorded(page: Page, part: str) -> Iterator[None]:
    """Records what happens on this page as a trace."""
    page.context.tracing.start(screenshots=True, snapshots=True)
    yield
    page.context.tracing.stop(path=PICTURES / f"journey-{part}.zip")


def shot(page: Page, name: str) -> None:
    picture(page, f"journey-{name}")


def to_bucket_three(page: Page) -> None:
    """Look, dip, reading, target, recipe, two buckets and the water of the third."""
    open_machine(page)
    press(page, "Start a check")
    expect(heading(page)).to_have_text("Look and smell first")
    shot(page, "01-look")
    next_page(page, "Nothing unusual")
    expect(field(page, "How deep")).to_have_value("")
    field(page, "How deep").fill("35")
    expect(page.get_by_text("= 16 L")).to_be_visible()
    slip_px = page.evaluate(LEVEL_PX)
    shot(page, "02-dip-with-a-digit-missing")
    field(page, "How deep").fill("350")
    expect(page.get_by_text(re.compile(r"= 15[78]"))).to_be_visible()
    # The eye sees the slip: a tenth of the depth is drawn as less than a quarter of the level.
    assert slip_px < page.evaluate(LEVEL_PX) / 4
    shot(page, "03-dip")
    next_page(page)
    page.get_by_role("button", name=re.compile("Hard floor")).click()
    expect(field(page, "What does the reading")).to_have_value("")
    field(page, "What does the reading").fill("4.0")
    expect(page.get_by_text("4.0 × factor 1.5")).to_be_visible()
    expect(page.get_by_text("Too weak (lean)")).to_be_visible()
    shot(page, "04-reading")
    next_page(page)
    page.get_by_role("button", name=re.compile("Sharp line")).click()
    expect(heading(page)).to_have_text("Where should it be?")
    shot(page, "05-target")
    next_page(page)
    shot(page, "06-answers")
    next_page(page, "Work out the recipe")
    expect(page.get_by_text("Pour 5 buckets")).to_be_visible()
    shot(page, "07-recipe")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    press(page, "Start pouring")
    shot(page, "08-before-the-first-bucket")
    press(page, "Right drum, gloves on")
    pour_bucket(page, 1)
    pour_bucket(page, 2)
    press(page, "Water is in")
    expect(page.get_by_role("button", name="Concentrate is in")).to_be_visible()
    shot(page, "09-bucket-3")


def to_the_end(page: Page) -> str:
    """Back to bucket 3 and through to Saved; when the reading is due."""
    row = page.get_by_role("link", name="Wheel lathe")
    expect(row).to_contain_text("2 of 5 buckets poured")
    shot(page, "10-list-after-the-kill")
    row.click()
    page.get_by_role("button", name="Go on pouring").click()
    expect(heading(page)).to_have_text("Where you were")
    expect(page.get_by_role("main")).to_contain_text(re.compile(r"last tick was at \d?\d:\d\d"))
    shot(page, "11-where-you-were")
    press(page, "No, go on from there")
    expect(heading(page)).to_have_text("Bucket 3 of 5")
    for state in ("Concentrate is in", "Stirred, it looks even", "Poured"):
        press(page, state)
        expect(page.get_by_role("button", name=state, exact=True)).to_have_count(0)
    pour_all(page, 5, first=4)
    shot(page, "12-all-in")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    (pour,) = entries(page, "pour")
    return str(pour["body"]["recheck_due_at"])


def read_again(page: Page) -> None:
    """The second reading, late, after another start of the browser, and the trend."""
    expect(page.get_by_role("link", name="Wheel lathe")).to_contain_text("Reading due since")
    page.get_by_role("link", name="Wheel lathe").click()
    shot(page, "13-reading-due")
    press(page, "Enter the reading")
    field(page, "What does the reading").fill("5.3")
    next_page(page)
    page.get_by_role("button", name=re.compile("Sharp line")).click()
    expect(heading(page)).to_have_text("Expected and found")
    expect(page.get_by_role("main")).to_contain_text("As expected")
    shot(page, "14-expected-and-found")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    page.evaluate("() => { location.hash = location.hash.split('/').slice(0, 3).join('/'); }")
    page.get_by_role("link", name="Trend").click()
    expect(page.locator(".chart canvas").first).to_be_visible()
    shot(page, "15-trend-of-two-readings")
    press(page, "Show the same numbers as a table")
    rows = page.locator(".trend-table tbody tr")
    expect(rows.first).to_be_visible()
    shown = " ".join(rows.all_inner_texts())
    assert "6.0" in shown
    assert "8.0" in shown
    shot(page, "16-table")


def test_a_weak_sump_without_a_network(phone: Phone, server: Server, tmp_path: Path) -> None:
    server.kill()
    page = phone.start()
    page.goto(server.address)
    with recorded(page, "1-to-bucket-3"):
        to_bucket_three(page)
    assert kill_browser(tmp_path / "profile") > 0
    try:
        phone.close()
    except Error:
        phone.forget()
    page = phone.start()
    page.goto(server.address)
    with recorded(page, "2-to-the-last-bucket"):
        due = datetime.fromisoformat(to_the_end(page))
    phone.close()
    page = phone.start()
    page.clock.install(time=due + timedelta(minutes=45))
    page.goto(server.address)
    with recorded(page, "3-reading-and-trend"):
        read_again(page)
    (again,) = entries(page, "recheck")
    late = datetime.fromisoformat(again["measured_at"]) - due
    assert late >= timedelta(minutes=45)
