"""Random change files for a demo truck, and the best of all their sets by trying every one."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from crossfall.truck.build import Loaded
from crossfall.truck.model import Array
from crossfall.truck.read import Source
from crossfall.tuning.apply import clash, touches
from crossfall.tuning.changes import Catalogue, Change, ChangeFile
from crossfall.tuning.menu import menu
from crossfall.tuning.milp_model import Bounds, MilpModel, Modeller

CHASSIS = ("winch", "motor", "battery pack", "cab", "bed", "bonnet", "roof box", "tool box")
SPARE = ("roof rack", "light bar", "spare wheel", "interior and driver", "sand board", "fuel can")


def random_catalogue(rng: np.random.Generator, count: int = 14, setups: int = 3) -> Catalogue:
    """`count` changes, each once: moves, swaps, removals, ballast, and some set-up changes."""
    kinds = ["setup"] * setups + list(rng.choice(["move", "swap", "remove", "add"], count - setups))
    spare = list(rng.permutation(SPARE))
    entries = []
    for i, kind in enumerate(kinds):
        entry: dict[str, object] = {
            "name": f"change {i}",
            "label": f"change {i}",
            "price": float(np.round(rng.uniform(0, 40), 2)),
        }
        if rng.random() < 0.25:
            entry["group"] = f"group {rng.integers(2)}"
        if i and rng.random() < 0.2:
            entry["requires"] = [f"change {rng.integers(i)}"]
        if i and rng.random() < 0.2:
            entry["excludes"] = [f"change {rng.integers(i)}"]
        entries.append(entry | _action(rng, kind, i, spare))
    for entry in entries:  # what is required cannot be excluded or share the group
        needed = [entries[int(n.split()[1])] for n in entry.get("requires", [])]
        entry["excludes"] = (
            [n for n in entry.get("excludes", []) if n not in entry["requires"]]
            if ("requires" in entry)
            else entry.get("excludes", [])
        )
        if any(n.get("group") is not None and n.get("group") == entry.get("group") for n in needed):
            del entry["group"]
    data = {"format": 1, "truck": "bramble", "change": entries}
    file = ChangeFile.model_validate(data)
    return Catalogue(file.change, "", Source("random", data, {}))


def _action(rng: np.random.Generator, kind: str, i: int, spare: list[str]) -> dict[str, object]:
    part = str(rng.choice(CHASSIS))
    if kind == "remove" and spare:
        return {"remove": [spare.pop()]}
    if kind == "swap":
        return {"swap": [{"part": part, "new": {"mass_g": float(rng.uniform(20, 300))}}]}
    if kind == "move":
        by = rng.uniform((-60, -10, -25), (60, 10, 10))
        return {"move": [{"part": part, "by_mm": [float(b) for b in by]}]}
    if kind == "setup":
        choice = int(rng.integers(4))
        wide = {"front_mm": float(rng.uniform(0, 5)), "rear_mm": float(rng.uniform(0, 5))}
        long = {"front_mm": float(rng.uniform(0, 5)), "rear_mm": float(rng.uniform(0, 9))}
        actions: tuple[dict[str, object], ...] = (
            {"widen": wide},
            {"lengthen": long},
            {"by": {"chassis.raise_mm": float(rng.uniform(-6, 2))}},
            {"by": {"rear.tyre.radius_mm": float(rng.uniform(-2, 2))}},
        )
        return actions[choice]
    on, height = [("chassis", 75.0), ("front axle", 0.0), ("rear axle", 0.0), ("every wheel", 0.0)][
        int(rng.integers(4))
    ]
    x = float(rng.uniform(-150, 150)) if on == "chassis" else 0.0
    mass = float(rng.uniform(5, 90))
    return {"add": [{"name": f"ballast {i}", "on": on, "mass_g": mass, "at_mm": [x, 0.0, height]}]}


@dataclass(frozen=True)
class Everything:
    """All allowed sets. chosen: (K, changes) 0 or 1; values: (K, H) rad; money, mass: (K,)."""

    chosen: Array
    values: Array
    money: Array
    mass: Array


def try_everything(
    loaded: Loaded, catalogue: Catalogue, headings: Array, bounds: Bounds
) -> Everything:
    """Every subset of changes that are done once, by the closed form, rules checked bit by bit."""
    made = menu(catalogue)
    modeller = Modeller(loaded, made, Bounds())
    chosen, values, money, mass = [], [], [], []
    for setup in made.setups:
        model = modeller.model(setup)
        assert model is not None
        bits, picked = _subsets(catalogue, model, made.columns, made.starts)
        keep = _follows_rules(catalogue, bits)
        bits, picked = bits[keep], picked[keep]
        chosen.append(bits)
        values.append(model.angles(picked, headings))
        money.append(bits @ [c.price for c in catalogue.changes])
        mass.append((model.sums + picked @ model.columns.T)[:, 0] - modeller.mass_now)
    every = Everything(*(np.concatenate(v) for v in (chosen, values, money, mass)))
    keep = every.values.min(axis=1) > 0
    if bounds.budget is not None:
        keep &= every.money <= bounds.budget + 1e-9
    if bounds.added_mass is not None:
        keep &= every.mass <= bounds.added_mass + 1e-12
    return Everything(every.chosen[keep], every.values[keep], every.money[keep], every.mass[keep])


def _subsets(
    catalogue: Catalogue,
    model: MilpModel,
    columns: tuple[tuple[tuple[int, int], ...], ...],
    starts: NDArray[np.intp],
) -> tuple[Array, Array]:
    """(K, changes) and (K, columns): one column or none of every cluster."""
    ends = [*starts[1:], len(columns)]
    options = [[-1, *range(a, b)] for a, b in zip(starts, ends, strict=True)]
    numbers = np.stack([g.ravel() for g in np.meshgrid(*options, indexing="ij")], axis=1)
    picked = np.zeros((len(numbers), len(columns) + 1))  # one more for "none of the cluster"
    np.put_along_axis(picked, numbers, 1.0, axis=1)
    picked = picked[:, :-1]
    holds = np.zeros((len(columns), len(catalogue.changes)))
    for k, picks in enumerate(columns):
        holds[k, [i for i, _ in picks]] = 1.0
    bits = picked @ holds
    bits[:, [i for i, _ in model.setup]] = 1.0
    return bits, picked


def _follows_rules(catalogue: Catalogue, bits: Array) -> NDArray[np.bool_]:
    changes: tuple[Change, ...] = catalogue.changes
    hands = [touches(c) for c in changes]
    ok = np.ones(len(bits), dtype=bool)
    for i, a in enumerate(changes):
        for name in a.requires:
            ok &= bits[:, catalogue.position(name)] >= bits[:, i]
        for j, b in enumerate(changes):
            apart = b.name in a.excludes or (a.group is not None and a.group == b.group)
            if i != j and (apart or clash(hands[i], hands[j])):
                ok &= bits[:, i] + bits[:, j] <= 1
    return ok
