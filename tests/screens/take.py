"""``python -m tests.screens.take`` in the project's environment: the walk past every screen."""

import argparse
import sys
import tempfile
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import Protocol

from playwright.sync_api import Page, expect, sync_playwright

from tests.browser.phone import Phone, heading, wait_until_ready
from tests.browser.pouring import pass_rest, take_clock
from tests.browser.server import Server
from tests.browser.walk import check_until_recipe, open_machine, set_up_machine
from tests.screens.album import FOLDER, Album
from tests.screens.judge import Judge
from tests.screens.places import ABOUT_MACHINE, OF_CHECK, OF_PHONE

LANGUAGES = ("en", "de")
MOST_TICKS = 60
# Chromium's own moving picture stands for the camera, and nobody is asked about it.
CAMERA = ("--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream")


class Visitor(Protocol):
    """Who walks past the screens and does something at each."""

    language: str
    mode: str

    def take(self, page: Page, name: str) -> None: ...

    def open(self, page: Page, place: str, name: str) -> None: ...


def _onward(page: Page) -> None:
    """Presses the main action, whatever it is called in this language."""
    action = page.locator(".main-action")
    before = action.inner_text()
    action.click()
    expect(action).not_to_have_text(before)
    pass_rest(page)


def _speak(page: Page, language: str) -> None:
    """Starts the page anew in a language."""
    page.evaluate(
        "(language) => localStorage.setItem('pailwright-settings.language', language)", language
    )
    page.reload()
    expect(heading(page)).to_be_visible()


def _use(page: Page, album: Visitor, mode: str) -> None:
    """Changes language and mode of the phone, which both hold from the next start on."""
    album.mode = mode
    page.evaluate(
        "(mode) => localStorage.setItem('pailwright.mode', JSON.stringify(mode))", album.mode
    )
    _speak(page, album.language)


def _pour(page: Page, album: Visitor, machine: str) -> None:
    """From the recipe over every bucket to the second reading."""
    page.evaluate("(place) => { location.hash = place; }", f"#/{machine}/recipe")
    # After a new start the calculator takes its time.
    page.locator(".main-action").wait_for()
    album.take(page, "recipe-before-pouring")
    _onward(page)
    album.take(page, "saved")
    _onward(page)
    album.take(page, "pour-ready")
    _onward(page)
    for n in range(4):
        album.take(page, f"pour-tick-{n + 1}")
        _onward(page)
    album.open(page, f"{machine}/pour/stop", "pour-stop")
    page.evaluate("(place) => { location.hash = place; }", f"#/{machine}/pour")
    page.reload()
    album.take(page, "pour-resume")
    # The first of two equal ways: nothing was poured without a tick.
    page.locator(".two-ways button").first.click()
    for _ in range(MOST_TICKS):
        if "/done/" in page.url:
            break
        _onward(page)
    album.take(page, "pour-saved")
    for place in ("recheck", "recheck/skip"):
        album.open(page, f"{machine}/{place}", place)
    album.open(page, "log", "log-with-entries")
    album.open(page, machine, "machine-reading-due")
    album.open(page, "", "machines-reading-due")


def walk_past(
    page: Page,
    album: Visitor,
    of_machine: Sequence[str] = ABOUT_MACHINE,
    of_phone: Sequence[str] = OF_PHONE,
) -> None:
    """From the list with one machine past a check, the given places, the pour and what follows."""
    take_clock(page)
    open_machine(page)
    machine = page.url.split("#/")[1]
    check_until_recipe(page)
    _use(page, album, "guided")
    for place in ("", machine):
        album.open(page, place, place.split("/")[0] or "list")
    for place in [*OF_CHECK, *of_machine]:
        album.open(page, f"{machine}/{place}", place)
    for place in of_phone:
        album.open(page, place, place)
    _use(page, album, "compact")
    for place in (machine, f"{machine}/all"):
        album.open(page, place, place.split("/")[-1] if place.endswith("all") else "machine")
    _use(page, album, "guided")
    _pour(page, album, machine)
    _use(page, album, "compact")
    album.open(page, f"{machine}/all", "all-empty")


def put_right(page: Page, album: Visitor) -> None:
    """A check of the log is corrected and then taken back, past every page of it."""
    _use(page, album, "guided")
    page.evaluate("() => { location.hash = '#/log'; }")
    # The newest rows are of the pour; the check is the one with a state.
    page.locator(".log-row:has(.state)").last.click()
    page.locator(".places a[href*='take-back']").wait_for()
    entry = page.url.split("#/")[1]
    album.take(page, "entry")
    for place in ("correct", "correct/look", "correct/dip.depth", "correct/reading.shows"):
        album.open(page, f"{entry}/{place}", place)
    page.locator("main input").first.fill("5.3")
    album.open(page, f"{entry}/correct", "correct-changed")
    album.open(page, f"{entry}/correct/after", "correct-old-and-new")
    _onward(page)
    album.take(page, "correct-saved")
    album.open(page, entry, "entry-corrected")
    album.open(page, f"{entry}/take-back", "take-back")
    page.locator("main input[type=radio]").first.check(force=True)
    _onward(page)
    album.take(page, "take-back-saved")
    album.open(page, entry, "entry-taken-back")
    album.open(page, "log", "log-taken-back")


def _walk_all(album: Visitor, at_end: Callable[[Page], None]) -> None:
    """Past every place there is, in the visitor's language; needs the built app."""
    server = Server()
    try:
        with tempfile.TemporaryDirectory() as profile, sync_playwright() as playwright:
            phone = Phone(playwright, Path(profile))
            page = phone.start(more=CAMERA)
            page.goto(server.address)
            wait_until_ready(page)
            album.mode = "first"
            _speak(page, album.language)
            album.take(page, "list-empty")
            # The set-up finds its keys by their English words.
            _speak(page, LANGUAGES[0])
            set_up_machine(page)
            page.get_by_role("button", name="Back").click()
            walk_past(page, album)
            put_right(page, album)
            at_end(page)
            phone.close()
            print("\n".join(phone.problems))
    finally:
        server.kill()


def take(language: str) -> Album:
    """Every picture of one language and its sheets."""
    FOLDER.mkdir(parents=True, exist_ok=True)
    for old in FOLDER.glob(f"{language}-*"):
        old.unlink()
    album = Album(language)
    _walk_all(album, lambda page: print("\n".join(str(path) for path in album.sheets(page))))
    return album


def judge(language: str) -> Judge:
    """Every place of one language by axe in both themes, and as it is spoken; no pictures."""
    one = Judge(language)
    _walk_all(one, lambda _: None)
    return one


def main() -> int:
    """Takes the pictures of the wanted languages, or judges; returns the exit status."""
    parser = argparse.ArgumentParser(prog="python3 -m tests.screens")
    parser.add_argument("--language", choices=LANGUAGES, action="append", help="default: all")
    parser.add_argument("--axe", action="store_true", help="no pictures: axe and what is spoken")
    wanted = parser.parse_args()
    found = 0
    for language in wanted.language or LANGUAGES:
        seen = judge(language) if wanted.axe else take(language)
        found += len(seen.wrong)
        if isinstance(seen, Judge):
            print(seen.figures())
        print(f"{language}: {len(seen.names)} places in two themes")
        print("\n".join(seen.wrong))
        print(f"led elsewhere: {', '.join(seen.elsewhere) or 'none'}", flush=True)
    # What is measured beside a picture is for a person to judge.
    return 1 if wanted.axe and found else 0


if __name__ == "__main__":
    sys.exit(main())
