"""A phone and its copy that went on: entries that claim one place, taken in on a third phone."""

from playwright.sync_api import Page, expect

from tests.browser.files import start_at, take_in
from tests.browser.phone import heading
from tests.phones import LATHE, Phone, id_of, setup
from tests.unit.desk.lathe import ask, check

ROWS = ".log-row"


def copied() -> tuple[Phone, Phone]:
    """A phone and its copy: each has a check, then one has a tag where the other has a check."""
    old = Phone("the phone that was copied")
    made = {"machine": setup()}
    old.save("machine_set", made, 0, LATHE, shown=ask("read_machine", made))
    copy = old.clone()
    for phone, depth in ((old, "342"), (copy, "351")):
        body = check(setup(), depth)
        name = id_of(f"{depth} mm")
        phone.save("check", body, 60, LATHE, shown=ask("plan_check", body), id=name, by="KB")
    tag = {"state": "on_hold", "reason": "smell"}
    old.save("machine_state", tag, 120, LATHE, id=id_of("the tag"))
    body = check(setup(), "360")
    shown = ask("plan_check", body)
    copy.save("check", body, 120, LATHE, shown=shown, id=id_of("360 mm"))
    return old, copy


def brought(page: Page) -> tuple[Phone, Phone]:
    """Both on the phone, and the log's page."""
    old, copy = copied()
    take_in(page, old.export(), 3)
    take_in(page, copy.export(), 2)
    expect(page.get_by_role("link", name="Decide which count")).to_be_visible()
    start_at(page, "log")
    expect(page.locator(ROWS)).to_have_count(1)
    expect(page.get_by_role("main")).to_contain_text("4 entries are kept apart")
    page.get_by_role("link", name="Decide which count").click()
    expect(heading(page)).to_have_text("Entries that claim one place")
    return old, copy
