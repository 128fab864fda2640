"""The change file: candidate changes to a truck, what each costs and what it does to the spec.

A change has a price per unit, may be done up to `most` times, may stand in a group of which only
one can be chosen, and may require or exclude others. A slot (`slide`) is a change of which the best
place is found: a part that may stand anywhere between here and there. What a change does, in this
order: remove parts, swap parts, add parts, set values, change values by an amount, move and slide
parts, widen, lengthen. All refers to the truck's own file; see `apply` for how several changes go
together.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Annotated, Any, Literal

from pydantic import Field, ValidationError, model_validator

from crossfall.truck import sentences
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.read import Source, read_source
from crossfall.truck.schema import PartSpec
from crossfall.truck.shapes import Line, Name, Places, Price, Strict, Text, mistake
from crossfall.truck.toml_line_index import KeyPath as Place
from crossfall.truck.toml_line_index import nearest_line

MOST_CHANGES = 200
SLOT = 10  # steps a slot is tried at: it counts as done so many times
_ONCE = ("remove", "swap", "set")  # what cannot be done a second time

Shift = Annotated[float, Field(ge=-200, le=200)]
_Names = Annotated[tuple[Name, ...], Field(strict=False)]


class Swap(Strict):
    """A part for another. `new` holds what differs; the rest stays as on the old part.

    A new shape or material without mass_g means that the old mass no longer counts.
    """

    part: Name
    new: dict[str, Any]


class _Move(Strict):
    """A part shifted in its carrier's axes; a link moves with both ends."""

    part: Name
    by_mm: Places


class _Slide(Strict):
    """A part that slides in its carrier's axes, at most by along_mm; a link with both ends. All
    slides of a change go the same share of their way."""

    part: Name
    along_mm: Places


class Added(PartSpec):
    """A part to add; each further unit stands unit_step_mm from the one before."""

    unit_step_mm: Places = (0.0, 0.0, 0.0)


class Widen(Strict):
    """How much further out each wheel stands, per side: the track grows by twice that."""

    front_mm: Shift = 0.0
    rear_mm: Shift = 0.0


class Lengthen(Strict):
    """How much each axle moves away from the other. What is on the axles moves along.

    The chassis keeps its place between them, so that its places in truck axes shift by half the
    difference; the parts named in with_front and with_rear go with that axle instead.
    """

    front_mm: Shift = 0.0
    rear_mm: Shift = 0.0
    with_front: _Names = ()
    with_rear: _Names = ()


class Change(Strict):
    """One candidate change; see the module."""

    name: Name
    label: Line = "-"
    price: Price = 0.0
    most: Annotated[int, Field(ge=1, le=50)] = 1
    group: Name | None = None
    requires: _Names = ()
    excludes: _Names = ()
    note: Text = ""
    remove: _Names = ()
    swap: Annotated[tuple[Swap, ...], Field(strict=False)] = ()
    add: Annotated[tuple[Added, ...], Field(strict=False)] = ()
    set: dict[str, Any] = Field(default_factory=dict)
    by: dict[str, Any] = Field(default_factory=dict)
    move: Annotated[tuple[_Move, ...], Field(strict=False)] = ()
    slide: Annotated[tuple[_Slide, ...], Field(strict=False)] = ()
    widen: Widen | None = None
    lengthen: Lengthen | None = None

    @model_validator(mode="before")
    @classmethod
    def _filled_in(cls, data: Any) -> Any:
        """The label is the name where none is given; a slot is done in steps."""
        if not isinstance(data, dict):
            return data
        if isinstance(data.get("name"), str):
            data = {"label": data["name"], **data}
        if data.get("slide") and "most" in data:
            raise mistake("most", "is given for a slot", "leave it out: its best place is found")
        return {**data, "most": SLOT} if data.get("slide") else data

    @model_validator(mode="after")
    def _slides_alone(self) -> Change:
        others = [a for a in ("add", "by", "move", "widen", "lengthen") if getattr(self, a)]
        if self.slide and others:
            what = f"goes with '{others[0]}'"
            raise mistake("slide", what, "make that a change of its own, and require it")
        return self

    def cost(self, many: int) -> float:
        """Money for so many; a slot costs the same wherever the part stands in it."""
        return self.price if self.slide else self.price * many

    def counted(self, many: int, what: str = "") -> str:
        """Its name (or `what`) with how many, or where in its slot."""
        what = what or self.name
        if self.slide:
            first = self.slide[0]
            by = ", ".join(f"{v * many / SLOT + 0.0:g}" for v in first.along_mm)
            return f"{what} ({first.part} slid by [{by}] mm)"
        return f"{many} × {what}" if many > 1 else what

    @model_validator(mode="after")
    def _does_something(self) -> Change:
        actions = (*_ONCE, "add", "by", "move", "slide", "widen", "lengthen")
        if not any(getattr(self, a) for a in actions):
            raise mistake("name", "changes nothing", f"give one of {', '.join(actions)}")
        once = [a for a in _ONCE if getattr(self, a)]
        if self.most > 1 and once:
            what = f"is {self.most}, but '{once[0]}' can be done only once"
            raise mistake("most", what, "leave it out, or use add, by, move, widen or lengthen")
        for key, value in flat(self.by).items():
            if isinstance(value, bool) or not isinstance(value, int | float):
                what = f"changes '{key}' by {sentences.show(value)}"
                raise mistake("by", what, "it must be a number")
        return self


class ChangeFile(Strict):
    """A whole change file."""

    format: Literal[1]
    truck: Name
    note: Text = ""
    currency: Annotated[str, Field(max_length=8)] = ""
    change: Annotated[tuple[Change, ...], Field(strict=False, max_length=MOST_CHANGES)]

    @model_validator(mode="after")
    def _has_some(self) -> ChangeFile:
        if not self.change:
            raise mistake("change", "is empty", "give at least one [[change]]")
        return self


@dataclass(frozen=True)
class Catalogue:
    """The changes of a file, and where each stands in it."""

    changes: tuple[Change, ...]
    currency: str
    source: Source

    def __getitem__(self, name: str) -> Change:
        return self.changes[self.position(name)]

    def position(self, name: str) -> int:
        """Raises InputError where there is no change of that name."""
        for i, change in enumerate(self.changes):
            if change.name.casefold() == name.casefold():
                return i
        hint = sentences.suggestion(name, [c.name for c in self.changes])
        raise InputError(Problem(self.source.file, f"there is no change '{name}'", hint))

    def problem(self, change: int, path: Place, what: str, allowed: str = "") -> Problem:
        """A problem at a place inside a change."""
        full: Place = ("change", change, *path)
        line = nearest_line(self.source.index, full)
        return Problem(self.source.file, what, allowed, _key(full, self.source.data), line)


def flat(values: Mapping[str, Any], above: str = "") -> dict[str, Any]:
    """Dotted keys of nested tables: front.track_mm = 180 without quotes reads as two tables."""
    found: dict[str, Any] = {}
    for key, value in values.items():
        if isinstance(value, dict) and "." not in key:
            found |= flat(value, f"{above}{key}.")
        else:
            found[above + key] = value
    return found


def change_file_of(truck: Path) -> Path:
    """Where a truck's own change file is looked for: NAME.changes.toml next to it."""
    return truck.with_name(f"{truck.stem}.changes.toml")


def read_changes(path: str | Path) -> Catalogue:
    """The checked changes of a file; whether they fit a truck is `apply.check_fit`'s question.

    Raises InputError with every mistake found.
    """
    return checked_changes(read_source(Path(path), str(path)))


def checked_changes(source: Source) -> Catalogue:
    """`read_changes` of what was read already."""
    try:
        file = ChangeFile.model_validate(source.data)
    except ValidationError as error:
        found = sentences.problems(
            error,
            ChangeFile,
            source.data,
            lambda place: (source.file, nearest_line(source.index, place)),
        )
        raise InputError(_named(p, source.data) for p in found) from None
    catalogue = Catalogue(file.change, file.currency, source)
    if mistakes := [*_twice(catalogue), *_references(catalogue)]:
        raise InputError(mistakes)
    return catalogue


def _twice(catalogue: Catalogue) -> list[Problem]:
    found, seen = [], set[str]()
    for i, change in enumerate(catalogue.changes):
        if change.name.casefold() in seen:
            what = f"'{change.name}' is there twice"
            found.append(catalogue.problem(i, ("name",), what, "give each change its own name"))
        seen.add(change.name.casefold())
    return found


def _references(catalogue: Catalogue) -> list[Problem]:
    """Requirements and exclusions that name no change, this change, or cannot be met."""
    found = []
    known = {c.name.casefold(): c for c in catalogue.changes}
    for i, change in enumerate(catalogue.changes):
        for field in ("requires", "excludes"):
            for j, name in enumerate(getattr(change, field)):
                other = known.get(name.casefold())
                if other is None:
                    hint = sentences.suggestion(name, [c.name for c in catalogue.changes])
                    what = f"there is no change '{name}'"
                elif other is change:
                    what, hint = "names the change itself", "leave it out"
                elif field == "requires" and change.group and other.group == change.group:
                    what = f"'{name}' is in the same group, so both cannot be chosen"
                    hint = "take one of them out of the group"
                elif field == "requires" and name in change.excludes:
                    what, hint = f"'{name}' is required and excluded", "keep one of the two"
                else:
                    continue
                found.append(catalogue.problem(i, (field, j), what, hint))
        if change.name.casefold() in _all_required(change, known):
            what = "requires itself in the end"
            found.append(catalogue.problem(i, ("requires",), what, "break the circle"))
    return found


def _all_required(change: Change, known: Mapping[str, Change]) -> set[str]:
    """Names of everything a change requires, directly or not."""
    found: set[str] = set()
    todo = [n.casefold() for n in change.requires]
    while todo:
        name = todo.pop()
        if name not in found and name in known:
            found.add(name)
            todo += [n.casefold() for n in known[name].requires]
    return found


def requirements(catalogue: Catalogue, name: str) -> tuple[int, ...]:
    """Positions of everything a change requires, directly or not, in file order."""
    known = {c.name.casefold(): c for c in catalogue.changes}
    wanted = _all_required(catalogue[name], known)
    return tuple(i for i, c in enumerate(catalogue.changes) if c.name.casefold() in wanted)


def _key(path: Place, data: Mapping[str, Any]) -> str:
    return _with_names(sentences.key_text(path, data), data)


def _named(problem: Problem, data: Mapping[str, Any]) -> Problem:
    key = _with_names(problem.key, data)
    return Problem(problem.file, problem.what, problem.allowed, key, problem.line)


def _with_names(key: str, data: Mapping[str, Any]) -> str:
    """change[3].add[0].mass_g as change.brass covers.add[0].mass_g."""
    head, _, rest = key.partition("]")
    if not head.startswith("change[") or not head[7:].isdecimal():
        return key
    entries = data.get("change")
    entry = entries[int(head[7:])] if isinstance(entries, list) else None
    name = entry.get("name") if isinstance(entry, dict) else None
    return f"change.{name}{rest}" if isinstance(name, str) and name else key
