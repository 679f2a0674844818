"""The balance of volume and concentrate; volumes are taken as additive.

C2·V2 = C1·V1 + 100·concentrate with V2 = V1 + water + concentrate. That contraction is
neglected is common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterable


def mix_strength_pct(water_l: float, concentrate_l: float) -> float:
    """Strength of a fresh mix, per cent by volume; 0 when there is neither.

    >>> mix_strength_pct(4, 1)
    20.0
    """
    total_l = water_l + concentrate_l
    return 100 * concentrate_l / total_l if total_l > 0 else 0.0


def state_after(
    volume_l: float, strength_pct: float, pours_l: Iterable[tuple[int, float, float]]
) -> tuple[float, float]:
    """Litres and strength after pouring buckets of (count, water_l, concentrate_l) each.

    Amounts are 0 or more. Strength is per cent by volume; with nothing in the sump at all it
    stays what it was.

    >>> state_after(150, 6, [(1, 43, 7)])
    (200.0, 8.0)
    """
    volume, concentrate = float(volume_l), volume_l * strength_pct / 100
    for count, water_l, concentrate_l in pours_l:
        volume += count * (water_l + concentrate_l)
        concentrate += count * concentrate_l
    return volume, 100 * concentrate / volume if volume > 0 else strength_pct


def concentrate_needed_l(
    volume_l: float, strength_pct: float, water_l: float, aim_pct: float
) -> float:
    """Concentrate that brings a sump plus so much water to the aim; negative when it is too rich.

    Valid: aim below 100. Solves (V·C + 100·x)/(V + water + x) = aim for x.

    >>> round(concentrate_needed_l(200, 5, 0, 8), 4)
    6.5217
    """
    missing = volume_l * (aim_pct - strength_pct) + aim_pct * water_l
    return missing / (100 - aim_pct)


def fill_strength_pct(volume_l: float, strength_pct: float, room_l: float, aim_pct: float) -> float:
    """Strength of a fill of so many litres that brings the sump to the aim, per cent by volume.

    Valid: room above 0. Below 0 or above 100 no fill of that size reaches the aim.

    >>> fill_strength_pct(154, 6, 44, 8)
    15.0
    """
    return aim_pct + volume_l * (aim_pct - strength_pct) / room_l
