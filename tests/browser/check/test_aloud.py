"""The pour step read aloud by a voice of the phone; without one there is no button."""

import json
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from tests.browser.phone import Phone, heading
from tests.browser.pouring import pour_after_check
from tests.browser.server import Server
from tests.browser.walk import open_machine, press

pytestmark = pytest.mark.usefixtures("machine_on_phone")

FAR = {"name": "Far", "lang": "en-GB", "localService": False}
OWN = {"name": "Own", "lang": "en-US", "localService": True}
OTHER = {"name": "Andere", "lang": "de-DE", "localService": True}
# Voices come after the page has begun, as on a phone.
SPEECH = """
(() => {
  let voices = [];
  window.said = [];
  window.silenced = 0;
  const speech = Object.assign(new EventTarget(), {
    getVoices: () => voices,
    speak: (spoken) => { window.last = spoken; window.said.push({
      text: spoken.text, lang: spoken.lang, voice: spoken.voice.name }); },
    cancel: () => { window.silenced += 1; },
  });
  Object.defineProperty(window, "speechSynthesis", { value: speech });
  window.SpeechSynthesisUtterance = class { constructor(text) { this.text = text; } };
  setTimeout(() => {
    voices = VOICES;
    speech.dispatchEvent(new Event("voiceschanged"));
  }, 50);
})();
"""


def to_pour(phone: Phone, server: Server, voices: list[dict[str, Any]]) -> Page:
    """The first bucket, on a phone with these voices."""
    page = phone.start()
    page.add_init_script(SPEECH.replace("VOICES", json.dumps(voices)))
    page.goto(server.address)
    open_machine(page)
    pour_after_check(page)
    return page


def expect_silence_after(page: Page, silenced: int) -> None:
    """Told to be silent once more: Preact cleans up after the new page is drawn, not before."""
    page.wait_for_function("before => window.silenced > before", arg=silenced)


def test_a_step_is_read_with_its_units_as_words(phone: Phone, server: Server) -> None:
    page = to_pour(phone, server, [FAR, OTHER, OWN])
    press(page, "Read aloud")
    first = "Bucket 1 of 6. Water first, up to the mark. 6 litres."
    assert page.evaluate("window.said") == [{"text": first, "lang": "en-US", "voice": "Own"}]
    expect(page.get_by_role("button", name="Stop reading")).to_be_visible()
    page.evaluate("window.last.onend()")
    expect(page.get_by_role("button", name="Read aloud")).to_be_visible()
    # The next step ends what is still said about this one.
    press(page, "Read aloud")
    silenced = page.evaluate("window.silenced")
    press(page, "Water is in")
    expect(page.get_by_role("button", name="Read aloud")).to_be_visible()
    expect_silence_after(page, silenced)
    press(page, "Read aloud")
    said = page.evaluate("window.said.at(-1).text")
    assert said == "Bucket 1 of 6. Now the concentrate, slowly. 1.2 litres."
    press(page, "Stop reading")
    expect(page.get_by_role("button", name="Read aloud")).to_be_visible()


def test_leaving_the_page_ends_the_voice(phone: Phone, server: Server) -> None:
    page = to_pour(phone, server, [OWN])
    press(page, "Read aloud")
    silenced = page.evaluate("window.silenced")
    page.get_by_role("link", name="Stop here").click()
    expect(heading(page)).to_have_text("What went in?")
    expect_silence_after(page, silenced)


def test_without_an_own_voice_there_is_no_button(phone: Phone, server: Server) -> None:
    page = to_pour(phone, server, [FAR, OTHER])
    expect(page.get_by_role("button", name="One tick for each bucket")).to_be_visible()
    page.wait_for_timeout(300)
    expect(page.get_by_role("button", name="Read aloud")).to_have_count(0)


def test_a_screen_that_may_go_dark_is_said(phone: Phone, server: Server) -> None:
    page = phone.start()
    page.add_init_script(
        "navigator.wakeLock.request = () => Promise.reject(new DOMException('no', 'NotAllowed'));"
    )
    page.goto(server.address)
    open_machine(page)
    pour_after_check(page)
    expect(page.get_by_text("Screen may go dark, your place is kept")).to_be_visible()
    expect(page.get_by_text("Screen stays on")).to_have_count(0)
