"""Instrument, zero, metals, sheet, drum and water: typed, refused, saved, found in the log."""

import json
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from tests.browser.fluid import assert_day_refused, choose, day_parts, set_day, type_all
from tests.browser.phone import heading
from tests.browser.setup.test_shop import row
from tests.browser.setup.test_wrong_input import WRONG, assert_refused
from tests.browser.stored import entries
from tests.browser.walk import (
    change_group,
    check_until_recipe,
    field,
    next_page,
    open_group,
    open_machine,
    press,
    save_check,
    start_check,
)

CHECK_TITLE = "Is the set-up right?"
# Negative numbers are what a zero may be.
WRONG_ZERO = [text for text in WRONG if not text.startswith("-")] + ["-11"]


def machine_of(page: Page) -> dict[str, Any]:
    """The newest set-up as it lies in the store."""
    body: dict[str, Any] = [e for e in entries(page) if e["kind"] == "machine_set"][-1]["body"]
    return body["machine"]


@pytest.mark.usefixtures("machine_on_phone")
def test_instrument_and_zero(page: Page) -> None:
    open_machine(page)
    assert "instrument" not in machine_of(page)
    open_group(page, "instrument")
    choose(page, "Per cent")
    expect(page.get_by_text("then the coolant's counts once")).to_be_visible()
    assert_refused(page, "Factor set in the instrument", "")
    for text in WRONG:
        assert_refused(page, "Factor set in the instrument", text)
    field(page, "Factor set").fill("1.5")
    for name in ("From one mark", "Highest mark of the scale"):
        for text in WRONG:
            assert_refused(page, name, text)
        field(page, name).fill("")
    type_all(page, {"From one mark": "0.1", "Highest mark": "30", "Name or number": "No. 3"})
    choose(page, "No")
    next_page(page)
    change_group(page, "zero of the instrument")
    for text in WRONG_ZERO:
        assert_refused(page, "What did it show", text)
    field(page, "What did it show").fill("0.1")
    assert_refused(page, "How warm", "hot")
    field(page, "How warm").fill("20")
    type_all(page, {"On which day": "2026-01-02"})
    expect(page.get_by_text("Friday, 2 January 2026")).to_be_visible()
    expect(page.get_by_text("The zero is older than a day")).to_be_visible()
    choose(page, "Demineralised")
    next_page(page)
    assert row(page, "Factor inside it") == "1.5"
    assert row(page, "Zero in water") == "0.1 %"
    next_page(page, "Save the machine")
    assert machine_of(page)["instrument"] == {
        "shows": "per_cent",
        "name": "No. 3",
        "factor_inside": {"text": "1.5", "unit": "1"},
        "compensation": "none",
        "resolution": {"text": "0.1", "unit": "%"},
        "highest": {"text": "30", "unit": "%"},
        "zero": {
            "shows": {"text": "0.1", "unit": "%"},
            "on": "2026-01-02",
            "temperature": {"text": "20", "unit": "°C"},
            "water": "demineralised",
        },
    }


@pytest.mark.usefixtures("machine_on_phone")
def test_per_cent_is_multiplied_once(page: Page) -> None:
    open_machine(page)
    open_group(page, "instrument")
    choose(page, "Per cent")
    type_all(page, {"Factor set": "1.5"})
    next_page(page)
    next_page(page, "Save the machine")
    start_check(page)
    page.goto(page.url.replace("dip", "reading"))
    field(page, "What does the reading").fill("6.3")
    expect(page.get_by_text("6.3 % → 4.2 Brix × factor 1.5 = 6.3 %")).to_be_visible()


@pytest.mark.usefixtures("machine_on_phone")
def test_another_scale_forgets_what_was_typed_on_the_first(page: Page) -> None:
    open_machine(page)
    open_group(page, "instrument")
    choose(page, "Brix")
    type_all(page, {"Highest mark": "18"})
    choose(page, "Refractive index")
    expect(field(page, "Highest mark")).to_have_value("")


@pytest.mark.usefixtures("machine_on_phone")
def test_metals_sheet_drum_and_water(page: Page) -> None:
    open_machine(page)
    open_group(page, "metals")
    expect(page.get_by_text("Is magnesium worked on this machine?")).to_be_visible()
    page.get_by_role("checkbox", name="Magnesium").check(force=True)
    press(page, "Continue")
    expect(page.get_by_role("alert").first).to_contain_text("made for magnesium")
    choose(page, "No, or not known")
    expect(page.get_by_text("not known to be made for magnesium")).to_be_visible()
    next_page(page)

    change_group(page, "data sheet")
    for name in ("pH of the", "Density", "Titration", "Acid split"):
        for text in WRONG:
            assert_refused(page, name, text)
        field(page, name).fill("")
    type_all(page, {"pH of the": "9.2", "Density": "0.98", "Titration": "0.5", "Softest": "15"})
    press(page, "Continue")
    expect(page.get_by_role("alert")).to_have_count(2)
    type_all(page, {"Who says": "The sheet", "Hardest": "5"})
    press(page, "Continue")
    expect(page.get_by_role("alert").first).to_contain_text("Lowest hardness")
    type_all(page, {"Softest": "5", "Hardest": "15"})
    next_page(page)

    change_group(page, "drum in use")
    type_all(page, {"Batch": "D-2611", "Delivered on": "2025-02-03"})
    expect(page.get_by_text("The drum is older than a year")).to_be_visible()
    day_parts(page, "Opened on")[0].fill("3")
    assert_day_refused(page, "Opened on", "You typed “?-?-03”")
    set_day(page, "Opened on", "2999-02-03")
    assert_day_refused(page, "Opened on", "2999-02-03")
    set_day(page, "Opened on", "2025-03-01")
    page.get_by_role("combobox", name="Shelf life").select_option("12")
    expect(page.get_by_text("Best before Tuesday, 3 February 2026")).to_be_visible()
    next_page(page)

    _type_water(page)
    next_page(page)
    expect(page.get_by_text("The concentrate is past its shelf life")).to_be_visible()
    next_page(page, "Save the machine")
    _assert_stored(page)


def _type_water(page: Page) -> None:
    """The mixing water, refused and said back in every unit of hardness."""
    change_group(page, "mixing water")
    choose(page, "Softened")
    for name in ("Hardness", "Chloride", "Nitrate"):
        for text in WRONG:
            assert_refused(page, name, text)
        field(page, name).fill("")
    type_all(page, {"Hardness": "18", "Chloride": "40"})
    # DIN 38409-6 and ASTM D1126 units, as in shared/checks/hardness.json: 1 °dH is 17.85 mg/L.
    expect(page.get_by_text("321 mg/L CaCO₃ = 18.0 °dH")).to_be_visible()
    expect(page.get_by_text("Softened water is not demineralised")).to_be_visible()
    expect(page.get_by_text("Harder than this coolant's limit")).to_be_visible()
    page.get_by_role("combobox", name="Hardness in").select_option("gpg")
    expect(field(page, "Hardness")).to_have_value("")
    page.get_by_role("combobox", name="Hardness in").select_option("°dH")
    type_all(page, {"Hardness": "18"})


def _assert_stored(page: Page) -> None:
    """All that was typed is in the machine, in the next check and in the log."""
    machine = machine_of(page)
    fluid = machine["fluid"]
    assert fluid["metals"] == ["magnesium"]
    assert fluid["made_for_magnesium"] is False
    assert (fluid["batch"], fluid["delivered_on"], fluid["opened_on"]) == (
        "D-2611",
        "2025-02-03",
        "2025-03-01",
    )
    assert fluid["shelf_life_months"] == 12
    assert fluid["first_fill_ph"] == {"text": "9.2", "unit": "1"}
    assert fluid["density"] == {"text": "0.98", "unit": "kg/L"}
    assert fluid["water_limits"] == {
        "scheme": "The sheet",
        "low": {"text": "5", "unit": "°dH"},
        "high": {"text": "15", "unit": "°dH"},
    }
    assert machine["water"] == {
        "kind": "softened",
        "hardness": {"text": "18", "unit": "°dH"},
        "chloride": {"text": "40", "unit": "mg/L"},
    }
    check_until_recipe(page)
    save_check(page)
    assert entries(page)[-1]["body"]["machine"] == machine
    page.get_by_role("link", name="Open the log").click()
    expect(heading(page)).to_have_text("Log")
    page.get_by_role("main").get_by_role("link", name="Wheel lathe").first.click()
    for fact in ("Metals worked", "Batch number", "Hardest water", "Chloride"):
        expect(page.get_by_text(fact, exact=True)).to_be_attached()


@pytest.mark.usefixtures("machine_on_phone")
@pytest.mark.parametrize(
    ("answer", "field_name", "text", "reads"),
    [
        # 5 % over or times the number: the direction turns what a 5 % mix reads.
        ("Multiply the reading", "Multiply the reading by", "1.25", "4 Brix"),
        ("Divide the reading", "Divide the reading by", "0.8", "4 Brix"),
    ],
)
def test_direction_of_the_factor(
    page: Page, answer: str, field_name: str, text: str, reads: str
) -> None:
    open_machine(page)
    open_group(page, "factor")
    choose(page, answer)
    for wrong in ["", *WRONG]:
        assert_refused(page, field_name, wrong)
    field(page, field_name).fill(text)
    expect(page.get_by_text(f"mix reads {reads}.")).to_be_visible()
    press(page, "Continue")
    keep_what_is_asked(page)
    next_page(page, "Save the machine")
    fluid = machine_of(page)["fluid"]
    assert fluid["factor"] == {"text": text, "unit": "1"}
    assert fluid["factor_direction"] == answer.split()[0].lower()


def keep_what_is_asked(page: Page) -> None:
    """Keeps every number that is asked about, until the check of the set-up is there."""
    for _ in range(3):
        keep = page.get_by_role("button", name="Keep")
        expect(keep.or_(page.get_by_text(CHECK_TITLE)).first).to_be_visible()
        if heading(page).inner_text() == CHECK_TITLE and not keep.count():
            return
        keep.click()


@pytest.mark.usefixtures("machine_on_phone")
def test_printed_chart(page: Page) -> None:
    open_machine(page)
    open_group(page, "factor")
    choose(page, "A printed chart")
    press(page, "Continue")
    expect(page.get_by_role("alert").first).to_contain_text("at least one row")
    field(page, "Mix in row 1").fill("5")
    for text in ["", *WRONG]:
        assert_refused(page, "Reading in row 1", text)
    type_all(page, {"Reading in row 1": "4", "Mix in row 2": "10", "Reading in row 2": "3"})
    press(page, "Continue")
    expect(page.get_by_role("alert").first).to_contain_text("larger than in the row above")
    type_all(page, {"Reading in row 2": "8"})
    expect(page.get_by_text("mix reads 4 Brix.")).to_be_visible()
    press(page, "Continue")
    # It has moved by more than a tenth from the factor before it.
    keep_what_is_asked(page)
    next_page(page, "Save the machine")
    fluid = machine_of(page)["fluid"]
    assert "factor" not in fluid
    assert [pair["reading"]["text"] for pair in fluid["factor_chart"]] == ["4", "8"]
    check_until_recipe(page)
    assert page.get_by_text("4.0 × factor 1.25 = 5.0 %").count()


def test_draft_of_an_older_build_still_opens(page: Page) -> None:
    press(page, "Add your first machine")
    field(page, "Name of the machine").fill("Wheel lathe")
    name = "pailwright.draft.setup.new"
    draft = json.loads(page.evaluate(f"localStorage.getItem({json.dumps(name)})"))
    later = [key for key in draft if key.startswith(("glass", "zero", "jugs", "waterK", "metals"))]
    assert len(later) > 8
    old = {key: value for key, value in draft.items() if key not in later}
    old |= {"hasFactor": "yes", "factor": "1.5"}
    del old["factorWay"]
    page.evaluate(f"localStorage.setItem({json.dumps(name)}, {json.dumps(json.dumps(old))})")
    page.reload()
    expect(field(page, "Name of the machine")).to_have_value("Wheel lathe")
    page.goto(page.url.replace("/name", "/factor"))
    expect(page.get_by_role("radio", name="Multiply the reading")).to_be_checked()
    expect(field(page, "Multiply the reading by")).to_have_value("1.5")
