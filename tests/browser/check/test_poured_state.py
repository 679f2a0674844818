"""From the first bucket to the next reading: no page shows the old result as the present one."""

import json
import re

import pytest
from playwright.sync_api import Locator, Page, expect

from pycore.journal.line import opened
from tests.bench.logs import EVERY_S, fill, rows_of
from tests.browser.files import start_at
from tests.browser.phone import Phone, heading
from tests.browser.pouring import pour_all, pour_bucket, start_pouring
from tests.browser.server import Server
from tests.browser.stored import folded
from tests.browser.walk import check_until_recipe, field, next_page, open_machine, press, save_check
from tests.phones import LATHE, moment, pour
from tests.phones import Phone as Writer

OPEN = "Poured, not read yet"


def row(page: Page) -> Locator:
    """The machine's row after a new start of the app at the list."""
    start_at(page)
    return page.get_by_role("link", name="Wheel lathe").first


def says_poured(page: Page, words: str) -> None:
    """List and machine's page tell these words, and the old result as one of before."""
    found = row(page)
    expect(found.locator(".state")).to_have_text(OPEN)
    expect(found).to_contain_text(words)
    expect(found).to_contain_text("Before: Too weak (lean), ")
    found.click()
    expect(heading(page)).to_have_text("Wheel lathe")
    expect(page.locator("main .state").first).to_have_text(OPEN)
    expect(page.get_by_text(words)).to_be_visible()
    before = page.get_by_role("heading", name=re.compile("^Before the pour: check "))
    expect(before).to_be_visible()
    expect(page.get_by_role("heading", name=re.compile("^Last check"))).to_have_count(0)


def stop(page: Page, how: str) -> None:
    """Breaks a pour off between two buckets."""
    page.get_by_role("link", name="Stop here").click()
    press(page, how)
    expect(heading(page)).to_have_text("Saved to the log")


def pour_and_save(page: Page) -> int:
    """From the list to a whole recipe in the log; how many buckets it had."""
    buckets = start_pouring(page)
    pour_all(page, buckets)
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    return buckets


def tell(page: Page, what: str) -> None:
    """Writes down what was poured without a recipe, as the page offers it."""
    page.get_by_role("link", name="Write something down").click()
    page.get_by_role("link", name=what).click()
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")


@pytest.mark.usefixtures("machine_on_phone")
def test_all_poured_until_it_is_read_again(page: Page) -> None:
    buckets = pour_and_save(page)
    says_poured(page, f"{buckets} buckets poured, the last ")
    assert folded(page)["since_measured"]["buckets"] == buckets
    expect(page.locator(".main-action")).to_have_text("Enter the reading")
    expect(page.get_by_role("heading", name=re.compile("Reading due at"))).to_be_visible()
    row(page)
    press(page, "Enter the reading: Wheel lathe")
    field(page, "What does the reading").fill("5.3")
    next_page(page)
    page.get_by_role("button", name=re.compile("Sharp line")).click()
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    expect(row(page).locator(".state")).to_have_text("In range")
    expect(row(page)).not_to_contain_text("buckets poured")
    row(page).click()
    expect(page.locator("main .state").first).to_have_text("In range")
    # The check below is older than the buckets for good.
    expect(page.get_by_role("heading", name=re.compile("^Before the pour: check "))).to_be_visible()


@pytest.mark.usefixtures("machine_on_phone")
def test_a_part_of_the_buckets_counts_from_its_tick_on(page: Page) -> None:
    buckets = start_pouring(page)
    says_nothing = row(page)
    expect(says_nothing.locator(".state")).to_have_text("Too weak (lean)")
    says_nothing.click()
    press(page, "Go on pouring")
    press(page, "No, go on from there")
    pour_bucket(page, 1)
    says_poured(page, "1 bucket poured, ")
    expect(page.locator(".main-action")).to_have_text("Go on pouring")
    press(page, "Go on pouring")
    press(page, "No, go on from there")
    stop(page, "The rest comes later")
    says_poured(page, "1 bucket poured, ")
    press(page, "Go on pouring")
    # After a new start its first tick was asked about, as if nobody had seen it.
    pour_all(page, buckets, first=2)
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    says_poured(page, f"{buckets} buckets poured, the last ")


@pytest.mark.usefixtures("machine_on_phone")
def test_given_up_in_part_and_not_read_again(page: Page) -> None:
    start_pouring(page)
    pour_bucket(page, 1)
    stop(page, "That is all")
    says_poured(page, "1 bucket poured, ")
    page.get_by_role("link", name="I will not read again").click()
    press(page, "Close it without a reading")
    expect(heading(page)).to_have_text("Saved to the log")
    # Nobody has read it, so the old result does not come back.
    says_poured(page, "1 bucket poured, ")
    expect(page.locator(".main-action")).to_have_text("Start a check")


@pytest.mark.usefixtures("machine_on_phone")
def test_a_recipe_given_up_before_the_first_bucket_changes_nothing(page: Page) -> None:
    start_pouring(page)
    stop(page, "That is all")
    expect(row(page).locator(".state")).to_have_text("Too weak (lean)")
    row(page).click()
    expect(page.get_by_role("heading", name=re.compile("^Last check"))).to_be_visible()


@pytest.mark.usefixtures("machine_on_phone")
def test_told_buckets_count_and_what_nobody_counted_has_no_number(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page)
    save_check(page)
    row(page).click()
    tell(page, "Buckets poured")
    says_poured(page, "1 bucket poured, ")
    row(page).click()
    tell(page, "Somebody poured")
    says_poured(page, "Last poured ")
    expect(page.get_by_text(re.compile(r"\d buckets? poured"))).to_have_count(0)


@pytest.mark.usefixtures("machine_on_phone")
def test_a_tag_stands_above_it_and_a_check_that_was_begun_goes_first(page: Page) -> None:
    pour_and_save(page)
    row(page).click()
    page.get_by_role("link", name="Start a check").click()
    press(page, "Nothing unusual")
    field(page, "How deep").fill("400")
    row(page).click()
    expect(page.locator(".main-action")).to_have_text("Go on with the check")
    page.get_by_role("link", name="Write something down").click()
    page.get_by_role("link", name="Hold tag").click()
    page.get_by_label("Why").select_option("lab_sample")
    field(page, "Your name").fill("RO")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    held = row(page)
    lines = held.inner_text().splitlines()
    places = [next(i for i, one in enumerate(lines) if says in one) for says in ("On hold", OPEN)]
    assert places == sorted(places)


def checked_once() -> Writer:
    """A log with a machine and one check of it, which is written on."""
    writer = Writer("bench")
    for made in rows_of(2):
        writer.lines.append(made["text"])
    writer.seq, writer.prev = 2, opened(writer.lines[-1])[1]
    return writer


def expect_at_quick_start(phone: Phone, server: Server, writer: Writer, words: str) -> None:
    """The machine's row says so where notes alone are among the latest lines of a start."""
    for n in range(120):
        writer.save("note", {"text": f"Note {n}."}, (20 + n) * EVERY_S, LATHE)
    page = phone.start()
    stored = [
        {"seq": seq, "id": json.loads(line)["id"], "text": line}
        for seq, line in enumerate(writer.lines, 1)
    ]
    fill(page, server, stored)
    for _ in range(2):
        page.goto("about:blank")
        page.goto(server.address)
        expect(page.locator(".machine-row")).to_contain_text(words)
        # Whatever is written after a start is written by now.
        page.wait_for_timeout(300)


def test_no_bucket_is_lost_to_a_quick_start(phone: Phone, server: Server) -> None:
    writer = checked_once()
    for n in range(12):
        writer.save("pour", pour(2), (3 + n) * EVERY_S, LATHE)
    expect_at_quick_start(phone, server, writer, "24 buckets poured, the last ")


def test_a_reading_that_is_due_is_not_lost_to_a_quick_start(phone: Phone, server: Server) -> None:
    writer = checked_once()
    first = json.loads(writer.lines[-1])
    check = first["id"]
    plan = writer.save("plan", {"check": check, "pours": [{"count": 3}]}, 3 * EVERY_S, LATHE)
    part = pour(1, finished=False, plan=plan)
    writer.save("pour", part, 3 * EVERY_S + 60, LATHE)
    due = moment(3 * EVERY_S + 1860)
    rest = {"pours": [], "finished": True, "plan": plan, "recheck_due_at": due}
    writer.save("pour", rest, 3 * EVERY_S + 60, LATHE)
    # Too early; its recipe was given up before the first bucket. Both are the latest from then on.
    soon_s = 3 * EVERY_S + 120
    early = writer.save("check", first["body"], soon_s, LATHE, shown=first["shown"])
    other = writer.save("plan", {"check": early, "pours": [{"count": 1}]}, soon_s, LATHE)
    writer.save("pour", {"pours": [], "finished": True, "plan": other}, soon_s, LATHE)
    expect_at_quick_start(phone, server, writer, "Reading due since")
