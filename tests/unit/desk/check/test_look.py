"""pycore.desk.check.look: ticks and typed numbers to advice."""

from dataclasses import MISSING, fields
from typing import Any

import pytest

from pycore.desk.check import look
from pycore.reading.look import Row
from tests.contract import DEFINITIONS
from tests.unit.desk.lathe import ask, refusal

PAIRS: list[tuple[type, dict[str, Any]]] = [
    (look.JudgeLookBody, DEFINITIONS["judge_look_body"]),
    (look.JudgeLookResult, DEFINITIONS["judge_look_result"]),
    (look.LookLimitsTyped, DEFINITIONS["look_limits"]),
    (look.SlideLimitsTyped, DEFINITIONS["look_slide_limits"]),
    (look.SlideTyped, DEFINITIONS["look_slide"]),
    (Row, DEFINITIONS["look_row"]),
]


@pytest.mark.parametrize(("kind", "definition"), PAIRS, ids=[kind.__name__ for kind, _ in PAIRS])
def test_fields_and_what_is_needed(kind: type, definition: dict[str, Any]) -> None:
    own = fields(kind)
    needed = {f.name for f in own if f.default is MISSING and f.default_factory is MISSING}
    assert {field.name for field in own} == set(definition["properties"])
    assert needed == set(definition["required"])


def plain(text: str) -> dict[str, str]:
    return {"text": text, "unit": "1"}


def mg_l(text: str) -> dict[str, str]:
    return {"text": text, "unit": "mg/L"}


def counts(text: str) -> dict[str, str]:
    return {"text": text, "unit": "CFU/mL"}


def test_nothing_unusual() -> None:
    got = ask("judge_look", {"seen": ["normal"]})
    assert (got["decision"], got["rows"]) == ("go_on", [])
    assert (got["foam"], got["smell_again"]) == ([], False)


def test_foam_has_its_own_order() -> None:
    got = ask("judge_look", {"seen": ["foam"]})
    assert got["foam"] == ["level", "cleaner", "strength", "water"]
    found = ask("judge_look", {"seen": ["foam"], "foam_from": "cleaner"})
    assert (found["foam"], found["decision"]) == ([], "do_not_feed")


def test_smell_asks_to_be_smelled_again_once() -> None:
    assert ask("judge_look", {"seen": ["smell"]})["smell_again"] is True
    again = ask("judge_look", {"seen": ["smell"], "smell_again": "still"})
    assert (again["smell_again"], again["decision"]) == (False, "do_not_feed")


def test_typed_numbers_are_read() -> None:
    got = ask(
        "judge_look",
        {"seen": ["normal"], "ph": plain("8,6"), "first_fill_ph": plain("9.2"),
         "nitrite": mg_l("9"), "nitrite_before": [mg_l("8"), mg_l("7")]},
    )  # fmt: skip
    assert [row["code"] for row in got["rows"]] == ["ph_dropped"]
    assert got["nitrite_interval_d"] == 28


def test_the_shops_own_limits_replace_the_published_ones() -> None:
    body = {"seen": [], "ph": plain("8.2"), "dip_slide": {"germs": counts("2000")}}
    assert ask("judge_look", body)["decision"] == "check_chemistry_first"
    slide = {"scheme": "Our laboratory", "review": counts("10000"), "act": counts("1000000")}
    limits = {"ph_low": plain("8.0"), "dip_slide": slide}
    assert ask("judge_look", {**body, "limits": limits})["rows"] == []
    limits = {"ph_low": plain("7"), "ph_high": plain("8.1")}
    high = ask("judge_look", {"seen": [], "ph": plain("8.2"), "limits": limits})
    assert [row["code"] for row in high["rows"]] == ["ph_high"]


@pytest.mark.parametrize(
    ("body", "code", "path"),
    [
        ({"seen": ["normal", "foam"]}, "order", "body.seen"),
        ({"seen": ["foam"], "smell_again": "gone"}, "not_for_kind", "body.smell_again"),
        ({"seen": ["rust"], "foam_from": "level"}, "not_for_kind", "body.foam_from"),
        ({"seen": [], "ph": plain("high")}, "not_a_number", "body.ph"),
        ({"seen": [], "limits": {"ph_low": plain("9.8")}}, "order", "body.limits.ph_low"),
        ({"seen": [], "limits": {"ph_high": plain("8,5")}}, "order", "body.limits.ph_high"),
        (
            {"seen": [], "limits": {"ph_low": plain("9"), "ph_high": plain("9")}},
            "order",
            "body.limits.ph_low",
        ),
        ({"seen": [], "limits": {"ph_drop_far": plain("0.4")}}, "order", "body.limits.ph_drop_far"),
        ({"seen": [], "limits": {"ph_drop": plain("1.2")}}, "order", "body.limits.ph_drop"),
        (
            {"seen": [], "limits": {"cold": {"text": "45", "unit": "°C"}}},
            "order",
            "body.limits.cold",
        ),
        (
            {"seen": [], "limits": {"dip_slide": {
                "scheme": "x", "review": counts("10000"), "act": counts("1000")}}},
            "order",
            "body.limits.dip_slide.review",
        ),
    ],
)  # fmt: skip
def test_refused(body: dict[str, Any], code: str, path: str) -> None:
    error = refusal("judge_look", body)
    assert (error["code"], error["path"]) == (code, path)
