"""pycore.desk.check.mishap: what is offered with the advice."""

import pytest

from tests.unit.desk.asked import ask, refusal


@pytest.mark.parametrize(
    ("mishap", "state", "record"),
    [
        ("wrong_drum", "stopped", "unknown_addition"),
        ("neat_poured", "on_hold", "unknown_addition"),
        ("lumpy_bucket", "in_use", "note"),
        ("overfilled", "on_hold", "note"),
        ("ran_dry", "stopped", "note"),
        ("split", "stopped", "note"),
        ("cleaner_in_it", "stopped", "additive"),
        ("oil_leak", "watch", "note"),
    ],
)
def test_what_is_offered(mishap: str, state: str, record: str) -> None:
    got = ask("advise_mishap", {"mishap": mishap})
    assert (got["state"], got["record"]) == (state, record)
    assert got["rows"][0]["part"] == "stop"


def test_a_mishap_that_the_table_does_not_know_is_refused() -> None:
    error = refusal("advise_mishap", {"mishap": "ran_away"})
    assert (error["code"], error["path"]) == ("not_allowed", "body.mishap")
