"""A wrong input on every field: said at the field, what was typed stays, nothing goes on."""

import pytest
from playwright.sync_api import Page, Route, expect

from tests.browser.phone import Phone, heading, wait_until_ready
from tests.browser.server import Server
from tests.browser.walk import (
    OPTIONS,
    check_until_recipe,
    field,
    fill_in,
    next_page,
    open_group,
    open_machine,
    press,
    set_up_machine,
    start_check,
)

WRONG = ["1_000", "1e3", "0x10", "٣٤٢", "1.000,5", "-5000", "9999999"]
# These may stay empty.
FREE = (
    "Name of the concentrate",
    "Depth up to the rim",
    "Never above",
    "Lowest mark",
    "Highest mark",
    "Leaves with the parts",
    "Most buckets",
    "Heaviest bucket",
    "Ends this high",
    "Coolant outside the sump",
    "It may be off by",
    "Rest that",
    "To be added",
    "The maker",
)
NAMES = ("Name of the machine", "Name of the concentrate")


def names_of_fields(page: Page) -> list[str]:
    """Accessible names of the text fields of the page, up to their unit."""
    lines = page.get_by_role("main").aria_snapshot().splitlines()
    found = [line.split('textbox "')[1].split('"')[0] for line in lines if 'textbox "' in line]
    return [name.split(" ,")[0] for name in found]


def assert_refused(page: Page, name: str, text: str) -> None:
    """Types into a field, goes on, and looks that the page refuses it in words at the field."""
    box = field(page, name).first
    box.fill(text)
    before = heading(page).inner_text()
    press(page, "Continue")
    expect(page.get_by_role("alert").first).to_be_visible()
    expect(box).to_have_value(text)
    expect(box).to_have_attribute("aria-invalid", "true")
    expect(heading(page)).to_have_text(before)


def spoil_fields(page: Page) -> list[str]:
    """Types wrong things into every field of the page and puts back what stood there."""
    names = names_of_fields(page)
    for name in names:
        kept = field(page, name).first.input_value()
        if not name.startswith(FREE):
            assert_refused(page, name, "")
        if name not in NAMES:
            for text in WRONG:
                assert_refused(page, name, text)
        field(page, name).first.fill(kept)
    return names


def test_every_field_of_the_set_up(page: Page) -> None:
    wait_until_ready(page)
    seen: list[str] = []

    def spoil(page: Page) -> None:
        fill_in(page)
        seen.extend(spoil_fields(page))

    set_up_machine(page, at_page=spoil)
    assert len(seen) >= 13


@pytest.mark.usefixtures("machine_on_phone")
@pytest.mark.parametrize(("group", "count"), [("measuring", 3), ("what the shop allows", 6)])
def test_every_field_of_the_pages_aside(page: Page, group: str, count: int) -> None:
    open_machine(page)
    open_group(page, group)
    for radio in page.get_by_role("radio", name="Yes", exact=False).all():
        # The drawn circle lies over the real one.
        radio.check(force=True)
    fill_in(page, OPTIONS)
    assert len(spoil_fields(page)) == count
    next_page(page)
    expect(heading(page)).to_have_text("Is the set-up right?")


@pytest.mark.usefixtures("machine_on_phone")
def test_part_of_a_bucket_is_not_carried(page: Page) -> None:
    open_machine(page)
    open_group(page, "what the shop allows")
    assert_refused(page, "Most buckets", "2.5")
    expect(page.get_by_role("alert").first).to_contain_text("whole numbers")


def _never_answer(_: Route) -> None:
    """A network on which nothing comes."""


def test_name_is_asked_for_also_before_the_calculator_is_there(
    phone: Phone, server: Server
) -> None:
    page = phone.start()
    # Python's files never come, so the page has only itself to go by.
    page.route("**/py-*/**", _never_answer)
    page.goto(server.address)
    press(page, "Add your first machine")
    assert_refused(page, "Name of the machine", "")


def test_factor_and_choices_are_asked_for(page: Page) -> None:
    wait_until_ready(page)
    refused: list[str] = []

    def go_on_without_an_answer(page: Page) -> None:
        groups = page.get_by_role("radiogroup")
        if groups.count() and not groups.first.get_by_role("radio", checked=True).count():
            before = heading(page).inner_text()
            press(page, "Continue")
            expect(page.get_by_role("alert").first).to_be_visible()
            expect(heading(page)).to_have_text(before)
            refused.append(before)

    set_up_machine(page, at_page=go_on_without_an_answer)
    assert refused


@pytest.mark.usefixtures("machine_on_phone")
def test_dip_and_reading(page: Page) -> None:
    open_machine(page)
    tried: list[str] = []

    def spoil(page: Page) -> None:
        for name in ("How deep", "What does the reading"):
            if field(page, name).count():
                for text in ["", *WRONG, "600"]:
                    assert_refused(page, name, text)
                tried.append(name)

    check_until_recipe(page, at_page=spoil)
    assert tried == ["How deep", "What does the reading"]


@pytest.mark.usefixtures("machine_on_phone")
@pytest.mark.parametrize(("depth", "shown"), [("485", "484"), ("4,5 in 3", "4,5 in 3")])
def test_refusal_names_the_limit_or_what_was_typed(page: Page, depth: str, shown: str) -> None:
    open_machine(page)
    start_check(page)
    assert_refused(page, "How deep", depth)
    expect(page.get_by_role("alert").first).to_contain_text(shown)


@pytest.mark.usefixtures("machine_on_phone")
def test_a_factor_is_a_bare_number(page: Page) -> None:
    open_machine(page)
    open_group(page, "factor")
    for unit in ("mm", "furlong"):
        assert_refused(page, "Multiply the reading by", f"1.5 {unit}")
        expect(page.get_by_role("alert")).to_have_text(
            f"Factor is a bare number, without a unit. You typed “{unit}”."
        )
