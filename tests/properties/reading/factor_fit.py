"""``python3 -m tests.properties.reading.factor_fit``: does the factor's 95 % interval hold?

Simulated jugs, 500 fits in each row: amounts off by half a mark at most (rectangular), one error
of the concentrate's vessel and one of the zero for all jugs of a fit, the line placed with normal
noise and read to the nearest mark. The fit is asked through the desk and is told nothing but the
typed texts. The last rows break the model on purpose and are shown, not asserted.
"""

import sys
from dataclasses import dataclass

import numpy as np

from tests.properties.asking import ask

SEED = 20261125
RUNS = 500
# Standard uncertainty of a reading and distance of its marks, Brix: common practice, no source.
READING_U = {"digital": (0.1, 0.1), "optical": (0.2, 0.2)}
# Relative standard uncertainty of an amount and of one vessel against the other: common practice.
VESSEL_U = {"syringe": (0.005, 0.005), "jug": (0.02, 0.01)}


@dataclass(frozen=True)
class Trial:
    """One row: how the jugs are made and read, and what is true."""

    strengths_pct: tuple[float, ...]
    how: str = "optical"
    measured_with: str = "syringe"
    factor: float = 1.5
    offset_brix: float = 0.0
    noise_share: float = 1.0


THREE = (3.0, 6.0, 9.0)
TRIALS = {
    "two jugs, 4 and 8 %": Trial((4.0, 8.0)),
    "three jugs": Trial(THREE),
    "three jugs, factor 1.0": Trial(THREE, factor=1.0),
    "three jugs, factor 2.5": Trial(THREE, factor=2.5),
    "three jugs, digital": Trial(THREE, how="digital"),
    "three jugs by their marks": Trial(THREE, measured_with="jug"),
    "four jugs": Trial((2.0, 4.0, 7.0, 10.0)),
    "five jugs": Trial((2.0, 4.0, 6.0, 8.0, 10.0)),
    "five jugs, digital, by marks": Trial(
        (2.0, 4.0, 6.0, 8.0, 10.0), how="digital", measured_with="jug"
    ),
    "five jugs, offset 1.5 Brix": Trial((2.0, 4.0, 6.0, 8.0, 10.0), offset_brix=1.5),
}
BROKEN = {
    "offset 0.3 Brix, mostly unseen": Trial(THREE, offset_brix=0.3),
    "twice the noise": Trial(THREE, noise_share=2.0),
}


@dataclass(frozen=True)
class Found:
    """Shares of the runs: interval holds the factor, an offset was fitted, something doubted."""

    covered: float
    with_offset: float
    doubted: float
    mean_width: float


def _reading(trial: Trial, strength_pct: float, zero: float, chance: np.random.Generator) -> str:
    u, mark = READING_U[trial.how]
    noise = (u**2 - mark**2 / 12) ** 0.5 * trial.noise_share
    true = strength_pct / trial.factor + trial.offset_brix + zero
    return f"{max(0.0, round((true + chance.normal(0, noise)) / mark) * mark):.1f}"


def _body(trial: Trial, chance: np.random.Generator) -> dict[str, object]:
    amount_u, vessel_u = VESSEL_U[trial.measured_with]
    half = amount_u * 3**0.5
    vessel = 1 + chance.normal(0, vessel_u)
    zero = chance.normal(0, READING_U[trial.how][0] / 2)
    jugs = []
    for strength_pct in trial.strengths_pct:
        water_ml, concentrate_ml = 1000 - 10 * strength_pct, 10 * strength_pct
        water = water_ml * (1 + chance.uniform(-half, half))
        concentrate = concentrate_ml * vessel * (1 + chance.uniform(-half, half))
        poured_pct = 100 * concentrate / (water + concentrate)
        jugs.append(
            {
                "water": {"text": f"{water_ml:g}", "unit": "mL"},
                "concentrate": {"text": f"{concentrate_ml:g}", "unit": "mL"},
                "shows": {"text": _reading(trial, poured_pct, zero, chance), "unit": "Brix"},
            }
        )
    return {
        "jugs": jugs,
        "measured_with": trial.measured_with,
        "how": trial.how,
        "instrument": {"shows": "brix", "kind": trial.how},
        "on": "2026-11-25",
    }


def found(trial: Trial, seed: int = SEED, runs: int = RUNS) -> Found:
    """So many fits of one row from one fixed seed."""
    chance = np.random.default_rng(seed)
    covered = with_offset = doubted = 0
    widths = []
    for _ in range(runs):
        got = ask("fit_factor", _body(trial, chance))
        low, high = got["interval"]["low"], got["interval"]["high"]
        covered += low <= trial.factor <= high
        with_offset += got["model"] == "with_offset"
        codes = {doubt["code"] for doubt in got["doubts"]}
        doubted += bool(codes & {"jug_stands_out", "jugs_scatter"})
        widths.append((high - low) / trial.factor)
    return Found(covered / runs, with_offset / runs, doubted / runs, float(np.mean(widths)))


def table() -> str:
    """One line per row."""
    lines = [f"{'jugs':<34}{'covered':>9}{'offset':>8}{'doubted':>9}{'width':>8}"]
    for name, trial in {**TRIALS, **BROKEN}.items():
        got = found(trial)
        shown = f"{got.covered:9.1%}{got.with_offset:8.1%}{got.doubted:9.1%}{got.mean_width:8.1%}"
        lines.append(f"{name:<34}{shown}{'  (model broken)' if name in BROKEN else ''}")
    return "\n".join(lines)


__all__ = ["BROKEN", "TRIALS", "Found", "Trial", "found", "table"]

if __name__ == "__main__":
    print(table())
    sys.exit(0)
