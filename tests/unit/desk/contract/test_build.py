"""pycore.desk.contract.build: messages to frozen dataclasses and back."""

from dataclasses import dataclass, is_dataclass

from pycore.desk.contract.build import built, plain


@dataclass(frozen=True)
class Inner:
    litres: float
    note: str | None = None


@dataclass(frozen=True)
class Outer:
    inner: Inner
    many: list[Inner]
    maybe: Inner | None = None
    count: int = 0


MESSAGE = {"inner": {"litres": 2}, "many": [{"litres": 1.5, "note": "x"}], "count": 3}


def test_whole_numbers_become_floats_where_a_quantity_is_meant() -> None:
    outer = built(Outer, MESSAGE)
    assert isinstance(outer.inner.litres, float)
    assert isinstance(outer.count, int)
    assert is_dataclass(outer.many[0])
    assert outer.maybe is None


def test_a_count_with_a_point_is_a_whole_number() -> None:
    """The schema takes 3.0 where a whole number is meant, as JSON Schema says."""
    count = built(Outer, {**MESSAGE, "count": -0.0}).count
    assert (count, str(count)) == (0, "0")
    assert isinstance(built(Outer, {**MESSAGE, "count": 3.0}).count, int)


def test_there_and_back() -> None:
    assert plain(built(Outer, MESSAGE)) == MESSAGE


def test_absent_stays_absent() -> None:
    assert "maybe" not in plain(built(Outer, MESSAGE))
    assert plain((1, [None, "a"], {"b": None})) == [1, [None, "a"], {"b": None}]
