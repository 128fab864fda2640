"""A truck's mesh files beside its new file: a text names them from its own folder."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from crossfall.truck.errors import InputError, Problem
from crossfall.truck.files import write_atomically
from crossfall.truck.read import contained
from crossfall.truck.schema import TruckSpec
from crossfall.truck.shapes import Mesh


@contextmanager
def copied_meshes(spec: TruckSpec, old: Path, new: Path) -> Iterator[None]:
    """The mesh files named by a truck of folder `old`, in folder `new` as well; taken away again
    where what is done meanwhile fails.

    Raises InputError, with nothing copied, where one would take the place of another file.
    """
    made: list[Path] = []  # folders before what is in them
    try:
        for path, content in _missing(spec, old, new).items():
            for folder in reversed([f for f in path.parents if not f.exists()]):
                folder.mkdir()
                made.append(folder)
            write_atomically(path, content)
            made.append(path)
        yield
    except BaseException:
        for path in reversed(made):
            path.rmdir() if path.is_dir() else path.unlink()
        raise


def _missing(spec: TruckSpec, old: Path, new: Path) -> dict[Path, bytes]:
    """What is to be written where. What leads out of a folder is left to the check of the truck."""
    found: dict[Path, bytes] = {}
    for name in {p.shape.file for p in spec.part if isinstance(p.shape, Mesh)}:
        source, target = contained(old, name), contained(new, name)
        if source is None or target is None or source == target:
            continue
        content = source.read_bytes()
        if not target.exists():
            found[target] = content
        elif not target.is_file() or target.read_bytes() != content:
            what = "is there already, and is not the mesh file that this truck names"
            raise InputError(Problem(name, what, "move it out of the way"))
    return found
