"""pycore.sheets.bucket_scale: marks up the slanting wall, and the shop's usual buckets."""

from dataclasses import replace

import pytest

from pycore.quantity.fault import Fault
from pycore.recipe.request import Bucket, Target
from pycore.sheets.bucket_scale import (
    BucketScale,
    UsualBucket,
    bucket_at_aim,
    bucket_scale,
    scale_of,
)
from pycore.sheets.pail import from_diameters
from tests.unit.sheets.drawn import said
from tests.unit.sheets.pages import A4, ENGLISH

PAIL = from_diameters(235, 290, 265)
ASK = BucketScale(PAIL, 10, "L", "mL", "mm", [UsualBucket(9, 0.8), UsualBucket(8, 1.5)])


def test_every_mark_holds_its_litres_up_the_wall() -> None:
    scale = scale_of(ASK, ENGLISH)
    for mark in scale.marks:
        depth_mm = mark.at_mm / PAIL.along_wall_mm(1.0)
        assert PAIL.volume_l(depth_mm) == pytest.approx(mark.amount, abs=1e-6)
    # A little above the highest fill, far below the brim.
    assert 10 < scale.marks[-1].amount < 11 < PAIL.brim_l


def test_water_first_and_concentrate_on_top() -> None:
    scale = scale_of(ASK, ENGLISH)
    at_mm = {mark.amount: mark.at_mm for mark in scale.marks}
    water, concentrate = scale.bands[:2]
    assert (water.fill, concentrate.fill) == ("water", "solid")
    assert water.high_mm == concentrate.low_mm == pytest.approx(at_mm[9])
    lines = {line.title: line.at_mm for line in scale.lines}
    assert lines["2 WATER"] == pytest.approx(at_mm[8])
    assert lines["2 CONCENTRATE"] == pytest.approx(at_mm[9.5])
    assert lines["FILL no higher: 10\u00a0L"] == pytest.approx(at_mm[10])


def test_the_sheet_says_how_strong_each_bucket_is() -> None:
    text = said(bucket_scale(ASK, "Wheel lathe", A4, ENGLISH))
    # By hand: 0.8/9.8 and 1.5/9.5.
    for part in ("800 mL", "8.2 %", "1.5 L", "15.8 %", "Wheel lathe"):
        assert part in text


def test_a_bucket_of_water_alone_has_no_strength() -> None:
    text = said(bucket_scale(replace(ASK, buckets=[UsualBucket(10, 0)]), "n", A4, ENGLISH))
    assert "%" not in text.replace("100 %", "")


def test_a_bucket_the_pail_does_not_hold_is_refused() -> None:
    with pytest.raises(Fault) as caught:
        bucket_scale(replace(ASK, buckets=[UsualBucket(9, 0.8), UsualBucket(14, 1)]), "n", A4,
                     ENGLISH)  # fmt: skip
    assert (caught.value.code, caught.value.path) == ("out_of_range", "buckets[1]")
    assert caught.value.limit["maximum"] == pytest.approx(PAIL.brim_l)


def test_a_pail_smaller_than_its_usual_fill_is_a_contradiction() -> None:
    with pytest.raises(Fault) as caught:
        bucket_scale(replace(ASK, usable_l=15), "n", A4, ENGLISH)
    assert (caught.value.code, caught.value.path) == ("order", "usable_l")


@pytest.mark.parametrize(
    ("bucket", "wanted"),
    [
        (Bucket(10, 1, 0.05), UsualBucket(9, 0.8)),
        (Bucket(10, 2.5, 0.1), UsualBucket(7.5, 0.7)),
        (Bucket(10, 10, 0.05), UsualBucket(10, 0)),
    ],
)
def test_the_fullest_bucket_of_whole_marks(bucket: Bucket, wanted: UsualBucket) -> None:
    assert bucket_at_aim(bucket, Target(7, 8, 9)) == wanted
