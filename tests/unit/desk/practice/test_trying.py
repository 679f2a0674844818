"""pycore.desk.practice.trying: a sump change by change, drawn and shown."""

from typing import Any

from tests.unit.desk.lathe import WHEEL_LATHE, ask, check, refusal


def litres(text: str) -> dict[str, str]:
    return {"text": text, "unit": "L"}


def tried(*changes: dict[str, Any]) -> dict[str, Any]:
    return ask("try_sump", {"check": check(WHEEL_LATHE), "changes": list(changes)})


def refused(change: dict[str, Any]) -> tuple[str, str]:
    error = refusal("try_sump", {"check": check(WHEEL_LATHE), "changes": [change]})
    return error["code"], error["path"]


def test_nothing_happens_to_the_sump_as_it_was_dipped() -> None:
    (now,) = tried()["states"]
    assert (now["volume"]["value"], now["strength"]["value"], now["state"]) == (153.9, 6.0, "weak")


def test_dots_stay_when_water_leaves_and_go_when_coolant_does() -> None:
    before, dry, less = tried(
        {"kind": "evaporate", "volume": litres("50")},
        {"kind": "carry_out", "volume": litres("50")},
    )["states"]
    assert dry["section"]["dots"] == before["section"]["dots"]
    assert dry["section"]["level"] < before["section"]["level"]
    # 9.234 L in 103.9 L.
    assert (dry["strength"]["value"], dry["state"]) == (8.9, "in_range")
    assert less["strength"] == dry["strength"]
    assert less["section"]["dots"] < dry["section"]["dots"]


def test_a_litre_to_ten_is_not_ten_per_cent() -> None:
    ten_to_one = {"kind": "pour", "water": litres("10"), "concentrate": litres("1")}
    nine_to_one = {"kind": "pour", "water": litres("9"), "concentrate": litres("1")}
    pours = tried(ten_to_one, nine_to_one)["pours"]
    assert [pour["strength"]["value"] for pour in pours] == [9.1, 10.0]


def test_wrong_changes_name_their_field() -> None:
    assert refused({"kind": "evaporate"}) == ("missing", "body.changes[0].volume")
    assert refused({"kind": "pour", "water": litres("9")}) == (
        "missing",
        "body.changes[0].concentrate",
    )
    gone = {"kind": "carry_out", "volume": litres("200")}
    assert refused(gone) == ("out_of_range", "body.changes[0].volume")
    flood = {"kind": "pour", "water": litres("90"), "concentrate": litres("1")}
    assert refused(flood) == ("out_of_range", "body.changes[0]")
    body = {"check": check(WHEEL_LATHE, depth="999"), "changes": []}
    assert refusal("try_sump", body)["path"] == "body.check.dip.depth"
