"""pycore.desk.log.logs: operations on whole logs, through the door."""

import json

import pytest

from pycore.desk.door import handle
from pycore.journal.file import PHONE, read_file
from tests.phones import (
    NOW,
    Phone,
    check,
    id_of,
    moment,
    newer_phone,
    setup,
    stored_in_schema_1,
    workshop,
)
from tests.properties.asking import ask, refusal


def test_rows_of_the_first_schema_fold_beside_new_ones() -> None:
    rows = [
        stored_in_schema_1("machine", {"machine": setup("Wheel lathe")}, 1),
        stored_in_schema_1("check", {"machine": setup(), **check("342", "4.0")}, 2),
    ]
    told = ask("fold_log", {"lines": rows, "now": NOW})
    (machine,) = told["machines"]
    assert machine["name"] == "Wheel lathe"
    assert machine["strength"]["strength"]["strength_pct"]["value"] == pytest.approx(6.0)
    assert told["counts"]["quarantined"] == 0


def test_export_of_old_rows_imports_whole_and_goes_on_in_the_chain() -> None:
    rows = [stored_in_schema_1("check", check(), seq) for seq in (1, 2)]
    made = ask("write_export", {"lines": rows, "now": NOW, "build": "b"})
    (head,) = made["heads"]
    phone = Phone("old", lines=rows, seq=2, prev=head["head"])
    phone.save("check", check(), 900)
    told = ask("read_export", {"text": made["text"], "lines": phone.lines, "now": NOW})
    assert (told["file"]["known"], told["file"]["added"], told["added"]) == (2, 0, [])
    assert [told["report"][name] for name in ("forks", "gaps", "breaks")] == [[], [], []]


def test_export_holds_everything_also_what_is_not_used() -> None:
    lines = [*newer_phone().lines, "broken"]
    made = ask("write_export", {"lines": lines, "now": NOW, "build": "b"})
    assert (made["lines"], made["newer"], made["quarantined"]) == (4, 2, 1)
    assert read_file(made["text"], PHONE).lines == lines
    assert json.loads(made["text"].split("\n")[0])["written_at"] == NOW


def test_import_says_first_what_would_change() -> None:
    night, day = workshop()
    told = ask("read_export", {"text": day.export(), "lines": night.lines, "now": NOW})
    assert told["added"] == day.lines
    assert [(one["kind"], one["count"]) for one in told["kinds"]] == [
        ("machine_state", 1),
        ("note", 1),
        ("unknown_addition", 1),
    ]
    names = {one["name"]: one["count"] for one in told["machines"]}
    assert names == {"Wheel lathe": 1, "": 1}
    again = ask("read_export", {"text": day.export(), "lines": night.lines + day.lines})
    assert (again["added"], again["file"]["added"], again["file"]["known"]) == ([], 0, 3)


@pytest.mark.parametrize("later", ["a", "b"])
def test_import_names_a_machine_by_its_latest_set_up(later: str) -> None:
    phones = {"a": Phone("a"), "b": Phone("b")}
    for name, phone in phones.items():
        is_later = name == later
        said = setup("New name" if is_later else "Old name")
        phone.save("machine_set", {"machine": said}, 3_600 if is_later else 0)
    text = phones[later].export()
    (other,) = [phone for name, phone in phones.items() if name != later]
    for lines in ([], other.lines):
        (told,) = ask("read_export", {"text": text, "lines": lines, "now": NOW})["machines"]
        assert told["name"] == "New name"


def test_import_of_a_damaged_file_adds_what_is_whole_and_keeps_the_rest() -> None:
    night, _ = workshop()
    text = night.export().replace('"text":"342"', '"text":"432"', 1)
    told = ask("read_export", {"text": text, "lines": []})
    assert told["file"]["findings"] == ["damaged"]
    assert len(told["added"]) == 4
    assert told["added"][:3] == [night.lines[0], *night.lines[2:]]
    (bad,) = told["report"]["quarantined"]
    assert (bad["code"], len(bad["start"])) == ("seal_broken", 80)


def test_heads_that_the_device_knows_of_show_a_shortened_store() -> None:
    night, _ = workshop()
    head = {"log": night.log, "count": 4, "head": night.hash_of(4)}
    whole = ask("fold_log", {"lines": night.lines, "now": NOW, "heads": [head]})
    assert (whole["report"]["missing_heads"], whole["report"]["gaps"]) == ([], [])
    short = ask("fold_log", {"lines": night.lines[:2], "now": NOW, "heads": [head]})
    assert short["report"]["missing_heads"] == [head]
    assert short["report"]["gaps"] == [{"log": night.log, "first": 3, "last": 4}]


def test_merge_is_the_same_from_either_side() -> None:
    night, day = workshop()
    files = [{"name": one.title, "text": one.export()} for one in (night, day)]
    there, back = (ask("merge_logs", {"files": order}) for order in (files, files[::-1]))
    assert there["text"] == back["text"]
    assert [one["name"] for one in there["files"]] == ["night shift", "day shift"]
    bad = ask("merge_logs", {"files": [*files, {"name": "x", "text": "x"}], "now": NOW})
    assert bad["files"][2]["refused"]["code"] == "file_foreign"
    assert bad["text"] == there["text"]


def test_handover_is_one_page() -> None:
    night, day = workshop()
    body = {"lines": night.lines + day.lines, "now": NOW, "since": moment(3600)}
    page = ask("handover", body)
    assert [one["open"]["buckets_poured"] for one in page["open_pours"]] == [2]
    assert [one["due"]["overdue"] for one in page["rechecks"]] == [True]
    assert [one["now"]["state"]["reason"] for one in page["states"]] == ["wrong_drum"]
    assert [one["text"] for one in page["said"]] == [
        "Level rose overnight.",
        "Skimmer belt slips; ordered.",
    ]
    assert [one["now"]["state"]["remarks"] for one in page["states"]] == ["Do not top up."]
    assert len(page["unknown_additions"]) == 1
    # Two buckets have gone in since the dip.
    assert page["low_sumps"] == page["in_doubt"] == page["off_band"] == []


def test_handover_names_the_machines_outside_their_band() -> None:
    phone = Phone("a")
    for title, shows in (("lean", "4.0"), ("right", "5.3"), ("rich", "7.0"), ("odd", "400")):
        phone.save("machine_set", {"machine": setup(title)}, 0, machine=id_of(title))
        phone.save("check", check("342", shows), 60, machine=id_of(title))
    phone.save("machine_set", {"machine": setup("never read")}, 0, machine=id_of("never read"))
    body = {"lines": phone.lines, "now": NOW, "since": moment(3600)}
    found = {one["name"]: one["reading"] for one in ask("handover", body)["off_band"]}
    said = {name: reading["strength"]["state"] for name, reading in found.items()}
    assert said == {"lean": "weak", "rich": "strong"}
    assert found["lean"]["measured_at"] == moment(60)
    assert found["lean"]["strength"]["shown"]["strength"]["value"] == pytest.approx(6.0)


def test_machine_in_doubt_is_named() -> None:
    one, two = Phone("a"), Phone("b")
    one.save("machine_set", {"machine": setup("Wheel lathe")}, 0)
    target = one.save("check", check("300"), 0)
    for phone in (one, two):
        body = {"corrects": target, "reason": "x", "kind": "check", "content": check("301")}
        phone.save("correction", body, 60, machine="")
    body = {"lines": one.lines + two.lines, "now": NOW, "since": moment(0)}
    assert [found["name"] for found in ask("handover", body)["in_doubt"]] == ["Wheel lathe"]


def test_table_has_a_row_for_every_entry() -> None:
    night, day = workshop()
    made = ask("write_csv", {"lines": night.lines + day.lines, "now": NOW})
    assert made["rows"] == 7
    assert made["text"].count("\r\n") == 8


@pytest.mark.parametrize(
    ("op", "more", "path"),
    [
        ("fold_log", {"now": "noon"}, "body.now"),
        ("write_export", {"now": "noon", "build": "b"}, "body.now"),
        ("handover", {"now": NOW, "since": "dawn"}, "body.since"),
        ("write_csv", {"now": ""}, "body.now"),
    ],
)
def test_a_moment_that_is_none(op: str, more: dict[str, str], path: str) -> None:
    error = refusal(op, {"lines": [], **more})
    assert (error["code"], error["path"]) == ("not_a_date", path)


def test_an_empty_log_is_answered() -> None:
    told = ask("fold_log", {"lines": [], "now": NOW})
    assert (told["machines"], told["report"]["logs"], told["counts"]["lines"]) == ([], [], 0)


def asked(op: str, body: dict[str, object]) -> dict[str, object]:
    text = json.dumps({"v": 1, "id": "t", "op": op, "body": body})
    assert len(text) > 1_000_000
    reply: dict[str, object] = json.loads(handle(text))
    return reply


def test_a_log_may_be_longer_than_other_requests() -> None:
    phone = Phone("a")
    for place in range(1500):
        phone.save("check", check(), place, id=id_of(str(place)))
    assert asked("fold_log", {"lines": phone.lines * 2, "now": NOW})["ok"]


def test_only_a_request_that_says_early_what_it_asks_may_be_long() -> None:
    body = {"text": "7" * 2_000_000}
    text = json.dumps({"v": 1, "id": "t", "body": body, "op": "fold_log"})
    assert json.loads(handle(text))["error"]["code"] == "too_large"
    twice = json.dumps({"id": '"op":"fold_log"', "v": 1, "op": "describe", "body": body})
    assert json.loads(handle(twice))["error"]["code"] == "too_large"
    assert asked("describe", body)["error"]["code"] == "too_large"  # type: ignore[index]
