"""Scenario files: what they mean, and one sentence for every mistake in them."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from crossfall.study.design import Axis, Design, columns, count, design_points, points
from crossfall.study.scenario import Scenario, load_scenario, scenario_names
from crossfall.study.sweep import batch_of
from crossfall.truck.errors import InputError

GOOD = """\
name = "good"
truck = "bramble"
method = "compliant"
headings_deg = [0, 90]
seed = 4

[fixed]
"both.suspension.droop_mm" = 12

[[axis]]
key = "both.track_mm"
first = 160
last = 180
steps = 3

[[axis]]
key = "grip"
values = [0.6, 0.9]
"""


def written(folder: Path, text: str) -> Path:
    path = folder / "scenario.toml"
    path.write_text(text)
    return path


def mistakes(folder: Path, text: str) -> list[str]:
    path = written(folder, text)
    with pytest.raises(InputError) as caught:
        load_scenario(path)
    return [str(p).replace(str(path), "F") for p in caught.value.problems]


def test_a_grid_runs_through_its_axes_the_last_quickest(tmp_path: Path) -> None:
    scenario = load_scenario(written(tmp_path, GOOD))
    payloads = list(scenario.payloads())
    assert len(payloads) == scenario.total == 12
    seen = [(p["both.track_mm"], p["grip"], p["heading_deg"]) for p in payloads]
    assert seen == [(t, g, h) for t in (160.0, 170.0, 180.0) for g in (0.6, 0.9) for h in (0, 90)]
    assert {p["repeat"] for p in payloads} == {0}


def test_repeats_have_seeds_of_their_own_shared_by_all_builds(tmp_path: Path) -> None:
    text = GOOD.replace("seed = 4", "seed = 4\nrepeats = 3\ntolerances = true")
    scenario = load_scenario(written(tmp_path, text))
    seeds = {(p["repeat"], p["seed"]) for p in scenario.payloads()}
    assert len(seeds) == len({s for _, s in seeds}) == 3
    other = load_scenario(written(tmp_path, text.replace("seed = 4", "seed = 5")))
    assert not {s for _, s in seeds} & {p["seed"] for p in other.payloads()}


def test_the_same_scenario_has_the_same_addresses_wherever_it_lies(tmp_path: Path) -> None:
    (tmp_path / "a").mkdir()
    keys = []
    for folder in (tmp_path, tmp_path / "a"):
        batch = batch_of(load_scenario(written(folder, GOOD)))
        keys.append([t.key for t in batch.tasks()])
    assert keys[0] == keys[1]
    assert len(set(keys[0])) == 12
    changed = batch_of(load_scenario(written(tmp_path, GOOD.replace("= 12", "= 13"))))
    assert not set(keys[0]) & {t.key for t in changed.tasks()}


def test_a_truck_file_beside_the_scenario_is_found(tmp_path: Path) -> None:
    source = load_scenario(written(tmp_path, GOOD)).loaded.path
    (tmp_path / "mine.toml").write_text(source.read_text())
    for mesh in source.parent.glob("meshes/*"):
        (tmp_path / "meshes").mkdir(exist_ok=True)
        (tmp_path / "meshes" / mesh.name).write_bytes(mesh.read_bytes())
    scenario = load_scenario(written(tmp_path, GOOD.replace('"bramble"', '"mine.toml"')))
    assert scenario.loaded.path == tmp_path / "mine.toml"


@pytest.mark.parametrize("kind", ["latin hypercube", "sobol"])
def test_spread_designs_fill_their_box_and_repeat_exactly(kind: str) -> None:
    axes = (Axis("a.b", (10.0, 20.0)), Axis("c.d", (-1.0, 1.0)))
    design = Design(kind, 64)  # type: ignore[arg-type]
    first = design_points(axes, design, 1)
    assert first.shape == (64, 2)
    np.testing.assert_array_equal(first, design_points(axes, design, 1))
    assert not np.array_equal(first, design_points(axes, design, 2))
    for column, (low, high) in zip(first.T, ((10, 20), (-1, 1)), strict=True):
        # Both designs put exactly one point into each of 64 slices of an axis.
        slices = np.floor((column - low) / (high - low) * 64)
        assert sorted(slices) == list(range(64))


def test_columns_are_the_points_whatever_the_chunk() -> None:
    axes = (Axis("a.b", (1.0, 2.0, 3.0)), Axis("c.d", (0.0, 1.0)), Axis("e.f", (5.0, 6.0)))
    design = Design("grid")
    rows = np.array(list(points(axes, design, 0)))
    assert len(rows) == count(axes, design) == 12
    for some in (slice(0, 12), slice(3, 7)):
        np.testing.assert_array_equal(np.array(columns(axes, design, 0, some)).T, rows[some])


@pytest.mark.parametrize("name", scenario_names())
def test_shipped_scenarios_are_right(name: str) -> None:
    scenario = load_scenario(name)
    assert scenario.total >= 10
    assert scenario.spec.map


def test_there_are_the_sweeps_that_were_promised() -> None:
    loaded: dict[str, Scenario] = {n: load_scenario(n) for n in scenario_names()}
    assert len(loaded) >= 5
    assert loaded["overnight"].total == 10_000
    assert loaded["overnight"].spec.method == "tilt trial"


def test_every_mistake_of_form_is_found_at_once(tmp_path: Path) -> None:
    text = """\
name = "bad"
truck = "bramble"
method = "complient"
repeats = 0
sed = 3

[[axis]]
key = "both.track_mm"
first = 200
last = 150
steps = 4

[[axis]]
key = "heading_deg"
values = []

[design]
kind = "sobol"
points = 500
"""
    assert mistakes(tmp_path, text) == [
        "F:3: method: is the text 'complient'; did you mean 'compliant'?",
        "F:4: repeats: is 0; it must be 1 or more",
        "F:5: sed: is not a known key; did you mean 'seed'?",
        "F:10: axis[0].last: is 150; it must be more than first, 200",
        "F:15: axis[1].values: has too few values; at least 1",
        "F:19: design.points: is 500; a Sobol sequence is balanced only at powers of two, "
        "such as 512",
    ]


def test_every_mistake_of_meaning_is_found_at_once(tmp_path: Path) -> None:
    text = """\
name = "bad"
truck = "bramble"
method = "compliant"
repeats = 3
headings_deg = [0, 90]

[fixed]
"both.trak_mm" = 170
"chassis.wheelbase_mm" = -5
slope = 3

[[axis]]
key = "part.batery pack.at_mm.z"
first = 60
last = 80
steps = 3

[[axis]]
key = "both.suspension.droop_mm"
values = [4, -3, "soft"]

[[axis]]
key = "heading_deg"
values = [0, 700]

[[axis]]
key = "grip"
first = 0.5
last = 0.9

[[axis]]
key = "grip"
values = [1]

[[map]]
x = "grib"
y = "grip"
shows = "slope"
"""
    found = mistakes(tmp_path, text)
    places = [f.split(": ")[0] + ": " + f.split(": ")[1] for f in found]
    assert places == [
        "F:8: fixed.both.trak_mm",
        "F:9: fixed.chassis.wheelbase_mm",
        "F:10: fixed.slope",
        "F:13: axis[0].key",
        "F:20: axis[1].values[1]",
        "F:20: axis[1].values[2]",
        "F:24: axis[2].values[1]",
        "F:32: axis[4].key",
        "F:26: axis[3]",
        "F:4: repeats",
        "F:5: headings_deg",
        "F:36: map[0].x",
        "F:38: map[0].shows",
    ]
    assert "did you mean 'track_mm'?" in found[0]
    assert "did you mean 'battery pack'?" in found[3]


TO_FIXED = 'method = "compliant"\nheadings_deg = [0, 90]\nseed = 4\n\n'
KINGPINS = '[[axis]]\nkey = "front.kingpin_offset_mm"\nvalues = [10, 20]\n'
STRAIGHT = (
    "'{}' has no use in a critical slope; it drives straight ahead, not with its front wheels"
)


@pytest.mark.parametrize(
    ("change", "said"),
    [
        (("seed = 4", 'surface = "moon"'), "surface: no surface 'moon'"),
        (("seed = 4", 'surface = "rock"'), "surface: is given and so is grip"),
        (("seed = 4", 'hold = "glue"'), "hold"),
        (('"compliant"', '"closed form"\nranges = true'), "ranges: has no use in closed form"),
        (('"compliant"', '"critical slope"\nhold = "rail"'), "but the truck drives"),
        (("seed = 4", 'engine = "bullet"'), "engine: has no use in compliant"),
        (("seed = 4", 'trial = "quick"'), "trial: has no use in compliant"),
        (('"compliant"', '"tilt trial"\ntrial = "hasty"'), "trial"),
        (('"compliant"', '"tilt trial"\nengine = "ode"'), "engine"),
        (('"bramble"', '"brambel"'), "F:2: truck: 'brambel': there is no such file"),
        (("steps = 3", "steps = 300000\n[[axis]]\nkey='slope_deg'\nvalues=[1]"), "at most 200000"),
        (("seed = 4", "[design]\nkind='latin hypercube'\npoints=9"), "wants first and last"),
        (
            (f"{TO_FIXED}[fixed]", 'method = "critical slope"\n[fixed]\n"chassis.steer_deg" = 10'),
            f"fixed.chassis.steer_deg: {STRAIGHT.format('chassis.steer_deg')}",
        ),
        (
            (TO_FIXED, f'method = "critical slope"\n{KINGPINS}'),
            f"axis[0].key: {STRAIGHT.format('front.kingpin_offset_mm')}",
        ),
        (("[fixed]", "[fixd]"), "did you mean 'fixed'?"),
        (('name = "good"', 'name = "good'), "is not valid TOML"),
    ],
)
def test_single_mistakes(tmp_path: Path, change: tuple[str, str], said: str) -> None:
    found = mistakes(tmp_path, GOOD.replace(*change))
    assert any(said in f for f in found), found
    assert all("\n" not in f for f in found)


def test_a_mistake_in_the_truck_is_the_trucks(tmp_path: Path) -> None:
    (tmp_path / "mine.toml").write_text("format = 1\n")
    with pytest.raises(InputError) as caught:
        load_scenario(written(tmp_path, GOOD.replace('"bramble"', '"mine.toml"')))
    assert all("mine.toml" in p.file for p in caught.value.problems)


@pytest.mark.parametrize("name", ["overnigt", "no such", "\0"])
def test_an_unknown_scenario_is_said(name: str) -> None:
    with pytest.raises(InputError) as caught:
        load_scenario(name)
    assert len(caught.value.problems) == 1


DRIVEN = """\
name = "driven"
truck = "bramble"
method = "critical slope"

"""


@pytest.mark.parametrize(
    ("text", "said"),
    [
        (
            "[fixed]\nstone_mm = -5",
            "fixed.stone_mm: stone_mm is -5; it must be 0 to 100, 0 for none",
        ),
        ("[fixed]\nstone_mm = nan", "fixed.stone_mm: is nan; it must be an ordinary finite number"),
        ("[fixed]\nstone_mm = [5]", "fixed.stone_mm: is an array of 1; it must be a number"),
        ("[[axis]]\nkey='stone_mm'\nfirst=-5\nlast=5\nsteps=3", "stone_mm is -5; it must be"),
        ("[[axis]]\nkey='stone_mm'\nvalues=[5, -5]", "axis[0].values[1]: stone_mm is -5"),
        ("[fixed]\nstone_mm = 5\nrough_mm = 2", "and so is stone_mm; keep one of the two"),
    ],
)
def test_a_stone_is_higher_than_nothing(tmp_path: Path, text: str, said: str) -> None:
    (found,) = mistakes(tmp_path, DRIVEN + text)
    assert said in found


def test_no_stone_at_all_is_a_plane(tmp_path: Path) -> None:
    text = DRIVEN + "[[axis]]\nkey='stone_mm'\nfirst=0\nlast=10\nsteps=3"
    assert load_scenario(written(tmp_path, text)).points == 3
