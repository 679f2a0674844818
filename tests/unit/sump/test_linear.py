"""pycore.sump.linear against numpy."""

import numpy as np
import pytest

from pycore.sump.linear import cholesky, forward, solved


def _system(size: int) -> tuple[np.ndarray, np.ndarray]:
    rng = np.random.default_rng(size)
    root = rng.normal(size=(size, size))
    return root @ root.T + size * np.eye(size), rng.normal(size=size)


@pytest.mark.parametrize("size", [1, 2, 7, 60])
def test_solution(size: int) -> None:
    # numpy 2 or newer, linalg.solve. Tolerance relative 1e-9.
    matrix, right = _system(size)
    lower = cholesky(matrix.tolist())
    assert solved(lower, right.tolist()) == pytest.approx(np.linalg.solve(matrix, right), rel=1e-9)


def test_variance() -> None:
    matrix, right = _system(12)
    part = forward(cholesky(matrix.tolist()), right.tolist())
    wanted = right @ np.linalg.inv(matrix) @ right
    assert sum(x * x for x in part) == pytest.approx(wanted, rel=1e-9)


@pytest.mark.parametrize("matrix", [[[0.0]], [[1.0, 2.0], [2.0, 1.0]], [[float("nan")]]])
def test_not_positive_definite(matrix: list[list[float]]) -> None:
    with pytest.raises(ValueError, match="positive definite"):
        cholesky(matrix)
