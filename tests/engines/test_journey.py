"""Install, cut the network, start cold, work out a recipe, save it, load again, take it away."""

import time
from collections.abc import Callable

from pycore.journal.file import PHONE, read_file
from tests.browser.server import Server
from tests.engines.hand import CATCH, CAUGHT, START_KINDS, Engine, Hand


def _walk(hand: Hand) -> None:
    hand.press("Start a check")
    hand.press("Nothing unusual")
    hand.fill("How deep", "342")
    hand.press("Continue")
    hand.press("Hard floor")
    hand.fill("What does the reading", "4.0")
    hand.press("Continue")
    hand.press("Sharp line")
    hand.wait_for_heading("Where should it be?")
    hand.press("Continue")
    hand.press("Work out the recipe")


class Steps:
    """Writes each step down with its seconds; ``pytest`` prints them at its end."""

    def __init__(self, engine: Engine, record: Callable[[str, object], None]) -> None:
        self._name, self._record = engine.name, record
        self._began_s = time.monotonic()

    def done(self, what: str) -> None:
        """What has been seen on the page since the last step."""
        now_s = time.monotonic()
        self._record("journey", f"{self._name:<24} {now_s - self._began_s:6.1f} s  {what}")
        self._began_s = now_s


def test_offline_journey(
    engine: Engine,
    server: Server,
    backup_of_chromium: str,
    record_property: Callable[[str, object], None],
) -> None:
    hand, steps = Hand(engine), Steps(engine, record_property)
    engine.goto(server.address)
    hand.wait_for("Ready without internet")
    assert hand.until(START_KINDS, "no start has answered") == "image"
    steps.done("first visit, until every file has been proven and Python has answered")
    engine.goto(f"{server.address}#/take-in")
    hand.offer(backup_of_chromium)
    hand.press("Add 1 entry")
    hand.wait_for("1 entry was added.")
    steps.done("the backup of another phone taken in")

    # From here on nobody serves anything.
    server.kill()
    engine.restart()
    engine.goto(server.address)
    hand.press("Wheel lathe")
    steps.done("no server, cold start, the machine opened")
    _walk(hand)
    # The same as in Chromium, and the heading stands before the numbers do.
    hand.wait_for("Pour 6 buckets.")
    assert hand.until(START_KINDS, "no start has answered") == "image"
    assert "about 8.3 %" in " ".join(hand.text_of_page().split())
    steps.done("look, dip, reading, target; a recipe of 6 buckets at 8.3 %")
    hand.press("Save to the log")
    hand.wait_for_heading("Saved to the log")
    steps.done("saved")

    engine.restart()
    engine.goto(f"{server.address}#/log")
    hand.wait_for("Wheel lathe")
    steps.done("cold start again, the entry in the log")
    engine.goto(f"{server.address}#/backup")
    hand.wait_for("The file holds")
    hand.do(CATCH)
    hand.press("Save a backup")
    file = read_file(hand.until(CAUGHT, "no file came"), PHONE)
    assert (file.findings, file.missing) == ([], 0)
    # The machine, and the check with its recipe.
    assert len(file.lines) == 2
    steps.done("the backup: 2 entries, whole, none missing")
