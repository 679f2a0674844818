"""Writes pycore's own sentences, of sheets and of the report, from ``shared/words``."""

import json
from typing import Any

PREFIX = "sheet."
# Of the office's report alone: the phone does not carry these.
REPORT_PREFIX = "report."
# Words of the app that the report says too, under their whole key.
REPORT_ALSO = ("stop_reason.", "trend.reason.")
LONGEST_LINE = 100

HEAD = '''"""Generated from shared/words/{file} by `python3 -m web contract`. Do not edit."""

# ruff: noqa: E501

from collections.abc import Mapping
from types import MappingProxyType

WORDS: Mapping[str, str] = MappingProxyType(
    {{
'''
FOOT = "    }\n)\n"


def words_module(
    words: dict[str, Any], prefix: str, also: tuple[str, ...] | None = None, file: str = "en.json"
) -> str:
    """The text of the module with the sentences below a prefix, laid out as the formatter would.

    also: keys that begin with one of them come too, as they are.
    """
    found = {key[len(prefix) :]: text for key, text in words.items() if key.startswith(prefix)}
    if also is not None:
        found |= {key: text for key, text in words.items() if key.startswith(also)}
    return HEAD.format(file=file) + "".join(_row(key, text) for key, text in found.items()) + FOOT


def _row(key: str, text: str) -> str:
    name, value = json.dumps(key), json.dumps(text, ensure_ascii=False)
    line = f"        {name}: {value},\n"
    if len(line) <= LONGEST_LINE + 1:
        return line
    return f"        {name}: (\n            {value}\n        ),\n"
