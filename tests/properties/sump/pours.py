"""Simulated pour tests beside the true litres: ``python3 -m tests.properties.sump.pours``.

A sump with a sloped floor and a pump body is filled bucket by bucket. Each bucket is off by its own
chance, the vessel by one error in all of them, each dip by its own. Whether the 95 % interval
of the table holds the true litres is counted at twelve depths of each sump.
"""

import random
from dataclasses import dataclass, field

from pycore.sump.calibration import Calibration, Pour, Trial, calibrated
from pycore.sump.obstacles import Obstacle
from pycore.sump.shapes import sloped_box, table
from pycore.sump.sump import Sump

# 95 % of a normal distribution.
K95 = 1.96
RUNS = 500
BUCKET_L = 10.0
DEPTH_SHARES = (0.05, 0.1, 0.15, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0)
ONE_SUMP = sloped_box(1200, 600, 60, True, 400, 0.05, 440, [Obstacle(80, 300, 0.075)])


@dataclass(frozen=True)
class Noise:
    """What is off: each bucket and the vessel as shares, each dip in mm."""

    pour_share: float
    vessel_share: float
    dip_mm: float


CASES = {
    "bucket 1 %, dip 1 mm": Noise(0.01, 0.0, 1.0),
    "bucket 1 %, vessel 3 %, dip 3 mm": Noise(0.01, 0.03, 3.0),
}


def random_sump(chance: random.Random) -> Sump:
    """A sloped floor and a pump body of other sizes each time."""
    rise, full = chance.uniform(15, 120), chance.uniform(300, 500)
    length, width = chance.uniform(700, 1800), chance.uniform(400, 900)
    foot = chance.uniform(0.8 * rise + 10, 160)
    body = chance.uniform(0.03, 0.2) * length * width / 1e6
    thing = Obstacle(foot, chance.uniform(foot + 60, 1.1 * full + 50), body)
    return sloped_box(length, width, rise, True, full, 0.05, 1.1 * full, [thing])


def pour_test(
    sump: Sump, noise: Noise, chance: random.Random, start_share: float = 0.0
) -> Trial | None:
    """One pour test up to the full mark; None where a dip did not rise, which is refused."""
    vessel = 1 + chance.gauss(0, noise.vessel_share)
    start_mm = start_share * sump.full_depth_mm
    volume_l = sump.volume_from_depth(start_mm, "depth")
    is_empty = start_share == 0
    dips = [0.0 if is_empty else start_mm + chance.gauss(0, noise.dip_mm)]
    us, pours = [0.0 if is_empty else noise.dip_mm], []
    while volume_l + 1.1 * BUCKET_L < sump.full_volume_l:
        volume_l += BUCKET_L * vessel * (1 + chance.gauss(0, noise.pour_share))
        dip_mm = sump.depth_from_volume(volume_l, "volume") + chance.gauss(0, noise.dip_mm)
        if dip_mm <= dips[-1]:
            return None
        pours.append(Pour(len(dips) - 1, len(dips), BUCKET_L))
        dips.append(dip_mm)
        us.append(noise.dip_mm)
    return Trial(tuple(dips), tuple(us), tuple(pours))


@dataclass
class Count:
    """How often the interval held the true litres, by depth, and how many tests were refused."""

    held: dict[float, list[bool]] = field(default_factory=dict)
    errors_l: dict[float, list[float]] = field(default_factory=dict)
    us_l: dict[float, list[float]] = field(default_factory=dict)
    refused: int = 0

    def add(self, sump: Sump, found: Calibration) -> None:
        """Compares one calibration with its sump."""
        ours = table(found.depths_mm, found.volumes_l, sump.full_depth_mm, 0.0, None, found.us_l)
        assert ours.known_to is not None
        for share in DEPTH_SHARES:
            depth_mm = share * sump.full_depth_mm
            off_l = ours.volume_from_depth(depth_mm, "d") - sump.volume_from_depth(depth_mm, "d")
            u_l = ours.known_to.u_l(depth_mm)
            self.held.setdefault(share, []).append(abs(off_l) <= K95 * u_l)
            self.errors_l.setdefault(share, []).append(off_l)
            self.us_l.setdefault(share, []).append(u_l)

    @property
    def share(self) -> float:
        """Share of all comparisons in which the interval held the true litres."""
        every = [held for column in self.held.values() for held in column]
        return sum(every) / len(every)


def counted(noise: Noise, runs: int, one: Sump | None = None, has_rest: bool = False) -> Count:
    """So many pour tests, of one sump or of another each time; with a rest at the start or not."""
    count = Count()
    for seed in range(runs):
        chance = random.Random(seed)
        sump = random_sump(chance) if one is None else one
        trial = pour_test(sump, noise, chance, chance.uniform(0.1, 0.3) if has_rest else 0.0)
        if trial is None:
            count.refused += 1
            continue
        found = calibrated(trial, sump.rim_depth_mm, noise.pour_share, noise.vessel_share)
        count.add(sump, found)
    return count


def _print(name: str, count: Count) -> None:
    print(f"\n{name}: 95 % interval holds the true litres in {100 * count.share:.1f} %")
    print(f"refused because a dip did not rise: {count.refused}")
    print(f"{'of full depth':>14} {'held %':>8} {'mean error L':>13} {'mean u L':>9}")
    for share, column in count.held.items():
        mean_l = sum(count.errors_l[share]) / len(column)
        u_l = sum(count.us_l[share]) / len(column)
        print(f"{share:>14} {100 * sum(column) / len(column):>8.1f} {mean_l:>13.2f} {u_l:>9.2f}")


def main() -> None:
    """Prints estimated against true litres of one test, then the counts."""
    trial = pour_test(ONE_SUMP, CASES["bucket 1 %, dip 1 mm"], random.Random(1))
    assert trial is not None
    found = calibrated(trial, 440, 0.01, 0.0)
    print(f"{'depth mm':>9} {'found L':>9} {'u L':>6} {'true L':>9}")
    for i in range(3, len(found.depths_mm), 4):
        true_l = ONE_SUMP.volume_from_depth(min(found.depths_mm[i], 440.0), "depth")
        row = found.depths_mm[i], found.volumes_l[i], found.us_l[i], true_l
        print("{:>9.1f} {:>9.2f} {:>6.2f} {:>9.2f}".format(*row))
    for name, noise in CASES.items():
        _print(f"{RUNS} tests of one sump, {name}", counted(noise, RUNS, ONE_SUMP))
        _print(f"{RUNS} tests of {RUNS} sumps, {name}", counted(noise, RUNS))
    rest = counted(Noise(0.01, 0.0, 2.0), RUNS, has_rest=True)
    _print(f"{RUNS} tests of {RUNS} sumps with an unknown rest, bucket 1 %, dip 2 mm", rest)


if __name__ == "__main__":
    main()
