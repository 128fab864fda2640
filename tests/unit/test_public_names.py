"""One public name has one meaning in the whole project."""

import ast
from collections import defaultdict
from pathlib import Path

import crossfall

ROOT = Path(crossfall.__file__).parent
# The front door says again, in tuner's units, what the rooms behind it say; a verb is a `command`.
DOOR, EVERY_VERB = "front", "command"


def public(module: Path) -> set[str]:
    found: set[str] = set()
    for node in ast.parse(module.read_text()).body:
        match node:
            case ast.FunctionDef(name=name) | ast.ClassDef(name=name):
                found.add(name)
            case ast.AnnAssign(target=ast.Name(id=name)):
                found.add(name)
            case ast.Assign(targets=targets):
                found |= {t.id for t in targets if isinstance(t, ast.Name)}
    return {name for name in found if not name.startswith("_")}


def test_no_public_name_is_defined_twice() -> None:
    where = defaultdict(list)
    for module in sorted(ROOT.rglob("*.py")):
        place = module.relative_to(ROOT)
        if place.parts[0] == DOOR:
            continue
        for name in public(module):
            where[name].append(place.as_posix())
    assert len(where) > 400
    twice = {name: at for name, at in where.items() if len(at) > 1}
    assert set(twice) == {EVERY_VERB}, twice
    assert all(at.startswith("verbs/") for at in twice[EVERY_VERB])


def test_the_front_door_says_nothing_twice() -> None:
    names = [name for module in (ROOT / DOOR).glob("*.py") for name in public(module)]
    assert sorted(names) == sorted(set(names))
