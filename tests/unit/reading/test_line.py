"""pycore.reading.line. NIST StRD data stand in shared/checks/lines.json."""

import numpy as np
import pytest
from scipy.optimize import curve_fit
from scipy.stats import linregress

from pycore.reading.line import fit_line

X = [2.0, 4.0, 7.0, 10.0]
Y = [1.5, 2.7, 4.9, 6.6]
U = [0.2, 0.1, 0.3, 0.2]


def test_weighted_line_is_that_of_scipy() -> None:
    best, spread = curve_fit(
        lambda x, slope, offset: offset + slope * x, X, Y, sigma=U, absolute_sigma=True
    )
    line = fit_line(X, Y, U)
    assert (line.slope, line.offset) == pytest.approx(tuple(best), abs=1e-7)
    assert (line.slope_u, line.offset_u) == pytest.approx(tuple(np.sqrt(np.diag(spread))), abs=1e-6)


def test_weighted_line_through_zero_is_that_of_scipy() -> None:
    best, spread = curve_fit(lambda x, slope: slope * x, X, Y, sigma=U, absolute_sigma=True)
    line = fit_line(X, Y, U, through_zero=True)
    assert line.slope == pytest.approx(best[0], abs=1e-7)
    assert line.slope_u == pytest.approx(spread[0, 0] ** 0.5, abs=1e-7)
    assert (line.offset, line.offset_u, line.freedom) == (0.0, 0.0, 3)


def test_points_that_weigh_alike_are_those_of_scipy() -> None:
    found, line = linregress(X, Y), fit_line(X, Y)
    assert (line.slope, line.offset) == pytest.approx((found.slope, found.intercept))
    assert (line.slope_u, line.offset_u) == pytest.approx((found.stderr, found.intercept_stderr))
    squares = sum((y - found.intercept - found.slope * x) ** 2 for x, y in zip(X, Y, strict=True))
    assert (line.freedom, line.spread) == (2, pytest.approx((squares / 2) ** 0.5))


def test_two_points_leave_nothing_over() -> None:
    line = fit_line([1.0, 3.0], [2.0, 6.0])
    assert (line.slope, line.offset, line.freedom, line.spread) == (2.0, 0.0, 0, 0.0)


@pytest.mark.parametrize(("y", "y_u"), [([1.0, 2.0], None), ([1.0, 2.0, 4.0], [0.1, 0.1])])
def test_lists_of_different_lengths_are_refused(y: list[float], y_u: list[float] | None) -> None:
    with pytest.raises(ValueError, match="zip"):
        fit_line([1.0, 2.0, 3.0], y, y_u)


def test_residuals_are_what_is_left() -> None:
    line = fit_line(X, Y, U)
    assert line.residuals == pytest.approx(
        [y - line.offset - line.slope * x for x, y in zip(X, Y, strict=True)]
    )


@pytest.mark.parametrize(
    ("x", "through_zero"), [([3.0, 3.0], False), ([0.0, 0.0], True), ([3.0], False)]
)
def test_points_that_determine_no_line(x: list[float], through_zero: bool) -> None:
    with pytest.raises(ValueError, match="do not determine"):
        fit_line(x, [1.0] * len(x), None, through_zero)
