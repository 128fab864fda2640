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
from crossfall.study.convergence import AS_FINE, Level, LevelSeries, convergence_rows


def series(*tips: float, resolves: float = 1e-6) -> LevelSeries:
    levels = [
        Level(finer, 1.0 / finer, tip, tip - 0.01, tip + 0.01, "tips")
        for finer, tip in zip(AS_FINE, tips, strict=True)
    ]
    return LevelSeries("e", "step", tuple(levels), resolves)


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
