"""pycore.desk.contract.results: what leaves is frozen, and what is not known is left out.

That the fields are those of the contract stands in test_messages.py.
"""

from dataclasses import FrozenInstanceError, is_dataclass

import pytest

from pycore.desk.contract import results
from tests.unit.desk.lathe import WHEEL_LATHE, ask, changed, check


def test_every_result_is_frozen() -> None:
    kinds = [
        kind
        for kind in vars(results).values()
        if isinstance(kind, type) and kind.__module__ == results.__name__
    ]
    assert kinds
    assert [kind.__name__ for kind in kinds if not is_dataclass(kind)] == []
    section = results.Section(0.5, 0.9)
    with pytest.raises(FrozenInstanceError):
        section.level = 1.0  # type: ignore[misc]


def test_unknown_fields_of_a_pour_are_left_out() -> None:
    pour = ask("plan_check", check(WHEEL_LATHE))["shown"]["pours"][0]
    assert {"fluid", "jugs", "pail_mark", "kind"} & set(pour) == set()


def test_known_fields_of_a_pour_are_there() -> None:
    machine = changed("pail", {"jug_size": {"text": "500", "unit": "mL"}})
    pour = ask("plan_check", check(machine))["shown"]["pours"][0]
    # 1.2 L in jugs of half a litre.
    assert (pour["jugs"]["count"], pour["jugs"]["rest"]["value"]) == (2, 200.0)


def test_full_precision_stands_beside_what_is_shown() -> None:
    got = ask("plan_check", check(WHEEL_LATHE))
    # By hand: 198·342/440 L.
    assert got["request"]["sump"]["volume_l"]["value"] == pytest.approx(153.9)
    assert got["plan"]["final"]["strength_pct"]["value"] != got["shown"]["strength"]["value"]
    assert got["plan"]["final"]["strength_pct"]["value"] == pytest.approx(
        got["shown"]["strength"]["value"], abs=0.05
    )
    assert [way["why"] for way in got["ways"]] == [
        way["why"] for way in got["plan"]["alternatives"]
    ]
