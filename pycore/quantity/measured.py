"""Measured values with a standard uncertainty, carried to first order.

The propagation is that of JCGM 100:2008 (GUM), section 5, by the library ``uncertainties``:
inputs that stand in a result twice are counted once.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any

from uncertainties import covariance_matrix, nominal_value, std_dev, ufloat
from uncertainties.core import AffineScalarFunc


@dataclass(frozen=True)
class Measured:
    """A value and its standard uncertainty (one sigma) in the same unit; u is never negative."""

    value: float
    u: float


def variable(measured: Measured, tag: str) -> Any:
    """An input of a calculation: a number with an uncertainty that is known by its tag.

    One that is exactly known (u = 0) is a plain float, since it brings no share.
    """
    return ufloat(measured.value, measured.u, tag) if measured.u > 0 else measured.value


def result(number: Any) -> Measured:
    """The end of a calculation as a plain measured value.

    >>> result(variable(Measured(5.2, 0.1), "reading") * variable(Measured(1.5, 0.05), "factor")).u
    0.3001666203960727
    """
    return Measured(float(nominal_value(number)), float(std_dev(number)))


def moves_with(number: Any, other: Any) -> float:
    """How far ``number`` moves with one unit of ``other``, as far as the same inputs move both.

    Covariance over variance; 0 where either is exactly known.

    >>> volume = variable(Measured(100.0, 2.0), "volume")
    >>> moves_with(3 * volume + variable(Measured(5.0, 1.0), "rest"), volume)
    3.0
    """
    if not isinstance(number, AffineScalarFunc) or not isinstance(other, AffineScalarFunc):
        return 0.0
    (_, shared), (_, variance) = covariance_matrix([number, other])
    return float(shared / variance)


def shares(number: Any) -> dict[str, float]:
    """Share of the variance of ``number`` that each tagged input brings, largest first; sum 1.

    Empty when nothing is uncertain.
    """
    parts: dict[str, float] = {}
    components = number.error_components() if isinstance(number, AffineScalarFunc) else {}
    for source, error in components.items():
        parts[source.tag] = parts.get(source.tag, 0.0) + float(error) ** 2
    total = math.fsum(parts.values())
    if total == 0:
        return {}
    ordered = sorted(parts.items(), key=lambda item: (-item[1], item[0]))
    return {tag: part / total for tag, part in ordered}


def chance_between(number: Measured, low: float, high: float) -> float:
    """Chance, 0 to 1, that the true value lies from ``low`` to ``high`` (normal distribution).

    With u = 0 it is 1 inside, edges included, and 0 outside.
    """
    if number.u == 0:
        return 1.0 if low <= number.value <= high else 0.0
    scale = number.u * math.sqrt(2)
    upper = math.erf((high - number.value) / scale)
    return 0.5 * (upper - math.erf((low - number.value) / scale))
