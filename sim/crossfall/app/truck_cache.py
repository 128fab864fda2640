"""A truck from the working text, remembered for the few texts last looked at."""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Callable
from pathlib import Path
from threading import Lock
from typing import Any, Generic, TypeVar

from crossfall.app.edits import CHOICES, LIMITERS, MEASURES
from crossfall.app.journal import text_digest
from crossfall.truck.build import Loaded, load_text
from crossfall.truck.model import WHEELS, Truck
from crossfall.truck.schema import TruckSpec

T = TypeVar("T")

CARRIER_NAMES = (
    "chassis",
    "front axle",
    "rear axle",
    "each axle",
    "every wheel",
    "each front wheel",
    "each rear wheel",
    *WHEELS,
    "front link",
    "rear link",
)


class Memory(Generic[T]):
    """Answers by key, the latest few. Work on the same key is done once, not twice at a time."""

    def __init__(self, kept: int) -> None:
        self._kept, self._mutex = kept, Lock()
        self._answers: OrderedDict[Any, T] = OrderedDict()
        self._busy: dict[Any, Lock] = {}

    def get(self, key: Any) -> T | None:
        with self._mutex:
            if key in self._answers:
                self._answers.move_to_end(key)
            return self._answers.get(key)

    def find(self, key: Any, work: Callable[[], T]) -> T:
        """The answer for a key, worked out if it is not known."""
        with self._mutex:
            gate = self._busy.setdefault(key, Lock())
        try:
            with gate:
                known = self.get(key)
                if known is None:
                    known = work()
                    with self._mutex:
                        self._answers[key] = known
                        while len(self._answers) > self._kept:
                            self._answers.popitem(last=False)
                return known
        finally:
            with self._mutex:
                self._busy.pop(key, None)


class Reader:
    """Trucks by their text."""

    def __init__(self) -> None:
        self._trucks: Memory[Loaded] = Memory(8)

    def load(self, text: str, path: Path) -> Loaded:
        """The truck of a text as if it stood at `path`. Raises InputError."""
        return self._trucks.find((text, path), lambda: load_text(text, path))


def part_rows(truck: Truck, spec: TruckSpec, own: int | None) -> list[dict[str, Any]]:
    """The parts table, in the file's units. own: how many parts stand in the file itself."""
    pieces: dict[int, list[float]] = {}
    for part in truck.parts:
        pieces.setdefault(part.row, []).append(part.body.mass * 1000)
    return [
        {
            "row": i,
            "name": p.name,
            "on": p.on,
            "count": p.count,
            "mirror": p.mirror,
            "mass_g": round(pieces[i][0], 4),
            "weighed": p.mass_g is not None,
            "at_mm": None if p.at_mm is None else list(p.at_mm),
            "price": p.price,
            "pieces": len(pieces[i]),
            "here": own is None or i < own,
            "note": p.note,
        }
        for i, p in enumerate(spec.part)
    ]


def measure(spec: TruckSpec, key: str) -> float | None:
    """The value of one of `edits.MEASURES`; None where the file gives another in its place."""
    end, _, name = key.rpartition(".")
    table = _at(spec, end)
    if name in LIMITERS and table.shock_n_per_mm is None:
        return None
    value = getattr(table, name)
    return None if value is None else float(value)


def _at(spec: TruckSpec, key: str) -> Any:
    value: Any = spec
    for name in key.split("."):
        value = getattr(value, name)
    return value


def choices(spec: TruckSpec) -> list[dict[str, Any]]:
    """What can be chosen of how the truck stands, and what is."""
    return [
        {"key": key, "name": name, "choices": list(some), "value": _at(spec, key)}
        for key, (name, some) in CHOICES.items()
    ]


def measures(spec: TruckSpec) -> list[dict[str, Any]]:
    """The numbers of the truck that have a slider, and how far and finely it slides.

    Only those that the file has; a spring may stand along its shock instead.
    """
    found = []
    for key, (name, unit, low, high, step) in MEASURES.items():
        if (value := measure(spec, key)) is not None:
            limits = {"low": low, "high": high, "step": step}
            found.append({"key": key, "name": name, "unit": unit, "value": value, **limits})
    return found


def truck_name(text: str, source: Path) -> str:
    """The same for the same truck, whatever was done and undone on the way to it."""
    return text_digest(f"{source.resolve().parent}\n{text}")[:16]
