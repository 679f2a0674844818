"""Each shape beside other people's litres: ``python3 -m tests.properties.sump.shapes``.

For one tank of each kind three depths, then the largest difference over 1,000 random tanks.
"""

import random
from collections.abc import Callable

from tests.properties.sump.tanks import KINDS, Tank, largest_difference

RANDOM_TANKS = 1000
SEED = 20_26


def three_depths(make: Callable[[random.Random], Tank]) -> list[tuple[float, float, float]]:
    """Depth in mm, ours and theirs in litres, at a tenth, a half and all of a random tank."""
    tank = make(random.Random(SEED))
    depths = [share * tank.sump.rim_depth_mm for share in (0.1, 0.5, 1.0)]
    return [(d, tank.sump.volume_from_depth(d, "depth"), tank.litres(d)) for d in depths]


def main() -> None:
    """Prints both tables."""
    print(f"{'shape':<20} {'depth mm':>10} {'ours L':>14} {'reference L':>14}")
    for make in KINDS:
        for depth_mm, ours_l, theirs_l in three_depths(make):
            print(f"{make.__name__:<20} {depth_mm:>10.3f} {ours_l:>14.6f} {theirs_l:>14.6f}")
    print(f"\nlargest difference over {RANDOM_TANKS} random tanks, share of the whole tank")
    for make in KINDS:
        worst = largest_difference(make, RANDOM_TANKS, SEED)
        print(f"{make.__name__:<20} {worst:.1e}")


if __name__ == "__main__":
    main()
