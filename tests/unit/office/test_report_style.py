"""pycore.office.report_style: both themes name the same colours, and what is used is named."""

import re

from pycore.office.report_style import STYLE


def test_every_colour_that_is_used_has_a_value_in_both_themes() -> None:
    used = set(re.findall(r"var\((--[a-z0-9-]+)\)", STYLE))
    light, dark = re.findall(r":root\{(.*?)\}", STYLE)[:2]
    named = set(re.findall(r"(--[a-z0-9-]+):", light))
    assert used <= named
    # The panel's own colours are the same in both.
    assert named - set(re.findall(r"(--[a-z0-9-]+):", dark)) == set()


def test_braces_close_and_nothing_is_fetched() -> None:
    assert STYLE.count("{") == STYLE.count("}")
    assert "url(" not in STYLE
    assert "@import" not in STYLE
