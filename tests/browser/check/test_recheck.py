"""The second reading after a pour: due, read, dipped, compared, or left out."""

import re
from datetime import datetime, timedelta

import pytest
from playwright.sync_api import Page, expect

from tests.browser.files import start_at
from tests.browser.phone import heading, picture
from tests.browser.pouring import pour_all, start_pouring
from tests.browser.setup.sumpwalk import open_pours
from tests.browser.sidesteps import to_machine
from tests.browser.stored import entries, folded
from tests.browser.walk import check_until_recipe, field, next_page, press, start_check

pytestmark = pytest.mark.usefixtures("machine_on_phone")


def poured(page: Page) -> None:
    """From the list to the machine's page with a second reading due."""
    pour_all(page, start_pouring(page))
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    press(page, "Back to the machines")
    page.get_by_role("link", name="Wheel lathe").click()
    expect(heading(page)).to_have_text("Wheel lathe")


def mixed(page: Page) -> None:
    """The pump has run for as long as was asked."""
    (pour,) = entries(page, "pour")
    due = datetime.fromisoformat(pour["body"]["recheck_due_at"])
    page.clock.install(time=due + timedelta(seconds=20))
    page.reload()


def read_again(page: Page, reading: str) -> None:
    """From the machine's page to expected against found."""
    # Once its time has come it is the main action.
    early = page.get_by_role("link", name="Enter the reading")
    early.or_(page.get_by_role("button", name="Enter the reading")).click()
    expect(heading(page)).to_have_text("What does the reading say?")
    field(page, "What does the reading").fill(reading)
    next_page(page)
    page.get_by_role("button", name=re.compile("Sharp line")).click()
    expect(heading(page)).to_have_text("Expected and found")
    expect(page.get_by_role("button", name="Save to the log")).to_be_visible()


def test_due_is_half_an_hour_after_the_last_bucket_and_passes(page: Page) -> None:
    poured(page)
    (pour,) = entries(page, "pour")
    due = datetime.fromisoformat(pour["body"]["recheck_due_at"])
    assert due - datetime.fromisoformat(pour["measured_at"]) == timedelta(minutes=30)
    expect(page.get_by_role("heading", name=re.compile("Reading due at"))).to_be_visible()
    mixed(page)
    expect(page.get_by_role("heading", name=re.compile("Reading due since"))).to_be_visible()
    expect(page.locator(".main-action")).to_have_text("Enter the reading")
    expect(page.get_by_role("link", name="Start a check")).to_be_visible()


def test_last_time_is_the_second_reading(page: Page) -> None:
    poured(page)
    read_again(page, "5.3")
    press(page, "Save to the log")
    press(page, "Back to the machines")
    page.get_by_role("link", name="Wheel lathe").click()
    start_check(page)
    field(page, "How deep").fill("438")
    next_page(page)
    page.get_by_role("button", name="Hard floor").click()
    expect(page.get_by_text("Last time 5.3 Brix")).to_be_visible()


def test_as_expected_is_saved_and_nothing_is_due_any_more(page: Page) -> None:
    poured(page)
    mixed(page)
    read_again(page, "5.3")
    main = page.get_by_role("main")
    expect(main).to_contain_text("As expected")
    expect(main).to_contain_text("In range: nothing more to do.")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    expect(main).to_contain_text("As expected")
    expect(main).to_contain_text("In range: nothing more to do.")
    expect(main).not_to_contain_text("Reading due")
    (pour,), (again,) = entries(page, "pour"), entries(page, "recheck")
    assert again["body"]["of"] == pour["id"]
    assert again["body"]["reading"]["shows"] == {"text": "5.3", "unit": "Brix"}
    expected = again["shown"]["strength"]["expected_pct"]["value"]
    (check,) = entries(page, "check")
    final = check["shown"]["plan"]["final"]["strength_pct"]["value"]
    assert expected == pytest.approx(final)
    machine = folded(page)
    assert "recheck" not in machine
    assert machine["strength"]["entry"] == again["id"]
    press(page, "Back to the machines")
    row = page.get_by_role("link", name="Wheel lathe")
    expect(row).not_to_contain_text("Reading due")
    expect(row).to_contain_text("In range")
    row.click()
    expect(page.get_by_role("main")).to_contain_text("Second reading of")


def saved_early(page: Page, reading: str, said: str) -> None:
    """A second reading right after the last bucket; another one is due as before."""
    read_again(page, reading)
    main = page.get_by_role("main")
    expect(main).to_contain_text(said)
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    expect(main).to_contain_text(said)
    expect(main).to_contain_text("Reading due at")
    picture(page, f"light-recheck-early-{reading}")
    press(page, "Back to the machines")


@pytest.mark.parametrize(
    ("reading", "said", "state"),
    [
        ("5.3", "In range, but hardly mixed yet", "In range"),
        ("4.2", "Add nothing yet: it has hardly mixed.", "Too weak"),
        ("7.4", "Add nothing yet: it has hardly mixed.", "Too strong"),
    ],
)
def test_what_has_hardly_mixed_is_no_ground_to_add_and_is_read_again(
    page: Page, reading: str, said: str, state: str
) -> None:
    poured(page)
    # It said "Still too weak. Start a new check", and nothing was due any more.
    saved_early(page, reading, said)
    row = page.get_by_role("link", name="Wheel lathe")
    expect(row).to_contain_text(state)
    expect(row).to_contain_text("Reading due at")
    (pour,) = entries(page, "pour")
    assert folded(page)["recheck"]["pour"] == pour["id"]
    row.click()
    # Beside the reading that is due this one stood as if it counted.
    expect(page.get_by_role("main")).to_contain_text("Read too early: before ")
    # Its own page judged it and said what to do next time, as if it counted.
    (again,) = entries(page, "recheck")
    at = page.url
    start_at(page, "log", again["id"])
    expect(page.get_by_role("main")).to_contain_text("Read too early: before ")
    expect(page.get_by_role("main")).not_to_contain_text("next top-up")
    expect(page.locator(".fact-row", has_text="Strength")).to_contain_text("%")
    picture(page, f"light-early-entry-{reading}")
    page.goto(at)
    expect(heading(page)).to_have_text("Wheel lathe")
    mixed(page)
    expect(page.get_by_role("heading", name=re.compile("Reading due since"))).to_be_visible()
    read_again(page, "5.3")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    assert [again["body"]["of"] for again in entries(page, "recheck")] == [pour["id"]] * 2
    assert "recheck" not in folded(page)


def test_weaker_with_a_dip_says_what_to_look_for(page: Page) -> None:
    poured(page)
    read_again(page, "4.2")
    main = page.get_by_role("main")
    expect(main).to_contain_text("Weaker than expected")
    expect(main).to_contain_text("It has hardly mixed yet.")
    page.get_by_role("link", name="Dip it too").click()
    expect(heading(page)).to_have_text("How deep is the coolant?")
    field(page, "How deep").fill("400")
    next_page(page)
    page.get_by_role("button", name=re.compile("Hard floor")).click()
    expect(heading(page)).to_have_text("Expected and found")
    expect(main).to_contain_text("look for a leak")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    (again,) = entries(page, "recheck")
    assert again["body"]["dip"]["depth"]["text"] == "400"
    assert again["shown"]["level"]["verdict"] == "lower"
    # Its dip is the last one, in words and in the drawing.
    press(page, "Back to the machines")
    page.get_by_role("link", name="Wheel lathe").click()
    start_check(page)
    expect(page.get_by_text("Last time 400 mm")).to_be_visible()
    dashed = page.locator(".old-level").get_attribute("d")
    field(page, "How deep").fill("400")
    surface = page.locator(".section .surface")
    expect(surface).to_have_count(1)
    assert surface.get_attribute("d") == dashed


@pytest.mark.parametrize("minutes", [0, 12, 95])
def test_early_and_late_are_taken_with_their_minutes(page: Page, minutes: int) -> None:
    poured(page)
    (pour,) = entries(page, "pour")
    at = datetime.fromisoformat(pour["measured_at"]) + timedelta(minutes=minutes, seconds=5)
    page.clock.install(time=at)
    page.reload()
    main = page.get_by_role("main")
    if minutes < 30:
        # "Only 0 minutes since the last bucket" was said at first.
        early = f"Only {minutes} minutes since the last bucket"
        expect(main).to_contain_text(early if minutes else "less than a minute ago")
        expect(page.get_by_role("heading", name=re.compile("Reading due at"))).to_be_visible()
    else:
        expect(main).not_to_contain_text("since the last bucket")
        expect(page.get_by_role("heading", name=re.compile("Reading due since"))).to_be_visible()
    picture(page, f"light-recheck-{minutes}-minutes")
    promised = re.compile(r"\b(will ring|rings|alarm|remind)", re.IGNORECASE)
    assert not promised.search(main.inner_text())
    read_again(page, "5.3")
    # The clock runs on while the reading is typed, on a slow machine for more than a minute.
    passed = "|".join(str(minutes + more) for more in range(3))
    expect(main).to_contain_text(re.compile(rf"Read ({passed}) minutes? after the last bucket\."))
    assert not promised.search(main.inner_text())
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    (again,) = entries(page, "recheck")
    assert minutes <= int(again["shown"]["minutes"]) < minutes + 3


def test_no_second_reading_is_a_true_answer(page: Page) -> None:
    poured(page)
    page.get_by_role("link", name="I will not read again").click()
    field(page, "Why not").fill("Glass is broken.")
    press(page, "Close it without a reading")
    expect(heading(page)).to_have_text("Saved to the log")
    (again,) = entries(page, "recheck")
    assert again["body"]["remarks"] == "Glass is broken."
    assert "reading" not in again["body"]
    assert "recheck" not in folded(page)


def test_a_reading_that_nobody_took_is_told_as_such(page: Page) -> None:
    poured(page)
    page.get_by_role("link", name="I will not read again").click()
    press(page, "Close it without a reading")
    expect(heading(page)).to_have_text("Saved to the log")
    page.evaluate("() => { location.hash = '#/log'; }")
    # "Second reading: Second reading" stood there.
    row = page.locator(".log-row").filter(has_text="Dip 342 mm")
    expect(row).to_contain_text("Second reading: Not read again")


def test_ticked_buckets_stand_beside_the_dips_of_a_pour_test(page: Page) -> None:
    poured(page)
    check_until_recipe(page, "400", "5.3")
    press(page, "Save to the log")
    to_machine(page)
    open_pours(page)
    (pour,) = entries(page, "pour")
    buckets = sum(row["count"] for row in pour["body"]["pours"])
    said = f"Dip 342 mm before, 400 mm after. {buckets} buckets were ticked."
    expect(page.get_by_text(said)).to_be_visible()
