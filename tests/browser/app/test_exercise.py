"""The sums that the page asks by itself once, so that the browser keeps what it has compiled."""

import time

import pytest
from playwright.sync_api import Page, expect

from tests.browser.phone import Phone, heading, wait_until_ready
from tests.browser.pouring import take_clock
from tests.browser.server import Server
from tests.browser.walk import check_until_recipe

COUNT_QUESTIONS = """
const send = Worker.prototype.postMessage;
globalThis.questions = 0;
Worker.prototype.postMessage = function (...sent) {
  globalThis.questions += 1;
  return send.apply(this, sent);
};
"""
DONE = "() => localStorage.getItem('pailwright-settings.exercised')"
LATER_MS = 25_000
QUIET_MS = 1_000
LIMIT_S = 300
# Of 400; the page itself asks a few.
MANY, FEW = 300, 60


def pass_time(page: Page) -> None:
    """Moves the page's clock to where the exercise begins; nothing may be asked just then.

    A question that is open would be told to have taken longer than an answer may.
    """
    page.wait_for_timeout(QUIET_MS)
    page.clock.fast_forward(LATER_MS)


@pytest.mark.usefixtures("machine_on_phone")
def test_exercise_is_asked_once_and_a_person_is_answered_meanwhile(
    phone: Phone, server: Server
) -> None:
    page = phone.start()
    page.goto(server.address)
    page.add_init_script(COUNT_QUESTIONS)
    take_clock(page)
    wait_until_ready(page)
    assert page.evaluate(DONE) is None
    pass_time(page)
    page.get_by_role("link", name="Wheel lathe").click()
    check_until_recipe(page)
    expect(heading(page)).to_have_text("Pour this")
    end_s = time.monotonic() + LIMIT_S
    while page.evaluate(DONE) is None and time.monotonic() < end_s:
        page.wait_for_timeout(QUIET_MS)
    assert page.evaluate(DONE) is not None
    assert page.evaluate("questions") > MANY
    page.goto(server.address)
    page.reload()
    wait_until_ready(page)
    pass_time(page)
    page.wait_for_timeout(3 * QUIET_MS)
    assert page.evaluate("questions") < FEW
