"""pycore.desk.setup.instrument: an instrument as typed."""

from typing import Any

import pytest

from tests.unit.desk.asked import (
    HAND_GLASS,
    PER_CENT_GLASS,
    ask,
    assess,
    brix,
    changed,
    refusal,
    t,
    with_fields,
)  # fmt: skip


@pytest.mark.parametrize(
    ("fields", "code", "path"),
    [
        ({"resolution": brix("0")}, "out_of_range", "resolution"),
        ({"resolution": t("0.0001", "nD")}, "wrong_dimension", "resolution"),
        ({"highest": brix("0")}, "order", "highest"),
        ({"lowest": brix("18")}, "order", "highest"),
        ({"zero": {"shows": brix("6")}}, "out_of_range", "zero.shows"),
        ({"zero": {"shows": brix("0"), "on": "today"}}, "not_a_date", "zero.on"),
        ({"factor_inside": t("1.5", "1")}, "order", "factor_inside"),
        ({"shows": "per_cent"}, "missing", "factor_inside"),
        ({"shows": "ounces"}, "not_allowed", "shows"),
    ],
)
def test_refused_at_the_field(fields: dict[str, Any], code: str, path: str) -> None:
    glass = with_fields(HAND_GLASS, **fields)
    error = refusal("read_machine", {"machine": {**changed("name", "x"), "instrument": glass}})
    assert error["code"] == code or (code == "missing" and error["code"] == "wrong_type")
    assert error["path"].startswith(f"body.machine.instrument.{path}".rsplit(".", 1)[0])
    if code != "missing":
        assert error["path"] == f"body.machine.instrument.{path}"


def test_a_zero_stands_in_one_place_only() -> None:
    fluid = {"type": "synthetic", "zero": brix("0.1")}
    error = refusal("assess_sump", assess({"shows": brix("5")}, fluid=fluid, instrument=HAND_GLASS))
    assert (error["code"], error["path"]) == ("order", "body.fluid.zero")


def test_example_mix_is_shown_as_this_instrument_shows_it() -> None:
    machine = {**changed("name", "x"), "instrument": PER_CENT_GLASS}
    assert ask("read_machine", {"machine": machine})["shown"]["five_reads"] == {
        "value": 5.0, "decimals": 0, "unit": "%",
    }  # fmt: skip
    plain = ask("read_machine", {"machine": changed("name", "x")})
    assert plain["shown"]["five_reads"]["value"] == pytest.approx(3.33)


def test_without_a_record_the_page_of_today_is_answered_as_before() -> None:
    got = ask("assess_sump", assess({"shows": brix("5")}))
    assert got["notes"] == []
    assert set(got["strength"]) == {"reading_brix", "shown", "strength_pct", "state"}


def test_a_zero_without_a_date_is_never_silently_used() -> None:
    fluid = {"type": "synthetic", "zero": brix("0.1")}
    got = ask("assess_sump", assess({"shows": brix("5")}, fluid=fluid, now="2026-11-25"))
    assert "zero_age_unknown" in got["notes"]
