"""Tanks of every shape: measures, refusals at each field, what another unit clears."""

import json

import pytest
from playwright.sync_api import Page, expect

from tests.browser.phone import heading, wait_until_ready
from tests.browser.setup.sumpwalk import BOX, SHAPES, choose, to_kinds, to_size
from tests.browser.setup.test_wrong_input import spoil_fields
from tests.browser.stored import entries
from tests.browser.walk import (
    field,
    fill_in,
    next_page,
    open_group,
    open_machine,
    press,
    set_up_machine,
)

# Worked out by hand from the measures in SHAPES: 1200 × 600 mm with a floor that rises 60 mm to
# a full mark of 400 mm holds 288 - 21.6 L; two boxes of 400 and 800 mm, the second floor 120 mm
# higher, 96 + 134.4 L; a standing tank 600 mm across 0.6² π / 4 × 700 L.
FULL = {
    BOX: "288 L",
    "Box with a sloped floor": "266 L",
    "Boxes with floors at different heights": "230 L",
    "Round tank, standing": "198 L",
}


@pytest.mark.parametrize(("kind", "volume"), FULL.items())
def test_shape_tells_its_litres_while_it_is_typed(page: Page, kind: str, volume: str) -> None:
    to_size(page, kind)
    expect(page.get_by_text(f"{volume} at the full mark")).to_be_visible()
    next_page(page)
    expect(heading(page)).to_have_text("Where is the volume from?")


@pytest.mark.parametrize("kind", [kind for kind in SHAPES if kind != BOX])
def test_every_field_of_a_shape_refuses_what_is_wrong(page: Page, kind: str) -> None:
    to_size(page, kind)
    expected = len(SHAPES[kind]) + (1 if "different heights" in kind else 0)
    assert len(spoil_fields(page)) == expected
    next_page(page)


def test_dipped_end_is_asked_for(page: Page) -> None:
    to_kinds(page)
    choose(page, "Box with a sloped floor")
    next_page(page)
    fill_in(page, SHAPES["Box with a sloped floor"])
    press(page, "Continue")
    expect(page.get_by_role("alert").first).to_contain_text("Choose which end you dip")


def test_boxes_are_added_and_taken_out_and_must_not_fall(page: Page) -> None:
    to_size(page, "Boxes with floors at different heights")
    press(page, "Add a box")
    fill_in(page, {"of box 3": "300", "floor in box 3": "100"})
    press(page, "Continue")
    expect(page.get_by_role("alert").first).to_contain_text("eight of the floor in row 3")
    press(page, "Take the last box out")
    next_page(page)


def test_a_thousand_or_a_decimal_sign_is_refused(page: Page) -> None:
    wait_until_ready(page)
    measures = {"Depth at the full mark": "1200", "Volume at the full mark": "900"}
    to_size(page, "Volume at the full mark", measures)
    field(page, "Depth at the full mark").fill("1,200")
    press(page, "Continue")
    expect(page.get_by_role("alert").first).to_contain_text("Type 1.2 mm or 1200 mm")
    expect(field(page, "Depth at the full mark")).to_have_value("1,200")


def test_things_take_their_room_and_are_refused_where_they_are_too_large(page: Page) -> None:
    set_up_machine(page, SHAPES[BOX], kind=BOX)
    open_group(page, "things in the coolant")
    press(page, "Add a thing")
    fill_in(page, {"Length of the thing": "300", "Width of the thing": "200", "Ends this": "250"})
    # 300 × 200 × 250 mm stand in 288 L.
    expect(page.get_by_text("273 L at the full mark")).to_be_visible()
    assert len(spoil_fields(page)) == 4
    field(page, "Length of the thing").fill("1200")
    field(page, "Width of the thing").fill("700")
    press(page, "Continue")
    expect(page.get_by_role("alert").first).to_contain_text("leaves no room")
    press(page, "Remove thing 1")
    next_page(page)
    expect(heading(page)).to_have_text("Is the set-up right?")


@pytest.mark.usefixtures("machine_on_phone")
@pytest.mark.parametrize(
    ("group", "answers", "typed"),
    [
        (
            "coolant outside the sump",
            (),
            {"Coolant outside the sump": "30", "It may be off by": "5", "Rest that": "10"},
        ),
        (
            "taking the level",
            ("From a point at the top",),
            {"Height of that point": "500", "To be added": "-5"},
        ),
    ],
)
def test_every_field_of_the_details_refuses_what_is_wrong(
    page: Page, group: str, answers: tuple[str, ...], typed: dict[str, str]
) -> None:
    open_machine(page)
    open_group(page, group)
    for answer in answers:
        choose(page, answer)
    for name, text in typed.items():
        field(page, name).fill(text)
    assert len(spoil_fields(page)) == len(typed)
    next_page(page)
    next_page(page, "Save the machine")
    sump = json.dumps(entries(page)[-1]["body"]["machine"]["sump"])
    assert all(f'"{text}"' in sump for text in typed.values())


def test_another_unit_clears_what_was_typed_in_the_old_one(page: Page) -> None:
    to_size(page, "Round tank, lying")
    page.go_back()
    page.go_back()
    page.get_by_role("combobox", name="Dip stick").select_option("in")
    next_page(page)
    next_page(page)
    for name in SHAPES["Round tank, lying"]:
        expect(field(page, name)).to_have_value("")


def test_draft_of_an_older_build_still_holds(page: Page) -> None:
    to_kinds(page)
    draft = "pailwright.draft.setup.new"
    form = json.loads(page.evaluate(f"localStorage.getItem('{draft}')"))
    for name in ("rise", "boxes", "things", "readAs", "wait", "divided"):
        del form[name]
    page.evaluate("([name, text]) => localStorage.setItem(name, text)", [draft, json.dumps(form)])
    page.reload()
    page.go_back()
    page.go_back()
    expect(field(page, "Name of the machine")).to_have_value("Wheel lathe")
