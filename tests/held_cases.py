"""Trucks on held wheels on a slope, for tests of engines."""

from __future__ import annotations

import math

from crossfall.engines.held import gravity_on_table, held_truck
from crossfall.engines.settings import TrialSettings
from linkages import leaning_shocks, linked
from support import make_truck

LOPSIDED = make_truck(chassis_cg=(-0.02, 0.008, 0.11), anti_roll=1.0, contact_half_width=0.01)
ON_SHOCKS = linked(make_truck(anti_roll=0.4), "a bent truck", "wishbone", leaning_shocks())
ASKEW = math.radians(60.0)
STEEP = math.radians(25.0)
SECONDS = 6.0


def hold(rig, heading, theta, seconds=SECONDS):
    """Tilt in half the time, then stand."""
    steps = round(seconds / rig.dt)
    for i in range(steps):
        rig.step(gravity_on_table(heading, theta * min(1.0, 2 * i / steps)))


def stood(engine, truck, friction=5.0, refine=1):
    """Loads, gives, joints, pose and slips of the truck at rest on the slope."""
    with held_truck(truck, TrialSettings(), engine) as rig:
        rig.grip([friction] * 4)
        rig.refine(step=refine, solver=refine, contact=refine)
        hold(rig, ASKEW, STEEP)
        pose = rig.poses([rig.pose()])[0]
        return rig.loads(), rig.gives(), rig.joint_positions(), pose, rig.slips()
