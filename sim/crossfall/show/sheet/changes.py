"""What was done to a truck, from its two files: parts, dimensions, grams and money.

Parts are the same where their names are. A longer wheelbase shifts every place on the chassis,
since the origin stays midway between the axles; that shift is taken out, so that only what was
really moved is listed as moved.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Any

from pydantic import BaseModel

from crossfall.truck.build import Loaded
from crossfall.truck.schema import PartSpec, TruckSpec

LEAST_MM, LEAST_G = 0.05, 0.05  # what nobody could set or weigh is no change
_UNITS = (
    ("_n_mm_per_deg", " N mm/deg"),
    ("_n_s_per_m", " N s/m"),
    ("_n_per_mm", " N/mm"),
    ("_percent", " %"),
    ("_mah", " mAh"),
    ("_mm", " mm"),
    ("_deg", "°"),
    ("_g", " g"),
    ("_a", " A"),
)
_NAMES = {"raise": "body lift", "spring": "spring rate"}


@dataclass(frozen=True)
class Difference:
    """One thing changed. mass: kg gained. price: money gained, in the files' currency."""

    what: str
    how: str
    mass: float = 0.0
    price: float = 0.0


@dataclass(frozen=True)
class Differences:
    """dimensions and parts, the parts with the most grams first. mass: kg gained in all.

    put_on: money for what is new or dearer. taken_off: what was paid for what is gone or cheaper.
    Both None where the two files count in different money.
    """

    dimensions: tuple[Difference, ...]
    parts: tuple[Difference, ...]
    mass: float
    put_on: float | None
    taken_off: float | None
    currency: str

    @property
    def price(self) -> float | None:
        """Money gained in all."""
        if self.put_on is None or self.taken_off is None:
            return None
        return self.put_on - self.taken_off


@dataclass(frozen=True)
class _Row:
    """A part of one truck. mass: kg and price: of all its pieces; pieces: how many."""

    spec: PartSpec
    mass: float
    price: float
    pieces: int


def differences(before: Loaded, now: Loaded) -> Differences:
    """Everything that differs between two trucks and shows in weight, place, size or price."""
    old, new = _rows(before), _rows(now)
    shift = chassis_shift(before.spec, now.spec)
    parts = [_gone(old[k]) for k in old if k not in new]
    parts += [_come(new[k]) for k in new if k not in old]
    both = [_changed(old[k], new[k], shift) for k in old if k in new]
    parts += [d for d in both if d is not None]
    ranked = sorted(parts, key=lambda d: (-round(abs(d.mass), 6), -abs(d.price), d.what))
    same_money = before.spec.currency == now.spec.currency
    return Differences(
        tuple(_dimensions(before.spec, now.spec, shift)),
        tuple(ranked),
        sum(d.mass for d in ranked),
        sum(max(d.price, 0.0) for d in ranked) if same_money else None,
        sum(max(-d.price, 0.0) for d in ranked) if same_money else None,
        now.spec.currency,
    )


def _rows(loaded: Loaded) -> dict[str, _Row]:
    own: dict[int, list[Any]] = {}
    for part in loaded.truck.parts:
        own.setdefault(part.row, []).append(part)
    return {
        spec.name.casefold(): _Row(
            spec,
            sum(p.body.mass for p in own[i]),
            sum(p.price for p in own[i]),
            len(own[i]),
        )
        for i, spec in enumerate(loaded.spec.part)
    }


def _gone(row: _Row) -> Difference:
    return Difference(row.spec.name, "taken off", -row.mass, -row.price)


def _come(row: _Row) -> Difference:
    several = f"{row.pieces} pieces, " if row.pieces > 1 else ""
    return Difference(row.spec.name, f"added: {several}{row.spec.on}", row.mass, row.price)


def _changed(old: _Row, new: _Row, shift: float) -> Difference | None:
    """A part that is in both trucks, or None where nothing of it changed."""
    a, b = old.spec, new.spec
    mass, price = new.mass - old.mass, new.price - old.price
    words = []
    if a.on != b.on:
        words.append(f"now on: {b.on}")
    if old.pieces != new.pieces:
        words.append(f"{old.pieces} → {new.pieces} pieces")
    if (a.material or "") != (b.material or ""):
        words.append(f"{a.material or 'as weighed'} → {b.material or 'as weighed'}")
    if a.on == b.on and (moved := _moved_words(a, b, shift)):
        words.append(moved)
    if a.turn_deg != b.turn_deg:
        words.append("turned")
    if a.unsprung != b.unsprung:
        words.append("share of the axle")
    if abs(mass) * 1e3 >= LEAST_G:
        words.append(f"{_figure(old.mass * 1e3)} → {_figure(new.mass * 1e3)} g")
    if a.shape != b.shape and abs(mass) * 1e3 < LEAST_G:
        words.append("other size or shape")
    if abs(price) >= 0.005 and not words:
        words.append("other price")
    return Difference(b.name, ", ".join(words), mass, price) if words else None


def chassis_shift(before: TruckSpec, now: TruckSpec) -> float:
    """mm by which places on the chassis went forward in the file without having been moved.

    What most of the chassis parts did, if the wheelbase changed; else nothing.
    """
    if abs(now.chassis.wheelbase_mm - before.chassis.wheelbase_mm) < LEAST_MM:
        return 0.0
    old = {p.name.casefold(): p for p in before.part}
    shifts = [
        round(end[0] - start[0], 3)
        for p in now.part
        if (q := old.get(p.name.casefold())) is not None
        and (start := _on_chassis(q)) is not None
        and (end := _on_chassis(p)) is not None
    ]
    if not shifts:
        return 0.0
    shift, many = Counter(shifts).most_common(1)[0]
    return shift if 2 * many > len(shifts) else 0.0


def _on_chassis(part: PartSpec) -> tuple[float, float, float] | None:
    if part.is_link:
        return part.chassis_end_mm
    return part.at_mm if part.on == "chassis" else None


def _moved_words(a: PartSpec, b: PartSpec, shift: float) -> str:
    """How far a part went, or "" where it stayed; a link's ends apart where they differ."""
    if b.is_link and b.chassis_end_mm and b.axle_end_mm and a.chassis_end_mm and a.axle_end_mm:
        y = b.chassis_end_mm[1]
        top = shift_words(_less(b.chassis_end_mm, a.chassis_end_mm, shift), _outward(b, y))
        low = shift_words(_less(b.axle_end_mm, a.axle_end_mm), _outward(b, y))
        if top == low:
            return top
        ends = (("chassis end", top), ("axle end", low))
        return ", ".join(f"{end} {words}" for end, words in ends if words)
    if a.at_mm is None or b.at_mm is None:
        return ""
    by = _less(b.at_mm, a.at_mm, shift if b.on == "chassis" else 0.0)
    return shift_words(by, _outward(b, b.at_mm[1]))


def _less(b: Sequence[float], a: Sequence[float], shift: float = 0.0) -> tuple[float, ...]:
    return (b[0] - a[0] - shift, b[1] - a[1], b[2] - a[2])


def _outward(part: PartSpec, y: float) -> float:
    """1 or -1: what y means for a part that stands on both sides; 0 for one that does not."""
    if part.on_wheel:
        return 1.0
    return (1.0 if y >= 0 else -1.0) if part.mirror else 0.0


def shift_words(by_mm: Sequence[float], outward: float = 0.0) -> str:
    """A shift (mm) in words: '15 mm lower, 28 mm forward'."""
    x, y, z = by_mm
    sideways = ("further out", "further in") if outward else ("to the left", "to the right")
    said = (
        (z, "higher", "lower"),
        (x, "forward", "back"),
        (y * (outward or 1.0), *sideways),
    )
    return ", ".join(
        f"{_figure(abs(d))} mm {more if d > 0 else less}"
        for d, more, less in said
        if abs(d) >= LEAST_MM
    )


def _dimensions(before: TruckSpec, now: TruckSpec, shift: float) -> Iterable[Difference]:
    """Values that belong to no part; front and rear together where they changed alike."""
    old, new = dict(_leaves(before)), dict(_leaves(now))
    found = {k: (old.get(k), new.get(k)) for k in {**old, **new} if old.get(k) != new.get(k)}
    for key, (a, b) in found.items():
        end, _, rest = key.partition(".")
        twin = f"{'rear' if end == 'front' else 'front'}.{rest}"
        alike = end in ("front", "rear") and found.get(twin) == (a, b)
        if alike and end == "rear":
            continue
        name, unit = plain_key(key)
        if alike:
            name = f"{name.removeprefix('front ')}, both"
        how = _values(a, b, unit)
        if key == "chassis.wheelbase_mm":
            how += _axles(now.chassis.wheelbase_mm - before.chassis.wheelbase_mm, shift)
        yield Difference(name, how)
    yield from _points(before, now, shift)


def _leaves(spec: TruckSpec) -> Iterable[tuple[str, Any]]:
    """(dotted key, value) of everything compared as a dimension."""

    def walk(value: Any, key: str) -> Iterable[tuple[str, Any]]:
        if isinstance(value, BaseModel):
            for name in type(value).model_fields:
                yield from walk(getattr(value, name), f"{key}.{name}")
        elif value is not None:
            yield key, value

    for section in ("chassis", "front", "rear", "battery"):
        yield from walk(getattr(spec, section), section)


def plain_key(key: str) -> tuple[str, str]:
    """A key as a tuner would say it, and its unit: rear.suspension.droop_mm is rear droop."""
    section, *_, last = key.split(".")
    unit = ""
    for suffix, symbol in _UNITS:
        if last.endswith(suffix):
            last, unit = last.removesuffix(suffix), symbol
            break
    tyre = "tyre " if ".tyre." in key and not last.startswith("tyre") else ""
    words = _NAMES.get(f"{tyre}{last}".replace("_", " "), f"{tyre}{last}".replace("_", " "))
    return (words if section == "chassis" else f"{section} {words}"), unit


def _values(a: Any, b: Any, unit: str) -> str:
    """Old and new value with the unit once."""
    if isinstance(a, bool) or isinstance(b, bool):
        return f"{_yes(a)} → {_yes(b)}"
    return f"{_value(a)} → {_value(b)}{unit}"


def _value(value: Any) -> str:
    if value is None:
        return "none"
    return f"{value:g}" if isinstance(value, int | float) else str(value)


def _yes(value: Any) -> str:
    return "yes" if value else "no"


def _axles(longer: float, shift: float) -> str:
    """Which axle went where: the chassis shifts by (rear - front) / 2 of what they went."""
    front, rear = longer / 2 - shift, longer / 2 + shift
    if abs(front - rear) < LEAST_MM:
        return f", {_figure(abs(front))} mm each end"
    said = (("front", front, "forward", "back"), ("rear", rear, "back", "forward"))
    words = [
        f"{end} {_figure(abs(by))} mm {out if by > 0 else back}"
        for end, by, out, back in said
        if abs(by) >= LEAST_MM
    ]
    return "".join(f", {w}" for w in words)


def _points(before: TruckSpec, now: TruckSpec, shift: float) -> Iterable[Difference]:
    """The points that hit the ground first."""
    a, b = before.clearance, now.clearance
    if a is None or b is None:
        return
    for name in ("nose", "belly", "tail"):
        (x0, z0), (x1, z1) = getattr(a, f"{name}_mm"), getattr(b, f"{name}_mm")
        if words := shift_words((x1 - x0 - shift, 0.0, z1 - z0)):
            yield Difference(f"{name} point", words)


def _figure(value: float) -> str:
    """Whole numbers as such, else one decimal."""
    rounded = round(value, 1)
    return f"{rounded:.0f}" if rounded == round(rounded) or value >= 100 else f"{rounded:.1f}"
