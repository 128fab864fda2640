"""Taking what was weighed on its own out of the lump it was counted in, so that no sum changes.

Source: derived here: conservation of mass and of first moments.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from crossfall.truck.edits import part_row
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.model import Array, Part
from crossfall.truck.schema import PartSpec, TruckSpec
from crossfall.truck.shapes import Strip
from crossfall.truck.solids import MM

G = 1e-3
DECIMALS = 4  # of g and mm, as a file would have them


def left_over(
    spec: TruckSpec, placed: Sequence[Part], part: str, lump: str
) -> dict[str, float | list[float]]:
    """Values of the lump, by key of `truck.edits`, with a part of the truck taken out of it.

    Mass and mass times place stay what they were without the part: m' = m - p and
    m' r' = m r - p s, for lump (m at r) and part (p at s), on every carrier they share. The moment
    of inertia becomes what the two shapes say. spec, placed: the truck with the part in it. Raises
    InputError where lump and part are not on the same carriers, or too little is left.

    Masses g, places mm, as in the file.
    """
    row, own = part_row(spec, lump), part_row(spec, part)
    old = spec.part[row]
    if row == own or old.is_link or spec.part[own].is_link:
        raise _wrong(lump, f"cannot hold '{part}'", "take a part out of a lump that is no link")
    if isinstance(old.shape, Strip) and old.mass_g is None:
        raise _wrong(lump, "is weighed by its length", "make the strip shorter instead")
    taken = _by_carrier(placed, own)
    there = _by_carrier(placed, row)
    if set(taken) != set(there):
        words = f"'{part}' rides on {spec.part[own].on}, '{lump}' on {old.on}"
        raise _wrong(lump, words, "let the part ride on what the lump rides on")
    if any(len(pieces) > 1 for pieces in there.values()):
        raise _wrong(lump, "is several pieces", "take a part out of a single piece")
    carrier, [piece] = next(iter(there.items()))
    mass = sum(p.body.mass for p in taken[carrier])
    left = piece.body.mass - mass
    if left < 10**-DECIMALS * G:
        weigh = f"'{part}' weighs {mass / G:.1f} g, all of the lump's {piece.body.mass / G:.1f} g"
        raise _wrong(lump, weigh, "a part is lighter than the lump it comes out of")
    moment = piece.body.mass * piece.body.cg - sum(p.body.mass * p.body.cg for p in taken[carrier])
    shift = _as_written(moment / left - piece.body.cg, piece)
    at = np.array(old.at_mm) + shift / MM
    return {
        f"part.{old.name}.mass_g": _tidy(left / G),
        f"part.{old.name}.at_mm": [_tidy(v) for v in at],
    }


def lumps(spec: TruckSpec) -> list[str]:
    """Names of the parts that others can be taken out of, the one that takes up the rest first."""
    found = [p for p in spec.part if _single(p) and not p.is_link]
    return [p.name for p in sorted(found, key=lambda p: not p.remainder)]


def _single(part: PartSpec) -> bool:
    by_length = isinstance(part.shape, Strip) and part.mass_g is None
    return part.count == 1 and not (part.mirror and not part.on_wheel) and not by_length


def _by_carrier(placed: Sequence[Part], row: int) -> dict[str, list[Part]]:
    found: dict[str, list[Part]] = {}
    for piece in placed:
        if piece.row == row:
            found.setdefault(piece.carrier, []).append(piece)
    return found


def _as_written(shift: Array, piece: Part) -> Array:
    """A shift in the axes of the file: a right wheel carries the mirror image."""
    return shift * (np.array([1.0, -1.0, 1.0]) if piece.mirrored else 1.0)


def _tidy(value: float) -> float:
    rounded = round(float(value), DECIMALS) + 0.0
    return int(rounded) if rounded.is_integer() else rounded


def _wrong(lump: str, what: str, allowed: str) -> InputError:
    return InputError(Problem("file", what, allowed, f"part.{lump}"))
