"""How rough a level is, as the planner is told: the dip's own error and what drains back."""

import math
from typing import Any

import pytest

from tests.unit.desk.lathe import WHEEL_LATHE, ask, changed, check
from tests.unit.desk.sumps import litres, mm

HIDDEN = {"volume": litres("20"), "u": litres("15"), "drains_back": True}


def told(machine: dict[str, Any], **dip: Any) -> dict[str, Any]:
    """The answer to a check of this dip, read at 4.0 Brix."""
    body = check(machine)
    return dict(ask("plan_check", {**body, "dip": {**body["dip"], **dip}}))


# 198 L at 440 mm: 0.45 L/mm, so that 3 % of the full sump are twice 6.6 mm.
@pytest.mark.parametrize(
    ("dip", "u_l"),
    [
        ({}, None),
        ({"how": "chips"}, 15 * 0.45),
        ({"waited": False}, 8 * 0.45),
        ({"u": mm("6.5")}, None),
        ({"u": mm("6.7")}, 6.7 * 0.45),
    ],
)
def test_a_rough_dip_is_told_to_the_planner(dip: dict[str, Any], u_l: float | None) -> None:
    assert told(WHEEL_LATHE, **dip)["request"].get("level_u_l") == (u_l and pytest.approx(u_l))


def test_what_drains_back_counts_with_its_own_uncertainty() -> None:
    machine = changed("sump.hidden", HIDDEN)
    got = told(machine, pump="running", depth=mm("300"))
    assert got["request"]["level_u_l"] == pytest.approx(math.hypot(15, 8 * 0.45))
    assert "watch_the_mark" in got["plan"]["cautions"]
    # In the pump state of the marks nothing of it is worked out.
    assert "level_u_l" not in told(machine, pump="stopped", depth=mm("300"))["request"]


def test_the_floor_of_a_lying_tank_is_no_better_known() -> None:
    lying = {
        "kind": "horizontal_cylinder",
        "diameter": mm("600"),
        "length": mm("1500"),
        "full_depth": mm("560"),
        "read_as": "gauge",
        "volume_known_by": WHEEL_LATHE["sump"]["volume_known_by"],
    }
    got = told(changed("sump", lying), depth={"text": "0"})
    assert got["request"]["level_u_l"] > 10
    assert "watch_the_mark" in got["plan"]["cautions"]


def test_a_top_up_without_a_reading_is_told_as_well() -> None:
    body = {"machine": changed("sump.read_as", "gauge"), "usual": {"text": "5", "unit": "%"}}
    got = ask(
        "hold_check", {**body, "dip": {"depth": {"text": "1/2"}}, "now": "2026-11-27T08:00:00Z"}
    )
    assert "watch_the_mark" in got["holding"]["cautions"]
