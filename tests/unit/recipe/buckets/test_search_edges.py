"""pycore.recipe.search at its edges: past the band, room filled to the digit, neat concentrate."""

from dataclasses import replace

from pycore.recipe.choice import weigh
from pycore.recipe.marks import Group, Space
from pycore.recipe.request import Mixing, PlanRequest, Target
from pycore.recipe.search import (
    _fitted,
    _parts,
    _split,
    _Whole,
    _whole_buckets,
    _with_part,
    best_pours,
)
from tests.unit.recipe.shop import question, space


def half_marks(volume_l: float, strength_pct: float, fill_to_l: float) -> PlanRequest:
    """A pail of 4 L in marks of 1 L and a jug in marks of 0.5 L: litres without a rest."""
    ask = question(volume_l, strength_pct, fill_to_l=fill_to_l, bucket=(4.0, 1.0, 0.5))
    return replace(ask, mixing=Mixing(60.0, 0.5, 0.5))


def test_past_the_band_is_behind_everything_on_its_own_side() -> None:
    # 154 L at 6 %: 0.45 L in 4.45 L bring 6.1 %, 8 L in 40 L 8.9 %, 18 L in 44 L 13.8 %.
    room = space(question())
    short, inside = weigh(room, (Group(1, 4, 9),)), weigh(room, (Group(4, 8, 40),))
    rich = space(question(strong_pct=60.0))
    past = weigh(rich, (Group(4, 6, 80), Group(1, 2, 40)))
    assert inside.outside_pct == 0 < short.outside_pct < 1 < past.outside_pct
    # A rich sump must not be thinned below 7 % either, and 8.1 % is taken for 6.9 %.
    ask = question(8.3, 8.6, fill_to_l=40.0, weak_pct=0.0, bucket=(4.0, 1.0, 0.5))
    ask = replace(ask, target=Target(7.0, 7.2, 8.0))
    found = best_pours(space(ask))
    assert 8.0 < space(ask).strength_pct(found.pours) < 8.1


def test_filled_to_the_digit_is_filled() -> None:
    # 107 pails of 3.5 L are 374.5 L, and 376 L are to be filled but for 1.5 L.
    assert best_pours(space(half_marks(624.0, 4.8, 1000.0))).pours == (Group(107, 3, 1),)
    # One pail of 3 L with 1 L in 4 L of room; two pails of 2 L with 1.5 L between them in 5.5 L.
    ask = half_marks(100.0, 6.0, 140.0)
    assert list(_with_part(Space(ask, 4.0, 4.0), _Whole(3, 2.0, 4.0))) == [(Group(1, 3, 2),)]
    both = (Group(1, 2, 2), Group(1, 2, 1))
    assert list(_split(Space(ask, 5.5, 5.5), _Whole(2, 1.5, 2.75))) == [both]


def test_nothing_is_needed_where_one_mark_of_each_is_open() -> None:
    # 1.5 L are open: 1 L and 0.5 L would bring 9 % to 9.2 %, out of the band.
    assert best_pours(space(half_marks(196.5, 9.0, 198.0))).pours == ()


def test_one_mark_that_is_left_takes_water() -> None:
    # Two pails of 3.5 L leave 1 L of 8 L, which a mark of water fills: the jug marks stay.
    room = Space(half_marks(100.0, 4.0, 108.0), 8.0, 6.5)
    assert _fitted(room, _Whole(3, 1.0, 3.5), 0, 4) == []
    # 0.9 L take no mark: (100·(8 − 4) + 8·6)/92 L of concentrate in two pails.
    less = Space(half_marks(100.0, 4.0, 107.9), 7.9, 6.4)
    fitted = _fitted(less, _Whole(3, 1.0, 3.5), 0, 8)
    assert [round(whole.jug, 6) for whole in fitted] == [round(448 / 92, 6)]


def test_last_buckets_in_rising_marks_of_the_jug() -> None:
    # Four pails of 8.4 L leave 10.4 L, of which 9.35 L are to be filled by one of up to 9.9 L: 8 L
    # take 27 marks at least, or 32 as strong as the others, and 9 L no more than 18.
    found = list(_parts(space(question()), (Group(4, 7, 28),), 9.9))
    assert found == [Group(1, 8, 27), Group(1, 8, 32), Group(1, 9, 18)]


def test_nearly_neat_concentrate() -> None:
    # 99.5 %: 19.9 L beside 0.1 L of water.
    ask = question(0.0, 0.0, fill_to_l=20.0, strong_pct=100.0, bucket=(20.0, 0.1, 0.1))
    wholes = _whole_buckets(space(replace(ask, target=Target(99.0, 99.5, 100.0))))
    assert [round(whole.jug, 6) for whole in wholes if whole.water == 1] == [199.0]
