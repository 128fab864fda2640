"""How often a trial's 95 % interval holds what a far finer trial says, and how engines differ.

    python tests/benchmarks/bench_interval.py ENGINE FILE [--reference | --quick | --engines]
        [--fresh SEED]

The finer trial has a quarter of the step, of the rates and of the stillness, and four times the
solver's rounds. Its answers are kept in FILE, a JSON line a case, and made only once; --reference
makes them and stops. --engines holds the careful trials of both engines against each other on the
same cases, and makes no reference. Without --fresh the cases are those that the trial's floor was
chosen on; with it they are drawn, trucks and all, and nothing was ever chosen on them.
"""

from __future__ import annotations

import argparse
import json
import math
import sys
from collections.abc import Iterator
from dataclasses import asdict, dataclass, fields, replace
from pathlib import Path
from random import Random

import numpy as np

ROOT = Path(__file__).resolve().parents[2]
sys.path[:0] = [str(ROOT / "sim"), str(ROOT / "tests"), str(ROOT / "tests" / "physics")]

from trial_trucks import VARIED  # noqa: E402

from crossfall.answers.tips import tip_angles  # noqa: E402
from crossfall.engines.held import ENGINES, EngineName  # noqa: E402
from crossfall.engines.settings import TrialSettings  # noqa: E402
from crossfall.trials.pace import QUICK, Pace  # noqa: E402
from crossfall.trials.tilt import TiltTrial, tilt_trial  # noqa: E402
from crossfall.truck.build import load_truck  # noqa: E402
from crossfall.truck.demos import demo_names  # noqa: E402
from crossfall.truck.model import Truck  # noqa: E402
from support import make_truck  # noqa: E402

HEADINGS = (0, 40, 90, 140, 180, 270)
GRIPS = (5.0, 1.2)  # holds; and times the tangent of that tip: tyres slip before it
FINE_SETTINGS = TrialSettings(
    step=TrialSettings.step / 4, turn_per_step=0.225, solver=4, budget=16 * TrialSettings.budget
)
FINE_PACE = replace(
    Pace(),
    **{name: getattr(Pace(), name) / 4 for name in ("approach", "brisk", "slow", "steady")},
    gently=4 * Pace().gently,
    still=Pace().still / 4,
    stride=Pace().stride / 2,
    bracket=math.radians(0.01),
)
KINDS: dict[str, dict[str, tuple[float, float]]] = {  # what of a drawn truck lies where, SI
    "stiff": {"spring_rate": (600, 1500), "tyre_stiffness": (8000, 20000)},
    "soft": {"spring_rate": (120, 250), "droop": (0.008, 0.02)},
    "droop": {"droop": (0.003, 0.008)},
    "wide": {"contact_half_width": (0.005, 0.014)},
    "tyres": {"tyre_stiffness": (1800, 3500)},
}
USUAL = {
    "wheelbase": (0.28, 0.34),
    "chassis_mass": (1.4, 2.6),
    "axle_mass": (0.18, 0.32),
    "wheel_mass": (0.09, 0.17),
    "radius": (0.05, 0.062),
    "tyre_stiffness": (3500, 9000),
    "tangential": (0.35, 1.0),
    "spring_rate": (220, 700),
    "spring_spacing": (0.08, 0.13),
    "roll_centre_height": (0.05, 0.095),
    "bump": (0.012, 0.025),
    "droop": (0.008, 0.03),
    "anti_roll": (0.0, 1.5),
}
CENTRES = (0, 90, 180, 45, 135, 270, 225, 315)
ASIDE = 12  # deg to either side of them
TRUCKS = 7  # of each kind, with four headings each
OF_TIP = (0.0, 0.0, 1.2, 1.2, 0.9)  # grip against the tangent of the tip that holds; 0: it holds


@dataclass(frozen=True)
class Case:
    truck: str
    heading: int
    grip: float

    @property
    def key(self) -> str:
        return f"{self.truck}/{self.heading}/{self.grip:.4f}"


def trucks() -> dict[str, Truck]:
    """Stiff, soft, droop-limited, wide and soft-tyred ones, and the demo trucks."""
    made = dict(VARIED)
    made["stiff all over"] = make_truck(spring_rate=1500.0, tyre_stiffness=20000.0)
    return made | {name: load_truck(name).truck for name in demo_names()}


def drawn_trucks(rng: Random, seed: int) -> dict[str, Truck]:
    """Trucks as nobody chose them, each of a name that no other seed gives."""
    made = {}
    for kind, own in KINDS.items():
        for n in range(TRUCKS):
            numbers = {name: rng.uniform(*ends) for name, ends in (USUAL | own).items()}
            tracks = rng.uniform(0.15, 0.2), rng.uniform(0.15, 0.2)
            cg = rng.uniform(-0.02, 0.015), rng.uniform(-0.006, 0.006), rng.uniform(0.085, 0.12)
            lean = rng.uniform(-0.2, 0.2), rng.uniform(-0.2, 0.2)
            made[f"{kind} {n} of {seed}"] = make_truck(
                tracks=tracks, chassis_cg=cg, heave_lean=lean, **numbers
            )
    return made


def drawn_cases(made: dict[str, Truck], rng: Random) -> Iterator[tuple[Case, float]]:
    """Climb, side, descent and diagonal of each, with where the statics expects it to go, rad."""
    for name, truck in made.items():
        for centre in (0, rng.choice((90, 270)), 180, rng.choice(CENTRES[3:5] + CENTRES[6:])):
            heading, share = (centre + rng.randint(-ASIDE, ASIDE)) % 360, rng.choice(OF_TIP)
            one = [math.radians(heading)]
            tip = float(tip_angles([truck], one, GRIPS[0]).free[0, 0])
            grip = round(share * math.tan(tip), 3) or GRIPS[0]
            near = float(tip_angles([truck], one, grip).free[0, 0])
            yield Case(name, heading, grip), near


def cases(all_trucks: dict[str, Truck]) -> Iterator[tuple[Case, float]]:
    """Each with where the statics expects it to tip, rad."""
    psi = np.radians(HEADINGS)
    for name, truck in all_trucks.items():
        held = tip_angles([truck], psi, GRIPS[0]).free[0]
        for heading, one, tip in zip(HEADINGS, psi, held, strict=True):
            for grip in (GRIPS[0], round(GRIPS[1] * math.tan(tip), 3)):
                near = float(tip_angles([truck], [one], grip).free[0, 0])
                yield Case(name, heading, grip), near


def went(trial: TiltTrial) -> tuple[float, tuple[float, float]]:
    """Where it goes and the interval, deg."""
    at, ends = (
        (trial.slide, trial.slide_ci) if trial.outcome == "slides" else (trial.tip, trial.tip_ci)
    )
    return math.degrees(at), (math.degrees(ends[0]), math.degrees(ends[1]))


def references(
    engine: EngineName, file: Path, asked: list[tuple[Case, float]], made: dict[str, Truck]
) -> dict[str, tuple[str, float]]:
    """Case -> outcome and deg; those not in the file yet are made."""
    lines = file.read_text().splitlines() if file.exists() else []
    known = {row["key"]: (row["outcome"], row["angle_deg"]) for row in map(json.loads, lines)}
    for case, near in asked:
        if case.key in known:
            continue
        heading = math.radians(case.heading)
        trial = tilt_trial(
            made[case.truck],
            heading,
            grip=case.grip,
            near=near,
            engine=engine,
            settings=FINE_SETTINGS,
            pace=FINE_PACE,
        )
        known[case.key] = trial.outcome, went(trial)[0]
        row = {"key": case.key, "outcome": trial.outcome, "angle_deg": went(trial)[0]}
        row |= {"ci_deg": went(trial)[1], "seconds": trial.seconds, **asdict(case)}
        with file.open("a") as out:
            out.write(json.dumps(row) + "\n")
    return known


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("engine", choices=["bullet", "mujoco"])
    parser.add_argument("file", type=Path)
    parser.add_argument("--reference", action="store_true")
    parser.add_argument("--quick", action="store_true")
    parser.add_argument("--engines", action="store_true")
    parser.add_argument("--fresh", type=int)
    given = parser.parse_args()
    if given.fresh is None:
        made = trucks()
        asked = list(cases(made))
    else:
        rng = Random(given.fresh)
        made = drawn_trucks(rng, given.fresh)
        asked = list(drawn_cases(made, rng))
    if given.engines:
        engine_by_engine(asked, made)
        return
    known = references(given.engine, given.file, asked, made)
    if not given.reference:
        compare(given.engine, known, asked, made, QUICK if given.quick else Pace())


def engine_by_engine(asked: list[tuple[Case, float]], made: dict[str, Truck]) -> None:
    """Print both engines' careful trials of each case, and by how much they differ."""
    apart, meet = [], []
    for case, near in asked:
        one, two = (
            tilt_trial(
                made[case.truck],
                math.radians(case.heading),
                grip=case.grip,
                near=near,
                engine=engine,
            )
            for engine in ENGINES
        )
        (a, ends), (b, others) = went(one), went(two)
        apart.append(abs(a - b))
        meet.append(ends[0] <= others[1] and others[0] <= ends[1])
        said = f"{one.outcome} {a:.3f}, {two.outcome} {b:.3f}"
        print(f"{case.key:28} {said}, apart {apart[-1]:.3f}, meet {meet[-1]}", flush=True)
    print(f"apart: median {np.median(apart):.4f}, worst {max(apart):.3f} deg, of {len(apart)}")
    print(f"{sum(meet)} of {len(meet)} intervals meet")


def compare(
    engine: EngineName,
    known: dict[str, tuple[str, float]],
    asked: list[tuple[Case, float]],
    made: dict[str, Truck],
    pace: Pace,
) -> None:
    """Print each case that misses, and the share of those that hold."""
    held, halves, apart, spent = [], [], [], []
    for case, near in asked:
        if case.key not in known:
            continue
        outcome, at = known[case.key]
        trial = tilt_trial(
            made[case.truck],
            math.radians(case.heading),
            grip=case.grip,
            near=near,
            engine=engine,
            pace=pace,
        )
        angle, (low, high) = went(trial)
        held.append(outcome == trial.outcome and low <= at <= high)
        halves.append((high - low) / 2)
        apart.append(abs(angle - at))
        spent.append(trial.seconds)
        terms = " ".join(
            f"{f.name} {math.degrees(getattr(trial.terms, f.name)):.3f}"
            for f in fields(trial.terms)
            if getattr(trial.terms, f.name)
        )
        said = "held" if held[-1] else "MISS"
        print(
            f"{said} {case.key:28} {outcome} {at:.3f}, trial {trial.outcome} {angle:.3f}"
            f" [{low:.3f} {high:.3f}] {terms} {trial.seconds:.2f} s",
            flush=True,
        )
    print(f"{sum(held)} of {len(held)} held, {100 * np.mean(held):.1f} %")
    print(f"half-width: median {np.median(halves):.3f}, most {max(halves):.3f} deg")
    print(f"off: median {np.median(apart):.4f}, rms {np.sqrt(np.mean(np.square(apart))):.4f}")
    print(f"CPU: {np.mean(spent):.3f} s a trial")


if __name__ == "__main__":
    main()
