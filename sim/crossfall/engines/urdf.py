"""The multibody written out as a standard URDF, and read back to check it.

Format: the URDF XML specification (robot, link, inertial, joint). Numbers are printed with repr,
so that nothing is lost. URDF has no springs: whoever runs the model applies them.
"""

from __future__ import annotations

import math
import xml.etree.ElementTree as ET

import numpy as np

from crossfall.engines.multibody import Joint, Link, Primitive, Tree, multibody
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.massprops import combine, whole
from crossfall.truck.model import Array, Body, Truck, frozen

_ALIKE = 1e-9  # relative agreement asked of mass, CG and inertia read back


def urdf(truck: Truck, *, turning: bool = True) -> str:
    """URDF text of the truck, real size, SI; the base link's frame is the truck's.

    turning=False holds the wheels. Raises InputError where the truck makes no sound multibody.
    """
    text = urdf_text(multibody(truck, turning=turning), truck.name)
    check_urdf(text, truck)
    return text


def check_urdf(text: str, truck: Truck) -> None:
    """Raises InputError unless mass, CG and inertia of the text are the truck's within 1e-9 of
    their size: of the mass, the wheelbase and the largest entry of the inertia."""
    have, want = read_back(text), whole(truck)
    length = truck.wheelbase
    errors = {
        "mass": abs(have.mass - want.mass) / want.mass,
        "CG": float(np.abs(have.cg - want.cg).max()) / length,
        "inertia": float(np.abs(have.inertia - want.inertia).max() / np.abs(want.inertia).max()),
    }
    wrong = [
        Problem(truck.name, f"the URDF's {what} is off by {error:.2g} of its size")
        for what, error in errors.items()
        if not error <= _ALIKE
    ]
    if wrong:
        raise InputError(wrong)


def read_back(text: str) -> Body:
    """The whole model at zero joint positions as one body, base link's axes; kg, m, kg m^2.

    Raises ValueError for a turned joint frame or inertia, which `urdf_text` never makes. Mass is
    sum(m), CG sum(m r) / sum(m), inertia sum(I + Steiner's m (d^2 1 - d d^T)).
    Source: parallel axes, any mechanics text, e.g. H. Goldstein, Classical Mechanics
    (Addison-Wesley 1980), chapter 5 (from memory).
    """
    root = ET.fromstring(text)
    origins: dict[str, Array] = {}
    for joint in root.iter("joint"):
        parent = joint.find("parent").get("link")  # type: ignore[union-attr]
        child = joint.find("child").get("link")  # type: ignore[union-attr]
        origins[str(child)] = origins.get(str(parent), np.zeros(3)) + _origin(joint)
    bodies = []
    for link in root.iter("link"):
        inertial = link.find("inertial")
        if inertial is None:
            continue
        tensor = inertial.find("inertia")
        mass = inertial.find("mass")
        assert tensor is not None
        assert mass is not None
        rows = [["ixx", "ixy", "ixz"], ["ixy", "iyy", "iyz"], ["ixz", "iyz", "izz"]]
        inertia = [[float(tensor.attrib[k]) for k in row] for row in rows]
        at = origins.get(link.attrib["name"], np.zeros(3)) + _origin(inertial)
        bodies.append(Body(float(mass.attrib["value"]), frozen(at), frozen(inertia)))
    return combine(bodies)


def urdf_text(tree: Tree, name: str, *, limits: bool = True) -> str:
    """URDF text of a tree, one element a line; limits=False leaves out the joints' travel.

    Without travel a joint reads lower > upper, which Bullet takes as "no limit" and saves it a
    solver row per side; the format itself asks for true limits.
    """
    origins = {tree.links[0].name: np.zeros(3)}
    root = ET.Element("robot", name=name)
    joints = []
    for joint in tree.joints:
        joints.append(_joint(joint, origins[joint.parent], limits))
        origins[joint.child] = np.asarray(joint.origin)
    for link in tree.links:
        root.append(_link(link, origins[link.name]))
    root.extend(joints)
    ET.indent(root)
    return '<?xml version="1.0"?>\n' + ET.tostring(root, encoding="unicode") + "\n"


def _link(link: Link, origin: Array) -> ET.Element:
    element = ET.Element("link", name=link.name)
    inertial = ET.SubElement(element, "inertial")
    ET.SubElement(inertial, "origin", xyz=_numbers(link.body.cg - origin), rpy="0 0 0")
    ET.SubElement(inertial, "mass", value=_number(link.body.mass))
    i = link.body.inertia
    pairs = {"ixx": (0, 0), "ixy": (0, 1), "ixz": (0, 2), "iyy": (1, 1), "iyz": (1, 2)}
    tensor = {key: _number(i[at]) for key, at in (pairs | {"izz": (2, 2)}).items()}
    ET.SubElement(inertial, "inertia", tensor)
    for tag, solids in (("visual", link.visuals), ("collision", link.collisions)):
        for solid in solids:
            element.append(_solid(tag, solid, origin))
    return element


def _solid(tag: str, solid: Primitive, origin: Array) -> ET.Element:
    element = ET.Element(tag)
    rpy = _numbers(roll_pitch_yaw(solid.turn))
    ET.SubElement(element, "origin", xyz=_numbers(solid.centre - origin), rpy=rpy)
    geometry = ET.SubElement(element, "geometry")
    if solid.kind == "box":
        ET.SubElement(geometry, "box", size=_numbers(solid.size))
    elif solid.kind == "sphere":
        ET.SubElement(geometry, "sphere", radius=_number(solid.size[0]))
    else:
        radius, length = map(_number, solid.size)
        ET.SubElement(geometry, "cylinder", radius=radius, length=length)
    return element


def _joint(joint: Joint, parent_origin: Array, limits: bool) -> ET.Element:
    element = ET.Element("joint", name=joint.name, type=joint.kind)
    ET.SubElement(element, "origin", xyz=_numbers(joint.origin - parent_origin), rpy="0 0 0")
    ET.SubElement(element, "parent", link=joint.parent)
    ET.SubElement(element, "child", link=joint.child)
    if joint.kind != "fixed":
        ET.SubElement(element, "axis", xyz=_numbers(joint.axis))
    if joint.kind in ("prismatic", "revolute"):
        # The format asks for effort and velocity; neither limits anything here.
        lower, upper = (joint.lower, joint.upper) if limits else (1.0, -1.0)
        travel = {"lower": _number(lower), "upper": _number(upper)}
        ET.SubElement(element, "limit", travel, effort="1e9", velocity="1e9")
    return element


def roll_pitch_yaw(turn: Array) -> tuple[float, float, float]:
    """Fixed-axis angles (rad) of a rotation matrix (3, 3), turn = Rz(yaw) Ry(pitch) Rx(roll).

    pitch = atan2(-t20, hypot(t00, t10)), roll = atan2(t21, t22), yaw = atan2(t10, t00).
    Source: J. J. Craig, Introduction to Robotics (Pearson 2005), chapter 2, X-Y-Z fixed angles
    (from memory).
    """
    pitch = math.atan2(-turn[2, 0], math.hypot(turn[0, 0], turn[1, 0]))
    if math.hypot(turn[0, 0], turn[1, 0]) < 1e-12:  # straight up or down: yaw taken as zero
        return math.atan2(-turn[1, 2], turn[1, 1]), pitch, 0.0
    return math.atan2(turn[2, 1], turn[2, 2]), pitch, math.atan2(turn[1, 0], turn[0, 0])


def _origin(element: ET.Element) -> Array:
    origin = element.find("origin")
    if origin is None:
        return np.zeros(3)
    if any(float(v) != 0.0 for v in origin.get("rpy", "0 0 0").split()):
        raise ValueError(f"{element.tag} has a turned frame")
    return np.array([float(v) for v in origin.get("xyz", "0 0 0").split()])


def _number(value: float) -> str:
    return repr(float(value))


def _numbers(values: object) -> str:
    return " ".join(_number(v) for v in np.asarray(values, dtype=np.float64))
