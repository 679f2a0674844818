"""A file that the phone's share sheet hands to the installed app: first shown, then added, once."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.files import start_at
from tests.browser.handing import hand_over
from tests.browser.server import Server
from tests.browser.stored import taken
from tests.browser.walk import press
from tests.phones import Phone, id_of, setup

pytestmark = pytest.mark.usefixtures("machine_on_phone")

MOST_BYTES = 20 * 2**20
KEPT = "caches.keys().then((names) => names.filter((name) => name.includes('handed')).length)"
# The driver's own wait takes a promise for a yes, so the page waits by itself.
GONE = f"""
async () => {{
  const end_ms = performance.now() + 30_000;
  while ((await {KEPT}) > 0) {{
    if (performance.now() > end_ms) throw new Error("the file is still kept");
    await new Promise((done) => setTimeout(done, 20));
  }}
}}
"""


def other_log() -> bytes:
    phone = Phone("other")
    phone.save("machine_set", {"machine": setup("Axle grinder")}, 0, id_of("grinder"))
    return phone.export().encode()


def ready(page: Page) -> None:
    """The service worker has the page."""
    expect(page.get_by_text("Works without internet")).to_be_visible()


def test_it_is_shown_and_added_once_without_a_network(page: Page, server: Server) -> None:
    ready(page)
    address = page.url.split("#")[0]
    server.kill()
    hand_over(page, address, other_log())
    assert page.url == f"{address}#/take-in"
    main = page.get_by_role("main")
    expect(main).to_contain_text("Axle grinder")
    assert taken(page) == []
    press(page, "Add 1 entry")
    expect(main).to_contain_text("1 entry was added.")
    assert len(taken(page)) == 1
    assert page.evaluate(KEPT) == 0
    start_at(page, "take-in")
    expect(page.get_by_text("Choose the file")).to_be_visible()


def test_one_more_takes_the_place_of_the_first(page: Page) -> None:
    ready(page)
    address = page.url.split("#")[0]
    hand_over(page, address, b"no log at all")
    expect(page.get_by_role("alert")).to_be_visible()
    hand_over(page, address, other_log())
    expect(page.get_by_role("main")).to_contain_text("Axle grinder")


@pytest.mark.parametrize("content", [b"", b"x" * (MOST_BYTES + 5)])
def test_what_is_no_log_is_refused(page: Page, content: bytes) -> None:
    ready(page)
    hand_over(page, page.url.split("#")[0], content)
    expect(page.get_by_role("alert")).to_be_visible()
    assert taken(page) == []
    assert page.evaluate(KEPT) == 0


def test_what_does_not_come_as_the_manifest_says_is_asked_for(page: Page) -> None:
    ready(page)
    hand_over(page, page.url.split("#")[0], other_log(), named="other")
    expect(page.get_by_text("Choose the file")).to_be_visible()
    assert page.evaluate(KEPT) == 0


def test_several_at_once_are_refused_and_none_of_them_is_kept(page: Page) -> None:
    ready(page)
    hand_over(page, page.url.split("#")[0], other_log(), b"second")
    expect(page.get_by_role("alert")).to_contain_text("More than one file was shared.")
    assert page.evaluate(KEPT) == 0


def test_one_that_nobody_came_for_is_forgotten(page: Page) -> None:
    ready(page)
    page.evaluate(
        """(ago) => caches.open(`pailwright-handed ${location.pathname}`).then((shelf) =>
        shelf.put(`${location.pathname}take-in`,
          new Response("old", { headers: { "x-kept-at": String(Date.now() - ago) } })))""",
        11 * 60_000,
    )
    assert page.evaluate(KEPT) == 1
    # A load after this would begin without what was taken before it.
    page.evaluate("location.hash = '#/take-in'")
    expect(page.get_by_text("Choose the file")).to_be_visible()
    page.evaluate(GONE)
    # Taken, it would be read now, and refused: it is no log.
    page.wait_for_timeout(500)
    expect(page.get_by_text("Choose the file")).to_be_visible()
    expect(page.get_by_role("alert")).to_have_count(0)
