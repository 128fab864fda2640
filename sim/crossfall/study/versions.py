"""What a row depends on besides its inputs: the code and the libraries under it."""

from __future__ import annotations

import hashlib
import platform
from collections.abc import Iterable
from functools import cache
from importlib.metadata import PackageNotFoundError, version
from pathlib import Path

from crossfall.engines.held import PACKAGES, EngineName

_STATICS = (
    *("code of truck", "code of statics", "code of answers", "code of methods", "code of draws"),
    *("python", "numpy", "scipy"),
)
_TRIALS = (
    *_STATICS,
    *("code of engines", "code of trials", "code of slopes", "code of search"),
    *("code of convergence", "numba"),  # which compiles what acts on an axle
)
_CLOSED = (*_STATICS, "code of closed form", "code of design")
_CODE = {
    "code of truck": "truck",
    "code of statics": "statics",
    "code of answers": "answers",
    "code of engines": "engines",
    "code of trials": "trials",
    "code of methods": "study/methods.py",
    "code of draws": "study/draws.py",
    "code of closed form": "study/closedform.py",
    "code of design": "study/design.py",
    "code of slopes": "study/slopes.py",
    "code of search": "study/critical.py",
    "code of convergence": "study/convergence.py",
}


def versions_of(method: str, engines: Iterable[EngineName] = ()) -> dict[str, str]:
    """Name -> version of everything that can change a row of a scenario's method.

    engines: of its trials, Bullet if not said.
    """
    tried = (*_TRIALS, *(PACKAGES[engine] for engine in list(engines) or ["bullet"]))
    names = {"closed form": _CLOSED, "compliant": _STATICS}.get(method, tried)
    return {"crossfall": _installed("crossfall"), **{name: _installed(name) for name in names}}


def version_disagreement(wanted: dict[str, str]) -> str:
    """ "" where this machine would give the same rows, else what differs, in one sentence."""
    differing = [
        f"{name} {_installed(name)} instead of {value}"
        for name, value in wanted.items()
        if _installed(name) != value
    ]
    return f"a worker has {', '.join(differing)}" if differing else ""


@cache
def _installed(name: str) -> str:
    if name in _CODE:
        return _code_digest(Path(__file__).parent.parent / _CODE[name])
    if name == "python":
        return platform.python_version()
    try:
        return version(name)
    except PackageNotFoundError:
        return "absent"


def _code_digest(place: Path) -> str:
    """The first 12 digits of the SHA-256 of a file, or of the sources in a folder.

    The release number alone would call last week's trials and today's the same.
    """
    total = hashlib.sha256()
    for file in [place] if place.suffix else sorted(place.rglob("*.py")):
        total.update(file.relative_to(place.parent).as_posix().encode() + b"\0")
        total.update(file.read_bytes() + b"\0")
    return total.hexdigest()[:12]
