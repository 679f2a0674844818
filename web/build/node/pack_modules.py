"""Runs inside Pyodide: writes every imported module, and all of pycore, into two zips.

One of byte code, which the memory image is made from; one of sources, which the plain start reads.
"""

import ast
import importlib
import importlib.util
import pkgutil
import sys
import types
import zipfile
from importlib._bootstrap_external import _code_to_hash_pyc

from strip_source import stripped

OWN = ("__main__", "pack_modules", "strip_source")

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
        if name in OWN or spec is None or not hasattr(loader, "get_source"):
            continue
        # The name in the specification is the real one: os.path is the module posixpath.
        text = loader.get_source(spec.name)
        if spec.origin in ("built-in", "frozen") or text is None:
            continue
        is_package = spec.submodule_search_locations is not None
        path = spec.name.replace(".", "/") + ("/__init__" if is_package else "")
        found[spec.name] = (path, STAND_IN if is_stood_in_for(spec.name) else text)
    return found


def without_hints(text: str) -> ast.Module:
    """The module's tree without hints of functions: each would be a function itself.

    Those of a class's fields stay: data classes are made from them.
    """
    tree = ast.parse(text)
    for node in ast.walk(tree):
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef):
            node.returns = None
        if isinstance(node, ast.arg):
            node.annotation = None
    return tree


def without_lines(code: types.CodeType) -> types.CodeType:
    """The code without the table of its line numbers, nor those of what it defines."""
    inner = [without_lines(it) if isinstance(it, types.CodeType) else it for it in code.co_consts]
    return code.replace(co_consts=tuple(inner), co_linetable=b"")


def compiled(path: str, text: str) -> bytes:
    """The file of byte code for one module, the same on every build of the same source.

    Without docstrings and assertions, which nobody reads on a phone. Of pycore alone a traceback
    tells the lines.
    """
    name = f"{HOME_OF_ZIP}/{path}.py"
    code = compile(without_hints(text), name, "exec", dont_inherit=True, optimize=2)
    if not path.startswith("pycore/"):
        code = without_lines(code)
    return bytes(_code_to_hash_pyc(code, importlib.util.source_hash(text.encode()), False))


def write_zip(zip_path: str, files: dict[str, bytes]) -> None:
    """The same bytes on every build of the same files."""
    with zipfile.ZipFile(zip_path, "w", zipfile.ZIP_STORED) as archive:
        for path, content in sorted(files.items()):
            entry = zipfile.ZipInfo(path, OLDEST_ZIP_DATE)
            entry.create_system = UNIX
            entry.external_attr = 0o644 << 16
            archive.writestr(entry, content)


def pack_modules(compiled_path: str, sources_path: str) -> list[str]:
    """Writes both zips and returns the sorted names of the modules in them."""
    for name in LATE_MODULES:
        importlib.import_module(name)
    import_all_of("pycore")
    found = sources()
    modules = found.values()
    write_zip(compiled_path, {f"{path}.pyc": compiled(path, text) for path, text in modules})
    write_zip(sources_path, {f"{path}.py": stripped(text).encode() for path, text in modules})
    return sorted(found)
