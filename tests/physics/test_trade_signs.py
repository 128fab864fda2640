"""What tuners know, as signs: which angle a change moves, and which way.

Every one: common practice, no source. Each is asked of all three demo trucks, of the rigid and of
the compliant answer on its first surface, or against a rail where it slides first, with the
exceptions that the wedge under both tip lines predicts.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import pytest

from crossfall.answers.conditions import choose_grip
from crossfall.answers.tips import tip_angles
from crossfall.statics import rigid
from crossfall.truck import edits
from crossfall.truck.build import Loaded, build, load_truck
from crossfall.truck.massprops import whole
from crossfall.truck.model import Array, Truck
from crossfall.truck.read import Source
from crossfall.truck.ride import level_axle_loads
from crossfall.tuning.apply import apply
from crossfall.tuning.changes import Catalogue, Change

DEMOS = ("bramble", "thistle", "burdock")
METHODS = ("rigid", "compliant")
CLIMB, LEFT, DESCENT, RIGHT = range(4)
MOVED = np.radians(0.02)  # a change of less is no change to a tuner
STILL = np.radians(0.12)  # what springs and tyres make of a change that the closed form denies


@pytest.fixture(scope="module", params=DEMOS)
def loaded(request: pytest.FixtureRequest) -> Loaded:
    return load_truck(str(request.param))


def angles(trucks: Sequence[Truck], method: str) -> Array:
    """(n, 4) rad: climb, left down, descent, right down."""
    if method == "rigid":
        return np.array([rigid.tip_angle(t, rigid.QUARTERS) for t in trucks])
    grip = choose_grip(trucks[0], None).likely
    held = tip_angles(trucks, rigid.QUARTERS, grip)
    railed = tip_angles(trucks, rigid.QUARTERS, grip, "rail").free
    return np.where(held.slides.any(axis=0), railed, held.free)


def changed(loaded: Loaded, **actions: object) -> Truck:
    """The truck after one change."""
    change = Change.model_validate({"name": "it", "label": "it", **actions})
    catalogue = Catalogue((change,), "", Source("test", {}, {}))
    return build(apply(loaded.spec, catalogue, {0: 1}), loaded.folder)[0]


def gain(loaded: Loaded, method: str, **actions: object) -> Array:
    """(4,) rad, what one change does."""
    now, then = angles([loaded.truck, changed(loaded, **actions)], method)
    return then - now


def lump(on: str, mass_g: float, at_mm: tuple[float, float, float]) -> list[dict[str, object]]:
    return [{"name": "lump", "on": on, "mass_g": mass_g, "at_mm": list(at_mm)}]


def heavy_high(loaded: Loaded) -> list[str]:
    """The two parts of the chassis that hold the CG up most."""
    total = whole(loaded.truck)
    pull: dict[int, float] = {}
    for p in loaded.truck.parts:
        if p.carrier == "chassis":
            pull[p.row] = pull.get(p.row, 0.0) + p.body.mass * (p.body.cg[2] - total.cg[2])
    rows = sorted(pull, key=lambda r: -pull[r])[:2]
    return [loaded.spec.part[r].name for r in rows]


@pytest.mark.parametrize("method", METHODS)
def test_lower_pack_raises_every_angle(loaded: Loaded, method: str) -> None:
    assert loaded.spec.battery is not None
    move = [{"part": loaded.spec.battery.part, "by_mm": [0, 0, -12]}]
    assert np.all(gain(loaded, method, move=move) > MOVED)


@pytest.mark.parametrize("method", METHODS)
def test_lighter_body_raises_every_angle(loaded: Loaded, method: str) -> None:
    """What is high up and weighs less, wherever along the truck: here its two worst parts."""
    swaps = []
    for name in heavy_high(loaded):
        row = edits.part_row(loaded.spec, name)
        mass = next(p.body.mass for p in loaded.truck.parts if p.row == row)
        swaps.append({"part": name, "new": {"mass_g": mass * 1e3 * 0.7}})
    found = gain(loaded, method, swap=swaps)
    assert np.all(found[[LEFT, RIGHT]] > MOVED)
    assert found[[CLIMB, DESCENT]].max() > MOVED


@pytest.mark.parametrize("method", METHODS)
def test_brass_on_both_axles_raises_every_angle(loaded: Loaded, method: str) -> None:
    found = gain(loaded, method, add=lump("each axle", 60, (0, 0, 0)))
    assert np.all(found > MOVED)


@pytest.mark.parametrize("method", METHODS)
def test_weight_in_all_wheels_raises_every_angle(loaded: Loaded, method: str) -> None:
    found = gain(loaded, method, add=lump("every wheel", 40, (0, 0, 0)))
    assert np.all(found > MOVED)


@pytest.mark.parametrize("method", METHODS)
def test_front_axle_weight_helps_the_climb_and_costs_the_descent(
    loaded: Loaded, method: str
) -> None:
    """The exception: low, but ahead of the wedge. The sides hardly mind."""
    for on in ("front axle", "each front wheel"):
        found = gain(loaded, method, add=lump(on, 60, (0, 0, 0)))
        assert found[CLIMB] > 5 * MOVED
        assert found[DESCENT] < -MOVED


@pytest.mark.parametrize("method", METHODS)
def test_front_axle_weight_offsets_a_heavy_tail(method: str) -> None:
    """On the tail-heavy truck it wins the climb more than it costs the descent."""
    found = gain(load_truck("bramble"), method, add=lump("front axle", 60, (0, 0, 0)))
    assert found[CLIMB] > -2 * found[DESCENT] > 0


@pytest.mark.parametrize("method", METHODS)
def test_rear_axle_weight_does_the_opposite(loaded: Loaded, method: str) -> None:
    found = gain(loaded, method, add=lump("rear axle", 60, (0, 0, 0)))
    assert found[DESCENT] > 5 * MOVED
    assert found[CLIMB] < -MOVED


@pytest.mark.parametrize("method", METHODS)
def test_weight_above_the_wedge_hurts_everywhere(loaded: Loaded, method: str) -> None:
    """Over the CG, above both lines: adding hurts all four, taking away helps all four."""
    x, _, z = whole(loaded.truck).cg * 1e3
    roof = lump("chassis", 60, (x, 0, z + 90))
    assert np.all(gain(loaded, method, add=roof) < -MOVED)


def test_low_weight_outside_the_wedge_still_hurts_one_end(loaded: Loaded) -> None:
    """Low is not enough: on the floor at the very front it costs the descent, by the rigid rule
    a_i / z_i > tan(theta)."""
    truck = loaded.truck
    nose = (truck.front.x * 1e3 + 25, 0.0, 60.0)
    found = gain(loaded, "rigid", add=lump("chassis", 30, nose))
    assert found[DESCENT] < 0 < found[CLIMB]
    slopes = [
        rigid.mass_derivative(truck, h, np.array(nose) / 1e3)
        for h in rigid.QUARTERS[[CLIMB, DESCENT]]
    ]
    assert np.sign(slopes).tolist() == np.sign(found[[CLIMB, DESCENT]]).tolist()


@pytest.mark.parametrize("method", METHODS)
def test_wider_offset_raises_the_sides_only(loaded: Loaded, method: str) -> None:
    found = gain(loaded, method, widen={"front_mm": 4, "rear_mm": 4})
    assert np.all(found[[LEFT, RIGHT]] > np.radians(0.5))
    assert np.all(np.abs(found[[CLIMB, DESCENT]]) < (1e-9 if method == "rigid" else STILL))


@pytest.mark.parametrize("method", METHODS)
def test_longer_wheelbase_raises_climb_and_descent_only(loaded: Loaded, method: str) -> None:
    found = gain(loaded, method, lengthen={"front_mm": 6, "rear_mm": 6})
    assert np.all(found[[CLIMB, DESCENT]] > np.radians(0.5))
    assert np.all(np.abs(found[[LEFT, RIGHT]]) < 2 * STILL)  # longer links steer the axles less


@pytest.mark.parametrize("method", METHODS)
def test_forward_shift_of_mass_trades_descent_for_climb(loaded: Loaded, method: str) -> None:
    assert loaded.spec.battery is not None
    pack = loaded.spec.battery.part
    move = [{"part": pack, "by_mm": [30, 0, 0]}]
    found = gain(loaded, method, move=move)
    assert found[CLIMB] > MOVED
    assert found[DESCENT] < -MOVED
    then = changed(loaded, move=move)
    share = [level_axle_loads(t)[0] / level_axle_loads(t).sum() for t in (loaded.truck, then)]
    assert share[1] > share[0]


def test_tighter_droop_helps_what_has_springs(loaded: Loaded) -> None:
    """The body rises less as it tilts. The closed form knows nothing of it."""
    droop = min(a.suspension.droop for a in loaded.truck.axles) * 1e3 / 3
    values = {"both.suspension.droop_mm": droop}
    assert np.all(gain(loaded, "rigid", set=values) == 0)
    assert np.all(gain(loaded, "compliant", set=values)[[LEFT, RIGHT]] > MOVED)


def test_smaller_pack_costs_run_time(loaded: Loaded) -> None:
    from crossfall.tuning.battery import run_time

    assert loaded.spec.battery is not None
    pack = loaded.spec.battery
    spec = edits.set_value(loaded.spec, "battery.capacity_mah", pack.capacity_mah * 0.6)
    mass = next(p for p in loaded.spec.part if p.name == pack.part).mass_g
    assert mass is not None
    spec = edits.set_value(spec, f"part.{pack.part}.mass_g", mass * 0.6)
    truck = build(spec, loaded.folder)[0]
    now, then = run_time(loaded.truck, loaded.spec), run_time(truck, spec, pack)
    assert now is not None
    assert then is not None
    assert 0.6 * now.minutes < then.minutes < now.minutes  # lighter, so a little less is drawn
    assert whole(truck).mass < whole(loaded.truck).mass
