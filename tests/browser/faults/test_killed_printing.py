"""SIGKILL on a page that prints: the texts that were typed there stand there again."""

import json
import sys
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from tests.browser.faults.saving import end_by_kill
from tests.browser.files import start_at
from tests.browser.phone import Phone
from tests.browser.server import Server
from tests.browser.stored import about, put_about
from tests.browser.walk import field, open_machine

pytestmark = [
    pytest.mark.skipif(sys.platform != "linux", reason="needs /proc"),
    pytest.mark.usefixtures("machine_on_phone"),
]
# From the last key to the end of the browser: a fraction of a second.
TYPED_MS = 300


def test_circuit_and_paper_outlast_a_kill(phone: Phone, server: Server, tmp_path: Path) -> None:
    page = phone.start()
    page.goto(server.address)
    open_machine(page)
    start_at(page, "machines", page.url.split("/machines/")[1], "print", "machine_card")
    place = page.url
    page.get_by_label("Paper").select_option("Letter")
    field(page, "Whole circuit").press_sequentially("230")
    page.wait_for_timeout(TYPED_MS)
    # To read it is to wait for its write: on a busy machine that takes longer than a hand does.
    assert json.loads(about(page, "draft.print.paper") or "")["draft"] == {"text": "Letter"}
    end_by_kill(phone, tmp_path / "profile")

    page = phone.start()
    page.goto(place)
    expect(field(page, "Whole circuit")).to_have_value("230")
    expect(page.get_by_label("Paper")).to_have_value("Letter")


def test_what_a_start_recalls_is_seen_at_once(page: Page) -> None:
    """Paper and line are read when the screens begin, before the copies were looked at."""
    open_machine(page)
    start_at(page, "print", "log_sheet")
    expect(page.get_by_label("Paper")).to_have_value("A4")
    line = {"writes": 1, "draft": {"text": "98", "passes": False}}
    put_about(page, "draft.print.line.Letter", json.dumps(line))
    put_about(page, "draft.print.paper", json.dumps({"writes": 1, "draft": {"text": "Letter"}}))
    page.reload()
    expect(page.get_by_label("Paper")).to_have_value("Letter")
    expect(page.get_by_text("Without correction your line came out 98")).to_be_visible()
    # A text of an older build, without a count.
    page.evaluate("() => { localStorage.setItem('pailwright.draft.print.paper', '\"A4\"'); }")
    put_about(page, "draft.print.paper", "null")
    page.reload()
    expect(page.get_by_label("Paper")).to_have_value("A4")
    page.get_by_label("Paper").select_option("Letter")
    page.wait_for_timeout(TYPED_MS)
    assert json.loads(about(page, "draft.print.paper") or "")["draft"] == {"text": "Letter"}
