"""pycore.sheets.code: every single wrong sign and every swap is caught."""

import itertools
import random

import numpy as np
import pytest

from pycore.quantity.fault import Fault
from pycore.sheets.code import (
    ALPHABET,
    CODE_LENGTH,
    MOST_NUMBER,
    code_of,
    is_code,
    read_code,
    shown_code,
    with_check,
)

COUNT = len(ALPHABET)
SAMPLE = [code_of(number) for number in random.Random(31).sample(range(MOST_NUMBER + 1), 400)]


def every_code() -> np.ndarray:
    """All codes as rows of five numbers, the check from the function itself for a sample only."""
    four = np.array(list(itertools.product(range(COUNT), repeat=CODE_LENGTH)), dtype=np.int16)
    check = -(four @ np.array([5, 4, 3, 2], dtype=np.int16)) % COUNT
    return np.column_stack([four, check])


def test_alphabet_is_a_prime_number_of_signs_without_those_that_print_alike() -> None:
    assert COUNT == 31
    assert all(COUNT % divisor for divisor in range(2, COUNT))
    assert not set("01ILO") & set(ALPHABET)
    assert list(ALPHABET) == sorted(set(ALPHABET))


def test_the_table_of_all_codes_is_that_of_the_function() -> None:
    codes = every_code()
    assert len(codes) == MOST_NUMBER + 1 == 923_521
    for number in range(0, MOST_NUMBER + 1, 997):
        assert "".join(ALPHABET[i] for i in codes[number]) == code_of(number)


def test_every_wrong_sign_and_every_swap_in_all_codes_is_caught() -> None:
    codes = every_code()
    weights = np.array([5, 4, 3, 2, 1], dtype=np.int16)
    columns = [np.ascontiguousarray(codes[:, place]) for place in range(5)]
    sums = sum(weight * column for weight, column in zip(weights, columns, strict=True))
    assert not (sums % COUNT).any()
    for place, other in itertools.product(range(5), range(1, COUNT)):
        wrong = (columns[place] + other) % COUNT
        assert ((sums + weights[place] * (wrong - columns[place])) % COUNT).all()
    for first, second in itertools.combinations(range(5), 2):
        change = columns[second] - columns[first]
        swapped = sums + (weights[first] - weights[second]) * change
        assert ((swapped % COUNT) != 0)[change != 0].all()


@pytest.mark.parametrize("code", SAMPLE[:60])
def test_the_function_itself_catches_every_wrong_sign_and_every_swap(code: str) -> None:
    assert is_code(code)
    for place, sign in itertools.product(range(5), ALPHABET):
        wrong = code[:place] + sign + code[place + 1 :]
        assert is_code(wrong) == (sign == code[place])
    for first, second in itertools.combinations(range(5), 2):
        swapped = list(code)
        swapped[first], swapped[second] = swapped[second], swapped[first]
        assert is_code("".join(swapped)) == (code[first] == code[second])


@pytest.mark.parametrize("code", SAMPLE[:60])
def test_a_code_is_read_as_people_type_it(code: str) -> None:
    for typed in (code, code.lower(), shown_code(code), f" {code[:2]} {code[2:]} ",
                  shown_code(code).replace("-", "\u2011")):  # fmt: skip
        assert read_code(typed, "code") == code


@pytest.mark.parametrize("code", [code for code in SAMPLE if set(code) & set("58S2ZB")])
def test_look_alikes_are_refused_and_offered_never_changed(code: str) -> None:
    alike = {"5": "S", "S": "5", "2": "Z", "Z": "2", "8": "B", "B": "8"}
    place = next(i for i, sign in enumerate(code) if sign in alike)
    typed = code[:place] + alike[code[place]] + code[place + 1 :]
    with pytest.raises(Fault) as caught:
        read_code(typed, "body.text")
    assert (caught.value.code, caught.value.path) == ("code_mismatch", "body.text")
    assert code in caught.value.limit["allowed"]


def test_a_sign_outside_the_alphabet_is_offered_what_it_looks_like() -> None:
    code = next(code for code in SAMPLE if "Q" in code or "D" in code)
    place = next(i for i, sign in enumerate(code) if sign in "QD")
    with pytest.raises(Fault) as caught:
        read_code(code[:place] + "0" + code[place + 1 :], "code")
    assert code in caught.value.limit["allowed"]


@pytest.mark.parametrize("text", ["7K3F", "7K3F45", "7K3F?", "７K3F4", "7K3Ä4", "#m=7K"])
def test_other_texts_are_no_code(text: str) -> None:
    with pytest.raises(Fault) as caught:
        read_code(text, "code")
    assert caught.value.code == "not_a_code"


@pytest.mark.parametrize("text", ["", " ", "--"])
def test_nothing_typed(text: str) -> None:
    with pytest.raises(Fault) as caught:
        read_code(text, "code")
    assert caught.value.code == "empty"


@pytest.mark.parametrize("number", [-1, MOST_NUMBER + 1])
def test_numbers_outside(number: int) -> None:
    with pytest.raises(Fault) as caught:
        code_of(number)
    assert caught.value.code == "out_of_range"


@pytest.mark.parametrize("four", ["7K3", "7K3FF", "7K3O", "7k3f"])
def test_only_four_signs_get_a_check(four: str) -> None:
    with pytest.raises(ValueError, match="a code is 4 of"):
        with_check(four)
