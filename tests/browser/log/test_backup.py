"""Backups leave the phone whole, and files only ever add to it."""

import csv
import io
from pathlib import Path

import pytest
from playwright.sync_api import Page, Playwright, expect

from pycore.journal.file import PHONE, read_file
from pycore.journal.line import from_store
from pycore.office.merging import merge_command
from pycore.office.tabling import table_command
from tests.browser.files import backup, offer, saved_file, start_at, take_in
from tests.browser.phone import Phone, heading
from tests.browser.server import Server
from tests.browser.stored import cut_after, rows, taken
from tests.browser.walk import check_until_recipe, open_machine, press, save_check, set_up_machine
from tests.phones import Phone as Writer
from tests.phones import check, newer_phone, setup, workshop
from tests.unit.office.office_logs import asked

SHARE = """
window.given = [];
navigator.canShare = () => true;
navigator.share = async ({ files }) => {
  if (window.closes) throw new DOMException("closed", "AbortError");
  window.given.push(await files[0].text());
};
"""


def _lines(text: str) -> list[str]:
    file = read_file(text, PHONE)
    assert (file.findings, file.missing) == ([], 0)
    return file.lines


def _checked_once(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page)
    save_check(page)


def _in_the_office(folder: Path, files: list[str], lines: list[str]) -> None:
    """The phones' files merged on the command line hold their lines, and answer in SQL."""
    for place, text in enumerate(files):
        (folder / f"{place}.txt").write_text(text, encoding="utf-8")
    merged, plant = folder / "all.jsonl", folder / "plant.db"
    assert merge_command([*(str(folder / f"{i}.txt") for i in (0, 1)), "-o", str(merged)]) == 0
    assert _lines(merged.read_text(encoding="utf-8")) == lines
    assert table_command([str(merged), "--sqlite", str(plant)]) == 0
    states = "SELECT name, strength_state FROM machines ORDER BY name"
    assert asked(plant, states) == [("Axle grinder", "weak"), ("Wheel lathe", "weak")]


@pytest.mark.usefixtures("machine_on_phone")
def test_backup_holds_every_row_and_the_count_goes_down(page: Page) -> None:
    _checked_once(page)
    expect(page.get_by_text("2 entries of this phone are in no backup yet.")).to_be_visible()
    page.get_by_role("link", name="Backup").click()
    expect(page.get_by_text("The file holds 2 entries")).to_be_visible()
    name, text = saved_file(page, "Save a backup")
    assert name.startswith("pailwright-20")
    assert name.endswith(".txt")
    assert _lines(text) == [from_store(row["text"]) for row in rows(page)]
    expect(page.get_by_text("went to the downloads of this phone")).to_be_visible()
    # On the page itself at once, on the list behind it, and after another start.
    expect(page.get_by_text("Nothing was saved since then.")).to_be_visible()
    expect(page.get_by_text("in no backup yet")).to_have_count(0)
    press(page, "Back")
    expect(heading(page)).to_have_text("Machines")
    expect(page.get_by_text("Nothing was saved since then.")).to_be_visible()
    start_at(page)
    expect(page.get_by_text("Nothing was saved since then.")).to_be_visible()


@pytest.mark.usefixtures("machine_on_phone")
def test_share_sheet_is_used_and_may_be_closed(phone: Phone, server: Server) -> None:
    page = phone.start()
    page.add_init_script(SHARE)
    page.goto(server.address)
    open_machine(page)
    start_at(page, "backup")
    expect(page.get_by_text("The file holds 1 entry")).to_be_visible()
    page.evaluate("window.closes = true")
    press(page, "Save a backup")
    expect(page.get_by_text("Nothing was handed over.")).to_be_visible()
    expect(page.get_by_text("1 entry of this phone is in no backup yet.")).to_be_visible()
    page.evaluate("window.closes = false")
    page.wait_for_timeout(1_100)
    press(page, "Save a backup")
    expect(page.get_by_text("The file was handed over.")).to_be_visible()
    assert len(_lines(page.evaluate("window.given[0]"))) == 1


def test_two_phones_end_equal_and_the_same_file_again_adds_nothing(
    playwright: Playwright, tmp_path: Path, server: Server
) -> None:
    phones = [Phone(playwright, tmp_path / name) for name in ("one", "other")]
    try:
        pages = [phone.start() for phone in phones]
        for page, name in zip(pages, ("Wheel lathe", "Axle grinder"), strict=True):
            page.goto(server.address)
            set_up_machine(page, {"Name of the machine": name})
            check_until_recipe(page)
            save_check(page)
        files = [backup(page) for page in pages]
        for page, text in zip(pages, reversed(files), strict=True):
            take_in(page, text, 2)
            press(page, "Back to the machines")
            for name in ("Wheel lathe", "Axle grinder"):
                row = page.get_by_role("link", name=name).first
                expect(row).to_contain_text("Too weak")
            expect(page.get_by_text("Nothing was saved since then.")).to_be_visible()
        one, other = (_lines(backup(page)) for page in pages)
        assert one == other
        assert len(one) == 4
        _in_the_office(tmp_path, files, one)
        for page, text in zip(pages, reversed(files), strict=True):
            offer(page, text)
            expect(page.get_by_text("Nothing in this file is new here.")).to_be_visible()
            expect(page.get_by_text("2 entries are here already.")).to_be_visible()
            expect(page.get_by_role("button", name="Add")).to_have_count(0)
            assert len(taken(page)) == 2
        assert [problem for phone in phones for problem in phone.problems] == []
    finally:
        for phone in phones:
            phone.close()


@pytest.mark.usefixtures("machine_on_phone")
def test_backup_brings_a_lost_end_back(page: Page) -> None:
    _checked_once(page)
    text = backup(page)
    cut_after(page, 1)
    start_at(page)
    page.get_by_role("link", name="What to do now").click()
    press(page, "Take in a backup file")
    expect(heading(page)).to_have_text("Take in a file")
    take_in(page, text, 1)
    press(page, "Back to the machines")
    expect(page.get_by_role("link", name="Wheel lathe").first).to_contain_text("Too weak")
    expect(page.get_by_role("alert")).to_have_count(0)


NIGHT, _ = workshop()
WHOLE = NIGHT.export()
HOSTILE = Writer("hostile")
HOSTILE.save("note", {"text": "x", "__proto__": {"a": 1}}, 0, machine="")
HOSTILE.save("note", {"text": "x" * 5_000}, 60, machine="")
DEEP = '{"pailwright":"log","format":1,"lines":1,"logs":[]}\n' + "[" * 100_000
BAD_FILES = {
    "damaged": (WHOLE.replace('"depth":{"text":"342"', '"depth":{"text":"392"'), "changed or dam"),
    "cut": (WHOLE[: len(WHOLE) * 2 // 3], "This file was cut off"),
    "foreign": ("Date;Machine\n1;2\n", "is not an export of a coolant log. Nothing was changed."),
    "picture": (b"\x89PNG\r\n\x1a\n" + bytes(range(256)), "is not an export of a coolant log."),
    "empty": ("", "This file is empty."),
    "newer": (WHOLE.replace('"format":1', '"format":2', 1), "comes from a newer version."),
    "hostile": (HOSTILE.export(), "2 lines are damaged or not allowed. They are never used."),
    "deep": (DEEP, "1 line is damaged or not allowed. It is never used."),
    "large": (b"x" * (20 * 1024 * 1024 + 1), "This file is too large for a phone."),
}


def test_each_bad_file_is_named_and_changes_nothing(page: Page) -> None:
    expect(page.get_by_role("button", name="Add your first machine")).to_be_visible()
    for kind, (content, sentence) in BAD_FILES.items():
        offer(page, content)
        expect(page.get_by_text(sentence)).to_be_visible()
        has_whole_ones = kind in ("damaged", "cut")
        expect(page.get_by_role("button", name="Add")).to_have_count(int(has_whole_ones))
        assert taken(page) == []


def test_whole_entries_of_a_cut_file_can_be_added(page: Page) -> None:
    expect(page.get_by_role("button", name="Add your first machine")).to_be_visible()
    text, _ = BAD_FILES["cut"]
    assert isinstance(text, str)
    take_in(page, text, 2)
    assert [line["whole"] for line in taken(page)] == [True, True, False]
    take_in(page, WHOLE, len(NIGHT.lines) - 2)
    offer(page, WHOLE)
    expect(page.get_by_text("Nothing in this file is new here.")).to_be_visible()


def test_entries_of_other_versions_are_kept_and_passed_on(page: Page) -> None:
    expect(page.get_by_role("button", name="Add your first machine")).to_be_visible()
    phone = newer_phone()
    offer(page, phone.export())
    expect(page.get_by_text("2 entries come from a newer version.")).to_be_visible()
    take_in(page, phone.export(), 3)
    assert _lines(backup(page)) == phone.lines


@pytest.mark.usefixtures("machine_on_phone")
def test_what_another_app_has_shown_breaks_no_page(page: Page) -> None:
    open_machine(page)
    machine = rows(page)[0]["text"].split('"machine":"')[1][:32]
    writer = Writer("odd")
    body = {**check(), "machine": setup()}
    odd = {"assessment": {"strength": {"state": "<b>x</b>", "shown": 5}}}
    writer.save("check", body, 0, machine=machine, shown=odd)
    writer.save("check", body, 60, shown={"assessment": 7})
    writer.save("machine_set", {"machine": setup("Bare")}, 120)
    take_in(page, writer.export(), 3)
    press(page, "Back to the machines")
    expect(page.get_by_role("link", name="Wheel lathe").first).to_be_visible()
    page.get_by_role("link", name="Open the log").click()
    expect(heading(page)).to_have_text("Log")
    expect(page.get_by_text("2 entries were made with another version.")).to_be_visible()


def test_table_cannot_start_a_formula(page: Page) -> None:
    set_up_machine(page, {"Name of the machine": '=1+1;"x"'})
    start_at(page, "table")
    expect(page.get_by_text("The table has 1 row.")).to_be_visible()
    name, text = saved_file(page, "Save the table")
    assert name.endswith(".csv")
    cells = [cell for row in csv.reader(io.StringIO(text)) for cell in row]
    assert '\'=1+1;"x"' in cells
    assert not any(cell.startswith(("=", "+", "@", "\t", "\r", "\n")) for cell in cells)
    offer(page, text, "table.csv")
    expect(page.get_by_text("is not an export of a coolant log.")).to_be_visible()


def test_fork_is_told_and_not_used(page: Page) -> None:
    expect(page.get_by_role("button", name="Add your first machine")).to_be_visible()
    one = Writer("cloned")
    one.save("note", {"text": "before"}, 0, machine="")
    other = one.clone()
    one.save("check", check("342"), 60)
    other.save("check", check("343"), 60, id="b" * 32)
    take_in(page, one.export(), 2)
    offer(page, other.export())
    expect(page.get_by_text("Two different entries claim one place in a log.")).to_be_visible()
    press(page, "Add 1 entry")
    expect(page.get_by_text("1 entry was added.")).to_be_visible()
    start_at(page, "log")
    expect(page.get_by_text("2 entries are kept apart and not used")).to_be_visible()
