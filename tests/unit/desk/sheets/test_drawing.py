"""pycore.desk.sheets.drawing: what is asked as typed, drawn or refused at the field."""

import json
import re
from typing import Any

import pytest

from pycore.reading.refraction import brix_from_index
from pycore.sheets.english import WORDS
from tests.examples.fluid import CHART, PER_CENT_GLASS
from tests.unit.desk.lathe import WHEEL_LATHE, ask, changed, refusal
from tests.unit.desk.sheets.workshop import KINDS, body, typed
from tests.unit.sheets.drawn import lines, root_of, said
from web.build.paths import SHARED


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("paper", ["A4", "Letter"])
def test_every_sheet_on_both_papers(kind: str, paper: str) -> None:
    got = ask("draw_sheet", body(kind, paper=paper, measured_100_mm=None))
    assert (got["kind"], got["paper"], got["print_scale"]) == (kind, paper, 1)
    assert "line_passes" not in got
    for page in got["pages"]:
        root = root_of(page)
        assert root.get("width") == f"{got['width_mm']:.4f}".rstrip("0").rstrip(".") + "mm"
        assert {"100 mm", "4 in"} <= {line.name for line in lines(page)}
    assert got["width_mm"] < got["page_width_mm"] - 20
    assert got["height_mm"] < got["page_height_mm"] - 20
    assert "Wheel lathe" in said(got["pages"])


@pytest.mark.parametrize(
    ("measured", "passes"), [("100", True), ("99", True), ("101", True), ("98,9", False)]
)
@pytest.mark.parametrize("kind", KINDS)
def test_a_measured_line_corrects_the_next_print(kind: str, measured: str, passes: bool) -> None:
    got = ask("draw_sheet", body(kind, measured_100_mm=typed(measured, "mm")))
    assert got["line_passes"] == passes
    assert got["print_scale"] == pytest.approx(100 / float(measured.replace(",", ".")))
    length = next(line for line in lines(got["pages"][0]) if line.name == "100 mm")
    drawn_mm = abs(length.x2_mm - length.x1_mm) + abs(length.y2_mm - length.y1_mm)
    assert drawn_mm == pytest.approx(100 * got["print_scale"], abs=1e-3)


def test_a_line_measured_in_inches() -> None:
    got = ask("draw_sheet", body("log_sheet", measured_100_mm={"text": "3 7/8 in"}))
    assert got["print_scale"] == pytest.approx(100 / 98.425)


@pytest.mark.parametrize(
    ("more", "code", "path"),
    [
        ({"measured_100_mm": typed("80", "mm")}, "out_of_range", "body.measured_100_mm"),
        ({"measured_100_mm": typed("4", "in")}, None, ""),
        ({"measured_100_mm": typed("100", "L")}, "wrong_dimension", "body.measured_100_mm"),
        ({"measured_100_mm": {"text": "97"}}, "missing_unit", "body.measured_100_mm"),
        ({"paper": "A5"}, "not_allowed", "body.paper"),
        ({"kind": "poster"}, "not_allowed", "body.kind"),
        ({"code": "7K3F-5"}, "code_mismatch", "body.code"),
        ({"code": "7K3"}, "not_a_code", "body.code"),
        ({"code": None}, "missing", "body.code"),
        ({"address": None}, "missing", "body.address"),
        ({"address": "javascript:alert(1)"}, "not_allowed", "body.address"),
        ({"address": "https://depot.example/#m="}, "not_allowed", "body.address"),
        ({"address": "https://depot.example/ x"}, "not_allowed", "body.address"),
        ({"calibrated_on": "2026-02-30"}, "not_a_date", "body.calibrated_on"),
        ({"circuit_volume": typed("0", "L")}, "out_of_range", "body.circuit_volume"),
        ({"words": {"full": "VOLL"}}, "missing", "body.words.made_by"),
        ({"words": {**WORDS, "x": "y"}}, "unknown_field", "body.words.x"),
        ({"decimal_sign": ";"}, "not_allowed", "body.decimal_sign"),
        ({"machine": changed("fluid.type", "neat_oil")}, "neat_oil", "body.machine.fluid.type"),
    ],
)
def test_what_cannot_be_drawn_is_refused_at_its_field(
    more: dict[str, Any], code: str | None, path: str
) -> None:
    asked = body("machine_card", **more)
    if code is None:
        assert ask("draw_sheet", asked)["line_passes"] is False
        return
    error = refusal("draw_sheet", asked)
    assert (error["code"], error["path"]) == (code, path)


@pytest.mark.parametrize(
    ("shape", "code", "path"),
    [
        ({"kind": "diameters"}, "missing", "body.pail_shape.floor_diameter"),
        ({"kind": "fills"}, "missing", "body.pail_shape.fills"),
        (
            {"kind": "fills", "fills": [{"depth": typed("90", "mm"), "volume": typed("4", "L")}]},
            "too_few",
            "body.pail_shape.fills",
        ),
        (
            {
                "kind": "fills",
                "fills": [
                    {"depth": typed("10", "cm"), "volume": typed("4", "L")},
                    {"depth": typed("9", "cm"), "volume": typed("10", "L")},
                ],
            },
            "not_rising",
            "body.pail_shape.fills[1].depth",
        ),
        (
            {
                "kind": "diameters",
                "floor_diameter": typed("20", "cm"),
                "brim_diameter": typed("20", "cm"),
                "height": typed("20", "cm"),
            },
            "order",
            "body.machine.bucket.usable",
        ),
    ],
)
def test_pails_that_cannot_be(shape: dict[str, Any], code: str, path: str) -> None:
    error = refusal("draw_sheet", body("bucket_scale", pail_shape=shape))
    assert (error["code"], error["path"]) == (code, path)


def test_limits_come_back_in_the_unit_that_was_typed() -> None:
    fills = [
        {"depth": typed("10", "cm"), "volume": typed("4", "L")},
        {"depth": typed("9", "cm"), "volume": typed("10", "L")},
    ]
    error = refusal(
        "draw_sheet", body("bucket_scale", pail_shape={"kind": "fills", "fills": fills})
    )
    assert error["limit"] == {"above": pytest.approx(10), "unit": "cm"}


def test_a_usual_bucket_that_overflows() -> None:
    buckets = [{"water": typed("12", "L"), "concentrate": typed("500", "mL")}]
    error = refusal("draw_sheet", body("bucket_scale", buckets=buckets))
    assert (error["code"], error["path"]) == ("out_of_range", "body.buckets[0]")
    assert error["limit"]["unit"] == "L"


@pytest.mark.parametrize(("depth", "code"), [("430", "order"), ("500", "out_of_range")])
def test_a_never_above_mark_outside_the_room_above_full(depth: str, code: str) -> None:
    machine = changed("sump.never_above_depth", typed(depth, "mm"))
    error = refusal("draw_sheet", body("dip_scale", machine=machine))
    assert (error["code"], error["path"]) == (code, "body.machine.sump.never_above_depth")
    assert error["limit"] == {"minimum": 440, "maximum": pytest.approx(484), "unit": "mm"}


def test_without_usual_buckets_there_is_one_at_the_aim() -> None:
    text = said(ask("draw_sheet", body("bucket_scale"))["pages"])
    # By hand: 9 L and 0.8 L make 8.16 %.
    for part in ("9 L water", "800 mL", "8.2 %"):
        assert part in text


def test_the_card_tells_the_band_as_the_glass_shows_it_rounded_inwards() -> None:
    text = said(ask("draw_sheet", body("machine_card"))["pages"])
    # By hand: 7/1.5 = 4.67 and 9/1.5 = 6.
    assert "4.7 to 6.0 Brix" in text
    machine = changed("fluid.zero", typed("0.25", "Brix"))
    text = said(ask("draw_sheet", body("machine_card", machine=machine))["pages"])
    assert "5.0 to 6.2 Brix" in text


def test_the_card_tells_the_band_in_the_unit_of_its_own_instrument() -> None:
    machine = {**WHEEL_LATHE, "instrument": PER_CENT_GLASS}
    text = said(ask("draw_sheet", body("machine_card", machine=machine))["pages"])
    # By hand: the factor 1.5 inside and the fluid's own undo each other.
    assert "7.0 to 9.0 %" in text
    machine = {**WHEEL_LATHE, "instrument": {"shows": "refractive_index"}}
    text = said(ask("draw_sheet", body("machine_card", machine=machine))["pages"])
    low, high = re.findall(r"(1\.3[0-9]{3}) to (1\.3[0-9]{3}) nD", text)[0]
    # Inside the band of 7/1.5 to 9/1.5 Brix, and by less than one unit of the last digit.
    assert brix_from_index(float(low), "low") == pytest.approx(7 / 1.5, abs=0.1)
    assert brix_from_index(float(low), "low") >= 7 / 1.5
    assert brix_from_index(float(high), "high") <= 9 / 1.5
    log = said(ask("draw_sheet", body("log_sheet", machine=machine))["pages"])
    assert "Brix" not in log
    assert "nD" in log


@pytest.mark.parametrize(
    ("drains_back", "level_true", "circuit"),
    # By hand: 198 L at the full mark and 30 L beside it, which drain back while the pump stands.
    [(False, "stopped", "228 L"), (True, "running", "228 L"), (True, "stopped", "198 L")],
)
def test_the_card_tells_the_whole_circuit(drains_back: bool, level_true: str, circuit: str) -> None:
    machine = changed("sump.hidden", {"volume": typed("30", "L"), "drains_back": drains_back})
    machine["sump"]["level_true"] = level_true
    asked = body("machine_card", machine=machine, circuit_volume=None)
    text = said(ask("draw_sheet", asked)["pages"])
    assert re.search(rf"Whole circuit\W+{circuit}", text.replace("\u00a0", " "))


def test_a_circuit_that_nobody_has_told_is_a_line_for_the_pen_as_the_form_says() -> None:
    asked = body("machine_card", circuit_volume=None)
    assert "hidden" not in asked["machine"]["sump"]
    text = said(ask("draw_sheet", asked)["pages"])
    # The sump's own litres stand at the full mark; the circuit's are more, nobody knows how many.
    assert re.search(r"Whole circuit\W+[0-9]", text) is None
    for name, promise in (("en", "a line to fill in"), ("de", "eine Linie zum Ausfüllen")):
        words = json.loads((SHARED / "words" / f"{name}.json").read_text(encoding="utf-8"))
        assert promise in words["print.circuit_hint"]


def test_a_scale_for_dips_from_the_top() -> None:
    machine = changed("sump.dip_from", "top")
    machine["sump"] |= {"reference_height": typed("600", "mm"), "zero_offset": typed("-5", "mm")}
    text = said(ask("draw_sheet", body("dip_scale", machine=machine))["pages"])
    assert "touches the coolant" in text
    assert "add -5 mm" in text.replace("\u00a0", " ")


def test_a_chart_is_no_single_factor() -> None:
    fluid = {**changed("fluid.factor", None)["fluid"], "factor_chart": CHART}
    del fluid["factor_known_by"]
    machine = {**WHEEL_LATHE, "fluid": fluid}
    text = said(ask("draw_sheet", body("machine_card", machine=machine))["pages"])
    assert "by its chart" in text
    assert "Brix" in text


def test_a_card_without_a_factor_has_lines_for_the_pen() -> None:
    machine = changed("fluid.factor", None)
    assert "Brix" not in said(ask("draw_sheet", body("machine_card", machine=machine))["pages"])


def test_an_empty_log_sheet_needs_no_machine() -> None:
    got = ask("draw_sheet", {"kind": "log_sheet", "paper": "Letter"})
    assert got["page_width_mm"] > got["page_height_mm"]
    assert "Machine" in said(got["pages"])


def test_another_language_with_its_comma() -> None:
    words = {**WORDS, "full": "VOLL", "dip_scale": "Peilskala"}
    machine = changed("units.plate", "US gal")
    asked = body("dip_scale", machine=machine, words=words, decimal_sign=",")
    text = said(ask("draw_sheet", asked)["pages"])
    for part in ("VOLL", "Peilskala", "52,3 US gal"):
        assert part in text


@pytest.mark.parametrize(
    "name", ["<script>alert(1)</script>", "\"&'", "\u202eabc", "W" * 80, "中" * 80, "\x00\x1b"]
)
@pytest.mark.parametrize("kind", KINDS)
def test_hostile_names_are_drawn_as_text(kind: str, name: str) -> None:
    machine = {**changed("name", name), "fluid": {**changed("name", name)["fluid"], "name": name}}
    got = ask("draw_sheet", body(kind, machine=machine))
    for page in got["pages"]:
        tags = {element.tag.split("}")[1] for element in root_of(page).iter()}
        assert tags <= {"svg", "g", "line", "rect", "path", "polygon", "text"}
