"""pycore.sump.calibration: exact pours. Coverage: tests/properties/sump/pours.py."""

import pytest

from pycore.sump.calibration import LAYERS, Calibration, Pour, Trial, calibrated
from pycore.sump.obstacles import Obstacle
from pycore.sump.shapes import box, sloped_box
from pycore.sump.sump import Sump

BOX = box(1200, 600, 400, 0.05)
SLOPED = sloped_box(1200, 600, 60, True, 400, 0.05, 440, [Obstacle(80, 300, 0.075)])


def _trial(sump: Sump, start_mm: float, step_l: float, u_mm: float = 1.0) -> Trial:
    """A pour test without any error in it."""
    dips, us, pours = [start_mm], [0.0 if start_mm == 0 else u_mm], []
    volume_l = sump.volume_from_depth(start_mm, "d")
    while volume_l + step_l <= sump.full_volume_l * (1 + 1e-9):
        volume_l += step_l
        pours.append(Pour(len(dips) - 1, len(dips), step_l))
        dips.append(sump.depth_from_volume(volume_l, "v"))
        us.append(u_mm)
    return Trial(tuple(dips), tuple(us), tuple(pours))


def _at(found: Calibration, depth_mm: float) -> tuple[float, float]:
    row = min(range(LAYERS), key=lambda i: abs(found.depths_mm[i] - depth_mm))
    assert found.depths_mm[row] == pytest.approx(depth_mm)
    return found.volumes_l[row], found.us_l[row]


def test_straight_walls_come_back() -> None:
    found = calibrated(_trial(BOX, 0.0, 14.4), 440, 0.01, 0.0)
    for depth_mm in (110, 220, 330, 396):
        volume_l, u_l = _at(found, depth_mm)
        assert volume_l == pytest.approx(0.72 * depth_mm, abs=0.1 * u_l)


def test_sloped_floor_with_a_pump_body_comes_back_within_its_uncertainty() -> None:
    found = calibrated(_trial(SLOPED, 0.0, 10.0), 440, 0.01, 0.0)
    for depth_mm in (44, 110, 220, 330, 396):
        volume_l, u_l = _at(found, depth_mm)
        assert volume_l == pytest.approx(SLOPED.volume_from_depth(depth_mm, "d"), abs=2 * u_l)


def test_vessel_error_is_shared_and_not_averaged_away() -> None:
    # JCGM 100:2008, 5.2: one error in every pour scales the whole curve, however many there are.
    for step_l in (28.8, 7.2):
        trial = _trial(BOX, 0.0, step_l)
        alone = _at(calibrated(trial, 440, 0.01, 0.0), 330)
        volume_l, u_l = _at(calibrated(trial, 440, 0.01, 0.03), 330)
        assert volume_l == pytest.approx(alone[0])
        assert u_l**2 == pytest.approx(alone[1] ** 2 + (0.03 * volume_l) ** 2)


def test_more_dip_noise_is_more_uncertainty() -> None:
    us = [_at(calibrated(_trial(BOX, 0.0, 14.4, u), 440, 0.01, 0.0), 220)[1] for u in (1, 3, 9)]
    assert us == sorted(us)


def test_unknown_rest_is_solved_with_a_wide_uncertainty() -> None:
    found = calibrated(_trial(BOX, 66.0, 14.4), 440, 0.01, 0.0)
    volume_l, u_l = _at(found, 66)
    assert volume_l == pytest.approx(0.72 * 66, abs=2 * u_l)
    assert 0.1 * volume_l < u_l < 0.35 * volume_l
    # What was poured is known far better than what was there before.
    higher_l, higher_u_l = _at(found, 330)
    assert higher_l - volume_l == pytest.approx(0.72 * 264, abs=1.0)
    assert higher_u_l == pytest.approx(u_l, rel=0.1)


def test_pairs_of_different_days_make_one_curve() -> None:
    pairs = [(40.0, 150.0), (120.0, 260.0), (200.0, 390.0), (330.0, 400.0)]
    dips = tuple(depth for pair in pairs for depth in pair)
    pours = tuple(
        Pour(2 * i, 2 * i + 1, 0.72 * (after - before)) for i, (before, after) in enumerate(pairs)
    )
    found = calibrated(Trial(dips, (1.0,) * len(dips), pours), 440, 0.01, 0.0)
    for depth_mm in (110, 220, 330, 396):
        volume_l, u_l = _at(found, depth_mm)
        assert volume_l == pytest.approx(0.72 * depth_mm, abs=2 * u_l)


def test_curve_rises_even_with_wild_dips() -> None:
    dips = (0.0, 40.0, 41.0, 140.0, 141.0, 300.0)
    pours = tuple(Pour(i, i + 1, 20.0) for i in range(5))
    found = calibrated(Trial(dips, (0.0, 2.0, 2.0, 2.0, 2.0, 2.0), pours), 330, 0.01, 0.03)
    assert list(found.volumes_l) == sorted(set(found.volumes_l))
    assert found.volumes_l[0] > 0


def test_a_dip_off_the_curve_is_seen() -> None:
    trial = _trial(BOX, 0.0, 14.4)
    dips = list(trial.dips_mm)
    dips[8] += 12
    found = calibrated(Trial(tuple(dips), trial.dip_us_mm, trial.pours), 440, 0.01, 0.0)
    off = max(range(len(dips)), key=lambda k: abs(found.off_share[k]))
    assert off == 8
    assert found.off_share[8] > 3
