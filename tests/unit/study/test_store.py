"""The store: what it remembers, what it refuses, and what its tables look like."""

from __future__ import annotations

import csv
import json
import platform
from pathlib import Path

import pyarrow.parquet as pq
import pytest

from batches import burning, misbehaving, table_rows
from crossfall.study.export import export
from crossfall.study.runner import RunProgress, run_batch
from crossfall.study.store import Store, StoreError, is_running, status
from crossfall.study.task import Batch, Task, TrialOutcome, canonical, make_batch
from crossfall.truck.errors import InputError


def fill(path: Path, batch: Batch, order: list[int]) -> None:
    """Put made-up outcomes in, in the order given."""
    tasks = {t.place: t for t in batch.tasks()}
    with Store(path) as store:
        store.open_batch(batch)
        for place in order:
            store.add(batch, [(tasks[place], outcome(place))])


def outcome(place: int, cause: str = "") -> TrialOutcome:
    text = "" if cause else json.dumps([{"answer": place / 3, "whole": place, "ok": place > 2}])
    return TrialOutcome(place, text, cause, "", 0.01 * place)


def table(path: Path, name: str = "table.parquet") -> bytes:
    export(path, path.parent / name)
    return (path.parent / name).read_bytes()


def test_the_address_is_of_everything_that_decides_the_rows() -> None:
    def key(**changes: object) -> str:
        given = {"common": {"a": 1}, "payload": {"x": 1.0, "seed": 3}, "v": {"code": "1"}}
        given.update(changes)  # type: ignore[arg-type]
        batch = make_batch(
            "n",
            "m:f",
            given["common"],
            lambda: iter([given["payload"]]),
            1,
            spec=str(given.get("spec", "")),
            versions=given["v"],
        )
        return next(batch.tasks()).key

    others = [
        key(common={"a": 2}),
        key(payload={"x": 1.0000000000000002, "seed": 3}),
        key(payload={"x": 1.0, "seed": 4}),
        key(v={"code": "2"}),
        key(spec="other"),
    ]
    assert len({key(), *others}) == 6
    assert key() == key(payload={"seed": 3, "x": 1.0})


def test_canonical_text_does_not_depend_on_the_order_of_keys() -> None:
    assert canonical({"b": [1, 0.1], "a": None}) == canonical({"a": None, "b": [1, 0.1]})


def test_the_table_has_the_same_bytes_in_whatever_order_trials_were_done(tmp_path: Path) -> None:
    batch, tables = burning(50), []
    for name, order in (("a", list(range(50))), ("b", list(range(49, -1, -1)))):
        path = tmp_path / name / "trials.db"
        fill(path, batch, order)
        tables.append((table(path), table(path, "table.csv")))
    assert tables[0] == tables[1]


def test_every_line_says_what_it_came_from(tmp_path: Path) -> None:
    path = tmp_path / "trials.db"
    batch = burning(10)
    fill(path, batch, list(range(10)))
    table(path)
    lines = pq.read_table(tmp_path / "table.parquet").to_pylist()
    assert [line["place"] for line in lines] == list(range(10))
    for line, task in zip(lines, batch.tasks(), strict=True):
        assert line["scenario"] == "burn"
        assert line["spec"] == "s" * 64
        assert line["seed"] == task.payload["seed"]
        assert json.loads(line["versions"]) == {"python": platform.python_version()}
        assert line["address"] == task.key
        assert line["x"] == line["whole"] == task.place
        assert line["answer"] == task.place / 3
        assert line["cause"] is None
    assert not {"took", "finished"} & set(lines[0])


def test_both_tables_hold_the_same_values(tmp_path: Path) -> None:
    path = tmp_path / "trials.db"
    fill(path, burning(12), list(range(12)))
    export(path, tmp_path / "t.parquet")
    export(path, tmp_path / "t.csv")
    parquet = pq.read_table(tmp_path / "t.parquet").to_pylist()
    with (tmp_path / "t.csv").open(newline="") as stream:
        plain = list(csv.DictReader(stream))
    assert [float(r["answer"]) for r in plain] == [r["answer"] for r in parquet]
    assert [r["ok"] for r in plain] == ["true" if r["ok"] else "false" for r in parquet]


def test_columns_that_differ_between_trials_are_brought_together(tmp_path: Path) -> None:
    path = tmp_path / "trials.db"
    batch = burning(3)
    texts = ['[{"a":1}]', '[{"a":2.5,"b":"x"},{"a":3}]', '[{"c":null,"b":4}]']
    with Store(path) as store:
        store.open_batch(batch)
        for task, text in zip(batch.tasks(), texts, strict=True):
            store.add(batch, [(task, TrialOutcome(task.place, text, "", "", 0.0))])
    export(path, tmp_path / "t.parquet")
    lines = pq.read_table(tmp_path / "t.parquet").to_pylist()
    assert [(r["a"], r["b"], r["c"]) for r in lines] == [
        (1.0, None, None),
        (2.5, "x", None),
        (3.0, None, None),
        (None, "4", None),
    ]
    assert len(table_rows(path)) == 4


def test_failed_trials_stand_in_the_table_with_their_cause(tmp_path: Path) -> None:
    path = tmp_path / "trials.db"
    batch = burning(4)
    with Store(path) as store:
        store.open_batch(batch)
        pairs = [(t, outcome(t.place, "it broke" if t.place == 2 else "")) for t in batch.tasks()]
        store.add(batch, pairs)
    table(path)
    lines = pq.read_table(tmp_path / "table.parquet").to_pylist()
    assert [line["cause"] for line in lines] == [None, None, "it broke", None]
    assert lines[2]["answer"] is None
    assert lines[2]["x"] == 2


def test_a_second_writer_is_refused_while_the_first_is_at_work(tmp_path: Path) -> None:
    path = tmp_path / "trials.db"
    with Store(path):
        assert is_running(path)
        with pytest.raises(StoreError, match="another run"):
            Store(path)
    assert not is_running(path)
    Store(path).close()


def test_it_can_be_read_while_it_is_written(tmp_path: Path) -> None:
    path = tmp_path / "trials.db"
    batch = burning(20)
    tasks = list(batch.tasks())
    with Store(path) as store:
        store.open_batch(batch)
        for place in range(10):
            store.add(batch, [(tasks[place], outcome(place, "broke" if place < 3 else ""))])
            seen = status(path)
            assert seen.done + seen.failed == place + 1
            assert seen.running
        assert (seen.total, seen.done, seen.failed) == (20, 7, 3)
        assert seen.causes == (("broke", 3),)
        assert seen.rate > 0
        assert seen.seconds_left > 0
    after = status(path)
    assert not after.running
    assert after.done == 7


@pytest.mark.parametrize("content", [b"not a store at all, just text " * 50, b"", None])
def test_a_file_that_is_no_store_is_refused_in_one_sentence(
    tmp_path: Path, content: bytes | None
) -> None:
    path = tmp_path / "trials.db"
    if content is not None:
        path.write_bytes(content)
    with pytest.raises(InputError) as caught:
        status(path)
    assert len(caught.value.problems) == 1
    assert "Traceback" not in str(caught.value)


def test_another_format_is_refused(tmp_path: Path) -> None:
    import sqlite3

    path = tmp_path / "trials.db"
    Store(path).close()
    with sqlite3.connect(path) as db:
        db.execute("PRAGMA user_version = 99")
    with pytest.raises(InputError, match="format 99"):
        Store(path)


def test_a_trial_once_done_is_never_done_again(tmp_path: Path) -> None:
    path, diary = tmp_path / "trials.db", tmp_path / "diary"
    first = run_batch(burning(30, 0.1, diary), path, workers=2)
    assert (first.complete, first.progress.done, first.progress.known) == (True, 30, 0)
    again = run_batch(burning(30, 0.1, diary), path, workers=2)
    assert (again.progress.done, again.progress.known) == (0, 30)
    longer = run_batch(burning(45, 0.1, diary), path, workers=2)
    assert (longer.progress.done, longer.progress.known) == (15, 30)
    assert sorted(map(int, diary.read_text().split())) == list(range(45))


def test_progress_counts_and_failures_are_told(tmp_path: Path) -> None:
    seen: list[RunProgress] = []
    batch = misbehaving(40, {5: "raise", 9: "raise"})
    result = run_batch(batch, tmp_path / "trials.db", workers=2, watch=seen.append)
    assert result.complete
    assert seen[-1].finished == 40
    assert seen[-1].failed == 2
    assert seen[-1].last_cause.startswith("ValueError")
    assert max(p.rate for p in seen) > 0
    again = run_batch(batch, tmp_path / "trials.db", workers=2)
    assert (again.progress.known, again.progress.known_failed) == (40, 2)
    retried = run_batch(batch, tmp_path / "trials.db", workers=2, retry_failed=True)
    assert (retried.progress.known, retried.progress.failed) == (38, 2)


def test_a_stopped_run_keeps_what_it_has_and_goes_on(tmp_path: Path) -> None:
    path, other = tmp_path / "a" / "trials.db", tmp_path / "b" / "trials.db"
    batch = burning(200, 2.0)
    part: list[RunProgress] = []
    result = run_batch(batch, path, workers=2, watch=part.append, stop=lambda: part[-1].done > 20)
    assert not result.complete
    assert 20 < status(path).done < 200
    rest = run_batch(batch, path, workers=2)
    assert rest.progress.known == status(path).total - rest.progress.done > 20
    run_batch(batch, other, workers=2)
    assert table(path) == table(other)


def test_the_same_trial_asked_for_twice_stands_twice_in_the_table(tmp_path: Path) -> None:
    payloads = [{"x": x % 5, "seed": 1} for x in range(10)]
    batch = make_batch("twice", "trial_methods:mixed", {"bad": {}}, lambda: iter(payloads), 10)
    result = run_batch(batch, tmp_path / "trials.db", workers=1)
    assert result.complete
    assert status(tmp_path / "trials.db").done == 10
    assert [r["answer"] for r in table_rows(tmp_path / "trials.db")] == [0, 1, 4, 9, 16] * 2


def test_tasks_are_addressed_by_content_not_place() -> None:
    batch = make_batch("p", "m:f", {}, lambda: iter([{"x": 1}, {"x": 2}, {"x": 1}]), 3)
    a, b, c = batch.tasks()
    assert a.key == c.key != b.key
    assert (a, c) == (Task(0, a.key, {"x": 1}), Task(2, a.key, {"x": 1}))
