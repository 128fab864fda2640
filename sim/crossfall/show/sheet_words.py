"""The set-up sheet in words: the same text, in the same places, for HTML and PDF.

Places are in mm from the upper left corner of an A4 page.
"""

from __future__ import annotations

import shlex
from dataclasses import dataclass

import numpy as np

from crossfall.compare import HeadingAnswer
from crossfall.show.sheet_changes import Difference, Differences
from crossfall.show.sheet_facts import BOARD, Build, Facts
from crossfall.show.sheet_text import (
    PAD,
    TIGHT,
    Column,
    Table,
    degrees,
    fitted,
    gain,
    money,
    plain,
    signed,
    tip,
    wrapped,
)
from crossfall.show.style import BODY, SMALL, text_size
from crossfall.truck.model import GRAVITY
from crossfall.truck.weight import COVERAGE, Influence

CASES = {
    0: "climb",
    45: "climb, left side low",
    90: "left side down",
    135: "descent, left side low",
    180: "descent",
    225: "descent, right side low",
    270: "right side down",
    315: "climb, right side low",
}
OUTCOMES = {"tips": "tips", "slides": "slides", "too close to call": "toss-up"}
MOST_ROWS = 11  # what the list of changes has room for
NAME_SIZE, NAME_WIDTH = 20.0, 57.0  # pt, the truck's name if it is short enough; and mm for it

BLANK = "date ______________   by ______________"
PEOPLE = "For scale models only. No basis for a vehicle that carries people."
CAUTIONS = (
    (
        "Packs",
        "Strap the pack in before you tip the truck, and take it out before you work on it. A "
        "pack that is swollen, dented or fell hard is waste: do not charge it. Charge in sight, "
        "on something that cannot burn.",
    ),
    (
        "Weights",
        "Fix added weights so that nothing can fly off a turning wheel, and look at them after "
        "every run. Lead: gloves on, hands washed. Heavier wheels load servo, axles and drive.",
    ),
    (
        "Falling trucks",
        "A truck that tips will fall. Something soft below, a slack line or a hand behind it, "
        "fingers and faces out of the way, nobody under the board. Motor unplugged.",
    ),
)


@dataclass(frozen=True)
class Figure:
    """One of the large numbers at the head."""

    label: str
    value: str
    under: str


@dataclass(frozen=True)
class Words:
    """All text of the sheet but that within the drawings."""

    name: str
    name_size: float
    under: tuple[str, str]
    figures: tuple[Figure, ...]
    weights: Table
    tips: Table
    changes: Table
    board: Table
    cautions: tuple[tuple[str, tuple[str, ...]], ...]
    people: str

    @property
    def tables(self) -> tuple[Table, ...]:
        return self.weights, self.tips, self.changes, self.board


def words(facts: Facts) -> Words:
    """The sheet's text."""
    name = facts.now.truck.name
    size = min(NAME_SIZE, max(8.0, NAME_SIZE * NAME_WIDTH / text_size(name, NAME_SIZE, "bold")[0]))
    under = "set-up sheet"
    if facts.before is not None:
        other = facts.before.truck.name
        under += ", before and after" if other == name else f", compared with {other}"
    return Words(
        name=fitted(name, NAME_WIDTH, size, "bold"),
        name_size=round(size, 1),
        under=(fitted(under, NAME_WIDTH, BODY), fitted(facts.date, NAME_WIDTH, BODY) or BLANK),
        figures=_figures(facts),
        weights=_weights(facts),
        tips=_tips(facts),
        changes=_changes(facts.changed) if facts.changed is not None else _pulls(facts.now),
        board=_board(facts),
        cautions=tuple((t, wrapped(text, 59.0)) for t, text in CAUTIONS),
        people=PEOPLE,
    )


# ---- head -----------------------------------------------------------------------------------


def _figures(facts: Facts) -> tuple[Figure, ...]:
    now, before = facts.now, facts.before
    first, w = now.tips.weakest, now.weight
    if before is None:
        sds = (1e3 * w.mass_sd, 1e3 * w.cg_sd[2], 100 * w.front_share_sd)
        units = ("± {:.0f} g", "± {:.1f} mm", "± {:.1f} %")
        under = [f"± {np.degrees(2 * first.spec_sd):.1f}°, by the file's tolerances"]
        under += [unit.format(COVERAGE * v) for unit, v in zip(units, sds, strict=True)]
    else:
        v, old = before.weight, before.tips.weakest
        under = [f"was {tip(old)}°, {CASES[_heading(old)]}", f"was {v.mass * 1e3:.0f} g"]
        under += [f"was {v.cg[2] * 1e3:.1f} mm", f"was {v.front_share * 100:.1f} %"]
    values = (
        (f"goes over first: {CASES[_heading(first)]}", f"{tip(first)}°"),
        ("mass", f"{w.mass * 1e3:.0f} g"),
        ("CG above ground", f"{w.cg[2] * 1e3:.1f} mm"),
        ("on the front axle", f"{w.front_share * 100:.1f} %"),
    )
    return tuple(Figure(a, b, c) for (a, b), c in zip(values, under, strict=True))


def _heading(answer: HeadingAnswer) -> int:
    return round(float(np.degrees(answer.heading))) % 360


# ---- weights --------------------------------------------------------------------------------


def weight_lines(build: Build) -> list[tuple[str, float, float, int]]:
    """(what, value, standard uncertainty, decimals) in g, mm, % and minutes; nan: not known."""
    w, e, nan = build.weight, build.extras, float("nan")
    gram = 1e3 / GRAVITY
    return [
        ("mass, g", w.mass * 1e3, w.mass_sd * 1e3, 0),
        ("front axle, g", w.axle_loads[0] * gram, w.axle_loads_sd[0] * gram, 0),
        ("rear axle, g", w.axle_loads[1] * gram, w.axle_loads_sd[1] * gram, 0),
        ("front share, %", w.front_share * 100, w.front_share_sd * 100, 1),
        ("CG above ground, mm", w.cg[2] * 1e3, w.cg_sd[2] * 1e3, 1),
        ("CG ahead of middle, mm", w.cg[0] * 1e3, w.cg_sd[0] * 1e3, 1),
        ("CG left of middle, mm", w.cg[1] * 1e3, w.cg_sd[1] * 1e3, 1),
        ("sprung, g", w.sprung * 1e3, nan, 0),
        ("unsprung, g", float(sum(w.unsprung)) * 1e3, nan, 0),
        ("width over tyres, mm", e.width * 1e3, nan, 0),
        ("turning circle, mm", e.turning_circle * 1e3, nan, 0),
        ("run time, min", e.run_time / 60.0, nan, 0),
    ]


def _weights(facts: Facts) -> Table:
    now = weight_lines(facts.now)
    old = weight_lines(facts.before) if facts.before is not None else None
    rows: list[tuple[str, ...]] = []
    for i, (what, value, sd, decimals) in enumerate(now):
        if not np.isfinite(value):
            continue
        sure = f"± {plain(COVERAGE * sd, decimals)}" if np.isfinite(sd) else ""
        if old is None:
            rows.append((what, plain(value, decimals), sure))
        else:
            was = old[i][1]
            known = plain(was, decimals) if np.isfinite(was) else "–"
            change = gain(value, was, decimals)
            rows.append((what, known, plain(value, decimals), sure, change))
    heads = [Column("", 41.0, "left"), Column("", 22.0, bold=True), Column("about 95 %", 18.0)]
    if old is not None:
        heads = [
            Column("", 34.0, "left"),
            Column("before", 12.5),
            Column("now", 12.5, bold=True),
            Column("", 10.0, "left"),
            Column("change", 12.0),
        ]
    return Table("weights", "Weights", (119.0, 101.0), tuple(heads), tuple(rows), row=3.85)


# ---- tips -----------------------------------------------------------------------------------


def _tips(facts: Facts) -> Table:
    rows = []
    old = facts.before.tips.answers if facts.before is not None else None
    for i, a in enumerate(facts.now.tips.answers):
        way = f"{_heading(a)}\u2002{CASES[_heading(a)]}"
        slides = f"{np.degrees(a.slide[0]):.0f} – {np.degrees(a.slide[2]):.0f}"
        lift = degrees(a.first_lift) if np.isfinite(a.first_lift) else "at the tip"
        rest = (lift, slides, OUTCOMES[a.outcome])
        if old is None:
            sure = f"± {np.degrees(2 * a.spec_sd):.1f}"
            rows.append((way, degrees(a.rigid), tip(a), sure, *rest))
        else:
            more = gain(np.degrees(a.compliant), np.degrees(old[i].compliant), 1)
            rows.append((way, tip(old[i]), tip(a), more, *rest))
    heads = (Column("before", 21.0), Column("now", 23.0, bold=True), Column("gain", 12.0))
    if old is None:
        heads = (
            Column("rigid", 16.0),
            Column("tips at", 24.0, bold=True),
            Column("about 95 %", 16.0),
        )
    ends = (Column("first lift", 17.0), Column("lets go", 17.0), Column("first it", 16.0))
    columns = (Column("heading", 38.0, "left"), *heads, *ends)
    notes = [
        "Two numbers: the tip lies between them, however the tyres share their grip. "
        + ("The gain is the one with the least friction. " if old is not None else "")
        + f"Lets go: sliding, at the lowest and the highest grip on {facts.now.tips.surface}. "
        "First lift: the first tyre leaves the ground."
    ]
    return Table(
        "tips",
        "Goes over at, degrees of slope, wheels held",
        (10.0, 157.0),
        columns,
        tuple(rows),
        wrapped(notes[0], 144.0),
    )


# ---- changes, or what holds the CG up -------------------------------------------------------


def _changes(changed: Differences) -> Table:
    shown, rest = selected(changed)
    currency = changed.currency or "price"
    columns = (
        Column("what", 28.0, "left"),
        Column("how", 46.0, "left"),
        Column("g", 10.5),
        Column(currency, 13.0),
    )
    rows = [
        (
            d.what,
            d.how,
            signed(d.mass * 1e3, 0) if round(abs(d.mass), 7) else "",
            money(d.price) if abs(d.price) >= 0.005 and changed.price is not None else "",
        )
        for d in shown
    ]
    if rest:
        mass, price = sum(d.mass for d in rest) * 1e3, sum(d.price for d in rest)
        cost = money(price) if abs(price) >= 0.005 and changed.price is not None else ""
        rows.append((f"{len(rest)} more", "all of them: --json", signed(mass, 0), cost))
    if not rows:
        rows.append(("nothing", "the two files say the same", "", ""))
    total = money(changed.price) if changed.price is not None else "–"
    rows.append(("in all", "", signed(changed.mass * 1e3, 0), total))
    note = "No sum of money: the two files count in different money."
    if changed.put_on is not None and changed.taken_off is not None:
        note = f"Parts put on {money(changed.put_on)[1:]}, taken off {money(changed.taken_off)[1:]}"
        note += f" {changed.currency}, by the two files; work not counted."
    title = "What was changed, and what it cost"
    cut = tuple(_cut(row, columns) for row in rows)
    return Table("changes", title, (10.0, 207.5), columns, cut, (note,), TIGHT, last_is_sum=True)


def selected(changed: Differences) -> tuple[list[Difference], list[Difference]]:
    """What is listed one by one, and the rest: parts by their grams, and some room for sizes."""
    sizes, parts = list(changed.dimensions), list(changed.parts)
    if len(sizes) + len(parts) <= MOST_ROWS:
        return parts + sizes, []
    room = MOST_ROWS - 1
    kept = min(len(sizes), max(room // 2, room - len(parts)))
    return parts[: room - kept] + sizes[:kept], parts[room - kept :] + sizes[kept:]


def _pulls(build: Build) -> Table:
    """The parts that hold the CG up, or down, the most."""
    columns = (
        Column("part", 48.0, "left"),
        Column("g", 14.0),
        Column("height, mm", 18.0),
        Column("pull, mm", 17.0, bold=True),
    )
    rows = [_cut(_pull(p), columns) for p in build.weight.influences[:MOST_ROWS]]
    note = "Pull: by how much the part holds the CG up (+) or down (−)."
    title = "What holds the CG up, and what holds it down"
    return Table("changes", title, (10.0, 207.5), columns, tuple(rows), (note,), TIGHT)


def _pull(p: Influence) -> tuple[str, ...]:
    return p.name, f"{p.mass * 1e3:.0f}", f"{p.height * 1e3:.0f}", signed(p.pull * 1e3, 1)


def _cut(row: tuple[str, ...], columns: tuple[Column, ...]) -> tuple[str, ...]:
    return tuple(
        fitted(text, column.width - PAD, BODY, "bold" if column.bold else "normal")
        for text, column in zip(row, columns, strict=True)
    )


# ---- the tilt-board card --------------------------------------------------------------------


def _board(facts: Facts) -> Table:
    p = facts.board
    answers = {_heading(a): a for a in facts.now.tips.answers}
    names = ("left down", "right down", "nose up", "nose down")
    rows = []
    for i, name in enumerate(names):
        way = round(float(np.degrees(BOARD[i])))
        low, high = p.angle[i] - 2 * p.u[i], p.angle[i] + 2 * p.u[i]
        sure = f"{degrees(low)} – {degrees(high)}"
        rows.append((f"{way}\u2002{name}", tip(answers[way]), sure, "", "", ""))
    columns = (
        Column("heading", 26.0, "left"),
        Column("predicted", 20.0, bold=True),
        Column("about 95 %", 18.0),
        Column("1st", 8.5, write=True),
        Column("2nd", 8.5, write=True),
        Column("3rd", 8.5, write=True),
    )
    slides = np.degrees(facts.board_slide[:, 0])
    first = bool(np.any(facts.board_slide[:, 0] < p.angle + 2 * p.u))
    rail = (
        f"It may slide first (from {slides.min():.0f}° on {facts.board_surface}): a thin strip "
        "below the downhill tyres holds it. "
        if first
        else ""
    )
    note = (
        "Board level, gauge zeroed, wheels held, springs free. Raise slowly; read when the last "
        f"uphill tyre leaves. {rail}"
    )
    notes = (*wrapped(note, 88.5), fitted(board_command(facts.now), 88.5, SMALL))
    title = "Tilt-board card: predicted and measured, degrees"
    return Table("board", title, (110.5, 207.5), columns, tuple(rows), notes, row=7.2)


def board_command(build: Build) -> str:
    """What to type to keep a measured angle."""
    from crossfall.truck.demos import find_demo

    path = build.loaded.path
    name = path.stem if find_demo(path.stem) == path else path.name
    return f"crossfall board {shlex.quote(name)} --heading 90 --angle …"
