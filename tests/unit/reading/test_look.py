"""pycore.reading.look: every row of the table, its edges, and the published rules."""

from typing import Any

import pytest

from pycore.reading.look import (
    DECISIONS,
    FOAM_ORDER,
    Limits,
    Measures,
    decision_of,
    nitrite_interval_d,
    rows_that_hold,
)


def held(seen: set[str], **measured: Any) -> dict[str, str]:
    names = ("fluid_type", "smell_again", "foam_from")
    more = {name: measured.pop(name) for name in names if name in measured}
    rows = rows_that_hold(seen, Measures(**measured), Limits(), **more)
    return {row.code: row.decision for row in rows}


@pytest.mark.parametrize(
    ("seen", "decision"),
    [
        ("floating_oil", "skim_first"),
        ("foam", "check_chemistry_first"),
        ("cream", "check_chemistry_first"),
        ("slime", "check_chemistry_first"),
        ("rust", "check_chemistry_first"),
        ("skin_complaint", "check_chemistry_first"),
        ("level_odd", "check_chemistry_first"),
        ("chips_or_sludge", "go_on"),
        ("split", "do_not_feed"),
        ("grey_or_brown", "do_not_feed"),
    ],
)
def test_what_is_seen_decides_alone(seen: str, decision: str) -> None:
    assert held({seen}) == {seen: decision}


def test_nothing_odd_goes_on() -> None:
    assert rows_that_hold({"normal"}, Measures(), Limits()) == []
    assert decision_of([]) == "go_on"


def test_a_clear_synthetic_is_not_split() -> None:
    assert held({"split"}, fluid_type="synthetic") == {"clear_synthetic": "check_chemistry_first"}


def test_a_bad_smell_is_smelled_again_before_it_condemns() -> None:
    assert held({"smell"}) == {"smell": "check_chemistry_first"}
    assert held({"smell"}, smell_again="gone") == {"smell_gone": "go_on"}
    assert held({"smell"}, smell_again="still") == {"smell_stays": "do_not_feed"}


def test_foam_is_judged_by_what_it_comes_from() -> None:
    assert held({"foam"}) == {"foam": "check_chemistry_first"}
    # Air at a low level ends with filling; softer water and a strong sump are no reason to stop.
    for cause in ("level", "strength", "water"):
        assert held({"foam"}, foam_from=cause) == {f"foam_{cause}": "go_on"}
    assert held({"foam"}, foam_from="cleaner") == {"foam_cleaner": "do_not_feed"}
    assert held({"foam"}, foam_from="none") == {"foam_none": "check_chemistry_first"}


def test_foam_is_looked_into_where_it_is_cheapest_first() -> None:
    # Common practice, no source: air at a low level before anything is drained.
    assert FOAM_ORDER == ("level", "cleaner", "strength", "water")
    assert all(held({"foam"}, foam_from=cause) for cause in FOAM_ORDER)


# GISCHEM: below 8.5. Above 9.8: common practice, no source. DGUV Regel 109-003: more than 0.5 below
# the first fill. More than 1.0: memory.
@pytest.mark.parametrize(
    ("ph", "first", "codes"),
    [
        (8.5, None, {}),
        (None, 9.3, {}),
        (8.4, None, {"ph_low": "check_chemistry_first"}),
        (9.8, None, {}),
        (9.9, None, {"ph_high": "check_chemistry_first"}),
        (8.8, 9.3, {}),
        (8.7, 9.3, {"ph_dropped": "check_chemistry_first"}),
        (8.5, 9.5, {"ph_dropped": "check_chemistry_first"}),
        (8.5, 9.6, {"ph_dropped_far": "do_not_feed"}),
        (8.3, 9.4, {"ph_dropped_far": "do_not_feed", "ph_low": "check_chemistry_first"}),
        (9.5, 9.3, {}),
    ],
)
def test_ph_level_and_drop(ph: float | None, first: float | None, codes: dict[str, str]) -> None:
    assert held(set(), ph=ph, first_ph=first) == codes


# TRGS 611, 5.3 (3): 20 mg/L is the limit itself.
@pytest.mark.parametrize(("nitrite", "acts"), [(0.0, False), (20.0, False), (20.1, True)])
def test_nitrite(nitrite: float, acts: bool) -> None:
    assert held(set(), nitrite_mg_l=nitrite) == ({"nitrite_high": "do_not_feed"} if acts else {})


@pytest.mark.parametrize(
    ("slide", "codes"),
    [
        (999.0, {}),
        (1e3, {"germs_review": "check_chemistry_first"}),
        (9.9e5, {"germs_review": "check_chemistry_first"}),
        (1e6, {"germs_act": "do_not_feed"}),
    ],
)
def test_bands_of_the_dip_slide(slide: float, codes: dict[str, str]) -> None:
    assert held(set(), slide_cfu_ml=slide) == codes


def test_the_scheme_of_the_bands_is_named() -> None:
    limits = Limits(slide_scheme="Our laboratory", slide_review_cfu_ml=1e4)
    (row,) = rows_that_hold(set(), Measures(slide_cfu_ml=2e4), limits)
    assert (row.code, row.source) == ("germs_review", "Our laboratory")


@pytest.mark.parametrize(
    ("warmth", "codes"), [(9.9, ["cold"]), (10, []), (25, []), (40, []), (41, ["warm"])]
)
def test_warmth_is_told_and_stops_nothing(warmth: float, codes: list[str]) -> None:
    assert held(set(), temperature_c=warmth) == dict.fromkeys(codes, "go_on")


def test_the_strongest_row_comes_first_and_decides() -> None:
    rows = rows_that_hold({"floating_oil", "rust", "grey_or_brown"}, Measures(), Limits())
    assert [row.decision for row in rows] == list(reversed(DECISIONS))[:3]
    assert decision_of(rows) == "do_not_feed"


def test_every_row_names_its_source() -> None:
    everything = {
        "floating_oil", "foam", "split", "cream", "grey_or_brown", "smell", "slime", "rust",
        "chips_or_sludge", "skin_complaint", "level_odd",
    }  # fmt: skip
    found = []
    for ph in (8.0, 8.6):
        for slide, warmth in ((1e3, 5.0), (1e7, 50.0)):
            measures = Measures(ph, 9.2, 30.0, warmth, slide)
            for smell in (None, "gone", "still"):
                found += rows_that_hold(everything, measures, Limits(), "synthetic", smell)
    assert {row.code for row in found} >= everything - {"split", "smell"}
    assert all(row.source.strip() for row in found)


# The examples of TRGS 611, 5.3 (2), and its edge: 10 is neither below nor above.
@pytest.mark.parametrize(
    ("results", "days"),
    [
        ([8, 9, 7], 28),
        ([8, 9, 7, 11], 7),
        ([8, 12, 9], 7),
        ([], 7),
        ([8, 9], 7),
        ([8, 9, 10], 7),
        ([8, 9, 7, 10], 28),
        ([11, 8, 9, 7], 28),
        ([8, 9, 7, 11, 8, 9], 7),
    ],
)
def test_nitrite_interval(results: list[float], days: int) -> None:
    assert nitrite_interval_d(results) == days
