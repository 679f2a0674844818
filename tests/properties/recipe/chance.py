"""``python3 -m tests.properties.recipe.chance``: first order beside Monte Carlo for ten sumps.

Method: JCGM 101:2008 (GUM Supplement 1), propagation of distributions, 10⁶ draws from one fixed
seed. The model is written here again from the balance of concentrate and volume; of pycore only
the plan and its u, chance and cautions are looked at. The vessels' 3 % and that one pail's error
is the same in every bucket: common practice, no source.
"""

import sys
from dataclasses import dataclass
from typing import Any

import numpy as np

from tests.cases import body
from tests.properties.asking import ask

SEED = 20261125
DRAWS = 1_000_000
VESSEL_U_SHARE = 0.03


def _sump(volume_l: float, u_l: float, pct: float, u_pct: float, **more: Any) -> dict[str, Any]:
    state = {"volume_l": {"value": volume_l, "u": u_l}, "strength_pct": {"value": pct, "u": u_pct}}
    return body(volume_l, pct, **{"sump": state, **more})


US_GAL_L = 3.785411784
TEN = {
    "154 of 198 L": _sump(154, 4.7, 6.0, 0.3),
    "deep top-up": _sump(90, 3, 6.5, 0.3),
    "in range": _sump(170, 5, 8.2, 0.2),
    "rich": _sump(150, 4, 9.6, 0.4),
    "edge of the band": _sump(170, 4, 5.3, 0.3),
    "full after a draw-off": _sump(198, 6, 5.0, 0.3, draw_off={"allowed": True, "mark_l": 1}),
    "large tank": _sump(3900, 120, 5.5, 0.4, fill_to_l=5000),
    "15 L tank": _sump(
        9,
        0.6,
        6.0,
        0.5,
        fill_to_l=15,
        bucket={"usable_l": 4, "water_mark_l": 0.5, "jug_mark_l": 0.01},
    ),
    "55 US gal": _sump(
        81.8,
        9,
        3.0,
        0.3,
        fill_to_l=55 * US_GAL_L,
        bucket={
            "usable_l": 5 * US_GAL_L,
            "water_mark_l": US_GAL_L,
            "jug_mark_l": 7 * US_GAL_L / 128,
        },
    ),
    "nothing poured": _sump(198, 6, 8.6, 0.3),
}
# Nearly empty, and the stick may be as wrong as what it shows.
NEARLY_EMPTY = {
    "10 L sump, 4 L unsure": _sump(4, 4, 15.0, 1.0, fill_to_l=10),
    "60 L sump, dip of 12 L unsure": _sump(12, 12, 18.0, 0.5, fill_to_l=60),
    "198 L sump, dip of 40 L unsure": _sump(45, 40, 14.0, 0.5),
}


@dataclass(frozen=True)
class Compared:
    """u and chance to first order, and the same by Monte Carlo."""

    u_pct: float
    drawn_u_pct: float
    chance: float
    drawn_chance: float
    rough: bool


def drawn_pct(asked: dict[str, Any], plan: dict[str, Any]) -> Any:
    """10⁶ strengths after the plan; a volume below 0 is drawn as 0."""
    chance = np.random.default_rng(SEED)
    sump, totals = asked["sump"], plan["totals"]

    def normal(value: float, u: float) -> Any:
        return chance.normal(value, u, DRAWS)

    volume = normal(**_named(sump["volume_l"])) - plan["draw_off_l"]
    volume = np.maximum(volume, 0.0)
    strength = normal(**_named(sump["strength_pct"]))
    if not plan["pours"]:
        return strength
    water = totals["water_l"] * normal(1.0, VESSEL_U_SHARE)
    oil = totals["concentrate_l"] * normal(1.0, VESSEL_U_SHARE)
    return (volume * strength + 100 * oil) / (volume + water + oil)


def _named(measured: dict[str, float]) -> dict[str, float]:
    return {"value": measured["value"], "u": measured["u"]}


def compared(asked: dict[str, Any]) -> Compared:
    """One sump both ways."""
    plan = ask("plan_recipe", asked)
    final, target = plan["final"], asked["target"]
    found = drawn_pct(asked, plan)
    inside = (found >= target["low_pct"]) & (found <= target["high_pct"])
    return Compared(
        final["strength_pct"]["u"],
        float(np.std(found)),
        final["chance_in_band"],
        float(np.mean(inside)),
        "rough" in plan["cautions"],
    )


def table() -> str:
    """One line per sump."""
    lines = [f"{'sump':<32}{'u %':>8}{'drawn':>8}{'off':>7}{'chance':>9}{'drawn':>8}  said"]
    for name, asked in {**TEN, **NEARLY_EMPTY}.items():
        got = compared(asked)
        off = got.u_pct / got.drawn_u_pct - 1
        lines.append(
            f"{name:<32}{got.u_pct:8.4f}{got.drawn_u_pct:8.4f}{off:7.1%}"
            f"{got.chance:9.4f}{got.drawn_chance:8.4f}  {'rough' if got.rough else ''}".rstrip()
        )
    return "\n".join(lines)


if __name__ == "__main__":
    print(table())
    sys.exit(0)
