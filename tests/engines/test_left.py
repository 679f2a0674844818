"""A page of WebKit that is left in the middle of a save leaves the log to the next page."""

import pytest

from tests.browser.server import Server
from tests.engines.hand import Engine, Hand

TYPE = """
const box = document.querySelector("#told-text");
if (box === null) return "";
box.value = TEXT;
box.dispatchEvent(new Event("input", { bubbles: true }));
return "typed";
"""
# The browser keeps the page as it stands, to show it at once when somebody goes back.
SAVE_AND_LEAVE = """
document.querySelector(".main-action").click();
setTimeout(() => location.assign("about:blank"), Number(AFTER_MS));
return "pressed";
"""
IS_LEFT = "return location.href === 'about:blank' ? 'yes' : '';"


@pytest.mark.parametrize("engine", ["webkit"], indirect=True)
def test_left_while_saving(engine: Engine, server: Server, backup_of_chromium: str) -> None:
    hand = Hand(engine)
    engine.goto(f"{server.address}#/take-in")
    hand.offer(backup_of_chromium)
    hand.press("Add 1 entry")
    hand.wait_for("1 entry was added.")
    for after_ms in (0, 5, 20, 60, 150):
        engine.goto(f"{server.address}#/tell")
        hand.until(TYPE, "no field for a note", TEXT=f"left after {after_ms} ms")
        hand.do(SAVE_AND_LEAVE, AFTER_MS=str(after_ms))
        hand.until(IS_LEFT, "the page was not left")
        # The next page reads the log, and writes to it.
        engine.goto(f"{server.address}#/log")
        hand.wait_for("Wheel lathe")
        engine.goto(f"{server.address}#/tell")
        hand.until(TYPE, "no field for a note", TEXT=f"written after {after_ms} ms")
        hand.press("Save to the log")
        hand.wait_for_heading("Saved to the log")
        engine.goto(f"{server.address}#/log")
        hand.wait_for(f"written after {after_ms} ms")
        assert hand.text_of_page().count(f"written after {after_ms} ms") == 1
