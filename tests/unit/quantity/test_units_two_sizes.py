"""pycore.quantity.units: gallon, quart, pint and ounce have two sizes under one name."""

import pytest

from pycore.quantity.fault import Fault
from pycore.quantity.units import unit_named

WORDS = [
    ("gal", "gal"), ("gals", "gal"), ("gallon", "gal"), ("gallons", "gal"),
    ("qt", "qt"), ("qts", "qt"), ("quart", "qt"), ("quarts", "qt"),
    ("pt", "pt"), ("pts", "pt"), ("pint", "pt"), ("pints", "pt"),
    ("fl oz", "fl oz"), ("floz", "fl oz"), ("fluid ounce", "fl oz"), ("fluid ounces", "fl oz"),
    ("fluidounce", "fl oz"), ("fluidounces", "fl oz"),
]  # fmt: skip


@pytest.mark.parametrize("system", ["US", "imp"])
@pytest.mark.parametrize(("word", "name"), WORDS)
def test_word_with_its_system(system: str, word: str, name: str) -> None:
    for spelling in (f"{system} {word}", f"{system}{word}", f"{system} {word}".upper()):
        assert unit_named(spelling, "volume", "here").name == f"{system} {name}"


@pytest.mark.parametrize(
    ("word", "name"),
    [*WORDS, ("oz", "fl oz"), ("ounce", "fl oz"), ("ounces", "fl oz"), ("Gallons", "gal"),
     ("gal.", "gal"), ("oz.", "fl oz"), ("fl. oz.", "fl oz")],
)  # fmt: skip
def test_bare_word_is_refused_with_both_meanings(word: str, name: str) -> None:
    with pytest.raises(Fault) as caught:
        unit_named(word, "volume", "here")
    assert (caught.value.code, caught.value.path, caught.value.got) == (
        "ambiguous_unit", "here", word,
    )  # fmt: skip
    assert caught.value.limit == {"allowed": [f"US {name}", f"imp {name}"]}
