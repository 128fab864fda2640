"""Parts given as surfaces: closed, open, flat, broken, gigantic, and where they may come from."""

from __future__ import annotations

import random
import struct
import warnings
from pathlib import Path

import numpy as np
import pytest
import trimesh
from spec_text import SAMPLE, load, mistakes

from crossfall.truck.meshes import MAX_CORNERS, MAX_FACES, MAX_MESH_BYTES, MeshError, load_mesh

PART = """
[[part]]
name = "thing"
on = "chassis"
material = "brass"
shape = {{ kind = "mesh", file = "{file}", unit = "{unit}" }}
at_mm = [{at}]
{more}
"""


def with_mesh(file: str, unit: str = "mm", at: str = "10, 0, 100", more: str = "") -> str:
    return SAMPLE + PART.format(file=file, unit=unit, at=at, more=more)


def wedge() -> trimesh.Trimesh:
    """A closed lopsided solid, mm."""
    mesh = trimesh.creation.box((20, 12, 8))
    mesh.vertices[mesh.vertices[:, 0] > 0] *= (1.5, 0.5, 0.7)
    mesh.vertices += (3, 2, 5)
    return mesh


@pytest.mark.parametrize("kind", ["stl", "obj", "ply"])
def test_a_closed_mesh_weighs_its_volume(tmp_path, kind):
    mesh = wedge()
    mesh.export(tmp_path / f"thing.{kind}")
    loaded = load(tmp_path, with_mesh(f"thing.{kind}"))
    part = loaded.truck.parts[-1]
    assert loaded.warnings == ()
    assert part.body.mass == pytest.approx(mesh.volume * 1e-9 * 8500, rel=1e-6)
    np.testing.assert_allclose(
        part.body.cg, np.add(mesh.center_mass, (10, 0, 100)) * 1e-3, rtol=0, atol=1e-8
    )
    np.testing.assert_allclose(
        part.body.inertia, mesh.moment_inertia * 8500 * 1e-15, rtol=1e-5, atol=1e-12
    )


def test_the_unit_is_the_only_difference_between_mm_and_inches(tmp_path):
    mesh = wedge()
    mesh.export(tmp_path / "metric.ply")
    mesh.apply_scale(1 / 25.4)
    mesh.export(tmp_path / "inch.ply")
    a = load(tmp_path, with_mesh("metric.ply")).truck.parts[-1].body
    b = load(tmp_path, with_mesh("inch.ply", "inch")).truck.parts[-1].body
    assert a.mass == pytest.approx(b.mass, rel=1e-5)
    np.testing.assert_allclose(a.cg, b.cg, rtol=1e-5, atol=1e-9)


def test_a_mesh_turned_inside_out_is_the_same_solid(tmp_path):
    mesh = wedge()
    mesh.export(tmp_path / "right.stl")
    mesh.invert()
    mesh.export(tmp_path / "inverted.stl")
    right, inverted = (load_mesh(tmp_path / f, "mm") for f in ("right.stl", "inverted.stl"))
    assert inverted.solid.volume == pytest.approx(right.solid.volume)
    np.testing.assert_allclose(inverted.solid.gyration, right.solid.gyration, rtol=1e-9, atol=1e-18)


def test_a_mirrored_mesh_is_a_mirror_image(tmp_path):
    mesh = wedge()
    mesh.export(tmp_path / "thing.stl")
    text = with_mesh("thing.stl", at="10, 30, 100", more="mirror = true\nturn_deg = [10, 20, 30]")
    left, right = load(tmp_path, text).truck.parts[-2:]
    flip = np.array([1, -1, 1])
    np.testing.assert_allclose(right.body.cg, left.body.cg * flip, atol=1e-12)
    np.testing.assert_allclose(
        right.body.inertia, left.body.inertia * np.outer(flip, flip), atol=1e-15
    )
    assert right.shape is not None
    assert left.shape is not None
    drawn = [p.centre + (p.turn @ p.shape.vertices.T).T for p in (left, right)]
    np.testing.assert_allclose(np.sort(drawn[1] * flip, axis=0), np.sort(drawn[0], axis=0))
    image = trimesh.Trimesh(right.shape.vertices, right.shape.faces)
    assert image.volume > 0


def test_an_open_mesh_counts_as_its_hull_and_says_so(tmp_path):
    mesh = wedge()
    hull = mesh.convex_hull.volume
    mesh.update_faces(np.arange(len(mesh.faces)) != 0)
    mesh.export(tmp_path / "open.stl")
    loaded = load(tmp_path, with_mesh("open.stl"))
    (warning,) = loaded.warnings
    assert "not closed" in warning.what
    assert warning.key == "part.thing.shape.file"
    assert loaded.truck.parts[-1].body.mass == pytest.approx(hull * 1e-9 * 8500, rel=1e-5)


def test_a_mesh_closed_around_nothing_counts_as_its_bounding_box_without_a_word(tmp_path):
    path, head = tmp_path / "nothing.ply", "ply\nformat ascii 1.0\nelement vertex 8\n"
    head += "".join(f"property float {axis}\n" for axis in "xyz") + "element face 12\n"
    head += "property list uchar int vertex_indices\nend_header\n"
    corners = ("0 0 0", "40 30 20", "0 30 0", "0 30 20", "40 0 0", "40 0 20", "40 30 0", "0 0 20")
    faces = ("0 1 3", "0 3 2", "4 6 7", "4 7 5", "0 4 5", "0 5 1", "2 3 7", "2 7 6")
    faces += ("0 2 6", "0 6 4", "1 5 7", "1 7 3")  # a block with two of its corners changed over
    path.write_text(head + "\n".join([*corners, *(f"3 {face}" for face in faces)]) + "\n")
    with warnings.catch_warnings(action="error"):
        found = load_mesh(path, "mm")
    assert "bounding box" in found.warning


def test_a_flat_mesh_counts_as_its_bounding_box(tmp_path):
    flat = trimesh.Trimesh([[0, 0, 0], [10, 0, 0], [10, 5, 0], [0, 5, 0]], [[0, 1, 2], [0, 2, 3]])
    flat.export(tmp_path / "flat.stl")
    found = load_mesh(tmp_path / "flat.stl", "mm")
    assert "bounding box" in found.warning
    assert found.solid.volume == pytest.approx(0.010 * 0.005 * 1e-4)


def binary_stl(faces: int) -> bytes:
    return b"\0" * 80 + struct.pack("<I", faces)


LATE_COUNT = b"ply\nformat binary_little_endian 1.0\n" + b"comment\n" * 5000
LATE_COUNT += b"element vertex 99999999999\nproperty float x\nend_header\n"


@pytest.mark.parametrize(
    ("name", "content", "words"),
    [
        ("a.stl", binary_stl(MAX_FACES + 1), "faces"),
        ("a.stl", binary_stl(1000), "broken"),
        ("a.stl", b"", "mesh"),
        ("a.stl", b"solid nothing\nendsolid nothing\n", "mesh"),
        ("a.ply", b"ply\nformat ascii 1.0\nelement vertex 999999999\nend_header\n", "faces"),
        ("a.ply", b"ply\n", "broken"),
        ("a.ply", LATE_COUNT, "faces"),
        ("a.obj", b"v 0 0 0\nv 1 0 0\nv 0 1 0\nf" + b" 1 2 3" * 100_000, "lines"),
        ("a.obj", b"v 0 0 0" + b"\nv 1 2 3" * (MAX_CORNERS + 1), "corners"),
        ("a.obj", b"v 0 0 0\nf 1 2 3\n", "broken"),
        ("a.obj", b"mtllib ../../etc/passwd\nv nan 0 0\nv 1 0 0\nv 0 1 0\nf 1 2 3\n", "NaN"),
        ("a.gltf", b"{}", "kind"),
        ("a.stl", random.Random(1).randbytes(300), "mesh"),
    ],
)
def test_files_that_are_no_usable_mesh(tmp_path, name, content, words):
    (tmp_path / name).write_bytes(content)
    (problem,) = mistakes(tmp_path, with_mesh(name))
    assert words in f"{problem.what} {problem.allowed}"
    assert problem.key == "part.thing.shape.file"


@pytest.mark.parametrize("kind", ["stl", "binary stl", "binary stl called solid", "obj", "ply"])
def test_names_and_comments_may_be_in_any_letters(tmp_path, kind):
    """Latin-1, as older programs on Windows write them."""
    suffix = kind.split()[1] if " " in kind else kind
    path = tmp_path / f"thing.{suffix}"
    word = "Größe".encode("latin-1")
    if kind == "stl":
        path.write_bytes(trimesh.exchange.stl.export_stl_ascii(wedge()).encode())
        path.write_bytes(path.read_bytes().replace(b"solid", b"solid " + word))
    else:
        wedge().export(path)
        data = path.read_bytes()
        begin = b"solid " if "called" in kind else b""
        data = {
            "obj": b"# " + word + b"\n" + data,
            "ply": data.replace(b"comment ", b"comment " + word, 1),
        }.get(suffix, (begin + word).ljust(80) + data[80:])
        path.write_bytes(data)
    assert word in path.read_bytes()
    found = load_mesh(path, "mm")
    assert found.warning == ""
    assert found.solid.volume == pytest.approx(wedge().volume * 1e-9, rel=1e-6)


def test_a_gigantic_file_is_not_even_opened(tmp_path):
    path = tmp_path / "big.stl"
    with open(path, "wb") as stream:
        stream.truncate(MAX_MESH_BYTES + 1)
    with pytest.raises(MeshError, match="bytes"):
        load_mesh(path, "mm")


def test_a_mesh_in_the_wrong_unit_is_noticed(tmp_path):
    wedge().export(tmp_path / "thing.stl")
    (problem,) = mistakes(tmp_path, with_mesh("thing.stl", "m"))
    assert "unit" in problem.allowed


@pytest.mark.parametrize("name", ["../thing.stl", "/etc/hostname", "link.stl", "none.stl"])
def test_meshes_stay_inside_the_folder(tmp_path, name):
    inner = tmp_path / "inner"
    inner.mkdir()
    wedge().export(tmp_path / "thing.stl")
    (inner / "link.stl").symlink_to(tmp_path / "thing.stl")
    (problem,) = mistakes(inner, with_mesh(name))
    assert "outside" in problem.what or "cannot be read" in problem.what


def test_an_included_part_names_its_mesh_from_its_own_folder(tmp_path):
    sub = tmp_path / "sub"
    sub.mkdir()
    wedge().export(sub / "thing.stl")
    (sub / "parts.toml").write_text(PART.format(file="thing.stl", unit="mm", at="0,0,99", more=""))
    loaded = load(tmp_path, 'include = ["sub/parts.toml"]\n' + SAMPLE)
    assert loaded.truck.parts[-1].label == "thing"


def test_a_spec_built_without_a_folder_takes_no_mesh(tmp_path: Path):
    from crossfall.truck.build import build
    from crossfall.truck.errors import InputError

    wedge().export(tmp_path / "thing.stl")
    spec = load(tmp_path, with_mesh("thing.stl")).spec
    with pytest.raises(InputError, match="outside"):
        build(spec)


@pytest.mark.parametrize("kind", ["stl", "obj", "ply"])
def test_random_damage_to_a_mesh_never_breaks_the_reader(tmp_path, kind):
    wedge().export(tmp_path / f"a.{kind}")
    whole = (tmp_path / f"a.{kind}").read_bytes()
    outcomes = set()
    for seed in range(60):
        rng = random.Random(seed)
        data = bytearray(whole)
        for _ in range(rng.choice([1, 3, 10])):
            at = rng.randrange(len(data))
            junk = rng.choice([b"nan", b"-1", b"99999999", b"\0" * 8, b"\xff" * 4, b"", b"7 7"])
            data[at : at + rng.randrange(6)] = junk
        path = tmp_path / f"{seed}.{kind}"
        path.write_bytes(bytes(data))
        try:
            solid = load_mesh(path, "mm").solid
        except MeshError:
            outcomes.add("refused")
            continue
        outcomes.add("used")
        low, _, high = np.linalg.eigvalsh(solid.gyration)
        assert solid.volume > 0
        assert low > 0
        assert np.isfinite([high, *solid.centre]).all()
    assert "refused" in outcomes
