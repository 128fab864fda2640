"""Changes, plan, scales, board and maps, each on its page of the notebook."""

from __future__ import annotations

import re
import shutil
import tomllib
from collections.abc import Iterator
from math import sqrt
from pathlib import Path
from typing import Any
from urllib.parse import quote

import pytest
from playwright.sync_api import Browser, Page, expect

from browsing import Bench, Watched, afresh, ask, looking, running, shop, turn_to
from crossfall.truck.build import load_truck
from crossfall.truck.demos import demo_folder
from crossfall.truck.massprops import whole
from crossfall.truck.model import GRAVITY, Truck
from crossfall.truck.ride import level_axle_loads, tyre_loads
from crossfall.tuning.apply import apply, built
from crossfall.tuning.changes import read_changes
from crossfall.tuning.limits import breaches, read_limits

LIMITS = "scale-trail.limits.toml"
LONG = 240_000  # ms, on a machine with other work to do


@pytest.fixture(scope="module")
def bench(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Bench]:
    folder = shop(tmp_path_factory.mktemp("bench") / "shop", "bramble")
    shutil.copy(demo_folder() / "bramble.changes.toml", folder)
    shutil.copy(demo_folder() / LIMITS, folder)
    with running(folder, "bramble.toml") as started:
        yield started


@pytest.fixture
def watched(chromium: Browser, bench: Bench) -> Iterator[Watched]:
    afresh(bench, "bramble")
    with looking(chromium, bench) as seen:
        yield seen
        assert seen.complaints == []
        assert seen.strangers == []


@pytest.fixture
def page(watched: Watched) -> Page:
    return watched.page


def mass(page: Page) -> float:
    return float(
        page.locator("#numbers div", has_text="All up").locator("dd").inner_text().split()[0]
    )


def test_switches_fit_changes_and_the_file_keeps_its_comments(page: Page, bench: Bench) -> None:
    path = bench.folder / "bramble.toml"
    comments = [line for line in path.read_text().splitlines() if line.startswith("#")]
    before = mass(page)
    turn_to(page, "Changes", "Switches")
    body = page.locator('[data-change="light body"]')
    expect(body.locator(".buys")).to_contain_text("Side slope +", timeout=LONG)
    body.get_by_role("switch").check()
    expect(page.locator("#change-total")).to_contain_text("1 fitted, 64 EUR")
    pack = page.locator('[data-change="small pack"]')
    pack.get_by_role("switch").check()
    expect(page.locator("#change-total")).to_contain_text("2 fitted, 93 EUR")
    expect(page.locator("#change-total")).to_contain_text("against the truck before")
    gain = page.locator("#change-total .one-gain", has_text="Left down").locator("b")
    expect(page.locator(".polar g.inexact")).to_have_count(0, timeout=LONG)
    state: Any = ask(bench, "/api/bench")
    while not state["before"]["exact"]:  # the page asks for it by itself
        page.wait_for_timeout(500)
        state = ask(bench, "/api/bench")
    now, then = (a["compliant_deg"][18] for a in (state["answers"], state["before"]))
    expect(gain).to_have_text(f"{now - then:+.1f}°", timeout=LONG)
    expect(page.locator(".polar .before")).to_have_count(1)
    loaded = load_truck(path)
    catalogue = read_changes(bench.folder / "bramble.changes.toml")
    chosen = {catalogue.position("light body"): 1, catalogue.position("small pack"): 1}
    wanted = built(loaded, apply(loaded.spec, catalogue, chosen))
    page.locator("#save").click()
    expect(page.locator("#state")).to_have_text("saved")
    fitted = load_truck(path).truck
    for one, other in ((fitted.chassis, wanted.chassis), (fitted.front.body, wanted.front.body)):
        assert one.mass == pytest.approx(other.mass, rel=1e-12)
        assert one.cg == pytest.approx(other.cg, rel=1e-9, abs=1e-12)
        assert one.inertia == pytest.approx(other.inertia, rel=1e-9, abs=1e-15)
    kept = [line for line in path.read_text().splitlines() if line.startswith("#")]
    assert kept == comments
    assert tomllib.loads(path.read_text())["battery"]["capacity_mah"] == 2200
    page.locator("#fit-none").click()
    expect(page.locator("#change-total")).to_contain_text("Nothing fitted")
    assert mass(page) == before


def test_one_of_a_group_takes_the_place_of_the_other(page: Page) -> None:
    turn_to(page, "Changes", "Switches")
    first = page.locator('[data-change="small pack"]').get_by_role("switch")
    other = page.locator('[data-change="saddle packs"]').get_by_role("switch")
    first.check()
    expect(page.locator("#change-total")).to_contain_text("1 fitted")
    other.check()
    expect(first).not_to_be_checked()
    expect(other).to_be_checked()
    page.locator("#undo").click()
    expect(first).to_be_checked()
    page.locator("#undo").click()
    expect(page.locator("#change-total")).to_contain_text("Nothing fitted")
    expect(page.locator("#state")).to_have_text("saved")


def test_what_a_change_needs_comes_with_it(page: Page) -> None:
    turn_to(page, "Changes", "Switches")
    page.locator('[data-change="deep offset"]').get_by_role("switch").check()
    expect(page.locator('[data-change="beadlocks"]').get_by_role("switch")).to_be_checked()
    expect(page.locator("#change-total")).to_contain_text("2 fitted")


def test_a_truck_without_a_change_file_is_told_how(page: Page) -> None:
    page.locator("#truck").select_option("thistle.toml")
    turn_to(page, "Changes", "Switches")
    expect(page.locator("#changes")).to_contain_text(re.compile("There is no thistle.changes.toml"))


def test_fitted_changes_are_still_switches_after_a_killed_server(
    chromium: Browser, tmp_path: Path
) -> None:
    folder = shop(tmp_path / "shop", "bramble")
    shutil.copy(demo_folder() / "bramble.changes.toml", folder)
    with running(folder, "bramble.toml") as first, looking(chromium, first) as seen:
        turn_to(seen.page, "Changes", "Switches")
        seen.page.locator('[data-change="light body"]').get_by_role("switch").check()
        expect(seen.page.locator("#change-total")).to_contain_text("1 fitted")
    with running(folder, "bramble.toml") as second, looking(chromium, second) as seen:
        turn_to(seen.page, "Changes", "Switches")
        switch = seen.page.locator('[data-change="light body"]').get_by_role("switch")
        expect(switch).to_be_checked()
        switch.uncheck()
        expect(seen.page.locator("#state")).to_have_text("saved")
        assert seen.complaints == []


def test_the_planner_proposes_a_set_that_can_be_fitted(page: Page) -> None:
    turn_to(page, "Changes", "Best set")
    page.get_by_label("At most, EUR").fill("60")
    page.locator("#plan-go").click()
    expect(page.locator("#plan-answer h3").first).to_contain_text("Best: ", timeout=LONG)
    assert page.locator(".front-point").count() > 3
    page.locator("#fit-best").click()
    expect(page.locator("#state")).to_have_text("changed, not saved yet")
    turn_to(page, "Changes", "Switches")
    spent = page.locator("#change-total b").first
    expect(spent).to_contain_text("EUR")
    assert 0 < float(spent.inner_text().split()[0]) <= 60


def test_the_planner_keeps_to_front_share_and_class(page: Page, bench: Bench) -> None:
    turn_to(page, "Changes", "Best set")
    page.get_by_label("At most, EUR").fill("60")
    page.get_by_label("On the front axle at least, %").fill("60")
    page.get_by_label("On the front axle at most, %").fill("50")
    page.locator("#plan-go").click()
    expect(page.locator("#plan-answer")).to_contain_text("a least below the most", timeout=LONG)
    page.get_by_label("On the front axle at least, %").fill("48")
    page.get_by_label("On the front axle at most, %").fill("56")
    page.get_by_label("Within the limits of").select_option("scale-trail")
    page.locator("#plan-go").click()
    expect(page.locator("#plan-answer h3").first).to_contain_text("Best: ", timeout=LONG)
    page.locator("#fit-best").click()
    expect(page.locator("#state")).to_have_text("changed, not saved yet")
    page.locator("#save").click()
    expect(page.locator("#state")).to_have_text("saved")
    done = load_truck(bench.folder / "bramble.toml")
    loads = level_axle_loads(done.truck)
    assert 0.48 <= loads[0] / loads.sum() <= 0.56
    assert breaches(read_limits(demo_folder() / LIMITS), done.truck, done.spec) == ()


def test_scale_readings_find_mass_and_height(page: Page, bench: Bench) -> None:
    turn_to(page, "Scale and board", "On the scale")
    truck = load_truck(bench.folder / "bramble.toml").truck
    front, rear = (load / GRAVITY * 1000 for load in level_axle_loads(truck))
    corners = tyre_loads(truck) / GRAVITY * 1000
    shown = (front, rear, corners[0] + corners[2], raised_rear(truck, 0.090))
    for i, load in enumerate(shown, start=1):
        field = page.get_by_label(f"Reading {i}: scale shows")
        field.fill(f"{load:.0f}, {load:.0f}")
        field.press("Tab")
    page.locator("#weigh-go").click()
    cells = page.locator("#weighed tbody tr")
    expect(cells).to_have_count(4, timeout=LONG)
    found = [float(t.replace("−", "-")) for t in page.locator("#weighed td b").all_inner_texts()]
    body = whole(truck)
    assert found[0] == pytest.approx(body.mass * 1000, abs=3)
    assert found[3] == pytest.approx(body.cg[2] * 1000, abs=2)
    page.locator("#weigh-keep").click()
    expect(page.locator("#say")).to_contain_text("kept beside the truck", timeout=LONG)
    assert (bench.folder / "bramble.weighin.toml").is_file()
    page.reload()
    turn_to(page, "Scale and board", "On the scale")
    expect(page.get_by_label("Reading 1: scale shows")).to_have_value(
        f"{front:.0f}; {front:.0f}", timeout=LONG
    )
    page.get_by_label("Reading 1: scale shows").fill("")
    page.get_by_label("Reading 1: scale shows").press("Tab")
    page.get_by_label("Reading 2: scale shows").fill("abc")
    page.get_by_label("Reading 2: scale shows").press("Tab")
    page.locator("#weigh-go").click()
    expect(page.locator("#weigh-answer .wrong")).to_contain_text(
        "reading 2: 'abc' is no weight", timeout=LONG
    )


def raised_rear(truck: Truck, block: float) -> float:
    """g on the rear axle with the front wheels on a block, the suspension held.

    Moments about the front contact, x = L cos(a) along the ground, wheels of radius r alike:
    R L cos(a) = W ((x_f - x) cos(a) + (z - r) sin(a)), sin(a) = block / L.
    """
    body, length = whole(truck), truck.wheelbase
    sine = block / length
    lever = truck.front.x - body.cg[0]
    lever += (body.cg[2] - truck.front.tyre.radius) * sine / sqrt(1 - sine**2)
    return float(body.mass * 1000 * lever / length)


def test_a_board_reading_is_noted_and_judged(page: Page, bench: Bench) -> None:
    turn_to(page, "Scale and board", "On the board")
    field = page.get_by_label("Measured angle, climb")
    expect(field).to_be_visible(timeout=LONG)
    field.fill("20")
    page.get_by_role("button", name="Note climb").click()
    expect(page.locator("#board")).to_contain_text("20.0° does not", timeout=LONG)
    expect(page.locator("#board")).to_contain_text("do not agree")
    page.get_by_role("button", name="Take out 20.0°").click()
    expect(page.locator("#board")).not_to_contain_text("20.0°", timeout=LONG)
    field.fill("20")
    page.get_by_role("button", name="Note climb").click()
    expect(page.locator("#board")).to_contain_text("20.0° does not", timeout=LONG)
    assert "heading_deg = 0" in (bench.folder / "bramble.board.toml").read_text()


def test_a_point_of_a_finished_sweep_becomes_the_truck(page: Page, bench: Bench) -> None:
    lines = ["part.motor.at_mm.z,part.motor.at_mm.x,heading_deg,tip_deg"]
    lines += [
        f"{z},{x},{h},{50 - z / 10 + x / 50 + h / 90}"
        for z in (100, 110, 120)
        for x in (0, 20, 40)
        for h in (0, 90)
    ]
    (bench.folder / "out").mkdir(exist_ok=True)
    (bench.folder / "out" / "table.csv").write_text("\n".join(lines) + "\n")
    turn_to(page, "Sweeps")
    page.locator("#sweep-choice").select_option("out/table.csv")
    page.locator("#sweep-open").click()
    points = page.locator("#map .map-point")
    expect(points).to_have_count(9)
    points.nth(5).click()
    expect(page.locator("#state")).to_have_text("changed, not saved yet")
    turn_to(page, "Weights")
    motor = page.locator('#parts tr:has(input[aria-label="Name of motor"])')
    expect(motor.get_by_label("Place ahead")).to_have_value("40")
    expect(motor.get_by_label("Height")).to_have_value("110")


def test_a_sweep_is_run_from_the_page_and_becomes_a_map(page: Page) -> None:
    turn_to(page, "Sweeps")
    page.get_by_label("Up: what to vary").select_option("part.at_mm.z")
    page.get_by_label("Up: of which part").select_option("battery pack")
    for axis in ("Across", "Up"):
        page.get_by_label(f"{axis}: in how many steps").fill("3")
    page.get_by_label("By which method").select_option("closed form")
    expect(page.locator("#sweep-count")).to_have_text("9 trucks to answer")
    page.locator("#sweep-run").click()
    expect(page.locator("#sweep-words")).to_have_text("9 done; the map is below.", timeout=LONG)
    points = page.locator("#map .map-point")
    expect(points).to_have_count(9)
    points.first.focus()
    page.keyboard.press("ArrowRight")
    expect(points.nth(1)).to_be_focused()
    page.keyboard.press("Enter")
    expect(page.locator("#state")).to_have_text("changed, not saved yet")
    page.locator("#undo").click()
    expect(page.locator("#state")).to_have_text("saved")
    page.get_by_label("Across: what to vary").select_option("part.at_mm.z")
    page.get_by_label("Across: of which part").select_option("battery pack")
    page.locator("#sweep-run").click()
    expect(page.locator("#say")).to_contain_text("vary two different things")


def test_no_table_outside_the_folder_is_read(bench: Bench) -> None:
    (bench.folder.parent / "secret.csv").write_text("a,b\n1,2\n")
    for name in ("../secret.csv", "/etc/passwd", "out/../../secret.csv", "a/../../secret"):
        answer = ask(bench, "/api/sweep?name=" + quote(name, safe=""))
        assert answer["refused"] == 422


def test_the_set_up_sheet_is_downloaded(page: Page) -> None:
    with page.expect_download(timeout=LONG) as download:
        page.locator("#sheet").click()
    assert download.value.suggested_filename == "bramble-sheet.pdf"
    assert Path(download.value.path()).read_bytes().startswith(b"%PDF-")
