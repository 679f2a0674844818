"""More about a reading: further ones, dilution, temperature, the zero, and a second method."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.fluid import choose, type_all
from tests.browser.phone import heading
from tests.browser.setup.test_wrong_input import WRONG, assert_refused
from tests.browser.sidesteps import dip, follow, open_entry, until_answers
from tests.browser.stored import entries
from tests.browser.walk import change_group, field, next_page, open_group, open_machine, press

pytestmark = pytest.mark.usefixtures("machine_on_phone")


def with_instrument(page: Page, **zero: str) -> None:
    """A machine whose instrument ends at 18 Brix and does not correct for temperature."""
    open_machine(page)
    open_group(page, "instrument")
    choose(page, "Brix")
    choose(page, "No")
    type_all(page, {"Highest mark": "18"})
    next_page(page)
    change_group(page, "zero of the instrument")
    type_all(page, {"What did it show": "0", "How warm": "20"})
    type_all(page, {"On which day": zero["on"]} if "on" in zero else {})
    next_page(page)
    next_page(page, "Save the machine")


def to_recipe(page: Page) -> None:
    """From the target to the recipe."""
    expect(heading(page)).to_have_text("Where should it be?")
    next_page(page)
    next_page(page, "Work out the recipe")


def test_read_again_and_average(page: Page) -> None:
    open_machine(page)
    dip(page)
    field(page, "What does the reading").fill("4.0")
    next_page(page)
    follow(page, "Read again, and average")
    for text in ["", *WRONG]:
        box = field(page, "Read it once more")
        box.fill(text)
        press(page, "Add this reading")
        expect(page.get_by_role("alert").first).to_be_visible()
        expect(box).to_have_value(text)
    for text in ("4.2", "4.4", "9.0"):
        field(page, "Read it once more").fill(text)
        press(page, "Add this reading")
        if text == "9.0":
            page.get_by_role("button", name="Keep").click()
        expect(page.get_by_text(f"{text} Brix")).to_be_visible()
    press(page, "Take the last one out")
    expect(page.get_by_text("Mean of 3 readings: 4.2 Brix")).to_be_visible()
    page.reload()
    next_page(page, "Go on with the mean")
    page.get_by_role("button", name="Sharp line").click()
    expect(heading(page)).to_have_text("Where should it be?")
    next_page(page)
    expect(page.get_by_text("4.2 × factor 1.5 = 6.3 %")).to_be_visible()
    next_page(page, "Work out the recipe")
    press(page, "Save to the log")
    open_entry(page)
    expect(page.get_by_text("4.2 Brix, 4.4 Brix")).to_be_visible()
    reading = entries(page)[-1]["body"]["reading"]
    assert [typed["text"] for typed in reading["again"]] == ["4.2", "4.4"]


def test_blurred_is_diluted_and_doubled_once(page: Page) -> None:
    open_machine(page)
    dip(page)
    field(page, "What does the reading").fill("5.0")
    next_page(page)
    page.get_by_role("button", name="The line is blurred").click()
    expect(page.get_by_text("Filter the sample through paper.")).to_be_visible()
    press(page, "Dilute one to one and read again")
    expect(field(page, "What does the diluted")).to_have_value("")
    press(page, "Not diluted")
    expect(field(page, "What does the reading")).to_have_value("5.0")
    next_page(page)
    page.get_by_role("button", name="The line is blurred").click()
    press(page, "Dilute one to one and read again")
    field(page, "What does the diluted").fill("2.4")
    expect(page.get_by_text("2.4 Brix → 4.8 Brix × factor 1.5 = 7.2 %")).to_be_visible()
    next_page(page)
    page.get_by_role("button", name="Sharp line").click()
    to_recipe(page)
    press(page, "Save to the log")
    open_entry(page)
    expect(page.get_by_text("One to one")).to_be_visible()
    reading = entries(page)[-1]["body"]["reading"]
    assert reading["shows"] == {"text": "2.4", "unit": "Brix"}
    assert reading["diluted"] == {"text": "1", "unit": "1"}


def test_off_the_scale_offers_dilution(page: Page) -> None:
    with_instrument(page)
    dip(page)
    assert_refused(page, "What does the reading", "18.5")
    expect(page.get_by_role("alert")).to_contain_text("the app doubles it")
    press(page, "Dilute one to one and read again")
    expect(heading(page)).to_have_text("What does the diluted reading say?")


def test_temperature_and_an_old_zero(page: Page) -> None:
    with_instrument(page, on="2026-01-02")
    dip(page)
    field(page, "What does the reading").fill("5.0")
    expect(page.get_by_text("The zero is older than a day")).to_be_visible()
    next_page(page)
    for text in ["", *WRONG]:
        assert_refused(page, "How warm is the glass", text)
    field(page, "How warm is the glass").fill("28")
    next_page(page)
    page.get_by_role("button", name="Sharp line").click()
    expect(heading(page)).to_have_text("Where should it be?")
    next_page(page)
    # 5 Brix at 28 °C against a zero at 20 °C: ICUMSA's table, see shared/checks/refractometer.json.
    expect(page.get_by_text("Temperature: 0.")).to_be_visible()
    next_page(page, "Work out the recipe")
    press(page, "Save to the log")
    open_entry(page)
    check = entries(page)[-1]
    assert check["body"]["reading"]["temperature"] == {"text": "28", "unit": "°C"}
    assert check["body"]["now"][10] == "T"
    assert check["body"]["now"][-6] in "+-"
    assert "zero_old" in check["shown"]["assessment"]["notes"]
    assert check["shown"]["assessment"]["strength"]["temperature_change_brix"] > 0


def with_old_zero(page: Page) -> None:
    """A machine with an instrument that corrects for temperature and was zeroed long ago."""
    open_machine(page)
    open_group(page, "instrument")
    choose(page, "Brix")
    choose(page, "Yes")
    next_page(page)
    change_group(page, "zero of the instrument")
    type_all(page, {"What did it show": "0.3", "On which day": "2026-01-02"})
    next_page(page)
    next_page(page, "Save the machine")


def test_zeroed_just_now_before_the_reading(page: Page) -> None:
    with_old_zero(page)
    dip(page)
    # Said before anything is read.
    expect(page.get_by_text("The zero is older than a day")).to_be_visible()
    follow(page, "I zeroed it just now")
    next_page(page, "It shows 0")
    expect(heading(page)).to_have_text("What does the reading say?")
    expect(page.get_by_text("The zero is older than a day")).to_have_count(0)
    field(page, "What does the reading").fill("4.0")
    expect(page.get_by_text("4.0 × factor 1.5 = 6.0 %")).to_be_visible()
    zero = entries(page)[-1]["body"]["machine"]["instrument"]["zero"]
    assert zero["shows"] == {"text": "0", "unit": "Brix"}
    assert zero["on"][10] == "T"
    # The dip that was typed before is still there.
    page.go_back()
    page.go_back()
    expect(field(page, "How deep")).to_have_value("342")


def test_zeroed_just_now_at_the_answers(page: Page) -> None:
    with_old_zero(page)
    until_answers(page)
    follow(page, "I zeroed it just now")
    expect(page.get_by_text("4.0 Brix is from before")).to_be_visible()
    for text in ("1e3", "9999"):
        box = field(page, "What does water show")
        box.fill(text)
        press(page, "Keep this zero")
        expect(page.get_by_role("alert").first).to_be_visible()
        expect(box).to_have_value(text)
    field(page, "What does water show").fill("0.2")
    press(page, "Below 0")
    next_page(page, "Keep this zero")
    expect(field(page, "What does the reading")).to_have_value("")
    field(page, "What does the reading").fill("4.0")
    expect(page.get_by_text("4.0 Brix → 4.2 Brix × factor 1.5 = 6.3 %")).to_be_visible()
    next_page(page)
    expect(heading(page)).to_have_text("Is everything right?")
    next_page(page, "Work out the recipe")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    assert entries(page)[-1]["body"]["machine"]["instrument"]["zero"]["shows"]["text"] == "-0.2"


def test_new_zero_reaches_a_set_up_that_is_being_changed(page: Page) -> None:
    with_old_zero(page)
    open_group(page, "metals")
    page.get_by_role("checkbox", name="Steel").check(force=True)
    next_page(page)
    page.go_back()
    expect(heading(page)).to_have_text("Wheel lathe")
    dip(page)
    follow(page, "I zeroed it just now")
    next_page(page, "It shows 0")
    for _ in ("the reading", "the dip", "look and smell", "the machine"):
        page.go_back()
    expect(heading(page)).to_have_text("Wheel lathe")
    page.get_by_role("link", name="Change the set-up").click()
    next_page(page, "Save the machine")
    machine = entries(page)[-1]["body"]["machine"]
    assert machine["fluid"]["metals"] == ["steel"]
    assert machine["instrument"]["zero"]["shows"]["text"] == "0"


def test_temperature_may_stay_open(page: Page) -> None:
    with_instrument(page)
    dip(page)
    field(page, "What does the reading").fill("5.0")
    next_page(page)
    press(page, "Not measured")
    page.get_by_role("button", name="Sharp line").click()
    expect(heading(page)).to_have_text("Where should it be?")
    next_page(page)
    expect(page.get_by_text("Not corrected for temperature.")).to_be_visible()


def test_second_method_that_disagrees(page: Page) -> None:
    open_machine(page)
    until_answers(page)
    follow(page, "I have a second method")
    press(page, "Continue")
    expect(page.get_by_role("alert")).to_have_text("Choose the method.")
    choose(page, "Titration")
    for name in ("Drops or millilitres", "Per cent for one drop"):
        for text in ["", *WRONG]:
            assert_refused(page, name, text)
    type_all(page, {"Drops or millilitres": "17", "Per cent for one drop": "0.5"})
    next_page(page)
    expect(page.get_by_text("Titration: 17")).to_be_visible()
    next_page(page, "Work out the recipe")
    expect(page.get_by_text("Two methods disagree: 6.0 % and 8.5 %.")).to_be_visible()
    expect(page.get_by_text("The titration reads high when alkaline cleaner")).to_be_visible()
    expect(page.get_by_text("ask a laboratory")).to_be_visible()
    follow(page, "The larger dose, for 6.0 %")
    expect(heading(page)).to_have_text("The larger dose")
    expect(page.get_by_role("button", name="Save to the log")).to_have_count(0)
    page.go_back()
    expect(heading(page)).not_to_have_text("The larger dose")
    press(page, "Save to the log")
    open_entry(page)
    expect(page.get_by_text("Two methods disagree: 6.0 % and 8.5 %.")).to_be_visible()
    check = entries(page)[-1]
    assert check["body"]["second"] == {
        "method": "titration",
        "shows": {"text": "17", "unit": "1"},
        "factor": {"text": "0.5", "unit": "1"},
    }
    main, other = check["shown"], check["shown"]["disagreement"]["other"]
    doses = [answer["plan"]["totals"]["concentrate_l"] for answer in (main, other)]
    assert doses[0] < doses[1]


@pytest.mark.parametrize(("shows", "said"), [("12", "The two methods agree."), ("", "")])
def test_second_method_that_agrees_or_is_taken_back(page: Page, shows: str, said: str) -> None:
    open_machine(page)
    until_answers(page)
    follow(page, "I have a second method")
    choose(page, "Titration")
    if shows == "":
        press(page, "Take it back")
        expect(heading(page)).to_have_text("Is everything right?")
        expect(page.get_by_text("Second method", exact=True)).to_have_count(0)
        return
    type_all(page, {"Drops or millilitres": shows, "Per cent for one drop": "0.5"})
    next_page(page)
    next_page(page, "Work out the recipe")
    expect(page.get_by_text(said)).to_be_visible()
    expect(page.get_by_text("Two methods disagree")).to_have_count(0)
