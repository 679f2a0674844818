"""Simulated walks past dip and reading, counted by what was typed and where it was stopped."""

from __future__ import annotations

import random
import re
from collections import Counter
from dataclasses import dataclass, field
from functools import cache

from tests.gloves.gates import Gate, dip_gate, log_of, poured_l, reading_gate
from tests.gloves.hand import typed
from tests.gloves.pages import PX_PER_MM, Pages

SEED, WALKS = 20261125, 2_000
# Invented: a sump of 440 mm and 198 L that is a quarter empty in the middle, nothing poured since.
DEPTH_MM, LOST_MM, READING_TENTHS = (250, 435), (0, 30), (20, 99)
_NUMBER = re.compile(r"\d+(\.\d+)?")
LITRES_PER_MM, FACTOR, FULL_L, BAND_PCT = 0.45, 1.5, 198.0, (7.0, 9.0)


@dataclass
class Tally:
    """Numbers that were typed wrong or right, by the gate that stopped them."""

    wrong: Counter[Gate] = field(default_factory=Counter)
    right: Counter[Gate] = field(default_factory=Counter)

    def count(self, wanted: str, got: str, gate: Gate) -> None:
        """One number; 4 and 4.0 are the same number, a field that cannot be read is wrong."""
        (self.right if _same(wanted, got) else self.wrong)[gate] += 1


@dataclass
class Result:
    """``harmed`` of the ``unnoticed`` walks leave the sump outside the band or above its mark where
    the right numbers do not."""

    dip: Tally = field(default_factory=Tally)
    reading: Tally = field(default_factory=Tally)
    walks: int = 0
    wrong: int = 0
    unnoticed: int = 0
    harmed: int = 0
    slips_mm: list[int] = field(default_factory=list)


def _same(wanted: str, got: str) -> bool:
    return _NUMBER.fullmatch(got) is not None and float(wanted) == float(got)


@cache
def _lines(last: tuple[str, str] | None) -> list[str]:
    return log_of(last)


def _is_well(depth: str, reading: str, true_mm: int, true_brix: float) -> bool:
    """Whether the recipe for the typed numbers leaves the true sump in the band, not too full."""
    water_l, concentrate_l = poured_l(depth, reading)
    volume_l = true_mm * LITRES_PER_MM
    end_l = volume_l + water_l + concentrate_l
    pct = (volume_l * true_brix * FACTOR + 100 * concentrate_l) / end_l
    return BAND_PCT[0] <= pct <= BAND_PCT[1] and end_l <= FULL_L + 0.5


def simulate(
    pages: Pages,
    scatter_mm: float,
    days_since: int | None = 3,
    walks: int = WALKS,
    seed: int = SEED,
) -> Result:
    """So many walks from one seed, nobody looking at what stands in the field.

    days_since None: a first check, with nothing before it in the log.
    """
    chance, result = random.Random(seed), Result()
    scatter_px = scatter_mm * PX_PER_MM
    for _ in range(walks):
        depth_mm = chance.randint(*DEPTH_MM)
        last_mm = min(440, depth_mm + chance.randint(*LOST_MM))
        brix = chance.randint(*READING_TENTHS) / 10
        depth, reading = str(depth_mm), f"{brix:.1f}"
        got_depth = typed(depth, pages.dip, scatter_px, chance)
        got_reading = typed(reading, pages.reading, scatter_px, chance)
        # What is gone evaporated: the last reading was weaker by that much.
        last = (str(last_mm), f"{brix * depth_mm / last_mm:.1f}")
        lines, days = _lines(last if days_since else None), days_since or 0
        gates = (dip_gate(got_depth, lines, days), reading_gate(got_reading, lines, days))
        result.dip.count(depth, got_depth, gates[0])
        result.reading.count(reading, got_reading, gates[1])
        result.walks += 1
        if _same(depth, got_depth) and _same(reading, got_reading):
            continue
        result.wrong += 1
        if gates != ("passed", "passed"):
            continue
        result.unnoticed += 1
        if int(got_depth) != depth_mm:
            result.slips_mm.append(abs(int(got_depth) - depth_mm))
        typed_well = _is_well(got_depth, got_reading, depth_mm, brix)
        result.harmed += _is_well(depth, reading, depth_mm, brix) and not typed_well
    return result
