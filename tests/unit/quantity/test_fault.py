"""pycore.quantity.fault."""

import pytest

from pycore.quantity.fault import Fault
from tests.contract import DEFINITIONS


def test_sentence_names_place_got_and_allowed() -> None:
    fault = Fault("out_of_range", "body.dip.depth", 700.0, {"maximum": 484.0, "unit": "mm"})
    for part in ("body.dip.depth", "700", "484 mm"):
        assert part in str(fault)
    assert isinstance(fault, ValueError)


def test_sentence_lists_what_is_allowed() -> None:
    said = str(Fault("unknown_unit", "body.text", "ell", {"allowed": ["mm", "cm"]}))
    assert "'ell'" in said
    assert "mm, cm" in said


def test_every_code_of_the_contract_has_its_own_sentence() -> None:
    codes = DEFINITIONS["error_code"]["enum"]
    said = {code: str(Fault(code, "x")) for code in codes}
    assert len(set(said.values())) == len(codes)


def test_limit_is_a_copy() -> None:
    limit = {"maximum": 1.0}
    fault = Fault("out_of_range", "x", 2.0, limit)
    limit["maximum"] = 5.0
    assert fault.limit == {"maximum": 1.0}


@pytest.mark.parametrize(
    ("side", "said"),
    [
        ("minimum", "allowed: at least 1.5"),
        ("maximum", "allowed: at most 1.5"),
        ("above", "allowed: above 1.5"),
        ("below", "allowed: below 1.5"),
        ("least", "allowed: at least 1.5"),
        ("most", "allowed: at most 1.5"),
    ],
)
def test_sentence_says_on_which_side_the_limit_lies(side: str, said: str) -> None:
    assert str(Fault("out_of_range", "x", 9, {side: 1.5})).endswith(said)


def test_sentence_says_which_kind_is_wanted_and_shows_what_came_as_it_came() -> None:
    said = str(Fault("wrong_type", "body.allowed", True, {"type": "number"}))
    assert said.endswith("got True; allowed: number")
