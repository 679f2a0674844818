"""pycore.office.columns: typed numbers as numbers, and as they were typed."""

from pycore.office.columns import BUCKET_COLUMNS, COLUMNS_OF, typed_text
from tests.phones import typed


def test_a_number_is_told_as_it_was_typed_too() -> None:
    assert typed_text(typed("2", "in")) == "2 in"


def test_number_that_cannot_be_read_stays_as_typed() -> None:
    columns = {column.name: column for column in COLUMNS_OF["check"]}
    content = {"ph": typed("about 9", "1")}
    assert columns["ph"].of(content) is None
    assert columns["ph_as_typed"].of(content) == "about 9 1"


def test_no_table_has_a_column_twice() -> None:
    for columns in (*COLUMNS_OF.values(), BUCKET_COLUMNS):
        names = [column.name for column in columns]
        assert len(names) == len(set(names))
        assert all(column.meaning for column in columns)
