"""pycore.journal.order."""

from dataclasses import dataclass

import pytest

from pycore.journal.order import Latest, in_order, latest


@dataclass(frozen=True)
class Stone:
    """An entry as far as order is concerned."""

    place: tuple[str, int, str]
    measured_s: int
    strand: str
    earlier: tuple[str, ...] = ()


def stone(name: str, measured_s: int) -> Stone:
    """``a2``: the second one of log a."""
    return Stone((name[0], int(name[1:]), name), measured_s, name[0])


def nobody(_: frozenset[str]) -> frozenset[str] | None:
    return None


def names(stones: list[Stone]) -> list[str]:
    return [one.place[2] for one in stones]


def test_by_time_between_logs_and_by_number_inside_one() -> None:
    stones = [stone("b1", 50), stone("a2", 10), stone("a1", 40), stone("a3", 60)]
    assert names(in_order(stones)) == ["a1", "a2", "b1", "a3"]


def test_equal_times_by_log() -> None:
    assert names(in_order([stone("b1", 5), stone("a1", 5)])) == ["a1", "b1"]


def test_one_log_is_certain_whatever_its_clock() -> None:
    found = latest([stone("a1", 90), stone("a2", 10)], frozenset({"a2"}), nobody)
    assert found == Latest("a2", ())
    assert found.is_certain


def test_the_last_of_a_log_is_that_of_the_highest_number() -> None:
    stones = [stone("a2", 10), stone("a3", 20), stone("a1", 90)]
    assert latest(stones, frozenset(), nobody) == Latest("a3", ())


def test_equal_times_are_uncertain_and_begin_with_the_first_log() -> None:
    for stones in ([stone("a1", 5), stone("b1", 5)], [stone("b1", 5), stone("a1", 5)]):
        assert latest(stones, frozenset(), nobody) == Latest("a1", ("b1",))


def test_a_decision_about_one_line_alone_changes_nothing() -> None:
    for chosen in (frozenset({"a1"}), frozenset[str]()):
        assert latest([stone("a1", 5)], frozenset(), lambda _, c=chosen: c) == Latest("a1", ())


# Ten minutes: common practice, no source.
@pytest.mark.parametrize(("behind_s", "others"), [(601, ()), (600, ("b1",))])
def test_ten_minutes_between_logs(behind_s: int, others: tuple[str, ...]) -> None:
    for at_s in (0, 90_000):
        stones = [stone("b1", at_s), stone("a1", at_s + behind_s)]
        assert latest(stones, frozenset(), nobody) == Latest("a1", others)


@pytest.mark.parametrize("flagged", ["a1", "b1"])
def test_a_doubtful_clock_on_either_side_makes_it_uncertain(flagged: str) -> None:
    found = latest([stone("b1", 0), stone("a1", 9000)], frozenset({flagged}), nobody)
    assert found == Latest("a1", ("b1",))


def test_only_the_doubtful_log_remains_beside_the_latest() -> None:
    stones = [stone("a1", 9000), stone("b1", 0), stone("c1", 100)]
    assert latest(stones, frozenset({"c1"}), nobody) == Latest("a1", ("c1",))


def test_what_a_person_decided_is_certain() -> None:
    stones = [stone("b1", 0), stone("a1", 1)]
    asked: list[frozenset[str]] = []

    def decided(hashes: frozenset[str]) -> frozenset[str]:
        asked.append(hashes)
        return frozenset({"b1"})

    assert latest(stones, frozenset(), decided) == Latest("b1", ())
    assert asked == [frozenset({"a1", "b1"})]
    assert latest(stones, frozenset(), lambda _: frozenset({"a1", "b1"})) == Latest("a1", ("b1",))


def test_nothing_has_no_latest() -> None:
    assert latest([], frozenset(), nobody) is None


def test_what_stands_before_a_split_comes_before_both_of_its_parts() -> None:
    # One log: its clock was two hours ahead until it split.
    trunk = Stone(("a", 1, "t1"), 7200, "a")
    here = Stone(("a", 2, "h2"), 100, "h2", ("a",))
    there = Stone(("a", 2, "s2"), 50, "s2", ("a",))
    farther = Stone(("a", 3, "f3"), 20, "f3", ("s2", "a"))
    assert names(in_order([farther, there, here, trunk])) == ["t1", "h2", "s2", "f3"]
    assert names(in_order([farther, trunk])) == ["t1", "f3"]
    assert latest([trunk, here], frozenset(), nobody) == Latest("h2", ())
    assert latest([trunk, farther], frozenset(), nobody) == Latest("f3", ())
    assert latest([trunk], frozenset(), nobody) == Latest("t1", ())


def test_parts_of_one_log_at_one_time_by_number_and_name() -> None:
    parts = [Stone(("a", seq, name), 0, name, ("a",)) for seq, name in ((3, "x"), (2, "z"))]
    assert latest(parts, frozenset(), nobody) == Latest("z", ("x",))
    parts = [Stone(("a", 2, line), 0, name, ("a",)) for line, name in ("py", "qx")]
    assert latest(parts, frozenset(), nobody) == Latest("q", ("p",))
