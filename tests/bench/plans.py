"""``python -m tests.bench.plans``: plans per second, natively and in the shipped bundle.

The random set of tests/properties, then one lean sump grown from 20 L to 50,000 L.
"""

import json
import statistics
import sys
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import Any

from tests.bench.timed import calculate
from tests.cases import body
from tests.properties.recipe.sumps import SYSTEMS, sumps
from tests.published.checks import Shipped
from web.build.paths import DIST

SEED = 2026
PER_GROUP = 50
REPEATS = 15
TANKS_L = (20, 200, 2_000, 10_000, 50_000)


def _text(asked: dict[str, Any]) -> str:
    return json.dumps({"v": 1, "id": "bench", "op": "plan_recipe", "body": asked})


def random_set() -> list[str]:
    """300 questions in litre, US and imperial marks, half of them with draw-off allowed."""
    return [
        _text(asked)
        for place, system in enumerate(SYSTEMS)
        for draws in (False, True)
        for asked in sumps(SEED + place, PER_GROUP, system, draws)
    ]


def tank(full_l: float) -> str:
    """A lean sump that is three quarters full; the number of buckets grows with it."""
    return _text(body(0.75 * full_l, 6, fill_to_l=full_l))


def lines(name: str, calculate: Callable[[str], Sequence[float]]) -> list[str]:
    """The figures of one engine, which answers with the milliseconds of each plan."""
    asked = {"random sumps": random_set()}
    asked |= {f"lean, {full_l:,} L": [tank(full_l)] * REPEATS for full_l in TANKS_L}
    return [_line(f"{name}: {what}", calculate(json.dumps(texts))) for what, texts in asked.items()]


def _line(what: str, values: Sequence[float]) -> str:
    late_ms = sorted(values)[int(0.95 * (len(values) - 1))]
    per_s = 1000 * len(values) / sum(values)
    median_ms = statistics.median(values)
    return f"{what:<34}{per_s:>10,.0f}{median_ms:>12.2f}{late_ms:>12.2f}{len(values):>6}"


def main() -> None:
    """Prints the figures; without a built bundle only the native ones."""
    print(f"\n{'plans':<34}{'per second':>10}{'median ms':>12}{'95 % ms':>12}{'n':>6}")
    print("\n".join(lines("native", lambda text: json.loads(calculate(text)))), flush=True)
    if not DIST.exists():
        print("shipped bundle: not built")
        return
    engine = Shipped(Path(__file__).with_name("timed.py"))
    print("\n".join(lines("shipped", engine.answer)))
    engine.close()


if __name__ == "__main__":
    main()
    sys.exit(0)
