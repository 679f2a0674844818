"""Names that are scripts: on every screen and print they are text and nothing else (F45)."""

from typing import Any

import pytest
from playwright.sync_api import Dialog, Page, expect

from tests.browser.files import start_at, take_in
from tests.browser.phone import Phone, heading, wait_until_ready
from tests.browser.server import Server
from tests.browser.stored import rows
from tests.browser.walk import check_until_recipe, next_page, press, set_up_machine
from tests.payloads import PAYLOADS
from tests.phones import Phone as Writer
from tests.phones import id_of, setup
from tests.properties.asking import ask
from tests.screens.places import ABOUT_MACHINE, OF_CHECK, OF_PHONE

# One name for the walk: it breaks out of a tag, of an attribute and of a drawing's text.
NAME = "\"'><img src=x onerror=window.hit=1></text></svg><script>hit=1</script>&amp;"
SETTLE_MS = 150
# What a name could have become. The app's own pages have no element of these kinds.
MADE = "main :is(script, iframe, img, base, meta, form, object, embed, style, math)"
HANDLERS = "[onerror], [onload], [onfocus], [ontoggle], a[href^='javascript' i]"


class Watch:
    """What must never happen on any page, counted over the whole walk."""

    def __init__(self, page: Page) -> None:
        self.page, self.dialogs = page, 0
        self.pages = self.named = 0
        page.on("dialog", self._dialog)

    def _dialog(self, dialog: Dialog) -> None:
        self.dialogs += 1
        dialog.dismiss()

    def look(self, name: str = "") -> str:
        """Checks the page as it stands now and returns its text."""
        page = self.page
        self.pages += 1
        place = page.evaluate("location.hash")
        assert page.locator(MADE).count() == 0, place
        assert page.locator(HANDLERS).count() == 0, place
        assert page.evaluate("window.hit === undefined && ({}).x === undefined"), place
        shown: str = page.locator("body").inner_text()
        parts = page.locator("svg text").all_text_contents() if name else []
        typed = page.locator("input").evaluate_all("(all) => all.map((one) => one.value)")
        self.named += bool(name) and any(name in text for text in (shown, *parts, *typed))
        return shown

    def open(self, place: str, name: str = "") -> str:
        """Goes to a place and looks at it."""
        self.page.evaluate("(place) => { location.hash = place; }", f"#/{place}")
        expect(heading(self.page)).to_be_visible()
        self.page.wait_for_timeout(SETTLE_MS)
        return self.look(name)


def machines_named_so() -> Writer:
    """A machine, a fluid, a person, a tag and a remark for each text."""
    writer = Writer("hostile names")
    for number, text in enumerate(PAYLOADS):
        machine, by = id_of(f"hostile {number}"), text[:40]
        typed = setup(text)
        typed["fluid"]["name"] = text
        shown = ask("read_machine", {"machine": typed})
        writer.save("machine_set", {"machine": typed}, number * 60, machine, by=by, shown=shown)
        note = {"text": f"note {number} {text}"}
        writer.save("note", note, number * 60 + 10, machine="", by=by)
        state = {"state": "stopped", "reason": "wrong_drum", "remarks": text}
        writer.save("machine_state", state, number * 60 + 20, machine, by=by)
    return writer


def test_every_text_is_shown_as_it_was_given(page: Page) -> None:
    expect(page.get_by_role("button", name="Add your first machine")).to_be_visible()
    page.clock.set_fixed_time("2026-11-25T14:00:00Z")
    watch, writer = Watch(page), machines_named_so()
    take_in(page, writer.export(), len(writer.lines))
    start_at(page)
    expect(page.locator(".machine-row")).to_have_count(len(PAYLOADS))
    watch.look()
    assert set(page.locator(".machine-name").all_text_contents()) == set(PAYLOADS)
    wait_until_ready(page)
    watch.open("handover")
    # pycore looks through the log first.
    expect(page.get_by_role("main")).to_contain_text(f"note {len(PAYLOADS) - 1} ")
    shift = watch.look()
    watch.open("log")
    page.get_by_role("button", name="older").click()
    expect(page.locator(".log-row")).to_have_count(len(writer.lines))
    log = watch.look()
    for number, text in enumerate(PAYLOADS):
        assert text in watch.open(f"machines/{id_of(f'hostile {number}')}"), text
        assert f"note {number} {text}" in log
        assert text in shift
    assert watch.dialogs == 0
    print(f"F45: {len(PAYLOADS)} texts on {watch.pages} pages, 0 dialogs")


def _set_up(page: Page) -> str:
    """The machine and fluid of that name, through the form; its place."""
    typed = {"Name of the machine": NAME, "Name of the concentrate": NAME}
    set_up_machine(page, typed)
    press(page, "Back")
    wait_until_ready(page)
    page.locator(".machine-row").click()
    expect(heading(page)).to_have_text(NAME)
    place: str = page.url.split("#/")[1]
    return place


def test_every_screen_of_a_machine_named_so(phone: Phone, server: Server) -> None:
    page = phone.start()
    page.add_init_script(
        """localStorage.setItem("pailwright.name", JSON.stringify("<b>hit</b>"));"""
    )
    page.goto(server.address)
    assert len(NAME) <= 80
    watch = Watch(page)
    machine = _set_up(page)
    check_until_recipe(page)
    for place in [*OF_CHECK, *ABOUT_MACHINE]:
        watch.open(f"{machine}/{place}", NAME)
    watch.open(f"{machine}/recipe", NAME)
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    watch.look(NAME)
    next_page(page, "Start pouring")
    watch.look(NAME)
    for place in ("pour/stop", "recheck", "print/machine_card", "trend", ""):
        watch.open(f"{machine}/{place}".rstrip("/"), NAME)
    for place in ["", *OF_PHONE, "log"]:
        watch.open(place, NAME)
    stored: list[dict[str, Any]] = rows(page)
    for row in stored:
        watch.open(f"log/{row['id']}", NAME)
        watch.open(f"log/{row['id']}/slip", NAME)
    for place in ("machine_card", "dip_scale", "log_sheet"):
        watch.open(f"{machine}/print/{place}")
        expect(page.locator(".sheet svg").first).to_be_visible()
        shown = "".join(page.locator("svg text").all_text_contents())
        assert "<img src=x" in shown or place != "machine_card", shown
        watch.look(NAME)
    print(f"F45: {watch.pages} screens, the name on {watch.named} of them, {watch.dialogs} dialogs")
    assert watch.dialogs == 0
    assert watch.named > len(OF_CHECK)


@pytest.mark.parametrize("fragment", ["#m=", "#/machines/", "#/log/", "#/code/", "#/learn/"])
def test_a_link_that_is_a_script(page: Page, fragment: str) -> None:
    watch = Watch(page)
    home = page.url.split("#")[0]
    for text in PAYLOADS:
        page.evaluate("(to) => { location.hash = to; }", fragment + text)
        expect(heading(page)).to_be_visible()
        watch.look()
        assert page.url.split("#")[0] == home
    assert watch.dialogs == 0
    assert rows(page) == []
