"""Look and smell before anything is added: ticks, advice, the choice, and what the log keeps."""

import json
import re
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from tests.browser.looking import Look
from tests.browser.phone import Phone, Theme, heading
from tests.browser.server import Server
from tests.browser.stored import folded, rows
from tests.browser.walk import check_until_recipe, field, next_page, open_machine, press


def tick(page: Page, name: str) -> None:
    """Ticks one row of the list, where a finger does: the drawn box lies over the real one."""
    box = page.get_by_role("checkbox", name=name)
    page.locator("label").filter(has=box).click()
    expect(box).to_be_checked()


def looked(page: Page, *names: str) -> None:
    """From an empty phone to the advice about what was seen."""
    open_machine(page)
    press(page, "Start a check")
    expect(heading(page)).to_have_text("Look and smell first")
    for name in names:
        tick(page, name)
    next_page(page)


def finish_check(page: Page) -> dict[str, Any]:
    """From the dip to the stored check."""
    for name, text, answer in (
        ("How deep", "342", "Hard floor"),
        ("What does the reading", "4.0", "Sharp line"),
    ):
        field(page, name).fill(text)
        next_page(page)
        page.get_by_role("button", name=re.compile(answer)).click()
    expect(heading(page)).to_have_text("Where should it be?")
    next_page(page)
    next_page(page, "Work out the recipe")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    (check,) = (e for e in (json.loads(r["text"]) for r in rows(page)) if e["kind"] == "check")
    return dict(check)


@pytest.mark.usefixtures("machine_on_phone")
def test_nothing_unusual_is_one_tap_and_recorded(page: Page) -> None:
    open_machine(page)
    press(page, "Start a check")
    press(page, "Nothing unusual")
    check = finish_check(page)
    assert check["body"]["look"] == ["normal"]
    assert check["shown"]["look"] == {"chosen": "went_on"}
    assert folded(page)["checked"]["entry"] == check["id"]


@pytest.mark.usefixtures("machine_on_phone")
def test_oil_is_skimmed_first_and_the_check_says_so(page: Page) -> None:
    looked(page, "Oil floats on it", "Chips or sludge in it")
    expect(heading(page)).to_have_text("Skim first")
    expect(page.get_by_role("main")).to_contain_text(re.compile("DGUV Regel 109.003"))
    press(page, "Skimmed, go on")
    check = finish_check(page)
    assert check["body"]["look"] == ["floating_oil", "chips_or_sludge"]
    assert check["shown"]["look"]["chosen"] == "done_first"
    assert check["shown"]["look"]["decision"] == "skim_first"
    assert folded(page)["checked"]["entry"] == check["id"]


@pytest.mark.usefixtures("machine_on_phone")
def test_a_dead_coolant_is_not_fed_and_nobody_is_locked_out(page: Page) -> None:
    looked(page, "Split: oil and water apart")
    expect(heading(page)).to_have_text("Do not feed it")
    expect(page.get_by_role("main")).to_contain_text("bleach, household disinfectant")
    press(page, "Go on all the same")
    check = finish_check(page)
    assert check["shown"]["look"]["chosen"] == "all_the_same"
    assert check["shown"]["look"]["decision"] == "do_not_feed"
    page.get_by_role("link", name="Open the log").click()
    page.locator(".log-row").first.click()
    rows_of = page.locator("dl").first
    expect(rows_of).to_contain_text("AdviceDo not feed it")
    expect(rows_of).to_contain_text("ThenWent on all the same")


@pytest.mark.usefixtures("machine_on_phone")
def test_stopping_is_saved_and_stands_first(page: Page) -> None:
    looked(page, "Grey, brown or black")
    press(page, "Record it and stop here")
    expect(heading(page)).to_have_text("Saved to the log")
    (check,) = (e for e in (json.loads(r["text"]) for r in rows(page)) if e["kind"] == "check")
    assert check["body"]["look"] == ["grey_or_brown"]
    assert check["shown"]["look"]["chosen"] == "stopped"
    assert folded(page)["checked"]["entry"] == check["id"]
    press(page, "Back to the machines")
    row = page.get_by_role("link", name="Wheel lathe")
    expect(row).to_contain_text("Do not feed it")
    row.click()
    expect(page.get_by_role("main")).to_contain_text("Grey, brown or black")
    page.get_by_role("link", name="Open the log").click()
    expect(page.get_by_role("main")).to_contain_text("Looked at: Grey, brown or black")


def entry_of_check(page: Page) -> None:
    """The check that follows a look, saved, as the log has it."""
    page.goto(page.url.split("#")[0])
    open_machine(page)
    check_until_recipe(page)
    press(page, "Save to the log")
    page.get_by_role("link", name="Open this entry").click()


@pytest.mark.usefixtures("machine_on_phone")
def test_a_bad_smell_is_smelled_again(page: Page) -> None:
    looked(page, "Smells bad")
    expect(heading(page)).to_have_text("Check first, then add")
    press(page, "It still smells")
    expect(heading(page)).to_have_text("Do not feed it")
    page.go_back()
    expect(heading(page)).to_have_text("Look and smell first")
    page.get_by_role("checkbox", name="Smells bad").uncheck(force=True)
    tick(page, "Smells bad")
    next_page(page)
    press(page, "The smell has gone")
    expect(heading(page)).to_have_text("Go on")
    press(page, "Go on with the dip")
    entry_of_check(page)
    # The log only said that it smelled bad.
    expect(page.get_by_role("main")).to_contain_text("The smell has gone")


@pytest.mark.usefixtures("machine_on_phone")
def test_a_smell_that_has_gone_hides_no_other_advice(page: Page) -> None:
    looked(page, "Smells bad", "Oil floats on it")
    press(page, "The smell has gone")
    press(page, "Skimmed, go on")
    entry_of_check(page)
    main = page.get_by_role("main")
    expect(main).to_contain_text("The smell has gone")
    # The row of the smell stood in its place.
    expect(main).to_contain_text("Skim first")


@pytest.mark.usefixtures("machine_on_phone")
def test_measures_and_the_limits_of_the_shop(page: Page) -> None:
    open_machine(page)
    press(page, "Start a check")
    page.get_by_role("link", name="I measured").click()
    page.get_by_role("textbox", name="pH", exact=True).fill("8.2")
    press(page, "Continue")
    expect(heading(page)).to_have_text("Look and smell first")
    next_page(page)
    expect(heading(page)).to_have_text("Check first, then add")
    expect(page.get_by_role("main")).to_contain_text("GISCHEM")
    page.get_by_role("link", name="Limits of this shop").click()
    expect(heading(page)).to_have_text("Limits of this shop")
    field(page, "pH, low below").fill("high")
    press(page, "Save to the log")
    expect(page.get_by_role("alert")).to_contain_text("must be a number")
    field(page, "pH, low below").fill("8,0")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Go on")


@pytest.mark.usefixtures("machine_on_phone")
def test_limits_of_another_build_that_contradict_each_other_can_be_mended(page: Page) -> None:
    open_machine(page)
    # The way in past the form: what stood on the phone goes into the log as it was.
    old = {"ph_low": {"text": "10", "unit": "1"}}
    page.evaluate("(old) => localStorage.setItem('pailwright.limits', JSON.stringify(old))", old)
    page.reload()
    press(page, "Start a check")
    page.get_by_role("link", name="I measured").click()
    page.get_by_role("textbox", name="pH", exact=True).fill("9.0")
    expect(page.get_by_role("alert")).to_contain_text("limits of this shop cannot be used")
    press(page, "Continue")
    expect(heading(page)).to_have_text("Look and smell first")
    press(page, "Continue")
    expect(page.get_by_role("alert")).to_contain_text("less than 9.8. You typed “10”")
    page.get_by_role("link", name="Limits of this shop").click()
    low, high = field(page, "pH, low below"), field(page, "pH, high above")
    expect(low).to_have_value("10")
    low.fill("")
    high.fill("8.5")
    press(page, "Save to the log")
    # At the field that was typed.
    expect(high).to_have_attribute("aria-invalid", "true")
    expect(page.get_by_role("alert")).to_contain_text("more than 8.5")
    high.fill("9.0")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Go on")


@pytest.mark.usefixtures("machine_on_phone")
@pytest.mark.parametrize("theme", ["light", "dark"])
def test_pages(phone: Phone, server: Server, theme: Theme) -> None:
    page = phone.start(theme)
    page.goto(server.address)
    open_machine(page)
    press(page, "Start a check")
    expect(heading(page)).to_have_text("Look and smell first")
    look = Look(f"{theme}-look")
    look(page)
    page.get_by_role("link", name="I measured").click()
    expect(heading(page)).to_have_text("What did you measure?")
    look(page)
    page.go_back()
    expect(heading(page)).to_have_text("Look and smell first")
    tick(page, "Foam")
    tick(page, "Smells bad")
    next_page(page)
    look(page)
    press(page, "It still smells")
    expect(heading(page)).to_have_text("Do not feed it")
    look(page)
    page.get_by_role("link", name="Limits of this shop").click()
    expect(heading(page)).to_have_text("Limits of this shop")
    look(page)
    assert len(look.seen) == 5
    assert look.wrong == []
