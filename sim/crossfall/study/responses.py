"""Columns of one's own: expressions of a table's other columns, such as "goes_at_deg - slope_deg".

Evaluated by simpleeval, which knows numbers, operators and the functions given here, and nothing of
Python besides. A column that is no single word is asked for as value("both.track_mm").
Worked out when a table is written, so that no trial is done again for them.
"""

from __future__ import annotations

import ast
import operator
from collections.abc import Mapping
from functools import cache
from typing import Any

import numpy as np

from crossfall.trials.grounds import ground_keys

MOST_CHARACTERS = 500
FUNCTIONS: dict[str, Any] = {
    "abs": np.abs,
    "sqrt": np.sqrt,
    "exp": np.exp,
    "log": np.log,
    "min": np.minimum,
    "max": np.maximum,
    "where": np.where,
    "sin_deg": lambda x: np.sin(np.radians(x)),
    "cos_deg": lambda x: np.cos(np.radians(x)),
    "tan_deg": lambda x: np.tan(np.radians(x)),
    "atan_deg": lambda x: np.degrees(np.arctan(x)),
}
OPERATORS: dict[type, Any] = {
    ast.Add: operator.add,
    ast.Sub: operator.sub,
    ast.Mult: operator.mul,
    ast.Div: np.divide,
    ast.Pow: np.power,
    ast.Mod: np.mod,
    ast.USub: operator.neg,
    ast.UAdd: operator.pos,
    ast.Gt: operator.gt,
    ast.Lt: operator.lt,
    ast.GtE: operator.ge,
    ast.LtE: operator.le,
    ast.Eq: operator.eq,
    ast.NotEq: operator.ne,
}
COLUMNS = (  # of any method; a method that lacks one gives nothing for it
    *("heading_deg", "slope_deg", "grip", "repeat", "mass_g", "cg_x_mm", "cg_y_mm", "cg_z_mm"),
    *(
        "front_share",
        "front_track_mm",
        "rear_track_mm",
        "tip_deg",
        "rigid_deg",
        "compliant_deg",
        "rail_deg",
        "slide_deg",
    ),
    *("goes_at_deg", "first_lift_deg", "first_snap_deg", "tips_first_share"),
    *("compliant_range_low_deg", "compliant_range_high_deg"),
    *("rail_range_low_deg", "rail_range_high_deg"),
    *("goes_at_range_low_deg", "goes_at_range_high_deg"),
    *("trial_deg", "trial_ci_low_deg", "trial_ci_high_deg", "trial_first_lift_deg"),
    *("trial_slide_deg", "trial_less_compliant_deg"),
    *(key for key, ground in ground_keys().items() if not ground.file),
    *("speed_mm_per_s", "least_load_g", "least_geometric_margin_deg"),
    *("slid_mm", "tip_low_deg", "tip_high_deg", "spread_deg", "dynamic_allowance_deg"),
)


def fault(expression: str, columns: Mapping[str, Any]) -> tuple[str, str] | None:
    """What is wrong with an expression, and the word it is about; None if nothing is.

    columns: names it may use, besides COLUMNS, each with one value it has.
    """
    if len(expression) > MOST_CHARACTERS:
        return f"is longer than {MOST_CHARACTERS} characters", ""
    try:
        tree = ast.parse(expression.strip(), mode="eval")
    except (SyntaxError, ValueError, RecursionError, MemoryError):
        return "is no expression", ""
    known = {**dict.fromkeys(COLUMNS, 1.0), **columns}
    for node in ast.walk(tree):
        if isinstance(node, ast.Call):
            if not isinstance(node.func, ast.Name) or node.func.id not in {*FUNCTIONS, "value"}:
                return "calls what is no function here", _word(node.func)
            if node.func.id == "value" and not _names_a_column(node, known):
                return 'asks for the value of no column; as value("both.track_mm")', ""
        elif isinstance(node, ast.Name):
            if node.id not in known and node.id not in {*FUNCTIONS, "value"}:
                return f"uses '{node.id}', which is no column", node.id
        elif not isinstance(node, ALLOWED) or (
            isinstance(node, ast.Constant) and not isinstance(node.value, int | float | str)
        ):
            return f"uses {type(node).__name__.lower()}, which is not known here", ""
    try:
        evaluate_expression(expression, known)
    except Exception as error:  # whatever simpleeval or numpy find wrong with it
        return f"cannot be worked out: {error}", ""
    return None


ALLOWED = (
    *(ast.Expression, ast.BinOp, ast.UnaryOp, ast.Compare, ast.Constant, ast.Load),
    *(ast.operator, ast.unaryop, ast.cmpop),
)


def _word(node: ast.AST) -> str:
    return node.id if isinstance(node, ast.Name) else ""


def _names_a_column(node: ast.Call, known: Mapping[str, Any]) -> bool:
    (given, *rest) = (*node.args, None)
    return (
        not node.keywords
        and len(rest) == 1
        and isinstance(given, ast.Constant)
        and given.value in known
    )


def evaluate_expression(expression: str, row: Mapping[str, Any]) -> Any:
    """The value of an expression for one row, or for columns (n,); nan where a column has none."""
    from simpleeval import SimpleEval

    values = {k: np.nan if v is None else v for k, v in row.items()}
    names = dict.fromkeys(COLUMNS, np.nan) | values
    functions = {**FUNCTIONS, "value": lambda key: values.get(key, np.nan)}
    with np.errstate(all="ignore"):
        asked = SimpleEval(operators=OPERATORS, functions=functions, names=names)
        found = asked.eval(expression, previously_parsed=_parsed(expression))
    return np.asarray(found, dtype=np.float64)


@cache
def _parsed(expression: str) -> ast.AST:
    """A table asks for the same few expressions on every line."""
    from simpleeval import SimpleEval

    tree: ast.AST = SimpleEval.parse(expression)
    return tree


def columns_of(table: Any, responses: Mapping[str, str]) -> dict[str, Any]:
    """Name -> (n,) of each response for an arrow table; nan where one is no finite number, and on
    lines that failed."""
    if not responses:
        return {}
    said = " ".join(responses.values())
    plain = {"double", "int64", "bool"}
    wanted = [f.name for f in table.schema if str(f.type) in plain or f.name in said]
    columns = {name: table[name].to_numpy() for name in wanted}
    there = table["cause"].is_null().to_numpy() if "cause" in table.column_names else True
    out: dict[str, Any] = {}
    for name, expression in responses.items():
        value = np.broadcast_to(evaluate_expression(expression, columns | out), (len(table),))
        out[name] = np.where(np.isfinite(value) & there, value, np.nan)
    return out


def with_responses(row: Mapping[str, Any], responses: Mapping[str, str]) -> dict[str, Any]:
    """The row with its responses after the other columns: None where one is no finite number. One
    may use those before it."""
    out = dict(row)
    for name, expression in responses.items():
        value = float(evaluate_expression(expression, out))
        out[name] = value if np.isfinite(value) else None
    return out
