"""What a person does: sets up a machine, checks it, saves the recipe. Found by roles and names."""

import re
from collections.abc import Callable, Mapping

from playwright.sync_api import Locator, Page, expect

from tests.browser.phone import Phone, Theme, heading, wait_until_ready
from tests.browser.server import Server

# Part of a field's name -> what is typed; a field that holds something already is left alone.
TYPED = {
    "Name of the machine": "Wheel lathe",
    "Name of the concentrate": "Depot mix",
    "Depth at the full mark": "440",
    "Volume at the full mark": "198",
    "Multiply the reading by": "1.5",
    "Lowest": "7",
    "Aim": "8",
    "Highest": "9",
    "Strongest": "20",
    "Weakest": "1",
    "near enough": "0.5",
    "Fill one bucket": "10",
    "one bucket mark": "1",
    "one jug mark": "50",
}
# The same for the pages that are opened from the check of the set-up.
OPTIONS = {
    "Never above": "470",
    "Lowest mark on the bucket": "2",
    "Lowest mark on the jug": "100",
    "Highest mark on the jug": "1000",
    "Leaves with the parts": "2",
    "Most buckets": "8",
    "Heaviest bucket": "12",
    "Lowest setting": "1",
    "Highest setting": "10",
    "From one setting": "0.5",
}
# Beginnings of the answers that are chosen.
CHOSEN = (
    "Poured in",
    "Semi-synthetic",
    "Multiply the reading",
    "Data sheet",
)
MOST_PAGES = 25


def pass_by(_: Page) -> None:
    """Looks at nothing on the way."""


def press(page: Page, name: str) -> None:
    """Presses a button by its whole name."""
    page.get_by_role("button", name=name, exact=True).click()


def field(page: Page, name: str) -> Locator:
    """A text field by part of its name."""
    return page.get_by_role("textbox", name=name)


def has_button(page: Page, name: str) -> bool:
    """Whether a button with this name is there now."""
    return page.get_by_role("button", name=name, exact=True).count() > 0


def _choose(page: Page, chosen: tuple[str, ...]) -> None:
    for group in page.get_by_role("radiogroup").all():
        # Groups of the same name are one question, such as the usual tanks and more shapes.
        name = group.get_by_role("radio").first.get_attribute("name")
        one_of_all = page.locator(f"input[name='{name}']")
        if page.locator(f"input[name='{name}']:checked").count():
            continue
        answers = [one_of_all.and_(page.get_by_role("radio", name=answer)) for answer in chosen]
        fitting = [radio for radio in answers if radio.count()] or [group.get_by_role("radio")]
        # The drawn circle lies over the real one.
        fitting[0].first.check(force=True)


def fill_in(page: Page, typed: Mapping[str, str] = TYPED) -> None:
    """Fills the fields of the page that are empty."""
    for name, text in typed.items():
        for box in field(page, name).all():
            if not box.input_value():
                box.fill(text)


def next_page(page: Page, button: str = "Continue") -> None:
    """Presses a button and waits for another heading."""
    leave(page, page.get_by_role("button", name=button, exact=True))


def leave(page: Page, pressed: Locator) -> None:
    """Presses what stands on a page and waits for another heading.

    It is waited for first: the heading may still be the last page's, and its own is no other.
    """
    expect(pressed).to_be_visible()
    before = heading(page).inner_text()
    pressed.click()
    expect(heading(page)).not_to_have_text(before)


def change_group(page: Page, group: str) -> None:
    """From the check of the set-up to one of its pages, which may lie in the folded part."""
    expect(heading(page)).to_have_text("Is the set-up right?")
    link = page.get_by_role("link", name=f"Change: {group}", exact=True)
    if not link.count():
        page.get_by_text("More about this machine").click()
    link.click()
    expect(heading(page)).not_to_have_text("Is the set-up right?")


def open_group(page: Page, group: str) -> None:
    """From the machine's own page to a page of its set-up, by the group's name."""
    page.get_by_role("link", name="Change the set-up").click()
    change_group(page, group)


def set_up_machine(
    page: Page,
    typed: Mapping[str, str] | None = None,
    at_page: Callable[[Page], None] = pass_by,
    begin: str | None = "Add your first machine",
    kind: str = "Volume at the full mark",
) -> None:
    """From the empty list to a stored machine; ``at_page`` is called on every page of the way.

    Without ``begin`` the first page of the set-up is open already.
    """
    if begin is not None:
        press(page, begin)
    # The heading may still be the list's.
    expect(field(page, "Name of the machine")).to_be_visible()
    for _ in range(MOST_PAGES):
        expect(heading(page)).to_be_visible()
        at_page(page)
        if has_button(page, "Save the machine"):
            next_page(page, "Save the machine")
            return
        _choose(page, (kind, *CHOSEN))
        fill_in(page, {**TYPED, **(typed or {})})
        # Some answers open another field on the same page.
        fill_in(page, {**TYPED, **(typed or {})})
        next_page(page)
    raise AssertionError(f"the set-up has no end; it stands at {heading(page).inner_text()}")


def start_check(page: Page, at_page: Callable[[Page], None] = pass_by) -> None:
    """Begins a check where nothing unusual is seen; the first measurement stands open.

    A look of the same shift holds, so that a check that is begun again does not ask for it.
    """
    begin = page.get_by_role("button", name="Start a check", exact=True)
    # While a second reading is due it is a link.
    leave(page, begin.or_(page.get_by_role("link", name="Start a check", exact=True)))
    if heading(page).inner_text() == "Look and smell first":
        at_page(page)
        next_page(page, "Nothing unusual")


def open_machine(page: Page) -> None:
    """From the list to the page of the machine that a fixture has set up, the calculator ready."""
    wait_until_ready(page)
    page.get_by_role("link", name=TYPED["Name of the machine"]).click()
    expect(heading(page)).to_have_text(TYPED["Name of the machine"])


def on_machine(phone: Phone, server: Server, theme: Theme) -> Page:
    """Switches the phone on in a theme and opens the page of its machine."""
    page = phone.start(theme)
    page.goto(server.address)
    open_machine(page)
    return page


def check_until_recipe(
    page: Page,
    depth: str = "342",
    reading: str = "4.0",
    at_page: Callable[[Page], None] = pass_by,
) -> None:
    """From the machine's own page to the recipe."""
    start_check(page, at_page)
    for name, text in (("How deep", depth), ("What does the reading", reading)):
        expect(field(page, name)).to_be_visible()
        at_page(page)
        field(page, name).fill(text)
        pass_measured(page)
        _answer(page, at_page)
        if name == "How deep":
            pass_since(page)
    expect(heading(page)).to_have_text("Where should it be?")
    at_page(page)
    next_page(page)
    at_page(page)
    next_page(page, "Work out the recipe")
    worked_out = re.compile("In each of the|Nothing to pour|The target is out of reach")
    expect(page.get_by_text(worked_out).first).to_be_visible()
    at_page(page)


def pass_measured(page: Page) -> None:
    """Goes on from a number, and keeps one that is asked about beside the log or the target."""
    before = heading(page).inner_text()
    press(page, "Continue")
    asked = page.get_by_role("region", name="Is that right?")
    expect(heading(page).filter(has_not_text=before).or_(asked)).to_be_visible()
    if asked.count():
        asked.get_by_role("button", name=re.compile("^Keep")).click()
    expect(heading(page)).not_to_have_text(before)


def pass_since(page: Page) -> None:
    """Goes on to the reading where the time since the last dip is asked about."""
    asked = page.get_by_role("radiogroup")
    expect(field(page, "What does the reading").or_(asked.first)).to_be_visible()
    if asked.count():
        next_page(page)


def _answer(page: Page, at_page: Callable[[Page], None]) -> None:
    """Answers a page of large buttons with the first of the usual answers."""
    at_page(page)
    usual = re.compile("Hard floor|Sharp line")
    leave(page, page.get_by_role("main").get_by_role("button", name=usual))


def save_check(page: Page, at_page: Callable[[Page], None] = pass_by) -> None:
    """From the recipe to the list, through the page that says Saved."""
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    at_page(page)
    next_page(page, "Back to the machines")
