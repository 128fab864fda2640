"""Facts of the trade against the demo trucks. Every one: common practice, no source."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from crossfall.statics import rigid
from crossfall.truck import ride
from crossfall.truck.build import load_truck
from crossfall.truck.massprops import combine, unsprung, whole
from crossfall.truck.model import Part, Truck
from support import block

CLIMB, SIDE, DESCENT, _ = rigid.QUARTERS
DEMOS = ("bramble", "thistle", "burdock")
BODY = ("bonnet", "grille", "cab", "interior and driver", "bed", "wing mirror", "headlight")
TWELVE_OUNCES = 0.340  # kg


@pytest.fixture(scope="module")
def demos() -> dict[str, Truck]:
    return {name: load_truck(name).truck for name in DEMOS}


def parts_of(truck: Truck, *names: str) -> list[Part]:
    """All pieces of the parts of these names; a piece's label is its part's plus a number."""
    found = [p for p in truck.parts if p.label.rstrip("0123456789 ") in names]
    assert found
    return found


def mass_of(parts: list[Part]) -> float:
    return sum(p.body.mass for p in parts)


def test_usual_wheelbase(demos: dict[str, Truck]) -> None:
    """A usual wheelbase of the 1:10 class is 313 mm. Common practice, no source."""
    assert demos["bramble"].wheelbase == pytest.approx(0.313, abs=1e-12)
    for truck in demos.values():
        assert 0.290 <= truck.wheelbase <= 0.330
        assert 2.0 <= whole(truck).mass <= 4.0
        for axle in truck.axles:
            assert 0.190 <= axle.track + axle.tyre.width <= 0.240


def test_hard_body(demos: dict[str, Truck]) -> None:
    """Bodies of the class weigh about 600 to 860 g (1.9 lb). Common practice, no source."""
    assert 0.600 <= mass_of(parts_of(demos["bramble"], *BODY)) <= 0.860
    assert pytest.approx(1.9, abs=0.005) == 0.860 / 0.45359237


def test_the_axles_are_the_lowest_place(demos: dict[str, Truck]) -> None:
    """Brass goes on the axles because they are the lowest place on the truck. Common practice, no
    source. Lower than the CG of anything on the chassis, and below every tip line's wedge.
    """
    for truck in demos.values():
        lowest = min(p.body.cg[2] for p in truck.parts if p.carrier == "chassis")
        for i, axle in enumerate(truck.axles):
            assert unsprung(truck, i).cg[2] < lowest
            on_axle = (axle.x, 0.0, axle.tyre.radius)
            assert rigid.mass_derivative(truck, SIDE, on_axle) > 0


def test_brass_on_the_axles_helps_most_of_all(demos: dict[str, Truck]) -> None:
    """12 oz of brass low on the axles. Common practice, no source: shared between them it raises
    every one of the four angles, and more so than the same mass on the chassis' own floor.
    """
    truck = demos["bramble"]
    floor = (0.0, 0.0, parts_of(truck, "skid plate")[0].body.cg[2])

    def with_lumps(*places: tuple[float, float, float]) -> Truck:
        lumps = [block(TWELVE_OUNCES / len(places), at, (0.01,) * 3) for at in places]
        return replace(truck, chassis=combine((truck.chassis, *lumps)))

    own = rigid.tip_angle(truck, rigid.QUARTERS)
    on_axles = rigid.tip_angle(
        with_lumps(*((a.x, 0.0, a.tyre.radius) for a in truck.axles)), rigid.QUARTERS
    )
    on_floor = rigid.tip_angle(with_lumps(floor), rigid.QUARTERS)
    assert np.all(on_axles > own)
    assert np.all(on_axles > on_floor)
    assert np.degrees(on_axles - own)[1] > 1.0


def test_front_weight_offsets_a_heavy_tail(demos: dict[str, Truck]) -> None:
    """Weight on the front axle offsets a heavy tail. Common practice, no source: the front share
    and the climb gain; the descent pays, in part.
    """
    truck = demos["bramble"]
    share = ride.level_axle_loads(truck) / ride.level_axle_loads(truck).sum()
    assert share[0] < 0.5
    front = truck.front
    brass = block(TWELVE_OUNCES, (front.x, 0.0, front.tyre.radius), (0.01,) * 3)
    laden = replace(truck, front=replace(front, body=combine((front.body, brass))))
    assert ride.level_axle_loads(laden)[0] / ride.level_axle_loads(laden).sum() > share[0] + 0.03
    gain = np.degrees(rigid.tip_angle(laden, [CLIMB, DESCENT]))
    gain -= np.degrees(rigid.tip_angle(truck, [CLIMB, DESCENT]))
    assert gain[0] > 2.0
    assert gain[1] < gain[0]


def test_wider_wheel_offset_steadies_on_a_side_hill(demos: dict[str, Truck]) -> None:
    """Common practice, no source. And does nothing for climb or descent."""
    for truck in demos.values():
        front, rear = (replace(a, track=a.track + 0.010) for a in truck.axles)
        wide = replace(truck, front=front, rear=rear)
        gain = rigid.tip_angle(wide, rigid.QUARTERS) - rigid.tip_angle(truck, rigid.QUARTERS)
        np.testing.assert_allclose(gain[[0, 2]], 0.0, atol=1e-12)
        assert np.all(np.degrees(gain[[1, 3]]) > 0.8)


def test_a_smaller_pack_sits_lower_and_is_lighter(demos: dict[str, Truck]) -> None:
    """A smaller pack sits lower and is lighter, and costs run time. Common practice, no source.

    Half the pack of the same make, on the same tray: half the mass, and so half the energy.
    """
    truck = demos["bramble"]
    (pack,) = parts_of(truck, "battery pack")
    (tray,) = parts_of(truck, "battery tray")
    mass, (x, y, z) = pack.body.mass, pack.body.cg
    lower = (z + tray.body.cg[2]) / 2
    off = block(-mass, (x, y, z), (0.01,) * 3)
    small = block(mass / 2, (x, y, lower), (0.01,) * 3)
    other = replace(truck, chassis=combine((truck.chassis, off, small)))
    assert whole(other).mass == pytest.approx(whole(truck).mass - mass / 2)
    assert whole(other).cg[2] < whole(truck).cg[2]
    assert rigid.tip_angle(other, SIDE) > rigid.tip_angle(truck, SIDE)
