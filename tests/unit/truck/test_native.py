"""What is compiled is what is written, and is kept, lost and damaged without harm."""

from __future__ import annotations

import subprocess
import sys

import numpy as np
import pytest
from scipy.spatial.transform import Rotation

from crossfall.engines import axle_forces
from crossfall.engines.held_wheels import HeldWheels
from crossfall.engines.settings import TrialSettings
from crossfall.engines.springs import corner_springs, set_corners
from crossfall.truck import native
from crossfall.truck.ride import tyre_loads
from support import make_truck, with_tyres

LOADS = """
import sys
from crossfall.engines import axle_forces
from crossfall.statics import balance
from crossfall.truck.native import entry
for module in (axle_forces, balance):
    for function in vars(module).values():
        if hasattr(function, "kinds") and function.__module__ == module.__name__:
            entry(function)
print("numba" in sys.modules)
"""


def loaded() -> str:
    done = subprocess.run([sys.executable, "-c", LOADS], capture_output=True, text=True)
    assert done.returncode == 0, done.stderr
    return done.stdout.strip()


@pytest.fixture
def folder(tmp_path, monkeypatch):
    """An empty place for object files, and nothing compiled before."""
    monkeypatch.setattr(native, "_folders", lambda module: (tmp_path / "made here",))
    native.entry.cache_clear()
    yield tmp_path / "made here"
    native.entry.cache_clear()


def loads_and_slips() -> list[list[float]]:
    truck = make_truck(chassis_cg=(0.0, 0.01, 0.1))
    held = HeldWheels(truck, tyre_loads(truck).tolist(), 0.0, 1 / 240)
    for i, axle in enumerate(truck.axles):
        held.press(i, (axle.x, 0.0, 0.074), np.eye(3).ravel(), (0.0,) * 3, (0.0, 1.0, -9.0))
    return held.told()


def test_a_later_process_does_without_the_compiler():
    loaded()  # whoever came first has compiled
    assert loaded() == "False"


def test_what_is_kept_is_found_again(folder, monkeypatch):
    first = loads_and_slips()
    kept = sorted(folder.iterdir())
    assert [path.name.split("-")[0] for path in kept] == ["press", "wheels"]
    native.entry.cache_clear()
    monkeypatch.setattr(native, "_compiled", None)
    assert loads_and_slips() == first


@pytest.mark.parametrize("spoil", [b"", b"\n", b"atan2\nno object", b"no_such_function\n"])
def test_what_is_damaged_is_made_anew(folder, spoil):
    first = loads_and_slips()
    for path in folder.iterdir():
        path.write_bytes(spoil)
    native.entry.cache_clear()
    assert loads_and_slips() == first
    assert all(path.read_bytes() != spoil for path in folder.iterdir())


def test_where_nothing_can_be_written_it_is_compiled_all_the_same(tmp_path, monkeypatch):
    (tmp_path / "a file").write_text("in the way")
    monkeypatch.setattr(native, "_folders", lambda module: (tmp_path / "a file" / "made",))
    native.entry.cache_clear()
    assert loads_and_slips()[0][0] > 0.0
    native.entry.cache_clear()


OTHER = """
import numpy as np
from crossfall.truck.to_compile import arrays, inner, outer
MORE, FLOAT = 2.0, np.float64

@inner
def twice(x):
    return MORE * x

@outer("pi")
def plain(place, count):
    given = arrays(place, (count,), FLOAT)
    for i in range(count):
        given[i] = twice(given[i])

@outer("pi")
def odd(place, count):
    given = arrays(place, (count,), FLOAT).reshape((count // 2, 2))[0]
    for i in range(count // 2):
        given[i] = twice(given[i])
"""


@pytest.fixture
def other(tmp_path, monkeypatch):
    """A module of its own, freshly written."""
    (tmp_path / "other_one.py").write_text(OTHER)
    monkeypatch.syspath_prepend(tmp_path)
    import other_one

    yield other_one
    del sys.modules["other_one"]
    native._made_of.cache_clear()


def test_another_source_or_constant_is_another_object(other, tmp_path, monkeypatch):
    made = [native._made_of("other_one")]
    native._made_of.cache_clear()
    monkeypatch.setattr(other, "MORE", 3.0)
    made.append(native._made_of("other_one"))
    native._made_of.cache_clear()
    (tmp_path / "other_one.py").write_text(OTHER + "\n")
    made.append(native._made_of("other_one"))
    assert len(set(made)) == 3


def test_what_needs_the_compiler_is_not_kept(folder, other):
    """A part in steps takes a function of numba's own, which later processes would not have."""
    values = np.arange(4.0)
    native.entry(other.plain)(native.address(values), 4)
    assert values.tolist() == [0.0, 2.0, 4.0, 6.0]
    assert [path.name.split("-")[0] for path in folder.iterdir()] == ["plain"]
    native._held.append(native._compiled("other_one", "odd", "pi"))
    assert native._held[-1][1] is None


def test_compiling_is_told_of(folder, other, caplog):
    caplog.set_level("INFO", "crossfall")
    native._tell.cache_clear()
    for function in (other.plain, other.odd):
        native.entry(function)
    assert [one.message.split(",")[0] for one in caplog.records] == [
        "compiling what is worked out at every look"
    ]


def test_what_is_not_marked_is_refused(other):
    with pytest.raises(KeyError):
        native.entry(other.twice)


def test_an_array_in_pieces_has_no_address():
    with pytest.raises(ValueError, match="pieces"):
        native.address(np.zeros((4, 4))[:, ::2])


@pytest.mark.parametrize("seed", range(4))
def test_what_is_compiled_is_what_is_written(seed):
    """The same file as plain Python, on both axles of a truck that leans and slips."""
    rng = np.random.default_rng(seed)
    truck = with_tyres(make_truck(chassis_cg=(0.01, 0.01, 0.1)), contact_half_width=0.01)
    springs = corner_springs(truck, TrialSettings(), 1 / 240, 1.0, settling=True)
    moves: list[float] = []
    for axle in truck.axles:
        turn = Rotation.from_rotvec(rng.normal(0.0, 0.05, 3)).as_quat()
        place = np.array([axle.x, 0.0, 0.075]) + rng.normal(0.0, 1e-3, 3)
        moves += [*rng.normal(0.0, 0.02, 2), *rng.normal(0.0, 0.1, 2), *place, *place, *turn]
    told = np.array([*moves, *rng.normal(0.0, 2.0, 2), -9.0])

    def stepped(call):
        held = HeldWheels(truck, tyre_loads(truck).tolist(), 0.2, 1 / 240)
        held.grip([0.6] * 4)
        for axle, one in zip(held.axles, springs, strict=True):
            set_corners(axle, one)
        out, laws, work = np.empty(16), np.zeros((2, 7, 2)), np.empty(axle_forces.WORK)
        arrays = [held.axles, held.states, laws, held.patches, told, out, work]
        for _ in range(3):
            call(*map(native.address, arrays), len(held.patches), 2, 1 / 240)
        return out, held.patches, held.states

    compiled = stepped(native.entry(axle_forces.step_held))
    written = stepped(axle_forces.step_held)
    for one, other in zip(compiled, written, strict=True):
        for name in one.dtype.names or ():
            np.testing.assert_allclose(one[name], other[name], rtol=1e-9, atol=1e-12)
    np.testing.assert_allclose(compiled[0], written[0], rtol=1e-9, atol=1e-12)
    assert (compiled[1]["slip"] != 0.0).any()
