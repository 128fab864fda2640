"""What a row depends on besides its inputs: the code and the libraries under it."""

from __future__ import annotations

import hashlib
import platform
from functools import cache
from importlib.metadata import PackageNotFoundError, version
from pathlib import Path

PHYSICS = ("truck", "statics", "trials", "study/methods.py")
LIBRARIES = ("numpy", "scipy", "pybullet")


@cache
def code_digest() -> str:
    """The first 12 digits of the SHA-256 of the code that trials run.

    The release number alone would call trials of last week's code and today's the same.
    """
    root, total = Path(__file__).parent.parent, hashlib.sha256()
    for place in PHYSICS:
        path = root / place
        for file in [path] if path.suffix else sorted(path.rglob("*.py")):
            total.update(file.relative_to(root).as_posix().encode() + b"\0")
            total.update(file.read_bytes() + b"\0")
    return total.hexdigest()[:12]


def installed() -> dict[str, str]:
    """Name -> version of everything that can change a row."""
    found = {"python": platform.python_version(), "code": code_digest()}
    for name in ("crossfall", *LIBRARIES):
        try:
            found[name] = version(name)
        except PackageNotFoundError:
            found[name] = "source" if name == "crossfall" else "absent"
    return found


def disagreement(wanted: dict[str, str]) -> str:
    """ "" where this machine would give the same rows, else what differs, in one sentence."""
    here = installed()
    differing = [
        f"{name} {here.get(name, 'absent')} instead of {value}"
        for name, value in wanted.items()
        if here.get(name) != value
    ]
    return f"a worker has {', '.join(differing)}" if differing else ""
