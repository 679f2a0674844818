"""pycore.sheets.qr: read again by another library; on paper in tests/browser."""

import subprocess
import sys

import numpy as np
import pytest
import zxingcpp

from pycore.sheets.qr import QUIET_SQUARES, link_of, square_code
from web.build.paths import ROOT


def picture(rows: list[list[bool]], scale: int = 6) -> np.ndarray:
    """The squares in black on white with the light edge around them."""
    dark = np.pad(np.array(rows, dtype=np.uint8), QUIET_SQUARES)
    return ((1 - dark) * 255).repeat(scale, 0).repeat(scale, 1).astype(np.uint8)


@pytest.mark.parametrize(
    "address",
    [
        "https://depot.example/",
        "https://depot.example/pailwright/",
        "http://localhost:8123/",
        "https://depot.example/" + "a" * 97,
    ],
)
def test_the_code_is_read_by_an_independent_reader(address: str) -> None:
    link = link_of(address, "7K3F4")
    (found,) = zxingcpp.read_barcodes(picture(square_code(link)))
    assert found.text == link
    assert found.text.endswith("#m=7K3F4")
    assert found.ec_level == "Q"


def test_a_quarter_may_be_lost() -> None:
    rows = square_code(link_of("https://depot.example/pailwright/", "7K3F4"))
    image = picture(rows)
    # A blot over a tenth of the code, away from the three finder squares.
    size = image.shape[0]
    image[size // 2 : size // 2 + size // 3, size // 2 : size // 2 + size // 4] = 0
    (found,) = zxingcpp.read_barcodes(image)
    assert found.text.endswith("#m=7K3F4")


@pytest.mark.parametrize("module", ["segno", "pycore.desk.sheets.drawing", "pycore.sheets.svg"])
def test_what_prints_is_not_loaded_before_it_is_needed(module: str) -> None:
    code = f"import sys, pycore.desk; sys.exit({module!r} in sys.modules)"
    done = subprocess.run([sys.executable, "-c", code], cwd=ROOT, check=False, timeout=60)
    assert done.returncode == 0
