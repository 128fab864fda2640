"""Varied trucks for the trials: each stresses something else."""

from __future__ import annotations

from support import make_truck

VARIED = {
    "plain": make_truck(),
    "soft springs": make_truck(spring_rate=150.0, droop=0.012),
    "droop limited": make_truck(droop=0.006),
    "anti-squat": make_truck(heave_lean=(0.15, -0.2)),
    "soft tyres": make_truck(tyre_stiffness=2500.0),
    "offset CG": make_truck(chassis_cg=(-0.02, 0.008, 0.1)),
    "wide contact": make_truck(contact_half_width=0.012, tyre_stiffness=4000.0),
    "stiff springs": make_truck(spring_rate=900.0),
}
