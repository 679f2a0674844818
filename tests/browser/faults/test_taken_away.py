"""Data deleted while the app is open or before a start is told; ten presses of Save are one row."""

import time

import pytest
from playwright.sync_api import Page, expect

from tests.browser.files import backup, start_at, take_in
from tests.browser.phone import heading, wait_until_ready
from tests.browser.server import Server
from tests.browser.stored import rows
from tests.browser.walk import check_until_recipe, field, open_machine, press

MISSING = "had reached at least entry 1. Only 0 entries of it are here."


def clear(page: Page, server: Server, what: str) -> None:
    """What a person or the browser does who deletes the data of this place."""
    origin = server.address.rstrip("/")
    browser = page.context.new_cdp_session(page)
    browser.send("Storage.clearDataForOrigin", {"origin": origin, "storageTypes": what})


@pytest.mark.usefixtures("machine_on_phone")
@pytest.mark.parametrize("what", ["indexeddb", "all"])
def test_data_cleared_while_open_is_told_at_once(server: Server, page: Page, what: str) -> None:
    wait_until_ready(page)
    form = page.context.new_page()
    form.goto(f"{server.address}#/tell")
    field(form, "Note").fill("typed before")
    alarm = page.get_by_role("alert")
    expect(alarm).to_have_count(0)
    started_s = time.perf_counter()
    clear(page, server, what)
    expect(alarm).to_contain_text(MISSING)
    print(f"F11 {what}: told {time.perf_counter() - started_s:.2f} s after it was cleared")
    # What was typed meanwhile is stored, in a log of its own, and the alarm stays.
    press(form, "Save to the log")
    expect(heading(form)).to_have_text("Saved to the log")
    assert [row["seq"] for row in rows(form)] == [1]
    start_at(form)
    expect(form.get_by_role("alert")).to_contain_text(MISSING)


@pytest.mark.usefixtures("machine_on_phone")
def test_everything_gone_before_a_start(server: Server, page: Page) -> None:
    wait_until_ready(page)
    file = backup(page)
    lost = rows(page)
    page.goto("about:blank")
    clear(page, server, "all")
    page.goto(server.address)
    expect(
        page.get_by_role("link", name="Used before? Take in the last backup file")
    ).to_be_visible()
    expect(page.get_by_role("button", name="Add your first machine")).to_be_visible()
    # Nothing is left that could know of a loss, and nothing claims that all is kept or backed up.
    expect(page.get_by_role("alert")).to_have_count(0)
    expect(page.get_by_text("backup yet").or_(page.get_by_text("saved since"))).to_have_count(0)
    wait_until_ready(page)
    assert page.evaluate("caches.keys().then((names) => names.length)") == 1
    page.get_by_role("link", name="Used before?").click()
    expect(heading(page)).to_have_text("Take in a file")
    take_in(page, file, len(lost))
    start_at(page)
    expect(page.get_by_role("link", name="Wheel lathe").first).to_be_visible()
    # The old log goes on nowhere: new entries get a log of their own.
    assert rows(page) == []


# Whatever stands at the spot by then is pressed; on a busy machine fewer than ten fit in.
TAP = """
async ([x, y]) => {
  const started_ms = performance.now();
  let presses = 0;
  while (presses < 10 && performance.now() - started_ms < 900) {
    document.elementFromPoint(x, y)?.closest("button, a")?.click();
    presses += 1;
    await new Promise((done) => setTimeout(done, 80));
  }
  return presses;
}
"""


@pytest.mark.usefixtures("machine_on_phone")
def test_save_pressed_ten_times_in_a_second(page: Page) -> None:
    for name, place in (("note", "tell"), ("check", "")):
        before = len(rows(page))
        start_at(page, place)
        if name == "note":
            field(page, "Note").fill("pressed ten times")
        else:
            open_machine(page)
            check_until_recipe(page)
        button = page.get_by_role("button", name="Save to the log", exact=True)
        button.scroll_into_view_if_needed()
        box = button.bounding_box()
        assert box is not None
        spot = [box["x"] + box["width"] / 2, box["y"] + box["height"] / 2]
        presses = page.evaluate(TAP, spot)
        assert presses > 1
        expect(heading(page)).to_have_text("Saved to the log")
        # Time for a press to do what it must not do.
        page.wait_for_timeout(500)
        expect(heading(page)).to_have_text("Saved to the log")
        print(f"F16 {name}: {presses} presses in a second, {len(rows(page)) - before} rows")
        assert len(rows(page)) == before + 1
