"""A number's name ends in its unit; what travels in messages is in shared/quantities.json."""

import ast
import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from tests.contract import FILES
from tests.repo.sources import name_of, python_files, tree_of
from web.build.paths import SHARED

SUFFIXES = (
    "_mm", "_l", "_pct", "_brix", "_c", "_mg_l", "_kg", "_kg_l", "_d", "_s", "_l_per_mm", "_share",
    "litres_per_mm", "_in", "_nd", "_ph", "_cfu_ml", "_dh", "_fh", "_gpg",
)  # fmt: skip
# Numbers whose unit stands beside them as a value or is the caller's own choice.
WITHOUT_UNIT = {
    "value": "a field of a measured or shown value, whose unit is in the name of the whole",
    "u": "as its value",
    "low": "same unit as the number it is compared with",
    "high": "same unit as the number it is compared with",
    "base": "in the base unit of the unit beside it",
    "amount": "counted in marks",
    "wanted": "counted in marks",
    "jug": "counted in marks",
    "factor": "per cent for one Brix, a quantity of its own",
    "last_factor": "as factor",
    "divisor": "Brix for one per cent, the factor turned over",
    "inside": "a factor",
    "factor_inside": "a factor",
    "diluted": "parts of water to one part of the sample",
    "score": "counted in standard uncertainties",
    "normalised_error": "a plain ratio",
    "slope": "in the units of the y and x that were handed in",
    "slope_u": "as slope",
    "offset": "in the unit of the y that was handed in",
    "offset_u": "as offset",
    "spread": "in the unit of the y that was handed in",
    "shown": "in the unit of the instrument's own scale",
    "step": "in the unit of the instrument's own scale",
    "number": "in the unit beside it",
    "share": "a plain ratio",
    "chance_in_band": "a plain ratio",
    "minutes": "is its own unit",
    "minimum": "a bound in the unit beside it",
    "maximum": "a bound in the unit beside it",
    "above": "a bound in the unit beside it",
    "below": "a bound in the unit beside it",
    "usual_low": "a bound in the unit beside it",
    "usual_high": "a bound in the unit beside it",
    "ph": "has no unit",
    "ph_low": "as ph",
    "ph_high": "as ph",
    "ph_drop": "as ph",
    "ph_drop_far": "as ph",
    "published": "in the unit of the limit that it stands for",
    "angle": "in radians",
    "evidence": "the logarithm of a probability",
    "stretch": "a plain ratio",
    "print_scale": "a plain ratio",
    "top": "in the unit of the scale that is printed",
    "least": "in the unit of the scale that is printed",
    "level": "a share of the drawn height",
    "full_mark": "a share of the drawn height",
    "length": "in the drawing's own units",
    "x": "in the drawing's own units",
    "y": "in the drawing's own units",
    "foot": "in the drawing's own units",
    "size": "in the drawing's own units",
    "span": "in the unit of the axis",
    "right": "in the unit of the step that is judged",
    "allowed": "as right",
    "own": "as right",
    "other": "as right",
    "last_digit": "as right",
}
# One- and two-letter names of a formula, inside a private function that names its source.
FORMULA_FILES = {"pycore/sump/curve.py"}
COUNTS = {
    "count",
    "buckets",
    "decimals",
    "whole",
    "numerator",
    "denominator",
    "dots",
    "pour",
    "schema",
    "v",
    "most",
    "least",
    "seq",
    "lines",
    "added",
    "known",
    "newer",
    "quarantined",
    "missing",
    "first",
    "last",
    "pours",
    "unknown_additions",
    "unknown_buckets",
    "buckets_planned",
    "buckets_poured",
    "as_written",
    "corrected",
    "withdrawn",
    "conflict",
    "disputed",
    "left_out",
    "way",
    "rows",
    "readings",
    "steps",
    "needed",
    "unknown",
    "added_unknown",
}


def _floats(path: Path) -> Iterator[tuple[str, int]]:
    for node in ast.walk(tree_of(path)):
        name = node.arg if isinstance(node, ast.arg) else None
        if isinstance(node, ast.AnnAssign) and isinstance(node.target, ast.Name):
            name = node.target.id
        annotation = getattr(node, "annotation", None)
        if name and annotation is not None and ast.unparse(annotation).startswith("float"):
            yield name, node.lineno


@pytest.mark.parametrize("path", python_files("pycore"), ids=name_of)
def test_floats_of_pycore(path: Path) -> None:
    wrong = [
        f"{name} in line {line}"
        for name, line in _floats(path)
        if not f"_{name}".endswith(SUFFIXES)
        and name not in WITHOUT_UNIT
        and not (name_of(path) in FORMULA_FILES and len(name) <= 2)
    ]
    assert wrong == []


def _numbers(definition: Any) -> Iterator[str]:
    if isinstance(definition, dict):
        for name, part in definition.get("properties", {}).items():
            if isinstance(part, dict) and part.get("type") in ("number", "integer"):
                yield name
        for part in definition.values():
            yield from _numbers(part)
    elif isinstance(definition, list):
        for part in definition:
            yield from _numbers(part)


@pytest.mark.parametrize("file", FILES)
def test_numbers_of_the_contract(file: str) -> None:
    known = json.loads((SHARED / "quantities.json").read_text(encoding="utf-8"))["quantities"]
    wrong = [
        name
        for name in _numbers(FILES[file])
        if name not in known
        and name not in COUNTS
        and name not in WITHOUT_UNIT
        and not name.endswith(SUFFIXES)
    ]
    assert wrong == []


def test_every_quantity_has_a_unit_a_meaning_and_a_source() -> None:
    quantities = json.loads((SHARED / "quantities.json").read_text(encoding="utf-8"))["quantities"]
    poor = [
        name
        for name, entry in quantities.items()
        if not all(str(entry.get(part, "")).strip() for part in ("unit", "meaning", "source"))
    ]
    assert quantities
    assert poor == []
