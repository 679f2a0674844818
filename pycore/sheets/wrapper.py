"""The file that a browser prints: a page of paper for each drawing, clipped so nothing shrinks."""

from __future__ import annotations

from collections.abc import Sequence

from pycore.sheets.paper import MARGIN_MM, SLACK_MM
from pycore.sheets.svg import escaped


def print_file(pages: Sequence[str], page_mm: tuple[float, float], title: str) -> str:
    """The whole HTML file for the SVG pages of one sheet on paper of this width and height in mm.

    Each page lies in a wrapper that is a little smaller than the printable part and clips: what
    sticks out of a page would make some browsers shrink all of it, and millimetres with it.
    """
    page_wide, page_high = page_mm
    wide, high = (side - 2 * (MARGIN_MM + SLACK_MM) for side in page_mm)
    style = (
        f"@page{{size:{page_wide:g}mm {page_high:g}mm;margin:{MARGIN_MM:g}mm}}"
        "html,body{margin:0;background:#fff}"
        f".page{{width:{wide:g}mm;height:{high:g}mm;max-width:100%;overflow:hidden;"
        "break-after:page;break-inside:avoid}"
        ".page:last-child{break-after:auto}svg{display:block}"
    )
    body = "".join(f'<div class="page">{page}</div>' for page in pages)
    return (
        '<!doctype html><html><head><meta charset="utf-8">'
        f"<title>{escaped(title)}</title><style>{style}</style></head><body>{body}</body></html>\n"
    )
