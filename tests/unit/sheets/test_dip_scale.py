"""pycore.sheets.dip_scale: marks where the sump's own curve puts them, add and full."""

from dataclasses import replace

import pytest

from pycore.quantity.units import UNITS
from pycore.sheets.dip_scale import DipScale, add_depth_mm, dip_scale, read_off, scale_of
from pycore.sump.shapes import proportional, sloped_box
from tests.unit.sheets.drawn import said
from tests.unit.sheets.pages import A4, ENGLISH, EVEN, LETTER, SLOPED

ASK = DipScale("Wheel lathe", EVEN, "L", "mm", "L", 10.0)


@pytest.mark.parametrize("sump", [EVEN, SLOPED])
@pytest.mark.parametrize("plate", ["L", "US gal", "imp gal"])
def test_every_mark_stands_where_the_sump_holds_that_much(sump, plate: str) -> None:
    scale = scale_of(replace(ASK, sump=sump, plate=plate), ENGLISH)
    for mark in scale.marks:
        held_l = sump.volume_from_depth(mark.at_mm, "depth")
        assert held_l == pytest.approx(mark.amount * float(UNITS[plate].factor), abs=1e-6)


def test_uneven_sumps_have_uneven_marks() -> None:
    at_mm = {mark.amount: mark.at_mm for mark in scale_of(replace(ASK, sump=SLOPED), ENGLISH).marks}
    assert at_mm[10] - at_mm[5] > 1.15 * (at_mm[75] - at_mm[70])
    # A pair of the table itself: 60 L at 180 mm.
    assert at_mm[60] == pytest.approx(180, abs=1e-6)


def test_add_is_one_bucket_below_full() -> None:
    # By hand: (198 − 10) L of 0.45 L/mm.
    assert add_depth_mm(EVEN, 10) == pytest.approx(188 / 0.45)


def test_add_in_a_small_and_in_a_huge_sump() -> None:
    # A saw of 12 L: half of it, since a bucket of 10 L would leave a puddle.
    assert add_depth_mm(proportional(100, 12, 0.1), 10) == pytest.approx(50)
    # 10 L are 0.7 mm here; the band is 10 mm high all the same.
    assert add_depth_mm(proportional(1900, 28000, 0.1), 10) == pytest.approx(1890)


@pytest.mark.parametrize("full_mm", [4, 15, 25])
def test_add_never_leaves_the_sump(full_mm: float) -> None:
    assert full_mm / 2 <= add_depth_mm(proportional(full_mm, 30, 0.1), 10) <= full_mm


def test_the_sheet_says_what_it_shows() -> None:
    ask = replace(ASK, code="7K3F-4", never_above_mm=470)
    text = said(dip_scale(ask, A4, ENGLISH))
    for part in ("Wheel lathe", "7K3F-4", "FULL", "ADD", "NEVER ABOVE", "440 mm", "198 L", "6 %"):
        assert part in text


@pytest.mark.parametrize("reference_mm", [None, 600.0])
def test_a_level_that_is_true_while_the_pump_runs_is_dipped_so(reference_mm: float | None) -> None:
    still = replace(ASK, reference_mm=reference_mm)
    assert "pump off" in said(dip_scale(still, A4, ENGLISH))
    running = said(dip_scale(replace(still, is_true_running=True), A4, ENGLISH))
    assert "pump running" in running
    assert "pump off" not in running


def test_a_mark_that_is_not_above_full_is_not_drawn() -> None:
    assert "NEVER" not in said(dip_scale(replace(ASK, never_above_mm=440), A4, ENGLISH))


def test_one_piece_is_not_glued() -> None:
    short = replace(ASK, sump=proportional(200, 90, 0.03))
    assert "Glue" not in said(dip_scale(short, A4, ENGLISH))
    assert "Glue" in said(dip_scale(ASK, LETTER, ENGLISH))


def test_inches_on_an_inch_rule() -> None:
    text = said(dip_scale(replace(ASK, stick="in", plate="US gal"), LETTER, ENGLISH))
    assert "Small numbers: in" in text
    assert "17 5/16 in" in text
    assert "52.3 US gal" in text


def test_amounts_are_read_off_whole_or_with_one_decimal() -> None:
    assert (read_off(198.04, "L").decimals, read_off(198.04, "US gal").decimals) == (0, 1)


def test_marks_begin_where_the_stick_stands_at_a_shallow_end() -> None:
    # 1 m by 1 m, the floor rises by 100 mm: 50 L lie below the end of the stick, then 1 L/mm.
    shallow = sloped_box(1000, 1000, 100, False, 300, 0.03)
    assert shallow.least_volume_l == pytest.approx(50)
    scale = scale_of(replace(ASK, sump=shallow), ENGLISH)
    assert scale.marks[0].at_mm == pytest.approx(0, abs=1e-6)
    for mark in scale.marks:
        assert mark.at_mm == pytest.approx(mark.amount - 50, abs=1e-6)
    assert dip_scale(replace(ASK, sump=shallow), A4, ENGLISH)


def test_add_is_never_below_the_end_of_the_stick() -> None:
    # 500 L below the stick and 100 L above it; half of 600 L would be below its end.
    shallow = sloped_box(1000, 10000, 100, False, 10, 0.03)
    assert add_depth_mm(shallow, 500) == 0
    assert dip_scale(replace(ASK, sump=shallow, usable_l=500), A4, ENGLISH)


@pytest.mark.parametrize("sump", [EVEN, SLOPED])
def test_scale_of_dips_from_the_top_is_turned_round(sump) -> None:
    height_mm = sump.rim_depth_mm + 25
    up = scale_of(replace(ASK, sump=sump), ENGLISH)
    down = scale_of(replace(ASK, sump=sump, reference_mm=height_mm), ENGLISH)
    assert {mark.amount: height_mm - mark.at_mm for mark in down.marks} == pytest.approx(
        {mark.amount: mark.at_mm for mark in up.marks}
    )
    full = next(line for line in down.lines if line.title == "FULL")
    assert full.at_mm == pytest.approx(height_mm - sump.full_depth_mm)
    assert (down.bands[0].low_mm, down.bands[0].high_mm) == pytest.approx(
        (height_mm - up.bands[0].high_mm, height_mm - up.bands[0].low_mm)
    )
    # The ruler's small numbers go from the end of the stick up to the fixed point.
    assert down.length_mm == height_mm
    assert down.ruler[-1].at_mm == pytest.approx(height_mm, abs=1)


def test_what_lies_above_the_fixed_point_is_not_on_the_scale() -> None:
    scale = scale_of(replace(ASK, reference_mm=440, never_above_mm=470), ENGLISH)
    assert min(mark.at_mm for mark in scale.marks) >= 0
    assert [line.title for line in scale.lines] == ["ADD", "0"]
    assert scale.bands[0].low_mm == 0


def test_the_sheet_says_how_it_is_dipped() -> None:
    plain = said(dip_scale(ASK, A4, ENGLISH))
    assert "hard floor" in plain
    assert "own zero" not in plain
    text = said(dip_scale(replace(ASK, reference_mm=600, offset_mm=12), A4, ENGLISH))
    for part in ("touches the coolant", "a smaller number means", "160 mm", "add 12 mm"):
        assert part in text.replace("\u00a0", " ")
    assert "hard floor" not in text
