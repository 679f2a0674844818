"""How Python starts on the phone: from the memory image, and plainly where that is damaged."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.phone import Phone, heading, wait_until_ready
from tests.browser.server import Server
from tests.browser.walk import check_until_recipe

FIRST_ANSWER_MARK = "core: first answer"
FAILED_START_MARK = "core: start failed"
# It compiles every module.
PLAIN_START_MS = 90_000
ASK_DETAILS = "name => performance.getEntriesByName(name).map((mark) => mark.detail)"
# Turns 64 bytes in the middle of a stored file around.
DAMAGE = """
async (ending) => {
  for (const name of await caches.keys()) {
    const cache = await caches.open(name);
    for (const request of await cache.keys()) {
      if (!new URL(request.url).pathname.endsWith(ending)) continue;
      const stored = await cache.match(request);
      const bytes = new Uint8Array(await stored.arrayBuffer());
      const middle = bytes.length >> 1;
      for (let i = middle; i < Math.min(middle + 64, bytes.length); i++) bytes[i] ^= 255;
      await cache.put(request, new Response(bytes, { headers: stored.headers }));
      return bytes.length;
    }
  }
  return 0;
}
"""


def assert_started(page: Page, kind: str, failed: int = 0) -> None:
    """Which start gave the first answer, and how many failed before it."""
    why = page.evaluate(ASK_DETAILS, FAILED_START_MARK)
    assert page.evaluate(ASK_DETAILS, FIRST_ANSWER_MARK) == [kind], why
    assert len(why) == failed, why


def test_a_start_writes_no_error_that_only_the_browser_tells(phone: Phone, server: Server) -> None:
    """What a policy refuses inside a worker is no message of the page's console."""
    page = phone.start()
    log = page.context.new_cdp_session(page)
    told: list[str] = []
    log.on("Log.entryAdded", lambda event: told.append(event["entry"]["text"]))
    log.send("Log.enable")
    page.goto(server.address)
    wait_until_ready(page)
    page.reload()
    wait_until_ready(page)
    assert told == []


def test_first_visit_and_offline_start_use_the_image(phone: Phone, server: Server) -> None:
    page = phone.start()
    page.goto(server.address)
    wait_until_ready(page)
    assert_started(page, "image")
    phone.close()
    server.kill()
    page = phone.start()
    page.goto(server.address)
    wait_until_ready(page)
    assert_started(page, "image")


@pytest.mark.usefixtures("machine_on_phone")
def test_damaged_image_is_told_and_the_plain_start_answers(phone: Phone, server: Server) -> None:
    page = phone.start()
    page.goto(server.address)
    assert page.evaluate(DAMAGE, "core.pages.bin") > 0
    server.kill()
    page.reload()
    # Nothing can be mended without the server, and nothing has to be for a recipe.
    damaged = page.get_by_text("a file on this phone is damaged")
    expect(damaged).to_be_visible(timeout=PLAIN_START_MS)
    assert_started(page, "plain", failed=1)
    page.get_by_role("link", name="Wheel lathe").click()
    check_until_recipe(page)
    expect(heading(page)).to_have_text("Pour this")
    phone.problems.clear()


@pytest.mark.usefixtures("machine_on_phone")
def test_damaged_image_is_mended_when_there_is_a_server(page: Page, phone: Phone) -> None:
    wait_until_ready(page)
    assert page.evaluate(DAMAGE, "core.pages.bin") > 0
    page.reload()
    wait_until_ready(page)
    assert_started(page, "plain", failed=1)
    page.reload()
    wait_until_ready(page)
    assert_started(page, "image")
    phone.problems.clear()


@pytest.mark.usefixtures("machine_on_phone")
@pytest.mark.parametrize("file", ["pyodide.asm.wasm", "pyodide.asm.mjs"])
def test_damaged_runtime_ends_the_start_at_once(phone: Phone, server: Server, file: str) -> None:
    page = phone.start()
    page.goto(server.address)
    assert page.evaluate(DAMAGE, file) > 0
    server.kill()
    page.reload()
    expect(page.get_by_text("The calculator did not start")).to_be_visible()
    expect(page.get_by_role("link", name="Wheel lathe")).to_be_visible()
    phone.problems.clear()
