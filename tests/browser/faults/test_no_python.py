"""Python that cannot start, dies or answers late; never a wait without a word (F33 to F35)."""

import time
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from tests.browser.faults.host import Host
from tests.browser.phone import Phone, heading, wait_until_ready
from tests.browser.server import Server
from tests.browser.walk import (
    check_until_recipe,
    field,
    next_page,
    open_machine,
    pass_since,
    press,
    set_up_machine,
    start_check,
)
from web.build.headers import policy

TROUBLE = "The calculator did not start"
MOST_S = 30
WITHOUT_WASM = policy().replace(" 'wasm-unsafe-eval'", "")
WITHOUT_FETCH = policy().replace("connect-src 'self'", "connect-src 'none'")
RUNTIME = ["pyodide.asm.mjs", "pyodide.asm.wasm"]


def script(site: Path, kind: str) -> str:
    """The one script of a kind in the build, by its name on the host."""
    (path,) = (site / "assets").glob(f"{kind}-*.js")
    return path.relative_to(site).as_posix()


def python_file(site: Path, name: str) -> str:
    """One of the Python files, by its name on the host."""
    (path,) = site.glob(f"py-*/{name}")
    return path.relative_to(site).as_posix()


def assert_told_and_mended(page: Page, host: Host, what: str) -> None:
    """Said within 30 s; after the fault is gone one press starts Python; the log never stopped."""
    started_s = time.perf_counter()
    page.goto(host.address)
    expect(page.get_by_text(TROUBLE)).to_be_visible()
    took_s = time.perf_counter() - started_s
    print(f"{what}: told after {took_s:.1f} s")
    assert took_s < MOST_S
    expect(page.get_by_role("button", name="Add your first machine")).to_be_visible()
    host.fail()
    page.get_by_role("button", name="Try again").click()
    expect(page.get_by_text(TROUBLE)).to_have_count(0)
    set_up_machine(page)
    check_until_recipe(page)


@pytest.mark.parametrize("name", RUNTIME)
def test_a_missing_file_of_the_runtime(
    loud_phone: Phone, host: Host, site: Path, name: str
) -> None:
    host.fail(lost=[python_file(site, name)])
    assert_told_and_mended(loud_phone.start(), host, name)


@pytest.mark.parametrize("sent", [WITHOUT_WASM, WITHOUT_FETCH], ids=["no wasm", "no fetch"])
def test_a_policy_that_forbids_too_much(
    loud_phone: Phone, host: Host, site: Path, sent: str
) -> None:
    # The worker obeys the headers of its own script, not those of the page.
    header = {"Content-Security-Policy": sent, "Cache-Control": "no-store"}
    host.fail(headers={script(site, "worker"): header})
    assert_told_and_mended(loud_phone.start(), host, "policy")


# Between page and worker: the next question is lost, or its reply is held back.
BETWEEN = """
globalThis.between = { lose: false, hold_ms: 0 };
const post = Worker.prototype.postMessage;
Worker.prototype.postMessage = function (message, ...rest) {
  const text = JSON.stringify(message ?? null);
  if (between.lose && text.includes("assess_sump")) { between.lose = false; return; }
  return post.call(this, message, ...rest);
};
const listen = Worker.prototype.addEventListener;
Worker.prototype.addEventListener = function (type, heard, options) {
  if (type !== "message") return listen.call(this, type, heard, options);
  return listen.call(this, type, (event) => {
    const wait_ms = between.hold_ms;
    between.hold_ms = 0;
    if (wait_ms > 0) setTimeout(() => heard(event), wait_ms);
    else heard(event);
  }, options);
};
globalThis.seen = [];
const look = () => {
  const found = /= ([0-9.]+)\\sL/.exec(document.body?.innerText ?? "")?.[1];
  if (found !== undefined && seen.at(-1) !== found) seen.push(found);
};
const all = { childList: true, subtree: true, characterData: true };
new MutationObserver(look).observe(document, all);
"""


def at_dip(phone: Phone, server: Server) -> Page:
    """The dip's page of the machine, Python ready."""
    page = phone.start()
    page.context.add_init_script(BETWEEN)
    page.goto(server.address)
    open_machine(page)
    start_check(page)
    expect(field(page, "How deep")).to_be_visible()
    page.evaluate("seen.length = 0")
    return page


@pytest.mark.usefixtures("machine_on_phone")
def test_a_late_reply_never_stands_beside_another_question(phone: Phone, server: Server) -> None:
    page = at_dip(phone, server)
    page.evaluate("between.hold_ms = 2000")
    field(page, "How deep").fill("342")
    page.wait_for_timeout(300)
    field(page, "How deep").fill("300")
    expect(page.get_by_text("= 135 L")).to_be_visible()
    page.wait_for_timeout(500)
    assert page.evaluate("seen") == ["135"]


def continue_held_back(page: Page) -> None:
    """Presses Continue at a good dip; what Python says of it is held back for a while."""
    field(page, "How deep").fill("342")
    expect(page.get_by_text("= 154 L")).to_be_visible()
    page.evaluate("between.hold_ms = 1500")
    press(page, "Continue")


@pytest.mark.usefixtures("machine_on_phone")
def test_a_page_that_was_left_does_not_go_on(phone: Phone, server: Server) -> None:
    page = at_dip(phone, server)
    continue_held_back(page)
    page.get_by_role("button", name="Back").click()
    expect(field(page, "How deep")).to_have_count(0)
    place = page.url
    page.wait_for_timeout(2_500)
    assert page.url == place


@pytest.mark.usefixtures("machine_on_phone")
def test_a_digit_that_came_after_continue_is_looked_at(phone: Phone, server: Server) -> None:
    page = at_dip(phone, server)
    continue_held_back(page)
    field(page, "How deep").fill("3420")
    page.wait_for_timeout(2_500)
    expect(field(page, "How deep")).to_have_value("3420")
    press(page, "Continue")
    expect(page.get_by_role("alert")).to_contain_text("3420")


@pytest.mark.usefixtures("machine_on_phone")
def test_continue_pressed_twice_is_no_leave_to_go_on(phone: Phone, server: Server) -> None:
    """The second press dropped the first one's question, and that passed for "cannot answer"."""
    page = at_dip(phone, server)
    field(page, "How deep").fill("342")
    next_page(page)
    page.get_by_role("button", name="Hard floor").click()
    pass_since(page)
    field(page, "What does the reading").fill("99")
    # Until the question that is asked while somebody types is answered.
    page.wait_for_timeout(500)
    page.evaluate("between.hold_ms = 2500")
    press(page, "Continue")
    # A second press within a second is none.
    page.wait_for_timeout(1_100)
    press(page, "Continue")
    expect(page.get_by_role("alert")).to_contain_text("99")
    expect(field(page, "What does the reading")).to_have_value("99")


@pytest.mark.usefixtures("machine_on_phone")
def test_a_question_that_is_never_answered_ends_and_a_new_worker_answers(
    phone: Phone, server: Server
) -> None:
    page = at_dip(phone, server)
    started_s = time.perf_counter()
    page.evaluate("between.lose = true")
    field(page, "How deep").fill("342")
    page.wait_for_timeout(10_500)
    field(page, "How deep").fill("300")
    expect(page.get_by_text("= 135 L")).to_be_visible()
    print(f"answered again {time.perf_counter() - started_s:.1f} s after the lost question")
    field(page, "How deep").fill("342")
    expect(page.get_by_text("= 154 L")).to_be_visible()
    expect(heading(page)).to_be_visible()
    page.goto(server.address)
    wait_until_ready(page)
