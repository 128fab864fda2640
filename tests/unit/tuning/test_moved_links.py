"""Changes that move link and shock ends: what they are worth is what the edited file says."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from crossfall.answers.tips import tip_angles
from crossfall.statics import rigid
from crossfall.truck.build import Loaded, build, load_text
from crossfall.truck.read import locate
from crossfall.tuning.apply import apply
from crossfall.tuning.changes import Catalogue, read_changes
from crossfall.tuning.menu import guiding, is_setup
from crossfall.tuning.milp_model import Bounds
from crossfall.tuning.plan import SolverSettings, aim_at, plan
from crossfall.tuning.whatif import rank_changes
from linked_files import TRAVEL, linked_text, shocks_text

CHANGES = """
format = 1
truck = "bramble"

[[change]]
name = "upper mounts higher"
label = "Front upper links one hole up on the frame"
price = 2
by = { "part.front upper link.chassis_end_mm.z" = 4 }

[[change]]
name = "lower links up"
label = "Rear lower links 3 mm further up on the axle"
price = 2
set = { "part.rear lower link.axle_end_mm" = [4, 40, -5] }

[[change]]
name = "shocks upright"
label = "Front shocks moved forward as a whole"
price = 3
move = [{ part = "front shock", by_mm = [0, 0, -4] }]

[[change]]
name = "shock hoops lower"
label = "Rear shocks 4 mm lower on their hoops"
price = 2
by = { "part.rear shock.chassis_end_mm.z" = -4 }

[[change]]
name = "collars on"
label = "Front collars 3 mm on"
set = { "front.suspension.preload_mm" = 6 }

[[change]]
name = "links of steel"
label = "Heavier lower links"
price = 4
swap = [{ part = "front lower link", new = { material = "steel" } }]

[[change]]
name = "longer"
label = "Front axle 8 mm forward on longer links"
price = 9
lengthen = { front_mm = 8 }
"""
EDITED = {
    "upper mounts higher": ("[52, 30, 102]", "[52, 30, 106]"),
    "lower links up": (
        "[-42, 30, 84]\naxle_end_mm = [4, 40, -8",
        "[-42, 30, 84]\naxle_end_mm = [4, 40, -5",
    ),
}


@pytest.fixture(scope="module")
def truck() -> Loaded:
    return load_text(linked_text("bramble", shocks=True), Path(locate("bramble")))


@pytest.fixture(scope="module")
def catalogue(tmp_path_factory: pytest.TempPathFactory) -> Catalogue:
    path = tmp_path_factory.mktemp("links") / "links.changes.toml"
    path.write_text(CHANGES, encoding="utf-8")
    return read_changes(path)


def edited(*names: str) -> Loaded:
    text = linked_text("bramble", shocks=True)
    for name in names:
        old, new = EDITED[name]
        assert text.count(old) == 1
        text = text.replace(old, new)
    return load_text(text, Path(locate("bramble")))


@pytest.mark.parametrize("name", EDITED)
def test_whatif_says_what_the_edited_file_says(
    truck: Loaded, catalogue: Catalogue, name: str
) -> None:
    ranking = rank_changes(truck, catalogue, "side")
    (outcome,) = (o for o in ranking.outcomes if o.change == catalogue.position(name))
    found = tip_angles([truck.truck, edited(name).truck], rigid.QUARTERS, 0.9).free
    gains = found[1] - found[0]
    sides = found[:, [1, 3]].min(axis=1)
    assert outcome.gain[:3] == pytest.approx([sides[1] - sides[0], gains[0], gains[2]], abs=1e-9)
    assert np.abs(np.degrees(gains)).max() > 0.1
    assert abs(outcome.side.mass) < 1e-3


@pytest.mark.parametrize(
    ("name", "old", "new"),
    [
        ("shock hoops lower", "[-126, 56, 150]", "[-126, 56, 146]"),
        ("collars on", "preload_mm = 3.0", "preload_mm = 6.0"),
    ],
)
def test_on_whole_shocks_whatif_says_what_the_edited_file_says(
    catalogue: Catalogue, name: str, old: str, new: str
) -> None:
    text = shocks_text(without=TRAVEL, shock_length_mm=100.0, shaft_travel_mm=40.0, preload_mm=3.0)
    assert old in text
    path = Path(locate("bramble"))
    before, after = load_text(text, path), load_text(text.replace(old, new, 1), path)
    ranking = rank_changes(before, catalogue, "side")
    (outcome,) = (o for o in ranking.outcomes if o.change == catalogue.position(name))
    found = tip_angles([before.truck, after.truck], rigid.QUARTERS, 0.9).free
    gains = found[1] - found[0]
    sides = found[:, [1, 3]].min(axis=1)
    assert outcome.gain[:3] == pytest.approx([sides[1] - sides[0], gains[0], gains[2]], abs=1e-9)
    assert np.abs(np.degrees(gains)).max() > 0.1


@pytest.mark.parametrize("listed", [0, 10_000])
def test_a_plan_scores_moved_ends_as_the_edited_file(
    truck: Loaded, catalogue: Catalogue, listed: int
) -> None:
    some = Catalogue(
        tuple(catalogue[name] for name in EDITED),
        catalogue.currency,
        catalogue.source,
    )
    aim = aim_at("side")
    found = plan(truck, some, aim, Bounds(budget=4.0), SolverSettings(listed=listed))
    assert found.best is not None
    both = [edited(*names).truck for names in (EDITED, *((name,) for name in EDITED))]
    sides = tip_angles([truck.truck, *both], aim.headings, 0.9).free.min(axis=1)
    assert found.best.value == pytest.approx(sides.max(), abs=1e-6)
    assert sides.max() > sides[0] + np.radians(0.1)


def test_only_what_moves_a_guide_is_part_of_the_set_up(truck: Loaded, catalogue: Catalogue) -> None:
    guides = guiding(truck.spec)
    assert guides >= {"front upper link", "rear lower link", "front shock"}
    setups = {c.name for c in catalogue.changes if is_setup(c, guides)}
    lot = {"upper mounts higher", "lower links up", "shocks upright", "shock hoops lower", "longer"}
    assert setups == lot | {"collars on"}
    assert {c.name for c in catalogue.changes if is_setup(c)} == {"longer", "collars on"}


def test_a_longer_wheelbase_makes_the_links_longer(truck: Loaded, catalogue: Catalogue) -> None:
    longer, _ = build(apply(truck.spec, catalogue, {catalogue.position("longer"): 1}), truck.folder)
    old, new = (t.front.suspension.links for t in (truck.truck, longer))
    assert old is not None
    assert new is not None
    assert (new.lengths - old.lengths > 0.006).all()
    behind = (t.rear.suspension.links for t in (truck.truck, longer))
    was, now = (links.chassis for links in behind if links is not None)
    assert now == pytest.approx(was, abs=1e-12)
