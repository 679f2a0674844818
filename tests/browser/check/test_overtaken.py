"""A pour that was begun, and then a newer check or a clean-out: the old rest is not poured on."""

import time

import pytest
from playwright.sync_api import Page, expect

from tests.browser.files import start_at, take_in
from tests.browser.looking import Look
from tests.browser.phone import heading
from tests.browser.pouring import pour_bucket, start_pouring
from tests.browser.stored import entries
from tests.browser.walk import check_until_recipe, open_machine, press
from tests.phones import MORNING_S, moment
from tests.phones import Phone as Writer

pytestmark = pytest.mark.usefixtures("machine_on_phone")

NEWER = "is newer than this recipe, whose numbers hold no longer"


def soon_s() -> int:
    """A time later than what this page has written, as no clock that is wrong would have it."""
    return int(time.time()) - MORNING_S + 300


def left_for_later(page: Page) -> str:
    """One bucket is in and in the log, the rest waits; the machine's id."""
    start_pouring(page)
    pour_bucket(page, 1)
    page.get_by_role("link", name="Stop here").click()
    press(page, "The rest comes later")
    expect(heading(page)).to_have_text("Saved to the log")
    (pour,) = entries(page, "pour")
    return str(pour["machine"])


def check_anew(page: Page, machine: str) -> None:
    """A check with a recipe of its own."""
    start_at(page, "machines", machine)
    check_until_recipe(page, "380", "4.5")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")


def test_the_rest_of_an_old_recipe_is_not_poured_after_a_newer_check(page: Page) -> None:
    machine = left_for_later(page)
    check_anew(page, machine)
    start_at(page)
    expect(page.get_by_role("button", name="Go on pouring")).to_have_count(0)
    page.get_by_role("link", name="Wheel lathe").first.click()
    expect(page.get_by_role("main")).to_contain_text(NEWER)
    press(page, "Close the old pour")
    expect(heading(page)).to_have_text("Nothing more of this")
    expect(page.get_by_role("button", name="Poured")).to_have_count(0)
    press(page, "Close the old pour")
    expect(heading(page)).to_have_text("What went in?")
    expect(page.get_by_role("button", name="The rest comes later")).to_have_count(0)
    # What stands in the log already is not called nothing.
    expect(page.get_by_role("heading", name="In this part")).to_be_visible()
    press(page, "That is all")
    expect(heading(page)).to_have_text("Saved to the log")
    last = entries(page, "pour")[-1]
    assert (last["body"]["pours"], last["body"]["finished"]) == ([], True)
    # The newer check has read what went in before it.
    assert "recheck_due_at" not in last["body"]
    start_at(page, "machines", machine)
    expect(page.get_by_role("main")).not_to_contain_text("buckets poured")


def test_a_clean_out_on_another_phone_ends_a_pour_under_way(page: Page) -> None:
    start_pouring(page)
    pour_bucket(page, 1)
    (plan,) = entries(page, "plan")
    other = Writer("the other phone")
    other.save("clean_out", {"finished": True}, soon_s(), plan["machine"])
    take_in(page, other.export(), 1)
    start_at(page, "machines", plan["machine"], "pour")
    expect(heading(page)).to_have_text("Nothing more of this")
    expect(page.get_by_role("main")).to_contain_text("came after this recipe")
    look = Look("light-overtaken")
    look(page)
    press(page, "Close the old pour")
    expect(heading(page)).to_have_text("What went in?")
    look(page)
    assert len(look.seen) == 2
    assert look.wrong == []


def test_a_clock_that_is_years_ahead_ends_no_recipe(page: Page) -> None:
    start_pouring(page)
    pour_bucket(page, 1)
    (plan,) = entries(page, "plan")
    other = Writer("the other phone")
    for finished in (True, False):
        body = {"finished": finished, "steps": [{"state": "drained", "at": moment(0)}]}
        other.save("clean_out", body, 3 * 365 * 86_400, plan["machine"])
    take_in(page, other.export(), 2)
    start_at(page, "machines", plan["machine"])
    press(page, "Go on pouring")
    expect(heading(page)).not_to_have_text("Nothing more of this")


def test_a_recipe_that_nobody_began_ends_with_a_newer_check(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page)
    press(page, "Save to the log")
    expect(page.get_by_role("button", name="Start pouring")).to_be_visible()
    (check,) = entries(page, "check")
    check_anew(page, check["machine"])
    start_at(page, "machines", check["machine"], "saved", check["id"])
    expect(page.get_by_role("main")).to_contain_text("This recipe is no longer poured.")
    expect(page.get_by_role("button", name="Start pouring")).to_have_count(0)
    expect(page.get_by_role("button", name="Back to the machines")).to_be_visible()
