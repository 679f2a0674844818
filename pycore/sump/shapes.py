"""How deep is how much: proportional to the full mark, a box, or a table of pairs.

All shapes are upright walls or measured pairs, so litres rise strictly with depth. A depth
outside 0 to the rim is refused with the limit in it: a slip of a finger must not become an
empty or a full tank.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured, result, variable
from pycore.sump.curve import RisingCurve

# Never-above mark 5 to 10 % over the full mark: common practice, no source.
RIM_OVER_FULL = 1.10

# Relative standard uncertainty of the litres: common practice, no source.
VOLUME_U_SHARE = {"plate": 0.10, "poured": 0.03, "said": 0.15}

# Standard uncertainty of a dip in mm: common practice, no source.
DIP_U_MM = {"hard_floor": 2.0, "through_slot": 3.0, "running": 8.0, "chips": 15.0}


@dataclass(frozen=True)
class Sump:
    """A sump as a curve from depth to litres.

    full_depth_mm is the full mark, rim_depth_mm the deepest dip there can be, volume_u_share the
    relative standard uncertainty of the litres (one scale error for the whole sump).
    """

    curve: RisingCurve
    full_depth_mm: float
    rim_depth_mm: float
    volume_u_share: float

    @property
    def full_volume_l(self) -> float:
        """Litres at the full mark."""
        return self.volume_from_depth(self.full_depth_mm, "full_depth")

    @property
    def rim_volume_l(self) -> float:
        """Litres at the rim."""
        return self.volume_from_depth(self.rim_depth_mm, "rim_depth")

    def volume_from_depth(self, depth_mm: float, path: str) -> float:
        """Litres at a depth of 0 to the rim, in mm.

        Error: ``out_of_range`` at ``path`` with the limits in mm.
        """
        if not 0 <= depth_mm <= self.rim_depth_mm:
            limit = {"minimum": 0.0, "maximum": self.rim_depth_mm, "unit": "mm"}
            raise Fault("out_of_range", path, depth_mm, limit)
        return self.curve.volume_l(depth_mm)

    def depth_from_volume(self, volume_l: float, path: str) -> float:
        """Depth in mm at which the sump holds 0 litres up to what it holds at the rim.

        Error: ``out_of_range`` at ``path`` with the limits in litres.
        """
        if not 0 <= volume_l <= self.rim_volume_l:
            limit = {"minimum": 0.0, "maximum": self.rim_volume_l, "unit": "L"}
            raise Fault("out_of_range", path, volume_l, limit)
        return self.curve.depth_mm(volume_l)

    def litres_per_mm(self, depth_mm: float) -> float:
        """What one millimetre on the stick is worth at a depth of 0 to the rim, L/mm."""
        return self.curve.litres_per_mm(depth_mm)

    def volume_measured(self, depth: Measured, path: str) -> Measured:
        """Litres and their standard uncertainty from a dip: its own, and the sump's scale.

        First order (JCGM 100:2008, 5.1.2). Error: ``out_of_range`` as in volume_from_depth.
        """
        volume_l = self.volume_from_depth(depth.value, path)
        scale = variable(Measured(1.0, self.volume_u_share), "scale")
        dip = variable(Measured(0.0, depth.u), "dip")
        return result(scale * (volume_l + self.litres_per_mm(depth.value) * dip))


def _straight(
    l_per_mm: float, full_depth_mm: float, rim_depth_mm: float | None, u_share: float
) -> Sump:
    rim = full_depth_mm * RIM_OVER_FULL if rim_depth_mm is None else rim_depth_mm
    if rim < full_depth_mm:
        limit = {"minimum": full_depth_mm, "unit": "mm"}
        raise Fault("order", "rim_depth", rim, limit)
    return Sump(RisingCurve.through((0.0, rim), (0.0, rim * l_per_mm)), full_depth_mm, rim, u_share)


def proportional(
    full_depth_mm: float, full_volume_l: float, u_share: float, rim_depth_mm: float | None = None
) -> Sump:
    """A sump in which litres grow evenly with depth, fixed by its full mark.

    full_depth_mm and full_volume_l above 0; without a rim the deepest dip is the full mark plus
    10 %. Error: ``order`` when the rim lies below the full mark.

    >>> round(proportional(400, 200, 0.1).volume_from_depth(342, "dip"), 9)
    171.0
    """
    return _straight(full_volume_l / full_depth_mm, full_depth_mm, rim_depth_mm, u_share)


def box(
    length_mm: float,
    width_mm: float,
    full_depth_mm: float,
    u_share: float,
    rim_depth_mm: float | None = None,
) -> Sump:
    """A box with a flat floor: V = length × width × depth, all inside measures in mm.

    >>> round(box(1200, 600, 400, 0.1).volume_from_depth(250, "dip"), 9)
    180.0
    """
    return _straight(length_mm * width_mm / 1e6, full_depth_mm, rim_depth_mm, u_share)


def table(
    depths_mm: Sequence[float],
    volumes_l: Sequence[float],
    full_depth_mm: float,
    u_share: float,
) -> Sump:
    """A sump known by pairs of depth (mm) and litres, with a rising curve between them.

    The pair (0, 0) is added when the table does not begin at the floor; the last pair is the
    rim. Errors: ``not_rising`` at ``points[i].depth`` or ``points[i].volume`` with what it must
    lie above, ``order`` when the full mark lies above the last pair.
    """
    before = (-1.0, -1.0)
    for i, pair in enumerate(zip(depths_mm, volumes_l, strict=True)):
        for column, (name, unit) in enumerate((("depth", "mm"), ("volume", "L"))):
            if pair[column] <= before[column]:
                limit = {"above": before[column], "unit": unit}
                raise Fault("not_rising", f"points[{i}].{name}", pair[column], limit)
        before = pair
    if full_depth_mm > depths_mm[-1]:
        limit = {"maximum": depths_mm[-1], "unit": "mm"}
        raise Fault("order", "full_depth", full_depth_mm, limit)
    depths, volumes = list(depths_mm), list(volumes_l)
    if depths[0] > 0 and volumes[0] > 0:
        depths.insert(0, 0.0)
        volumes.insert(0, 0.0)
    elif depths[0] > 0:
        # A floor that is dry up to the first pair would need a flat piece, which cannot be
        # turned back from litres to depth.
        raise Fault("not_rising", "points[0].volume", volumes[0], {"above": 0.0, "unit": "L"})
    return Sump(RisingCurve.through(depths, volumes), full_depth_mm, depths[-1], u_share)
