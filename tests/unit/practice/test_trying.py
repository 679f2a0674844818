"""pycore.practice.trying: water leaves alone, coolant leaves as it is."""

import pytest

from pycore.practice.trying import Change, changed
from pycore.quantity.fault import Fault


def test_evaporation_leaves_the_concentrate() -> None:
    # 200 L at 10 % hold 20 L; in 180 L they are 11.1 %, and filled with water again 10 %.
    volume_l, strength_pct = changed(200.0, 10.0, Change("evaporate", 20.0), "changes[0]")
    assert (volume_l, strength_pct) == pytest.approx((180.0, 100 / 9))
    again = changed(volume_l, strength_pct, Change("pour", water_l=20.0), "changes[1]")
    assert again == pytest.approx((200.0, 10.0))


def test_what_is_carried_out_has_the_sumps_own_strength() -> None:
    assert changed(200.0, 8.0, Change("carry_out", 50.0), "changes[0]") == (150.0, 8.0)


def test_buckets_are_counted() -> None:
    pour = Change("pour", count=4, water_l=8.5, concentrate_l=1.5)
    # (160 x 6 % + 6) / 200 is 7.8 %.
    assert changed(160.0, 6.0, pour, "changes[0]") == pytest.approx((200.0, 7.8))


@pytest.mark.parametrize(("kind", "most"), [("evaporate", 90.0), ("carry_out", 100.0)])
def test_more_than_there_is_cannot_leave(kind: str, most: float) -> None:
    with pytest.raises(Fault) as caught:
        changed(100.0, 10.0, Change(kind, most), "changes[0]")
    assert (caught.value.code, caught.value.path) == ("out_of_range", "changes[0].volume")
    assert caught.value.limit == {"below": most, "unit": "L"}
    changed(100.0, 10.0, Change(kind, most - 1), "changes[0]")
