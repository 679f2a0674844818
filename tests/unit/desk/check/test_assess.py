"""pycore.desk.check.assess. Tanks and strengths are checked against tables in shared/checks."""

from typing import Any

import pytest

from tests.unit.desk.lathe import WHEEL_LATHE, ask, changed, refusal


def assess(depth: str | None = "342", shows: str | None = "4.0", **more: Any) -> dict[str, Any]:
    body = {name: WHEEL_LATHE[name] for name in ("sump", "fluid", "target", "units")}
    if depth is not None:
        body["dip"] = {"depth": {"text": depth, "unit": "mm"}}
    if shows is not None:
        body["reading"] = {"shows": {"text": shows, "unit": "Brix"}}
    return {**body, **more}


def test_litres_and_strength() -> None:
    # By hand: 198·342/440 L; 4.0 × 1.5 %.
    got = ask("assess_sump", assess())
    assert got["level"]["volume_l"]["value"] == pytest.approx(153.9)
    assert got["level"]["room_l"] == pytest.approx(44.1)
    assert got["strength"]["strength_pct"]["value"] == pytest.approx(6.0)
    assert got["strength"]["state"] == "weak"
    assert got["notes"] == []


def test_either_alone() -> None:
    assert "strength" not in ask("assess_sump", assess(shows=None))
    assert "level" not in ask("assess_sump", assess(depth=None))


def test_without_a_factor_there_is_no_per_cent() -> None:
    got = ask("assess_sump", assess(fluid=changed("fluid.factor", None)["fluid"]))
    assert got["notes"] == ["no_factor"]
    assert "strength_pct" not in got["strength"]
    assert "state" not in got["strength"]


def test_above_the_full_mark_is_noted_and_not_clamped() -> None:
    got = ask("assess_sump", assess("460"))
    assert "above_full_mark" in got["notes"]
    assert got["level"]["room_l"] == pytest.approx(-9.0)


@pytest.mark.parametrize("how", ["optical_oily", "blurred"])
def test_blurred_reading_may_be_leaner(how: str) -> None:
    reading = {"shows": {"text": "4.0", "unit": "Brix"}, "how": how}
    assert "may_be_leaner" in ask("assess_sump", assess(reading=reading))["notes"]


@pytest.mark.parametrize(
    ("how", "u_mm"),
    [("hard_floor", 2), ("through_slot", 3), ("running", 8), ("chips", 15), ("unsure", 15)],
)
def test_uncertainty_of_the_dip(how: str, u_mm: float) -> None:
    # Common practice, no source.
    dip = {"depth": {"text": "342", "unit": "mm"}, "how": how}
    assert ask("assess_sump", assess(dip=dip))["level"]["depth_mm"] == {"value": 342, "u": u_mm}


@pytest.mark.parametrize(
    ("how", "u_brix"), [("digital", 0.1), ("optical", 0.2), ("optical_oily", 0.4), ("blurred", 0.8)]
)
def test_uncertainty_of_the_reading(how: str, u_brix: float) -> None:
    # Common practice, no source.
    reading = {"shows": {"text": "4.0", "unit": "Brix"}, "how": how}
    got = ask("assess_sump", assess(reading=reading))["strength"]["reading_brix"]
    assert got == {"value": 4.0, "u": u_brix}


@pytest.mark.parametrize("depth", ["485", "-1", "0x10"])
def test_dip_that_cannot_be(depth: str) -> None:
    error = refusal("assess_sump", assess(depth))
    assert error["path"] == "body.dip.depth"
    assert error["limit"]


def test_own_uncertainty_wins() -> None:
    dip = {"depth": {"text": "342", "unit": "mm"}, "how": "chips", "u": {"text": "5", "unit": "mm"}}
    assert ask("assess_sump", assess(dip=dip))["level"]["depth_mm"]["u"] == 5


def test_neat_oil_is_refused() -> None:
    assert refusal("assess_sump", assess(fluid={"type": "neat_oil"}))["code"] == "neat_oil"


def test_drawing_shows_level_full_mark_and_dots() -> None:
    # By hand: 342 and 440 of 484 mm; 153.9·6.0 of 198·0.5 dots.
    got = ask("assess_sump", assess())["section"]
    assert (got["level"], got["full_mark"]) == pytest.approx((342 / 484, 440 / 484))
    assert got["dots"] == round(153.9 * 6 / 99)


@pytest.mark.parametrize(
    ("depth", "usual"),
    [
        ("87", (88, 440)),
        ("88", None),
        ("342", None),
        ("440", None),
        ("444", None),
        ("446", (88, 440)),
    ],
)
def test_level_that_hardly_ever_stands_there_is_asked_about_once(
    depth: str, usual: tuple[float, float] | None
) -> None:
    # A fifth of the full sump, and its mark with twice the uncertainty of a dip on a hard floor
    # (2 mm): common practice, no source.
    doubts = ask("assess_sump", assess(depth))["doubts"]
    assert [doubt["code"] for doubt in doubts] == ([] if usual is None else ["unusual_level"])
    for doubt in doubts:
        assert doubt["path"] == "body.dip.depth"
        assert (doubt["usual_low"], doubt["usual_high"]) == pytest.approx(usual)


def test_unusual_level_in_the_unit_and_direction_of_what_was_read() -> None:
    inches = {"depth": {"text": "2", "unit": "in"}}
    (doubt,) = ask("assess_sump", assess(None, dip=inches))["doubts"]
    assert doubt["usual_high"] == pytest.approx(440 / 25.4)
    litres = {"depth": {"text": "20", "unit": "L"}, "read_as": "volume"}
    (doubt,) = ask("assess_sump", assess(None, dip=litres))["doubts"]
    assert (doubt["usual_low"], doubt["usual_high"]) == pytest.approx((0.2 * 198, 198))
    gauge = {"depth": {"text": "0", "unit": "1"}, "read_as": "gauge"}
    assert ask("assess_sump", assess(None, dip=gauge))["doubts"] == []
