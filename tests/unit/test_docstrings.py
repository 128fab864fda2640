"""Every public name of the rooms of physics says what it is."""

import ast
from pathlib import Path

import crossfall

ROOT = Path(crossfall.__file__).parent
PHYSICS = ("truck", "statics", "engines", "trials", "measurement", "answers", "tuning", "study")


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
