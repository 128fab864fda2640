"""The two files of `begin`, a truck and its readings, and what is said about a truck just begun."""

from __future__ import annotations

import hashlib
from collections.abc import Mapping
from math import degrees, radians
from pathlib import Path
from typing import Any

import tomlkit
from pydantic import ValidationError

from crossfall.answers.conditions import conditions
from crossfall.answers.ranges import ranges
from crossfall.measurement.begin import Beginning, begin
from crossfall.measurement.next_reading import next_measurements
from crossfall.measurement.readings import (
    Question,
    Readings,
    checked,
    missing,
    written,
)
from crossfall.measurement.truck_text import truck_text
from crossfall.truck.build import Loaded, load_text
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.files import write_atomically
from crossfall.truck.read import read_source

_HEADINGS = (0.0, 90.0, 180.0, 270.0)
LEAST_GAIN = radians(0.02)  # of a further reading worth naming
ASKEW = 10.0  # mm, an axle's mass centre beside its middle that is worth a word
SURE_95 = 1.96
SEAL = "# Unchanged since it was made: "


def readings_of(truck: Path) -> Path:
    """Where the readings that a truck was begun from are kept."""
    return truck.with_name(f"{truck.stem}.readings.toml")


def begin_paths(name: str, again: bool) -> tuple[Path, Path]:
    """The truck file and its readings file. Raises InputError where they may not be written."""
    path = Path(name.removesuffix(".toml") + ".toml")
    bad = set('".[]') & set(path.stem)
    if not path.stem.strip() or not name.isprintable() or bad or len(path.stem) > 60:
        allowed = "up to 60 letters, no dots, quotes or brackets"
        raise InputError(Problem(repr(name)[:80], "is no name for a truck file", allowed))
    kept = readings_of(path)
    if not path.parent.is_dir():
        raise InputError(Problem(str(path.parent), "there is no such folder"))
    if again and not kept.exists():
        what = "there are no readings to begin again from"
        raise InputError(Problem(str(kept), what, "begin without --again"))
    for one in (path, kept):
        if one.exists() and not again:
            allowed = "choose another name, or --again to make it anew from its readings"
            raise InputError(Problem(str(one), "is there already", allowed))
    if again and path.exists() and not is_sealed(path):
        what = "was changed by hand since it was made"
        raise InputError(Problem(str(path), what, "move it away, or go on editing it"))
    return path, kept


def begin_files(
    path: Path, kept: Path, given: Mapping[str, Any], source: Path | None, again: bool
) -> tuple[Beginning, Loaded]:
    """Make the truck of the readings given, beside those of the file `source`, and write both
    files. Raises InputError, nothing written."""
    there = None if source is None else read_source(source, str(source))
    data = {**({} if there is None else there.data), **given}
    data.setdefault("name", path.stem)
    if found := missing(data):
        raise InputError(found)
    readings = checked(data, there)
    begun = begin(readings)
    text = truck_text(begun, path.stem)
    loaded = load_text(text, path)
    write_atomically(kept, _added(kept, data) if again else written(readings))
    write_atomically(path, _sealed(text))
    return begun, loaded


def _sealed(text: str) -> str:
    """With a last line by which a change by hand is seen."""
    return f"{text}\n{SEAL}{hashlib.sha256(text.encode()).hexdigest()[:16]}\n"


def is_sealed(path: Path) -> bool:
    """Whether a truck file is as `begin` made it."""
    whole = path.read_text(encoding="utf-8", errors="replace")
    text, found, _ = whole.rpartition("\n" + SEAL)
    return bool(found) and _sealed(text) == whole


def _added(path: Path, data: Mapping[str, Any]) -> str:
    """The readings file with what was added, its comments kept."""
    document = tomlkit.parse(path.read_text(encoding="utf-8"))
    for key, value in data.items():
        if document.get(key) != value:
            document[key] = value
    return tomlkit.dumps(document)


# One reading as typed


def reading_typed(question: Question, text: Any) -> Any:
    """A reading as typed. Raises ValueError or KeyError where it is none of its kind."""
    if not isinstance(text, str):
        return text
    text = text.strip()
    match question.kind:
        case "place":
            values = [_number(v) for v in text.strip("[]").replace(";", ",").split(",")]
            if len(values) != 3:
                raise ValueError
            return values
        case "yes or no":
            return {"y": True, "yes": True, "n": False, "no": False}[text.casefold()[:3]]
        case "word":
            if question.key in ("raised_repeats",):
                return int(text)
            return _number(text) if question.key.endswith("percent") else text
    return _number(text)


def _number(text: str) -> float:
    """With a decimal comma or point, and perhaps its unit."""
    value = float(text.strip().rstrip("mg ").replace(",", "."))
    if not abs(value) < 1e9:
        raise ValueError
    return value


def wanted(question: Question) -> str:
    """What a reading looks like as it is typed."""
    words = {"place": "three numbers in mm, as 20,0,95", "yes or no": "y or n", "word": "a word"}
    return words.get(question.kind, f"a number of {question.kind}")


def accepted_reading(question: Question, typed: str) -> Any:
    """A reading that is one of its kind and within its bounds. Raises InputError."""
    try:
        value = reading_typed(question, typed)
    except (ValueError, KeyError):
        raise InputError(Problem("", f"It must be {wanted(question)}")) from None
    try:
        Readings.model_validate({question.key: value})
    except ValidationError as error:
        for detail in error.errors():
            if detail["loc"][:1] == (question.key,) and detail["type"] != "missing":
                raise InputError(Problem("", detail["msg"])) from None
    return int(value) if isinstance(value, float) and value.is_integer() else value


# What is said about it


def askew(begun: Beginning) -> list[str]:
    """A sentence for each axle whose weight would stand far beside its middle."""
    found = []
    for lump in begun.lumps:
        name = str(lump.entries["name"])
        if name.endswith("axle lump") and abs(lump.entries["at_mm"][1]) > ASKEW:
            side = abs(lump.entries["at_mm"][1])
            found.append(
                f"the corners stand on one diagonal, as if the {name.removesuffix(' lump')}'s "
                f"weight were {side:.0f} mm beside its middle: level the blocks and weigh again"
            )
    return found


def typical_names(begun: Beginning) -> list[str]:
    """What nobody measured, in words; "front" or "rear" where it is only that one."""
    found = ["wheel mass"] if begun.setup.wheel_g.typical else []
    where: dict[str, list[str]] = {}
    for end, made in zip(("front", "rear"), begun.setup.ends, strict=True):
        tyre = {f"tyre {k}": one for k, one in made.tyre.items()}
        for key, one in {"axle mass": made.axle_g, **tyre, **made.in_file}.items():
            if one.typical:
                where.setdefault(key.replace("_", " "), []).append(end)
    single = ("anti dive", "anti squat")
    for key, ends in where.items():
        found.append(key if len(ends) == 2 or key in single else f"{ends[0]} {key}")
    return found


def begin_answer(begun: Beginning, loaded: Loaded, path: Path, kept: Path) -> dict[str, Any]:
    """Mass, CG and tips with their 95 % ranges, and what to measure next; in tuner's units."""
    found, spans = ranges(loaded.truck, conditions(loaded.truck, [radians(h) for h in _HEADINGS]))
    advice = [a for a in next_measurements(begun, loaded.truck, spans) if a.gain > LEAST_GAIN]
    sums = begun.sums
    return {
        "truck": begun.readings.name,
        "file": str(path),
        "readings_file": str(kept),
        "mass_g": sums.mass * 1e3,
        "mass_pm_g": SURE_95 * float(sums.sd[0]) * 1e3,
        "cg_mm": [float(v) * 1e3 for v in sums.cg],
        "cg_pm_mm": [SURE_95 * float(v) * 1e3 for v in sums.sd[1:]],
        "typical": typical_names(begun),
        "headings": [
            {
                "heading_deg": h,
                "compliant_deg": degrees(found.free[i]),
                "compliant_range_deg": [degrees(v) for v in spans[i].tip],
                "slides_first": bool(found.slides[i]),
            }
            for i, h in enumerate(_HEADINGS)
        ],
        "next": [
            {
                "do": a.words,
                "readings": a.keys,
                "minutes": a.minutes,
                "narrows_pm_deg": degrees(a.gain),
                "narrows_deg_per_minute": degrees(a.per_minute),
            }
            for a in advice
        ],
    }
