"""Writes ``pycore/sheets/english.py`` from the sheets' sentences in ``shared/words/en.json``."""

import json
from typing import Any

PREFIX = "sheet."
LONGEST_LINE = 100

HEAD = '''"""Generated from shared/words/en.json by `python3 -m web contract`. Do not edit."""

# ruff: noqa: E501

from collections.abc import Mapping
from types import MappingProxyType

WORDS: Mapping[str, str] = MappingProxyType(
    {
'''
FOOT = "    }\n)\n"


def english_module(words: dict[str, Any]) -> str:
    """The text of the module, laid out as the formatter would."""
    return HEAD + "".join(_row(key, text) for key, text in sheet_words(words).items()) + FOOT


def sheet_words(words: dict[str, Any]) -> dict[str, str]:
    """The sentences that sheets print, by their key without the prefix."""
    return {key[len(PREFIX) :]: text for key, text in words.items() if key.startswith(PREFIX)}


def _row(key: str, text: str) -> str:
    name, value = json.dumps(key), json.dumps(text, ensure_ascii=False)
    line = f"        {name}: {value},\n"
    if len(line) <= LONGEST_LINE + 1:
        return line
    return f"        {name}: (\n            {value}\n        ),\n"
