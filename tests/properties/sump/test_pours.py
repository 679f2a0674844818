"""Pour tests of simulated sumps: the table's 95 % interval holds what it says.

Sixty of the five hundred tests that ``python3 -m tests.properties.sump.pours`` prints, from seeds
of their own. For 720 comparisons in groups of twelve, 90 to 99 % is what chance leaves.
"""

import json
import random
from typing import Any

import pytest

from tests.properties.asking import answer
from tests.properties.sump.pours import CASES, ONE_SUMP, Noise, counted


@pytest.mark.parametrize("name", CASES)
@pytest.mark.parametrize("is_one", [True, False])
def test_interval_holds_the_true_litres(name: str, is_one: bool) -> None:
    count = counted(CASES[name], 60, ONE_SUMP if is_one else None)
    assert 0.90 <= count.share <= 0.99


def test_interval_holds_them_with_an_unknown_rest() -> None:
    count = counted(Noise(0.01, 0.0, 2.0), 60, has_rest=True)
    assert 0.88 <= count.share <= 0.995


@pytest.mark.parametrize("name", CASES)
def test_stated_uncertainty_is_as_large_as_the_errors(name: str) -> None:
    count = counted(CASES[name], 40, ONE_SUMP)
    honest = sum(sum(column) / len(column) for column in count.us_l.values())
    off = sum(sum(abs(e) for e in column) / len(column) for column in count.errors_l.values())
    # Mean of |error| of a normal distribution is 0.798 of its standard deviation.
    assert 0.5 < off / (0.798 * honest) < 1.4


def _wild(chance: random.Random) -> dict[str, Any]:
    """A pour test as no sump would give it: steps of a hair and leaps, spoonfuls and barrels."""
    depth_mm, steps = 0.0, []
    for _ in range(chance.randint(1, 10)):
        depth_mm += chance.choice([1e-6, 0.1, 5, 30, chance.uniform(0, 80)])
        poured = chance.choice(["0.1", "20", "20", "100", "10000", "31.5"])
        dip = {"text": f"{depth_mm:.6f}", "unit": "mm"}
        steps.append({"poured": {"text": poured, "unit": "L"}, "depth": dip})
    full = chance.choice(["300", "600", "5000"])
    return {"full_depth": {"text": full, "unit": "mm"}, "start": "empty", "steps": steps}


def test_wild_pours_end_in_a_sump_or_in_a_reason() -> None:
    ends = set()
    for seed in range(80):
        body = _wild(random.Random(seed))
        ask = {"v": 1, "id": "w", "op": "calibrate_sump", "body": body}
        reply = answer(json.dumps(ask))
        if reply["ok"]:
            again = {**ask, "op": "assess_sump", "body": {"sump": reply["result"]["sump"]}}
            assert answer(json.dumps(again))["ok"], seed
        else:
            assert reply["error"]["path"].startswith("body."), seed
        ends.add("ok" if reply["ok"] else reply["error"]["code"])
    assert {"ok", "out_of_range", "pours_contradict"} <= ends
    assert "internal" not in ends
