"""The square code of a machine's link: ISO/IEC 18004, by the library ``segno``."""

from __future__ import annotations

# Light squares around the code that a reader needs: ISO/IEC 18004, 6.3.8.
QUIET_SQUARES = 4
# A phone's camera reads squares of this size from an arm's length; common practice, no source.
LEAST_SQUARE_MM = 0.8


def link_of(address: str, code: str) -> str:
    """The link that a scanned label opens: the app's address and the code as its fragment.

    >>> link_of("https://depot.example/pailwright/", "7K3F4")
    'https://depot.example/pailwright/#m=7K3F4'
    """
    return f"{address}#m={code}"


def square_code(text: str) -> list[list[bool]]:
    """Rows of squares, true where dark, without the light edge; a quarter of it may be lost.

    Level Q. The library is imported only here: it brings some sixty modules, and most visits
    print no label.
    """
    import segno

    made = segno.make_qr(text, error="q", boost_error=False)
    return [[bool(square) for square in row] for row in made.matrix]
