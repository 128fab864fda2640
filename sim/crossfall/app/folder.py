"""The opened folder: the only place the bench reads trucks from and writes to."""

from __future__ import annotations

import re
from pathlib import Path

from crossfall.truck.errors import InputError, Problem

_NAME = re.compile(r"[\w][\w .()+-]{0,79}", re.UNICODE)
RESERVED = {"con", "prn", "aux", "nul"}


def inside(folder: Path, name: str, suffix: str = ".toml") -> Path:
    """The file `name` directly in `folder`. Raises InputError for any other kind of name.

    Plain names only: no separators, no leading dot, and a link must not lead out of the folder.
    """
    plain = name if name.endswith(suffix) else f"{name}{suffix}"
    stem = plain.removesuffix(suffix)
    if not _NAME.fullmatch(stem) or ".." in stem or stem.lower() in RESERVED:
        allowed = "letters, digits, spaces, - and _, without a folder"
        raise InputError(Problem(name[:80], "is not a usable file name", allowed))
    path = folder / plain
    if path.resolve().parent != folder.resolve():
        raise InputError(Problem(name[:80], "leads out of the opened folder", "stay inside it"))
    return path


def listing(folder: Path, suffix: str = ".toml", limit: int = 500) -> tuple[str, ...]:
    """Names of the files in the folder that `inside` would let through, sorted."""
    names = []
    for path in sorted(folder.glob(f"*{suffix}")):
        try:
            if inside(folder, path.name, suffix).is_file():
                names.append(path.name)
        except InputError:
            continue
    return tuple(names[:limit])
