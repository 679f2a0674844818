"""A mishap and the hold tag: reached in one tap, written down, seen first, taken off."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.files import start_at
from tests.browser.looking import Look
from tests.browser.phone import Phone, Theme, heading
from tests.browser.server import Server
from tests.browser.stored import entries, folded
from tests.browser.walk import (
    check_until_recipe,
    field,
    leave,
    on_machine,
    open_machine,
    press,
    save_check,
)


def went_wrong(page: Page, what: str) -> None:
    """From a page with the link to the advice about it."""
    page.get_by_role("link", name="Something went wrong").click()
    expect(heading(page)).to_have_text("Something went wrong")
    page.get_by_role("link", name=what).click()
    expect(heading(page)).to_have_text(what)
    expect(page.get_by_role("heading", name="Stop first")).to_be_visible()


def hang_tag(page: Page) -> None:
    """From the machine's page to a tag that hangs."""
    page.get_by_role("link", name="Write something down").click()
    page.get_by_role("link", name="Hold tag").click()
    page.get_by_label("Why").select_option("lab_sample")
    page.get_by_role("radio", name="In a week").check(force=True)
    field(page, "Your name").fill("RO")
    field(page, "Remarks").fill("Sample 14 is away.")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    press(page, "Done")


@pytest.mark.usefixtures("machine_on_phone")
def test_neat_concentrate_from_the_recipe_to_the_log(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page)
    went_wrong(page, "Concentrate poured in neat")
    main = page.get_by_role("main")
    expect(main).to_contain_text("the person responsible for coolant in your shop")
    expect(main).to_contain_text("bleach, household disinfectant")
    expect(main).to_contain_text("nitrite rust inhibitor")
    expect(main).to_contain_text("Pump off is not isolated")
    expect(main).to_contain_text("common practice, no source")
    page.get_by_role("link", name="Write down who that is").click()
    field(page, "Name, function").fill("Coolant keeper, bay 3")
    press(page, "Save to the log")
    expect(main).to_contain_text("Ask Coolant keeper, bay 3.")
    press(page, "Write it down")
    expect(page.get_by_role("radio", name="On hold")).to_be_checked()
    field(page, "What happened").fill("About two jugs")
    press(page, "Save to the log")
    expect(main).to_contain_text("Write your name or initials")
    field(page, "Your name").fill("KT")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    (addition,) = entries(page, "unknown_addition")
    said = {"what": "concentrate", "remarks": "Concentrate poured in neat: About two jugs"}
    assert (addition["body"], addition["by"]) == (said, "KT")
    (state,) = entries(page, "machine_state")
    hold = {"state": "on_hold", "reason": "neat_concentrate", "remarks": "About two jugs"}
    assert state["body"] == hold
    (fact,) = entries(page, "shop_set")
    assert fact["body"] == {"who_to_ask": "Coolant keeper, bay 3"}
    assert folded(page)["state"]["by"] == "KT"
    start_at(page)
    page.get_by_role("link", name="Wheel lathe").click()
    expect(page.get_by_role("status").first).to_contain_text("About two jugs")


@pytest.mark.usefixtures("machine_on_phone")
def test_a_tag_is_seen_first_and_a_check_in_spite_of_it_says_so(page: Page) -> None:
    open_machine(page)
    hang_tag(page)
    expect(page.get_by_role("status").first).to_contain_text("On hold: waits for the laboratory")
    expect(page.get_by_role("status").first).to_contain_text("Sample 14 is away.")
    (tag,) = entries(page, "machine_state")
    assert (tag["by"], tag["body"]["state"]) == ("RO", "on_hold")
    assert tag["body"]["until"] > tag["wall"]
    press(page, "Start a check")
    expect(heading(page)).to_have_text("On hold")
    press(page, "Leave it, go back")
    expect(heading(page)).to_have_text("Wheel lathe")
    press(page, "Start a check")
    press(page, "I have seen it. Make the check")
    check_from_look(page)
    (check,) = entries(page, "check")
    assert check["body"]["despite"] == tag["id"]
    page.get_by_role("link", name="Open this entry").click()
    expect(page.get_by_role("main")).to_contain_text("Made in spite of")
    start_at(page)
    row = page.get_by_role("link", name="Wheel lathe")
    expect(row).to_contain_text("On hold: waits for the laboratory")
    start_at(page, "handover")
    expect(page.get_by_role("main")).to_contain_text("on hold: waits for the laboratory")
    expect(page.get_by_role("main")).to_contain_text("By RO.")
    start_at(page)
    row.click()
    page.get_by_role("link", name="Take the tag off").click()
    field(page, "Your name").fill("KT")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    last = entries(page, "machine_state")[-1]
    assert (last["body"], last["by"]) == ({"state": "in_use"}, "KT")
    press(page, "Done")
    expect(page.get_by_role("link", name="Take the tag off")).to_have_count(0)


def check_from_look(page: Page) -> None:
    """From the look to the stored check, a dip alone."""
    press(page, "Nothing unusual")
    field(page, "How deep").fill("342")
    press(page, "Continue")
    page.get_by_role("button", name="Hard floor").click()
    press(page, "Read later")
    field(page, "What is the usual mix").fill("3")
    press(page, "Continue")
    expect(heading(page)).to_have_text("Fill up, read later")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")


@pytest.mark.usefixtures("machine_on_phone")
@pytest.mark.parametrize("theme", ["light", "dark"])
def test_pages(phone: Phone, server: Server, theme: Theme) -> None:
    page = on_machine(phone, server, theme)
    look = Look(f"{theme}-mishap")
    check_until_recipe(page)
    save_check(page)
    open_machine(page)
    look(page)
    leave(page, page.get_by_role("link", name="Something went wrong"))
    look(page)
    page.get_by_role("link", name="Overfilled").click()
    expect(page.get_by_role("heading", name="Stop first")).to_be_visible()
    look(page)
    press(page, "Write it down")
    expect(page.get_by_role("radio", name="On hold")).to_be_checked()
    look(page)
    start_at(page, "who")
    look(page)
    start_at(page)
    open_machine(page)
    page.get_by_role("link", name="Write something down").click()
    leave(page, page.get_by_role("link", name="Hold tag"))
    look(page)
    page.go_back()
    page.go_back()
    hang_tag(page)
    Look(f"{theme}-mishap-held")(page)
    leave(page, page.get_by_role("button", name="Start a check", exact=True))
    look(page)
    start_at(page)
    look(page)
    start_at(page, "handover")
    expect(page.get_by_role("main")).to_contain_text("By RO.")
    look(page)
    page.go_back()
    page.get_by_role("link", name="Wheel lathe").click()
    leave(page, page.get_by_role("link", name="Take the tag off"))
    look(page)
    assert look.wrong == []
    assert len(look.seen) >= 9
