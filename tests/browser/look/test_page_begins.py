"""A new page stands at its top when it is first seen: moved later, a press on it would be lost."""

from typing import Any

from playwright.sync_api import Page, expect

from tests.browser.phone import heading
from tests.browser.server import Server
from tests.browser.setup.sumpwalk import BOX, choose, to_kinds
from tests.browser.walk import leave, press

FRAMES = 12
# For each new heading: how far its page is scrolled in the frame that draws it and in later ones.
WATCH = """
(frames) => {
  const heads = (window.heads = []);
  const titleNow = () => document.querySelector("h1")?.textContent ?? "";
  let before = titleNow();
  new MutationObserver(() => {
    const title = titleNow();
    if (title === "" || title === before) return;
    before = title;
    const one = { title, at: [], focused: [] };
    heads.push(one);
    const look = () => {
      one.at.push(scrollY);
      one.focused.push(document.activeElement?.id === "question");
      if (one.at.length < frames) requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  }).observe(document.body, { subtree: true, childList: true, characterData: true });
}
"""
HEADS = """
([count, frames]) => new Promise((done, fail) => {
  setTimeout(() => { fail(new Error(`not seen: ${JSON.stringify(heads)}`)); }, 20_000);
  const look = () => {
    if (heads.length >= count && heads[count - 1].at.length === frames) done(heads);
    else requestAnimationFrame(look);
  };
  look();
})
"""
SCROLLED_PX = 150


def _heads(page: Page, count: int) -> list[dict[str, Any]]:
    """What was seen of each new heading, once so many have come."""
    heads: list[dict[str, Any]] = page.evaluate(HEADS, [count, FRAMES])
    return heads


def _down(page: Page) -> None:
    page.evaluate("(y) => scrollTo(0, y)", SCROLLED_PX)
    assert page.evaluate("scrollY") == SCROLLED_PX


def test_a_new_page_stands_still_from_its_first_frame(page: Page, server: Server) -> None:
    page.goto(server.address)
    to_kinds(page)
    choose(page, BOX)
    page.evaluate(WATCH, FRAMES)
    kinds = heading(page).inner_text()
    _down(page)
    press(page, "Continue")
    expect(heading(page)).not_to_have_text(kinds)
    _heads(page, 1)
    page.go_back()
    seen = _heads(page, 2)
    assert seen[1]["title"] == kinds
    for one in seen:
        assert one["at"] == [0] * FRAMES
        assert all(one["focused"])


def test_a_list_begins_where_it_was_left(page: Page) -> None:
    """Only for whoever comes back to it: found by another way, it begins at its top."""
    page.get_by_role("link", name="Look at an example shop").click()
    page.get_by_role("link", name="Open the log").click()
    expect(heading(page)).to_have_text("Log")
    entry = page.locator(".log-row").nth(20)
    entry.scroll_into_view_if_needed()
    before = page.evaluate("scrollY")
    assert before > SCROLLED_PX
    page.evaluate(WATCH, FRAMES)
    entry.click()
    _heads(page, 1)
    page.go_back()
    entry_page, log = _heads(page, 2)
    assert entry_page["at"] == [0] * FRAMES
    assert (log["title"], log["at"]) == ("Log", [before] * FRAMES)
    expect(entry).to_be_in_viewport()
    page.go_back()
    page.get_by_role("link", name="Open the log").click()
    assert _heads(page, 4)[-1]["at"] == [0] * FRAMES


def test_older_rows_of_the_list_are_there_again(page: Page) -> None:
    page.get_by_role("link", name="Look at an example shop").click()
    page.get_by_role("link", name="Open the log").click()
    rows = page.locator(".log-row")
    expect(heading(page)).to_have_text("Log")
    first = rows.count()
    page.get_by_role("button", name="older").click()
    expect(rows).not_to_have_count(first)
    entry = rows.nth(first + 10)
    entry.scroll_into_view_if_needed()
    before = page.evaluate("scrollY")
    page.evaluate(WATCH, FRAMES)
    entry.click()
    _heads(page, 1)
    page.go_back()
    assert _heads(page, 2)[-1]["at"] == [before] * FRAMES
    expect(entry).to_be_in_viewport()
    # The log of one machine, opened on from there, has rows of its own.
    entry.click()
    expect(heading(page)).not_to_have_text("Log")
    page.evaluate("() => { location.hash = '#/'; }")
    expect(heading(page)).to_have_text("Machines")
    leave(page, page.get_by_role("link", name="Wheel lathe").first)
    leave(page, page.get_by_role("link", name="Open the log"))
    expect(rows.first).to_be_visible()
    page.evaluate("() => history.go(-4)")
    expect(entry).to_be_in_viewport()
    page.go_back()
    page.get_by_role("link", name="Open the log").click()
    expect(rows).to_have_count(first)
