"""Example requests about the sump: every kind, every way to dip, and the pour test."""

from __future__ import annotations

from typing import Any

from tests.examples.workshop import WHEEL_LATHE, ask, check

Body = dict[str, Any]


def _mm(text: str) -> Body:
    return {"text": text, "unit": "mm"}


def _l(text: str) -> Body:
    return {"text": text, "unit": "L"}


_MARKS: Body = {"full_depth": _mm("400"), "volume_known_by": "measured"}
_SIDES: Body = {"length": _mm("1200"), "width": _mm("600")}
BOX: Body = {"kind": "box", **_SIDES, **_MARKS}
_PUMP: Body = {"from_depth": _mm("80"), "to_depth": _mm("280"), "diameter": _mm("220")}
SUMPS: dict[str, Body] = {
    "proportional": {"kind": "proportional", "full_volume": _l("288"), **_MARKS},
    "box": {**BOX, "obstacles": [_PUMP]},
    "sloped_box": {
        **_SIDES,
        **_MARKS,
        "kind": "sloped_box",
        "rise": _mm("60"),
        "dipped_end": "deep",
    },
    "stepped": {
        "kind": "stepped",
        "steps": [
            {"floor": _mm("0"), "length": _mm("400"), "width": _mm("600")},
            {"floor": _mm("120"), "length": _mm("800"), "width": _mm("600")},
        ],
        **_MARKS,
    },
    "upright_cylinder": {"kind": "upright_cylinder", "diameter": _mm("572"), **_MARKS},
    "horizontal_cylinder": {
        "kind": "horizontal_cylinder",
        "diameter": _mm("600"),
        "length": _mm("1000"),
        **_MARKS,
    },
    "frustum": {
        "kind": "frustum",
        "bottom_diameter": _mm("200"),
        "top_diameter": _mm("600"),
        "height": _mm("500"),
        **_MARKS,
    },
}
_CIRCUIT: Body = {
    "hidden": {"volume": _l("30"), "drains_back": True},
    "rest": _l("20"),
    "wait_min": 10,
}
# Each is the body of an assess_sump.
ASSESSED: dict[str, Body] = {
    **{kind: {"sump": sump, "dip": {"depth": _mm("250")}} for kind, sump in SUMPS.items()},
    "from_the_top": {
        "sump": {**BOX, "dip_from": "top", "reference_height": _mm("600")},
        "dip": {"depth": _mm("350")},
    },
    "printed_scale": {"sump": {**BOX, "read_as": "volume"}, "dip": {"depth": _l("180")}},
    "gauge": {"sump": {**BOX, "read_as": "gauge"}, "dip": {"depth": {"text": "3/4"}}},
    "between_two_marks": {
        "sump": {**BOX, "read_as": "gauge"},
        "dip": {"depth": {"text": "0"}, "gauge_to": {"text": "1"}},
    },
    "pump_running": {
        "sump": {**BOX, **_CIRCUIT},
        "dip": {"depth": _mm("250"), "pump": "running", "how": "running"},
    },
    "screen_blocked": {
        "sump": BOX,
        "dip": {"depth": _mm("250"), "clean_side": _mm("215")},
    },
}
# Twenty litres a time into a sump with a sloped floor.
_DIPS = ("57", "86", "114", "142", "170", "197", "225", "253", "281", "308", "336", "364", "392")
CALIBRATED: dict[str, Body] = {
    "calibrate_sump": {
        "full_depth": _mm("400"),
        "start": "empty",
        "steps": [{"poured": _l("20"), "depth": _mm(dip)} for dip in _DIPS],
        "vessel_known_by": "checked",
        "maker_volume": _l("300"),
    },
    "calibrate_sump_from_a_rest": {
        "full_depth": _mm("400"),
        "start": "rest",
        "start_depth": _mm("86"),
        "steps": [{"poured": _l("20"), "depth": _mm(dip)} for dip in _DIPS[2:5]],
        "pairs": [{"before": _mm("225"), "poured": _l("100"), "after": _mm("364")}],
    },
}
_CROWDED: Body = {**BOX, "obstacles": [{**_PUMP, "diameter": _mm("1000")}]}
_HIDDEN: Body = {"volume": _l("30"), "drains_back": False}
# Twenty litres that raised the level by a thousandth of a millimetre.
_CONTRADICTING: Body = {
    "full_depth": _mm("400"),
    "start": "empty",
    "steps": [{"poured": _l("20"), "depth": _mm("0.0001")}],
}


def _with_sump(**fields: Any) -> Body:
    return check({**WHEEL_LATHE, "sump": {**WHEEL_LATHE["sump"], **fields}})


def answered() -> dict[str, Any]:
    """Requests about a sump that get an answer."""
    return {
        **{f"assess_sump_{name}": ask("assess_sump", body) for name, body in ASSESSED.items()},
        **{name: ask("calibrate_sump", body) for name, body in CALIBRATED.items()},
        "plan_check_hidden": ask("plan_check", _with_sump(hidden=_HIDDEN)),
    }


def refused() -> dict[str, Any]:
    """Requests that are refused, each with the code that its name says."""
    risen = _with_sump(rise=_mm("60"))["machine"]
    dip = {**check()["dip"], "clean_side": _mm("300")}
    diluted = {"text": "9", "unit": "1"}
    shows, u = {"text": "2", "unit": "Brix"}, {"text": "10", "unit": "Brix"}
    unsure = {"shows": shows, "u": u, "diluted": diluted}
    return {
        "error_not_for_kind": ask("read_machine", {"machine": risen}),
        "error_obstacle_too_large": ask("assess_sump", {"sump": _CROWDED}),
        "error_thousands": ask("assess_sump", {"sump": {**BOX, "length": _mm("1,200")}}),
        "error_pours_contradict": ask("calibrate_sump", _CONTRADICTING),
        "error_screen_blocked": ask("plan_check", {**check(), "dip": dip}),
        "error_too_uncertain": ask("plan_check", {**check(), "reading": unsure}),
    }
