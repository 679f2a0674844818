"""A sump's curve from known pours: what was poured between two dips, on whatever day.

The unknowns are the free surface in even layers from the floor to the rim, and the error of each
dip. They are found together by least squares (JCGM 102:2011, 6; weights from the standard
uncertainties), so a dip that two pours share is counted once. Neighbouring layers are tied by one
sentence about sumps: from the floor to the rim the surface may well change by its own mean. That
sentence carries the curve through gaps and below an unknown rest, with an uncertainty that grows
with the distance to the next dip. The vessel's own error is the same in every pour: it scales the
whole curve and is not averaged away.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from pycore.sump.linear import Matrix, cholesky, forward, solved

# Layers between floor and rim: as many rows as a dip scale has numbers.
LAYERS = 40
# Standard deviation of the change of the surface from floor to rim, as shares of its mean. Straight
# walls change by next to nothing, a pump body by a fifth, a sloped floor by all of it; the pours
# say which of these fits best (largest evidence). The range is common practice, no source.
CHANGE_SHARES = (0.125, 0.25, 0.5, 1.0, 2.0)
# Below the lowest dip lies the floor, with its slope, feet and drain: neighbouring layers there may
# differ so many times more. Common practice, no source.
FLOOR_TIMES = 3.0
# Below the rest of a sump that was never empty no pour says how, so next to nothing is tied there.
REST_CHANGE_SHARE = 5.0
# What lies below the lowest dip of a sump that was never empty holds from a third of (a floor that
# falls to a point, as a cone) to all of (a level floor) its depth times the surface there, evenly
# likely: middle and standard deviation of that rectangle (JCGM 100:2008, 4.3.7).
REST_SHARE, REST_U_SHARE = 2 / 3, (2 / 3) / math.sqrt(12)
# A surface is never less than nothing; a layer found below this share of the mean is pulled to it.
LEAST_SURFACE_SHARE = 0.04
# A pour that was measured without any error would have no weight that a float can hold.
_LEAST_POUR_U_SHARE = 1e-4
# The dips' part depends on the slope, which the first pass finds and the next ones use.
_PASSES = 3


@dataclass(frozen=True)
class Pour:
    """Litres of a known vessel poured between two dips, given as places in the list of dips."""

    before: int
    after: int
    volume_l: float


@dataclass(frozen=True)
class Trial:
    """Dips in mm with their standard uncertainties (0 for an empty sump) and the pours between."""

    dips_mm: tuple[float, ...]
    dip_us_mm: tuple[float, ...]
    pours: tuple[Pour, ...]


@dataclass(frozen=True)
class Calibration:
    """Litres at even depths with the whole standard uncertainty, and how far off each dip seems.

    off_share is that error in standard uncertainties of the dip.
    """

    depths_mm: tuple[float, ...]
    volumes_l: tuple[float, ...]
    us_l: tuple[float, ...]
    off_share: tuple[float, ...]


class _Normal:
    """The normal equations of the least squares, unknowns in reverse.

    So the dips, which have few neighbours, come before the layers, and most of the triangle is 0.
    """

    def __init__(self, size: int) -> None:
        self.matrix: Matrix = [[0.0] * size for _ in range(size)]
        self.right = [0.0] * size
        self.evidence = 0.0

    def add(self, row: Sequence[tuple[int, float]], value: float, u: float) -> None:
        """One equation Σ factor·unknown = value with its standard uncertainty."""
        weight, end = 1 / (u * u), len(self.right) - 1
        self.evidence -= math.log(u) + weight * value * value / 2
        for i, a in row:
            self.right[end - i] += weight * a * value
            for j, b in row:
                self.matrix[end - i][end - j] += weight * a * b


@dataclass(frozen=True)
class _Fit:
    """Solution of one pass: layers and dips, the triangle of the reversed matrix, and the evidence.

    The evidence is the logarithm of how likely these pours are, but for a constant.
    """

    found: list[float]
    lower: Matrix
    evidence: float

    @property
    def surfaces(self) -> list[float]:
        return self.found[:LAYERS]


class _Model:
    """The equations of a trial, whose layers are thin where the pours would make them negative."""

    def __init__(self, trial: Trial, rim_mm: float, pour_u_share: float) -> None:
        self.trial, self.layer_mm = trial, rim_mm / LAYERS
        self.pour_u_share = max(pour_u_share, _LEAST_POUR_U_SHARE)
        dips = trial.dips_mm
        poured_l = math.fsum(pour.volume_l for pour in trial.pours)
        risen_mm = math.fsum(dips[pour.after] - dips[pour.before] for pour in trial.pours)
        self.mean_l_per_mm = poured_l / risen_mm
        self.lowest_mm = min(dip for dip in dips if dip > 0)
        self.is_from_empty = min(dips) == 0

    def fit(
        self, surfaces: Sequence[float], thin: Mapping[int, float], change_share: float
    ) -> _Fit:
        """The most likely surfaces and dip errors, slopes taken from ``surfaces``."""
        normal = _Normal(LAYERS + len(self.trial.dips_mm))
        self._tie_layers(normal, thin, change_share)
        slopes = []
        for k, (dip_mm, u_mm) in enumerate(
            zip(self.trial.dips_mm, self.trial.dip_us_mm, strict=True)
        ):
            # The error of an exact dip is an unknown that no equation uses.
            normal.add([(LAYERS + k, 1.0)], 0.0, u_mm or 1.0)
            slopes.append(self._surface(surfaces, dip_mm) if u_mm > 0 else 0.0)
        for pour in self.trial.pours:
            a, b = pour.before, pour.after
            row = self._layers_between(self.trial.dips_mm[a], self.trial.dips_mm[b])
            row += [(LAYERS + b, -slopes[b]), (LAYERS + a, slopes[a])]
            normal.add(row, pour.volume_l, self.pour_u_share * pour.volume_l)
        lower = cholesky(normal.matrix)
        found = solved(lower, normal.right)
        fitted = math.fsum(x * y for x, y in zip(found, normal.right, strict=True)) / 2
        size = math.fsum(math.log(row[-1]) for row in lower)
        return _Fit(found[::-1], lower, normal.evidence + fitted - size)

    def _tie_layers(self, normal: _Normal, thin: Mapping[int, float], change_share: float) -> None:
        step = self.mean_l_per_mm / math.sqrt(LAYERS)
        floor_share = FLOOR_TIMES * change_share if self.is_from_empty else REST_CHANGE_SHARE
        for i in range(LAYERS - 1):
            is_floor = (i + 1) * self.layer_mm < self.lowest_mm
            share = floor_share if is_floor else change_share
            normal.add([(i, -1.0), (i + 1, 1.0)], 0.0, share * step)
        least = LEAST_SURFACE_SHARE * self.mean_l_per_mm
        for i, u_l_per_mm in thin.items():
            normal.add([(i, 1.0)], least, u_l_per_mm)
        if not self.is_from_empty:
            row = self._layers_between(0.0, self.lowest_mm)
            row.append((row[-1][0], -REST_SHARE * self.lowest_mm))
            normal.add(row, 0.0, REST_U_SHARE * self.lowest_mm * self.mean_l_per_mm)

    def _layers_between(self, low_mm: float, high_mm: float) -> list[tuple[int, float]]:
        """Each layer's height that lies between two depths."""
        first, last = int(low_mm / self.layer_mm), min(int(high_mm / self.layer_mm), LAYERS - 1)
        parts = []
        for i in range(first, last + 1):
            bottom_mm, top_mm = i * self.layer_mm, (i + 1) * self.layer_mm
            inside_mm = min(high_mm, top_mm) - max(low_mm, bottom_mm)
            if inside_mm > 0:
                parts.append((i, inside_mm))
        return parts

    def _surface(self, surfaces: Sequence[float], depth_mm: float) -> float:
        """Surface in L/mm at a depth, straight between the middles of the layers."""
        place = min(max(depth_mm / self.layer_mm - 0.5, 0.0), LAYERS - 1.0)
        i = min(int(place), LAYERS - 2)
        return surfaces[i] + (place - i) * (surfaces[i + 1] - surfaces[i])

    def settled(self, change_share: float) -> _Fit:
        """The fit once slopes no longer change and no layer is less than nothing."""
        surfaces = [self.mean_l_per_mm] * LAYERS
        least = LEAST_SURFACE_SHARE * self.mean_l_per_mm
        thin: dict[int, float] = {}
        passes = 0
        while True:
            fit = self.fit(surfaces, thin, change_share)
            surfaces = fit.surfaces
            passes += 1
            narrow = [i for i, surface in enumerate(surfaces) if surface < least / 2]
            if not narrow and passes >= _PASSES:
                return fit
            # Pulled harder each time, so that pours that contradict each other end too: then it is
            # their dips that come out wrong, which is what there is to ask about.
            thin |= {i: thin.get(i, least) / 2 for i in narrow}


def calibrated(
    trial: Trial, rim_mm: float, pour_u_share: float, vessel_u_share: float
) -> Calibration:
    """The curve that fits the pours best, at even depths up to the rim.

    Parameters
    ----------
    trial : Trial
        At least one pour; in each the dip after lies above the dip before, all from 0 to the rim.
    rim_mm : float
        Deepest dip there can be, mm.
    pour_u_share, vessel_u_share : float
        Relative standard uncertainty of one pour (filling to the mark, each its own) and of the
        vessel's mark (the same in every pour), 0 or more.

    Error: ``ValueError`` when the pours fix no curve.
    """
    model = _Model(trial, rim_mm, pour_u_share)
    fits = [model.settled(share) for share in CHANGE_SHARES]
    best = max(fits, key=lambda fit: fit.evidence)
    volumes, us = _levels(best, model.layer_mm, vessel_u_share)
    offs = tuple(
        best.found[LAYERS + k] / u_mm if u_mm > 0 else 0.0 for k, u_mm in enumerate(trial.dip_us_mm)
    )
    depths = tuple(model.layer_mm * (i + 1) for i in range(LAYERS))
    return Calibration(depths, volumes, us, offs)


def _levels(
    fit: _Fit, layer_mm: float, vessel_u_share: float
) -> tuple[tuple[float, ...], tuple[float, ...]]:
    """Litres up to each layer's top, and their whole standard uncertainty."""
    volumes, us, volume_l = [], [], 0.0
    for i, surface in enumerate(fit.surfaces):
        volume_l += surface * layer_mm
        row = [0.0] * (len(fit.lower) - i - 1) + [layer_mm] * (i + 1)
        own_u_l = math.hypot(*forward(fit.lower, row))
        volumes.append(volume_l)
        us.append(math.hypot(own_u_l, vessel_u_share * volume_l))
    return tuple(volumes), tuple(us)
