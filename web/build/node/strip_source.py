"""Runs inside Pyodide: a module's source without what nobody reads on a phone."""

import ast
import io
import tokenize

# A statement for which the compiler makes nothing, in the place of each that is taken away.
NOTHING = b"0"


def stripped(source: str) -> str:
    """The source without comments, docstrings and assertions; every line keeps its number.

    Compiled it does what ``python -OO`` makes of the whole source. Raises SyntaxError.
    """
    text = _without_comments(source)
    lines = text.encode().splitlines(keepends=True)
    # From the last to the first, so that the places before stay where they are.
    tree = ast.parse(text)
    for node in sorted(_left_out(tree), key=lambda it: -it.lineno):
        first, last = node.lineno - 1, (node.end_lineno or node.lineno) - 1
        before, after = lines[first][: node.col_offset], lines[last][node.end_col_offset :]
        # At the beginning of a module nothing may stand before its imports from __future__.
        in_its_place = b"" if node is tree.body[0] else NOTHING
        whole = before + in_its_place + b"\n" * (last - first) + after
        lines[first : last + 1] = whole.splitlines(keepends=True)
    return b"".join(lines).decode()


def _without_comments(source: str) -> str:
    lines = list(io.StringIO(source))
    for token in tokenize.generate_tokens(io.StringIO(source).readline):
        if token.type == tokenize.COMMENT:
            row, column = token.start
            lines[row - 1] = lines[row - 1][:column].rstrip() + "\n"
    return "".join(lines)


def _left_out(tree: ast.Module) -> list[ast.stmt]:
    """Docstrings and assertions."""
    found: list[ast.stmt] = []
    for node in ast.walk(tree):
        if isinstance(node, ast.Assert):
            found.append(node)
        if (
            isinstance(node, ast.Module | ast.ClassDef | ast.FunctionDef | ast.AsyncFunctionDef)
            and ast.get_docstring(node, clean=False) is not None
        ):
            found.append(node.body[0])
    return found
