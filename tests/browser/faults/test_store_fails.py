"""The store fails in each way that it can: what is called saved is there once, the rest is said."""

import time

import pytest
from playwright.sync_api import Page, expect

from tests.browser.faults.faulty import CLEAR, HOOKS, WITNESS, save_note, try_again, type_note
from tests.browser.faults.saving import start_saving, texts
from tests.browser.files import start_at
from tests.browser.phone import Phone, heading
from tests.browser.server import Server
from tests.browser.stored import blank_page, rows, store_as_version_1
from tests.browser.walk import field, press
from tests.phones import id_of, stored_in_schema_1

MOST_REQUESTS = 30
# After so long each window is closed; the last of them lives until it has told of a save.
DELAYS_MS = range(0, 360, 30)
LIMIT_S = 30
# A window that lets go does so in some hundredths of a second, on a busy machine in some tenths.
A_HANG_MS = 10_000


@pytest.fixture
def faulty(phone: Phone, server: Server) -> Page:
    """The app, in a browser whose store can be made to fail."""
    page = phone.start()
    page.add_init_script(HOOKS)
    page.goto(server.address)
    expect(page.locator(".machine-row")).to_be_visible()
    return page


@pytest.mark.usefixtures("machine_on_phone")
def test_a_save_that_fails_is_said_and_a_save_is_strict(faulty: Page) -> None:
    page = faulty
    type_note(page, "strict")
    assert save_note(page)
    modes = page.evaluate("window.fault.strict")
    print(f"F02: {len(modes)} write transactions, {modes.count('strict')} strict")
    assert set(modes) == {"strict"}

    for name in ("InvalidStateError", "UnknownError"):
        before = len(rows(page))
        type_note(page, f"once {name}")
        page.evaluate("(name) => Object.assign(window.fault, { refuse: name, times: 1 })", name)
        started_s = time.perf_counter()
        assert save_note(page)
        print(f"F15 {name} once: saved after {time.perf_counter() - started_s:.2f} s")
        assert len(rows(page)) == before + 1
        type_note(page, f"for ever {name}")
        page.evaluate("Object.assign(window.fault, { times: Infinity })")
        started_s = time.perf_counter()
        assert not save_note(page)
        print(f"F15 {name} for ever: NOT SAVED after {time.perf_counter() - started_s:.2f} s")
        assert field(page, "Note").input_value() == f"for ever {name}"
        try_again(page)
        assert len(rows(page)) == before + 2


@pytest.mark.usefixtures("machine_on_phone")
def test_every_request_of_a_save_aborted_in_turn(faulty: Page) -> None:
    page = faulty
    failed = 0
    for first in range(1, MOST_REQUESTS):
        before, witness = len(rows(page)), page.evaluate(WITNESS)
        type_note(page, f"abort from {first}")
        page.evaluate(CLEAR)
        page.evaluate("(first) => { window.fault.abortFrom = first; }", first)
        is_saved = save_note(page)
        met = page.evaluate("window.fault.requests") >= first
        page.evaluate(CLEAR)
        if not met:
            assert is_saved
            break
        failed += not is_saved
        if not is_saved:
            # Only a row that could not be read back may be there already; nobody was told of it.
            assert len(rows(page)) - before in (0, 1)
            assert page.evaluate(WITNESS) == witness
            try_again(page)
        assert len(rows(page)) == before + 1
        assert page.evaluate(WITNESS) == before + 1
    else:
        pytest.fail("a save has more requests than this test aborts")
    print(f"F06: {first - 1} requests of a save, {failed} saves NOT SAVED, each stored once")
    assert failed > 0
    assert [row["seq"] for row in rows(page)] == list(range(1, len(rows(page)) + 1))

    # Last, since the altered row stays: an entry is never changed.
    type_note(page, "altered")
    page.evaluate("window.fault.alter = true")
    assert not save_note(page)
    assert field(page, "Note").input_value() == "altered"
    try_again(page)
    assert texts(page)[-1] == "altered"


def told(seen: list[str]) -> set[str]:
    """The notes of which a window has said that they are saved."""
    return {text.removeprefix("saved ") for text in seen if text.startswith("saved ")}


@pytest.mark.usefixtures("machine_on_phone")
def test_a_window_closed_while_it_saves(faulty: Page, server: Server) -> None:
    seen: list[str] = []
    for delay_ms in DELAYS_MS:
        window = faulty.context.new_page()
        window.on("console", lambda said: seen.append(said.text))
        window.goto(server.address)
        expect(window.locator(".machine-row")).to_be_visible()
        start_saving(window, 100, f"closed {delay_ms}")
        window.wait_for_timeout(delay_ms)
        end_s = time.monotonic() + LIMIT_S
        while delay_ms == DELAYS_MS[-1] and not told(seen) and time.monotonic() < end_s:
            window.wait_for_timeout(DELAYS_MS.step)
        window.close()
    said = told(seen)
    stored = texts(faulty)
    print(f"F05: 12 windows closed, {len(said)} acknowledged, {len(stored)} stored")
    assert said
    assert said <= set(stored)
    assert len(stored) == len(set(stored))
    assert [row["seq"] for row in rows(faulty)] == list(range(1, len(rows(faulty)) + 1))


@pytest.mark.usefixtures("machine_on_phone")
def test_a_newer_version_and_an_older_one(faulty: Page, server: Server) -> None:
    before = rows(faulty)
    other = faulty.context.new_page()
    blank_page(other, server)
    waited_ms = other.evaluate("""
        () => new Promise((done, fail) => {
          const started = performance.now();
          const opened = indexedDB.open("pailwright", 3);
          opened.onsuccess = () => { opened.result.close(); done(performance.now() - started); };
          opened.onerror = () => fail(opened.error);
        })
    """)
    print(f"F09: the older window let go after {waited_ms:.0f} ms")
    assert waited_ms < A_HANG_MS
    type_note(faulty, "too old")
    assert not save_note(faulty)
    expect(faulty.get_by_text("written by a newer version")).to_be_visible()
    faulty.reload()
    expect(heading(faulty)).to_be_visible()
    start_at(faulty)
    expect(heading(faulty)).to_have_text("The log cannot be read")
    expect(faulty.get_by_text("written by a newer version")).to_be_visible()
    print(f"F10: {faulty.evaluate('window.deletions')} deletions")
    assert faulty.evaluate("window.deletions") == 0
    assert rows(other) == before


def test_an_old_window_that_holds_on(phone: Phone, server: Server) -> None:
    page = phone.start()
    blank_page(page, server)
    old = [
        {"seq": seq, "id": id_of(f"old {seq}"), "text": stored_in_schema_1("check", {}, seq)}
        for seq in (1, 2)
    ]
    store_as_version_1(page, id_of("log of old"), old)
    page.evaluate("""
        () => new Promise((done) => {
          const opened = indexedDB.open("pailwright", 1);
          opened.onsuccess = () => { window.held = opened.result; done(); };
        })
    """)
    window = page.context.new_page()
    started_s = time.perf_counter()
    window.goto(server.address)
    expect(window.get_by_text("Another window holds the log")).to_be_visible()
    print(f"F08: said after {time.perf_counter() - started_s:.2f} s with the start")
    page.evaluate("window.held.close()")
    press(window, "Try again")
    expect(heading(window)).to_have_text("Machines")
    assert rows(window) == old


@pytest.mark.usefixtures("machine_on_phone")
@pytest.mark.parametrize("name", ["refused", "granted", "missing"])
def test_what_the_phone_says_about_keeping(phone: Phone, server: Server, name: str) -> None:
    words = {
        "refused": "This phone may delete data when space is short.",
        "granted": "This phone has promised to keep the data.",
        "missing": "This phone does not say whether it keeps the data.",
    }
    page = phone.start()
    if name == "granted":
        browser = page.context.new_cdp_session(page)
        given = {"origin": server.address.rstrip("/"), "permissions": ["durableStorage"]}
        browser.send("Browser.grantPermissions", given)
    if name == "missing":
        page.add_init_script("Object.defineProperty(navigator, 'storage', { value: undefined });")
    page.goto(server.address)
    type_note(page, name)
    assert save_note(page)
    start_at(page, "log")
    expect(page.get_by_text(words[name])).to_be_visible()


@pytest.mark.parametrize("place", ["", "#/machines/new/name"])
def test_a_store_that_cannot_be_opened(phone: Phone, server: Server, place: str) -> None:
    page = phone.start()
    page.add_init_script("""
        IDBFactory.prototype.open = () => { throw new DOMException("no", "SecurityError"); };
    """)
    page.goto(f"{server.address}{place}")
    expect(page.get_by_text("does not allow storing")).to_be_visible()
