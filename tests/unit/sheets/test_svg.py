"""pycore.sheets.svg: well-formed whatever is written, in true millimetres."""

import pytest

from pycore.sheets.svg import Drawing, escaped, printable
from tests.unit.sheets.drawn import NAMESPACE, root_of, texts

HOSTILE = [
    "<script>alert(1)</script>",
    "</text></svg><img src=x onerror=alert(1)>",
    '" onload="alert(1)',
    "]]>&amp;&#x3c;",
    "\x00\x07\x1b[31m",
    "\u202egnihton\u202c",
    "\ud800 half",
    "a\tb\nc",
    "'; DROP TABLE; --",
    "{0.__class__}",
]


@pytest.mark.parametrize("text", HOSTILE)
def test_hostile_text_stays_text(text: str) -> None:
    drawing = Drawing(100, 50)
    drawing.text((10, 10), text, 4)
    drawing.line((0, 0), (1, 1), mark=text)
    root = root_of(drawing.svg())
    names = {element.tag.removeprefix(NAMESPACE) for element in root.iter()}
    assert names == {"svg", "g", "text", "line"}
    assert not any(name.startswith("on") for element in root.iter() for name in element.attrib)
    (shown,) = texts(drawing.svg())
    assert "\u202e" not in shown
    assert "\x00" not in shown


def test_a_clean_text_is_shown_as_it_is() -> None:
    text = 'Rädersatz & <Tor 7> "Nord" 中文'
    drawing = Drawing(10, 10)
    drawing.text((0, 5), text, 4)
    assert texts(drawing.svg()) == [text]


def test_unprintable_signs_are_seen() -> None:
    assert printable("a\x07b\u202ec  d\n") == "a\ufffdb\ufffdc d"
    assert escaped("\t<'>") == " &lt;&#39;&gt;"


def test_a_number_stays_with_its_unit_in_a_tidy_text() -> None:
    # Printed sheets wrap a text at its spaces: "100" and "%" once came apart.
    assert (
        printable(" Print at\n100\u00a0%, 1\u202f000\u00a0mm ")
        == "Print at 100\u00a0%, 1\u202f000\u00a0mm"
    )


def test_one_unit_is_one_millimetre() -> None:
    root = root_of(Drawing(188, 275.5).svg())
    assert (root.get("width"), root.get("height")) == ("188mm", "275.5mm")
    assert root.get("viewBox") == "0 0 188 275.5"


def test_hatching_stays_inside() -> None:
    drawing = Drawing(100, 100)
    drawing.hatch((10, 20), (30, 8))
    (path,) = root_of(drawing.svg()).iter(f"{NAMESPACE}path")
    numbers = [
        tuple(map(float, pair.split()))
        for stroke in str(path.get("d")).split("M")[1:]
        for pair in stroke.split("L")
    ]
    assert len(numbers) > 20
    assert all(10 <= x <= 40 and 20 <= y <= 28 for x, y in numbers)


def test_squares_are_joined_in_rows() -> None:
    drawing = Drawing(10, 10)
    drawing.squares((1, 2), 0.5, [[True, True, False], [False, False, True]])
    (path,) = root_of(drawing.svg()).iter(f"{NAMESPACE}path")
    assert path.get("d") == "M1 2h1v0.5h-1zM2 2.5h0.5v0.5h-0.5z"
