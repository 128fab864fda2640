"""Mass properties of a part drawn as a surface in a file. The only module that uses trimesh.

Source: volume, centre and inertia as trimesh has them, by its own word (read 2026) from D. Eberly,
Polyhedral Mass Properties (Geometric Tools), who follows B. Mirtich, Journal of Graphics Tools 1
(1996) (from memory): surface integrals over triangles, V = sum n_x (a + b + c)_x / 6, n = (b - a) x
(c - a). Heights are derived here, from barycentric coordinates.
"""

from __future__ import annotations

import io
import logging
import os
import re
import struct
import warnings
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Any

import numpy as np

from crossfall.truck.model import Array, Shape, frozen
from crossfall.truck.solids import ALONG, Solid, box_gyration

MAX_MESH_BYTES = 10_000_000
MAX_FACES = 100_000
MAX_CORNERS = 300_000  # what so many faces can have
MAX_CELLS = 1_000_000  # of a surface seen from above
MAX_HEAD = 65_536  # bytes of a PLY file's header
_LONG_LINE = re.compile(rb"[^\n]{4096}")  # a face of hundreds of corners
_ASCII = bytes(b if b < 128 else ord("?") for b in range(256))
FORMATS = ("stl", "obj", "ply")
_UNITS = {"mm": 1e-3, "cm": 1e-2, "m": 1.0, "inch": 0.0254}
MAX_EXTENT = 10.0  # m from the origin; more than that is a wrong unit


class MeshError(Exception):
    """A mesh file that cannot be used, in one sentence: what, and what is allowed."""

    def __init__(self, what: str, allowed: str = "") -> None:
        self.what, self.allowed = what, allowed
        super().__init__(f"{what}; {allowed}")


@dataclass(frozen=True)
class MeshSolid:
    """A mesh as a solid. warning: empty, or what had to be assumed."""

    solid: Solid
    warning: str


def load_mesh(path: Path, unit: str) -> MeshSolid:
    """The solid inside the surface in a file; unit: mm, cm, m or inch. Raises MeshError.

    A surface that does not close has no inside: then its convex hull is used, or where it has none
    its bounding box, and the warning says so.
    """
    about = _about(path)
    return _load(path, unit, about.st_mtime_ns, about.st_size)


def mesh_heights(path: Path, unit: str, cell: float) -> Array:
    """(nx, ny) m, how high a surface in a file reaches over the middles of square cells (m), from
    the lowest x and y of its box on; nan where there is nothing of it. Raises MeshError.

    z = z_a + b (z_b - z_a) + c (z_c - z_a), b and c the middle's place within each triangle.
    """
    _about(path)
    surface = _mesh(path, unit)
    low, high = surface.vertices.min(axis=0), surface.vertices.max(axis=0)
    nx, ny = (max(1, round(float(d) / cell)) for d in (high - low)[:2])
    if nx * ny > MAX_CELLS:
        raise MeshError(f"names a surface of {nx} x {ny} cells", f"at most {MAX_CELLS}: the unit?")
    heights = np.full((nx, ny), -np.inf)
    for corners in np.asarray(surface.triangles):
        plan = (corners[:, :2] - low[:2]) / cell - 0.5  # in cells, 0 the middle of the first
        first = np.maximum(np.ceil(plan.min(axis=0)).astype(int), 0)
        last = np.minimum(np.floor(plan.max(axis=0)).astype(int) + 1, (nx, ny))
        (ax, ay), (bx, by) = plan[1] - plan[0], plan[2] - plan[0]
        area = ax * by - ay * bx
        if area == 0 or (last <= first).any():
            continue  # upright, or between the middles
        x = np.arange(first[0], last[0])[:, None] - plan[0, 0]
        y = np.arange(first[1], last[1])[None, :] - plan[0, 1]
        b, c = (x * by - y * bx) / area, (y * ax - x * ay) / area
        inside = (b >= -1e-9) & (c >= -1e-9) & (b + c <= 1 + 1e-9)
        z = (
            corners[0, 2]
            + b * (corners[1, 2] - corners[0, 2])
            + c * (corners[2, 2] - corners[0, 2])
        )
        part = heights[first[0] : last[0], first[1] : last[1]]
        np.maximum(part, z, out=part, where=inside)
    return frozen(np.where(np.isfinite(heights), heights, np.nan))


@lru_cache(maxsize=64)
def _load(path: Path, unit: str, _mtime: int, _size: int) -> MeshSolid:
    mesh = _mesh(path, unit)
    # Where nothing is enclosed, its middle is that of nothing, which the library warns of.
    with np.errstate(all="ignore"), warnings.catch_warnings(action="ignore"):
        return _solid(mesh)


def _about(path: Path) -> os.stat_result:
    try:
        about = path.stat()
    except OSError as error:
        raise MeshError("names a mesh file that cannot be read", str(error.strerror)) from None
    if not path.is_file():
        raise MeshError("names something that is not a file", "an STL, OBJ or PLY file")
    if about.st_size > MAX_MESH_BYTES:
        raise MeshError(f"names a mesh of {about.st_size} bytes", f"at most {MAX_MESH_BYTES}")
    return about


def _mesh(path: Path, unit: str) -> Any:
    """The surface in a file, in m. Raises MeshError."""
    kind = path.suffix.lower().lstrip(".")
    if kind not in FORMATS:
        raise MeshError(f"names a file of kind '{path.suffix}'", "an STL, OBJ or PLY file")
    data = path.read_bytes()
    _check_count(kind, data)
    log = logging.getLogger("trimesh")  # it logs whole tracebacks of what it cannot read
    level = log.level
    log.setLevel(logging.CRITICAL + 1)
    try:
        # A number out of range warns on its way to being refused.
        with np.errstate(all="ignore"), warnings.catch_warnings(action="ignore"):
            return _parse(kind, _plain(kind, data), _UNITS[unit])
    except MeshError:
        raise
    except MemoryError:
        raise MeshError("names a mesh that does not fit in memory", "a smaller one") from None
    except Exception as error:  # a broken file makes the readers stumble in every possible way
        reason = str(error).splitlines() or [""]
        raise MeshError(f"names a broken {kind.upper()} file", reason[0][:80]) from None
    finally:
        log.setLevel(level)


def _check_count(kind: str, data: bytes) -> None:
    """Refuse a file that promises more than the bounds before anything is made of it."""
    faces = corners = 0
    if kind == "ply":
        for line in _ply_head(data).splitlines():
            words = line.split()
            if words[:1] == [b"element"] and len(words) == 3 and words[2].isdigit():
                count = int(words[2][:12])
                faces, corners = max(faces, count), max(corners, count)
    elif kind == "obj":
        if _LONG_LINE.search(data):
            raise MeshError("names a mesh with lines of thousands of characters", "triangles")
        faces, corners = (data.count(b"\n" + word) for word in (b"f", b"v"))
    elif _binary_stl(data):
        (faces,) = struct.unpack("<I", data[80:84])
    else:
        faces = data.lower().count(b"facet") // 2
    if faces > MAX_FACES:
        raise MeshError(f"names a mesh of {faces} faces", f"at most {MAX_FACES}")
    if corners > MAX_CORNERS:
        raise MeshError(f"names a mesh of {corners} corners", f"at most {MAX_CORNERS}")


def _ply_head(data: bytes) -> bytes:
    """What stands before the numbers."""
    end = data.find(b"end_header", 0, MAX_HEAD)
    if end < 0:
        raise MeshError("names a broken PLY file", "a header that ends")
    return data[:end]


def _binary_stl(data: bytes) -> bool:
    """By its length, since the header of many begins with `solid` too."""
    if len(data) < 84:
        return False
    (count,) = struct.unpack("<I", data[80:84])
    binary = len(data) == 84 + 50 * count
    return bool(binary) or not data[:5].lower().startswith(b"solid")


def _plain(kind: str, data: bytes) -> bytes:
    """With all text in ASCII: names and comments, in whatever letters, say nothing of the shape."""
    if kind == "stl" and _binary_stl(data):
        return b" " * 80 + data[80:]
    if kind == "ply" and b"format ascii" not in (head := _ply_head(data)):
        return head.translate(_ASCII) + data[len(head) :]
    return data.translate(_ASCII)


def _parse(kind: str, data: bytes, scale: float) -> Any:
    """The surface in m, its corners merged."""
    import trimesh

    # No resolver: a mesh may not pull in other files.
    mesh = trimesh.load_mesh(
        io.BytesIO(data), file_type=kind, resolver=None, skip_materials=True, process=False
    )
    if not isinstance(mesh, trimesh.Trimesh) or len(mesh.faces) == 0:
        raise MeshError("names a mesh without faces", "a surface made of triangles")
    vertices, faces = np.asarray(mesh.vertices), np.asarray(mesh.faces)
    if len(faces) > MAX_FACES:
        raise MeshError(f"names a mesh of {len(faces)} faces", f"at most {MAX_FACES}")
    if vertices.ndim != 2 or vertices.shape[1] != 3 or faces.shape[1] != 3:
        raise MeshError(f"names a broken {kind.upper()} file", "corners with x, y and z")
    if faces.min() < 0 or faces.max() >= len(vertices):
        raise MeshError(f"names a broken {kind.upper()} file", "faces between its own corners")
    used = vertices[np.unique(faces)]
    if not np.isfinite(used).all():
        raise MeshError("names a mesh with NaN or infinite corners", "finite numbers")
    extent = float(np.abs(used).max()) * scale
    if not 0 < extent <= MAX_EXTENT:
        raise MeshError(
            f"names a mesh that reaches {extent:.3g} m", f"at most {MAX_EXTENT:g} m: the unit?"
        )
    mesh = trimesh.Trimesh(vertices * scale, faces, process=False)
    mesh.merge_vertices()
    mesh.remove_unreferenced_vertices()
    return mesh


def _solid(mesh: Any) -> MeshSolid:
    faces = np.array(mesh.faces, dtype=np.int64)
    faces.flags.writeable = False
    shape = Shape("mesh", vertices=frozen(mesh.vertices), faces=faces)
    inside, warning = mesh, ""
    if not mesh.is_watertight:
        inside, warning = _hull(mesh), "the mesh is not closed; its convex hull is used instead"
    elif not mesh.is_winding_consistent:
        inside, warning = _hull(mesh), "the mesh's faces disagree on outside; its hull is used"
    if inside is None or abs(inside.volume) < 1e-15:
        warning = "the mesh encloses nothing; its bounding box is used instead"
        return MeshSolid(_bounding_box(mesh.vertices, shape), warning)
    volume = float(inside.volume)
    # A closed surface turned inside out has all signs reversed, and the same inside.
    gyration = np.array(inside.moment_inertia, dtype=np.float64) / volume
    centre = np.array(inside.center_mass, dtype=np.float64)
    return MeshSolid(
        Solid(abs(volume), frozen(centre), frozen(gyration), shape, ALONG["z"]), warning
    )


def _hull(mesh: Any) -> Any:
    try:
        return mesh.convex_hull
    except Exception:  # a flat or single-line mesh has no hull, and qhull says so in many ways
        return None


def _bounding_box(vertices: Array, shape: Shape) -> Solid:
    low, high = vertices.min(axis=0), vertices.max(axis=0)
    edges = np.maximum(high - low, 1e-4)  # a flat surface still has some thickness
    centre = frozen((low + high) / 2)
    return Solid(float(edges.prod()), centre, frozen(box_gyration(*edges)), shape, ALONG["z"])
