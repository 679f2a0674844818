"""pycore.journal.amend at a chain as long as a log; beside its other tests it would take a mutant
run most of its time."""

from tests.phones import Phone, check
from tests.unit.journal.reading import standing_of


def test_a_long_chain_of_withdrawals_is_no_burden() -> None:
    one, other = Phone("a"), Phone("b")
    target = one.save("check", check("342"), 0)
    # Walking every link anew would take a thousand million steps.
    for _ in range(40_001):
        body = {"retracts": target, "reason": "wrong machine"}
        target = other.save("withdrawal", body, 950, machine="")
    assert standing_of(one, other)[one.hash_of(1)].standing == "withdrawn"
