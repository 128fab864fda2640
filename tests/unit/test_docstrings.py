"""Every public name of the rooms of physics says what it is."""

import ast
from pathlib import Path

import pytest

import crossfall

ROOT = Path(crossfall.__file__).parent
PHYSICS = ("truck", "statics", "engines", "trials", "measurement", "answers", "tuning", "study")
# Modules, as "room/module", that compute by formulas: each says where they are from.
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
)


def test_every_public_function_and_class_has_a_docstring() -> None:
    said, bare = 0, []
    for module in (p for room in PHYSICS for p in sorted((ROOT / room).rglob("*.py"))):
        for node in ast.parse(module.read_text()).body:
            if isinstance(node, ast.FunctionDef | ast.ClassDef) and not node.name.startswith("_"):
                said += 1
                if not ast.get_docstring(node):
                    bare.append(f"{module.relative_to(ROOT)}: {node.name}")
    assert said > 500
    assert not bare


def says_source(docstring: str | None) -> bool:
    """Whether a line of it begins with the word."""
    return any(line.startswith("Source: ") for line in (docstring or "").splitlines())


def without_source(text: str) -> list[str]:
    """Public functions of a module's text whose formula has no source, nor has the module."""
    module = ast.parse(text)
    if says_source(ast.get_docstring(module)):
        return []
    return [
        node.name
        for node in module.body
        if isinstance(node, ast.FunctionDef)
        and not node.name.startswith("_")
        and not says_source(ast.get_docstring(node))
    ]


@pytest.mark.parametrize("module", FORMULAS)
def test_every_formula_has_a_source(module: str) -> None:
    assert not without_source((ROOT / f"{module}.py").read_text())


def test_a_formula_without_a_source_is_found() -> None:
    bare = '''def area(side: float) -> float:
    """m^2. The source: geometry."""
'''
    assert without_source(bare) == ["area"]
    assert not without_source(bare.replace("The source", "\n\n    Source"))
    assert not without_source('"""Areas.\n\nSource: Euclid.\n"""\n' + bare)
