"""The truck on the tilted table, drawn from its pose, seen along the table's hinge."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from matplotlib.axes import Axes
from matplotlib.figure import Figure
from matplotlib.patches import Arc, Polygon
from scipy.spatial.transform import Rotation

from crossfall.answers.conditions import case_name
from crossfall.show.paper import (
    Z_LINE,
    Z_MARK,
    Placement,
    arrow,
    centre_mark,
    haloed,
    paint,
)
from crossfall.show.silhouette import PlacedShape, View, outline, solids
from crossfall.show.style import HEADING, LIGHT, SMALL, paper_page, styled, title
from crossfall.statics.rigid import downhill
from crossfall.trials.record import Record
from crossfall.truck.axle_law import law_of
from crossfall.truck.model import WHEELS, Array, Truck, frozen

_WIDTH = 150.0  # mm
_BELOW = 18.0  # mm under the hinge, for the arrows
ROOM = 122.0  # mm across which the truck and its table are drawn
SLAB = 0.010  # m, thickness of the drawn table
ARROW = 13.0  # mm, the longest arrow of a tyre load


@dataclass(frozen=True)
class TiltPose:
    """How the truck stands in table axes.

    turn: (3, 3) and origin: (3,) m of the chassis. heave: (2,) m and roll: (2,) rad of front and
    rear axle. tyre: (4,) m each wheel has come up to its axle, from ride height.
    """

    turn: Array
    origin: Array
    heave: Array
    roll: Array
    give: Array


def level() -> TiltPose:
    """At ride height on the level."""
    zero = np.zeros
    return TiltPose(
        frozen(np.eye(3)), frozen(zero(3)), frozen(zero(2)), frozen(zero(2)), frozen(zero((4, 3)))
    )


def recorded(record: Record, index: int) -> TiltPose:
    """The pose of one sample of a trial. Joints that are not in the record are held."""
    names = record.joint_names
    row = dict(zip(names, record.joints[index], strict=True))
    pose = record.chassis[index]
    return TiltPose(
        frozen(Rotation.from_quat(pose[3:]).as_matrix()),
        frozen(pose[:3]),
        frozen([row.get(f"{end}_heave", 0.0) for end in ("front", "rear")]),
        frozen([row.get(f"{end}_roll", 0.0) for end in ("front", "rear")]),
        frozen(record.give[index]),
    )


def motions(truck: Truck, pose: TiltPose) -> dict[str, tuple[Array, Array]]:
    """(3, 3) turn and (3,) shift from truck axes at ride height to table axes, per carrier."""
    found = {"chassis": (pose.turn, pose.origin)}
    for i, (axle, end) in enumerate(zip(truck.axles, ("front", "rear"), strict=True)):
        turn, shift = law_of(axle).motion(pose.heave[i], pose.roll[i])
        whole_turn, whole_shift = pose.turn @ turn, pose.turn @ shift + pose.origin
        found[f"{end} axle"] = (whole_turn, whole_shift)
        for j, side in enumerate(("left", "right")):
            moved = whole_turn @ pose.give[2 * i + j]
            found[f"{end} {side}"] = (whole_turn, whole_shift + moved)
    return found


def placed(truck: Truck, pose: TiltPose) -> list[PlacedShape]:
    """Every solid where the pose puts it; a link goes its share of the way with its axle."""
    moves = motions(truck, pose)
    moved = []
    for solid in solids(truck):
        if solid.part is None or solid.role != "link":
            moved.append(solid.moved(*moves[solid.role]))
            continue
        share = solid.part.unsprung
        (a, s), (b, t) = moves["chassis"], moves[solid.part.carrier]
        u, _, v = np.linalg.svd((1 - share) * a + share * b)
        middle = (1 - share) * (a @ solid.centre + s) + share * (b @ solid.centre + t)
        moved.append(solid.moved(u @ v, middle - u @ v @ solid.centre))
    return moved


def centre_of_gravity(truck: Truck, pose: TiltPose) -> Array:
    """(3,) m in table axes."""
    moves = motions(truck, pose)
    bodies = [("chassis", truck.chassis)]
    for axle, end in zip(truck.axles, ("front", "rear"), strict=True):
        bodies.append((f"{end} axle", axle.body))
        bodies += [(f"{end} {s}", b) for s, b in zip(("left", "right"), axle.wheels, strict=True)]
    total = sum(b.mass for _, b in bodies)
    sums = [b.mass * (moves[name][0] @ b.cg + moves[name][1]) for name, b in bodies]
    middle: Array = np.sum(sums, axis=0) / total
    return middle


def hinge_view(heading: float, theta: float) -> View:
    """Along the table's hinge, the slope rising to the right; the truck in table axes."""
    uphill = np.append(-downhill(heading), 0.0)
    normal = np.array([0.0, 0.0, 1.0])
    c, s = np.cos(theta), np.sin(theta)
    return View("hinge", frozen(c * uphill - s * normal), frozen(s * uphill + c * normal))


@styled
def draw_tiltpose(
    truck: Truck,
    heading: float,
    theta: float,
    pose: TiltPose,
    loads: Array | None = None,
    ground: str = "",
) -> Figure:
    """The truck on the table at theta (rad). loads: (4,) N, drawn as arrows at the tyres. ground:
    in words, what it stands on."""
    view = hinge_view(heading, theta)
    things = placed(truck, pose)
    rows = np.concatenate([outline(s, view) for s in things])
    flat = np.concatenate([outline(s, hinge_view(heading, 0.0)) for s in things])
    ends = (float(flat[:, 0].min()) - 0.05, float(flat[:, 0].max()) + 0.05)
    corner = _on_table(ends[0], theta)
    left = min(float(rows[:, 0].min()), corner[0] - 0.02)
    right = max(float(rows[:, 0].max()), corner[0] + np.ptp(ends) * np.cos(theta))
    scale = 1000 * (right - left) / ROOM
    k = 1000 / scale
    high = max(float(rows[:, 1].max()), corner[1] + np.ptp(ends) * np.sin(theta))
    made, axes = paper_page(_WIDTH, _BELOW + k * (high - corner[1]) + 20.0)
    place = Placement(view, ((_WIDTH - ROOM) / 2 - k * left, _BELOW - k * corner[1]), scale)
    _table(axes, place, ends, theta)
    paint(axes, place, things)
    _plumb(axes, place, truck, pose, theta)
    if loads is not None:
        _loads(axes, place, truck, pose, np.asarray(loads))
    degrees = np.degrees(theta)
    words = [case_name(float(np.degrees(heading))), *([ground] if ground else [])]
    title(made, f"{truck.name} at {degrees:.1f}°", ", ".join(words))
    return made


def _on_table(along: float, theta: float) -> Array:
    """(2,) m in the view of the point `along` m uphill from the origin on the table."""
    return along * np.array([np.cos(theta), np.sin(theta)])


def _table(axes: Axes, place: Placement, ends: tuple[float, float], theta: float) -> None:
    across = np.array([np.cos(theta), np.sin(theta)])
    down = SLAB * np.array([np.sin(theta), -np.cos(theta)])
    low, high = ends[0] * across, ends[1] * across
    slab = place.flat(np.array([low, high, high + down, low + down]))
    axes.add_artist(Polygon(slab, fc=LIGHT.earth, ec="none", zorder=1.0))
    x, y = place.flat(np.array([low, high])).T
    axes.plot(x, y, color=LIGHT.ink, lw=1.0, zorder=Z_LINE)
    hinge = slab[3]
    length = np.hypot(*(slab[1] - slab[0]))
    reach = (hinge[0] - 6, max(hinge[0] + 0.5 * length, slab[2][0]))
    axes.plot(reach, [hinge[1]] * 2, color=LIGHT.ink, lw=0.7)
    size = 0.42 * length
    degrees = float(np.degrees(theta))
    axes.add_artist(Arc(hinge, 2 * size, 2 * size, theta1=0, theta2=degrees, ec=LIGHT.soft, lw=0.8))
    at = hinge + size * np.array([np.cos(theta / 2), np.sin(theta / 2)])
    haloed(axes, at[0], at[1], f"{degrees:.1f}°", size=HEADING)
    axes.plot(*hinge, "o", ms=4, mfc=LIGHT.paper, mec=LIGHT.ink, mew=0.8, zorder=Z_MARK)


def _plumb(axes: Axes, place: Placement, truck: Truck, pose: TiltPose, theta: float) -> None:
    """From the CG straight down to the table."""
    cg = centre_of_gravity(truck, pose)
    x, y = place.of(cg)[0]
    along, up = np.array([np.cos(theta), np.sin(theta)]), np.array([-np.sin(theta), np.cos(theta)])
    height = cg[2] * 1000 / place.scale
    foot = np.array([x, y]) - height * up
    drop = foot + along * ((x - foot[0]) / along[0])
    arrow(axes, (x, y), drop, LIGHT.ink, 1.0)
    centre_mark(axes, np.array([x, y]))


def _loads(axes: Axes, place: Placement, truck: Truck, pose: TiltPose, loads: Array) -> None:
    """Tyre loads, square to the table, under it; wheels in line are added up."""
    moves = motions(truck, pose)
    spots: list[tuple[Array, float]] = []
    for i, wheel in enumerate(WHEELS):
        axle = truck.axles[i // 2]
        hub = np.array([axle.x, (0.5 - i % 2) * axle.track, axle.tyre.radius])
        turn, shift = moves[wheel]
        at = place.of((turn @ hub + shift) * np.array([1, 1, 0]))[0]
        for n, (spot, load) in enumerate(spots):
            if np.hypot(*(spot - at)) < 0.15 * 1000 * axle.tyre.radius / place.scale:
                spots[n] = (spot, load + loads[i])
                break
        else:
            spots.append((at, float(loads[i])))
    normal = place.of(np.array([[0, 0, 1.0]]))[0] - place.of(np.zeros((1, 3)))[0]
    normal = normal / np.hypot(*normal)
    base = 1000 / place.scale
    longest = max(max(load for _, load in spots), 1e-9)
    for at, load in spots:
        start = at - normal * (SLAB * base + 1.0 + ARROW * max(load, 0.0) / longest)
        end = at - normal * (SLAB * base + 0.6)
        if load > 0.06 * longest:
            arrow(axes, start, end, LIGHT.compliant, 1.4)
        x, y = start - normal * 2.6
        haloed(axes, x, y, f"{max(load, 0.0):.1f} N", size=SMALL, color=LIGHT.compliant)
