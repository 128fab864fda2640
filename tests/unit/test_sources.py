"""Every formula of the rooms of physics says where it is from."""

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

import crossfall

ROOT = Path(crossfall.__file__).parent
SOURCE = "Source: "
_Named = ast.FunctionDef | ast.ClassDef
# Modules that work something out by a formula, and in them what only reads, names or converts.
FORMULAS = (
    *("truck/assemble", "truck/axle_law", "truck/build", "truck/checks", "truck/clearance"),
    *("truck/guides", "truck/linkage", "truck/massprops", "truck/meshes", "truck/pieces"),
    *("truck/plausibility", "truck/ride", "truck/solids", "truck/spring_law", "truck/stance"),
    *("truck/steering", "truck/support", "truck/take_out", "truck/tolerances"),
    *("truck/uncertain", "truck/weight"),
    *("statics/balance", "statics/budget", "statics/builds", "statics/compliant"),
    *("statics/compliant_gradient", "statics/compliant_path", "statics/continuation"),
    *("statics/differentials", "statics/events", "statics/folds", "statics/kinematics"),
    *("statics/newton", "statics/relaxation", "statics/rigid", "statics/sliding"),
    *("statics/track", "statics/traction", "statics/tyres"),
    *(f"engines/{m}" for m in ("bullet", "held", "mujoco", "multibody", "rig", "rolling")),
    *(f"engines/{m}" for m in ("axle_forces", "held_wheels", "scale", "springs", "urdf")),
    *(f"trials/{m}" for m in ("course", "drive", "drive_run", "fits", "helm", "outcome", "ramp")),
    *(f"trials/{m}" for m in ("holding", "pace", "record", "slope", "stability_margin")),
    *("trials/table", "trials/tilt"),
    *(f"trials/grounds/{m}" for m in ("base", "ditch", "field", "ramp", "rough", "stone")),
    "trials/grounds/strewn",
    *(f"measurement/{m}" for m in ("begin", "board", "board_diagnosis", "board_height")),
    *(f"measurement/{m}" for m in ("board_predict", "next_reading", "reconcile", "reconcile_fit")),
    *(f"measurement/{m}" for m in ("scatter", "setup", "sums", "typical", "weigh_in")),
    *(f"measurement/weigh_in_{m}" for m in ("cautions", "formulas", "model", "next", "pose")),
    "measurement/weighted_fit",
    *(f"tuning/{m}" for m in ("apply", "battery", "corners", "directions", "effects", "gains")),
    *(f"tuning/{m}" for m in ("milp_model", "packs", "plan", "scores", "solver", "suspension")),
    *(f"tuning/{m}" for m in ("unmet", "whatif")),
    *(f"answers/{m}" for m in ("answer", "ranges", "tips")),
    *(f"study/{m}" for m in ("closedform", "convergence", "critical", "design", "draws")),
    *(f"study/{m}" for m in ("methods", "montecarlo", "sensitivity", "slopes", "summary")),
    "study/unbeaten",
)
PLAIN = {
    "engines/bullet": {"saved"},
    "engines/held": {"held_truck", "installed_engines", "installed", "engines_named"}
    | {"check_driving", "usual_engine", "engine_version"},
    "engines/springs": {"set_corners", "stacked_laws"},
    "engines/urdf": {"urdf", "check_urdf", "urdf_text"},
    "trials/record": {"load_record"},
    "measurement/board_predict": {"board_grip", "held", "ways"},
    "measurement/weighted_fit": {"solvable", "no_truck"},
    "tuning/apply": {"touches", "clash", "objections", "apply", "swapped", "merged", "check_fit"}
    | {"misfits", "built"},
    "tuning/corners": {"corners", "grip_at", "truck_at"},
    "tuning/directions": {"row_name"},
    "tuning/whatif": {"fresh_parts", "grip_there"},
    "answers/answer": {"versions"},
    "answers/ranges": {"check_followed"},
    "answers/tips": {"taken"},
    "study/draws": {"inputs_of"},
    "study/methods": {"warm_up", "compliant_rows", "tilt_rows", "convergence_rows_of"}
    | {"slope_rows", "critical_rows", "truck_of", "asked_of", "conditions_of", "ahead"},
    "study/slopes": {"varies", "likely", "left_out", "as_driven"},
    "study/summary": {"how_asked", "summarize", "read_columns", "input_names", "failures"}
    | {"by_words", "same_words", "numbers"},
}


def public(
    tree: ast.Module, kind: type[ast.FunctionDef] | type[ast.ClassDef]
) -> Iterator[ast.stmt]:
    return (n for n in tree.body if isinstance(n, kind) and not n.name.startswith("_"))


def cites(node: ast.Module | _Named) -> bool:
    """Whether a line of its docstring begins with what it is from."""
    lines = (ast.get_docstring(node) or "").splitlines()
    return any(line.startswith(SOURCE) and line.removeprefix(SOURCE).strip() for line in lines)


def without_source(tree: ast.Module, plain: set[str]) -> list[str]:
    """Names of a module's functions, of its classes where there are none, that say no source."""
    asked = [n for n in public(tree, ast.FunctionDef) if n.name not in plain]
    asked = asked or list(public(tree, ast.ClassDef))
    assert asked, "nothing public is worked out here"
    return [] if cites(tree) else [n.name for n in asked if not cites(n)]


@pytest.mark.parametrize("module", FORMULAS)
def test_what_is_worked_out_says_its_source(module: str) -> None:
    tree = ast.parse((ROOT / f"{module}.py").read_text())
    assert not without_source(tree, PLAIN.get(module, set()))


def test_what_counts_as_plain_is_there_and_says_none() -> None:
    for module, names in PLAIN.items():
        assert module in FORMULAS
        tree = ast.parse((ROOT / f"{module}.py").read_text())
        there = {n.name: cites(n) for n in public(tree, ast.FunctionDef)}
        assert names <= set(there), module
        assert not any(there[name] for name in names), module


def test_a_formula_without_a_source_is_found() -> None:
    bare = 'def area(r):\n    """m^2, pi r^2."""\n'
    empty = 'def area(r):\n    """m^2, pi r^2.\n\n    Source: \n    """\n'
    said = 'def area(r):\n    """m^2, pi r^2.\n\n    Source: Archimedes.\n    """\n'
    whole = '"""Circles.\n\nSource: Archimedes.\n"""\n' + bare
    assert without_source(ast.parse(bare), set()) == ["area"]
    assert without_source(ast.parse(empty), set()) == ["area"]
    assert without_source(ast.parse(said), set()) == []
    assert without_source(ast.parse(whole), set()) == []
