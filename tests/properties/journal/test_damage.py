"""Any cut and any damaged byte of a file is found; what is whole is taken (F40, F41, P10)."""

from random import Random

import pytest

from pycore.journal.file import OFFICE, read_file
from pycore.quantity.fault import Fault
from tests.bench.journal import log_of
from tests.phones import Phone, check
from tests.properties.journal.shop import merge

SMALL = Phone("a")
SMALL.save("check", {**check(), "remarks": "Späne, 21 °C"}, 60)
SMALL.save("note", {"text": "Emulsion grün 😀"}, 120, machine="")
SMALL_BYTES = SMALL.export().encode()
LARGE = log_of("large", 200)
LARGE_BYTES = LARGE.export().encode()
FLIPS = 1_000
PLACES = 100


def text_of(given: bytes) -> str:
    """A file's text as the command line reads it."""
    return given.decode("utf-8", "surrogateescape")


def whole_lines(given: bytes, phone: Phone) -> set[str]:
    """Entries that came through unharmed."""
    return set(text_of(given).split("\n")) & set(phone.lines)


def expect_found(given: bytes, phone: Phone) -> None:
    """The file is refused, or says what is wrong; it yields its whole lines and nothing else."""
    done = merge([text_of(given)])
    (file,) = done.files
    if file.refused is not None:
        # A digit of the format that flips upwards is a newer file: it stays where it is, as it is.
        assert file.refused.code == "file_newer" or whole_lines(given, phone) == set()
        assert done.union.lines == []
        return
    assert file.findings
    assert {entry.line for entry in done.union.entries} == whole_lines(given, phone)


def test_the_files_themselves_are_whole() -> None:
    for given in (SMALL_BYTES, LARGE_BYTES):
        assert merge([text_of(given)]).files[0].findings == ()


@pytest.mark.parametrize("part", range(8))
def test_every_cut_of_a_small_file(part: int) -> None:
    for end in range(part, len(SMALL_BYTES), 8):
        expect_found(SMALL_BYTES[:end], SMALL)


def test_cuts_of_a_large_file_and_the_number_missing() -> None:
    random = Random(2026)
    for _ in range(PLACES):
        given = LARGE_BYTES[: random.randrange(1000, len(LARGE_BYTES))]
        expect_found(given, LARGE)
        missing = read_file(text_of(given), OFFICE).missing
        assert missing == LARGE.seq - len(whole_lines(given, LARGE))


def test_cuts_at_the_beginning() -> None:
    for start in range(1, len(SMALL_BYTES), 7):
        expect_found(SMALL_BYTES[start:], SMALL)


@pytest.mark.parametrize("bit", range(8))
def test_every_flipped_bit_of_a_small_file(bit: int) -> None:
    for place in range(len(SMALL_BYTES)):
        damaged = bytearray(SMALL_BYTES)
        damaged[place] ^= 1 << bit
        expect_found(bytes(damaged), SMALL)


def test_a_thousand_flipped_bits_of_a_large_file() -> None:
    random = Random(2026)
    found = 0
    for _ in range(FLIPS):
        damaged = bytearray(LARGE_BYTES)
        damaged[random.randrange(len(damaged))] ^= 1 << random.randrange(8)
        try:
            file = read_file(text_of(bytes(damaged)), OFFICE)
        except Fault:
            found += 1
            continue
        found += bool(file.findings)
    assert found == FLIPS


def test_every_byte_replaced_by_another_one() -> None:
    random = Random(2026)
    for place in range(len(SMALL_BYTES)):
        damaged = bytearray(SMALL_BYTES)
        damaged[place] = random.choice([b for b in range(256) if b != damaged[place]])
        expect_found(bytes(damaged), SMALL)
