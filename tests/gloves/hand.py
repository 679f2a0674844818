"""A hand that aims at the middle of each key, misses it by chance, and looks at nothing."""

from __future__ import annotations

import random
from collections.abc import Sequence

from tests.gloves.pages import Target

MOST_TAPS = 100


def typed(text: str, targets: Sequence[Target], scatter_px: float, chance: random.Random) -> str:
    """What stands in the field when Continue is met.

    Every sign is tapped once, met or not. Continue is tapped until it is met, since the page stays;
    met too early, it takes what stands there, and the hand's other taps go to another page. A tap
    between the keys, on the field or on something that types nothing changes nothing.
    """
    place = {target.key: target.middle for target in targets if target.key}
    got, signs = "", [*text, *["continue"] * MOST_TAPS]
    for sign in signs:
        x, y = (chance.gauss(along, scatter_px) for along in place[sign])
        met = next((target.key for target in targets if target.holds(x, y)), "")
        if met == "continue":
            return got
        if met == "clear":
            got = ""
        elif met == "delete":
            got = got[:-1]
        else:
            got += met
    raise RuntimeError(f"Continue was not met in {MOST_TAPS} taps")
