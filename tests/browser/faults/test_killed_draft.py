"""SIGKILL right after the last key: what was typed and not saved stands there again."""

import json
import sys
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from tests.browser.faults.saving import end_by_kill
from tests.browser.files import start_at
from tests.browser.phone import Phone, heading
from tests.browser.server import Server
from tests.browser.stored import about, put_about
from tests.browser.walk import field, open_machine, press, start_check

pytestmark = [
    pytest.mark.skipif(sys.platform != "linux", reason="needs /proc"),
    pytest.mark.usefixtures("machine_on_phone"),
]
# From the last key to the end of the browser: a fraction of a second.
TYPED_MS = 300
# A start that waited for its whole time would take longer.
COPIES_NEVER_COME = """
(() => {
  const getAll = IDBObjectStore.prototype.getAll;
  IDBObjectStore.prototype.getAll = function (range, ...rest) {
    const request = getAll.call(this, range, ...rest);
    if (String(range?.lower).startsWith("draft."))
      request.addEventListener("success", (event) => event.stopImmediatePropagation());
    return request;
  };
})();
"""


def _walk_copy(page: Page) -> tuple[str, dict[str, Any]]:
    """The name and the second copy of the check under way."""
    machine = page.url.split("/machines/")[1].split("/")[0]
    name = f"draft.walk.{machine}"
    return name, json.loads(about(page, name) or "null")


def test_the_last_digit_and_the_last_word_outlast_a_kill(
    phone: Phone, server: Server, tmp_path: Path
) -> None:
    page = phone.start()
    page.goto(server.address)
    start_at(page, "tell")
    field(page, "Note").fill("Way covers drip on the lef")
    page.wait_for_timeout(TYPED_MS)
    field(page, "Note").press_sequentially("t")
    start_at(page)
    open_machine(page)
    start_check(page)
    for key in "342":
        press(page, key)
    expect(field(page, "How deep")).to_have_value("342")
    place = page.url
    page.wait_for_timeout(TYPED_MS)
    # To read it is to wait for its write: on a busy machine that takes longer than a hand does.
    assert _walk_copy(page)[1]["draft"]["dip"] == "342"
    end_by_kill(phone, tmp_path / "profile")

    page = phone.start()
    page.goto(place)
    expect(field(page, "How deep")).to_have_value("342")
    start_at(page, "tell")
    expect(field(page, "Note")).to_have_value("Way covers drip on the left")


def test_the_later_copy_counts_and_a_start_does_not_wait_for_it(page: Page) -> None:
    open_machine(page)
    start_check(page)
    field(page, "How deep").fill("342")
    page.wait_for_timeout(TYPED_MS)
    name, copy = _walk_copy(page)
    assert copy["draft"]["dip"] == "342"

    def reloaded_with(writes: int, draft: dict[str, Any] | None) -> None:
        put_about(page, name, json.dumps({"writes": writes, "draft": draft}))
        page.reload()
        expect(heading(page)).to_have_text("How deep is the coolant?")

    reloaded_with(copy["writes"] - 1, {**copy["draft"], "dip": "34"})
    expect(field(page, "How deep")).to_have_value("342")
    # A page that was left in the middle of a write: the browser may be killed after the next start.
    page.wait_for_timeout(TYPED_MS)
    assert _walk_copy(page) == (name, copy)
    put_about(page, name, "null")
    page.reload()
    expect(field(page, "How deep")).to_have_value("342")
    page.wait_for_timeout(TYPED_MS)
    assert _walk_copy(page) == (name, copy)
    reloaded_with(copy["writes"] + 5, {**copy["draft"], "dip": "305"})
    expect(field(page, "How deep")).to_have_value("305")
    # The next key is later than what came back.
    field(page, "How deep").fill("306")
    page.wait_for_timeout(TYPED_MS)
    assert _walk_copy(page)[1]["draft"]["dip"] == "306"
    page.reload()
    expect(field(page, "How deep")).to_have_value("306")
    # A check that is over does not come back, and its mark goes at the start after.
    reloaded_with(copy["writes"] + 100, None)
    expect(field(page, "How deep")).to_have_value("")
    page.reload()
    expect(field(page, "How deep")).to_have_value("")
    assert about(page, name) is None

    field(page, "How deep").fill("342")
    page.add_init_script(COPIES_NEVER_COME)
    page.reload()
    expect(field(page, "How deep")).to_have_value("342")
