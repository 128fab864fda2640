"""The bench in a real browser: looking, tilting, editing, saving."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any

import pytest
from playwright.sync_api import Browser, Page, expect

from browsing import (
    Bench,
    Watched,
    afresh,
    ask,
    deaf,
    looking,
    on_disk,
    row,
    running,
    shop,
    slide,
    tell,
)

LONG = 60_000  # ms, on a machine with other work to do
DRAWN = re.compile(r"^M.{500,}Z$")  # a curve all round, not an empty path
SIDES = re.compile(r"^M[^M]{100,}M[^M]{100,}")  # a curve on either side, where it tips first


@pytest.fixture(scope="module")
def bench(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Bench]:
    folder = shop(tmp_path_factory.mktemp("bench") / "shop", "bramble", "thistle")
    with running(folder, "bramble.toml") as started:
        yield started


@pytest.fixture
def watched(chromium: Browser, bench: Bench) -> Iterator[Watched]:
    """A fresh file, and a page whose every test also shows that nothing complained and nobody
    else was called."""
    afresh(bench, "bramble")
    with looking(chromium, bench) as seen:
        yield seen
        assert seen.complaints == []
        assert seen.strangers == []


@pytest.fixture
def page(watched: Watched) -> Page:
    return watched.page


def number(page: Page, name: str) -> float:
    """A number of the title block by its name."""
    cell = page.locator("#numbers div", has_text=name).locator("dd")
    return float(cell.inner_text().split()[0].replace("−", "-"))


def colours(page: Page) -> int:
    """How many different colours the picture on the table has."""
    count: int = page.evaluate(
        """() => { const stage = document.getElementById('stage-canvas');
        benchWatch.stage.render();
        const copy = document.createElement('canvas'); copy.width = 120; copy.height = 90;
        const paper = copy.getContext('2d'); paper.drawImage(stage, 0, 0, 120, 90);
        const dots = paper.getImageData(0, 0, 120, 90).data; const seen = new Set();
        for (let i = 0; i < dots.length; i += 4)
            seen.add(dots[i] * 65536 + dots[i + 1] * 256 + dots[i + 2]);
        return seen.size; }"""
    )
    return count


def test_the_sheet_shows_truck_map_and_numbers(page: Page) -> None:
    expect(page.locator("#truck")).to_have_value("bramble.toml")
    assert colours(page) > 20
    expect(page.locator(".polar .rigid")).to_have_attribute("d", DRAWN)
    expect(page.locator(".polar .compliant")).to_have_attribute("d", SIDES, timeout=LONG)
    expect(page.locator(".polar .railed")).to_have_attribute("d", SIDES)
    assert number(page, "All up") > 2000
    expect(page.locator("#budget tbody")).to_have_count(4)
    expect(page.locator("#parts tbody tr")).to_have_count(50)


def test_tilting_to_the_limit_and_over(page: Page) -> None:
    standing = page.locator("#standing")
    page.get_by_role("button", name="Left side down").first.click()
    slide(page, "#tilt", 10)
    expect(standing).to_contain_text(
        re.compile(r"in hand before it (tips over its left tyres|slides or tips over its left)")
    )
    expect(page.locator(".stage-angle")).to_have_text("10.0°")
    loads = [int(t.split()[0]) for t in page.locator(".stage-load b").all_inner_texts()]
    assert loads[0] + loads[2] > loads[1] + loads[3], "the downhill side carries more"
    slide(page, "#tilt", 80)
    expect(standing).to_contain_text("Gone over its left tyres")
    slide(page, "#tilt", 5)
    expect(standing).to_contain_text("Stands")


def test_where_it_slides_first_the_page_says_so(page: Page) -> None:
    standing = page.locator("#standing")
    page.get_by_role("button", name="Climb").first.click()
    slide(page, "#tilt", 20)
    expect(standing).to_contain_text("in hand before", timeout=LONG)
    expect(standing).to_contain_text("slide")
    slide(page, "#tilt", 45)
    expect(standing).to_contain_text("Slides away at 42.0°")
    slide(page, "#tilt", 80)
    expect(standing).to_contain_text("tips over its rear tyres")
    way = page.locator('#budget [data-case="climb"]')
    expect(way.locator(".range-cell")).to_contain_text(" to ", timeout=LONG)
    expect(way.locator("b")).to_have_text(re.compile(r"^\[\d+(\.\d|–\d+)\]$"))
    expect(page.locator(".polar .range")).to_have_count(4)
    expect(page.locator("#sliding")).to_contain_text("Climb: slides first")


def test_another_surface_is_another_answer(page: Page) -> None:
    expect(page.locator("#sliding")).to_contain_text("On rock, grip 0.90", timeout=LONG)
    page.locator("#surface").select_option("wet rock")
    expect(page.locator("#sliding")).to_contain_text("On wet rock, grip 0.60")
    expect(page.locator("#sliding")).to_contain_text("Left down: ", timeout=LONG)
    expect(page.locator(".polar .reading-slides").first).to_have_text("slides ")
    page.locator("#surface").select_option("rock")
    expect(page.locator("#sliding")).to_contain_text("On rock, grip 0.90")


def test_the_puck_on_the_map_tilts_and_turns(page: Page) -> None:
    box = page.locator("svg.polar").bounding_box()
    assert box is not None
    x, y = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    page.mouse.move(x, y + 20)
    page.mouse.down()
    page.mouse.move(x, y + box["height"] * 0.3, steps=4)
    page.mouse.up()
    expect(page.locator("#turn-value")).to_have_text("0°")
    assert float(page.locator("#tilt").input_value()) > 20
    page.locator("svg.polar").focus()
    page.keyboard.press("ArrowRight")
    expect(page.locator("#turn-value")).to_have_text("5°")
    page.keyboard.press("Home")
    expect(page.locator("#tilt-value")).to_have_text("0.0°")


def test_a_truck_is_saved_under_another_name(page: Page, bench: Bench) -> None:
    text = (bench.folder / "bramble.toml").read_text()
    mass = row(page, "winch").get_by_label("Mass of winch")
    mass.fill("120")
    mass.press("Enter")
    expect(page.locator("#state")).to_have_text("changed, not saved yet")
    page.locator("#save-as").click()
    page.get_by_label("Name, in the opened folder").fill("../bramble-out")
    page.get_by_role("button", name="Save", exact=True).last.click()
    expect(page.locator("body")).to_contain_text("is not a usable file name")
    page.locator("#save-as").click()
    page.get_by_label("Name, in the opened folder").fill("bramble light")
    page.get_by_role("button", name="Save", exact=True).last.click()
    expect(page.locator("#truck")).to_have_value("bramble light.toml")
    expect(page.locator("#state")).to_have_text("saved")
    assert on_disk(bench, "winch", "bramble light.toml")["mass_g"] == 120
    assert (bench.folder / "bramble.toml").read_text() == text, "the old file is as it was"
    (bench.folder / "bramble light.toml").unlink()


def test_edits_follow_through_undo_redo_and_save(page: Page, bench: Bench) -> None:
    before, text = number(page, "All up"), (bench.folder / "bramble.toml").read_text()
    mass = row(page, "winch").get_by_label("Mass of winch")
    mass.fill("138")
    mass.press("Enter")
    expect(page.locator("#state")).to_have_text("changed, not saved yet")
    expect(page.locator("#numbers")).to_contain_text(str(round(before + 50)))
    page.locator("#undo").click()
    expect(page.locator("#numbers")).to_contain_text(str(round(before)))
    page.locator("#redo").click()
    expect(page.locator("#numbers")).to_contain_text(str(round(before + 50)))
    page.locator("#save").click()
    expect(page.locator("#state")).to_have_text("saved")
    assert on_disk(bench, "winch")["mass_g"] == 138
    after = (bench.folder / "bramble.toml").read_text()
    assert [ln for ln in after.splitlines() if "#" in ln] == [
        ln for ln in text.splitlines() if "#" in ln
    ], "every comment is kept"
    assert len(after.splitlines()) == len(text.splitlines())


def test_a_weight_dragged_in_the_side_view_moves_in_the_file(page: Page, bench: Bench) -> None:
    row(page, "motor").get_by_label("Name of motor").focus()
    grip = page.locator('[data-key="grip-side"]')
    was = [
        float(row(page, "motor").get_by_label(k).input_value()) for k in ("Place ahead", "Height")
    ]
    height = number(page, "CG height")
    box = grip.locator(".handle").bounding_box()
    assert box is not None
    x, y = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    page.mouse.move(x, y)
    page.mouse.down()
    page.mouse.move(x + 12, y - 20, steps=6)
    expect(page.locator(".polar g.trying")).to_have_count(1)
    page.mouse.up()
    expect(page.locator("#say")).to_contain_text("Moved motor")
    now = [
        float(row(page, "motor").get_by_label(k).input_value()) for k in ("Place ahead", "Height")
    ]
    assert now[0] > was[0]
    assert now[1] > was[1]
    assert number(page, "CG height") > height
    grip.focus()
    page.keyboard.press("ArrowDown")
    expect(row(page, "motor").get_by_label("Height")).to_have_value(f"{now[1] - 1:g}")
    page.locator("#undo").click()
    page.locator("#undo").click()
    expect(row(page, "motor").get_by_label("Height")).to_have_value(f"{was[1]:g}")


def test_a_slider_tries_before_it_puts_down(page: Page) -> None:
    row(page, "motor").get_by_label("Name of motor").focus()
    mass = number(page, "All up")
    curve = page.locator(".polar .rigid").get_attribute("d")
    slide(page, "#dial-mass", 300, let_go=False)
    expect(page.locator(".polar .rigid")).not_to_have_attribute("d", curve or "")
    assert number(page, "All up") > mass
    expect(page.locator("#state")).not_to_have_text("changed, not saved yet")
    slide(page, "#dial-mass", 300)
    expect(page.locator("#state")).to_have_text("changed, not saved yet")
    page.locator("#undo").click()
    expect(page.locator("#state")).to_have_text("saved")


def test_parts_come_and_go(page: Page) -> None:
    rows = page.locator("#parts tbody tr")
    count = rows.count()
    page.locator("#add-part").click()
    page.get_by_label("Name", exact=True).fill("brass cover")
    page.get_by_label("Mass of one, g", exact=True).fill("45")
    page.get_by_label("Rides on", exact=True).select_option("front axle")
    page.get_by_label("Up, mm", exact=True).fill("-10")
    page.get_by_role("button", name="Add it").click()
    expect(rows).to_have_count(count + 1)
    expect(row(page, "brass cover").get_by_label("Mass of brass cover")).to_have_value("45.0")
    page.get_by_role("button", name="Remove brass cover").click()
    expect(rows).to_have_count(count)
    page.locator("#undo").click()
    page.locator("#undo").click()
    expect(page.locator("#state")).to_have_text("saved")


def test_a_mistake_is_a_sentence_and_changes_nothing(page: Page) -> None:
    mass = row(page, "winch").get_by_label("Mass of winch")
    was = mass.input_value()
    place = row(page, "winch").get_by_label("Place ahead")
    place.fill("9000")
    place.press("Enter")
    expect(page.locator("#say")).to_have_attribute("data-kind", "wrong")
    expect(row(page, "winch").get_by_label("Mass of winch")).to_have_value(was)
    expect(page.locator("#state")).to_have_text("saved")


def test_two_tabs_do_not_write_over_each_other(page: Page, chromium: Browser, bench: Bench) -> None:
    with looking(chromium, bench) as other:
        deaf(page, bench)
        mass = row(other.page, "winch").get_by_label("Mass of winch")
        mass.fill("99")
        mass.press("Enter")
        expect(other.page.locator("#state")).to_have_text("changed, not saved yet")
        deaf(other.page, bench)
        mine = row(page, "motor").get_by_label("Mass of motor")
        mine.fill("200")
        mine.press("Enter")
        notice = page.locator("#notice")
        expect(notice).to_contain_text("changed in another tab")
        expect(row(page, "winch").get_by_label("Mass of winch")).to_have_value("99.0")
        expect(row(page, "motor").get_by_label("Mass of motor")).not_to_have_value("200.0")
        notice.get_by_role("button", name="Do mine on top").click()
        expect(row(page, "motor").get_by_label("Mass of motor")).to_have_value("200.0")
        other.page.locator("#save").click()
        expect(other.page.locator("#notice")).to_contain_text("nothing was saved")
        assert on_disk(bench, "winch")["mass_g"] != 99
        assert other.complaints == []
    for _ in range(2):
        page.locator("#undo").click()
    expect(page.locator("#state")).to_have_text("saved")


def test_mine_on_top_finds_its_part_or_says_that_it_is_gone(page: Page, bench: Bench) -> None:
    deaf(page, bench)
    here = ask(bench, "/api/bench")
    at = {k: here[k] for k in ("document", "revision")}
    gone = [{"do": "remove", "part": name} for name in ("winch", "motor")]
    tell(bench, "/api/edit", {**at, "edits": gone, "what": "removed two"})
    mass = row(page, "motor").get_by_label("Mass of motor")
    mass.fill("777")
    mass.press("Enter")
    page.locator("#notice").get_by_role("button", name="Do mine on top").click()
    expect(page.locator("#say")).to_contain_text("there is no part 'motor'")
    assert "777" not in page.locator("#parts").inner_text()
    masses = page.locator("#parts input[data-key^=mass]").evaluate_all("(e) => e.map(i => i.value)")
    assert "777.0" not in masses


def test_an_edit_for_a_truck_that_left_the_bench_is_told_so(page: Page, bench: Bench) -> None:
    deaf(page, bench)
    tell(bench, "/api/open", {"name": "thistle.toml"})
    before = (bench.folder / "thistle.toml").read_bytes()
    mass = row(page, "motor").get_by_label("Mass of motor")
    mass.fill("777")
    mass.press("Enter")
    notice = page.locator("#notice")
    expect(notice).to_contain_text("thistle.toml is on the bench now")
    expect(page.locator("#truck")).to_have_value("thistle.toml")
    assert ask(bench, "/api/bench")["unsaved"] is False
    assert (bench.folder / "thistle.toml").read_bytes() == before
    notice.get_by_role("button", name="Put bramble.toml back").click()
    expect(page.locator("#truck")).to_have_value("bramble.toml")


def test_other_tabs_and_the_disk_are_followed(page: Page, bench: Bench) -> None:
    here = ask(bench, "/api/bench")
    at = {k: here[k] for k in ("document", "revision")}
    edit = {"do": "set", "part": "winch", "key": "mass_g", "value": 99}
    tell(bench, "/api/edit", {**at, "edits": [edit], "what": "lighter winch"})
    expect(row(page, "winch").get_by_label("Mass of winch")).to_have_value("99.0")
    expect(page.locator("#say")).to_contain_text("Changed elsewhere: lighter winch")
    path = bench.folder / "bramble.toml"
    path.write_text(path.read_text() + "# looked at\n")
    notice = page.locator("#notice")
    expect(notice).to_contain_text("was changed by another program")
    notice.get_by_role("button", name="Take the file as it is on disk").click()
    expect(page.locator("#state")).to_have_text("saved")
    expect(row(page, "winch").get_by_label("Mass of winch")).not_to_have_value("99.0")
    tell(bench, "/api/open", {"name": "thistle.toml"})
    expect(page.locator("#truck")).to_have_value("thistle.toml")


def test_without_webgl_the_truck_is_drawn_flat(chromium: Browser, bench: Bench) -> None:
    none = "HTMLCanvasElement.prototype.getContext = ((old) => function (kind, ...more) {"
    none += " return kind.startsWith('webgl') ? null : old.call(this, kind, ...more); })"
    none += "(HTMLCanvasElement.prototype.getContext)"
    with looking(chromium, bench, prepare=none) as seen:
        page = seen.page
        expect(page.locator("#stage")).to_contain_text("offers no WebGL")
        assert page.locator("#stage .part").count() > 40
        level = page.locator("#stage .flat > g").get_attribute("transform")
        slide(page, "#tilt", 12)
        expect(page.locator("#stage .flat > g")).not_to_have_attribute("transform", level or "")
        expect(page.locator("#standing")).to_contain_text("in hand")
        slide(page, "#tilt", 85)
        expect(page.locator("#standing")).to_contain_text("Gone")
        assert seen.complaints == []


def test_another_truck_is_put_on_the_bench_and_back(page: Page) -> None:
    page.locator("#truck").select_option("thistle.toml")
    expect(page).to_have_title(re.compile("thistle"))
    page.locator("#truck").select_option("burdock.toml")
    expect(page.locator("#state")).to_have_text("demo truck", timeout=30_000)
    page.locator("#truck").select_option("bramble.toml")
    expect(page.locator("#state")).to_have_text("saved")


def test_everything_that_takes_the_keyboard_has_a_name(page: Page) -> None:
    reached = set()
    for _ in range(40):
        page.keyboard.press("Tab")
        reached.add(page.evaluate("document.activeElement.id"))
    assert {"truck", "save-as", "stage-canvas", "tilt", "turn", "tab-weights"} <= reached
    row(page, "motor").get_by_label("Name of motor").focus()
    nameless = page.evaluate(
        """() => [...document.querySelectorAll('button, input, select, [tabindex]')]
        .filter(e => e.offsetParent !== null || e instanceof SVGElement)
        .filter(e => !(e.getAttribute('aria-label') || e.labels?.length || e.textContent.trim()
                       || e.getAttribute('aria-labelledby')))
        .map(e => e.outerHTML.slice(0, 120))"""
    )
    assert nameless == []


def test_a_narrow_screen_shows_one_place_at_a_time(chromium: Browser, bench: Bench) -> None:
    with looking(chromium, bench, (390, 844), "dark") as seen:
        page = seen.page
        expect(page.locator("section.table")).to_be_visible()
        expect(page.locator("section.map")).to_be_hidden()
        page.get_by_role("button", name="Tip map").click()
        expect(page.locator("svg.polar")).to_be_visible()
        page.get_by_role("button", name="Notebook").click()
        expect(page.locator("#parts")).to_be_visible()
        wide: int = page.evaluate("document.documentElement.scrollWidth")
        assert wide <= 390, "nothing sticks out sideways"
        assert page.evaluate("document.documentElement.dataset.light") == "dark"
        assert seen.complaints == []


def test_a_server_that_dies_in_mid_drag_is_told_of_and_found_again(
    chromium: Browser, tmp_path: Any
) -> None:
    folder = shop(tmp_path / "shop", "thistle")
    with running(folder, "thistle.toml") as first, looking(chromium, first) as seen:
        page = seen.page
        port = first.address.rstrip("/").rpartition(":")[2]
        name = page.locator("#parts tbody tr").nth(3).get_by_label(re.compile("^Name of "))
        name.fill("marked part")
        name.press("Enter")
        expect(page.locator("#state")).to_have_text("changed, not saved yet")
        dial = page.locator("[id='dial-chassis.wheelbase_mm']")
        value = dial.input_value()
        first.process.kill()
        first.process.wait()
        slide(page, "[id='dial-chassis.wheelbase_mm']", float(value) + 9, let_go=False)
        expect(page.locator("#notice")).to_contain_text("does not answer")
        expect(page.locator("[id='dial-chassis.wheelbase_mm']")).to_have_value(value)
        faults = [c for c in seen.complaints if "Failed to load resource" not in c]
        with running(folder, "thistle.toml", "--port", port):
            expect(page.locator("#say")).to_contain_text("with everything as it was", timeout=LONG)
            expect(page.locator("#notice")).to_be_hidden()
            slide(page, "[id='dial-chassis.wheelbase_mm']", float(value) + 9)
            expect(page.locator("#say")).to_contain_text("Wheelbase")
            page.locator("#undo").click()
            page.locator("#undo").click()
            expect(page.get_by_label("Name of marked part")).to_have_count(0)
        assert faults == []


def test_work_survives_a_killed_server(chromium: Browser, tmp_path: Any) -> None:
    folder = shop(tmp_path / "shop", "thistle")
    with running(folder, "thistle.toml") as first, looking(chromium, first) as seen:
        page = seen.page
        name = page.locator("#parts tbody tr").nth(3).get_by_label(re.compile("^Name of "))
        name.fill("marked part")
        name.press("Enter")
        expect(page.locator("#state")).to_have_text("changed, not saved yet")
        first.process.kill()
        first.process.wait()
        name = page.locator("#parts tbody tr").nth(3).get_by_label(re.compile("^Name of "))
        name.fill("lost part")
        name.press("Enter")
        expect(page.locator("#notice")).to_contain_text("does not answer")
    with running(folder, "thistle.toml") as second, looking(chromium, second) as seen:
        expect(seen.page.locator("#say")).to_contain_text("Unsaved work from last time is back")
        expect(seen.page.get_by_label("Name of marked part")).to_have_count(1)
        seen.page.locator("#undo").click()
        expect(seen.page.get_by_label("Name of marked part")).to_have_count(0)
        assert seen.complaints == []
