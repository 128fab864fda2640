"""How trials are stepped, in any engine."""

from __future__ import annotations

from dataclasses import dataclass

from crossfall.truck.errors import InputError, Problem


class EngineError(RuntimeError):
    """The engine did not take the model as it was written."""


def endless(truck: str, what: str, steps: int, dt: float) -> InputError:
    """For whoever has taken all the steps (of dt, s) that its budget allows."""
    said = f"{what} came to no end in {steps} steps of {1e3 * dt:.2g} ms"
    way = "heavier wheels and axles, or softer tyres and springs, allow longer steps"
    return InputError(Problem(truck, said, way))


@dataclass(frozen=True)
class TrialSettings:
    """How trials are stepped; each value says why.

    step: s, longest time step of the real truck; shorter is taken where something is stiff.
    turn_per_step: rad of its fastest oscillation a truck may go through in a step, since springs
    are integrated explicitly; at 1.3 trucks that meet their stops already chatter.
    stop_turn: rad, the same for an axle on its stops, which sets how stiff they are; at 1.1 those
    chatter, and on softer ones light tyres slip that hard ones hold.
    stop_damping: ratio to critical of an axle on its stops.
    stop_time: s, in which a bump or droop stop takes up what its stiffness leaves; a stop as
    stiff as metal would need a step fifty times shorter.
    tyre_damping: ratio to critical of a tyre under its share of the truck; only settles it.
    least_damping: ratio to critical below which a quasi-static trial raises a corner's damping,
    so that it settles between two angles; at rest damping does nothing.
    drag: 1/s, speed a truck on the table loses besides: it swings on its last wheels at 1 Hz, which
    no spring damps, and swinging tyres slip that would have held; near to critical, so that it
    neither swings past where it will rest nor creeps there.
    budget: steps a trial may take; the usual one takes some ten thousand.
    solver: times the usual rounds of a contact solver, in an engine that has one on the table.
    """

    step: float = 1 / 180
    turn_per_step: float = 1.05
    stop_turn: float = 0.9
    stop_damping: float = 0.25
    stop_time: float = 0.15
    tyre_damping: float = 0.15
    least_damping: float = 0.3
    drag: float = 10.0
    solver: int = 1
    budget: int = 1_000_000


@dataclass(frozen=True)
class GroundSettings(TrialSettings):
    """Besides, how turning wheels meet the engine's own ground. Stops are softer: wheels that turn
    slip all the time, and an axle that falls onto its stops jerks the truck less.

    length_scale: lengths are multiplied by this (Froude: time by its root), because the engine
    rounds thin discs by a collision margin of 1 mm, which at ten times the size is 0.1 mm.
    iterations: of the contact solver; 10 are off by 0.15 deg, 40, 50 and 80 agree.
    residual: at which the solver may stop early: loads move by 0.002 N of 10 against never, and
    it saves a third of the time.
    stick: friction coefficient when nothing is said about grip: holds to 74 deg.
    """

    step: float = 1 / 480
    turn_per_step: float = 0.9
    stop_turn: float = 0.5
    stop_damping: float = 0.5
    stop_time: float = 0.3
    length_scale: float = 10.0
    iterations: int = 50
    residual: float = 1e-12
    stick: float = 5.0
