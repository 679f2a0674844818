"""pycore.desk.contract.answers: results are frozen, and what is not known is left out.

That the fields are those of the contract stands in test_messages.py.
"""

import json

import pytest

from pycore.desk.contract import answers
from tests.unit.desk.asked import JUGS, ask, fluid_body

KINDS = [
    kind
    for kind in vars(answers).values()
    if isinstance(kind, type) and kind.__module__ == answers.__name__
]


@pytest.mark.parametrize("kind", KINDS, ids=lambda kind: kind.__name__)
def test_frozen(kind: type) -> None:
    assert kind.__dataclass_params__.frozen  # type: ignore[attr-defined]


def test_what_is_not_known_is_left_out() -> None:
    got = ask("read_fluid", {"fluid": {"type": "synthetic"}, "today": "2026-11-25"})
    assert set(got) == {"cautions", "notes", "shown", "doubts", "drum"}
    assert got["drum"] == {}
    assert "null" not in json.dumps(got)


def test_what_is_known_is_there() -> None:
    assert {"factor", "strong_pct", "first_fill_ph", "density_kg_l", "drum"} <= set(
        ask("read_fluid", fluid_body())
    )
    assert set(ask("fit_factor", JUGS)["keep"]) == {
        "factor", "factor_u", "factor_known_by", "factor_on",
    }  # fmt: skip
