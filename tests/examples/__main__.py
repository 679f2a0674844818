"""Writes every example with the reply that pycore gives now: ``python3 -m tests.examples``.

An example is documentation that cannot rot: a test answers each request again and compares.
"""

import json

from pycore.desk import handle
from tests.examples.asked import requests
from tests.examples.files import EXAMPLES, path_of, request_text
from web.build.paths import files_below


def main() -> None:
    """Writes every example, and removes others."""
    asked = requests()
    paths = {name: path_of(name, request) for name, request in asked.items()}
    for path in files_below(EXAMPLES, ".json"):
        if path not in paths.values():
            path.unlink()
    for name, request in asked.items():
        reply = json.loads(handle(request_text(request)))
        if reply["ok"] == name.startswith("error_"):
            raise SystemExit(f"{name} answers the wrong way: {reply}")
        if not reply["ok"] and not name.startswith(f"error_{reply['error']['code']}"):
            raise SystemExit(f"{name} is refused with {reply['error']['code']}")
        text = json.dumps({"request": request, "reply": reply}, ensure_ascii=False, indent=1)
        paths[name].parent.mkdir(parents=True, exist_ok=True)
        paths[name].write_text(text + "\n", encoding="utf-8")
    print(f"{len(asked)} examples written")


if __name__ == "__main__":
    main()
