"""What went in, in litres: from recipes in marks, and from "2 buckets of about 3 %"."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any

from pycore.quantity.typed import number_of

Row = Mapping[str, Any]


@dataclass(frozen=True)
class Poured:
    """Water and concentrate of the buckets that are known, and how many are not.

    Own fluid counts with the concentrate that was stirred into it, ready mix where its strength is
    given.
    """

    water_l: float
    concentrate_l: float
    buckets: int
    unknown_buckets: int


def usable_of(setup: Mapping[str, Any] | None) -> float | None:
    """Litres of one usable bucket by a machine's set-up as typed; None where it says nothing."""
    if setup is None:
        return None
    return number_of(setup["bucket"]["usable"], "usable_l")


def _bucket(row: Row, usable_l: float | None) -> tuple[float, float] | None:
    """Water and concentrate of one bucket in litres, or None where that is not known."""
    water_l = number_of(row.get("water"), "volume_l")
    concentrate_l = number_of(row.get("concentrate"), "volume_l")
    if water_l is not None and concentrate_l is not None:
        return water_l, concentrate_l
    if row.get("kind") == "own_fluid" and concentrate_l is not None:
        # The carrier was taken out of this sump and goes back into it.
        return 0.0, concentrate_l
    if "water" in row or "concentrate" in row:
        # One of the two alone says nothing of the other, unless the kind does.
        alone = {"water": (water_l, 0.0), "concentrate": (0.0, concentrate_l)}
        pair = alone.get(row.get("kind", ""))
        return None if pair is None or None in pair else (pair[0] or 0.0, pair[1] or 0.0)
    each_l = number_of(row.get("each"), "volume_l") if "each" in row else usable_l
    if each_l is None:
        return None
    if row.get("kind") == "water":
        return each_l, 0.0
    if row.get("kind") == "concentrate":
        return 0.0, each_l
    strength_pct = number_of(row.get("strength"), "poured_pct")
    if strength_pct is None:
        return None
    neat_l = each_l * strength_pct / 100
    return each_l - neat_l, neat_l


def poured(rows: Iterable[Row], usable_l: float | None) -> Poured:
    """Sum over rows of buckets that are alike.

    Parameters
    ----------
    rows : iterable of mapping
        As in the contract, ``bucket_row``: count, and either water and concentrate, or strength
        or kind with the volume of each bucket.
    usable_l : float or None
        Litres of one usable bucket of the machine, for rows that do not say how much each was.

    >>> poured([{"count": 2, "strength": {"text": "3", "unit": "%"}}], 10.0)
    Poured(water_l=19.4, concentrate_l=0.6, buckets=2, unknown_buckets=0)
    """
    water_l = concentrate_l = 0.0
    buckets = unknown = 0
    for row in rows:
        count = row["count"]
        buckets += count
        bucket = _bucket(row, usable_l)
        if bucket is None:
            unknown += count
            continue
        water_l += count * bucket[0]
        concentrate_l += count * bucket[1]
    return Poured(water_l, concentrate_l, buckets, unknown)
