"""Settings, the app about itself, and how it gets on the home screen."""

import json

import pytest
from playwright.sync_api import Page, expect

from tests.browser.phone import heading, wait_until_ready
from tests.browser.server import Server
from tests.browser.walk import press
from web.build.paths import DIST, SHARED

LANGUAGES = sorted(path.stem for path in (SHARED / "words").glob("*.json"))


@pytest.mark.parametrize("language", LANGUAGES)
def test_manifest_in_each_language(language: str) -> None:
    manifest = json.loads((DIST / f"manifest.{language}.webmanifest").read_text(encoding="utf-8"))
    words = json.loads((SHARED / "words" / f"{language}.json").read_text(encoding="utf-8"))
    # Without an id the app is known by its start: the folder, whatever the language.
    assert (manifest["lang"], manifest["start_url"], "id" in manifest) == (language, "./", False)
    names = {short["url"]: short["name"] for short in manifest["shortcuts"]}
    assert names["./#/check"] == words["shortcut.check"]
    assert names["./#/handover"] == words["shortcut.handover"]
    # In the file that the service worker keeps, so that each works without a network.
    shelf = (DIST / "sw.js").read_text(encoding="utf-8")
    assert f"manifest.{language}.webmanifest" in shelf
    assert "licences.json" in shelf


@pytest.mark.usefixtures("machine_on_phone")
def test_theme_note_and_licences_without_a_network(page: Page, server: Server) -> None:
    wait_until_ready(page)
    page.get_by_role("link", name="Read this first").click()
    expect(heading(page)).to_have_text("Put it on the home screen")
    press(page, "Understood")
    expect(heading(page)).to_have_text("Machines")
    server.kill()
    page.get_by_role("link", name="Settings").click()
    page.get_by_role("radio", name="Dark", exact=True).check(force=True)
    dark = page.evaluate("getComputedStyle(document.body).backgroundColor")
    page.reload()
    expect(heading(page)).to_have_text("Settings")
    assert page.evaluate("getComputedStyle(document.body).backgroundColor") == dark
    expect(page.get_by_role("radio", name="Dark", exact=True)).to_be_checked()
    page.get_by_role("link", name="About this app").click()
    expect(page.get_by_text("3.14")).to_be_visible()
    page.get_by_role("link", name="Licences").click()
    page.get_by_text("preact 1").click()
    expect(page.get_by_text("Jason Miller")).to_be_visible()
    # The icon's shortcut leads to the machine that was used last.
    page.evaluate("location.hash = '#/check'")
    expect(heading(page)).to_have_text("Look and smell first")
    page.evaluate("location.hash = '#/'")
    expect(heading(page)).to_have_text("Machines")
    expect(page.get_by_role("link", name="Read this first")).to_have_count(0)
