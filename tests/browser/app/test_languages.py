"""The app in German: a check with a decimal comma, and another language in the middle of one."""

import re

import pytest
from playwright.sync_api import Page, expect

from tests.browser.phone import Phone, Theme, heading, picture
from tests.browser.server import Server
from tests.browser.walk import check_until_recipe, field, next_page, open_machine, press

MACHINE = "Wheel lathe"
NARROW = {"width": 320, "height": 568}
PHONE = {"width": 360, "height": 640}


def look(page: Page, name: str, theme: Theme) -> None:
    """A picture at 360 px, and no sideways scrolling there and at 320 px."""
    for size in (NARROW, PHONE):
        page.set_viewport_size(size)  # type: ignore[arg-type]
        wide = page.evaluate("document.documentElement.scrollWidth")
        assert wide <= size["width"], f"{name} is {wide} px wide on {size['width']}"
    picture(page, f"german-{name}-{theme}")


def ready(page: Page) -> None:
    expect(page.get_by_text(re.compile("^(Bereit|Läuft) ohne Internet$")).first).to_be_visible()


def keys(page: Page, text: str) -> None:
    """Types on the keypad of the page."""
    for sign in text:
        name = "Dezimalzeichen" if sign == "," else sign
        page.get_by_role("button", name=name, exact=True).click()


def amounts(page: Page) -> list[str]:
    """Every number of the page, its decimal sign a point."""
    found = re.findall(r"\d+(?:[.,]\d+)?", page.get_by_role("main").inner_text())
    return [number.replace(",", ".") for number in found]


@pytest.mark.usefixtures("machine_on_phone")
@pytest.mark.parametrize("theme", ["light", "dark"])
def test_check_in_german_with_a_decimal_comma(phone: Phone, server: Server, theme: Theme) -> None:
    page = phone.start(theme, locale="de-DE")
    page.goto(server.address)
    ready(page)
    assert page.evaluate("document.documentElement.lang") == "de-DE"
    look(page, "01-machines", theme)
    page.get_by_role("link", name=MACHINE).click()
    expect(heading(page)).to_have_text(MACHINE)
    look(page, "02-machine", theme)
    next_page(page, "Prüfung beginnen")
    look(page, "03-look", theme)
    next_page(page, "Nichts Ungewöhnliches")
    keys(page, "342")
    expect(page.get_by_text("154 L")).to_be_visible()
    look(page, "04-dip", theme)
    next_page(page, "Weiter")
    page.get_by_role("button", name=re.compile("Harter Boden")).click()
    expect(heading(page)).to_have_text("Was zeigt das Gerät?")
    assert page.get_by_role("button", name="Dezimalzeichen").inner_text() == ","
    keys(page, "4,0")
    expect(field(page, "Was zeigt das Gerät")).to_have_value("4,0")
    expect(page.get_by_text("4,0 × Faktor 1,5")).to_be_visible()
    look(page, "05-reading", theme)
    next_page(page, "Weiter")
    page.get_by_role("button", name=re.compile("Scharfe Linie")).click()
    expect(heading(page)).to_have_text("Wo soll es hin?")
    look(page, "06-target", theme)
    next_page(page, "Weiter")
    expect(page.get_by_text("4,0").first).to_be_visible()
    look(page, "07-answers", theme)
    next_page(page, "Rezept ausrechnen")
    expect(page.get_by_text(re.compile("In jeden der"))).to_be_visible()
    expect(page.get_by_text("WASSER").first).to_be_visible()
    expect(page.get_by_text("4,0 × Faktor 1,5 = 6,0")).to_be_visible()
    assert re.findall(r"\d\.\d", page.get_by_role("main").inner_text()) == []
    look(page, "08-recipe", theme)
    _pour_in_german(page, server, theme)


def _pour_in_german(page: Page, server: Server, theme: Theme) -> None:
    press(page, "Ins Prüfbuch speichern")
    expect(heading(page)).to_have_text("Im Prüfbuch gespeichert")
    look(page, "09-saved", theme)
    next_page(page, "Einfüllen beginnen")
    look(page, "11-pour-ready", theme)
    press(page, "Richtiges Fass, Handschuhe an")
    expect(page.get_by_role("button", name="Wasser ist drin")).to_be_visible()
    look(page, "12-pour", theme)
    machine = page.url.split("#/")[1].split("/pour")[0]
    for place in ("set-up/check", "set-up/pours", "set-up/dipping", "tell", "print/machine_card"):
        page.goto(f"{server.address}#/{machine}/{place}")
        expect(heading(page)).to_be_visible()
        page.wait_for_timeout(300)
        look(page, f"13-{place.replace('/', '-')}", theme)
    for place in ("log", "handover", "backup", "settings", "about", "licences", "install"):
        page.goto(f"{server.address}#/{place}")
        expect(heading(page)).to_be_visible()
        page.wait_for_timeout(300)
        look(page, f"10-{place}", theme)


SETUP = [
    "name",
    "units",
    "litres",
    "size",
    "rim",
    "fluid",
    "factor",
    "target",
    "limits",
    "source",
    "drum",
    "factor_source",
    "bucket",
    "things",
    "hidden",
    "dipping",
    "pours",
    "instrument",
    "zero",
    "metals",
    "sheet",
    "batch",
    "water",
    "jugs",
    "mixes",
    "pail",
    "allow",
    "check",
]
OF_MACHINE = ["tell", "tell/pour", "tell/additive", "tell/state", "tell/unknown", "print", "code"]
OF_MACHINE += ["print/machine_card", "print/dip_scale", "hand-over", "log"]
OF_SHOP = ["take-in", "table", "limits", "code", "print", "missing"]


@pytest.mark.usefixtures("machine_on_phone")
def test_every_page_in_german_fits_a_narrow_phone(phone: Phone, server: Server) -> None:
    page = phone.start(locale="de-DE")
    page.goto(server.address)
    ready(page)
    page.get_by_role("link", name=MACHINE).click()
    expect(heading(page)).to_have_text(MACHINE)
    machine = page.url.split("#/")[1]
    page.set_viewport_size(NARROW)  # type: ignore[arg-type]
    places = [f"{machine}/set-up/{step}" for step in SETUP]
    places += [*(f"{machine}/{part}" for part in OF_MACHINE), *OF_SHOP]
    wrong = {}
    for place in places:
        page.goto(f"{server.address}#/{place}")
        expect(heading(page)).to_be_visible()
        page.wait_for_timeout(150)
        wide = page.evaluate("document.documentElement.scrollWidth")
        holes = re.findall(r"\{\w+\}", page.locator("body").inner_text())
        if wide > NARROW["width"] or holes:
            wrong[place] = (wide, holes)
            picture(page, f"german-wrong-{place.replace('/', '-')[-20:]}")
    assert wrong == {}
    # Colony-forming units have a German sign, whatever stands in the log.
    page.goto(f"{server.address}#/limits")
    expect(page.get_by_text("KBE/mL").first).to_be_visible()
    assert "CFU" not in page.get_by_role("main").inner_text()


@pytest.mark.usefixtures("machine_on_phone")
def test_language_changes_in_the_middle_of_a_check(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page, reading="4,0")
    english = amounts(page)
    recipe = page.url
    page.evaluate("location.hash = '#/settings'")
    page.get_by_role("radio", name="Deutsch").check(force=True)
    expect(heading(page)).to_have_text("Einstellungen")
    page.goto(recipe)
    expect(page.get_by_text(re.compile("In jeden der"))).to_be_visible()
    assert amounts(page) == english
    assert page.evaluate("document.documentElement.lang").startswith("de")
    # The answer that was typed with a comma in English stands there as it was.
    page.go_back()
    page.go_back()
    page.evaluate("location.hash = location.hash.replace(/[^/]+$/, 'reading')")
    expect(field(page, "Was zeigt das Gerät")).to_have_value("4,0")
    # The choice outlives a new start, and English comes back with a point.
    page.evaluate("location.hash = '#/settings'")
    page.get_by_role("radio", name="English").check(force=True)
    expect(heading(page)).to_have_text("Settings")
    page.goto(recipe)
    expect(page.get_by_text(re.compile("In each of the"))).to_be_visible()
    assert amounts(page) == english
