"""Sumps of every kind for the tests of the door, in the depot's workshop."""

from typing import Any

Body = dict[str, Any]


def mm(text: str) -> Body:
    """Typed millimetres."""
    return {"text": text, "unit": "mm"}


def litres(text: str) -> Body:
    """Typed litres."""
    return {"text": text, "unit": "L"}


MARKS = {"full_depth": mm("400"), "volume_known_by": "measured"}
BLOCK = {"from_depth": mm("80"), "to_depth": mm("280"), "length": mm("300"), "width": mm("250")}
BOX = {"kind": "box", "length": mm("1200"), "width": mm("600"), **MARKS}
KINDS: dict[str, Body] = {
    "proportional": {"kind": "proportional", "full_volume": litres("288"), **MARKS},
    "box": BOX,
    "sloped_box": {**BOX, "kind": "sloped_box", "rise": mm("60"), "dipped_end": "deep"},
    "stepped": {
        "kind": "stepped",
        "steps": [
            {"floor": mm("0"), "length": mm("400"), "width": mm("600")},
            {"floor": mm("120"), "length": mm("800"), "width": mm("600")},
        ],
        **MARKS,
    },
    "upright_cylinder": {"kind": "upright_cylinder", "diameter": mm("572"), **MARKS},
    "horizontal_cylinder": {
        "kind": "horizontal_cylinder",
        "diameter": mm("600"),
        "length": mm("1000"),
        **MARKS,
    },
    "frustum": {
        "kind": "frustum",
        "bottom_diameter": mm("200"),
        "top_diameter": mm("600"),
        "height": mm("500"),
        **MARKS,
    },
    "table": {
        "kind": "table",
        "points": [
            {"depth": mm("100"), "volume": litres("20")},
            {"depth": mm("440"), "volume": litres("180")},
        ],
        **MARKS,
    },
}
# Litres at 100 mm: by hand, the lying cylinder with fluids 1.3.1.
AT_100_MM = {
    "proportional": 72,
    "box": 72,
    "sloped_box": 50.4,
    "stepped": 24,
    "upright_cylinder": 25.696971,
    "horizontal_cylinder": 30.974821,
    "frustum": 4.565781,
    "table": 20,
}
