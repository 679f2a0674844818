"""pycore.desk.check.mishap: what is offered with the advice."""

import pytest

from pycore.reading.mishap import MISHAPS
from tests.unit.desk.asked import ask, refusal


@pytest.mark.parametrize("mishap", MISHAPS)
def test_what_is_offered(mishap: str) -> None:
    got, row = ask("advise_mishap", {"mishap": mishap}), MISHAPS[mishap]
    assert (got["state"], got["reason"], got["record"]) == (row.state, row.reason, row.record)
    assert got["rows"][0]["part"] == "stop"


def test_a_mishap_that_the_table_does_not_know_is_refused() -> None:
    error = refusal("advise_mishap", {"mishap": "ran_away"})
    assert (error["code"], error["path"]) == ("not_allowed", "body.mishap")
