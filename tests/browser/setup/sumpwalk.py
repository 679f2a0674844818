"""What a person does to set up a sump of any shape, and to find its volume by pouring."""

from collections.abc import Mapping

from playwright.sync_api import Page, expect

from tests.browser.phone import heading, wait_until_ready
from tests.browser.walk import field, fill_in, next_page, press

BOX = "Box with measured sides"
# Answer on the page of kinds -> what is typed on the page of sizes, by part of the field's name.
SHAPES: dict[str, dict[str, str]] = {
    BOX: {
        "Inside length": "1200",
        "Inside width": "600",
        "Depth at the full mark": "400",
    },
    "Box with a sloped floor": {
        "Inside length": "1200",
        "Inside width": "600",
        "How far the floor rises": "60",
        "Depth at the full mark": "400",
    },
    "Boxes with floors at different heights": {
        "Inside length of box 1": "400",
        "Inside width of box 1": "600",
        "Height of the floor in box 2": "120",
        "Inside length of box 2": "800",
        "Inside width of box 2": "600",
        "Depth at the full mark": "400",
    },
    "Round tank, standing": {"Inside diameter": "600", "Depth at the full mark": "700"},
    "Round tank, lying": {
        "Inside diameter": "800",
        "Inside length": "1500",
        "Depth at the full mark": "700",
    },
    "Cone": {
        "Inside diameter at the bottom": "300",
        "Inside diameter at the top": "700",
        "Inside height": "800",
        "Depth at the full mark": "700",
    },
}
POURS = ((40, 64), (40, 117), (40, 172), (40, 226), (40, 281), (40, 337), (40, 392))


def choose(page: Page, answer: str) -> None:
    """Chooses an answer by the beginning of its name."""
    # The drawn circle lies over the real one.
    page.get_by_role("radio", name=answer).first.check(force=True)


def to_kinds(page: Page) -> None:
    """From the empty list to the page that asks for the kind of tank."""
    wait_until_ready(page)
    press(page, "Add your first machine")
    field(page, "Name of the machine").fill("Wheel lathe")
    next_page(page)
    next_page(page)
    expect(heading(page)).to_have_text("How do you know the volume?")


def to_size(page: Page, kind: str, measures: Mapping[str, str] | None = None) -> None:
    """From the empty list to the filled page of sizes of this kind."""
    to_kinds(page)
    choose(page, kind)
    next_page(page)
    fill_in(page, SHAPES[kind] if measures is None else measures)
    if "sloped" in kind:
        choose(page, "The deep end")
    # Until the calculator is there, a page goes on without it.
    expect(page.get_by_text("at the full mark.")).to_be_visible()


def open_pours(page: Page, start: str = "Nothing", full: str = "400") -> None:
    """From the machine's own page to the first step of a pour test."""
    page.get_by_role("link", name="Find the volume by pouring").click()
    expect(heading(page)).to_have_text("Find the volume by pouring")
    choose(page, start)
    field(page, "Depth at the full mark").fill(full)
    next_page(page)
    expect(heading(page)).to_have_text("Step 1")


def pour(page: Page, poured: int, depth: int) -> None:
    """One step, which is kept."""
    before = heading(page).inner_text()
    field(page, "Pour in").fill(str(poured))
    field(page, "Dip: how deep").fill(str(depth))
    press(page, "Keep this step")
    expect(heading(page)).not_to_have_text(before)
