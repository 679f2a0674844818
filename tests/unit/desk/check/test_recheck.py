"""pycore.desk.check.recheck: a typed second reading beside the balance of the first check."""

from typing import Any

import pytest

from tests.unit.desk.lathe import WHEEL_LATHE, ask, changed, check, refusal

POURED_AT = "2026-11-25T09:45:00+01:00"
NOW = "2026-11-25T10:15:00+01:00"
VOLUME_L = 342 * 198 / 440


def litres(text: str) -> dict[str, str]:
    return {"text": text, "unit": "L"}


# 37 L of water and 6.5 L of concentrate; the lathe stands at 153.9 L and 6 %.
POURS = [
    {"count": 4, "kind": "mix", "water": litres("8.5"), "concentrate": litres("1.5")},
    {"count": 1, "kind": "mix", "water": litres("3"), "concentrate": litres("0.5")},
]
EXPECTED_PCT = 100 * (VOLUME_L * 0.06 + 6.5) / (VOLUME_L + 43.5)


def body(shows: str = "5.3", **more: Any) -> dict[str, Any]:
    whole = {
        "check": check(WHEEL_LATHE),
        "machine": WHEEL_LATHE,
        "pours": POURS,
        "poured_at": POURED_AT,
        "reading": {"shows": {"text": shows, "unit": "Brix"}},
        "now": NOW,
        **more,
    }
    return {name: part for name, part in whole.items() if part is not None}


def dip(text: str) -> dict[str, Any]:
    return {"depth": {"text": text, "unit": "mm"}}


def test_expected_is_the_balance_of_what_went_in() -> None:
    got = ask("recheck", body())
    assert got["strength"]["expected_pct"]["value"] == pytest.approx(EXPECTED_PCT)
    assert got["strength"]["found_pct"]["value"] == pytest.approx(5.3 * 1.5)
    assert got["strength"]["verdict"] == "as_expected"
    assert got["reasons"] == []
    assert got["minutes"] == pytest.approx(30)


def test_it_agrees_with_the_recipes_own_expectation() -> None:
    plan = ask("plan_check", check(WHEEL_LATHE))["plan"]
    pours = [
        {
            "count": pour["count"],
            "water": litres(f"{pour['water_l']:.2f}"),
            "concentrate": litres(f"{pour['concentrate_l']:.2f}"),
        }
        for pour in plan["pours"]
    ]
    got = ask("recheck", body(pours=pours))
    assert got["strength"]["expected_pct"]["value"] == pytest.approx(
        plan["final"]["strength_pct"]["value"]
    )
    assert got["strength"]["expected_pct"]["u"] == pytest.approx(plan["final"]["strength_pct"]["u"])


def test_weaker_than_expected_names_what_to_check() -> None:
    got = ask("recheck", body("4.3"))
    assert got["strength"]["verdict"] == "weaker"
    assert got["reasons"][-1] == "somebody_added"
    assert {"check_marks", "check_reading"} <= set(got["reasons"])
    assert "mixed_too_short" not in got["reasons"]
    assert got["shown"]["difference"]["value"] == pytest.approx(EXPECTED_PCT - 6.45, abs=0.06)


def test_too_early_is_allowed_and_said() -> None:
    got = ask("recheck", body("4.3", now="2026-11-25T09:57:00+01:00"))
    assert got["minutes"] == pytest.approx(12)
    assert got["reasons"][0] == "mixed_too_short"
    assert ask("recheck", body(now="2026-11-25T09:57:00+01:00"))["reasons"] == []


def test_a_large_sump_is_not_even_after_half_an_hour() -> None:
    large = changed("sump.full_volume", litres("1500"))
    asked = {"check": check(large), "machine": large}
    assert ask("recheck", body("2.3", **asked))["reasons"][0] == "mixed_too_short"
    later = ask("recheck", body("2.3", **asked, now="2026-11-25T10:45:00+01:00"))
    assert later["strength"]["verdict"] == "weaker"
    assert "mixed_too_short" not in later["reasons"]


def test_a_reading_before_the_pour_is_refused() -> None:
    early = refusal("recheck", body(now="2026-11-25T09:40:00+01:00"))
    assert (early["code"], early["path"]) == ("order", "body.poured_at")


def test_a_sump_that_holds_more_than_thought() -> None:
    # A second dip in 200 L thought to be half of it: 30 L of 12 % move 6 % by less than expected.
    pours = [{"count": 3, "kind": "mix", "water": litres("5"), "concentrate": litres("5")}]
    # (V·6 + 1500) / (V + 30) with V = 300 L: 10 %, where 153.9 L would give 13.2 %.
    got = ask("recheck", body("6.6667", pours=pours))
    assert got["strength"]["verdict"] == "weaker"
    assert got["strength"]["implied_l"]["value"] == pytest.approx(300, rel=1e-3)
    assert "sump_holds_more" in got["reasons"]


def test_a_dip_after_the_pour_is_compared_too() -> None:
    # 153.9 + 43.5 = 197.4 L stand at 438.7 mm.
    good = ask("recheck", body(dip=dip("439")))
    assert good["level"]["expected_l"] == pytest.approx(VOLUME_L + 43.5)
    assert good["level"]["verdict"] == "as_expected"
    low = ask("recheck", body(dip=dip("400")))
    assert low["level"]["verdict"] == "lower"
    assert low["reasons"] == ["level_lower"]
    assert low["strength"]["verdict"] == "as_expected"


def test_taken_out_first() -> None:
    got = ask("recheck", body(draw_off=litres("20")))
    left_l = VOLUME_L - 20
    by_hand_pct = 100 * (left_l * 0.06 + 6.5) / (left_l + 43.5)
    assert got["strength"]["expected_pct"]["value"] == pytest.approx(by_hand_pct)
    much = refusal("recheck", body(draw_off=litres("200")))
    assert (much["code"], much["path"]) == ("order", "body.draw_off")


def test_all_taken_out_and_nothing_poured_leaves_nothing_to_read() -> None:
    all_out = refusal("recheck", body(draw_off=litres(str(VOLUME_L)), pours=[]))
    assert (all_out["code"], all_out["path"]) == ("out_of_range", "body.draw_off")
    assert all_out["limit"]["below"] == VOLUME_L


def test_something_unknown_leaves_nothing_to_compare() -> None:
    got = ask("recheck", body(pours=[*POURS, {"count": 1, "kind": "unknown"}]))
    assert got["reasons"] == ["unknown_poured"]
    assert "strength" not in got
    assert got["assessment"]["strength"]["strength_pct"]["value"] == pytest.approx(7.95)


def test_hidden_coolant_counts_and_is_named() -> None:
    hidden = changed("sump.hidden", {"volume": litres("40"), "drains_back": False})
    got = ask("recheck", body("4.3", check=check(hidden), machine=hidden))
    by_hand_pct = 100 * ((VOLUME_L + 40) * 0.06 + 6.5) / (VOLUME_L + 40 + 43.5)
    assert got["strength"]["expected_pct"]["value"] == pytest.approx(by_hand_pct)
    assert "hidden_not_run" in got["reasons"]


def test_faults_stand_at_their_field() -> None:
    wrong = refusal("recheck", body("five"))
    assert wrong["path"] == "body.reading.shows"
    first = refusal("recheck", body(check=check(WHEEL_LATHE, depth="900")))
    assert first["path"] == "body.check.dip.depth"
    no_factor = refusal("recheck", body(machine=changed("fluid.factor", None)))
    assert no_factor["code"] in {"no_factor", "missing"}
