"""Ground read from a file: a table of heights, a grey picture, or a surface."""

from __future__ import annotations

import hashlib
import io
import math
import warnings
from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from functools import lru_cache
from pathlib import Path
from typing import TYPE_CHECKING, Any, Self

import numpy as np

from crossfall.trials.grounds.base import (
    FINEST,
    STEEPEST_FIELD,
    STRAY,
    Ground,
    GroundKey,
    front_of_tyres,
    lay_heights,
    levelled,
    metres,
    passed,
)
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.meshes import FORMATS, MeshError, mesh_heights
from crossfall.truck.model import Array, Truck, frozen

if TYPE_CHECKING:
    from crossfall.engines.rig import Rig

MOST_BYTES = 20_000_000
MOST_SIDE = 2000  # heights along a side of a file
SHORTEST, LONGEST, HIGHEST = 0.1, 20.0, 1.0  # m: sides and greatest difference of a field's heights
USUAL_CELL = 0.01  # m from height to height if nothing is said
_NO_FIELD = "a table .npy, a grey .png, or a surface .stl, .obj or .ply"


@dataclass(frozen=True)
class Field(Ground):
    """A height field that begins `stray` m ahead of the foremost point of the front tyres.

    file: its whole path; digest: SHA-256 of what is in it. cell: m from one height to the next.
    rise: m from black to white of a picture. Its middle lies on the truck's way; beyond its sides
    and its end the ground goes on as it is there. Heights count from the mean of its near edge.

    .npy: heights (nx, ny) in mm, i going ahead and j to the left. .png: seen from above, the top
    lies ahead. .stl, .obj, .ply: a surface in mm, x ahead and z up. It is laid in cells of 20 mm
    where the file's are finer, the means of what is in them.
    """

    kind = "field"
    keys = (
        GroundKey("file", "field_file", 0.0, 0.0, "file of a height field", file=True),
        GroundKey("cell", "field_cell_mm", 1.0, 100.0, "from one height of the field to the next"),
        GroundKey("rise", "field_rise_mm", 1.0, 1000.0, "from black to white of the field"),
    )

    file: str
    digest: str
    cell: float = metres(USUAL_CELL)
    rise: float = metres(0.0)
    stray: float = metres(0.0)

    @classmethod
    def asked(cls, values: Mapping[str, Any], folder: Path) -> Self:
        path = folder.absolute() / values["field_file"]
        sizes = {k.field: values.get(k.key) for k in cls.keys if not k.file}
        given = {name: value / 1000 for name, value in sizes.items() if value}
        if ("rise" in given) != (path.suffix.lower() == ".png"):
            what = "needs to be told how high" if "rise" not in given else "says its heights itself"
            raise _refused(path, what, "field_rise_mm goes with a picture")
        digest = hashlib.sha256(_bytes(path)).hexdigest()
        made = cls(str(path), digest, **given)
        laid_heights(made)
        return made

    def lay(self, rig: Rig, truck: Truck, heading: float, reach: float) -> None:
        cell, laid = laid_heights(self)
        start = front_of_tyres(truck) + self.stray

        def heights(x: Array, y: Array) -> Array:
            return heights_between(laid, cell, frozen(x - start), y)

        lay_heights(rig, truck, reach, cell, heights)

    def passage(self, truck: Truck) -> float:
        """m: as far as brings the rear wheels over it."""
        cell, laid = laid_heights(self)
        return passed(truck, front_of_tyres(truck) + self.stray + cell * (len(laid) - 1))

    def drawn(self, rng: np.random.Generator) -> Self:
        return replace(self, stray=self.stray + rng.uniform(0.0, STRAY))

    def said(self) -> dict[str, Any]:
        return {**super().said(), "file": Path(self.file).name, "digest": self.digest}


def heights_between(laid: Array, cell: float, ahead: Array, left: Array) -> Array:
    """Heights (nx, ny) m of a laid field at `ahead` (nx,) m from its near edge and `left` (ny,) m
    of its middle, between its heights along straight lines, beyond its edges as there.

    laid: (mx, my) m, in cells of `cell` m. Bilinear: (1 - s) h_i + s h_i+1 one way, then the other.
    Source: bilinear interpolation, any numerical text, e.g. W. H. Press et al., Numerical Recipes
    (Cambridge 2007), chapter 3 (from memory).
    """
    i, along = _between(ahead / cell, len(laid))
    j, across = _between(left / cell + (laid.shape[1] - 1) / 2, laid.shape[1])
    rows = laid[i] * (1 - along)[:, None] + laid[i + 1] * along[:, None]
    return frozen(rows[:, j] * (1 - across) + rows[:, j + 1] * across)


def _between(place: Array, count: int) -> tuple[Any, Array]:
    inside = np.clip(place, 0.0, count - 1.0)
    first = np.minimum(inside.astype(int), count - 2)
    return first, frozen(inside - first)


def laid_heights(field: Field) -> tuple[float, Array]:
    """(cell, heights (nx, ny)) m of a field as it is laid, from the mean of its near edge. Raises
    InputError with what is wrong in its file.

    A field finer than FINEST is averaged over as many heights as go into FINEST, and read between
    them.
    Source: common practice, no source: a moving average before thinning out.
    """
    return _laid(field.file, field.digest, field.cell, field.rise)


@lru_cache(maxsize=8)
def _laid(file: str, digest: str, cell: float, rise: float) -> tuple[float, Array]:
    path = Path(file)
    data = _bytes(path)
    if hashlib.sha256(data).hexdigest() != digest:
        raise _refused(path, "has changed since it was first read", "begin again")
    cell, heights = _coarser(_read(path, data, cell, rise), cell)
    sides = tuple(cell * (n - 1) for n in heights.shape)
    if min(sides) < SHORTEST or max(sides) > LONGEST:
        shown = f"is {1000 * sides[0]:.0f} mm long and {1000 * sides[1]:.0f} mm wide"
        allowed = f"it must be {1000 * SHORTEST:g} to {1000 * LONGEST:g} mm; see field_cell_mm"
        raise _refused(path, shown, allowed)
    heights = frozen(heights - heights[0].mean())
    if (relief := float(np.ptp(heights))) > HIGHEST:
        what = f"rises {1000 * relief:.0f} mm from its lowest to its highest"
        raise _refused(path, what, f"at most {1000 * HIGHEST:g} mm: the unit?")
    _check_grade(path, cell, heights)
    return cell, heights


def _coarser(heights: Array, cell: float) -> tuple[float, Array]:
    """The same in cells of FINEST where they are finer: means, taken between the heights."""
    from scipy.ndimage import uniform_filter1d

    if cell >= FINEST or min(heights.shape) < 2:
        return cell, heights
    for axis in (0, 1):
        heights = uniform_filter1d(heights, max(1, round(FINEST / cell)), axis, mode="reflect")
    counts = [int(cell * (n - 1) / FINEST + 1e-9) + 1 for n in heights.shape]
    ahead = frozen(FINEST * np.arange(counts[0]))
    left = frozen(FINEST * (np.arange(counts[1]) - (counts[1] - 1) / 2))
    return FINEST, heights_between(heights, cell, ahead, left)


def _check_grade(path: Path, cell: float, heights: Array) -> None:
    """Also of the way from the level place up to its near edge."""
    rising = heights * levelled(frozen(cell * np.arange(len(heights))))[:, None]
    grades = [float(np.abs(np.diff(rising, axis=axis)).max()) / cell for axis in (0, 1)]
    if max(grades) > math.tan(STEEPEST_FIELD):
        way = "ahead" if grades[0] >= grades[1] else "across"
        what = f"is {math.degrees(math.atan(max(grades))):.0f} deg steep {way}"
        allowed = f"at most {math.degrees(STEEPEST_FIELD):.0f} deg from one height to the next"
        raise _refused(path, what, allowed)


# Files


def _refused(path: Path, what: str, allowed: str = "") -> InputError:
    return InputError(Problem(str(path), what, allowed))


def _bytes(path: Path) -> bytes:
    try:
        size = path.stat().st_size
        if size > MOST_BYTES:
            raise _refused(path, f"has {size} bytes", f"at most {MOST_BYTES}")
        return path.read_bytes()
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or "no usable name"
        raise _refused(path, f"cannot be read: {reason}", _NO_FIELD) from None


def _read(path: Path, data: bytes, cell: float, rise: float) -> Array:
    """(nx, ny) m, i going ahead and j to the left."""
    kind = path.suffix.lower().lstrip(".")
    readers: dict[str, Callable[[], Array]] = {
        "npy": lambda: _table(path, data),
        "png": lambda: rise * _picture(path, data),
        **dict.fromkeys(FORMATS, lambda: _surface(path, cell)),
    }
    if kind not in readers:
        raise _refused(path, "is of no kind that holds a ground", _NO_FIELD)
    heights = readers[kind]()
    if heights.ndim != 2 or not 2 <= min(heights.shape) <= max(heights.shape) <= MOST_SIDE:
        shape = " x ".join(str(n) for n in heights.shape)
        raise _refused(path, f"holds {shape} heights", f"2 to {MOST_SIDE} by 2 to {MOST_SIDE}")
    if not np.isfinite(heights).all():
        share = float(np.mean(~np.isfinite(heights)))
        raise _refused(path, f"has no height at {100 * share:.1f} % of its places", "no holes")
    return frozen(heights)


def _table(path: Path, data: bytes) -> Array:
    try:
        with warnings.catch_warnings(action="ignore"):
            table = np.load(io.BytesIO(data), allow_pickle=False)
    except Exception as error:  # a broken file makes the reader stumble in every possible way
        reason = (str(error).splitlines() or [""])[0][:80]
        raise _refused(path, "is no table of numpy's", reason) from None
    if not isinstance(table, np.ndarray) or table.dtype.kind not in "iuf":
        raise _refused(path, "holds no real numbers", "heights in mm")
    return frozen(table.astype(np.float64) / 1000)


def _picture(path: Path, data: bytes) -> Array:
    """Share of white."""
    from PIL import Image

    try:
        with (
            warnings.catch_warnings(action="ignore"),
            Image.open(io.BytesIO(data), formats=["PNG"]) as im,
        ):
            if max(im.size) > MOST_SIDE:
                wide, tall = im.size
                raise _refused(path, f"is {wide} x {tall} pixels", f"at most {MOST_SIDE} a side")
            if im.mode not in ("1", "L", "I;16", "I;16B", "I"):
                raise _refused(
                    path, f"is a picture in colour ({im.mode})", "one in grey: black is low"
                )
            white = 65535.0 if im.mode.startswith("I") else 255.0
            pixels = np.asarray(im.convert("L") if im.mode == "1" else im, np.float64)
    except InputError:
        raise
    except Exception as error:  # as above
        reason = (str(error).splitlines() or [""])[0][:80]
        raise _refused(path, "is no picture of kind PNG", reason) from None
    return frozen(pixels[::-1, ::-1] / white)


def _surface(path: Path, cell: float) -> Array:
    try:
        return mesh_heights(path, "mm", cell)
    except MeshError as error:
        raise _refused(path, error.what, error.allowed) from None
