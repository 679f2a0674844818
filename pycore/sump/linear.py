"""Symmetric positive definite systems of a few dozen unknowns, in plain Python.

The libraries for it are C extensions, which the phone's start-up cannot carry. Method of Cholesky;
checked against numpy in the tests.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from operator import mul

Matrix = list[list[float]]


def _dot(a: Sequence[float], b: Sequence[float]) -> float:
    # Correctly rounded, so that the phone's Python, whose sum() rounds another way, agrees.
    return math.fsum(map(mul, a, b))


def cholesky(matrix: Matrix) -> Matrix:
    """Rows of the lower triangle L with L·Lᵀ = matrix, each as long as its triangle.

    Zeros that a row begins with stay zeros and cost nothing, so unknowns with few neighbours come
    first. Error: ``ValueError`` when the matrix is not positive definite.

    >>> cholesky([[4.0, 2.0], [2.0, 5.0]])
    [[2.0], [1.0, 2.0]]
    """
    lower: Matrix = []
    begins: list[int] = []
    for i, row in enumerate(matrix):
        begin = next((j for j in range(i) if row[j] != 0), i)
        found = [0.0] * begin
        for j in range(begin, i):
            other, since = lower[j], max(begin, begins[j])
            rest = row[j] - _dot(found[since:], other[since:j])
            found.append(rest / other[j])
        square = row[i] - _dot(found[begin:], found[begin:])
        if not square > 0:
            raise ValueError("the matrix is not positive definite")
        found.append(math.sqrt(square))
        lower.append(found)
        begins.append(begin)
    return lower


def forward(lower: Matrix, right: Sequence[float]) -> list[float]:
    """y with L·y = right; yᵀ·y is then rightᵀ·matrix⁻¹·right.

    >>> forward([[2.0], [1.0, 2.0]], [2.0, 5.0])
    [1.0, 2.0]
    """
    begin = next((i for i, value in enumerate(right) if value != 0), len(right))
    found = [0.0] * begin
    for row, value in zip(lower[begin:], right[begin:], strict=True):
        found.append((value - _dot(row[begin:-1], found[begin:])) / row[-1])
    return found


def solved(lower: Matrix, right: Sequence[float]) -> list[float]:
    """x with matrix·x = right, from the matrix's lower triangle.

    >>> solved([[2.0], [1.0, 2.0]], [6.0, 7.0])
    [1.0, 1.0]
    """
    rest = forward(lower, right)
    for i in reversed(range(len(rest))):
        rest[i] /= lower[i][i]
        for j in range(i):
            rest[j] -= lower[i][j] * rest[i]
    return rest
