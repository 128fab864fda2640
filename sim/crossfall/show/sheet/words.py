"""The set-up sheet in words: the same text, in the same places, for HTML and PDF.

Places are in mm from the upper left corner of an A4 page.
"""

from __future__ import annotations

import shlex
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from crossfall.answers.answer import TipAnswer
from crossfall.answers.figures import as_figures
from crossfall.show.sheet.changes import Difference, Differences
from crossfall.show.sheet.facts import BOARD, Bought, Build, Facts
from crossfall.show.sheet.text import (
    PAD,
    TIGHT,
    Column,
    TextTable,
    degree_text,
    gain,
    money,
    range_text,
    shortened,
    signed,
    tip_gain,
    tip_text,
    wrapped,
)
from crossfall.show.style import BODY, HEADING, SMALL, text_size
from crossfall.truck.model import GRAVITY
from crossfall.truck.weight import COVERAGE, PartInfluence

_CASES = {
    0: "climb",
    45: "climb, left side low",
    90: "left side down",
    135: "descent, left side low",
    180: "descent",
    225: "descent, right side low",
    270: "right side down",
    315: "climb, right side low",
}
_OUTCOMES = {"tips": "tips", "slides": "slides", "too close to call": "toss-up"}
_STEPS = ("tyres squash", "give along the ground", "body rises", "leans and pitches")
CHANGES = "What was changed, and what it cost"
LOWER = 209.0  # mm, top of the tables below
MOST_ROWS = 10  # what the list of changes has room for
NAME_SIZE, NAME_WIDTH = 20.0, 57.0  # pt, the truck's name if it is short enough; and mm for it

BLANK = "date ______________   by ______________"
PEOPLE = "For scale models only. No basis for a vehicle that carries people."
_CAUTIONS = (
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
class _Figure:
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
    figures: tuple[_Figure, ...]
    weights: TextTable
    tips: TextTable
    changes: TextTable
    board: TextTable
    cautions: tuple[tuple[str, tuple[str, ...]], ...]
    people: str

    @property
    def tables(self) -> tuple[TextTable, ...]:
        return self.weights, self.tips, self.changes, self.board


def sheet_words(facts: Facts) -> Words:
    """The sheet's text."""
    name = facts.now.truck.name
    size = min(NAME_SIZE, max(8.0, NAME_SIZE * NAME_WIDTH / text_size(name, NAME_SIZE, "bold")[0]))
    under = "set-up sheet"
    if facts.before is not None:
        other = facts.before.truck.name
        under += ", before and after" if other == name else f", compared with {other}"
    return Words(
        name=shortened(name, NAME_WIDTH, size, "bold"),
        name_size=round(size, 1),
        under=(
            shortened(under, NAME_WIDTH, BODY),
            shortened(facts.date, NAME_WIDTH, BODY) or BLANK,
        ),
        figures=_figures(facts),
        weights=_weights(facts),
        tips=_tips(facts),
        changes=_what_was_done(facts),
        board=_board(facts),
        cautions=tuple((t, wrapped(text, 59.0)) for t, text in _CAUTIONS),
        people=PEOPLE,
    )


# ---- head -----------------------------------------------------------------------------------


def _figures(facts: Facts) -> tuple[_Figure, ...]:
    now, before = facts.now, facts.before
    first, w = now.weakest, now.weight
    if before is None:
        sds = (
            COVERAGE * 1e3 * w.mass_sd,
            COVERAGE * 1e3 * w.cg_sd[2],
            COVERAGE * 100 * w.front_share_sd,
        )
        units = ("± {:.0f} g", "± {:.1f} mm", "± {:.1f} %")
        under = [f"{range_text(first.range.tip)}, 95 %"]
        under += [unit.format(sd) for unit, sd in zip(units, sds, strict=True)]
    else:
        v, old = before.weight, before.weakest
        under = [f"was {tip_text(old)}°, heading {_heading(old)}", f"was {v.mass * 1e3:.0f} g"]
        under += [f"was {v.cg[2] * 1e3:.1f} mm", f"was {v.front_share * 100:.1f} %"]
    if first.slides_first:
        slide = f"{np.degrees(first.slide[1]):.0f}°"
        under[0] = f"against a rail; slides first, at {slide}"
        if before is not None:
            under[0] = f"was {tip_text(old)}°, at {_heading(old)}; slides at {slide}"
    values = (
        (f"weakest: heading {_heading(first)}, {_short(first)}", f"{tip_text(first)}°"),
        ("mass", f"{w.mass * 1e3:.0f} g"),
        ("CG above ground", f"{w.cg[2] * 1e3:.1f} mm"),
        ("on the front axle", f"{w.front_share * 100:.1f} %"),
    )
    return tuple(_Figure(a, b, c) for (a, b), c in zip(values, under, strict=True))


def _heading(answer: TipAnswer) -> int:
    return round(float(np.degrees(answer.conditions.heading))) % 360


def _short(answer: TipAnswer) -> str:
    """Which side of the truck is low, on any heading."""
    quarters = ("rear low", "left low", "nose low", "right low")
    return quarters[round(_heading(answer) / 90) % 4]


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


def _weights(facts: Facts) -> TextTable:
    now = weight_lines(facts.now)
    old = weight_lines(facts.before) if facts.before is not None else None
    rows: list[tuple[str, ...]] = []
    for i, (what, value, sd, decimals) in enumerate(now):
        if not np.isfinite(value):
            continue
        sure = f"± {as_figures(COVERAGE * sd, decimals)}" if np.isfinite(sd) else ""
        if old is None:
            rows.append((what, as_figures(value, decimals), sure))
        else:
            was = old[i][1]
            known = as_figures(was, decimals) if np.isfinite(was) else "–"
            change = gain(value, was, decimals)
            rows.append((what, known, as_figures(value, decimals), sure, change))
    heads = [Column("", 41.0, "left"), Column("", 22.0, bold=True), Column("95 %", 18.0)]
    if old is not None:
        heads = [
            Column("", 34.0, "left"),
            Column("before", 12.5),
            Column("now", 12.5, bold=True),
            Column("", 10.0, "left"),
            Column("change", 12.0),
        ]
    return TextTable("weights", "Weights", (119.0, 101.0), tuple(heads), tuple(rows), row=3.85)


# ---- tips -----------------------------------------------------------------------------------


def _tips(facts: Facts) -> TextTable:
    rows = []
    old = facts.before.tips.answers if facts.before is not None else None
    for i, a in enumerate(facts.now.tips.answers):
        slides = f"{np.degrees(a.slide[0]):.0f} – {np.degrees(a.slide[2]):.0f}"
        lift = degree_text(a.first_lift) if np.isfinite(a.first_lift) else "at the tip"
        rest: tuple[str, ...] = (range_text(a.range.tip), lift, slides, _OUTCOMES[a.outcome])
        if a.conditions.rail:
            rest = (*rest[:2], "held", "tips")
        way = f"{_heading(a)}\u2002{_CASES.get(_heading(a), '')}"
        if i == len(facts.now.tips.answers) - 1:
            way = f"{_heading(a)}\u2002weakest of all"
            if old is not None and _heading(old[i]) != _heading(a):
                way += f" (was {_heading(old[i])})"
        if old is None:
            rows.append((way, degree_text(a.rigid), tip_text(a), *rest))
        else:
            rows.append((way, tip_text(old[i]), tip_text(a), tip_gain(a, old[i]), *rest))
    heads: tuple[Column, ...] = (
        Column("before", 14.5),
        Column("now", 14.5, bold=True),
        Column("gain", 11.0),
    )
    if old is None:
        heads = (Column("rigid", 17.0), Column("tips at", 20.0, bold=True))
    ends = (
        Column("95 %", 21.0),
        Column("first lift", 15.5),
        Column("lets go", 15.5),
        Column("first it", 14.0),
    )
    columns = (Column("heading", 39.0, "left"), *heads, *ends)
    first = facts.now.weakest.conditions
    how = "against a rail" if first.rail else "all wheels held"
    where = f"on {first.grip.surface}, grip {first.grip.likely:g}, {how}"
    title = f"Goes over at, degrees of slope; {where}"
    notes = (
        *wrapped(_tips_note(facts), 144.0)[:2],
        shortened(_lost(facts.now.weakest), 144.0, SMALL),
    )
    return TextTable(
        "tips",
        shortened(title, 144.0, HEADING, "bold"),
        (10.0, 157.0),
        columns,
        tuple(rows),
        notes,
        3.5,
    )


def _tips_note(facts: Facts) -> str:
    """What the columns mean, as far as they need it."""
    shown = [*facts.now.tips.answers, *(facts.before.tips.answers if facts.before else ())]
    said = ["95 %: by all tolerances and the grip."]
    if any(a.slides_first for a in shown):
        said.append("[ ]: slides first, this is against a rail")
        said[-1] += ", no gain where only one does." if facts.before is not None else "."
    if not facts.now.weakest.conditions.rail:
        said.append("Lets go: slides, at lowest and highest grip.")
    said.append("First lift: the first tyre leaves.")
    return " ".join(said)


def _lost(answer: TipAnswer) -> str:
    """The angle budget of one heading in a line."""
    said = [f"rigid {degree_text(answer.budget.rigid)}"]
    for (_, gained), name in zip(answer.budget.steps, _STEPS, strict=False):
        said.append(f"{name} {signed(float(np.degrees(gained)), 1)}")
    return f"Weakest: {', '.join(said)}, left {degree_text(answer.budget.compliant)}."


# ---- changes, or what holds the CG up -------------------------------------------------------


def _what_was_done(facts: Facts) -> TextTable:
    if facts.changed is None:
        return _pulls(facts.now)
    if facts.bought:
        return _bought(facts.bought, facts.currency or facts.changed.currency)
    return _changes(facts.changed)


def _bought(bought: Sequence[Bought], currency: str) -> TextTable:
    """Changes out of a change file: their prices are those that `plan` counts."""
    columns = (Column("what", 74.0, "left"), Column("g", 10.5), Column(currency or "price", 13.0))
    shown, rest = bought, bought[:0]
    if len(bought) > MOST_ROWS:
        shown, rest = bought[: MOST_ROWS - 1], bought[MOST_ROWS - 1 :]
    rows = [_bought_row((f"{b.many} × " if b.many > 1 else "") + b.label, [b]) for b in shown]
    if rest:
        rows.append(_bought_row(f"{len(rest)} more", rest))
    mass, price = signed(sum(b.mass for b in bought) * 1e3, 0), sum(b.price for b in bought)
    rows.append(("in all", mass, money(price)[1:]))
    cut = tuple(_cut(row, columns) for row in rows)
    note = "Counted: the changes' prices in the change file, as the plan counts them; no work."
    notes = (shortened(note, 97.5, SMALL),)
    return TextTable(
        "changes", CHANGES, (10.0, LOWER), columns, cut, notes, TIGHT, last_is_sum=True
    )


def _bought_row(what: str, bought: Sequence[Bought]) -> tuple[str, ...]:
    mass, price = sum(b.mass for b in bought) * 1e3, sum(b.price for b in bought)
    return what, signed(mass, 0) if round(abs(mass), 4) else "", money(price)[1:] if price else ""


def _changes(changed: Differences) -> TextTable:
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
        note = (
            f"Counted: prices of parts in the two files, put on {money(changed.put_on)[1:]}, taken"
        )
        note += f" off {money(changed.taken_off)[1:]} {changed.currency}. What is no part (springs,"
        note += " settings, work) has no price there."
    cut = tuple(_cut(row, columns) for row in rows)
    notes = wrapped(note, 97.5)
    return TextTable(
        "changes", CHANGES, (10.0, LOWER), columns, cut, notes, TIGHT, last_is_sum=True
    )


def selected(changed: Differences) -> tuple[list[Difference], list[Difference]]:
    """What is listed one by one, and the rest: parts by their grams, and some room for sizes."""
    sizes, parts = list(changed.dimensions), list(changed.parts)
    if len(sizes) + len(parts) <= MOST_ROWS:
        return parts + sizes, []
    rows_left = MOST_ROWS - 1
    kept = min(len(sizes), max(rows_left // 2, rows_left - len(parts)))
    return parts[: rows_left - kept] + sizes[:kept], parts[rows_left - kept :] + sizes[kept:]


def _pulls(build: Build) -> TextTable:
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
    return TextTable("changes", title, (10.0, LOWER), columns, tuple(rows), (note,), TIGHT)


def _pull(p: PartInfluence) -> tuple[str, ...]:
    return p.name, f"{p.mass * 1e3:.0f}", f"{p.height * 1e3:.0f}", signed(p.pull * 1e3, 1)


def _cut(row: tuple[str, ...], columns: tuple[Column, ...]) -> tuple[str, ...]:
    return tuple(
        shortened(text, column.width - PAD, BODY, "bold" if column.bold else "normal")
        for text, column in zip(row, columns, strict=True)
    )


# ---- the tilt-board card --------------------------------------------------------------------


def _board(facts: Facts) -> TextTable:
    names = ("left down", "right down", "nose up", "nose down")
    rows = [
        (
            f"{round(float(np.degrees(way)))}\u2002{name}",
            tip_text(a),
            range_text(a.range.tip),
            "",
            "",
            "",
        )
        for way, name, a in zip(BOARD, names, facts.board.answers, strict=True)
    ]
    columns = (
        Column("heading", 26.0, "left"),
        Column("predicted", 18.0, bold=True),
        Column("95 %", 20.0),
        Column("1st", 8.5, write=True),
        Column("2nd", 8.5, write=True),
        Column("3rd", 8.5, write=True),
    )
    grip = facts.board.answers[0].conditions.grip
    least = min(float(np.degrees(a.slide[0])) for a in facts.board.answers)
    first = any(a.slide[0] < a.range.tip[1] for a in facts.board.answers)
    rail = (
        f"It may slide first (from {least:.0f}°): a thin strip below the downhill tyres holds it, "
        "and [ ] is with the strip."
        if first
        else ""
    )
    note = (
        "Board level, gauge zeroed, wheels held, springs free. Raise slowly; read when the last "
        f"uphill tyre leaves. {rail}"
    )
    notes = (*wrapped(note, 88.5), shortened(board_command(facts.now), 88.5, SMALL))
    title = f"Tilt-board card, degrees; on {grip.surface}, grip {grip.likely:g}"
    title = shortened(title, 88.5, HEADING, "bold")
    return TextTable("board", title, (110.5, LOWER), columns, tuple(rows), notes, row=7.2)


def board_command(build: Build) -> str:
    """What to type to keep a measured angle."""
    from crossfall.truck.demos import find_demo

    path = build.loaded.path
    name = path.stem if find_demo(path.stem) == path else path.name
    return f"crossfall board {shlex.quote(name)} --heading 90 --angle …"
