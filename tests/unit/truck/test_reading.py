"""The line index, and that no file at all gives anything but a truck or a list of mistakes."""

from __future__ import annotations

import os
import random
import subprocess
import sys
import tomllib
from pathlib import Path

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from spec_text import SAMPLE, line_of, load

from crossfall.truck.axle_law import BY_Q, LEFT, law_of
from crossfall.truck.build import load_text, load_truck
from crossfall.truck.demos import demo_folder, demo_names, find_demo
from crossfall.truck.digest import truck_digest
from crossfall.truck.errors import InputError
from crossfall.truck.massprops import unsprung, whole
from crossfall.truck.model import GRAVITY
from crossfall.truck.ride import level_axle_loads, spring_preloads
from crossfall.truck.toml_line_index import line_index, nearest_line

TRICKY = '''\
# a = 0
a = 1
"quoted.key" = """ [[part]] \\"""
b = 3 """
'lit' = \'\'\'
[trap]
c = 1
\'\'\'
d.e.f = "x # no comment"   # comment = 1
[t.u]
arr = [
  1, # one ]
  [2, 3],
  "a#b]",
]
s = { k = "v", m = [1,
 2], n.o = 3 }
when = 1979-05-27T07:32:00Z
[[part]]
n = 1
[part.shape]
k = 2.0e5
[[part.sub]]
u = 1
[[part.sub]]
u = 2
[[part]]
n = 2
"esc\\u0061ped" = true
'''


def paths_of(value: object, path: tuple = ()) -> set:
    found = {path} if path else set()
    if isinstance(value, dict):
        for k, v in value.items():
            found |= paths_of(v, (*path, k))
    elif isinstance(value, list):
        for i, v in enumerate(value):
            found |= paths_of(v, (*path, i))
    return found


def test_lines_of_a_tricky_file():
    index = line_index(TRICKY)
    for path, snippet in [
        (("a",), "a = 1"),
        (("quoted.key",), '"quoted.key"'),
        (("lit",), "'lit'"),
        (("d", "e", "f"), "d.e.f"),
        (("t", "u", "arr", 1, 0), "[2, 3]"),
        (("t", "u", "arr", 2), '"a#b]"'),
        (("t", "u", "s", "m", 1), " 2], n.o"),
        (("t", "u", "s", "n", "o"), " 2], n.o"),
        (("part", 0, "shape", "k"), "k = 2.0e5"),
        (("part", 0, "sub", 1, "u"), "u = 2"),
        (("part", 1, "n"), "n = 2"),
        (("part", 1, "escaped"), '"esc'),
    ]:
        assert index[path] == line_of(TRICKY, snippet), path
    assert ("trap",) not in index
    assert nearest_line(index, ("part", 1, "missing", 3)) == index[("part", 1)]
    assert nearest_line(index, ("nowhere",)) is None


@pytest.mark.parametrize("text", [TRICKY, SAMPLE, TRICKY.replace("\n", "\r\n")])
def test_every_value_has_a_line(text):
    index = line_index(text)
    assert paths_of(tomllib.loads(text)) <= set(index)


@pytest.mark.parametrize("name", demo_names())
def test_every_value_of_the_demos_has_a_line(name):
    text = (demo_folder() / f"{name}.toml").read_text()
    index = line_index(text)
    assert paths_of(tomllib.loads(text)) <= set(index)


@settings(max_examples=150, deadline=None)
@given(st.text(max_size=200))
def test_the_line_index_ends_on_any_text(text):
    assert all(1 <= n <= text.count("\n") + 1 for n in line_index(text).values())


def outcome(text_or_bytes: str | bytes, folder: Path) -> str:
    """ "fine" or "mistakes"; any other exception goes through and fails the test."""
    path = folder / "fuzz.toml"
    raw = text_or_bytes if isinstance(text_or_bytes, bytes) else text_or_bytes.encode()
    path.write_bytes(raw)
    problems = ()
    try:
        load_truck(path)
    except InputError as error:
        problems = error.problems or ("nothing said",)
    assert all(p.what and "\n" not in str(p) for p in problems)
    return "mistakes" if problems else "fine"


@pytest.fixture(scope="module")
def folder(tmp_path_factory) -> Path:
    return tmp_path_factory.mktemp("fuzz")


@settings(max_examples=150, deadline=None, suppress_health_check=list(HealthCheck))
@given(st.binary(max_size=300))
def test_random_bytes_give_mistakes(folder, data):
    assert outcome(data, folder) == "mistakes"


WORDS = (
    b"nan", b"inf", b"-1", b"0", b"1e400", b"9" * 400, b"[]", b"{}", b"\"", b"'''", b"true", b"=",
    b"[[", b"]]", b".", b"#", b"\n", b"\0", b"\xff", b"1979-05-27", b"[1, 2]", b"{ a = 1 }",
)  # fmt: skip


@pytest.mark.parametrize("seed", range(120))
def test_random_damage_to_the_demos_never_breaks_the_reader(folder, seed):
    rng = random.Random(seed)
    path = find_demo(rng.choice(["bramble", "thistle"]))
    assert path is not None
    data = bytearray(path.read_bytes())
    for _ in range(rng.choice([1, 1, 2, 5, 20])):
        at, end = rng.randrange(len(data)), rng.randrange(len(data))
        kind = rng.randrange(4)
        if kind == 0:
            data[at] = rng.randrange(256)
        elif kind == 1:
            data[at:at] = rng.choice(WORDS)
        elif kind == 2:
            del data[at : at + rng.randrange(40)]
        else:
            data[at:at] = data[end : end + rng.randrange(200)]
    assert outcome(bytes(data), folder) in ("fine", "mistakes")


def swap_value(data: object, rng: random.Random) -> object:
    """The data with one random value somewhere replaced by something strange."""
    if isinstance(data, dict) and data and rng.random() < 0.95:
        key = rng.choice(sorted(data))
        return {**data, key: swap_value(data[key], rng)}
    if isinstance(data, list) and data and rng.random() < 0.95:
        i = rng.randrange(len(data))
        return [*data[:i], swap_value(data[i], rng), *data[i + 1 :]]
    return rng.choice([0, -1, 1e-300, 1e300, 10**40, True, "", "x" * 300, [], {}, [[]], 3.5, "all"])


@pytest.mark.parametrize("seed", range(150))
def test_random_wrong_values_never_break_the_reader(folder, seed):
    import tomlkit

    rng = random.Random(seed)
    path = find_demo(rng.choice(["bramble", "thistle"]))
    assert path is not None
    data = tomllib.loads(path.read_text())
    for _ in range(rng.choice([1, 2, 4])):
        data = swap_value(data, rng)
        if not isinstance(data, dict):
            data = {"format": data}
    assert outcome(tomlkit.dumps(data), folder) in ("fine", "mistakes")


@settings(max_examples=25, deadline=None)
@given(st.randoms(use_true_random=False))
def test_the_order_of_parts_does_not_matter(random_order):
    blocks = SAMPLE.split("\n[[part]]\n")
    parts = blocks[1:]
    random_order.shuffle(parts)
    shuffled = "\n[[part]]\n".join([blocks[0], *(p.rstrip("\n") + "\n" for p in parts)])
    a, b = (whole(load_text(t, "x.toml").truck) for t in (SAMPLE, shuffled))
    assert a.mass == pytest.approx(b.mass, rel=1e-14)
    assert a.cg == pytest.approx(b.cg, rel=1e-12, abs=1e-15)
    assert a.inertia.ravel() == pytest.approx(b.inertia.ravel(), rel=1e-11, abs=1e-15)


@settings(max_examples=25, deadline=None)
@given(st.floats(0.5, 3.0))
def test_a_shape_weighed_or_computed_is_the_same(density):
    """Giving the mass a shape has anyway changes nothing."""
    computed = SAMPLE.replace("density_g_cm3 = 1.15", f"density_g_cm3 = {density!r}")
    weighed = computed.replace('material = "resin"', f"mass_g = {density * 60 * 40 * 2 / 1e3!r}")
    a, b = (load_text(t, "x.toml").truck for t in (computed, weighed))
    assert whole(a).mass == pytest.approx(whole(b).mass, rel=1e-13)
    assert whole(a).cg == pytest.approx(whole(b).cg, rel=1e-12, abs=1e-15)


@settings(max_examples=20, deadline=None)
@given(st.integers(1, 4), st.floats(-30, 30))
def test_a_count_is_the_same_as_so_many_entries(count, step):
    part = (
        '\n[[part]]\nname = "bolt{n}"\non = "chassis"\nmass_g = 5\nat_mm = [{x!r}, 20, 120]\n{more}'
    )
    more = f"count = {count}\n" + (f"step_mm = [{step!r}, 0, 0]\n" if count > 1 and step else "")
    one = SAMPLE + part.format(n="", x=40.0, more=more)
    steps = range(count)
    many = SAMPLE + "".join(
        part.format(n=i, x=40.0 + i * (step if count > 1 else 0), more="") for i in steps
    )
    a, b = (whole(load_text(t, "x.toml").truck) for t in (one, many))
    assert a.cg == pytest.approx(b.cg, rel=1e-12, abs=1e-15)
    assert a.mass == pytest.approx(b.mass, rel=1e-14)


def test_a_truck_built_twice_is_the_same_to_the_byte(tmp_path):
    code = (
        "from crossfall.truck.build import load_truck;"
        "from crossfall.truck.digest import truck_digest;"
        "print(truck_digest(load_truck('bramble').truck))"
    )
    seen = set()
    for seed in ("1", "77"):
        env = {**os.environ, "PYTHONHASHSEED": seed}
        run = subprocess.run(
            [sys.executable, "-c", code], cwd=tmp_path, env=env, capture_output=True, text=True
        )
        assert run.returncode == 0, run.stderr
        seen.add(run.stdout.strip())
    assert seen == {truck_digest(load_truck("bramble").truck)}


def test_the_digest_notices_every_kind_of_change(tmp_path):
    changes = [
        ("track_mm = 170", "track_mm = 170.001"),
        ("stiffness_n_per_mm = 5", "stiffness_n_per_mm = 5.001"),
        ("likely = 0.85", "likely = 0.86"),
        ("mass_g = 250", "mass_g = 250.001"),
        ('driven = "both"', 'driven = "rear"'),
        ("steering_lock_deg = 40\n", ""),
        ('name = "cover"', 'name = "lid"'),
    ]
    digests = {truck_digest(load(tmp_path).truck)}
    for old, new in changes:
        assert old in SAMPLE
        digests.add(truck_digest(load(tmp_path, SAMPLE.replace(old, new, 1)).truck))
    assert len(digests) == 1 + len(changes)


@pytest.mark.parametrize("name", ["bramble", "thistle", "burdock"])
def test_the_demos_are_what_they_say(name):
    loaded = load_truck(name)
    truck = loaded.truck
    assert loaded.warnings == ()
    assert "nvented" in loaded.path.read_text()
    assert len(loaded.spec.part) >= 25
    body = whole(truck)
    assert 2.0 <= body.mass <= 4.0
    assert 0.290 <= truck.wheelbase <= 0.330
    for axle in truck.axles:
        assert 0.190 <= axle.track + axle.tyre.width <= 0.240
        assert 0.3 <= damping_ratio(truck, axle) <= 0.7
    weighty = [p for p in loaded.spec.part if p.price == 0]
    assert [p.name for p in weighty] == ["wiring"]
    assert all(p.mass_sd > 0 and p.place_sd > 0 for p in truck.parts)
    for p in truck.parts:
        assert p.shape is not None
        assert min(p.body.cg[2], 1) > 0


def damping_ratio(truck, axle) -> float:
    """Of the sprung mass on one corner of an axle, its spring and damper along their shock."""
    i = truck.axles.index(axle) if axle is not truck.rear else 1
    sprung = (level_axle_loads(truck)[i] / GRAVITY - unsprung(truck, i).mass) / 2
    s = axle.suspension
    still = np.zeros(1)
    ratio = law_of(axle).at(still, still)[LEFT, BY_Q, 0]  # of the shaft's travel to the wheel's
    return ratio * s.damping / (2 * (s.spring_rate * sprung) ** 0.5)


def test_the_demos_have_their_characters():
    bramble, thistle, burdock = (load_truck(n).truck for n in ("bramble", "thistle", "burdock"))
    shares = [
        level_axle_loads(t)[1] / level_axle_loads(t).sum() for t in (bramble, thistle, burdock)
    ]
    assert shares[0] > 0.55
    assert shares[1] < 0.45
    assert whole(bramble).cg[2] > whole(burdock).cg[2] > whole(thistle).cg[2]
    assert whole(thistle).mass == min(whole(t).mass for t in (bramble, thistle, burdock))
    assert burdock.wheelbase > max(bramble.wheelbase, thistle.wheelbase)
    assert burdock.front.track > max(bramble.front.track, thistle.front.track)
    assert bramble.wheelbase == pytest.approx(0.313)  # common practice, no source
    for truck in (bramble, thistle, burdock):
        rates = [a.suspension.spring_rate for a in truck.axles for _ in range(2)]
        droops = [a.suspension.droop for a in truck.axles for _ in range(2)]
        assert all(f / k > d for f, k, d in zip(spring_preloads(truck), rates, droops, strict=True))
    assert max(a.suspension.droop for a in thistle.axles) <= 0.006


def test_the_body_of_bramble_weighs_what_such_bodies_do():
    # 600 to 860 g: common practice, no source.
    names = {"bonnet", "grille", "cab", "interior and driver", "bed", "wing mirror", "headlight",
             "roof rack", "light bar"}  # fmt: skip
    loaded = load_truck("bramble")
    mass = sum(p.body.mass for p in loaded.truck.parts if loaded.spec.part[p.row].name in names)
    assert 0.600 <= mass <= 0.860


def test_no_mesh_no_heavy_imports():
    code = (
        "import sys; from crossfall.truck.build import load_truck; load_truck('bramble');"
        "print([m for m in ('trimesh', 'scipy', 'matplotlib', 'pybullet', 'tomlkit')"
        " if m in sys.modules])"
    )
    run = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True)
    assert run.stdout.strip() == "[]", run.stderr
