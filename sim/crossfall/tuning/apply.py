"""Changes put to a spec: one, or several together.

All removals first, then all swaps, additions, set values, values changed by an amount, moves and
slides, widenings and lengthenings; within a kind in the order of the change file. So the outcome
does not depend on the order in which changes were chosen. Two changes clash where that order would
hide what one of them does: both swap the same part or set the same value, or one removes a part
that the other touches.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from pydantic import ValidationError

from crossfall.truck import edits, sentences
from crossfall.truck.build import Loaded, build
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.model import Truck
from crossfall.truck.schema import PartSpec, TruckSpec
from crossfall.tuning.changes import SLOT, Added, Catalogue, Change, Swap, flat, requirements

Chosen = Mapping[int, int]  # position in the catalogue -> how many, 1 or more


@dataclass(frozen=True)
class Touches:
    """What a change lays hands on: parts by name, values by dotted key, all in small letters."""

    removed: frozenset[str]
    swapped: frozenset[str]
    added: frozenset[str]
    edited: frozenset[str]
    keys: frozenset[str]

    @property
    def parts(self) -> frozenset[str]:
        return self.removed | self.swapped | self.added | self.edited


def touches(change: Change) -> Touches:
    """What a change lays hands on; "both." keys count for front and rear."""
    keys = {k.casefold() for k in flat(change.set)}
    edited = {m.part.casefold() for m in change.move}
    edited |= {s.part.casefold() for s in change.slide}
    if change.lengthen is not None:
        named = (*change.lengthen.with_front, *change.lengthen.with_rear)
        edited |= {name.casefold() for name in named}
    for key in (*keys, *(k.casefold() for k in flat(change.by))):
        if key.startswith("part."):
            edited.add(key.split(".")[1])
    return Touches(
        removed=frozenset(n.casefold() for n in change.remove),
        swapped=frozenset(s.part.casefold() for s in change.swap),
        added=frozenset(a.name.casefold() for a in change.add),
        edited=frozenset(edited),
        keys=frozenset(k for key in keys for k in _both(key)),
    )


def _both(key: str) -> tuple[str, ...]:
    if not key.startswith("both."):
        return (key,)
    return tuple(end + key.removeprefix("both") for end in ("front", "rear"))


def clash(a: Touches, b: Touches) -> str:
    """Why two changes cannot go together, or "" where they can."""
    for one, other in ((a, b), (b, a)):
        if gone := one.removed & other.parts:
            return f"one of them removes '{min(gone)}'"
    if twice := a.swapped & b.swapped:
        return f"both swap '{min(twice)}'"
    if twice := a.added & b.added:
        return f"both add '{min(twice)}'"
    for key in sorted(a.keys):
        if any(key == k or key.startswith(k + ".") or k.startswith(key + ".") for k in b.keys):
            return f"both set '{key}'"
    return ""


def objections(catalogue: Catalogue, chosen: Chosen) -> list[str]:
    """Why a set of changes may not be chosen, a sentence each; none where it may."""
    found = []
    names = {c.name.casefold(): i for i, c in enumerate(catalogue.changes)}
    picked = sorted(chosen)
    hands = {i: touches(catalogue.changes[i]) for i in picked}
    for k, i in enumerate(picked):
        change = catalogue.changes[i]
        if not 1 <= chosen[i] <= change.most:
            found.append(f"'{change.name}' can be done 1 to {change.most} times, not {chosen[i]}")
        found += [
            f"'{change.name}' requires '{name}'"
            for name in change.requires
            if names[name.casefold()] not in chosen
        ]
        excluded = {names[n.casefold()] for n in change.excludes}
        for j in picked:
            other = catalogue.changes[j]
            if j in excluded:
                found.append(f"'{change.name}' excludes '{other.name}'")
            elif j in picked[k + 1 :] and (why := clash(hands[i], hands[j])):
                found.append(f"'{change.name}' and '{other.name}' do not go together: {why}")
            elif j in picked[k + 1 :] and change.group and change.group == other.group:
                found.append(f"'{change.name}' and '{other.name}' are both in '{change.group}'")
    return found


def apply(spec: TruckSpec, catalogue: Catalogue, chosen: Chosen) -> TruckSpec:
    """The spec with the chosen changes made; `objections` is not asked again.

    Raises InputError where an action does not fit the spec.
    """
    picked = [(catalogue.changes[i], chosen[i]) for i in sorted(chosen)]
    for change, _ in picked:
        for name in change.remove:
            spec = edits.remove_part(spec, name)
    for change, _ in picked:
        for swap in change.swap:
            spec = swapped(spec, swap)
    for change, many in picked:
        for part in change.add:
            spec = edits.add_part(spec, _multiplied(part, many))
    for change, _ in picked:
        spec = edits.set_values(spec, flat(change.set))
    for change, many in picked:
        for key, amount in flat(change.by).items():
            spec = _changed_by(spec, key, amount * many)
    for change, many in picked:
        for move in change.move:
            spec = edits.move_part(spec, move.part, [many * b for b in move.by_mm])
        for slide in change.slide:
            by = [round(many * b / SLOT, 4) for b in slide.along_mm]
            spec = edits.move_part(spec, slide.part, by)
    for change, many in picked:
        spec = _widened(spec, change, many)
    return _lengthened(spec, catalogue, chosen)


def swapped(spec: TruckSpec, swap: Swap) -> TruckSpec:
    """The spec with a part's entry replaced, in its place in the list."""
    row = edits.part_row(spec, swap.part)
    new = PartSpec.model_validate(merged(spec.part[row], swap.new))
    if new.name.casefold() != swap.part.casefold():
        spec = edits.rename_part(spec, swap.part, new.name)
    return edits.with_parts(spec, (*spec.part[:row], new, *spec.part[row + 1 :]))


def merged(old: PartSpec, new: Mapping[str, Any]) -> dict[str, Any]:
    """Entries of the part that takes the old one's place: see `changes.Swap`."""
    data = {k: getattr(old, k) for k in old.model_fields_set}
    if ("shape" in new or "material" in new) and "mass_g" not in new:
        data.pop("mass_g", None)
    if "mass_g" in new or "shape" in new or "material" in new:
        for key in ("inertia_kg_mm2", "mass_tol_g"):
            data.pop(key, None)
    return {**data, **new}


def _multiplied(part: Added, many: int) -> PartSpec:
    """`many` units of a part as one entry; on top of each other where a unit is a row itself."""
    data = {k: getattr(part, k) for k in part.model_fields_set if k != "unit_step_mm"}
    if many == 1:
        return PartSpec.model_validate(data)
    if part.count == 1:
        data |= {"count": many, "step_mm": part.unit_step_mm}
    else:
        data |= {"count": part.count * many}
    return PartSpec.model_validate(data)


def _changed_by(spec: TruckSpec, key: str, amount: float) -> TruckSpec:
    for one in _both(key):
        value = edits.get_value(spec, one)
        if isinstance(value, bool) or not isinstance(value, int | float):
            what = f"is {sentences.show(value) if value is not None else 'not given'}"
            raise InputError(Problem(spec.name, what, "only a number can be changed by some", one))
        whole = isinstance(value, int) and float(amount).is_integer()
        spec = edits.set_value(spec, one, value + int(amount) if whole else value + amount)
    return spec


def _widened(spec: TruckSpec, change: Change, many: int) -> TruckSpec:
    if change.widen is None:
        return spec
    for end, out in (("front", change.widen.front_mm), ("rear", change.widen.rear_mm)):
        if out:
            spec = _changed_by(spec, f"{end}.track_mm", 2.0 * out * many)
    return spec


@dataclass(frozen=True)
class Lengthening:
    """What lengthening does to places in truck axes, mm along x.

    The origin stays midway between the axles, so the chassis shifts by `chassis`; parts in `along`
    (by name, small letters) go with an axle on top of that. longer: of the wheelbase.
    """

    longer: float
    chassis: float
    along: Mapping[str, float]


def stretch(catalogue: Catalogue, chosen: Chosen) -> Lengthening:
    """All chosen lengthenings together, mm: longer = front + rear, chassis = (rear - front) / 2.

    Source: derived here from an origin midway between the axles.
    """
    longer = chassis = 0.0
    along: dict[str, float] = {}
    for i in sorted(chosen):
        out = catalogue.changes[i].lengthen
        if out is None:
            continue
        front, rear = out.front_mm * chosen[i], out.rear_mm * chosen[i]
        longer, chassis = longer + front + rear, chassis + (rear - front) / 2
        for names, by in ((out.with_front, front), (out.with_rear, -rear)):
            for name in names:
                along[name.casefold()] = along.get(name.casefold(), 0.0) + by
    return Lengthening(longer, chassis, along)


def stretched(part: PartSpec, by: Lengthening) -> PartSpec:
    """A part's entry after lengthening; the very same one where nothing moves it. Places shift
    along x, mm.

    Source: derived here, as `stretch`.
    """
    moved = by.along.get(part.name.casefold(), 0.0)
    new = {}
    for field in ("at_mm", "chassis_end_mm", "axle_end_mm"):
        place = getattr(part, field)
        on_chassis = field == "chassis_end_mm" or part.on == "chassis"
        shift = moved + (by.chassis if on_chassis else 0.0)
        if place is not None and shift:
            new[field] = (place[0] + shift, *place[1:])
    return part.model_copy(update=new) if new else part


def _lengthened(spec: TruckSpec, catalogue: Catalogue, chosen: Chosen) -> TruckSpec:
    by = stretch(catalogue, chosen)
    for name in by.along:
        edits.part_row(spec, name)
    if by.longer:
        spec = _changed_by(spec, "chassis.wheelbase_mm", by.longer)
    if spec.clearance is not None and by.chassis:
        points = {
            name: (getattr(spec.clearance, name)[0] + by.chassis, getattr(spec.clearance, name)[1])
            for name in ("nose_mm", "belly_mm", "tail_mm")
        }
        spec = spec.model_copy(update={"clearance": spec.clearance.model_copy(update=points)})
    return edits.with_parts(spec, tuple(stretched(p, by) for p in spec.part))


def check_fit(catalogue: Catalogue, loaded: Loaded) -> None:
    """Every change, with what it requires, put to the truck once. Raises InputError for all."""
    found: list[Problem] = []
    for i in range(len(catalogue.changes)):
        found += misfits(catalogue, i, loaded.spec)
    if found:
        raise InputError(found)


def misfits(catalogue: Catalogue, i: int, spec: TruckSpec) -> list[Problem]:
    """What does not fit in one change, action by action, each at its own line."""
    change = catalogue.changes[i]
    before = dict.fromkeys(requirements(catalogue, change.name), 1)
    try:
        spec = apply(spec, catalogue, before)
    except (InputError, ValidationError):
        return []  # told where the required change is looked at
    found: list[Problem] = []

    def attempt(path: tuple[str | int, ...], key: str, single: dict[str, Any]) -> None:
        """One action by itself; problems inside its own part of the file keep that key."""
        nonlocal spec
        bare = Change.model_construct(name=change.name, label=change.label, **single)
        alone = Catalogue((bare,), catalogue.currency, catalogue.source)
        try:
            spec = apply(spec, alone, {0: 1})
        except InputError as error:
            for p in error.problems:
                what = p.what if not p.key or p.key == key else f"{p.key}: {p.what}"
                found.append(catalogue.problem(i, path, what, p.allowed))
        except ValidationError as error:
            found.extend(_swap_problems(catalogue, i, path, error, spec))

    for j, name in enumerate(change.remove):
        attempt(("remove", j), f"part.{name}", {"remove": (name,)})
    for j, swap in enumerate(change.swap):
        attempt(("swap", j, "part"), f"part.{swap.part}", {"swap": (swap,)})
    for j, part in enumerate(change.add):
        attempt(("add", j, "name"), f"part.{part.name}", {"add": (part,)})
    for field in ("set", "by"):
        for key, value in flat(getattr(change, field)).items():
            attempt((field, key), key, {field: {key: value}})
    for j, move in enumerate(change.move):
        attempt(("move", j, "part"), f"part.{move.part}", {"move": (move,)})
    for j, slide in enumerate(change.slide):
        attempt(("slide", j, "part"), f"part.{slide.part}", {"slide": (slide,)})
    if change.widen:
        attempt(("widen",), "", {"widen": change.widen})
    if change.lengthen:
        attempt(("lengthen",), "", {"lengthen": change.lengthen})
    return found


def _swap_problems(
    catalogue: Catalogue,
    i: int,
    path: tuple[str | int, ...],
    error: ValidationError,
    spec: TruckSpec,
) -> list[Problem]:
    """Mistakes in what a swap brings, at their own keys."""
    swap = catalogue.changes[i].swap[int(path[1])]
    row = edits.find_part(spec, swap.part)
    old = spec.part[row].model_dump(exclude_unset=True) if row is not None else {}
    said = sentences.problems(error, PartSpec, {**old, **swap.new}, lambda _: ("", None))
    return [
        catalogue.problem(i, (*path[:2], "new", *p.key.split(".")), p.what, p.allowed) for p in said
    ]


def built(loaded: Loaded, spec: TruckSpec) -> Truck:
    """The truck of a changed spec. Raises InputError where it cannot be built or cannot stand."""
    return build(spec, loaded.folder)[0]
