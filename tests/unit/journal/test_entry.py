"""pycore.journal.entry: from a line to an entry."""

import json
from typing import Any

import pytest

from pycore.desk.contract.checked import checked
from pycore.journal.entry import KINDS, OF_A_MACHINE, Entry, read_line
from pycore.journal.line import from_store, sealed
from pycore.journal.tombstone import Tombstone, tombstone_of
from pycore.quantity.fault import Fault
from tests.phones import (
    LATHE,
    MORNING_S,
    Phone,
    check,
    id_of,
    moment,
    newer_phone,
    pour,
    setup,
    stored_in_schema_1,
    typed,
)
from web.build.paths import SHARED

POURED = {
    "full_depth": typed("400", "mm"),
    "start": "empty",
    "steps": [
        {"poured": typed("40", "L"), "depth": typed("64", "mm"), "at": "2026-11-25T09:42:00+01:00"}
    ],
}
CONTENT: dict[str, dict[str, Any]] = {
    "check": {**check(), "ph": typed("9.1", "1"), "look": ["smell", "foam"]},
    "recheck": {**check(), "of": id_of("pour")},
    "plan": {"pours": [{"count": 3, "water": typed("9", "L"), "concentrate": typed("1", "L")}]},
    "pour": pour(),
    "clean_out": {"finished": True, "waste": typed("160", "L"), "charge": [{"count": 9}]},
    "additive": {"name": "System cleaner", "amount": typed("2", "L")},
    "unknown_addition": {},
    "machine_set": {"machine": setup(), "code": "7K3F4", "pour_test": POURED},
    "fluid_set": {"fluid": id_of("depot mix"), "definition": setup()["fluid"], "lot": "24-118"},
    "instrument_set": {"instrument": id_of("r1"), "name": "Red case", "shows": "brix"},
    "calibration": {"of": "instrument", "instrument": id_of("r1"), "zero": typed("0.1", "Brix")},
    "shop_set": {"who_to_ask": "Bay 3"},
    "machine_state": {"state": "watch", "until": moment(9000)},
    "note": {"text": "Filter fabric is low."},
    "correction": {"corrects": id_of("x"), "reason": "typed wrong", "kind": "note",
                   "content": {"text": "Filter fabric is there."}},
    "withdrawal": {"retracts": id_of("x"), "reason": "wrong machine"},
    "decision": {"use": ["0" * 64], "leave": ["1" * 64], "reason": "old phone"},
}  # fmt: skip


def changed(line: str, **parts: Any) -> str:
    """The line with other fields, sealed anew; None takes a field out."""
    message = {**json.loads(line), **parts}
    message.pop("hash")
    kept = {name: value for name, value in message.items() if value is not None}
    return sealed(json.dumps(kept, separators=(",", ":")))


def line_of(kind: str = "check", **more: Any) -> str:
    phone = Phone("one")
    phone.save(kind, CONTENT[kind], 60, **more)
    return phone.lines[0]


def code_of(line: str) -> tuple[str, str]:
    with pytest.raises(Fault) as caught:
        read_line(line, checked)
    return caught.value.code, caught.value.path


def test_kinds_are_those_of_the_contract() -> None:
    definitions = json.loads((SHARED / "schema" / "log" / "entry.schema.json").read_text("utf-8"))
    kinds = definitions["definitions"]["entry_kind"]["enum"]
    assert set(kinds) == KINDS == set(CONTENT)
    assert {f"{kind}_content" for kind in kinds} <= set(definitions["definitions"])


@pytest.mark.parametrize("kind", sorted(KINDS))
def test_every_kind_is_read(kind: str) -> None:
    entry = read_line(line_of(kind), checked)
    assert (entry.kind, entry.body, entry.is_newer) == (kind, CONTENT[kind], False)
    assert (entry.machine, entry.measured_at) == (LATHE, moment(60))
    assert (entry.seq, entry.prev) == (1, "")


@pytest.mark.parametrize("kind", sorted(KINDS))
def test_a_field_too_many_is_refused(kind: str) -> None:
    line = line_of(kind)
    body = {**CONTENT[kind], "colour": "blue"}
    assert code_of(changed(line, body=body)) == ("unknown_field", "line.body.colour")
    assert code_of(changed(line, colour="blue")) == ("unknown_field", "line.colour")


@pytest.mark.parametrize("kind", sorted(OF_A_MACHINE))
def test_what_is_about_a_machine_names_it(kind: str) -> None:
    assert code_of(line_of(kind, machine="")) == ("missing", "line.machine")


def test_a_note_may_be_about_the_shop() -> None:
    assert read_line(line_of("note", machine=""), checked).machine == ""


@pytest.mark.parametrize(
    ("parts", "code", "path"),
    [
        ({"id": "7"}, "wrong_form", "line.id"),
        ({"log": None}, "missing", "line.log"),
        ({"seq": 0}, "out_of_range", "line.seq"),
        ({"seq": True}, "wrong_type", "line.seq"),
        ({"seq": 2}, "wrong_form", "line.prev"),
        ({"prev": "0" * 64}, "wrong_form", "line.prev"),
        ({"schema": True}, "wrong_type", "line.schema"),
        ({"schema": 0}, "out_of_range", "line.schema"),
        ({"kind": 7}, "wrong_type", "line.kind"),
        ({"measured_at": "yesterday"}, "not_a_date", "line.measured_at"),
        ({"wall": "2026-02-30T00:00:00Z"}, "not_a_date", "line.wall"),
        ({"clock_flags": ["fast"]}, "not_allowed", "line.clock_flags[0]"),
        ({"shown": {"constructor": 1}}, "unknown_field", "line"),
        ({"by": "x" * 41}, "too_long", "line.by"),
    ],
)
def test_outside_of_an_entry(parts: dict[str, Any], code: str, path: str) -> None:
    assert code_of(changed(line_of(), **parts)) == (code, path)


@pytest.mark.parametrize(
    ("kind", "parts", "path"),
    [
        ("pour", {"recheck_due_at": "soon"}, "line.body.recheck_due_at"),
        ("machine_state", {"until": "soon"}, "line.body.until"),
        ("correction", {"measured_at": "soon"}, "line.body.measured_at"),
    ],
)
def test_moments_inside(kind: str, parts: dict[str, Any], path: str) -> None:
    line = changed(line_of(kind), body={**CONTENT[kind], **parts})
    assert code_of(line) == ("not_a_date", path)


def test_a_correction_holds_what_its_kind_allows() -> None:
    body = {**CONTENT["correction"], "content": {**CONTENT["note"], "colour": "blue"}}
    refused = code_of(changed(line_of("correction"), body=body))
    assert refused == ("unknown_field", "line.body.content.colour")
    body = {**CONTENT["correction"], "kind": "withdrawal", "content": CONTENT["withdrawal"]}
    assert code_of(changed(line_of("correction"), body=body)) == ("not_allowed", "line.body.kind")


def test_moments_inside_a_correction() -> None:
    content = {"text": "x", "until": "soon"}
    line = changed(line_of("correction"), body={**CONTENT["correction"], "content": content})
    assert code_of(line) == ("not_a_date", "line.body.content.until")


def test_a_line_of_the_greatest_length_is_read() -> None:
    room = 65_536 - len(line_of(shown={"t": ""}))
    assert read_line(line_of(shown={"t": "x" * room}), checked).kind == "check"
    assert code_of(line_of(shown={"t": "x" * (room + 1)})) == ("too_large", "line")
    with pytest.raises(Fault) as caught:
        read_line("x" * 65_537, checked)
    assert (caught.value.got, caught.value.limit) == (65_537, {"most": 65_536})


def test_newer_ones_are_kept_with_what_can_be_read_from_outside() -> None:
    phone = newer_phone()
    _, later, strange = (read_line(line, checked) for line in phone.lines)
    assert (later.is_newer, later.schema, later.kind) == (True, 3, "check")
    assert (strange.is_newer, strange.schema, strange.kind) == (True, 2, "odour_panel")
    assert (strange.log, strange.seq, strange.prev) == (phone.log, 3, later.hash)
    assert (strange.content, strange.body, strange.machine) == (None, {}, "")


@pytest.mark.parametrize(
    ("seq", "kept"), [("1000000000", 1_000_000_000), ("1000000001", 0), ("true", 0), ("0", 0)]
)
def test_a_number_that_no_log_has_is_no_place_of_a_newer_one(seq: str, kept: int) -> None:
    line = sealed(f'{{"log":"{"ab" * 16}","schema":9,"seq":{seq}}}')
    assert read_line(line, checked).seq == kept


def test_every_field_of_a_line_is_read() -> None:
    line = line_of("note", by="RO", clock_flags=["back"], machine="")
    message = json.loads(line)
    assert read_line(line, checked) == Entry(
        line=line, hash=message["hash"], id=message["id"], log=message["log"], seq=1, prev="",
        schema=2, kind="note", wall_s=MORNING_S + 60, offset_min=60, usable=True, machine="",
        measured_at=moment(60), measured_s=MORNING_S + 60, clock_flags=("back",), by="RO",
        content=CONTENT["note"],
    )  # fmt: skip
    plain = read_line(line_of(), checked)
    assert (plain.by, plain.clock_flags, plain.is_removed) == ("", (), False)
    assert plain.place == (plain.log, 1, plain.hash)


def test_a_tombstone_says_only_where_the_line_stood() -> None:
    place = Tombstone("a" * 32, "b" * 32, 7, "c" * 64, "d" * 64)
    line = tombstone_of(place, "asked for")
    entry = read_line(line, checked)
    assert entry == Entry(
        line=line, hash="d" * 64, id="a" * 32, log="b" * 32, seq=7, prev="c" * 64, schema=2,
        kind="tombstone", wall_s=None, offset_min=None, usable=False, machine="", measured_at="",
        measured_s=0, clock_flags=(), by="", content=None,
    )  # fmt: skip
    assert (entry.is_removed, entry.is_newer, entry.body) == (True, False, {})


def test_a_row_of_the_first_schema_has_no_line_before_it() -> None:
    row = from_store(stored_in_schema_1("check", check(), 3))
    assert (read_line(row, checked).seq, read_line(row, checked).prev) == (3, "")


@pytest.mark.parametrize(
    ("parts", "got", "limit"),
    [
        ({"schema": True}, True, {"type": "integer"}),
        ({"schema": "2"}, "2", {"type": "integer"}),
        ({"schema": 0}, 0, {"minimum": 1}),
        ({"kind": 7}, 7, {"type": "string"}),
        ({"seq": 2}, "", {"type": "empty only in the first"}),
    ],
)
def test_a_refusal_says_what_was_found_and_allowed(
    parts: dict[str, Any], got: object, limit: dict[str, object]
) -> None:
    with pytest.raises(Fault) as caught:
        read_line(changed(line_of(), **parts), checked)
    assert (caught.value.got, caught.value.limit) == (got, limit)


@pytest.mark.parametrize("name", ["__proto__", "constructor", "prototype"])
def test_names_that_lead_a_page_astray_are_refused(name: str) -> None:
    assert code_of(changed(line_of(), shown={"a": [{name: 1}]})) == ("unknown_field", "line")


def test_as_deep_as_a_request_and_no_deeper() -> None:
    def nested(levels: int) -> str:
        return changed(line_of(), shown=json.loads('{"a":' * levels + "1" + "}" * levels))

    assert read_line(nested(11), checked).kind == "check"
    assert code_of(nested(12)) == ("too_deep", "line")


LOG = "a" * 32


@pytest.mark.parametrize(
    ("parts", "place"),
    [
        ({"log": LOG, "seq": 1}, (LOG, 1)),
        ({"log": LOG, "seq": 0}, ("", 0)),
        ({"log": LOG, "seq": True}, ("", 0)),
        ({"log": LOG, "seq": 1.5}, ("", 0)),
        ({"log": LOG}, ("", 0)),
        ({"log": LOG[1:], "seq": 1}, ("", 0)),
        ({"log": 7, "seq": 1}, ("", 0)),
    ],
)
def test_a_newer_line_has_a_place_only_where_both_parts_can_be_read(
    parts: dict[str, Any], place: tuple[str, int]
) -> None:
    entry = read_line(sealed(json.dumps({"schema": 9, **parts})), checked)
    assert entry.place == (*place, entry.hash)
    assert (entry.id, entry.prev, entry.kind) == ("", "", "")
    assert (entry.measured_at, entry.measured_s, entry.by) == ("", 0, "")
    assert (entry.wall_s, entry.offset_min, entry.clock_flags) == (None, None, ())


def test_a_newer_line_keeps_its_id_its_clock_and_the_beginning_of_its_kind() -> None:
    line = {"schema": 9, "id": LOG, "prev": "b" * 64, "wall": moment(60), "kind": "x" * 90}
    entry = read_line(sealed(json.dumps(line)), checked)
    assert (entry.id, entry.prev, entry.kind) == (LOG, "b" * 64, "x" * 80 + "…")
    assert (entry.wall_s, entry.offset_min, entry.usable) == (MORNING_S + 60, 60, False)


def test_newer_ones_of_another_build_are_kept_too() -> None:
    line = sealed('{"schema":9,"seq":"first","wall":"noon","kind":["a"]}')
    entry = read_line(line, checked)
    assert (entry.is_newer, entry.log, entry.seq, entry.wall_s, entry.kind) == (
        True,
        "",
        0,
        None,
        "",
    )
