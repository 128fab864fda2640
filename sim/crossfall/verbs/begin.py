"""`crossfall begin NAME`: a first truck file from what scale, ruler and block say."""

from __future__ import annotations

import hashlib
import sys
from collections.abc import Callable, Mapping
from math import degrees, radians
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from crossfall.measurement.readings import FURTHER, QUESTIONS, Question
from crossfall.verbs.common import console, emit, json_option, warn

if TYPE_CHECKING:
    from crossfall.answers.ranges import Range
    from crossfall.answers.tips import TipAngles
    from crossfall.measurement.begin import Beginning
    from crossfall.measurement.next_reading import Advice
    from crossfall.truck.build import Loaded

_HEADINGS = (0.0, 90.0, 180.0, 270.0)
_SHOWN = 4  # further readings
LEAST_GAIN = radians(0.02)  # of a further reading worth naming
ASKEW = 10.0  # mm, an axle's mass centre beside its middle that is worth a word
SEAL = "# Unchanged since it was made: "
_CAUTIONS = (
    "Lithium packs: take the pack out, or insulate and secure it, before you lift, raise or turn "
    "the truck.",
    "A truck on a block can roll off: chock the lower wheels, keep the block in the bench's middle "
    "and fingers away.",
)


def _options(command: Callable[..., Any]) -> Callable[..., Any]:
    """An option for every reading."""
    kinds: dict[str, Any] = {"mm": float, "g": float, "yes or no": bool}
    for q in reversed((*QUESTIONS, *FURTHER)):
        kind = kinds.get(q.kind, str)
        text = q.words + (f": {q.hint}" if q.hint else "")
        metavar = {"place": "X,Y,Z"}.get(q.kind)
        name = "--" + q.key.replace("_", "-")
        command = click.option(name, q.key, type=kind, metavar=metavar, help=text)(command)
    return command


@click.command()
@click.argument("name", metavar="NAME")
@click.option(
    "--readings",
    "source",
    type=click.Path(path_type=Path, dir_okay=False),
    metavar="FILE",
    help="Take readings from this file; options beside it count.",
)
@click.option(
    "--again",
    is_flag=True,
    help="Make NAME.toml anew from NAME.readings.toml and the options beside it.",
)
@_options
@json_option
def command(name: str, source: Path | None, again: bool, as_json: bool, **options: Any) -> int:
    """A first truck file from a dozen readings of scale, ruler and block.

    Asks for them on a terminal; options or a file answer beforehand. Writes NAME.toml, a few lumps
    that give every reading back, and NAME.readings.toml, and says which further reading would
    narrow the tip angle's range most.

    Take a lithium pack out, or insulate and secure it, before you lift, raise or turn the truck;
    chock the lower wheels of a truck on a block.
    """
    from crossfall.measurement.begin import begin
    from crossfall.measurement.readings import checked, missing, read_readings, written
    from crossfall.measurement.truck_text import truck_text
    from crossfall.truck.build import load_text
    from crossfall.truck.errors import InputError
    from crossfall.truck.files import write_atomically

    path, kept = _paths(name, again)
    given = {k: _tidy(_value(k, v)) for k, v in options.items() if v is not None}
    source = kept if again and source is None else source
    data = _file_values(source) | given if source is not None else dict(given)
    data.setdefault("name", path.stem)
    if missing(data) and sys.stdin.isatty() and not as_json:
        _ask(data)
    if found := missing(data):
        raise InputError(found)
    own = {k: v for k, v in data.items() if k == "name" or k not in given}
    readings = checked(data) if source is None else read_readings(source, {**own, **data})
    begun = begin(readings)
    text = truck_text(begun, path.stem)
    loaded = load_text(text, path)
    write_atomically(kept, _kept(kept, data) if again else written(readings))
    write_atomically(path, _sealed(text))
    _tell(begun, loaded, path, kept, as_json)
    return 0


def _paths(name: str, again: bool) -> tuple[Path, Path]:
    """The truck file and its readings file. Raises InputError where they may not be written."""
    from crossfall.truck.errors import InputError, Problem

    path = Path(name.removesuffix(".toml") + ".toml")
    bad = set('".[]') & set(path.stem)
    if not path.stem.strip() or not name.isprintable() or bad or len(path.stem) > 60:
        allowed = "up to 60 letters, no dots, quotes or brackets"
        raise InputError(Problem(repr(name)[:80], "is no name for a truck file", allowed))
    kept = path.with_name(f"{path.stem}.readings.toml")
    if not path.parent.is_dir():
        raise InputError(Problem(str(path.parent), "there is no such folder"))
    if again and not kept.exists():
        what = "there are no readings to begin again from"
        raise InputError(Problem(str(kept), what, "begin without --again"))
    for one in (path, kept):
        if one.exists() and not again:
            allowed = "choose another name, or --again to make it anew from its readings"
            raise InputError(Problem(str(one), "is there already", allowed))
    if again and path.exists() and not _is_sealed(path):
        what = "was changed by hand since it was made"
        raise InputError(Problem(str(path), what, "move it away, or go on editing it"))
    return path, kept


def _sealed(text: str) -> str:
    """With a last line by which a change by hand is seen."""
    return f"{text}\n{SEAL}{hashlib.sha256(text.encode()).hexdigest()[:16]}\n"


def _is_sealed(path: Path) -> bool:
    text, found, _ = path.read_text(encoding="utf-8", errors="replace").rpartition("\n" + SEAL)
    return bool(found) and _sealed(text) == path.read_text(encoding="utf-8", errors="replace")


def _file_values(path: Path) -> dict[str, Any]:
    from crossfall.truck.read import read_source

    return dict(read_source(path, str(path)).data)


def _kept(path: Path, data: Mapping[str, Any]) -> str:
    """The readings file with what was added, its comments kept."""
    import tomlkit

    document = tomlkit.parse(path.read_text(encoding="utf-8"))
    for key, value in data.items():
        if document.get(key) != value:
            document[key] = value
    return tomlkit.dumps(document)


def _value(key: str, value: Any) -> Any:
    from crossfall.truck.errors import InputError, Problem

    question = next(q for q in (*QUESTIONS, *FURTHER) if q.key == key)
    try:
        return _read(question, value)
    except ValueError:
        option = "--" + key.replace("_", "-")
        what = f"is {str(value)[:40]!r}"
        raise InputError(Problem(option, what, f"it must be {_wanted(question)}")) from None


def _read(question: Question, text: Any) -> Any:
    """A reading as typed. Raises ValueError."""
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


def _tidy(value: Any) -> Any:
    return int(value) if isinstance(value, float) and value.is_integer() else value


def _wanted(question: Question) -> str:
    words = {"place": "three numbers in mm, as 20,0,95", "yes or no": "y or n", "word": "a word"}
    return words.get(question.kind, f"a number of {question.kind}")


def _ask(data: dict[str, Any]) -> None:
    """Every question not answered yet, one by one; an empty line leaves a reading out."""
    for text in (*_CAUTIONS, "An empty line leaves out what may be left out."):
        click.echo(text, err=True)
    for q in QUESTIONS:
        if q.key in data or (q.after and data.get(q.after) is None):
            continue
        unit = f", {q.kind}" if q.kind in ("mm", "g") else ""
        hint = f" ({q.hint})" if q.hint else ""
        while q.key not in data:
            typed = click.prompt(f"{q.words}{unit}{hint}", default="", show_default=False, err=True)
            if not typed.strip():
                if not q.needed:
                    break
                click.echo("This one is needed.", err=True)
            elif (value := _accepted(q, typed)) is not None:
                data[q.key] = _tidy(value)


def _accepted(question: Question, typed: str) -> Any:
    """A reading that is one of its kind and within its bounds, or None after a word about it."""
    from pydantic import ValidationError

    from crossfall.measurement.readings import Readings

    try:
        value = _read(question, typed)
    except (ValueError, KeyError):
        click.echo(f"It must be {_wanted(question)}.", err=True)
        return None
    try:
        Readings.model_validate({question.key: value})
    except ValidationError as error:
        for detail in error.errors():
            if detail["loc"][:1] == (question.key,) and detail["type"] != "missing":
                click.echo(f"{detail['msg']}.", err=True)
                return None
    return value


def _tell(begun: Beginning, loaded: Loaded, path: Path, kept: Path, as_json: bool) -> None:
    from crossfall.answers.conditions import conditions
    from crossfall.answers.ranges import ranges
    from crossfall.measurement.next_reading import next_measurements

    found, spans = ranges(loaded.truck, conditions(loaded.truck, [radians(h) for h in _HEADINGS]))
    advice = [a for a in next_measurements(begun, loaded.truck, spans) if a.gain > LEAST_GAIN]
    for text in _askew(begun):
        warn(text)
    if as_json:
        emit("begin", _answer(begun, path, kept, found, spans, advice))
    else:
        _show(begun, path, kept, found, spans, advice)


def _askew(begun: Beginning) -> list[str]:
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


def _answer(
    begun: Beginning,
    path: Path,
    kept: Path,
    found: TipAngles,
    spans: tuple[Range, ...],
    advice: list[Advice],
) -> dict[str, Any]:
    """In tuner's units."""
    sums, sure = begun.sums, 1.96
    return {
        "truck": begun.readings.name,
        "file": str(path),
        "readings_file": str(kept),
        "mass_g": sums.mass * 1e3,
        "mass_pm_g": sure * float(sums.sd[0]) * 1e3,
        "cg_mm": [float(v) * 1e3 for v in sums.cg],
        "cg_pm_mm": [sure * float(v) * 1e3 for v in sums.sd[1:]],
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


def _show(
    begun: Beginning,
    path: Path,
    kept: Path,
    found: TipAngles,
    spans: tuple[Range, ...],
    advice: list[Advice],
) -> None:
    from rich.markup import escape
    from rich.table import Table

    from crossfall.answers.conditions import case_name

    out = console()
    record = _answer(begun, path, kept, found, spans, advice)
    x, y, z = record["cg_mm"]
    out.print(f"Wrote [bold]{escape(str(path))}[/bold] and {escape(str(kept))}.")
    off = record["cg_pm_mm"]
    out.print(
        f"{record['mass_g']:.0f} ± {record['mass_pm_g']:.0f} g; CG {x:+.1f} ± {off[0]:.1f} mm "
        f"ahead of mid-wheelbase, {y:+.1f} ± {off[1]:.1f} to the left, {z:.1f} ± {off[2]:.1f} up "
        "(95 %)."
    )
    table = Table(box=None, title="Tips at, degrees, 95 % range", title_justify="left")
    for name in ("heading", "", "tips", "from", "to"):
        table.add_column(name, justify="left" if not name else "right")
    for row in record["headings"]:
        low, high = row["compliant_range_deg"]
        angle = f"{row['compliant_deg']:.1f}"
        angle = f"\\[{angle}]" if row["slides_first"] else angle
        table.add_row(f"{row['heading_deg']:.0f}", case_name(row["heading_deg"]), angle,
                      f"{low:.1f}", f"{high:.1f}")  # fmt: skip
    out.print(table)
    if any(row["slides_first"] for row in record["headings"]):
        out.print(
            "\\[ ]: it slides first on most ground; the angle is what it does against a rail."
        )
    out.print(f"Typical, not measured: {', '.join(record['typical'])}.")
    if advice:
        out.print("What to measure next, by how much it narrows ± for its minutes:")
    for a in advice[:_SHOWN]:
        keys = " ".join("--" + k.replace("_", "-") + " .." for k in a.keys)
        gain = f"{degrees(a.gain):.2f}° in {a.minutes:g} min"
        out.print(f"  {gain}: {escape(a.words)}; begin {escape(path.stem)} --again {keys}")
