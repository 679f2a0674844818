"""pycore.journal.table: comma-separated values for people."""

import csv
import io

import pytest

from pycore.journal.table import COLUMNS, csv_of, text_cell
from tests.phones import LATHE, Phone, check, moment, pour, typed
from tests.unit.journal.reading import fold


def rows(phone: Phone, name: str = "Wheel lathe") -> list[dict[str, str]]:
    text = csv_of(fold(phone).entries, {LATHE: name})
    assert text.endswith("\r\n")
    return list(csv.DictReader(io.StringIO(text, newline="")))


@pytest.mark.parametrize(
    "name",
    ["=1+1", "+1", "-1", "@x", "\tx", "\rx", "\nx", '=HYPERLINK("http://x";"y")', "=a,b", "-a\nb"],
)
def test_no_cell_begins_like_a_formula_and_the_name_comes_back(name: str) -> None:
    phone = Phone("a")
    phone.save("check", {**check(), "remarks": name}, 0, by=name[:40])
    (row,) = rows(phone, name)
    for column in ("machine", "remarks", "by"):
        assert row[column] == f"'{name}"


def test_every_cell_is_quoted() -> None:
    phone = Phone("a")
    phone.save("check", {**check(), "remarks": 'a "b"; c, d'}, 0)
    for line in csv_of(fold(phone).entries, {}).splitlines():
        assert line.startswith('"')
        assert line.endswith('"')
        assert line.count('","') == len(COLUMNS) - 1
    assert text_cell('a "b"') == '"a ""b"""'


def test_numbers_stay_numbers_in_the_unit_of_their_column() -> None:
    phone = Phone("a")
    body = {
        "dip": {"depth": typed("13 7/16", "in")},
        "reading": {"shows": typed("4,8", "Brix")},
        "ph": typed("9.1", "1"),
        "temperature": typed("-5", "°C"),
        "nitrite": typed("10", "mg/L"),
        "dip_slide": {"germs": typed("100000", "CFU/mL")},
    }
    phone.save("check", body, 0)
    (row,) = rows(phone)
    assert (row["dip_mm"], row["reading_brix"], row["ph"]) == ("341.3125", "4.8", "9.1")
    assert (row["temperature_c"], row["nitrite_mg_l"]) == ("-5", "10")
    assert row["germs_cfu_ml"] == "100000"
    assert (row["dip_as_typed"], row["reading_as_typed"]) == ("13 7/16 in", "4,8 Brix")


def test_what_cannot_be_read_stays_as_it_was_typed() -> None:
    phone = Phone("a")
    phone.save("check", check(depth="=7"), 0)
    (row,) = rows(phone)
    assert (row["dip_mm"], row["dip_as_typed"]) == ("", "'=7 mm")


def test_a_unit_that_was_typed_with_its_number_stands_once() -> None:
    phone = Phone("a")
    phone.save("check", {"dip": {"depth": {"text": "13 7/16 in"}}}, 0)
    (row,) = rows(phone)
    assert (row["dip_mm"], row["dip_as_typed"]) == ("341.3125", "13 7/16 in")


def test_pours_look_and_standing() -> None:
    phone = Phone("a")
    phone.save("check", {"look": ["foam", "smell"]}, 0)
    poured = phone.save("pour", pour(2), 60)
    phone.save("withdrawal", {"retracts": poured, "reason": "x"}, 90, machine="")
    phone.save("note", {"text": "Belt slips."}, 120, machine="")
    looked, top_up, note = rows(phone)
    assert looked["look"] == "foam smell"
    assert (top_up["buckets"], top_up["poured_as_typed"]) == ("2", "2 x about strength 3 %")
    assert (top_up["standing"], note["remarks"]) == ("withdrawn", "Belt slips.")
    assert note["machine"] == ""


def test_columns_stand_in_one_order() -> None:
    phone = Phone("a")
    looked = phone.save("check", {"look": ["foam"]}, 0, by="RO")
    (row,) = rows(phone)
    assert list(row) == [
        "measured_at", "machine", "kind", "by", "standing", "log", "number", "id",
        "dip_mm", "reading_brix", "ph", "temperature_c", "nitrite_mg_l", "germs_cfu_ml",
        "dip_as_typed", "reading_as_typed", "buckets", "poured_as_typed", "look", "remarks",
    ]  # fmt: skip
    named = {name: row[name] for name in list(row)[:8]}
    assert named == {
        "measured_at": moment(0), "machine": "Wheel lathe", "kind": "check", "by": "RO",
        "standing": "as_written", "log": phone.log, "number": "1", "id": looked,
    }  # fmt: skip
    assert [row[name] for name in list(row)[8:]] == [""] * 10 + ["foam", ""]


def test_buckets_of_a_pour_and_of_a_new_charge_are_told_as_typed() -> None:
    phone = Phone("a")
    plain = {"count": 3, "water": typed("9", "L"), "concentrate": typed("1000", "mL")}
    other = {"count": 1, "kind": "ready_mix", "each": typed("20", "L"), "strength": typed("4", "%")}
    phone.save("pour", {"pours": [plain, other], "finished": True}, 0)
    phone.save("clean_out", {"finished": True, "charge": [{"count": 9, "kind": "water"}]}, 60)
    poured, charged = rows(phone)
    assert (poured["buckets"], charged["buckets"]) == ("4", "9")
    assert poured["poured_as_typed"] == (
        "3 x water 9 L concentrate 1000 mL; 1 x ready_mix each 20 L strength 4 %"
    )
    assert charged["poured_as_typed"] == "9 x water"


def test_lines_stand_in_the_order_of_time_whatever_the_log() -> None:
    one, two = sorted([Phone("a"), Phone("b")], key=lambda phone: phone.log, reverse=True)
    first = one.save("note", {"text": "x"}, 0, machine="")
    second = two.save("note", {"text": "y"}, 60, machine="")
    text = csv_of(fold(one, two).entries, {})
    found = csv.DictReader(io.StringIO(text, newline=""))
    assert [row["id"] for row in found] == [first, second]


def test_a_corrected_entry_stands_as_corrected() -> None:
    phone = Phone("a")
    target = phone.save("check", check("342"), 0)
    body = {"corrects": target, "reason": "x", "kind": "check", "content": check("324")}
    phone.save("correction", body, 60, machine="")
    (row,) = rows(phone)
    assert (row["dip_mm"], row["standing"], row["id"]) == ("324", "corrected", target)


def test_a_machine_without_a_name_stands_by_its_id() -> None:
    phone = Phone("a")
    phone.save("check", check(), 0)
    assert rows(phone, "")[0]["machine"] == LATHE
