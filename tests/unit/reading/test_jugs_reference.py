"""pycore.reading.jugs beside numpy's linear algebra and scipy's distributions."""

import numpy as np
import pytest
from scipy.stats import chi2, norm

from pycore.quantity.measured import Measured
from pycore.reading import jugs as module
from pycore.reading.jugs import Jug, fit_factor

# Per cent and its u, Brix and its u: no two alike, so that a wrong weight shows.
PLAIN = [(2.0, 0.1, 1.4, 0.1), (5.0, 0.3, 3.1, 0.2), (8.0, 0.2, 5.6, 0.15), (9.0, 0.5, 5.9, 0.3)]
LIFTED = [(2.0, 0.1, 3.6, 0.1), (5.0, 0.05, 5.1, 0.1), (8.0, 0.02, 7.9, 0.1), (9.0, 0.2, 8.1, 0.1)]


def _jugs(rows: list[tuple[float, float, float, float]]) -> list[Jug]:
    return [Jug(Measured(pct, pct_u), Measured(brix, brix_u)) for pct, pct_u, brix, brix_u in rows]


def _by_numpy(
    rows: list[tuple[float, float, float, float]], has_offset: bool
) -> tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
    """Terms (slope last), their covariance, y's u, and each residual in its own u."""
    pct, pct_u, brix, brix_u = np.array(rows).T
    y_u = np.sqrt(brix_u**2 + (brix.sum() / pct.sum() * pct_u) ** 2)
    terms = np.column_stack([np.ones_like(pct), pct] if has_offset else [pct])
    weights = np.diag(1 / y_u**2)
    covariance = np.linalg.inv(terms.T @ weights @ terms)
    found = covariance @ terms.T @ weights @ brix
    left = y_u**2 - np.diag(terms @ covariance @ terms.T)
    return found, covariance, y_u, (brix - terms @ found) / np.sqrt(left)


def test_weighted_fit_through_zero() -> None:
    found, covariance, y_u, scores = _by_numpy(PLAIN, has_offset=False)
    got = fit_factor(_jugs(PLAIN), 0.01, 0.05)
    slope, pct = found[0], np.array(PLAIN)[:, 0]
    assert got.offset_brix is None
    assert not got.scatters
    assert got.factor.value == pytest.approx(1 / slope)
    # A zero that is 0.05 Brix off is off by as much in every jug.
    zero = 0.05 * (pct / y_u**2).sum() / (pct**2 / y_u**2).sum()
    share = np.sqrt(covariance[0, 0] + (0.01 * slope) ** 2 + zero**2) / slope
    assert got.factor.u / got.factor.value == pytest.approx(share)
    assert (got.low_share, got.high_share) == pytest.approx(
        (1 / (1 + 1.96 * share), 1 / (1 - 1.96 * share))
    )
    assert got.scores == pytest.approx(list(scores))
    assert got.off_brix == pytest.approx(list(np.array(PLAIN)[:, 2] - slope * pct))
    assert got.span_pct == 7.0


def test_weighted_fit_with_an_offset_and_too_much_scatter() -> None:
    found, covariance, y_u, scores = _by_numpy(LIFTED, has_offset=True)
    got = fit_factor(_jugs(LIFTED), 0.01, 0.05)
    pct, _, brix, _ = np.array(LIFTED).T
    squares = (((brix - found[0] - found[1] * pct) / y_u) ** 2).sum()
    assert squares > chi2.ppf(0.95, 2)
    # Birge ratio.
    ratio = np.sqrt(squares / 2)
    assert got.scatters
    assert got.offset_brix is not None
    assert got.offset_brix.value == pytest.approx(found[0])
    assert got.offset_brix.u == pytest.approx(np.sqrt(covariance[0, 0]) * ratio)
    assert got.factor.value == pytest.approx(1 / found[1])
    share = np.hypot(np.sqrt(covariance[1, 1]) * ratio / found[1], 0.01)
    assert got.factor.u / got.factor.value == pytest.approx(share)
    assert got.scores == pytest.approx(list(scores))


# Residuals that neither a slope nor an offset can take up.
@pytest.mark.parametrize(
    ("pct", "pattern"),
    [
        ((4, 8), (2, -1)),
        ((3, 6, 9), (1, -2, 1)),
        ((2, 4, 6, 8), (1, -1, -1, 1)),
        ((2, 4, 6, 8, 10), (1, -2, 1, 0, 0)),
    ],
)
@pytest.mark.parametrize(("share", "scatters"), [(0.99, False), (1.01, True)])
def test_scatter_is_told_from_the_point_of_chi_squared_on(
    pct: tuple[int, ...], pattern: tuple[int, ...], share: float, scatters: bool
) -> None:
    point = chi2.ppf(0.95, len(pct) - 1) * share
    step = 0.1 * np.sqrt(point / sum(off**2 for off in pattern))
    rows = [(x, 0.0, x / 1.5 + off * step, 0.1) for x, off in zip(pct, pattern, strict=True)]
    got = fit_factor(_jugs(rows), 0.0, 0.0)
    assert got.offset_brix is None
    assert got.scatters is scatters


def test_factors_of_coverage_are_those_of_the_distributions() -> None:
    assert pytest.approx(norm.ppf(0.975), abs=0.001) == module.K_95
    assert pytest.approx(norm.ppf(0.995), abs=0.001) == module.OFFSET_K
    assert module.STANDS_OUT_K == 3.0


@pytest.mark.parametrize(("share", "has_offset"), [(0.99, False), (1.01, True)])
@pytest.mark.parametrize("sign", [-1, 1])
def test_an_offset_is_fitted_from_the_point_of_one_per_cent_on(
    share: float, has_offset: bool, sign: int
) -> None:
    # By hand: u of the offset is 0.1 · √(1/3 + 25/18); the zero's own comes beside it.
    least = norm.ppf(0.995) * np.hypot(0.1 * np.sqrt(1 / 3 + 25 / 18), 0.05)
    rows = [(x, 0.0, x / 1.5 + sign * least * share, 0.1) for x in (2.0, 5.0, 8.0)]
    assert (fit_factor(_jugs(rows), 0.0, 0.05).offset_brix is not None) is has_offset


# Common practice, no source: graduated syringes, and a jug with coarse marks.
def test_vessels_and_the_least_span() -> None:
    assert module.VESSEL_U_SHARE == {"syringe": (0.005, 0.005), "jug": (0.02, 0.01)}
    assert module.LEAST_SPAN_PCT == 3.0
