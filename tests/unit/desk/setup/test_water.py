"""pycore.desk.setup.water. Conversions are checked in shared/checks/hardness.json."""

from typing import Any

import pytest

from tests.unit.desk.asked import ask, refusal, t


def _water(limits: dict[str, Any] | None = None, **water: Any) -> dict[str, Any]:
    body: dict[str, Any] = {"water": {"kind": "mains", **water}}
    return {**body, "limits": limits} if limits else body


LIMITS = {"scheme": "the fluid's sheet", "low": t("5", "°dH"), "high": t("15", "°dH")}


def test_all_units_and_the_limits_as_they_were_typed() -> None:
    got = ask("read_water", _water(LIMITS, hardness=t("10", "gpg")))
    assert got["hardness"]["hardness_mg_l"] == pytest.approx(171.18, abs=0.01)
    assert [shown["unit"] for shown in got["hardness"]["shown"]] == [
        "mg/L CaCO₃", "°dH", "°fH", "gpg", "mmol/L",
    ]  # fmt: skip
    assert got["scheme"] == "the fluid's sheet"
    assert got["shown"]["low"]["unit"] == "°dH"
    assert got["cautions"] == []


def test_nothing_known_but_the_kind() -> None:
    got = ask("read_water", _water(kind="softened"))
    assert got["cautions"] == ["softened_keeps_salts"]
    assert "hardness" not in got


@pytest.mark.parametrize(
    ("body", "code", "path"),
    [
        (_water(hardness=t("10", "mg/L")), "wrong_dimension", "water.hardness"),
        (_water(hardness={"text": "10"}), "missing_unit", "water.hardness"),
        (_water(hardness=t("-1", "°dH")), "out_of_range", "water.hardness"),
        (_water(chloride=t("10", "°dH")), "wrong_dimension", "water.chloride"),
        (_water({**LIMITS, "low": t("15", "°dH")}), "order", "limits.low"),
        (_water({**LIMITS, "scheme": ""}), "empty", "limits.scheme"),
        (_water(kind="rain"), "not_allowed", "water.kind"),
    ],
)
def test_refused_at_the_field(body: dict[str, Any], code: str, path: str) -> None:
    error = refusal("read_water", body)
    assert (error["code"], error["path"]) == (code, f"body.{path}")
