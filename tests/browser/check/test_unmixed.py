"""What was poured and has not mixed: in parts, beside a recipe, while another check is begun."""

import re
from datetime import datetime, timedelta
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from tests.browser.onescreen import expect_recipe, type_check
from tests.browser.phone import heading, picture
from tests.browser.pouring import pour_all, pour_bucket, start_pouring, to_first_bucket
from tests.browser.sidesteps import to_machine
from tests.browser.stored import entries, folded
from tests.browser.walk import check_until_recipe, field, next_page, press

pytestmark = pytest.mark.usefixtures("machine_on_phone")

CAUTION = "This reading is from before: whoever goes by it may pour or take out too much."


def save(page: Page) -> None:
    """What stands on the page goes into the log."""
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")


def poured(page: Page) -> None:
    """From the list to the machine's page, the whole recipe poured."""
    pour_all(page, start_pouring(page))
    save(page)
    to_machine(page)


def stop(page: Page, how: str, begun: str = "") -> None:
    """Breaks a pour off; ``begun``: what is in of the bucket that was begun."""
    page.get_by_role("link", name="Stop here").click()
    if begun:
        page.get_by_role("radio", name=begun).check(force=True)
    press(page, how)
    expect(heading(page)).to_have_text("Saved to the log")


def mix(page: Page) -> None:
    """Until the pump has run for as long as was asked."""
    pour = entries(page, "pour")[-1]
    due = datetime.fromisoformat(pour["body"]["recheck_due_at"])
    page.clock.install(time=due + timedelta(seconds=20))
    page.reload()


def type_again(page: Page, reading: str) -> None:
    """The second reading from the machine's page, up to what it is compared with."""
    page.get_by_role("button", name="Enter the reading").click()
    field(page, "What does the reading").fill(reading)
    next_page(page)
    page.get_by_role("button", name=re.compile("Sharp line")).click()
    expect(heading(page)).to_have_text("Expected and found")


def read_again(page: Page, reading: str) -> Any:
    """The second reading, saved; what was shown of its strength."""
    type_again(page, reading)
    save(page)
    return entries(page, "recheck")[-1]["shown"]["strength"]


def test_a_reading_stays_unmixed_however_late_its_recipe_is_looked_at(page: Page) -> None:
    poured(page)
    check_until_recipe(page, "400", "4.0")
    caution = page.get_by_text(CAUTION)
    expect(caution).to_be_visible()
    picture(page, "light-recipe-unmixed")
    # It went away with the clock, and with Save.
    mix(page)
    expect(page.get_by_text(re.compile("In each of the")).first).to_be_visible()
    expect(caution).to_be_visible()
    save(page)
    expect(caution).to_be_visible()
    # That check is no second reading either.
    (pour,) = entries(page, "pour")
    assert folded(page)["recheck"]["pour"] == pour["id"]
    to_machine(page)
    expect(page.get_by_role("heading", name=re.compile("Reading due since"))).to_be_visible()


def test_one_screen_says_it_before_every_other_caution(page: Page) -> None:
    poured(page)
    page.get_by_role("switch", name="Check on one screen").click()
    page.get_by_role("link", name="Start a check").or_(
        page.get_by_role("button", name="Start a check")
    ).click()
    expect(heading(page)).to_have_text("The check on one screen")
    type_check(page, "430", "5.0")
    expect_recipe(page)
    picture(page, "light-one-screen-unmixed")
    # It was not said here, and one press saves and pours.
    page.get_by_role("link", name=re.compile(r"Read too early: before [0-9:]+\.")).click()
    expect(page.get_by_text(CAUTION)).to_be_visible()


def test_the_rest_is_given_up_and_the_part_before_is_read_again(page: Page) -> None:
    start_pouring(page)
    pour_bucket(page, 1)
    stop(page, "The rest comes later")
    page.get_by_role("link", name="Go on pouring").click()
    stop(page, "That is all")
    part, rest = entries(page, "pour")
    assert (len(part["body"]["pours"]), rest["body"]["pours"]) == (1, [])
    # Nothing was due, since nothing went in after the part.
    due = datetime.fromisoformat(rest["body"]["recheck_due_at"])
    assert due - datetime.fromisoformat(part["measured_at"]) == timedelta(minutes=30)
    to_machine(page)
    mix(page)
    found = read_again(page, "4.3")
    assert found["verdict"] == "as_expected"


def test_all_parts_are_expected_in_the_second_reading(page: Page) -> None:
    buckets = start_pouring(page)
    for n in range(1, buckets):
        pour_bucket(page, n)
    stop(page, "The rest comes later")
    page.get_by_role("link", name="Go on pouring").click()
    pour_all(page, buckets, first=buckets)
    save(page)
    to_machine(page)
    mix(page)
    # Only the last part was counted, and a good sump was "stronger than expected".
    found = read_again(page, "5.3")
    (check,) = entries(page, "check")
    final = check["shown"]["plan"]["final"]["strength_pct"]["value"]
    assert found["expected_pct"]["value"] == pytest.approx(final)
    assert found["verdict"] == "as_expected"


def test_due_counts_from_what_went_in_last(page: Page) -> None:
    start_pouring(page)
    press(page, "Water is in")
    page.clock.fast_forward("25:00")
    stop(page, "That is all", begun="All of it, as the recipe says")
    (pour,) = entries(page, "pour")
    due = datetime.fromisoformat(pour["body"]["recheck_due_at"])
    # It was 30 minutes after the water, and so five after the bucket.
    assert due - datetime.fromisoformat(pour["wall"]) > timedelta(minutes=29)


def test_an_early_check_with_nothing_to_pour_is_no_all_clear(page: Page) -> None:
    poured(page)
    check_until_recipe(page, "440", "5.3")
    save(page)
    main = page.get_by_role("main")
    expect(main).to_contain_text("Reading due at")
    expect(main).to_contain_text(CAUTION)
    # It said "Nothing to pour. Check again at the usual time."
    expect(main).not_to_contain_text("usual time")


def test_a_part_that_was_read_long_ago_is_not_due_when_its_rest_is_given_up(page: Page) -> None:
    start_pouring(page)
    pour_bucket(page, 1)
    stop(page, "The rest comes later")
    to_machine(page)
    page.clock.fast_forward("05:00:00")
    check_until_recipe(page, "360", "4.2")
    save(page)
    press(page, "Start pouring")
    press(page, "That is all")
    to_machine(page)
    assert entries(page, "pour")[-1]["body"]["pours"] == []
    assert "recheck" not in folded(page)
    expect(page.get_by_role("heading", name=re.compile("Reading due"))).to_have_count(0)


def test_digits_for_the_pour_before_do_not_stand_after_the_next_one(page: Page) -> None:
    poured(page)
    mix(page)
    type_again(page, "5.1")
    page.goto(page.url.split("#")[0])
    page.get_by_role("link", name="Wheel lathe").click()
    check_until_recipe(page, "400", "4.0")
    save(page)
    pour_all(page, to_first_bucket(page))
    save(page)
    to_machine(page)
    page.get_by_role("button", name="Enter the reading").click()
    # They stood there, and the phone's clock was blamed.
    expect(field(page, "What does the reading")).to_have_value("")


def test_a_clock_that_was_set_back_is_named(page: Page) -> None:
    poured(page)
    (pour,) = entries(page, "pour")
    back = datetime.fromisoformat(pour["measured_at"]) - timedelta(hours=1)
    page.clock.install(time=back)
    page.reload()
    clock = "By this phone\N{RIGHT SINGLE QUOTATION MARK}s clock the last pour is still to come."
    # "Less than a minute ago" was said.
    expect(page.get_by_role("main")).to_contain_text(clock)
    type_again(page, "5.3")
    expect(page.get_by_role("alert")).to_contain_text(clock)


def test_the_second_reading_rests_with_the_machine(page: Page) -> None:
    poured(page)
    due = page.get_by_role("heading", name=re.compile("Reading due"))
    expect(due).to_be_visible()
    page.get_by_role("link", name="Write something down").click()
    page.get_by_role("link", name="State of the machine").click()
    page.get_by_text("Shut down", exact=True).click()
    save(page)
    page.goto(page.url.split("#")[0])
    page.get_by_role("link", name="Wheel lathe").click()
    expect(heading(page)).to_have_text("Wheel lathe")
    expect(page.get_by_text("Shut down")).to_be_visible()
    expect(due).to_have_count(0)
