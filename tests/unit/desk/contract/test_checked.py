"""pycore.desk.contract.checked: a message against its definition."""

import pytest

from pycore.desk.contract.checked import checked
from pycore.quantity.fault import Fault


def test_what_fits_comes_back() -> None:
    message = {"text": "Skimmed."}
    assert checked("note_content", message, "body") is message


def test_what_does_not_fit_is_refused_at_its_place() -> None:
    with pytest.raises(Fault) as caught:
        checked("note_content", {"text": "x", "colour": "blue"}, "line.body")
    assert (caught.value.code, caught.value.path) == ("unknown_field", "line.body.colour")


def test_a_text_of_the_wrong_form() -> None:
    with pytest.raises(Fault) as caught:
        checked("withdrawal_content", {"retracts": "7", "reason": "x"}, "body")
    assert (caught.value.code, caught.value.path) == ("wrong_form", "body.retracts")
    assert caught.value.limit == {"type": "^[0-9a-f]{32}$"}


def test_an_unknown_definition_is_a_defect() -> None:
    with pytest.raises(KeyError):
        checked("nothing", {}, "body")
