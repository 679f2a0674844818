"""What others say of an entry: no tag is lost to it, and two who disagree are both seen."""

from typing import Any

import pytest
from playwright.sync_api import Page, expect

from tests.browser.correcting import change, compare, correct, last, open_entry, retype, save
from tests.browser.files import start_at, take_in
from tests.browser.log.test_mishap import hang_tag
from tests.browser.log.test_told import store, tell
from tests.browser.phone import heading
from tests.browser.stored import entries, folded
from tests.browser.walk import check_until_recipe, open_machine, press, save_check
from tests.phones import Phone

pytestmark = pytest.mark.usefixtures("machine_on_phone")


def corrected_by(title: str, entry: dict[str, Any], content: dict[str, Any]) -> str:
    """The file of another phone that holds one correction."""
    phone = Phone(title)
    body = {
        "corrects": entry["id"],
        "reason": f"said {title}",
        "kind": entry["kind"],
        "content": content,
    }
    phone.save("correction", body, 0, machine=entry["machine"], by=title)
    return phone.export()


def test_a_corrected_hold_tag_still_hangs(page: Page) -> None:
    open_machine(page)
    hang_tag(page)
    open_entry(page, "On hold")
    correct(page)
    change(page, "Why")
    page.get_by_role("button", name="Repair").click()
    expect(heading(page)).to_have_text("What was wrong?")
    compare(page)
    save(page)
    start_at(page)
    row = page.get_by_role("link", name="Wheel lathe").first
    expect(row).to_contain_text("On hold: repair")
    assert folded(page)["state"]["state"]["reason"] == "repair"


def test_a_tag_about_which_two_phones_disagree_still_hangs(page: Page) -> None:
    open_machine(page)
    hang_tag(page)
    (tag,) = entries(page, "machine_state")
    for title in ("KB", "PA"):
        state = {"state": "watch"} if title == "KB" else {"state": "on_hold", "reason": "repair"}
        take_in(page, corrected_by(title, tag, state), 1)
    start_at(page)
    expect(page.get_by_role("link", name="Wheel lathe").first).to_contain_text("On hold")
    open_entry(page, "On hold")
    main = page.get_by_role("main")
    expect(main).to_contain_text("Two people say different things")
    expect(main).to_contain_text("KB")
    expect(main).to_contain_text("PA")
    # One more correction names the others, and only then does one count.
    correct(page)
    change(page, "How is it used now?")
    page.get_by_role("button", name="Watch it").click()
    expect(heading(page)).to_have_text("What was wrong?")
    compare(page)
    save(page)
    assert len(last(page).body["settles"]) == 2
    start_at(page)
    expect(page.get_by_role("link", name="Wheel lathe").first).not_to_contain_text("On hold")


def test_buckets_that_were_told_wrong_are_put_right(page: Page) -> None:
    open_machine(page)
    tell(page, "Buckets poured")
    press(page, "One bucket more")
    store(page)
    open_entry(page, "2 buckets of about")
    correct(page)
    retype(page, "Row 1: buckets", "3")
    compare(page)
    save(page)
    assert last(page).body["content"]["pours"][0]["count"] == 3
    expect(page.get_by_role("main")).to_contain_text("3 buckets of about 3 %")
    assert folded(page)["since_measured"]["buckets"] == 3


def test_a_correction_outlasts_a_start_from_the_checkpoint(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page)
    save_check(page)
    open_entry(page, "reading 4.0")
    correct(page)
    retype(page, "Reading", "5.3")
    compare(page)
    save(page)
    for _ in range(2):
        # The first start after it reads all and keeps a checkpoint, the second goes by it.
        start_at(page)
        expect(page.get_by_role("main")).to_contain_text("In range")
    start_at(page, "log")
    expect(page.locator(".log-row", has_text="reading 5.3")).to_contain_text("Corrected")
