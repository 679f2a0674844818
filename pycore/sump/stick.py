"""From what a stick, tape, gauge or scale shows to a depth from the floor.

Innage is the depth of liquid from the floor; outage (ullage) the empty height from a fixed point at
the top, so that innage = reference height − outage (terms of tank gauging, from memory).
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from pycore.quantity.fault import Fault
from pycore.quantity.measured import Measured

# Half of the finest division that a float gauge or a lamp can be read to, a quarter of its way,
# taken as evenly likely; the float itself sticks and hangs by as much again: common practice,
# no source.
_GAUGE_HALF_SHARE = 1 / 8
_GAUGE_U_SHARE = _GAUGE_HALF_SHARE * math.sqrt(2 / 3)

# A blocked screen between the two sides of a tank: more than this at rest, common practice, no
# source.
SIDES_MOST_MM = 20.0


@dataclass(frozen=True)
class Stick:
    """How the level of a sump is dipped.

    zero_offset_mm is what has to be added to each number the stick shows; reference_height_mm, for
    dips from the top, the height of the fixed point above the floor.
    """

    zero_offset_mm: float = 0.0
    reference_height_mm: float | None = None

    def depth_mm(self, shown_mm: float) -> float:
        """Depth from the floor in mm; it may lie outside the sump, which the sump refuses."""
        length_mm = shown_mm + self.zero_offset_mm
        if self.reference_height_mm is None:
            return length_mm
        return self.reference_height_mm - length_mm

    def shown_mm(self, depth_mm: float) -> float:
        """What the stick shows at a depth, mm: the same turned round."""
        height_mm = self.reference_height_mm
        length_mm = depth_mm if height_mm is None else height_mm - depth_mm
        return length_mm - self.zero_offset_mm

    def as_shown(self, fault: Fault, path: str) -> Fault:
        """A fault about a depth in mm as one about what the stick shows, limits turned with it."""
        limit = dict(fault.limit)
        turned = {"minimum": "maximum", "maximum": "minimum", "above": "below", "below": "above"}
        for side in turned:
            limit.pop(side, None)
        for side, other in turned.items():
            if side in fault.limit:
                name = side if self.reference_height_mm is None else other
                limit[name] = self.shown_mm(float(fault.limit[side]))
        got = fault.got
        if isinstance(got, float):
            got = self.shown_mm(got)
        return Fault(fault.code, path, got, limit)


def gauge_depth(low_share: float, high_share: float | None, full_depth_mm: float) -> Measured:
    """Depth from a rough gauge that shows a share of the way from floor to full mark, 0 to 1.

    Between two marks, every depth is equally likely (JCGM 100:2008, 4.3.7). Error: ``order`` at
    ``gauge_to`` when the second share does not lie above the first.

    >>> gauge_depth(0.75, None, 400).value
    300.0
    """
    if high_share is None:
        return Measured(low_share * full_depth_mm, _GAUGE_U_SHARE * full_depth_mm)
    if high_share <= low_share:
        raise Fault("order", "gauge_to", high_share, {"above": low_share, "unit": "1"})
    middle_mm = (low_share + high_share) / 2 * full_depth_mm
    return Measured(middle_mm, (high_share - low_share) / math.sqrt(12) * full_depth_mm)


@dataclass(frozen=True)
class Sides:
    """Dips on both sides of a divided tank, taken as one level."""

    depth: Measured
    difference_mm: float


def both_sides(dirty: Measured, clean: Measured) -> Sides:
    """One level from two dips in mm: their mean, uncertain by the dips and by what they differ.

    That the true level lies evenly likely between the two dips is common practice, no source.
    """
    difference_mm = dirty.value - clean.value
    own_u_mm = math.hypot(dirty.u, clean.u) / 2
    between_u_mm = abs(difference_mm) / math.sqrt(12)
    mean_mm = (dirty.value + clean.value) / 2
    return Sides(Measured(mean_mm, math.hypot(own_u_mm, between_u_mm)), difference_mm)
