"""One axle on its links in another engine: rods as bodies, a ball at one end, the loop closed at
the other. Built from the ends alone."""

from __future__ import annotations

import mujoco
import numpy as np

from crossfall.truck.model import Array, Links

COORDINATES = ("x", "y", "z", "yaw", "pitch", "roll")
RATE = 400.0, 2.0  # N/m and N m/rad towards the heave and roll asked for


def mjcf(links: Links) -> str:
    """The axle on six joints in a row, so that its coordinates can be read off, and its rods."""
    joints = "".join(
        f'<joint name="{name}" type="{kind}" axis="{axis}" damping="{damping}" stiffness="{rate}"/>'
        for name, kind, axis, damping, rate in (
            ("x", "slide", "1 0 0", 2.0, 0.0),
            ("y", "slide", "0 1 0", 2.0, 0.0),
            ("z", "slide", "0 0 1", 8.0, RATE[0]),
            ("yaw", "hinge", "0 0 1", 0.01, 0.0),
            ("pitch", "hinge", "0 1 0", 0.01, 0.0),
            ("roll", "hinge", "1 0 0", 0.03, RATE[1]),
        )
    )
    rods, loops = "", ""
    for n, (upper, lower) in enumerate(zip(links.chassis, links.axle, strict=True)):
        along = upper - lower
        rods += (
            f'<body name="rod{n}" pos="{_text(lower)}"><joint type="ball" damping="1e-6"/>'
            f'<geom type="capsule" fromto="0 0 0 {_text(along)}" size="0.003" mass="0.01" '
            f'contype="0" conaffinity="0"/></body>'
        )
        loops += f'<connect body1="rod{n}" body2="world" anchor="{_text(along)}"/>'
    return f"""<mujoco><compiler angle="radian" autolimits="false"/>
<option timestep="0.0005" gravity="0 0 0" integrator="implicitfast" iterations="200"
 tolerance="1e-14"/>
<default><equality solref="0.002 1" solimp="0.9999 0.9999 0.001"/></default>
<worldbody><body name="axle">{joints}
<geom type="box" size="0.01 0.05 0.01" mass="0.3" contype="0" conaffinity="0"/>{rods}</body>
</worldbody><equality>{loops}</equality></mujoco>"""


def _text(values: Array) -> str:
    return " ".join(repr(float(v)) for v in values)


class AxleBench:
    """The axle, pulled to heaves and rolls."""

    def __init__(self, links: Links) -> None:
        self.model = mujoco.MjModel.from_xml_string(mjcf(links))
        self.data = mujoco.MjData(self.model)
        ids = [self.model.joint(name) for name in COORDINATES]
        self._at = np.array([j.qposadr[0] for j in ids])

    def pull(self, heave: float, roll: float) -> Array:
        """(6,) COORDINATES where it comes to rest, near that heave (m) and roll (rad)."""
        for name, target in (("z", heave), ("roll", roll)):
            self.model.qpos_spring[self.model.joint(name).qposadr[0]] = target
        for _ in range(60):
            mujoco.mj_step(self.model, self.data, 100)
            if np.abs(self.data.qvel).max() < 1e-7:
                break
        return np.array(self.data.qpos[self._at])

    def length(self, head: Array, foot: Array) -> float:
        """m between a point of the chassis and one of the axle, both from its centre at rest."""
        body = self.data.body("axle")
        return float(np.linalg.norm(body.xpos + body.xmat.reshape(3, 3) @ foot - head))

    def open(self) -> float:
        """m by which the loops do not close."""
        return float(np.abs(self.data.efc_pos).max())
