"""pycore.sheets.qr: labels blurred, grey, turned and stained; read by another library.

The wear is made up and no study of real labels: it shows that a label is read rightly or not at
all, and how far it may go.
"""

import random

import numpy as np
import pytest
import zxingcpp
from scipy.ndimage import gaussian_filter, rotate

from pycore.sheets.code import MOST_NUMBER, code_of
from pycore.sheets.qr import link_of, square_code
from tests.unit.sheets.test_qr import picture

SEED = 50
LABELS = 60
ADDRESS = "https://depot.example/pailwright/"


def labels() -> list[tuple[str, np.ndarray]]:
    """Links by chance, each with its code in black on white."""
    numbers = random.Random(SEED).sample(range(MOST_NUMBER + 1), LABELS)
    links = [link_of(ADDRESS, code_of(number)) for number in numbers]
    return [(link, picture(square_code(link))) for link in links]


def _clean(image: np.ndarray, _: np.random.Generator) -> np.ndarray:
    return image.astype(float)


def _blurred(image: np.ndarray, _: np.random.Generator) -> np.ndarray:
    return gaussian_filter(image.astype(float), 2.0)


def _grey(image: np.ndarray, chance: np.random.Generator) -> np.ndarray:
    return 90 + image * 0.3 + chance.normal(0, 12, image.shape)


def _turned(image: np.ndarray, chance: np.random.Generator) -> np.ndarray:
    return rotate(image.astype(float), chance.uniform(-40, 40), cval=255)


def _stained(image: np.ndarray, chance: np.random.Generator) -> np.ndarray:
    found, size = image.astype(float), image.shape[0]
    for _ in range(12):
        x, y = chance.integers(0, size - size // 12, 2)
        found[x : x + size // 12, y : y + size // 12] = 20
    return found


@pytest.mark.parametrize(
    ("wear", "least_share"), [(_clean, 1.0), (_blurred, 0.99), (_grey, 0.7), (_turned, 0.9)]
)
def test_a_worn_label_is_read(wear: object, least_share: float) -> None:
    assert _tried(wear) >= least_share


def test_a_stained_label_is_read_rightly_or_not_at_all() -> None:
    # Stains over a twelfth of its side, twelve of them; how many can be read is not promised.
    assert _tried(_stained) < 1


def _tried(wear: object) -> float:
    """The share of labels that is read; none is read as another one."""
    chance, read = np.random.default_rng(SEED), 0
    for link, image in labels():
        worn = wear(image, chance)  # type: ignore[operator]
        found = zxingcpp.read_barcodes(np.clip(worn, 0, 255).astype(np.uint8))
        assert [one.text for one in found] in ([], [link])
        read += len(found)
    return read / LABELS
