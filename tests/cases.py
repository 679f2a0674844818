"""``python3 -m tests.cases``: the fifteen cases of a sump, with input, pours and verdict as run.

The sump is invented: 198 L at the full mark, a band from 7 to 9 % with the aim at 8 %, a 10 L
pail with marks every litre and a jug with marks every 50 mL. Strongest premix 20 %, weakest 1 %.
"""

import json
import sys
from dataclasses import dataclass
from typing import Any

from pycore.desk import handle

Body = dict[str, Any]


@dataclass(frozen=True)
class Case:
    """One case: its number and name in the table, and the question that it asks."""

    number: str
    name: str
    body: Body
    op: str = "plan_recipe"

    def reply(self) -> dict[str, Any]:
        """The whole reply of the door."""
        text = json.dumps({"v": 1, "id": self.number, "op": self.op, "body": self.body})
        return json.loads(handle(text))


def body(volume_l: float, strength_pct: float, **more: Any) -> Body:
    """A question about the invented sump; ``more`` replaces or adds fields."""
    return {
        "sump": {
            "volume_l": {"value": volume_l, "u": 3},
            "strength_pct": {"value": strength_pct, "u": 0.3},
        },
        "fill_to_l": 198,
        "target": {"low_pct": 7, "aim_pct": 8, "high_pct": 9},
        "mixing": {"strong_pct": 20, "weak_pct": 1, "closeness_pct": 0.5},
        "bucket": {"usable_l": 10, "water_mark_l": 1, "jug_mark_l": 0.05},
        "draw_off": {"allowed": False, "mark_l": 1},
        **more,
    }


def holding(volume_l: float, **more: Any) -> Body:
    """A dip without a reading at the invented sump."""
    recipe = body(volume_l, 0)
    return {
        "volume_l": recipe["sump"]["volume_l"],
        "usual_pct": 3,
        **{name: recipe[name] for name in ("fill_to_l", "target", "mixing", "bucket")},
        **more,
    }


def band(low_pct: float, aim_pct: float, high_pct: float) -> Body:
    """A target."""
    return {"low_pct": low_pct, "aim_pct": aim_pct, "high_pct": high_pct}


UPSIDE_DOWN = {"strong_pct": 5, "weak_pct": 6, "closeness_pct": 0.5}
SMALL_BUCKET = {"usable_l": 10, "water_mark_l": 12, "jug_mark_l": 0.05}
ONE_MARK = {"usable_l": 10, "water_mark_l": 10, "jug_mark_l": 0.05}
WEAK_PREMIX = {"strong_pct": 5, "weak_pct": 1, "closeness_pct": 0.5}
MAY_DRAW = {"draw_off": {"allowed": True, "mark_l": 1}}
OWN_FLUID = {"own_fluid": {"allowed": True}, "never_above_l": 212}
LAST = {"last": {"strength_pct": {"value": 8.2, "u": 0.3}, "age_d": 5, "drift_pct_d": 0.1}}
READING_ONLY: Body = {
    "sump": {
        "kind": "proportional",
        "full_depth": {"text": "440", "unit": "mm"},
        "full_volume": {"text": "198", "unit": "L"},
        "volume_known_by": "poured",
    },
    "fluid": {
        "type": "semi_synthetic",
        "name": "Depot mix",
        "factor": {"text": "1.5", "unit": "1"},
        "factor_known_by": "sheet",
    },
    "target": {
        end: {"text": text, "unit": "%"}
        for end, text in (("low", "7"), ("aim", "8"), ("high", "9"))
    },
    "units": {"plate": "L", "stick": "mm", "pail": "L", "jug": "mL"},
    "reading": {"shows": {"text": "4.0", "unit": "Brix"}},
}


CASES = [
    Case("1", "lean and low", body(154, 6)),
    Case("2", "lean and low, only the band in reach", body(170, 5.3)),
    Case("3", "lean, band out of reach in the room left", body(188, 5)),
    Case("4", "lean and full", body(198, 5, **MAY_DRAW, never_above_l=212)),
    Case("4b", "lean and full, own coolant may carry", body(198, 5, **MAY_DRAW, **OWN_FLUID)),
    Case("5", "in range and low", body(170, 8.2)),
    Case("5b", "in range and low, filling up would leave it", body(100, 8.5, mixing=WEAK_PREMIX)),
    Case("6", "in range and full", body(198, 8)),
    Case("7", "rich and low", body(150, 9.6)),
    Case("8", "rich and low, the weakest mix is not enough", body(180, 12)),
    Case("9", "rich and full", body(198, 11, **MAY_DRAW, losses={"carry_out_l_d": 2})),
    Case("10", "empty, rinse liquid left behind", body(6, 0.4)),
    Case("11", "a few litres left", body(25, 11)),
    Case("12", "filled to less than the full mark", body(100, 6, fill_to_l=150)),
    Case("13", "too little concentrate in stock", body(154, 6, stock={"concentrate_l": 3})),
    Case("13b", "too little for a new charge", body(6, 0.4, stock={"concentrate_l": 5})),
    Case("13c", "too little water in stock", body(154, 6, stock={"water_l": 20})),
    Case("14a", "dip without reading", holding(154, **LAST), op="plan_holding"),
    Case("14b", "reading without dip", READING_ONLY, op="assess_sump"),
    Case("15a", "band upside down", body(154, 6, target=band(9, 8, 7))),
    Case("15b", "aim outside the band", body(154, 6, target=band(7, 9.5, 9))),
    Case("15c", "weakest mix above the strongest", body(154, 6, mixing=UPSIDE_DOWN)),
    Case("15d", "bucket smaller than its mark", body(154, 6, bucket=SMALL_BUCKET)),
    Case("15e", "nothing to mix between the marks", body(154, 6, bucket=ONE_MARK)),
]


def named(number: str) -> Case:
    """The case with a number of the table."""
    return next(case for case in CASES if case.number == number)


def _input(case: Case) -> str:
    if case.op == "assess_sump":
        return "reads 4.0 Brix, factor 1.5"
    now = case.body.get("sump", case.body)
    words = [f"{now['volume_l']['value']:g} of {case.body['fill_to_l']:g} L"]
    if "sump" in case.body:
        words.append(f"{now['strength_pct']['value']:g} %")
    if "usual_pct" in case.body:
        words.append(f"usual {case.body['usual_pct']:g} %")
    for name, litres in case.body.get("stock", {}).items():
        words.append(f"{litres:g} L of {name.removesuffix('_l')}")
    return ", ".join(words)


def _pour(pour: dict[str, Any]) -> str:
    carrier_l = pour.get("fluid_l") or pour["water_l"]
    carrier = "L own fluid" if pour.get("fluid_l") else "L"
    return f"{pour['count']} x ({carrier_l:g} {carrier} + {1000 * pour['concentrate_l']:.0f} mL)"


def _outcome(case: Case, result: dict[str, Any]) -> tuple[str, str]:
    """Pours and verdict as words."""
    if case.op == "assess_sump":
        strength = result["strength"]
        now = f"{strength['strength_pct']['value']:.1f} %, {strength['state']}"
        return "no recipe without a dip", now
    words = [_pour(pour) for pour in result["pours"]]
    if result.get("draw_off_l"):
        words.insert(0, f"take out {result['draw_off_l']:g} L")
    if case.op == "plan_holding":
        ends = result["ends"]
        ending = f"{ends['low_pct']:.1f} to {ends['high_pct']:.1f} % at worst, reading open"
    else:
        final = result["final"]
        ending = f"{result['verdict']}, {final['strength_pct']['value']:.2f} %"
        ending += f" in {final['volume_l']:.1f} L"
    return ", ".join(words) or "nothing", ending


def row(case: Case) -> tuple[str, str, str, str, str]:
    """Number, name, input, pours and verdict, as run now."""
    reply = case.reply()
    if not reply["ok"]:
        error = reply["error"]
        return case.number, case.name, _input(case), "refused", f"{error['code']}, {error['path']}"
    return case.number, case.name, _input(case), *_outcome(case, reply["result"])


def table() -> str:
    """The fifteen cases, one line each, columns as wide as they need."""
    lines = [("case", "sump", "input", "pours", "verdict"), *map(row, CASES)]
    widths = [max(len(line[i]) for line in lines) for i in range(5)]
    padded = [
        "  ".join(word.ljust(w) for word, w in zip(line, widths, strict=True)) for line in lines
    ]
    return "\n".join(line.rstrip() for line in padded)


if __name__ == "__main__":
    print(table())
    sys.exit(0)
