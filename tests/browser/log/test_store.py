"""What the page stores: lines that pycore reads; an alarm where the end of the log is gone."""

import json
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from pycore.desk import handle
from pycore.desk.contract.checked import checked
from pycore.journal.chain import chains_of
from pycore.journal.entry import Entry, read_line
from pycore.journal.line import from_store
from tests.browser.phone import Phone, heading
from tests.browser.server import Server
from tests.browser.sidesteps import dip
from tests.browser.stored import blank_page, cut_after, put_row, rows, store_as_version_1
from tests.browser.walk import check_until_recipe, open_machine, press, save_check, set_up_machine
from tests.phones import LATHE, id_of, setup, stored_in_schema_1


def read(page: Page) -> list[Entry]:
    """The stored rows as pycore reads them; a row that it refuses fails the test."""
    return [read_line(from_store(row["text"]), checked) for row in rows(page)]


def refuse_gaps(entries: list[Entry]) -> None:
    """The lines are numbered 1, 2, 3 and each names the one before."""
    assert [entry.seq for entry in entries] == list(range(1, len(entries) + 1))
    chains = chains_of(entries, ())
    assert (chains.forks, chains.gaps, chains.breaks) == ((), (), ())


@pytest.mark.usefixtures("machine_on_phone")
def test_stored_rows_are_lines_of_pycore(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page, "380", "5.4")
    save_check(page)
    page.get_by_role("link", name="Wheel lathe").click()
    dip(page, "352")
    press(page, "Read later")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    entries = read(page)
    assert [entry.kind for entry in entries] == ["machine_set", "check", "check"]
    assert {entry.schema for entry in entries} == {2}
    assert entries[1].body["dip"]["depth"] == {"text": "380", "unit": "mm"}
    assert entries[2].body["last"]["check"]["reading"]["shows"]["text"] == "5.4"
    refuse_gaps(entries)


@pytest.mark.usefixtures("machine_on_phone")
def test_chosen_way_stands_inside_the_body(page: Page) -> None:
    open_machine(page)
    check_until_recipe(page, "440", "7.4")
    page.locator(".ways a").first.click()
    page.wait_for_url("**/way/1")
    press(page, "Save to the log")
    expect(heading(page)).to_have_text("Saved to the log")
    assert read(page)[1].body["way"] == 0
    page.reload()
    page.get_by_role("link", name="Open this entry").click()
    expect(heading(page)).to_have_text("Check")
    expect(page.locator("h2").nth(1)).not_to_have_text("Set-up")


def test_rows_of_the_first_version_stay_as_they_were(phone: Phone, server: Server) -> None:
    page = phone.start()
    blank_page(page, server)
    body = {"machine": setup("Axle grinder")}
    shown = ask("read_machine", body)["result"]
    text = stored_in_schema_1("machine", body, 1, shown=shown)
    row = {"seq": 1, "id": id_of("old 1"), "text": text}
    store_as_version_1(page, id_of("log of old"), [row])
    page.goto(server.address)
    page.get_by_role("link", name="Axle grinder").click()
    check_until_recipe(page)
    save_check(page)
    assert rows(page)[0] == row
    entries = read(page)
    assert [entry.schema for entry in entries] == [1, 2]
    assert entries[1].machine == LATHE
    refuse_gaps(entries)


@pytest.mark.usefixtures("machine_on_phone")
def test_two_windows_never_take_one_number(phone: Phone, server: Server) -> None:
    page = phone.start()
    page.goto(server.address)
    open_machine(page)
    other = page.context.new_page()
    # A machine of its own: one check of one machine is the same in both windows.
    other.goto(f"{server.address}#/machines/new/name")
    set_up_machine(other, {"Name of the machine": "Axle grinder"}, begin=None)
    for window in (page, other):
        check_until_recipe(window)
    saves = "Array.from(document.querySelectorAll('button')).at(-1).click()"
    page.evaluate(f"setTimeout(() => {{ {saves} }}, 300)")
    other.evaluate(f"setTimeout(() => {{ {saves} }}, 300)")
    for window in (page, other):
        expect(heading(window)).to_have_text("Saved to the log")
    entries = read(page)
    assert len(entries) == 4
    refuse_gaps(entries)


def ask(op: str, body: dict[str, Any]) -> Any:
    """What pycore answers here."""
    return json.loads(handle(json.dumps({"v": 1, "id": "a", "op": op, "body": body})))


def _alarm(page: Page) -> Any:
    return page.get_by_role("alert")


@pytest.mark.usefixtures("machine_on_phone")
def test_wiped_end_is_an_alarm_with_both_numbers(page: Page) -> None:
    open_machine(page)
    for _ in range(2):
        check_until_recipe(page)
        save_check(page)
        page.get_by_role("link", name="Wheel lathe").click()
    old = json.loads(rows(page)[0]["text"])["log"]
    cut_after(page, 1)
    page.goto(page.url.split("#")[0])
    page.reload()
    expect(_alarm(page)).to_contain_text(
        "had reached at least entry 3. Only 1 entry of it is here."
    )
    page.reload()
    expect(_alarm(page)).to_contain_text("had reached at least entry 3.")
    page.get_by_role("link", name="Wheel lathe").click()
    check_until_recipe(page)
    save_check(page)
    fresh = read(page)
    assert [entry.seq for entry in fresh] == [1]
    assert fresh[0].log != old
    page.get_by_role("link", name="What to do now").click()
    press(page, "Go on without them")
    expect(heading(page)).to_have_text("Machines")
    expect(_alarm(page)).to_have_count(0)
    page.reload()
    expect(heading(page)).to_have_text("Machines")
    expect(page.get_by_role("link", name="Wheel lathe").first).to_be_visible()
    expect(_alarm(page)).to_have_count(0)


@pytest.mark.usefixtures("machine_on_phone")
def test_emptied_database_is_never_shown_as_a_first_start(page: Page) -> None:
    open_machine(page)
    page.evaluate(
        "new Promise((done) => { indexedDB.deleteDatabase('pailwright').onsuccess = () => done() })"
    )
    page.goto(page.url.split("#")[0])
    page.reload()
    expect(_alarm(page)).to_contain_text(
        "had reached at least entry 1. Only 0 entries of it are here."
    )


@pytest.mark.usefixtures("machine_on_phone")
def test_changed_last_entry_is_an_alarm(page: Page) -> None:
    open_machine(page)
    row = rows(page)[0]
    put_row(page, {**row, "text": row["text"].replace("Wheel lathe", "Wheel press")})
    page.reload()
    page.goto(page.url.split("#")[0])
    page.reload()
    # The log is read.
    expect(page.get_by_role("link", name="Wheel").first).to_be_visible()
    expect(_alarm(page)).to_have_count(0)
    put_row(page, {**row, "text": row["text"].replace('"hash":"', '"hash":"0')})
    page.reload()
    expect(_alarm(page)).to_contain_text("Entry 1 is not the one that was stored.")


@pytest.mark.usefixtures("machine_on_phone")
@pytest.mark.parametrize("wait_ms", [0, 3, 6, 12, 25])
def test_page_that_ends_while_saving_leaves_all_or_nothing(
    phone: Phone, server: Server, wait_ms: int
) -> None:
    page = phone.start()
    page.goto(server.address)
    open_machine(page)
    check_until_recipe(page)
    with page.expect_navigation():
        page.evaluate(
            "(wait) => { document.querySelector('.main-action').click();"
            " setTimeout(() => location.reload(), wait); }",
            wait_ms,
        )
    expect(heading(page)).to_be_visible()
    if page.get_by_role("button", name="Save to the log").count():
        press(page, "Save to the log")
    expect(page.get_by_text("Saved to the log").or_(heading(page)).first).to_be_visible()
    entries = read(page)
    assert len(entries) in (1, 2)
    refuse_gaps(entries)
    page.goto(server.address)
    page.reload()
    expect(page.get_by_role("link", name="Wheel lathe").first).to_be_visible()
    expect(_alarm(page)).to_have_count(0)
