"""A new page stands at its top when it is first seen: moved later, a press on it would be lost."""

from playwright.sync_api import Page, expect

from tests.browser.phone import heading
from tests.browser.server import Server
from tests.browser.setup.sumpwalk import BOX, choose, to_kinds
from tests.browser.walk import press

# For each new heading: how far its page is scrolled in the frame that draws it and in later ones.
WATCH = """
() => {
  const FRAMES = 12;
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
      if (one.at.length < FRAMES) requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  }).observe(document.body, { subtree: true, childList: true, characterData: true });
}
"""
HEADS = """
(count) => new Promise((done, fail) => {
  setTimeout(() => { fail(new Error(`not seen: ${JSON.stringify(heads)}`)); }, 20_000);
  const look = () => {
    if (heads.length >= count && heads[count - 1].at.length === 12) done(heads);
    else requestAnimationFrame(look);
  };
  look();
})
"""
SCROLLED_PX = 150


def _down(page: Page) -> None:
    page.evaluate("(y) => scrollTo(0, y)", SCROLLED_PX)
    assert page.evaluate("scrollY") == SCROLLED_PX


def test_a_new_page_stands_still_from_its_first_frame(page: Page, server: Server) -> None:
    page.goto(server.address)
    to_kinds(page)
    choose(page, BOX)
    page.evaluate(WATCH)
    kinds = heading(page).inner_text()
    _down(page)
    press(page, "Continue")
    expect(heading(page)).not_to_have_text(kinds)
    page.evaluate(HEADS, 1)
    page.go_back()
    seen = page.evaluate(HEADS, 2)
    print(seen)
    assert seen[1]["title"] == kinds
    for one in seen:
        assert one["at"] == [0] * 12
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
    page.evaluate(WATCH)
    entry.click()
    page.evaluate(HEADS, 1)
    page.go_back()
    entry_page, log = page.evaluate(HEADS, 2)
    assert entry_page["at"] == [0] * 12
    assert (log["title"], log["at"]) == ("Log", [before] * 12)
    expect(entry).to_be_in_viewport()
    page.go_back()
    page.get_by_role("link", name="Open the log").click()
    assert page.evaluate(HEADS, 4)[-1]["at"] == [0] * 12


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
    page.evaluate(WATCH)
    entry.click()
    page.evaluate(HEADS, 1)
    page.go_back()
    assert page.evaluate(HEADS, 2)[-1]["at"] == [before] * 12
    expect(entry).to_be_in_viewport()
    page.go_back()
    page.get_by_role("link", name="Open the log").click()
    page.evaluate(HEADS, 4)
    expect(rows).to_have_count(first)
