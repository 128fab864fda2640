"""The set-up sheet: one page, legible, and every number on it the computed one."""

from __future__ import annotations

import io
import re
import xml.etree.ElementTree as ET
from dataclasses import replace

import numpy as np
import pytest
from looks import clipped, least_size, overlaps, texts
from pypdf import PdfReader

from crossfall.answers.answer import answer
from crossfall.answers.conditions import conditions
from crossfall.answers.tips import tip_angles, weakest
from crossfall.show.sheet import write as sheet
from crossfall.show.sheet.changes import differences
from crossfall.show.sheet.facts import BOARD, WAYS, gather
from crossfall.show.sheet.facts import fitted_truck as with_changes
from crossfall.show.sheet.page import draw_sheet
from crossfall.show.sheet.text import gain, money, shortened, signed, wrapped
from crossfall.show.sheet.words import sheet_words
from crossfall.show.style import BODY, SMALL, text_size
from crossfall.statics.rigid import tip_angle
from crossfall.statics.sliding import slide_range
from crossfall.truck import edits
from crossfall.truck.build import build, load_truck
from crossfall.truck.clearance import clearance_angles
from crossfall.truck.massprops import unsprung, whole
from crossfall.truck.model import GRAVITY
from crossfall.truck.ride import level_axle_loads, tyre_loads
from crossfall.tuning.battery import run_time
from crossfall.tuning.changes import change_file_of, read_changes
from crossfall.tuning.effects import outside_width, turning_circle

MINUS = "−"


ROCK = 0.9  # bramble's first surface


def changed(loaded):
    """The truck with things taken off, added, moved and widened."""
    spec = loaded.spec
    for name in ("roof box", "fuel can", "spare wheel"):
        spec = edits.remove_part(spec, name)
    spec = edits.move_part(spec, "battery pack", [0, 0, -15])
    spec = edits.set_value(spec, "both.track_mm", 184)
    lead = {"name": "axle weight", "on": "front axle", "mass_g": 44, "at_mm": [12, 0, 0]}
    spec = edits.add_part(spec, {**lead, "price": 15.5})
    return replace(loaded, spec=spec, truck=build(spec, loaded.folder)[0])


@pytest.fixture(scope="module")
def facts():
    before = load_truck("bramble")
    return gather(changed(before), before, date="spring 1")


@pytest.fixture(scope="module")
def alone(facts):
    return replace(facts, before=None, changed=None, date="")


@pytest.fixture(scope="module", params=["compared", "alone"])
def shown(request, facts, alone):
    return facts if request.param == "compared" else alone


@pytest.fixture(scope="module")
def drawn(shown):
    return draw_sheet(shown)


@pytest.fixture(scope="module")
def pdf(facts):
    return sheet.pdf(facts)


@pytest.fixture(scope="module")
def html(facts):
    return sheet.html(facts)


def one(value):
    return f"{np.degrees(value):.1f}"


def number(text):
    return float(text.replace(MINUS, "-").strip("± []"))


def rows(table):
    return {row[0].split("\u2002")[0]: row for row in table.rows}


# ---- every number ---------------------------------------------------------------------------


def weights_by_hand(loaded, measured_on):
    truck = loaded.truck
    body, loads = whole(truck), level_axle_loads(truck)
    return {
        "mass, g": (1e3 * body.mass, 0),
        "front axle, g": (1e3 * loads[0] / GRAVITY, 0),
        "rear axle, g": (1e3 * loads[1] / GRAVITY, 0),
        "front share, %": (100 * loads[0] / sum(loads), 1),
        "CG above ground, mm": (1e3 * body.cg[2], 1),
        "CG ahead of middle, mm": (1e3 * body.cg[0], 1),
        "CG left of middle, mm": (1e3 * body.cg[1], 1),
        "sprung, g": (1e3 * truck.chassis.mass, 0),
        "unsprung, g": (1e3 * sum(unsprung(truck, i).mass for i in (0, 1)), 0),
        "width over tyres, mm": (1e3 * outside_width(truck), 0),
        "turning circle, mm": (1e3 * turning_circle(truck), 0),
        "run time, min": (run_time(truck, loaded.spec, measured_on).minutes, 0),
    }


def test_weights_before_and_now_are_the_trucks(facts):
    before = facts.before.loaded
    now = weights_by_hand(facts.now.loaded, before.spec.battery)
    was = weights_by_hand(before, None)
    table = rows(sheet_words(facts).weights)
    assert table.keys() == now.keys()
    for what, (value, decimals) in now.items():
        _, old, new, _, change = table[what]
        assert number(new) == round(value, decimals)
        assert number(old) == round(was[what][0], decimals)
        assert number(change) == pytest.approx(number(new) - number(old))


def test_weights_alone_carry_their_uncertainty(alone):
    table = rows(sheet_words(alone).weights)
    assert number(table["mass, g"][1]) == round(1e3 * whole(alone.now.truck).mass)
    assert number(table["mass, g"][2]) == round(1960 * alone.now.weight.mass_sd)
    assert number(table["CG above ground, mm"][2]) == round(1960 * alone.now.weight.cg_sd[2], 1)


def tip_text(found, i):
    return f"[{one(found.free[i])}]" if found.slides[i] else one(found.tip[i])


def test_tips_before_and_now_are_the_one_answer(facts):
    """On the eight ways; in brackets against a rail where it slides first; and no gain where only
    one of the two does."""
    now, was = (tip_angles(b.truck, WAYS, ROCK) for b in (facts.now, facts.before))
    slides = np.degrees(slide_range(facts.now.truck, WAYS, facts.now.truck.grips[0]))
    table = rows(sheet_words(facts).tips)
    assert any("[" in row[2] for row in table.values())
    gains = 0
    for i, heading in enumerate(np.degrees(WAYS).round().astype(int)):
        _, old, new, more, _, lift, lets_go, _ = table[str(heading)]
        assert (old, new) == (tip_text(was, i), tip_text(now, i))
        if now.slides[i] == was.slides[i]:
            assert number(more) == pytest.approx(number(new) - number(old))
            gains += 1
        else:
            assert more == ""
        first = now.first_lift[i]
        assert lift == (one(first) if np.isfinite(first) else "at the tip")
        assert lets_go == f"{slides[i, 0]:.0f} – {slides[i, 2]:.0f}"
    assert gains > 3


def test_ranges_are_those_of_the_answer(facts, alone):
    truck = facts.now.truck
    asked = conditions(truck, WAYS.tolist())
    found = answer(truck, asked, trial=False).answers
    for shown, column in ((facts, 4), (alone, 3)):
        told = [row[column] for row in sheet_words(shown).tips.rows[:8]]
        assert told == [f"{one(a.range.tip[0])} – {one(a.range.tip[1])}" for a in found]


def test_weakest_heading_is_searched_for_and_comes_last(facts):
    last = sheet_words(facts).tips.rows[-1]
    heading, angle = weakest([facts.now.truck, facts.before.truck], ROCK)
    now, was = np.degrees(heading).round().astype(int)
    assert last[0] == f"{now}\u2002weakest of all" + (f" (was {was})" if was != now else "")
    assert number(last[2]) == round(np.degrees(angle[0]), 1)
    assert number(last[1]) == round(np.degrees(angle[1]), 1)
    assert sheet_words(facts).figures[0].value == f"{last[2]}°"
    assert f"heading {now}" in sheet_words(facts).figures[0].label


def test_budget_of_the_weakest_heading_adds_up(facts):
    line = sheet_words(facts).tips.notes[-1]
    rigid, *steps, left = re.findall(r"[+−]?\d+\.\d", line)
    total = number(rigid) + sum(number(s) for s in steps)
    assert total == pytest.approx(number(left), abs=0.05 * 6)  # each rounded
    assert number(left) == number(sheet_words(facts).tips.rows[-1][2])


def test_surface_and_hold_are_named(facts, alone):
    assert sheet_words(facts).tips.title.endswith("on rock, grip 0.9, all wheels held")
    wet = gather(alone.now.loaded, surface="wet rock", hold="rail")
    told = sheet_words(wet).tips
    assert told.title.endswith("on wet rock, grip 0.6, against a rail")
    assert not any("[" in row[2] for row in told.rows)
    assert {row[-2] for row in told.rows} == {"held"}


def test_where_it_slides_first_the_head_says_so(alone):
    wet = gather(alone.now.loaded, surface="loose dirt")
    figure = sheet_words(wet).figures[0]
    assert figure.value == f"{sheet_words(wet).tips.rows[-1][2]}°"
    assert figure.under == "against a rail; slides first, at 27°"


def test_alone_the_rigid_answer_stands_beside(alone):
    rigid = tip_angle(alone.now.truck, WAYS)
    table = sheet_words(alone).tips.rows
    assert [row[1] for row in table[:8]] == [one(v) for v in rigid]
    found = tip_angles(alone.now.truck, WAYS, ROCK)
    assert [row[2] for row in table[:8]] == [tip_text(found, i) for i in range(8)]


def test_large_numbers_are_those_of_the_tables(facts):
    told = sheet_words(facts)
    _, mass, height, share = told.figures
    weights = rows(told.weights)
    for figure, what in (
        (mass, "mass, g"),
        (height, "CG above ground, mm"),
        (share, "front share, %"),
    ):
        assert figure.value.split()[0] == weights[what][2]
        assert figure.under.split()[1] == weights[what][1]


def test_board_card_is_the_answer_on_the_boards_own_surface(facts):
    truck = facts.now.truck
    found = answer(truck, conditions(truck, BOARD.tolist(), "tilt board"), trial=False).answers
    card = sheet_words(facts).board
    assert [row[0].split("\u2002")[0] for row in card.rows] == ["90", "270", "0", "180"]
    for row, a in zip(card.rows, found, strict=True):
        assert row[1] == (f"[{one(a.rail)}]" if a.slides_first else one(a.tip))
        assert row[2] == f"{one(a.range.tip[0])} – {one(a.range.tip[1])}"
        assert row[3:] == ("", "", "")
    assert sum(c.write for c in card.columns) == 3
    assert "on tilt board, grip 0.95" in card.title
    assert card.notes[-1] == "crossfall board bramble --heading 90 --angle …"


def test_card_warns_of_sliding_from_the_boards_own_grip(facts):
    grip = next(g for g in facts.now.truck.grips if g.surface == "tilt board")
    least = np.degrees(slide_range(facts.now.truck, BOARD, grip)).min()
    assert f"slide first (from {least:.0f}°)" in " ".join(sheet_words(facts).board.notes)


def test_changes_made_cost_what_the_plan_counts(alone):
    """By the change file, each with its own grams, to the last of both trucks."""
    loaded = alone.now.loaded
    catalogue = read_changes(change_file_of(loaded.path))
    chosen = {catalogue.position(n): m for n, m in (("light body", 1), ("brass sleeves rear", 2))}
    now, bought = with_changes(loaded, catalogue, chosen)
    shown = replace(alone, changed=differences(loaded, now), bought=bought, currency="EUR")
    table = sheet_words(shown).changes
    light, sleeves, total = table.rows
    assert light == ("Clear formed body instead of the hard one", f"{MINUS}380", "64")
    assert sleeves[0] == "2 × Brass sleeves on the rear axle tubes"
    assert sleeves[2] == "34"
    gained = whole(now.truck).mass - whole(loaded.truck).mass
    assert total == ("in all", signed(1e3 * gained, 0), "98")
    assert "as the plan counts them" in table.notes[0]


def test_changes_are_listed_with_grams_and_money(facts):
    table = rows(sheet_words(facts).changes)
    assert table["roof box"] == ("roof box", "taken off", f"{MINUS}68", f"{MINUS}12")
    assert table["fuel can"] == ("fuel can", "taken off", f"{MINUS}34", f"{MINUS}10")
    assert table["axle weight"] == ("axle weight", "added: front axle", "+44", "+15.50")
    assert table["battery pack"] == ("battery pack", "15 mm lower", "", "")
    assert table["track, both"] == ("track, both", "176 → 184 mm", "", "")
    gained = whole(facts.now.truck).mass - whole(facts.before.truck).mass
    assert table["in all"][2] == signed(1e3 * gained, 0)
    assert table["in all"][3] == signed(15.5 - 12 - 10 - 21, 2)
    said = " ".join(sheet_words(facts).changes.notes)
    assert "prices of parts in the two files, put on 15.50, taken off 43 EUR" in said
    assert "springs, settings, work" in said


def test_long_lists_are_summed_up_with_nothing_lost(facts):
    other = gather(load_truck("thistle"), load_truck("burdock"))
    table = sheet_words(other).changes
    more = table.rows[-2]
    shown = sum(number(row[2]) for row in table.rows[:-1] if row[2])
    assert int(more[0].split()[0]) == (
        len(other.changed.parts) + len(other.changed.dimensions) - len(table.rows) + 2
    )
    assert shown == pytest.approx(number(table.rows[-1][2]), abs=6)  # each rounded to a gram
    assert overlaps(draw_sheet(other)) == []


def test_numbers_in_the_drawings_are_the_trucks(facts, drawn, shown):
    said = [t for t, _ in texts(drawn)]
    truck = facts.now.truck
    body, angles = whole(truck), clearance_angles(truck)
    grams = 1e3 * tyre_loads(truck) / GRAVITY
    old = 1e3 * tyre_loads(facts.before.truck) / GRAVITY
    loads = [f"{g:.0f} g" for g in grams]
    if shown.before is not None:
        loads = [f"{a} (was {o:.0f})" for a, o in zip(loads, old, strict=True)]
    assert sorted(t for t in said if t in loads) == sorted(loads)
    assert f"CG {1e3 * body.cg[2]:.1f}" in said
    assert f"wheelbase {1e3 * truck.wheelbase:.1f}" in said
    assert f"{1e3 * (body.cg[0] - truck.rear.x):.1f}" in said
    assert f"breakover {np.degrees(angles.breakover):.0f}°" in said
    assert f"approach\n{np.degrees(angles.approach):.0f}°" in said
    assert f"tyres {1e3 * outside_width(truck):.0f}" in said


def test_drawing_is_to_the_scale_it_names(drawn, facts):
    said = " ".join(t for t, _ in texts(drawn))
    scale = float(re.search(r"drawn 1:([\d.]+), mm", said)[1])
    axes = drawn.axes[0]
    line = f"wheelbase {1e3 * facts.now.truck.wheelbase:.1f}"
    place = next(t for t in axes.texts if t.get_text() == line).get_position()
    spans = [
        np.ptp(row.get_xdata()) for row in axes.lines
        if len(row.get_xdata()) == 2 and np.allclose(row.get_ydata(), place[1])
    ]  # fmt: skip
    assert max(spans) == pytest.approx(1e3 * facts.now.truck.wheelbase / scale)


# ---- the page -------------------------------------------------------------------------------


def test_nothing_is_written_over_anything_nor_off_the_page(drawn):
    assert overlaps(drawn) == []
    assert clipped(drawn) == []
    assert least_size(drawn) >= SMALL


def test_every_cell_fits_its_column(shown):
    for table in sheet_words(shown).tables:
        for row in (*table.rows, tuple(c.head for c in table.columns)):
            for text, column in zip(row, table.columns, strict=True):
                head = text == column.head
                weight = "bold" if column.bold and not head else "normal"
                width, _ = text_size(text, SMALL if head else BODY, weight)
                assert width <= column.width, (table.title, text)


def test_pdf_is_one_a4_page_of_real_text(pdf, facts):
    reader = PdfReader(io.BytesIO(pdf))
    assert len(reader.pages) == 1
    page = reader.pages[0]
    size = np.array([page.mediabox.width, page.mediabox.height], float) / 72 * 25.4
    assert size == pytest.approx([210.0, 297.0], abs=0.05)
    said = page.extract_text()
    told = sheet_words(facts)
    for table in told.tables:
        for cell in (cell for row in table.rows for cell in row if cell):
            assert cell.replace("\u2002", " ") in said.replace("\u2002", " ")
    assert told.people in said
    assert "spring 1" in said


def test_html_stands_by_itself(html):
    assert "<script" not in html
    assert not re.search(r"""(src|href)=["'](?!#)""", html)
    assert "url(" not in re.sub(r"url\(#[\w-]+\)", "", html)
    assert "@import" not in html
    ids = re.findall(r'\bid="([^"]+)"', html)
    assert len(ids) == len(set(ids))
    for target in re.findall(r'(?:xlink:href="|url\()#([\w-]+)', html):
        assert target in ids
    assert "overflow: visible" in html
    assert "@page { size: A4" in html


def test_html_says_what_the_pdf_says(html, facts):
    body = html[html.index("<main") : html.index("</main>") + 7].replace("xlink:href", "href")
    tree = ET.fromstring(re.sub(r"<(br|hr|col)\b([^>/]*)>", r"<\1\2/>", body))
    for table in sheet_words(facts).tables:
        (section,) = [e for e in tree.iter("section") if e.get("id") == table.kind]
        found = [
            tuple("".join(cell.itertext()).strip() for cell in row)
            for row in section.iter("tr")
        ]  # fmt: skip
        heads = [tuple(c.head for c in table.columns)]
        assert found == heads + [tuple(row) for row in table.rows]
    said = "".join(tree.itertext())
    for text in ("Falling trucks", "Packs", "No basis for a vehicle that carries people"):
        assert text in said


def test_same_facts_same_bytes(facts, pdf, html):
    assert sheet.pdf(facts) == pdf
    assert sheet.html(facts) == html
    assert b"CreationDate" not in pdf


def test_names_are_text_and_never_markup(alone):
    name = "a <b>&$x_1$ 'truck' of a length that no workshop would say"
    named = replace(alone.now.truck, name=name)
    loaded = replace(alone.now.loaded, truck=named)
    odd = replace(alone, now=replace(alone.now, loaded=loaded), date="$\\frac{1}{2}$ <i>")
    page = sheet.html(odd)
    assert "<b>&" not in page
    assert "a &lt;b&gt;&amp;$x_1$" in page
    drawn = draw_sheet(odd)
    assert overlaps(drawn) == []
    assert any(t.startswith("a <b>&$x_1$") for t, _ in texts(drawn))


def test_truck_without_clearance_battery_or_lock_is_shown(alone):
    spec = alone.now.loaded.spec
    bare = spec.model_copy(update={
        "clearance": None, "battery": None,
        "chassis": spec.chassis.model_copy(update={"steering_lock_deg": None}),
    })  # fmt: skip
    truck = build(bare, alone.now.loaded.folder)[0]
    found = gather(replace(alone.now.loaded, spec=bare, truck=truck))
    told = [row[0] for row in sheet_words(found).weights.rows]
    assert "run time, min" not in told
    assert "turning circle, mm" not in told
    assert not any("approach" in t for t, _ in texts(draw_sheet(found)))


def test_nothing_changed_is_said(facts):
    now = facts.now
    same = replace(facts, before=now, changed=differences(now.loaded, now.loaded))
    assert sheet_words(same).changes.rows[0][:2] == ("nothing", "the two files say the same")


# ---- text -----------------------------------------------------------------------------------


def test_differences_are_those_of_the_printed_numbers():
    assert gain(99.94, 113.96, 1) == f"{MINUS}14.1"  # 99.9 less 114.0
    assert gain(1.04, 1.0, 1) == "+0.0"
    assert signed(-0.04, 1) == "+0.0"
    assert (money(-12.0), money(15.5)) == (f"{MINUS}12", "+15.50")


def test_text_is_cut_and_wrapped_to_its_room():
    long = "a brass sleeve on the front axle tube, the second of two"
    assert text_size(shortened(long, 30.0), BODY)[0] <= 30.0
    assert shortened("short", 30.0) == "short"
    lines = wrapped(long, 30.0)
    assert " ".join(lines) == long
    assert all(text_size(line, SMALL)[0] <= 30.0 for line in lines)


def test_where_it_rolls_away_is_drawn_by_direction(alone):
    """Open differentials let it go sooner on the diagonals; a ring said the most hopeful of all."""
    tips = alone.now.tips
    ways = range(len(tips.answers))
    answers = [
        replace(a, slide=a.slide - 0.05 * i) for i, a in zip(ways, tips.answers, strict=True)
    ]
    open_ended = replace(alone, now=replace(alone.now, tips=replace(tips, answers=tuple(answers))))
    drawn = [
        line
        for axes in draw_sheet(open_ended).axes
        for line in axes.lines
        if line.get_gid() == "slide"
    ]
    (loop,) = drawn
    middle = loop.get_xydata()[:-1].mean(axis=0)
    assert np.ptp(np.linalg.norm(loop.get_xydata() - middle, axis=1)) > 2.0
    assert not [x for axes in draw_sheet(alone).axes for x in axes.lines if x.get_gid() == "slide"]
