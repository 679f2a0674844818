"""pycore.journal.migrations: one test for each step."""

import json

import pytest

from pycore.desk.contract.checked import checked
from pycore.journal.entry import read_line
from pycore.journal.line import from_store
from pycore.journal.migrations import ENTRY_SCHEMA, MIGRATIONS, from_1, migrated
from pycore.quantity.fault import Fault
from tests.examples.files import examples
from tests.phones import LATHE, check, setup, stored_in_schema_1
from web.build.paths import SHARED


def test_there_is_a_step_from_every_older_schema() -> None:
    entry = json.loads(
        (SHARED / "schema" / "log" / "entry.schema.json").read_text(encoding="utf-8")
    )
    now = entry["definitions"]["log_entry"]["properties"]["schema"]["const"]
    assert now == ENTRY_SCHEMA
    assert set(MIGRATIONS) == set(range(1, now))


def test_step_1_names_machines_anew_and_adds_chain_and_flags() -> None:
    old = json.loads(stored_in_schema_1("machine", {"machine": setup()}, 4))
    before = json.dumps(old)
    new = from_1(old)
    assert json.dumps(old) == before
    assert (new["kind"], new["schema"], new["prev"], new["clock_flags"]) == (
        "machine_set",
        2,
        "",
        [],
    )
    same = {"id", "log", "seq", "machine", "measured_at", "wall", "body", "shown", "versions"}
    assert {name: new[name] for name in same} == {name: old[name] for name in same}
    checked("log_entry", new, "line")


def test_step_1_leaves_checks_as_they_are() -> None:
    old = json.loads(stored_in_schema_1("check", {"machine": setup(), **check()}, 4))
    assert from_1(old)["kind"] == "check"
    assert from_1(old)["body"] == old["body"]


def test_step_1_takes_the_chosen_way_into_the_body() -> None:
    old = json.loads(stored_in_schema_1("check", check(), 4, way=2))
    new = from_1(old)
    assert new["body"] == {**check(), "way": 2}
    assert "way" not in new
    checked("check_content", new["body"], "line.body")


STORED = {
    name: example
    for name, example in examples().items()
    if name.startswith(("plan_check", "hold_check", "read_machine"))
}


@pytest.mark.parametrize("name", STORED)
def test_what_the_first_app_stored_is_read(name: str) -> None:
    request, reply = STORED[name]["request"], STORED[name]["reply"]
    kind = "machine" if request["op"] == "read_machine" else "check"
    row = stored_in_schema_1(kind, request["body"], 1, shown=reply["result"])
    entry = read_line(from_store(row), checked)
    assert (entry.is_newer, entry.body) == (False, request["body"])


def test_a_stored_reading_alone_is_read() -> None:
    body = {"machine": setup(), "reading": check()["reading"]}
    assert read_line(from_store(stored_in_schema_1("check", body, 1)), checked).body == body


@pytest.mark.parametrize("name", ["prev", "clock_flags", "by", "hash", "colour"])
def test_step_1_refuses_what_schema_1_did_not_have(name: str) -> None:
    old = {**json.loads(stored_in_schema_1("check", check(), 1)), name: "x"}
    with pytest.raises(Fault) as caught:
        from_1(old)
    assert (caught.value.code, caught.value.got) == ("unknown_field", name)


def test_step_1_names_one_field_too_many_and_always_the_same() -> None:
    old = json.loads(stored_in_schema_1("check", check(), 1))
    for surplus in (("prev", "by"), ("by", "prev")):
        with pytest.raises(Fault) as caught:
            from_1({**old, **dict.fromkeys(surplus, "x")})
        assert (caught.value.path, caught.value.got) == ("line", "by")


def test_step_1_leaves_a_way_beside_what_is_no_body() -> None:
    # Not touched, so that the contract finds it and the line goes into quarantine.
    old = {**json.loads(stored_in_schema_1("check", check(), 1, way=2)), "body": 7}
    assert (from_1(old)["body"], from_1(old)["way"]) == (7, 2)


def test_a_stored_row_is_taken_over_whole() -> None:
    row = stored_in_schema_1("check", {"machine": setup(), **check()}, 3)
    entry = read_line(from_store(row), checked)
    assert entry.line.startswith(row[:-1])
    assert (entry.schema, entry.kind, entry.seq, entry.machine) == (1, "check", 3, LATHE)
    assert entry.body["reading"] == check()["reading"]


def test_todays_entry_needs_no_step() -> None:
    message = {"schema": ENTRY_SCHEMA, "kind": "check"}
    assert migrated(message) is message
