"""The referee's table: what it works out, and one real one from the outside."""

from __future__ import annotations

import csv
import json
import math
from pathlib import Path

import pytest
from click.testing import CliRunner

from crossfall.cli import crossfall
from crossfall.engines.held import usual_engine
from crossfall.show.summary import summary_page
from crossfall.study.convergence import (
    AS_FINE,
    Level,
    LevelSeries,
    convergence_rows,
    engines_apart,
)
from crossfall.study.scenario import scenario_of
from crossfall.study.summary import summarize
from crossfall.study.sweep import run_scenario
from crossfall.truck.build import load_truck
from crossfall.truck.errors import InputError


def series(*tips: float, resolves: float = 1e-6, engine: str = "e") -> LevelSeries:
    levels = [
        Level(finer, 1.0 / finer, tip, tip - 0.01, tip + 0.01, "tips")
        for finer, tip in zip(AS_FINE, tips, strict=True)
    ]
    return LevelSeries(engine, "step", tuple(levels), resolves)


@pytest.mark.parametrize("order", [1.0, 2.0])
def test_the_order_of_an_error_that_falls_by_a_power_is_seen(order: float) -> None:
    made = series(*(0.5 + 0.01 / finer**order for finer in AS_FINE))
    assert made.order == pytest.approx(order)
    assert made.change(made.levels[0]) == pytest.approx(0.01 - 0.01 / 4**order)
    assert made.change(made.levels[-1]) == 0.0


@pytest.mark.parametrize(
    "tips", [(0.5, 0.51, 0.5), (0.5, 0.5, 0.5), (0.5, math.nan, 0.5), (0.5, 0.5004, 0.5006)]
)
def test_there_is_no_order_in_what_is_not_resolved(tips: tuple[float, ...]) -> None:
    assert math.isnan(series(*tips, resolves=1e-3).order)


def test_an_interval_holds_the_finest_or_it_does_not() -> None:
    assert series(0.5, 0.505, 0.509).holds
    assert not series(0.5, 0.505, 0.511).holds
    assert not series(math.nan, 0.505, 0.511).holds


def test_a_row_says_what_was_varied_in_its_unit() -> None:
    first, *_ = convergence_rows([series(0.5, 0.51, math.nan)])
    assert first["step_ms"] == 1000.0
    assert first["rate_deg_per_s"] is None
    assert first["trial_deg"] == pytest.approx(math.degrees(0.5))
    assert first["change_from_finest_deg"] is None


def test_two_engines_are_set_beside_each_other() -> None:
    one, other = series(0.5, 0.5, 0.5, engine="a"), series(0.53, 0.53, 0.53, engine="b")
    assert engines_apart([one, one]) is None
    two = engines_apart([one, one, other])
    assert two is not None
    assert two.engines == ("a", "b")
    assert two.apart == pytest.approx(0.03)
    assert (two.low, two.high) == pytest.approx((0.03 - 0.01 * 2**0.5, 0.03 + 0.01 * 2**0.5))
    *rows, last = convergence_rows([one, other])
    assert (last["engine"], last["varied"]) == ("b less a", "engine")
    assert last["engines_apart_deg"] == pytest.approx(math.degrees(0.03))
    assert all(row["engines_apart_deg"] is None and row.keys() == last.keys() for row in rows)


def test_a_scenario_is_asked_like_one_truck(tmp_path: Path) -> None:
    data = {"name": "finer", "method": "convergence", "trial": "quick", "headings_deg": [90.0],
            "fixed": {"grip": 1.5}, "engine": usual_engine()}  # fmt: skip
    asked = scenario_of(load_truck("thistle"), data)
    done = run_scenario(asked, tmp_path, workers=1)
    assert (done.trials, done.done, done.failed) == (1, 1, 0)
    morning = summarize(asked, tmp_path)
    assert (morning.done, morning.total) == (1, 1)
    kinds = [(c.varied, c.finer) for c in morning.convergence]
    assert kinds[: len(AS_FINE)] == [("step", finer) for finer in AS_FINE]
    for line in morning.convergence:
        assert (line.builds, line.held) == (1, 1)
        if line.varied == "step":  # an engine may have no use for more rounds of its solver
            assert (line.change == 0) == (line.finer == AS_FINE[-1])
    (usual,) = morning.headings
    assert usual.lines == 1, "finer trials say the same again"
    assert "Convergence" in summary_page(morning)


def test_a_scenario_of_convergence_needs_a_trial() -> None:
    data = {"name": "finer", "method": "convergence", "trial": "none"}
    with pytest.raises(InputError, match="convergence tries"):
        scenario_of(load_truck("thistle"), data)


def test_the_verb_prints_writes_and_draws_it(tmp_path: Path) -> None:
    table, picture = tmp_path / "t.csv", tmp_path / "p.svg"
    words = [
        "converge",
        "thistle",
        "--quick",
        "--grip",
        "1.5",
        "--engine",
        usual_engine(),
        "--json",
    ]
    words += ["--csv", str(table), "--plot", str(picture)]
    result = CliRunner().invoke(crossfall, words, standalone_mode=False)
    answer = json.loads(result.output)
    rows = answer["trials"]
    varied = dict.fromkeys(row["varied"] for row in rows)
    assert list(varied) in (["step", "rate"], ["step", "solver", "rate"])
    assert len(rows) == len(varied) * len(AS_FINE)
    steps = [row["step_ms"] for row in rows if row["varied"] == "step"]
    assert steps == pytest.approx([steps[0], steps[0] / 2, steps[0] / 4], rel=0.02)
    usual, finest = rows[0], rows[len(AS_FINE) - 1]
    assert finest["change_from_finest_deg"] == 0
    # Each angle has its own interval, so the two differ by less than both together.
    most = sum((r["trial_ci_high_deg"] - r["trial_ci_low_deg"]) / 2 for r in (usual, finest))
    assert abs(usual["change_from_finest_deg"]) <= most
    with table.open() as stream:
        assert [float(r["trial_deg"]) for r in csv.DictReader(stream)] == [
            pytest.approx(r["trial_deg"]) for r in rows
        ]
    assert "How the trial converges: thistle" in picture.read_text()
