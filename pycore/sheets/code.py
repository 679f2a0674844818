"""A machine's short code: four characters and a check character, typed with gloves on.

31 signs: digits and capital letters without 0, 1, I, L and O, which print alike. The check is a
weighted sum modulo 31, the number of signs. 31 is prime and the five weights differ and are none
of them 0, so one wrong sign changes the sum by weight × difference, a swap of two by difference
of weights × difference of signs, and neither can be a multiple of 31. The idea is that of ISBN-10
(ISO 2108:2005, annex), there with 11.
"""

from __future__ import annotations

from itertools import combinations, product

from pycore.quantity.fault import Fault

ALPHABET = "23456789ABCDEFGHJKMNPQRSTUVWXYZ"
_WEIGHTS = (5, 4, 3, 2, 1)
# Four characters: 31^4 codes, more than any shop has machines, and still typed with gloves.
CODE_LENGTH = 4
MOST_NUMBER = len(ALPHABET) ** CODE_LENGTH - 1

# Signs that are taken for each other on a worn label; those outside the alphabet have no value.
_LOOK_ALIKE = ("5S", "2Z", "8B", "0OQD", "1ILJ7", "UV", "6G")
_PASSED_OVER = str.maketrans("", "", " -\u2010\u2011\u2013\u00a0\u202f")


def _sum(signs: str) -> int:
    return sum(w * ALPHABET.index(s) for w, s in zip(_WEIGHTS, signs, strict=False))


def with_check(four: str) -> str:
    """The four characters with their check character behind them.

    Error: ``ValueError`` when they are not four signs of the alphabet.

    >>> with_check("7K3F")
    '7K3F4'
    """
    if len(four) != CODE_LENGTH or any(sign not in ALPHABET for sign in four):
        raise ValueError(f"a code is {CODE_LENGTH} of {ALPHABET}, got {four!r}")
    return four + ALPHABET[-_sum(four) % len(ALPHABET)]


def code_of(code_number: int) -> str:
    """The code of a number from 0 to 923,520, check character included.

    Error: ``out_of_range`` at ``code_number``.

    >>> code_of(0), code_of(MOST_NUMBER)
    ('22222', 'ZZZZG')
    """
    if not 0 <= code_number <= MOST_NUMBER:
        limit = {"minimum": 0, "maximum": MOST_NUMBER}
        raise Fault("out_of_range", "code_number", code_number, limit)
    signs = ""
    for _ in range(CODE_LENGTH):
        code_number, place = divmod(code_number, len(ALPHABET))
        signs = ALPHABET[place] + signs
    return with_check(signs)


def is_code(text: str) -> bool:
    """Whether a text is five signs of the alphabet whose check fits."""
    is_five = len(text) == len(_WEIGHTS) and all(sign in ALPHABET for sign in text)
    return is_five and _sum(text) % len(ALPHABET) == 0


def _variants(signs: str) -> list[str]:
    """Codes that fit and differ from ``signs`` by look-alikes, those with fewest changes."""
    choices = []
    for sign in signs:
        alike = next((group for group in _LOOK_ALIKE if sign in group), sign)
        choices.append([s for s in alike if s in ALPHABET and s != sign])
    unreadable = {i for i, sign in enumerate(signs) if sign not in ALPHABET}
    for changes in range(max(1, len(unreadable)), len(signs) + 1):
        found = set()
        for places in combinations(range(len(signs)), changes):
            if unreadable <= set(places):
                for picked in product(*(choices[i] for i in places)):
                    tried = list(signs)
                    for i, sign in zip(places, picked, strict=True):
                        tried[i] = sign
                    found.add("".join(tried))
        fitting = sorted(filter(is_code, found))
        if fitting:
            return fitting
    return []


def read_code(text: str, path: str) -> str:
    """The code that a person typed or a label carries; capitals, spaces and hyphens do not matter.

    Errors: ``empty``; ``not_a_code`` when it is not five letters or digits; ``code_mismatch`` when
    the check does not fit. A sign that prints like another is never changed in silence: the codes
    that it may have been stand in the limit as ``allowed``, for the person to choose.

    >>> read_code("7k3f-4", "code")
    '7K3F4'
    >>> read_code("7K3FS", "code")
    Traceback (most recent call last):
    pycore.quantity.fault.Fault: code: the code does not fit its check character; got '7K3FS'
    """
    signs = text.translate(_PASSED_OVER).upper()
    if not signs:
        raise Fault("empty", path, text)
    is_plain = all(sign.isascii() and sign.isalnum() for sign in signs)
    if len(signs) != len(_WEIGHTS) or not is_plain:
        raise Fault("not_a_code", path, text, {"most": len(_WEIGHTS), "least": len(_WEIGHTS)})
    if is_code(signs):
        return signs
    meant = _variants(signs)
    raise Fault("code_mismatch", path, text, {"allowed": meant} if meant else {})


def shown_code(code: str) -> str:
    """The code as it is printed: the check character behind a hyphen.

    >>> shown_code("7K3F4")
    '7K3F-4'
    """
    return f"{code[:CODE_LENGTH]}-{code[CODE_LENGTH:]}"
