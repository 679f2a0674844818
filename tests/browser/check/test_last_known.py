"""Fill up without a reading: which strength the log knows of, and where it knows none any more."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.check.test_unmixed import mix, poured, read_again, save, stop
from tests.browser.check.test_ways import open_way
from tests.browser.phone import heading
from tests.browser.pouring import pour_bucket, start_pouring
from tests.browser.sidesteps import dip, to_machine
from tests.browser.stored import entries
from tests.browser.walk import field, next_page, press

pytestmark = pytest.mark.usefixtures("machine_on_phone")

NOBODY = "Nobody can tell without a reading."


def expect_last_known(page: Page, strength: str | None) -> None:
    """From the machine's page: a dip without a reading, and what is said of the strength."""
    dip(page)
    press(page, "Read later")
    # What the last recipe was mixed for may have been a correction: then the mix is asked for.
    expect(heading(page)).to_have_text("What is the usual mix?")
    field(page, "What is the usual mix").fill("8")
    next_page(page)
    expect(heading(page)).to_have_text("Fill up, read later")
    said = NOBODY if strength is None else f"Last known: {strength}"
    expect(page.locator(".worst")).to_contain_text(said)


def test_a_recipe_that_was_poured_as_shown(page: Page) -> None:
    poured(page)
    reached = entries(page, "check")[-1]["shown"]["plan"]["final"]["strength_pct"]["value"]
    expect_last_known(page, f"{reached:.1f}")


def test_the_second_reading_is_newer_than_the_recipe(page: Page) -> None:
    poured(page)
    mix(page)
    read_again(page, "3.0")
    to_machine(page)
    expect_last_known(page, "4.5")


def test_a_second_reading_that_was_too_early_tells_nothing(page: Page) -> None:
    poured(page)
    read_again(page, "5.5")
    to_machine(page)
    expect_last_known(page, None)


def test_a_part_of_a_recipe_leaves_nobody_who_knows(page: Page) -> None:
    start_pouring(page)
    pour_bucket(page, 1)
    stop(page, "That is all")
    to_machine(page)
    expect_last_known(page, None)


def test_a_recipe_given_up_before_the_first_bucket_leaves_the_reading(page: Page) -> None:
    start_pouring(page)
    stop(page, "That is all")
    to_machine(page)
    expect_last_known(page, "6.0")


def test_another_way_than_the_recipe_is_not_taken_for_it(page: Page) -> None:
    open_way(page, "Let the level fall")
    save(page)
    to_machine(page)
    expect_last_known(page, None)
