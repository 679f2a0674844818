"""pycore.desk.setup.machine: a machine as typed, every contradiction at its field."""

from typing import Any

import pytest

from tests.unit.desk.lathe import ask, changed, refusal

MM = {"unit": "mm"}


@pytest.mark.parametrize(
    ("path", "value", "code"),
    [
        ("sump.full_depth", {"text": "0", **MM}, "out_of_range"),
        ("sump.full_depth", {"text": "", **MM}, "empty"),
        ("sump.full_volume", {"text": "0.5", "unit": "L"}, "out_of_range"),
        ("sump.full_volume", {"text": "55 gal"}, "ambiguous_unit"),
        ("sump.rim_depth", {"text": "439", **MM}, "order"),
        ("fluid.factor", {"text": "0.3"}, "out_of_range"),
        ("fluid.zero", {"text": "6"}, "out_of_range"),
        ("fluid.type", "neat_oil", "neat_oil"),
        ("target.low", {"text": "9"}, "order"),
        ("target.aim", {"text": "9.5"}, "order"),
        ("target.high", {"text": "100"}, "out_of_range"),
        ("mixing.weak", {"text": "20"}, "order"),
        ("mixing.closeness", {"text": "0"}, "out_of_range"),
        ("bucket.water_mark", {"text": "11", "unit": "L"}, "mark_above_bucket"),
        ("bucket.jug_mark", {"text": "50", "unit": "mm"}, "wrong_dimension"),
        ("pour_here", "", "empty"),
        ("pour_here", "x" * 121, "too_long"),
    ],
)
def test_refused_at_the_field(path: str, value: Any, code: str) -> None:
    error = refusal("read_machine", {"machine": changed(path, value)})
    assert error["code"] == code
    assert error["path"] == f"body.machine.{path}"


def test_a_place_to_pour_in_changes_no_number() -> None:
    plain = ask("read_machine", {"machine": changed("name", "Lathe")})
    told = ask("read_machine", {"machine": changed("pour_here", "x" * 120)})
    assert told == plain


def test_hardness_of_the_mixing_water_is_read_too() -> None:
    water = {"kind": "mains", "hardness": {"text": "9", "unit": "mm"}}
    error = refusal("read_machine", {"machine": changed("water", water)})
    assert (error["code"], error["path"]) == ("wrong_dimension", "body.machine.water.hardness")


def test_limits_come_in_the_unit_that_was_typed() -> None:
    machine = changed("sump.full_depth", {"text": "17", "unit": "in"})
    machine["sump"]["rim_depth"] = {"text": "16", "unit": "in"}
    error = refusal("read_machine", {"machine": machine})
    assert error["limit"] == {"minimum": pytest.approx(17), "unit": "in"}
    assert error["got"] == pytest.approx(16)


def _table(*pairs: tuple[str, str]) -> dict[str, Any]:
    points = [
        {"depth": {"text": depth, **MM}, "volume": {"text": volume, "unit": "L"}}
        for depth, volume in pairs
    ]
    full = {"text": "300", **MM}
    return {"kind": "table", "full_depth": full, "volume_known_by": "poured", "points": points}


def test_table() -> None:
    got = ask("read_machine", {"machine": changed("sump", _table(("100", "20"), ("300", "90")))})
    assert (got["full_volume_l"], got["rim_depth_mm"]) == (90, 300)


@pytest.mark.parametrize(
    ("pairs", "code", "end"),
    [
        ((("100", "20"), ("100", "30")), "not_rising", "points[1].depth"),
        ((("100", "20"), ("300", "20")), "not_rising", "points[1].volume"),
        ((("100", "20"), ("290", "80")), "order", "full_depth"),
        ((("100", "20"),), "too_few", "points"),
        ((("100", "20"), ("x", "80")), "not_a_number", "points[1].depth"),
    ],
)
def test_table_that_cannot_be(pairs: tuple[tuple[str, str], ...], code: str, end: str) -> None:
    error = refusal("read_machine", {"machine": changed("sump", _table(*pairs))})
    assert (error["code"], error["path"]) == (code, f"body.machine.sump.{end}")


def test_box_needs_its_length() -> None:
    sump = {"kind": "box", "full_depth": {"text": "400", **MM}, "volume_known_by": "poured"}
    machine = changed("sump", {**sump, "width": {"text": "600", **MM}})
    assert refusal("read_machine", {"machine": machine})["code"] in ("missing", "wrong_type")
    machine["sump"]["length"] = {"text": "1200", **MM}
    assert ask("read_machine", {"machine": machine})["full_volume_l"] == pytest.approx(288)


def test_unusual_settings_are_asked_about_once_each() -> None:
    doubts = ask("read_machine", {"machine": changed("mixing.strong", {"text": "36"})})["doubts"]
    assert [doubt["path"] for doubt in doubts] == ["body.machine.mixing.strong"]
