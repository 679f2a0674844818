"""Two pages to compare with: Pyodide as its package is, without and with our wheel by micropip.

They show nothing, ask Python one question in a worker, and keep every file with a service worker,
so that they too start without a network. Nothing checks their files by a hash.
"""

import json
import shutil
from pathlib import Path

from web.build.paths import NODE_MODULES, STATE

FILES = (
    "pyodide.mjs",
    "pyodide.asm.mjs",
    "pyodide.asm.wasm",
    "python_stdlib.zip",
    "pyodide-lock.json",
)
WHEELS = STATE / "all-wheels"
FIRST_ANSWER_MARK = "core: first answer"

PAGE = """<!doctype html><meta charset="utf-8"><title>stock</title><link rel="icon" href="data:,">
<script type="module" src="page.js"></script>"""
PAGE_JS = f"""
const worker = new Worker("worker.js", {{ type: "module" }});
worker.onmessage = ({{ data }}) => performance.mark("{FIRST_ANSWER_MARK}", {{ detail: data }});
worker.onerror = (event) => console.error(event.message);
navigator.serviceWorker.register("sw.js");
"""
ALONE_JS = """
import { loadPyodide } from "./pyodide.mjs";
const python = await loadPyodide({ indexURL: new URL("./", self.location).href });
postMessage(String(python.runPython("6 * 7")));
"""
# The wheel and what it depends on, each by its address: micropip asks no index.
WITH_WHEEL_JS = """
import { loadPyodide } from "./pyodide.mjs";
const home = new URL("./", self.location).href;
const python = await loadPyodide({ indexURL: home });
const bytes = await (await fetch(home + "MICROPIP")).arrayBuffer();
python.unpackArchive(new Uint8Array(bytes), "whl");
await python.pyimport("micropip").install(WHEELS.map((name) => home + name));
const answer = python.pyimport("pycore.desk").handle(
  JSON.stringify({ v: 1, id: "first", op: "describe", body: {} }),
);
if (!JSON.parse(answer).ok) throw new Error(answer);
postMessage(answer.slice(0, 20));
"""
SW_JS = """
const FILES = LIST;
self.addEventListener("install", (event) => {
  event.waitUntil(caches.open("all").then((cache) => cache.addAll(FILES)));
  self.skipWaiting();
});
self.addEventListener("activate", (event) => event.waitUntil(clients.claim()));
self.addEventListener("fetch", (event) => {
  event.respondWith(
    caches.match(event.request).then((found) => found ?? fetch(event.request)),
  );
});
"""


def make_stock(folder: Path, *, with_wheel: bool) -> list[Path]:
    """Writes such a page into the folder; the files that a first visit fetches."""
    folder.mkdir(parents=True)
    for name in FILES:
        shutil.copyfile(NODE_MODULES / "pyodide" / name, folder / name)
    worker = ALONE_JS
    if with_wheel:
        wheels = sorted(WHEELS.glob("*.whl"))
        for wheel in wheels:
            shutil.copyfile(wheel, folder / wheel.name)
        micropip = next(wheel.name for wheel in wheels if wheel.name.startswith("micropip-"))
        others = [wheel.name for wheel in wheels if wheel.name != micropip]
        worker = WITH_WHEEL_JS.replace("MICROPIP", micropip).replace("WHEELS", json.dumps(others))
    (folder / "index.html").write_text(PAGE)
    (folder / "page.js").write_text(PAGE_JS)
    (folder / "worker.js").write_text(worker)
    fetched = sorted(path.name for path in folder.iterdir())
    listed = json.dumps(["./", *[name for name in fetched if name != "index.html"]])
    (folder / "sw.js").write_text(SW_JS.replace("LIST", listed))
    return sorted(folder.iterdir())
