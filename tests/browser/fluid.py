"""Steps about instrument, fluid and jugs that several files take."""

from collections.abc import Callable, Mapping

from playwright.sync_api import Locator, Page, expect

from tests.browser.phone import heading
from tests.browser.walk import field, next_page, pass_by, press


def choose(page: Page, name: str) -> None:
    """Chooses an answer by its words or part of them; a drawn circle lies over the real one."""
    whole = page.get_by_role("radio", name=name, exact=True)
    answer = whole if whole.count() else page.get_by_role("radio", name=name)
    answer.first.check(force=True)


def day_parts(page: Page, name: str) -> tuple[Locator, Locator, Locator]:
    """Day, month and year of the day that is asked for under this name."""
    group = page.get_by_role("group", name=name)
    day, year = (group.get_by_role("textbox", name=part) for part in ("Day", "Year"))
    return day, group.get_by_role("combobox", name="Month"), year


def set_day(page: Page, name: str, iso: str) -> None:
    """Gives a day by year-month-day."""
    day, month, year = day_parts(page, name)
    wanted_year, wanted_month, wanted_day = iso.split("-")
    year.fill(wanted_year)
    month.select_option(wanted_month)
    day.fill(wanted_day)


def shown_day(page: Page, name: str) -> str:
    """The three parts as they stand there, by year-month-day."""
    day, month, year = (part.input_value() for part in day_parts(page, name))
    return f"{year}-{month}-{day.zfill(2)}" if year + month + day else ""


def assert_day_refused(page: Page, name: str, said: str) -> None:
    """The page refuses the day in words at the field, which keeps what was given."""
    before = shown_day(page, name)
    press(page, "Continue")
    for part in day_parts(page, name):
        expect(part).to_have_attribute("aria-invalid", "true")
    expect(page.get_by_role("alert").first).to_contain_text(said)
    assert shown_day(page, name) == before


def type_all(page: Page, texts: Mapping[str, str]) -> None:
    """Types into fields found by part of their name, over what stands there; days by parts."""
    for name, text in texts.items():
        if page.get_by_role("group", name=name).count():
            set_day(page, name, text)
        else:
            field(page, name).first.fill(text)


def to_jugs(page: Page, at_page: Callable[[Page], None] = pass_by) -> None:
    """From the page of the factor to the jugs."""
    page.get_by_role("link", name="Find it yourself with two jugs").click()
    expect(heading(page)).to_have_text("Find the factor with jugs")
    choose(page, "Syringe or scale")
    choose(page, "Sharp line")
    at_page(page)
    next_page(page)
    expect(heading(page)).to_have_text("What is in each jug?")


def fill_jugs(page: Page, jugs: list[tuple[str, str, str]]) -> None:
    """Types water, concentrate and reading of each jug; adds jugs as needed."""
    for row, texts in enumerate(jugs, start=1):
        if not field(page, f"Water in jug {row}").count():
            press(page, "Add a jug")
        names = (f"Water in jug {row}", f"Concentrate in jug {row}", f"Reading of jug {row}")
        for name, text in zip(names, texts, strict=True):
            field(page, name).fill(text)
