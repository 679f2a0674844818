"""Short codes of machines for labels: four characters and a check character.

Source of the method: weighted sums modulo a prime find every single wrong character and every
swap of two characters, as in ISO/IEC 7064 and in the ISBN-10 (from memory); here the modulus is
31, the number of symbols, so that the check character is one of them.
"""

from __future__ import annotations

from pycore.quantity.fault import Fault

# No I, L, O, 0, 1: they are mistaken for one another, in print and by hand.
SYMBOLS = "23456789ABCDEFGHJKMNPQRSTUVWXYZ"
# Few enough to type with gloves; 31**4 codes are far more than any shop has machines.
PLACES = 4
_FORM = "4 characters of 2-9, A-Z without I, L, O, and a check character"


def check_character(characters: str) -> str:
    """The check character of four symbols: the sum of place times symbol, modulo 31.

    Error: ``wrong_form`` for anything else than four of the 31 symbols in upper case.

    >>> check_character("7K3M")
    'Q'
    """
    if len(characters) != PLACES or any(sign not in SYMBOLS for sign in characters):
        raise Fault("wrong_form", "code", characters[:80], {"type": _FORM})
    total = sum(place * SYMBOLS.index(sign) for place, sign in enumerate(characters, 1))
    return SYMBOLS[total % len(SYMBOLS)]


def read_code(text: str, path: str) -> str:
    """A typed or scanned code in its one spelling: upper case, no space, no hyphen.

    Errors: ``wrong_form`` where it is not five of the symbols; ``wrong_check`` where the check
    character does not fit, so that one character is wrong or two are swapped.

    >>> read_code("7k3m-q", "code")
    '7K3MQ'
    """
    plain = text.replace(" ", "").replace("-", "")
    code = plain.upper() if plain.isascii() else plain
    if len(code) != PLACES + 1 or any(sign not in SYMBOLS for sign in code):
        raise Fault("wrong_form", path, text[:80], {"type": _FORM})
    if check_character(code[:PLACES]) != code[PLACES]:
        raise Fault("wrong_check", path, text[:80])
    return code
