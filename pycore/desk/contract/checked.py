"""A message compared with its schema by the generated validators."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from pycore.desk.contract.build import built
from pycore.desk.contract.reader import Reader
from pycore.desk.contract.records import Typed
from pycore.desk.contract.refusal import SchemaRefusal, fault_from
from pycore.desk.contract.validators import VALIDATORS

# Numbers by which every page and report of a shop counts: where one of them cannot be read, the
# line is refused at once, since none of these could say so. An empty one takes back what was set.
_COUNTED_BY = {"shop_set_content": ("check_every_d", "clean_out_every_d", "most_lost_pct_d")}


def checked(name: str, message: Any, root: str) -> Any:
    """The message, when it fits the definition ``name``; otherwise a Fault at a path below root.

    >>> checked("note_content", {"text": "Skimmer is off."}, "body")
    {'text': 'Skimmer is off.'}
    """
    try:
        validate: Callable[[Any], Any] = VALIDATORS[name]
        validate(message)
    except SchemaRefusal as refusal:
        raise fault_from(refusal, root) from None
    for field in _COUNTED_BY.get(name, ()):
        if message.get(field, {}).get("text", "").strip():
            Reader().value(built(Typed, message[field]), field, f"{root}.{field}")
    return message
