"""A hand-made truck with parts of every shape, for pictures."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from crossfall.answers.answer import AngleBudget, Answers, TipAnswer
from crossfall.answers.conditions import case_name, conditions
from crossfall.answers.ranges import Range
from crossfall.statics.rigid import tip_angle
from crossfall.trials.outcome import TiltTrial
from crossfall.trials.tilt import tilt_trial
from crossfall.truck.model import Clearance, Part, Shape, Truck, frozen
from support import block, make_truck

AHEAD = frozen(np.eye(3))
ALONG_X = frozen([[0, 0, 1], [0, 1, 0], [-1, 0, 0]])
ALONG_Y = frozen([[1, 0, 0], [0, 0, 1], [0, -1, 0]])


def piece(label, row, carrier, grams, at, shape, turn=AHEAD, unsprung=0.0):
    """One part, grams and mm."""
    centre = frozen(np.array(at) / 1000)
    body = block(grams / 1000, tuple(centre), (0.02, 0.02, 0.02))
    return Part(label, row, carrier, body, unsprung, shape, centre, turn)


def box(*edges):
    return Shape("box", tuple(e / 1000 for e in edges))


def rod(radius, length):
    return Shape("cylinder", (radius / 1000, length / 1000))


def tube(outer, inner, length):
    return Shape("tube", (outer / 1000, inner / 1000, length / 1000))


def cab():
    """A wedge-nosed shell."""
    profile = [
        (-235, 95),
        (-235, 175),
        (-150, 190),
        (-110, 240),
        (20, 240),
        (70, 180),
        (225, 160),
        (235, 95),
    ]
    rows = [(x, y, z) for x, z in profile for y in (-95 if z < 200 else -70, 95 if z < 200 else 70)]
    return Shape(
        "mesh", vertices=np.array(rows) / 1000 - np.array([0, 0, 0.16]), faces=np.zeros((0, 3), int)
    )


def wheel_parts(row, name, x, half):
    made = []
    for end, place in (("front", x), ("rear", -x)):
        for side, y in (("left", half), ("right", -half)):
            n = len(made) + 1
            made.append(
                piece(
                    f"{name} {n}",
                    row,
                    f"{end} {side}",
                    88,
                    (place, y, 57),
                    tube(57, 33, 42),
                    ALONG_Y,
                )
            )
            made.append(
                piece(
                    f"rim {n}",
                    row + 1,
                    f"{end} {side}",
                    46,
                    (place, y, 57),
                    tube(33, 24, 30),
                    ALONG_Y,
                )
            )
    return made


def parts():
    made = [
        piece("hard body", 0, "chassis", 640, (-10, 0, 160), cab()),
        piece("chassis rail 1", 1, "chassis", 95, (0, 36, 92), box(380, 4, 18)),
        piece("chassis rail 2", 1, "chassis", 95, (0, -36, 92), box(380, 4, 18)),
        piece("battery pack", 2, "chassis", 255, (-40, 0, 118), box(108, 44, 26)),
        piece("motor", 3, "chassis", 170, (45, 0, 112), rod(18, 52), ALONG_X),
        piece("gearbox", 4, "chassis", 120, (5, 0, 95), box(52, 40, 40)),
        piece("steering servo", 5, "chassis", 62, (120, 0, 100), box(40, 20, 38)),
        piece("speed controller", 6, "chassis", 58, (80, 20, 118), box(38, 30, 18)),
        piece("spare tyre", 7, "chassis", 110, (-215, 0, 190), tube(52, 28, 38), ALONG_X),
        piece("winch", 8, "chassis", 75, (195, 0, 112), rod(13, 50), ALONG_Y),
        piece("roof load", 9, "chassis", 85, (-50, 0, 248), box(120, 100, 14)),
        piece("drive shaft 1", 10, "chassis", 24, (80, 0, 78), rod(5, 100), ALONG_X),
        piece("drive shaft 2", 10, "chassis", 24, (-80, 0, 78), rod(5, 100), ALONG_X),
    ]
    for n, (end, x) in enumerate((("front", 156.5), ("rear", -156.5)), 1):
        axle = f"{end} axle"
        made += [
            piece(f"axle housing {n}", 11, axle, 150, (x, 0, 57), rod(10, 150), ALONG_Y),
            piece(f"differential {n}", 12, axle, 70, (x, 12, 57), Shape("sphere", (0.021,))),
        ]
        for side in (1, -1):
            inward = x - np.sign(x) * 68
            made.append(
                piece(
                    f"lower link {len(made)}",
                    13,
                    axle,
                    21,
                    (inward, 32 * side, 66),
                    rod(3.5, 130),
                    ALONG_X,
                    0.5,
                )
            )
    return (*made, *wheel_parts(14, "tyre", 156.5, 85))


@pytest.fixture(scope="session")
def truck() -> Truck:
    """Bodies by hand as in tests/support.py; the parts are for the pictures."""
    clear = Clearance((0.232, 0.098), (0.0, 0.072), (-0.238, 0.092))
    plain = make_truck(
        chassis_cg=(-0.012, 0.002, 0.122), spring_rate=1500.0, damping=30.0, bump=0.01, droop=0.01
    )
    return replace(plain, name="sample", parts=parts(), clearance=clear)


@pytest.fixture(scope="session")
def bare() -> Truck:
    """A truck of bodies alone, with no parts to draw."""
    return make_truck()


@pytest.fixture(scope="session")
def trial(truck) -> TiltTrial:
    """A real trial, left side down."""
    return tilt_trial(truck, np.pi / 2, near=float(np.radians(38.0)), grip=0.85)


GRIP = (0.7, 0.85, 1.0)  # the hand-made truck's, on rock


def make_answers(truck: Truck, degrees, trial: TiltTrial) -> Answers:
    """Rigid angles as they are; the losses below them invented, but of the usual size. Steeper
    than the grip it slides, in the answer and in the trial."""
    answers = []
    for asked in conditions(truck, np.radians(degrees)):
        heading = asked.heading
        rigid = float(tip_angle(truck, [heading])[0])
        losses = np.radians([0.4, 0.3, 1.1, 1.3 * abs(np.sin(heading)) + 0.2])
        tyres, ground, extension, tip = (float(v) for v in rigid - np.cumsum(losses))
        slide = np.arctan(GRIP)
        slides = tip > slide[1]
        said = replace(trial, heading=heading, tip=tip - 5e-4, tip_ci=(tip - 4e-3, tip + 3e-3))
        if slides:
            ends = (float(slide[1]) - 1e-3, float(slide[1]) + 1e-3)
            gone = {"outcome": "slides", "slide": float(slide[1]), "slide_ci": ends}
            said = replace(said, tip=np.nan, tip_ci=(np.nan, np.nan), **gone)
        lift = frozen([np.nan, tip - 0.06, np.nan, tip - 0.02])
        made = TipAnswer(
            conditions=asked,
            case=case_name(float(np.degrees(heading))),
            over="",
            rigid=rigid,
            compliant=np.nan if slides else tip,
            rail=tip if slides else np.nan,
            range=Range((tip - 0.02, tip + 0.015), (tip - 0.03, tip), 0.4, ()),
            first_lift=float(np.nanmin(lift)),
            lift=lift,
            first_snap=np.nan,
            slide=frozen(slide),
            goes=min(tip, float(slide[1])),
            outcome="too close to call",
            budget=AngleBudget(rigid, tyres, ground, extension, tip, said.tip),
            trial=said,
        )
        answers.append(made)
    return Answers(truck.name, "", tuple(answers), ())


@pytest.fixture(scope="session")
def eight(truck, trial) -> Answers:
    return make_answers(truck, range(0, 360, 45), trial)


@pytest.fixture(scope="session")
def all_round(truck, trial) -> Answers:
    return make_answers(truck, range(0, 360, 5), trial)
