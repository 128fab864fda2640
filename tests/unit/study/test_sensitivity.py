"""Sobol indices and Morris screening over a scenario's axes."""

from __future__ import annotations

import json

import numpy as np
import pytest
from click.testing import CliRunner

from crossfall.cli import crossfall
from crossfall.show.indices import draw_sensitivity
from crossfall.statics import rigid
from crossfall.study.scenario import scenario_of
from crossfall.study.sensitivity import _analysed, _drawn, how_answered, sobol_sensitivity
from crossfall.truck.build import build, load_truck
from crossfall.truck.edits import set_values
from crossfall.truck.errors import InputError
from crossfall.verbs.sensitivity import sensitivity_record

TRACK, PACK = "both.track_mm", "part.battery pack.at_mm.z"
AXES = [
    {"key": TRACK, "values": [160.0, 200.0]},
    {"key": PACK, "values": [60.0, 160.0]},
]


def scenario(**more):
    data = {"name": "test", "method": "closed form", "headings_deg": [90.0], "axis": AXES}
    return scenario_of(load_truck("bramble"), {**data, **more})


def test_ishigami() -> None:
    """T. Ishigami and T. Homma, Proc. ISUMA 1990, with a = 7, b = 0.1: the exact indices follow
    from the function's variances, V1 = (1 + b pi^4 / 5)^2 / 2, V2 = a^2 / 8, V13 = 8 b^2 pi^8 /
    225 (formulas from memory, numbers worked)."""
    a, b = 7.0, 0.1
    v1, v2 = 0.5 * (1 + b * np.pi**4 / 5) ** 2, a**2 / 8
    v13 = 8 * b**2 * np.pi**8 / 225
    whole = v1 + v2 + v13
    exact = {"x1": (v1, v1 + v13), "x2": (v2, v2), "x3": (0.0, v13)}
    problem = {"num_vars": 3, "names": list(exact), "bounds": [(-np.pi, np.pi)] * 3}
    x = _drawn(problem, "sobol", 1024, 1)
    y = np.sin(x[:, 0]) + a * np.sin(x[:, 1]) ** 2 + b * x[:, 2] ** 4 * np.sin(x[:, 0])
    found = _analysed(problem, "sobol", x, y, 1)
    assert [i.key for i in found] == ["x1", "x2", "x3"]
    for index in found:
        first, total = (v / whole for v in exact[index.key])
        assert abs(index.first - first) <= index.first_pm + 1e-9
        assert abs(index.total - total) <= index.total_pm + 1e-9


def exact_shares(loaded) -> dict[str, float]:
    """First indices of the closed form on a side slope, by Gauss' rule with 8 x 8 points."""
    nodes, weights = np.polynomial.legendre.leggauss(8)
    weights = weights / 2

    def tip(track: float, height: float) -> float:
        spec = set_values(loaded.spec, {TRACK: track, PACK: height})
        truck = build(spec, loaded.folder)[0]
        return float(np.degrees(rigid.tip_angle(truck, [np.pi / 2])[0]))

    tips = np.array([[tip(180 + 20 * u, 110 + 50 * v) for v in nodes] for u in nodes])
    mean = weights @ tips @ weights
    whole = weights @ (tips - mean) ** 2 @ weights
    return {
        TRACK: float(weights @ (tips @ weights - mean) ** 2 / whole),
        PACK: float(weights @ (weights @ tips - mean) ** 2 / whole),
    }


def test_a_truck_s_indices_are_those_of_quadrature() -> None:
    (found,) = sobol_sensitivity(scenario(), samples=256)
    exact = exact_shares(load_truck("bramble"))
    assert found.answers == 256 * 4
    assert found.lost == 0
    assert [i.key for i in found.axes] == [TRACK, PACK]
    for index in found.axes:
        assert abs(index.first - exact[index.key]) <= index.first_pm
        others = 1 - sum(exact.values()) + exact[index.key]
        assert abs(index.total - others) <= index.total_pm


def test_screening_ranks_alike_and_sees_the_sign() -> None:
    (found,) = sobol_sensitivity(scenario(), "morris", samples=8)
    assert [i.key for i in found.axes] == [TRACK, PACK]
    assert found.axes[0].effect > 0 > found.axes[1].effect
    assert found.axes[0].mu_star == pytest.approx(found.axes[0].effect)


def test_the_compliant_answer_at_the_grip_of_the_scenario() -> None:
    rows = sobol_sensitivity(
        scenario(method="compliant", surface="rock", headings_deg=[0.0, 90.0]), "morris", samples=4
    )
    assert [r.heading for r in rows] == [0.0, 90.0]
    assert rows[0].response == "tip_deg"
    assert rows[1].mean < 35  # the rigid truck tips at 39


@pytest.mark.parametrize(
    ("change", "words"),
    [
        ({"axis": AXES[:1]}, "two or more"),
        ({"method": "tilt trial"}, "closed form or compliant"),
        ({"axis": [*AXES, {"key": "heading_deg", "values": [90.0]}]}, "has no range"),
    ],
)
def test_what_cannot_be_asked_is_refused(change, words) -> None:
    headings = {} if len(change.get("axis", [])) == 3 else {"headings_deg": [90.0]}
    data = {"name": "test", "method": "closed form", "axis": AXES, **headings, **change}
    asked = scenario_of(load_truck("bramble"), data)
    with pytest.raises(InputError, match=words):
        sobol_sensitivity(asked)


@pytest.mark.parametrize("how", ["sobol", "morris"])
def test_a_response_of_one_s_own_is_asked_like_any_other(how) -> None:
    own = {"name": "twice", "is": 'rigid_deg + rigid_deg + 0 * value("both.track_mm")'}
    data = {"name": "test", "method": "closed form", "axis": AXES, "headings_deg": [90.0]}
    asked = scenario_of(load_truck("bramble"), {**data, "response": [own]})
    (one,) = sobol_sensitivity(asked, how, samples=16)
    (mine,) = sobol_sensitivity(asked, how, response="twice", samples=16)
    assert mine.mean == pytest.approx(2 * one.mean)
    assert [a.key for a in mine.axes] == [a.key for a in one.axes]
    if how == "sobol":
        assert mine.axes[0].total == pytest.approx(one.axes[0].total)
    record = sensitivity_record(mine)
    assert record["mean"] == mine.mean
    assert not any(key.endswith("_deg") for key in record["axes"][0])
    with pytest.raises(ValueError, match="twice"):
        sobol_sensitivity(asked, how, response="thrice")


def test_a_response_knows_what_the_scenario_holds_fast() -> None:
    own = [
        {"name": "hand", "is": "goes_at_deg - slope_deg"},
        {"name": "steep", "is": "goes_at_deg + where(slope_deg > 20, 5, 0)"},
    ]
    asked = scenario(method="compliant", fixed={"slope_deg": 25.0}, response=own)
    names = ("goes_at_deg", "hand", "steep")
    means = [sobol_sensitivity(asked, "morris", response=n, samples=4)[0].mean for n in names]
    assert means[1] == pytest.approx(means[0] - 25)
    assert means[2] == pytest.approx(means[0] + 5)


@pytest.mark.parametrize("method", ["closed form", "compliant"])
@pytest.mark.parametrize(
    ("response", "by"),
    [
        ("rigid_deg", "as a rigid block"),
        ("tip_deg", "on springs and tyres"),
        ("twice", "as a rigid block"),
        ("lost", "on springs and tyres"),
    ],
)
def test_the_method_named_is_the_one_that_answered(method, response, by) -> None:
    own = [
        {"name": "twice", "is": 'rigid_deg + rigid_deg + 0 * value("both.track_mm")'},
        {"name": "lost", "is": "rigid_deg - tip_deg"},
    ]
    assert how_answered(scenario(method=method, response=own), response).endswith(by)


@pytest.mark.parametrize(("how", "samples"), [("sobol", 100), ("sobol", 8), ("morris", 2)])
def test_samples_that_cannot_be_are_refused(how, samples) -> None:
    with pytest.raises(ValueError, match="samples is"):
        sobol_sensitivity(scenario(), how, samples=samples)


def test_no_share_is_drawn_beyond_the_whole() -> None:
    asked = scenario()
    made = draw_sensitivity(
        "x", sobol_sensitivity(asked, samples=16), how_answered(asked, "rigid_deg")
    )
    for axes in made.axes:
        assert axes.get_xlim()[0] == 0.0
        assert axes.get_xlim()[1] <= 1.0
        ends = np.concatenate([p.vertices for c in axes.collections for p in c.get_paths()])
        assert 0.0 <= ends[:, 0].min() <= ends[:, 0].max() <= 1.0
    assert "bramble" in made.texts[1].get_text()


def test_the_verb_says_it_in_a_table_in_json_and_in_a_picture(tmp_path) -> None:
    picture = tmp_path / "axes.svg"
    words = ["sensitivity", "track-against-approach", "--samples", "16"]
    shown = CliRunner().invoke(crossfall, [*words, "--plot", str(picture)])
    assert shown.exit_code == 0
    assert "by itself" in shown.stdout
    assert "bramble on rock, grip 0.9, as a rigid block" in shown.stdout
    assert picture.stat().st_size > 1000
    told = json.loads(CliRunner().invoke(crossfall, [*words, "--json"]).stdout)
    assert told["response"] == "rigid_deg"
    assert {a["key"] for a in told["headings"][0]["axes"]} == {"both.track_mm", "heading_deg"}
    again = json.loads(CliRunner().invoke(crossfall, [*words, "--json"]).stdout)
    assert again == told
    refused = CliRunner().invoke(
        crossfall, ["sensitivity", "track-against-approach", "--samples", "9"]
    )
    assert refused.exit_code == 2
