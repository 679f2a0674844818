"""A page that is left while it saves, and kept, ends what it does and saves on its return.

An event stands in for the browser here; ``tests/engines/test_left.py`` leaves a page of WebKit.
"""

import pytest
from playwright.sync_api import expect

from tests.browser.faults.faulty import type_note
from tests.browser.faults.saving import texts
from tests.browser.phone import Phone, heading
from tests.browser.server import Server
from tests.browser.walk import press

MOST_TRANSACTIONS = 20
# Leaves the page just after the transaction of a number has begun, and tells how each one ended.
HOOKS = """
const begin = IDBDatabase.prototype.transaction;
const clear = (at) => { window.left = { at, ends: [] }; };
clear(0);
window.leaveAt = clear;
IDBDatabase.prototype.transaction = function (...given) {
  const transaction = begin.apply(this, given);
  const { at, ends } = window.left;
  const number = ends.push("open");
  for (const name of ["complete", "abort"]) {
    transaction.addEventListener(name, () => { ends[number - 1] = name; });
  }
  if (number === at) queueMicrotask(() => {
    window.left.before = [...ends];
    dispatchEvent(new PageTransitionEvent("pagehide", { persisted: true }));
  });
  return transaction;
};
"""
COME_BACK = "dispatchEvent(new PageTransitionEvent('pageshow', { persisted: true }))"
UNTIL = "while (!(%s)) await new Promise((done) => setTimeout(done, 5));"
MET = "window.left.before !== undefined"
SETTLED = "!window.left.ends.includes('open')"
SAVED = "document.querySelector('h1').textContent === 'Saved to the log'"


@pytest.mark.usefixtures("machine_on_phone")
def test_left_at_each_transaction_of_a_save(phone: Phone, server: Server) -> None:
    page = phone.start()
    page.add_init_script(HOOKS)
    page.goto(server.address)
    expect(page.locator(".machine-row")).to_be_visible()
    unsaved = 0
    for number in range(1, MOST_TRANSACTIONS):
        type_note(page, f"left at {number}")
        page.evaluate(f"async () => {{ {UNTIL % SETTLED} }}")
        page.evaluate("(at) => window.leaveAt(at)", number)
        press(page, "Save to the log")
        page.evaluate(f"async () => {{ {UNTIL % f'{MET} || {SAVED}'} }}")
        page.evaluate(f"async () => {{ {UNTIL % SETTLED} }}")
        if not page.evaluate(MET):
            break
        left = page.evaluate("window.left")
        under_way = [i for i, end in enumerate(left["before"]) if end == "open"]
        assert under_way
        # Neither those nor what came after them holds the stores, whoever opens the next page.
        assert {left["ends"][i] for i in under_way} == {"abort"}
        assert set(left["ends"][number:]) <= {"abort"}
        unsaved += not page.evaluate(SAVED)
        page.evaluate(COME_BACK)
        expect(heading(page)).to_have_text("Saved to the log")
    else:
        pytest.fail("a save has more transactions than this test leaves")
    print(
        f"F62: left at {number - 1} transactions, {unsaved} before the save, each saved on return"
    )
    assert unsaved > 1
    assert texts(page) == [f"left at {n}" for n in range(1, number + 1)]
