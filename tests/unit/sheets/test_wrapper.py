"""pycore.sheets.wrapper: the file that is printed; printed for real in tests/browser."""

import re

from pycore.sheets.svg import Drawing
from pycore.sheets.wrapper import print_file


def test_one_wrapper_for_each_page_smaller_than_what_is_printable() -> None:
    pages = [Drawing(188, 275).svg()] * 3
    file = print_file(pages, (210, 297), "dip_scale")
    assert file.count('<div class="page">') == file.count("<svg ") == 3
    assert "@page{size:210mm 297mm;margin:10mm}" in file
    wide, high = map(float, re.findall(r"\.page\{width:([\d.]+)mm;height:([\d.]+)mm", file)[0])
    assert (wide, high) == (188, 275)
    assert wide < 210 - 20
    assert high < 297 - 20
    assert "overflow:hidden" in file


def test_the_title_is_escaped_and_nothing_is_fetched() -> None:
    file = print_file([], (210, 297), "<script>x</script>")
    assert "<script" not in file
    assert not re.search(r"(src|href)=", file)
