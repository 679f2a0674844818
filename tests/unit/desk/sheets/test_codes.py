"""pycore.desk.sheets.codes."""

from tests.unit.desk.lathe import ask, refusal


def test_codes_are_made_and_read() -> None:
    made = ask("make_code", {"code_number": 149_723})
    assert made["printed"] == f"{made['code'][:4]}-{made['code'][4]}"
    assert ask("read_code", {"text": made["printed"].lower()}) == made
    assert refusal("make_code", {"code_number": 923_521})["code"] == "out_of_range"
    assert refusal("read_code", {"text": "#m=../../x"})["code"] == "not_a_code"


def test_a_whole_number_written_as_a_fraction_has_the_same_code() -> None:
    assert ask("make_code", {"code_number": -0.0}) == ask("make_code", {"code_number": 0})
