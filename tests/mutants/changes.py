"""Every small change of a module that a slip of the hand could have made, as compiled code.

Left as they are: docstrings, sentences, annotations, decorators, and the names of type variables.
"""

import ast
from collections import Counter
from collections.abc import Callable, Iterator
from copy import copy
from dataclasses import dataclass
from types import CodeType
from typing import Any

_OPERATORS: dict[type[ast.AST], type[ast.operator]] = {
    ast.Add: ast.Sub,
    ast.Sub: ast.Add,
    ast.Mult: ast.Div,
    ast.Div: ast.Mult,
    ast.FloorDiv: ast.Mult,
    ast.Mod: ast.Mult,
    ast.Pow: ast.Mult,
    ast.BitOr: ast.BitAnd,
    ast.BitAnd: ast.BitOr,
}
# An order is changed in two ways: its edge, and its direction.
_COMPARISONS: dict[type[ast.AST], tuple[type[ast.cmpop], ...]] = {
    ast.Lt: (ast.LtE, ast.GtE),
    ast.LtE: (ast.Lt, ast.Gt),
    ast.Gt: (ast.GtE, ast.LtE),
    ast.GtE: (ast.Gt, ast.Lt),
    ast.Eq: (ast.NotEq,),
    ast.NotEq: (ast.Eq,),
    ast.Is: (ast.IsNot,),
    ast.IsNot: (ast.Is,),
    ast.In: (ast.NotIn,),
    ast.NotIn: (ast.In,),
}
_TWINS = (("min", "max"), ("floor", "ceil"), ("floor_marks", "ceil_marks"), ("any", "all"))
_OTHER_CALL = {**dict(_TWINS), **{second: first for first, second in _TWINS}}
# A call of these may have been forgotten around its first argument.
_AROUND = ("abs", "sorted", "round")
_PASSED_OVER = ("annotation", "returns", "decorator_list")


@dataclass(frozen=True)
class Mutant:
    """One change: line, function, text before and after, and the module with it, compiled.

    ``function`` is the innermost one, "" outside of all; with it a change has a name that stays
    when lines move. ``turn`` counts the changes of a function that read the same.
    """

    line: int
    function: str
    before: str
    after: str
    turn: int
    code: CodeType

    @property
    def name(self) -> str:
        """What the list of explained survivors calls this change."""
        said = f"{self.function}: {self.before} -> {self.after}"
        return said if self.turn == 1 else f"{said} (no. {self.turn})"

    def __str__(self) -> str:
        return f"line {self.line}: {self.name}"


@dataclass(frozen=True)
class _Place:
    """Where a node stands in its tree, so that another one can take its place for a while."""

    parent: ast.AST
    field: str
    index: int | None

    def put(self, node: Any) -> None:
        if self.index is None:
            setattr(self.parent, self.field, node)
        else:
            getattr(self.parent, self.field)[self.index] = node


def mutants(source: str, file: str) -> Iterator[Mutant]:
    """Every mutant of a module's text; ``file`` is the name that its tracebacks show.

    >>> [str(mutant) for mutant in mutants("def near(a):\\n    b = a < 3", "an_example.py")]
    ['line 2: near: a < 3 -> a <= 3', 'line 2: near: a < 3 -> a >= 3', 'line 2: near: 3 -> 4']
    >>> [mutant.name for mutant in mutants("a = 3\\nb = 3", "an_example.py")]
    [': 3 -> 4', ': 3 -> 4 (no. 2)']
    """
    tree = ast.parse(source, filename=file)
    functions = [node for node in ast.walk(tree) if isinstance(node, ast.FunctionDef)]
    turns: Counter[tuple[str, str, str]] = Counter()
    for place, node in list(_places(tree)):
        for new in _changed(node):
            # A copy, since a part of the tree that takes the place of the whole stays in the tree.
            place.put(ast.fix_missing_locations(ast.copy_location(copy(new), node)))
            code = compile(tree, file, "exec", dont_inherit=True)
            place.put(node)
            line = _line(node)
            said = (_function(functions, line), _text(node), _text(new))
            turns[said] += 1
            yield Mutant(line, *said, turns[said], code)


def compiled(source: str, file: str) -> CodeType:
    """A module's text as it is, compiled as its mutants are."""
    return compile(ast.parse(source, filename=file), file, "exec", dont_inherit=True)


def _function(functions: list[ast.FunctionDef], line: int) -> str:
    around = [node for node in functions if node.lineno <= line <= (node.end_lineno or line)]
    return max(around, key=lambda node: node.lineno).name if around else ""


def _line(node: ast.AST) -> int:
    # A comprehension has no line of its own.
    return getattr(node.iter if isinstance(node, ast.comprehension) else node, "lineno", 0)


def _text(node: ast.AST) -> str:
    return " ".join(ast.unparse(node).split())


def _places(parent: ast.AST) -> Iterator[tuple[_Place, ast.AST]]:
    for field, value in ast.iter_fields(parent):
        if field in _PASSED_OVER:
            continue
        children = list(enumerate(value)) if isinstance(value, list) else [(None, value)]
        for index, child in children:
            if isinstance(child, ast.AST) and not _is_left_alone(parent, child):
                yield _Place(parent, field, index), child
                yield from _places(child)


def _is_left_alone(parent: ast.AST, child: ast.AST) -> bool:
    if isinstance(parent, ast.JoinedStr) and isinstance(child, ast.Constant):
        return True
    if isinstance(child, ast.Call) and ast.unparse(child.func) == "TypeVar":
        return True
    return isinstance(child, ast.Expr) and isinstance(child.value, ast.Constant)


def _changed(node: Any) -> Iterator[ast.AST]:
    change = _CHANGES.get(type(node))
    if change is not None:
        yield from change(node)


def _binary(node: ast.BinOp) -> Iterator[ast.AST]:
    if type(node.op) in _OPERATORS:
        yield ast.BinOp(node.left, _OPERATORS[type(node.op)](), node.right)


def _comparison(node: ast.Compare) -> Iterator[ast.AST]:
    for i, operator in enumerate(node.ops):
        for other in _COMPARISONS[type(operator)]:
            ops = [*node.ops[:i], other(), *node.ops[i + 1 :]]
            yield ast.Compare(node.left, ops, node.comparators)


def _logic(node: ast.BoolOp) -> Iterator[ast.AST]:
    yield ast.BoolOp(ast.Or() if isinstance(node.op, ast.And) else ast.And(), node.values)
    for i in range(len(node.values)):
        rest = [*node.values[:i], *node.values[i + 1 :]]
        yield rest[0] if len(rest) == 1 else ast.BoolOp(node.op, rest)


def _sign(node: ast.UnaryOp) -> Iterator[ast.AST]:
    yield node.operand


def _constant(node: ast.Constant) -> Iterator[ast.AST]:
    value = node.value
    if isinstance(value, bool):
        yield ast.Constant(not value)
    elif isinstance(value, int | float):
        yield ast.Constant(value + 1)
    elif isinstance(value, str) and not any(sign.isspace() for sign in value):
        yield ast.Constant(value + "_")


def _call(node: ast.Call) -> Iterator[ast.AST]:
    *front, name = ast.unparse(node.func).split(".")
    if name in _OTHER_CALL:
        other = ast.parse(".".join([*front, _OTHER_CALL[name]]), mode="eval").body
        yield ast.Call(other, node.args, node.keywords)
    if name in _AROUND and not front:
        yield node.args[0]
    for i in range(len(node.keywords)):
        yield ast.Call(node.func, node.args, [*node.keywords[:i], *node.keywords[i + 1 :]])


def _condition(node: ast.If | ast.While | ast.IfExp) -> Iterator[ast.AST]:
    # A single comparison or "not" is turned round where it stands.
    if isinstance(node.test, ast.Compare | ast.UnaryOp):
        return
    test = ast.UnaryOp(ast.Not(), node.test)
    if isinstance(node, ast.IfExp):
        yield ast.IfExp(test, node.body, node.orelse)
    else:
        yield type(node)(test, node.body, node.orelse)


def _filter(node: ast.comprehension) -> Iterator[ast.AST]:
    for i in range(len(node.ifs)):
        ifs = [*node.ifs[:i], *node.ifs[i + 1 :]]
        yield ast.comprehension(node.target, node.iter, ifs, node.is_async)


def _return(node: ast.Return) -> Iterator[ast.AST]:
    if node.value is not None and not (
        isinstance(node.value, ast.Constant) and node.value.value is None
    ):
        yield ast.Return(ast.Constant(None))


def _added(node: ast.AugAssign) -> Iterator[ast.AST]:
    yield ast.AugAssign(node.target, _OPERATORS[type(node.op)](), node.value)
    yield ast.Pass()


def _left_out(node: ast.AST) -> Iterator[ast.AST]:
    del node
    yield ast.Pass()


def _leap(node: ast.Break | ast.Continue) -> Iterator[ast.AST]:
    yield ast.Continue() if isinstance(node, ast.Break) else ast.Break()


_CHANGES: dict[type[ast.AST], Callable[[Any], Iterator[ast.AST]]] = {
    ast.BinOp: _binary,
    ast.Compare: _comparison,
    ast.BoolOp: _logic,
    ast.UnaryOp: _sign,
    ast.Constant: _constant,
    ast.Call: _call,
    ast.If: _condition,
    ast.While: _condition,
    ast.IfExp: _condition,
    ast.comprehension: _filter,
    ast.Return: _return,
    ast.AugAssign: _added,
    ast.Expr: _left_out,
    ast.Raise: _left_out,
    ast.Break: _leap,
    ast.Continue: _leap,
}
