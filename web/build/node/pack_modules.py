"""Runs inside Pyodide: writes every imported module, and all of pycore, as byte code in a zip."""

import importlib
import importlib.util
import pkgutil
import sys
import zipfile
from importlib._bootstrap_external import _code_to_hash_pyc

# Imported late, by error paths and by parsing dates or numbers in ways that no example shows.
LATE_MODULES = (
    "_strptime", "bisect", "calendar", "contextlib", "decimal", "fractions", "heapq", "linecache",
    "statistics", "textwrap", "tokenize", "traceback", "unicodedata", "weakref", "zipimport",
)  # fmt: skip

# Works with whole files on the command line; a phone has no use for it, nor for the argparse and
# sqlite3 it imports.
OFFICE = "pycore.office"

# Imported on the way by Python's own start and never used by a phone: archives and packages to
# load, the web, other processes, and parts of the event loop that a browser replaces. In the place
# of each, and of what is below it, stands a short module that has whatever name it is asked for.
STOOD_IN_FOR = (
    "asyncio.base_subprocess", "asyncio.selector_events",
    "asyncio.sslproto", "asyncio.streams", "asyncio.subprocess", "bz2",
    "email", "gzip", "http", "importlib.metadata", "ipaddress", "lzma", "segno.writers",
    "ssl", "subprocess", "tarfile", "tempfile", "urllib.error", "urllib.request",
    "urllib.response", "xml.sax", "zipfile",
)  # fmt: skip
STAND_IN = """
__all__ = ()

def __getattr__(name):
    if name.startswith("__"):
        raise AttributeError(name)
    return type(name, (Exception,), {})
"""

HOME_OF_ZIP = "/lib/python314.zip"
OLDEST_ZIP_DATE = (1980, 1, 1, 0, 0, 0)
UNIX = 3


def import_all_of(package: str) -> None:
    """Imports what a phone needs below ``package``, whether an example reached it or not."""
    found = importlib.import_module(package)
    for module in pkgutil.iter_modules(found.__path__, f"{package}."):
        if module.name == OFFICE or module.name.endswith("__main__"):
            continue
        if module.ispkg:
            import_all_of(module.name)
        else:
            importlib.import_module(module.name)


def is_stood_in_for(name: str) -> bool:
    """Whether a phone can do without a module's content."""
    return any(name == module or name.startswith(f"{module}.") for module in STOOD_IN_FOR)


def sources() -> dict[str, tuple[str, str]]:
    """Module name -> (path in the zip, source text) of all that was imported from a file."""
    found = {}
    for name, module in sorted(sys.modules.items()):
        spec = getattr(module, "__spec__", None)
        loader = getattr(spec, "loader", None)
        if name == "__main__" or spec is None or not hasattr(loader, "get_source"):
            continue
        # The name in the specification is the real one: os.path is the module posixpath.
        text = loader.get_source(spec.name)
        if spec.origin in ("built-in", "frozen") or text is None:
            continue
        is_package = spec.submodule_search_locations is not None
        path = spec.name.replace(".", "/") + ("/__init__" if is_package else "")
        found[spec.name] = (path, STAND_IN if is_stood_in_for(spec.name) else text)
    return found


def compiled(path: str, text: str) -> bytes:
    """The file of byte code for one module, the same on every build of the same source.

    Without docstrings and assertions, which nobody reads on a phone: a sixth less to send.
    """
    code = compile(text, f"{HOME_OF_ZIP}/{path}.py", "exec", dont_inherit=True, optimize=2)
    return bytes(_code_to_hash_pyc(code, importlib.util.source_hash(text.encode()), False))


def pack_modules(zip_path: str) -> list[str]:
    """Writes the zip and returns the sorted names of the modules in it."""
    for name in LATE_MODULES:
        importlib.import_module(name)
    import_all_of("pycore")
    found = sources()
    with zipfile.ZipFile(zip_path, "w", zipfile.ZIP_STORED) as archive:
        for _, (path, text) in sorted(found.items()):
            entry = zipfile.ZipInfo(f"{path}.pyc", OLDEST_ZIP_DATE)
            entry.create_system = UNIX
            entry.external_attr = 0o644 << 16
            archive.writestr(entry, compiled(path, text))
    return sorted(found)
