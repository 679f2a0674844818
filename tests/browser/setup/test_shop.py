"""What a shop knows and allows: typed once, kept with the machine, used by the next recipe."""

import pytest
from playwright.sync_api import Page, expect

from tests.browser.phone import heading, wait_until_ready
from tests.browser.stored import entries
from tests.browser.walk import (
    OPTIONS,
    change_group,
    check_until_recipe,
    field,
    fill_in,
    next_page,
    open_machine,
    press,
    save_check,
    set_up_machine,
)

GROUPS = ("rim", "measuring", "what the shop allows")

# An entry of the first build: nothing in it about the shop.
MAKE_OLD = """
() => new Promise((give, refuse) => {
  const asked = indexedDB.open("pailwright");
  asked.onerror = () => refuse(asked.error);
  asked.onsuccess = () => {
    const walk = asked.result.transaction("entries", "readwrite");
    walk.objectStore("entries").openCursor().onsuccess = (event) => {
      const cursor = event.target.result;
      if (cursor === null) return;
      const entry = JSON.parse(cursor.value.text);
      delete entry.body.machine.ways;
      cursor.update({ ...cursor.value, text: JSON.stringify(entry) });
      cursor.continue();
    };
    walk.oncomplete = () => { asked.result.close(); give(null); };
    walk.onerror = () => refuse(walk.error);
  };
})
"""
MAKE_OLD_DRAFT = """
() => {
  const name = "pailwright.draft.setup.new";
  const { neverAbove, mostBuckets, ...old } = JSON.parse(localStorage.getItem(name));
  localStorage.setItem(name, JSON.stringify(old));
}
"""


def choose(page: Page, name: str) -> None:
    """Chooses an answer by the beginning of its words."""
    # The drawn circle lies over the real one.
    page.get_by_role("radio", name=name).check(force=True)


def open_set_up(page: Page) -> None:
    """From the machine's own page to the check of its set-up."""
    page.get_by_role("link", name="Change the set-up").click()


def row(page: Page, name: str) -> str:
    """What stands beside a name on the check of the set-up."""
    place = page.locator(".fact-row", has=page.get_by_text(name, exact=True))
    # What lies in the folded part has a text, but no visible one.
    return (place.locator("dd").text_content() or "").replace("\u00a0", " ")


def fill_everything(page: Page) -> None:
    """Every optional field and answer, from the check of the set-up and back to it."""
    for group in GROUPS:
        change_group(page, group)
        if group == "what the shop allows":
            choose(page, "Yes, when nothing else helps")
            choose(page, "Yes It mixes concentrate")
        fill_in(page, OPTIONS)
        next_page(page)


@pytest.mark.usefixtures("machine_on_phone")
def test_every_option_reaches_the_store_and_the_next_recipe(page: Page) -> None:
    open_machine(page)
    open_set_up(page)
    fill_everything(page)
    assert row(page, "Never above, pump stopped") == "470 mm"
    assert row(page, "Taking coolant out") == "Yes, when nothing else helps"
    assert row(page, "Mixing unit") == "1 % to 10 %, by 0.5 %"
    next_page(page, "Save the machine")

    machine = entries(page, "machine_set")[-1]["body"]["machine"]
    assert machine["sump"]["never_above_depth"] == {"text": "470", "unit": "mm"}
    assert machine["pail"] == {
        "first_mark": {"text": "2", "unit": "L"},
        "jug_first_mark": {"text": "100", "unit": "mL"},
        "jug_size": {"text": "1000", "unit": "mL"},
        "measure_by": "jug",
    }
    assert machine["ways"] == {
        "draw_off": True,
        "own_fluid": True,
        "carry_out": {"text": "2", "unit": "L"},
        "most_buckets": {"text": "8", "unit": "1"},
        "heaviest": {"text": "12", "unit": "kg"},
        "unit": {
            "lowest": {"text": "1", "unit": "%"},
            "highest": {"text": "10", "unit": "%"},
            "step": {"text": "0.5", "unit": "%"},
        },
    }

    check_until_recipe(page)
    save_check(page)
    request = entries(page, "check")[-1]["shown"]["request"]
    # 470 of 440 mm and 198 L in a straight sump.
    assert abs(request["never_above_l"] - 198 * 470 / 440) < 1e-9
    assert request["pail"]["first_mark_l"] == 2
    assert request["draw_off"]["allowed"] is True
    assert request["effort"] == {"most_buckets": 8, "heaviest_kg": 12}
    assert request["unit"] == {"lowest_pct": 1, "highest_pct": 10, "step_pct": 0.5}
    assert request["losses"] == {"carry_out_l_d": 2}

    page.get_by_role("link", name="Open the log").click()
    expect(heading(page)).to_have_text("Log")
    page.get_by_role("main").get_by_role("link", name="Wheel lathe").first.click()
    expect(page.get_by_text("Never above, pump stopped")).to_be_attached()
    expect(page.get_by_text("Leaves with parts in a day")).to_be_attached()


def test_ordinary_set_up_stays_short_and_says_what_holds(page: Page) -> None:
    seen: list[str] = []
    set_up_machine(page, at_page=lambda page: seen.append(heading(page).inner_text()))
    assert "What does your shop allow?" not in seen
    assert "How do bucket and jug measure?" not in seen
    machine = entries(page, "machine_set")[-1]["body"]["machine"]
    assert machine["ways"] == {"draw_off": False, "own_fluid": True}
    assert "pail" not in machine
    open_set_up(page)
    # The factor and where it is from are one step on two pages.
    steps = len(seen) - 1
    expect(page.locator(".top-step")).to_have_text(f"Step {steps} of {steps}")
    assert row(page, "Taking coolant out") == "Only as another way"
    assert row(page, "Lowest mark on the bucket") == "Not given"
    assert row(page, "Mixing unit") == "No mixing unit"
    change_group(page, "measuring")
    expect(page.locator(".top-step")).to_have_count(0)


@pytest.mark.usefixtures("machine_on_phone")
def test_measured_by_the_bucket_and_nothing_carried_back(page: Page) -> None:
    open_machine(page)
    open_set_up(page)
    change_group(page, "measuring")
    choose(page, "The bucket's own marks")
    next_page(page)
    change_group(page, "what the shop allows")
    page.get_by_role("radio", name="No", exact=True).check(force=True)
    next_page(page)
    assert row(page, "Concentrate is measured by") == "The bucket's own marks"
    next_page(page, "Save the machine")
    machine = entries(page, "machine_set")[-1]["body"]["machine"]
    assert machine["pail"] == {"measure_by": "pail"}
    assert machine["ways"] == {"draw_off": False, "own_fluid": False}
    open_set_up(page)
    assert row(page, "Own coolant as carrier") == "No"


def test_table_is_asked_for_its_never_above_mark_alone(page: Page) -> None:
    wait_until_ready(page)
    at_the_rim: list[tuple[str, int]] = []

    def note(page: Page) -> None:
        if field(page, "Never above").count():
            at_the_rim.append((heading(page).inner_text(), page.get_by_role("textbox").count()))
        if heading(page).inner_text() == "How do you know the volume?":
            choose(page, "Table of depth")
        for cell, text in (
            ("Depth in row 1", "100"),
            ("Volume in row 1", "40"),
            ("Depth in row 2", "480"),
            ("Volume in row 2", "210"),
        ):
            if field(page, cell).count():
                field(page, cell).fill(text)
        if field(page, "Never above").count():
            field(page, "Never above").fill("481")
            press(page, "Continue")
            expect(page.get_by_role("alert").first).to_contain_text("480")
            field(page, "Never above").fill("460")

    set_up_machine(page, at_page=note)
    assert at_the_rim == [("Is there a mark never to pass?", 1)]
    sump = entries(page, "machine_set")[-1]["body"]["machine"]["sump"]
    assert sump["never_above_depth"] == {"text": "460", "unit": "mm"}


@pytest.mark.usefixtures("machine_on_phone")
def test_contradictions_are_told_at_the_field_of_their_page(page: Page) -> None:
    open_machine(page)
    open_set_up(page)
    for group, name, text, said in (
        ("rim", "Never above", "439", "440"),
        # Unusual as well: the refusal comes first, so that Keep cannot carry it past the page.
        ("measuring", "Lowest mark on the bucket", "11", "too large for bucket or jug"),
    ):
        change_group(page, group)
        field(page, name).fill(text)
        press(page, "Continue")
        expect(page.get_by_role("alert").first).to_contain_text(said)
        expect(field(page, name)).to_have_attribute("aria-invalid", "true")
        field(page, name).fill("")
        next_page(page)


@pytest.mark.usefixtures("machine_on_phone")
def test_another_unit_clears_what_was_typed_in_it(page: Page) -> None:
    open_machine(page)
    open_set_up(page)
    fill_everything(page)
    change_group(page, "units")
    for tool, unit in (("Dip stick", "in"), ("Bucket", "US gal"), ("Jug", "US fl oz")):
        page.get_by_role("combobox", name=tool).select_option(unit)
    next_page(page)
    for name in ("Never above, pump stopped", "Lowest mark on the bucket", "Heaviest bucket"):
        assert row(page, name) == "Not given"
    assert row(page, "Highest mark on the jug") == "Not given"
    # The plate's unit stayed, so what was typed in it still holds.
    assert row(page, "Leaves with parts in a day") == "2 L"
    change_group(page, "what the shop allows")
    expect(page.get_by_role("textbox", name="Heaviest bucket to carry , pounds")).to_be_visible()


@pytest.mark.usefixtures("machine_on_phone")
def test_older_machine_opens_with_what_it_has(page: Page) -> None:
    open_machine(page)
    page.evaluate(MAKE_OLD)
    page.reload()
    assert "ways" not in entries(page, "machine_set")[-1]["body"]["machine"]
    open_set_up(page)
    assert row(page, "Depth at the full mark") == "440 mm"
    assert row(page, "Taking coolant out") == "Only as another way"
    assert row(page, "Own coolant as carrier") == "Yes, healthy coolant only"
    next_page(page, "Save the machine")
    machine = entries(page, "machine_set")[-1]["body"]["machine"]
    assert machine["ways"] == {"draw_off": False, "own_fluid": True}


def test_draft_of_another_build_is_dropped(page: Page) -> None:
    press(page, "Add your first machine")
    field(page, "Name of the machine").fill("Wheel lathe")
    page.reload()
    expect(field(page, "Name of the machine")).to_have_value("Wheel lathe")
    page.evaluate(MAKE_OLD_DRAFT)
    page.reload()
    expect(field(page, "Name of the machine")).to_have_value("")
