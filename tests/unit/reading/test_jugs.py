"""pycore.reading.jugs. The interval holds: tests/properties/reading/test_factor_fit.py."""

import pytest

from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured
from pycore.reading.jugs import FittedFactor, Jug, fit_factor, jug_of


def _jugs(*pairs: tuple[float, float], u: float = 0.2) -> list[Jug]:
    return [Jug(Measured(pct, 0.0), Measured(brix, u)) for pct, brix in pairs]


def _fit(*pairs: tuple[float, float], vessel: float = 0.0, zero_u: float = 0.0) -> FittedFactor:
    return fit_factor(_jugs(*pairs), vessel, zero_u)


def test_known_line_through_zero() -> None:
    # By hand: slope Σxy/Σx² = 2/3, its u 0.2/√126.
    got = _fit((3, 2), (6, 4), (9, 6))
    assert got.factor.value == pytest.approx(1.5)
    assert got.factor.u == pytest.approx(1.5**2 * 0.2 / 126**0.5)
    assert got.offset_brix is None


def test_errors_that_all_jugs_share_do_not_average_away() -> None:
    alone = _fit((3, 2), (6, 4), (9, 6)).factor.u
    vessel = _fit((3, 2), (6, 4), (9, 6), vessel=0.02).factor.u
    # By hand: the vessel's 2 % of 1.5; the zero's 0.1 Brix by Σx/Σx² = 18/126.
    assert vessel**2 - alone**2 == pytest.approx((1.5 * 0.02) ** 2)
    zero = _fit((3, 2), (6, 4), (9, 6), zero_u=0.1).factor.u
    assert zero**2 - alone**2 == pytest.approx((1.5**2 * 0.1 * 18 / 126) ** 2)


def test_offset_only_where_the_jugs_ask_for_it() -> None:
    plain = _fit((2, 1.4), (5, 3.4), (8, 5.4))
    assert plain.offset_brix is None
    clear = _fit((2, 2.9), (5, 4.9), (8, 6.9))
    assert clear.offset_brix is not None
    assert clear.offset_brix.value == pytest.approx(2.9 - 4 / 3)
    assert clear.factor.value == pytest.approx(1.5)


def test_an_offset_as_small_as_the_zero_is_unsure_is_none() -> None:
    assert _fit((2, 2.9), (5, 4.9), (8, 6.9), zero_u=1.0).offset_brix is None


def test_two_jugs_never_have_an_offset() -> None:
    assert _fit((2, 2.9), (8, 6.9)).offset_brix is None


def test_interval_is_the_slopes_turned_over() -> None:
    got = _fit((3, 2), (6, 4), (9, 6))
    low, high = got.factor.value * got.low_share, got.factor.value * got.high_share
    u_slope = 0.2 / 126**0.5
    assert (1 / low, 1 / high) == pytest.approx((2 / 3 + 1.96 * u_slope, 2 / 3 - 1.96 * u_slope))


def test_misread_jug_stands_out_and_widens_the_interval() -> None:
    good, bad = _fit((3, 2), (6, 4), (9, 6)), _fit((3, 2), (6, 5.8), (9, 6))
    assert (good.stands_out, good.scatters) == ([], False)
    assert (bad.stands_out, bad.scatters) == ([1], True)
    assert bad.factor.u > 3 * good.factor.u


def test_a_jug_that_alone_decides_has_no_score() -> None:
    got = _fit((0, 0.1), (0, -0.05), (5, 3.4))
    assert got.factor.value == pytest.approx(5 / 3.4)
    assert got.scores == [pytest.approx(0.5), pytest.approx(-0.25), 0.0]


def test_two_jugs_that_disagree_are_both_named() -> None:
    assert _fit((4, 2.0), (8, 7.0)).stands_out == [0, 1]


def test_strength_of_a_jug_and_its_u() -> None:
    # By hand: 50 mL in 1 L; (1 − 0.05)·√2·2 % of 5 %.
    jug = jug_of(0.95, 0.05, 0.02)
    assert (jug.value, jug.u) == pytest.approx((5.0, 0.95 * 2**0.5 * 0.02 * 5))
    assert jug_of(1.9, 0.1, 0.02) == jug


def test_jugs_of_one_strength_say_nothing_about_an_offset() -> None:
    got = _fit((5, 3.3), (5, 3.4), (5, 3.5))
    assert got.factor.value == pytest.approx(5 / 3.4)
    assert (got.offset_brix, got.span_pct) == (None, 0)


def test_five_jugs_are_not_too_many() -> None:
    assert _fit(*((pct, pct / 1.5) for pct in (2, 4, 6, 8, 10))).factor.value == pytest.approx(1.5)


# By hand: the middle one's own u is 0.2 · √(1 − 36/126), and 5/7 of the distance is left.
@pytest.mark.parametrize(("middle", "stands_out"), [(4.7, []), (4.72, [1]), (3.3, []), (3.28, [1])])
def test_three_of_its_own_u_make_a_jug_stand_out(middle: float, stands_out: list[int]) -> None:
    got = _fit((3, 2), (6, middle), (9, 6))
    assert got.stands_out == stands_out


@pytest.mark.parametrize(
    ("pairs", "code"),
    [
        (((3, 2),), "too_few"),
        (tuple((pct, pct / 1.5) for pct in range(1, 7)), "too_many"),
        (((0, 0.1), (0, 0.2)), "out_of_range"),
        (((3, -0.2), (6, -0.4)), "out_of_range"),
        (((3, 20), (6, 40)), "out_of_range"),
        (((3, 0.2), (6, 0.4)), "out_of_range"),
    ],
)
def test_what_gives_no_factor_is_refused(pairs: tuple[tuple[float, float], ...], code: str) -> None:
    with pytest.raises(Fault) as caught:
        _fit(*pairs)
    assert (caught.value.code, caught.value.path) == (code, "jugs")


@pytest.mark.parametrize(
    ("pairs", "got", "limit"),
    [
        (((3, 2),), 1, {"least": 2}),
        (tuple((pct, pct / 1.5) for pct in range(1, 7)), 6, {"most": 5}),
        (((0, 0.1), (0, 0.2)), 0, {"above": 0.0, "unit": "%"}),
        (((3, -0.25), (6, -0.5)), -0.75, {"above": 0.0, "unit": "Brix"}),
        (((3, 30), (6, 60)), 0.1, {"above": 0.3, "maximum": 8, "unit": "1"}),
        # Falling, and the same whatever was mixed: no factor at all.
        (((2, 9.0), (5, 6.0), (8, 3.0)), None, {"above": 0.3, "maximum": 8, "unit": "1"}),
        (((2, 3.0), (5, 3.0), (8, 3.0)), None, {"above": 0.3, "maximum": 8, "unit": "1"}),
    ],
)
def test_a_refusal_says_what_was_found_and_allowed(
    pairs: tuple[tuple[float, float], ...], got: float | None, limit: dict[str, object]
) -> None:
    with pytest.raises(Fault) as caught:
        _fit(*pairs)
    assert caught.value.got == (got if got is None else pytest.approx(got))
    assert caught.value.limit == limit


def test_the_largest_factor_is_still_one_and_the_smallest_is_none() -> None:
    # By hand: slope 160/1280; powers of two, so that no digit is lost.
    assert fit_factor(_jugs((8, 1), (16, 2), u=0.5), 0.0, 0.0).factor.value == 8.0
    with pytest.raises(Fault):
        fit_factor(_jugs((3, 10), (6, 20), u=0.5), 0.0, 0.0)


def test_an_interval_open_upwards_is_refused() -> None:
    with pytest.raises(Fault) as caught:
        fit_factor(_jugs((0.1, 0.1), (0.2, 0.2)), 0.0, 0.0)
    assert caught.value.path == "jugs"
    assert caught.value.limit == {"below": pytest.approx(0.51, abs=0.001), "unit": "1"}
