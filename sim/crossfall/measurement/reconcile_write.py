"""Writing what was reconciled into a new chassis file, comments and layout kept."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from crossfall.measurement.reconcile import Move, Reconciled
from crossfall.truck import document
from crossfall.truck.build import Loaded, load_text
from crossfall.truck.demos import find_demo
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.files import write_atomically
from crossfall.truck.schema import PartSpec

LEAST_G, LEAST_MM = 0.005, 0.005  # what is less than this stays as the file has it
_DECIMALS = 2


def included_rows(loaded: Loaded) -> frozenset[int]:
    """Rows that stand in an included file: they cannot be changed from here."""
    return frozenset(
        int(path[1]) for path in loaded.where.moved if path[0] == "part" and len(path) == 2
    )


def new_path(loaded: Loaded, wanted: Path | None) -> Path:
    """Where the new file goes: as asked, else beside the old one, or here for a demo truck.

    Raises InputError where a file is there already.
    """
    path = wanted
    if path is None:
        demo = find_demo(loaded.path.stem)
        home = Path.cwd() if demo is not None and demo == loaded.path else loaded.path.parent
        path = home / f"{loaded.path.stem}.reconciled.toml"
    if path.exists():
        what = "is there already, and nothing is overwritten"
        raise InputError(Problem(str(path), what, "name another with -o"))
    return path


def new_text(loaded: Loaded, found: Reconciled, text: str | None = None) -> str:
    """The chassis file's text with every move put in. Raises InputError.

    text: as it is worked on, where it is not what stands on disk.
    """
    text = loaded.path.read_text(encoding="utf-8-sig") if text is None else text
    data, values = document.plain_data(text), dict[str, Any]()
    for move in found.moves:
        values |= _of_move(data, loaded.spec.part[move.row], move)
    return document.text_with_values(text, values)


def write_reconciled(loaded: Loaded, found: Reconciled, path: Path, sources: list[str]) -> Loaded:
    """Write the new file and give back the truck it makes. Raises InputError, nothing written."""
    text = new_text(loaded, found)
    head = f"# Reconciled with {', '.join(sources)}; before: {loaded.path.name}\n"
    text = head + text
    again = load_text(text, path)
    write_atomically(path, text)
    return again


def _of_move(data: dict[str, Any], part: PartSpec, move: Move) -> dict[str, Any]:
    """New values by key. data: of the file."""
    values: dict[str, Any] = {}
    grams = move.mass_by * 1e3
    if abs(grams) >= LEAST_G:
        share = 1 + move.mass_by / move.old_mass
        per_metre = getattr(part.shape, "g_per_m", None)
        if part.mass_g is None and per_metre is not None:
            values[f"part.{part.name}.shape.g_per_m"] = _tidy(per_metre * share)
        else:
            values[f"part.{part.name}.mass_g"] = _tidy(move.old_mass * 1e3 + grams)
    by = [_tidy(v * 1e3) if abs(v * 1e3) >= LEAST_MM else 0.0 for v in move.place_by]
    if any(by):
        values |= document.places_moved(data, part.name, by)
    return values


def _tidy(value: float) -> float:
    return round(float(value), _DECIMALS)
