"""A sump: a curve from what the stick shows to litres and back, with its marks and uncertainty.

A depth outside 0 to the rim is refused with the limit in it: a slip of a finger must not become
an empty or a full tank.
"""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass

from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured, result, variable
from pycore.sump.curve import RisingCurve, depth_at
from pycore.sump.solids import Solid

# Litres of a depth just inside may come out so much of the whole outside: rounding, no amount.
_LAST_DIGITS = 1e-12


@dataclass(frozen=True)
class KnownTo:
    """Standard uncertainty of the litres at rising depths, straight in between.

    The first depth is the floor.
    """

    depths_mm: tuple[float, ...]
    us_l: tuple[float, ...]

    def u_l(self, depth_mm: float) -> float:
        """Litres of standard uncertainty at a depth from the floor to the last pair."""
        depths, us = self.depths_mm, self.us_l
        i = min(max(bisect_right(depths, depth_mm) - 1, 0), len(depths) - 2)
        share = (depth_mm - depths[i]) / (depths[i + 1] - depths[i])
        return us[i] + share * (us[i + 1] - us[i])


@dataclass(frozen=True)
class Sump:
    """A sump as a curve from depth to litres.

    full_depth_mm is the full mark, rim_depth_mm the deepest dip there can be, both as the stick
    shows them; zero_mm is how far the stick's foot stands above the deepest floor. volume_u_share
    is the relative standard uncertainty of the litres (one scale error for the whole sump);
    known_to takes its place where each pair of a table has its own.
    """

    curve: RisingCurve | Solid
    full_depth_mm: float
    rim_depth_mm: float
    volume_u_share: float
    zero_mm: float = 0.0
    known_to: KnownTo | None = None

    @property
    def full_volume_l(self) -> float:
        """Litres at the full mark."""
        return self.volume_from_depth(self.full_depth_mm, "full_depth")

    @property
    def rim_volume_l(self) -> float:
        """Litres at the rim."""
        return self.volume_from_depth(self.rim_depth_mm, "rim_depth")

    @property
    def least_volume_l(self) -> float:
        """Litres below the stick's foot, which no dip can tell apart; 0 at the deepest place."""
        return self.curve.volume_l(self.zero_mm)

    def volume_from_depth(self, depth_mm: float, path: str) -> float:
        """Litres at a depth of 0 to the rim, in mm.

        Error: ``out_of_range`` at ``path`` with the limits in mm. Where the stick's foot stands
        above the deepest floor, a depth of 0 is refused too: it says nothing about what is below.
        """
        inside = depth_mm > 0 if self.zero_mm > 0 else depth_mm >= 0
        if not (inside and depth_mm <= self.rim_depth_mm):
            low = "above" if self.zero_mm > 0 else "minimum"
            limit = {low: 0.0, "maximum": self.rim_depth_mm, "unit": "mm"}
            raise Fault("out_of_range", path, depth_mm, limit)
        return self.curve.volume_l(depth_mm + self.zero_mm)

    def depth_from_volume(self, volume_l: float, path: str) -> float:
        """Depth in mm at which the sump holds these litres, up to what it holds at the rim.

        Error: ``out_of_range`` at ``path`` with the limits in litres.
        """
        least_l, rim_l = self.least_volume_l, self.rim_volume_l
        digits_l = _LAST_DIGITS * rim_l
        if not least_l - digits_l <= volume_l <= rim_l + digits_l:
            limit = {"minimum": least_l, "maximum": rim_l, "unit": "L"}
            raise Fault("out_of_range", path, volume_l, limit)
        inside_l = min(max(volume_l, least_l), rim_l)
        top_mm = self.rim_depth_mm + self.zero_mm
        found_mm = depth_at(self.curve.volume_l, inside_l, self.zero_mm, top_mm) - self.zero_mm
        # The sum of rim and zero, taken apart again, may lie a last digit above the rim.
        return min(found_mm, self.rim_depth_mm)

    def height_share(self, depth_mm: float) -> float:
        """A depth in mm as a share of the height from the deepest floor to the rim."""
        return (depth_mm + self.zero_mm) / (self.rim_depth_mm + self.zero_mm)

    def litres_per_mm(self, depth_mm: float) -> float:
        """What one millimetre on the stick is worth at a depth of 0 to the rim, L/mm."""
        return self.curve.litres_per_mm(depth_mm + self.zero_mm)

    def volume_measured(self, depth: Measured, path: str) -> Measured:
        """Litres and their standard uncertainty from a dip: its own, and that of the sump.

        The dip's part is the mean slope over one standard uncertainty to either side, as far as
        the sump reaches (JCGM 100:2008, 5.1.3, note 2): at the floor of a lying tank the slope
        itself is 0. Error: ``out_of_range`` as in volume_from_depth.
        """
        volume_l = self.volume_from_depth(depth.value, path)
        dip = variable(Measured(0.0, depth.u), "dip")
        seen = volume_l + self.mean_slope_l_per_mm(depth) * dip
        if self.known_to is not None:
            own = Measured(0.0, self.known_to.u_l(depth.value))
            return result(seen + variable(own, "table"))
        return result(variable(Measured(1.0, self.volume_u_share), "scale") * seen)

    def mean_slope_l_per_mm(self, depth: Measured) -> float:
        """Litres per millimetre, on average over one standard uncertainty to either side."""
        low_mm = max(0.0, depth.value - depth.u) + self.zero_mm
        high_mm = min(self.rim_depth_mm, depth.value + depth.u) + self.zero_mm
        # Nearer together than this, the difference of two floats says less than the slope.
        if high_mm - low_mm < 1e-3:
            return self.litres_per_mm(depth.value)
        rise_l = self.curve.volume_l(high_mm) - self.curve.volume_l(low_mm)
        return rise_l / (high_mm - low_mm)
