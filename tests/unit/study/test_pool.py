"""The pool: what it delivers when trials and children misbehave."""

from __future__ import annotations

import json
import os
import signal
import time

import pytest

from batches import QUICK, burning, misbehaving
from crossfall.study.pool import PoolError, outcomes
from crossfall.study.task import Batch, TrialOutcome, make_batch


def deliver(batch: Batch, workers: int = 2) -> list[TrialOutcome]:
    arrived = [o for some in outcomes(batch, batch.tasks(), workers, QUICK) for o in some]
    return sorted(arrived, key=lambda o: o.place)


def test_every_trial_is_delivered_once_with_its_rows() -> None:
    arrived = deliver(misbehaving(300, {}))
    assert [o.place for o in arrived] == list(range(300))
    assert [json.loads(o.rows)[0]["answer"] for o in arrived] == [x * x for x in range(300)]


def test_the_answers_do_not_depend_on_the_number_of_children() -> None:
    one, three = (deliver(burning(60, 0.1), n) for n in (1, 3))
    assert [o.rows for o in one] == [o.rows for o in three]


def test_bad_trials_are_recorded_with_their_cause_and_the_others_are_done() -> None:
    bad = {3: "raise", 7: "die", 11: "segv", 12: "leave", 20: "exit", 25: "hang", 33: "unplain"}
    arrived = deliver(misbehaving(60, bad))
    assert [o.place for o in arrived] == list(range(60))
    causes = {o.place: o.cause for o in arrived if o.cause}
    assert causes == {
        3: "ValueError: no answer for 3",
        7: "the worker died of SIGKILL, 3 times",
        11: "the worker died of SIGSEGV, 3 times",
        12: "the worker left with status 7, 3 times",
        20: "SystemExit: enough",
        25: "took longer than 1.5 s",
        33: "TypeError: column answer holds a list, not a plain value",
    }
    details = {o.place: o.detail for o in arrived}
    assert "trial_methods.py" in details[3]
    assert "in mixed" in details[11]


def test_what_an_engine_prints_does_not_reach_the_answers() -> None:
    arrived = deliver(misbehaving(20, dict.fromkeys(range(0, 20, 2), "loud")))
    assert [json.loads(o.rows)[0]["answer"] for o in arrived] == [x * x for x in range(20)]


def test_a_killed_child_costs_nothing_but_time() -> None:
    batch = burning(120, 5.0)
    stream = outcomes(batch, batch.tasks(), 2, QUICK)
    arrived: list[TrialOutcome] = []
    killed = 0
    for some in stream:
        arrived += some
        children = child_ids()
        if some and killed < 8 and children:
            os.kill(children[killed % len(children)], signal.SIGKILL)
            killed += 1
    assert killed == 8
    assert sorted(o.place for o in arrived) == list(range(120))
    assert not any(o.cause for o in arrived)


def test_a_stopped_child_counts_as_hung_and_is_replaced() -> None:
    batch = burning(30, 20.0)
    arrived: list[TrialOutcome] = []
    stopped = 0
    for some in outcomes(batch, batch.tasks(), 1, QUICK):
        arrived += some
        if some and not stopped:
            (stopped,) = child_ids()
            os.kill(stopped, signal.SIGSTOP)
    assert sorted(o.place for o in arrived) == list(range(30))
    assert [o.cause for o in arrived if o.cause] == ["took longer than 1.5 s"]


def test_closing_the_pool_ends_its_children() -> None:
    batch = burning(1000, 5.0)
    stream = outcomes(batch, batch.tasks(), 2, QUICK)
    while not next(stream):
        pass
    assert len(child_ids()) == 2
    stream.close()
    assert child_ids() == []


def test_children_do_not_hear_the_terminals_interrupt() -> None:
    batch = burning(1000, 5.0)
    stream = outcomes(batch, batch.tasks(), 1, QUICK)
    while not next(stream):
        pass
    (child,) = child_ids()
    assert os.getpgid(child) != os.getpgid(0)
    stream.close()


def test_a_method_that_cannot_be_imported_is_said_at_once() -> None:
    batch = make_batch("none", "no_such_module:f", {}, lambda: iter([{"x": 1}]), 1)
    with pytest.raises(PoolError, match=r"cannot start.*no_such_module"):
        deliver(batch)


def test_trials_see_one_thread_and_the_plain_allocator(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("MALLOC_TRIM_THRESHOLD_", "65536")
    batch = make_batch("env", "trial_methods:environment", {}, lambda: iter([{"x": 1}]), 1)
    (row,) = json.loads(deliver(batch)[0].rows)
    assert row == {"MALLOC_TRIM_THRESHOLD_": "", "OMP_NUM_THREADS": "1"}


def test_payloads_larger_than_a_pipe_get_through() -> None:
    payloads = [{"x": x, "ballast": "b" * 200_000} for x in range(6)]
    batch = make_batch("big", "trial_methods:mixed", {"bad": {}}, lambda: iter(payloads), 6)
    assert [json.loads(o.rows)[0]["answer"] for o in deliver(batch)] == [0, 1, 4, 9, 16, 25]


def child_ids() -> list[int]:
    """Live children of this process, by the system's own list."""
    me, found = os.getpid(), []
    time.sleep(0.001)
    for name in os.listdir("/proc"):
        if name.isdigit():
            try:
                with open(f"/proc/{name}/stat") as stat:
                    state, parent = stat.read().rpartition(")")[2].split()[:2]
            except OSError:
                continue
            if int(parent) == me and state != "Z":
                found.append(int(name))
    return found


def test_a_child_is_told_of_its_company_before_its_trials() -> None:
    """Each block of the plan in one go, whichever of its trials are still to be done."""
    payloads = [{"x": x} for x in range(10)]
    batch = make_batch("c", "trial_methods:company", {}, lambda: iter(payloads), 10, together=4)
    left = [t for t in batch.tasks() if t.place not in (1, 2, 6)]
    found = [o for some in outcomes(batch, iter(left), 2, QUICK) for o in some]
    told = {o.place: json.loads(o.rows)[0]["told"] for o in found}
    blocks = {0: "0 1 2 3", 1: "4 5 6 7", 2: "8 9"}
    assert told == {place: blocks[place // 4] for place in (0, 3, 4, 5, 7, 8, 9)}


def test_what_goes_wrong_ahead_is_left_to_each_trial() -> None:
    batch = make_batch(
        "c", "trial_methods:company", {"fail": True}, lambda: iter([{"x": 1}, {"x": 2}]), 2,
        together=2,
    )  # fmt: skip
    assert [json.loads(o.rows)[0]["told"] for o in deliver(batch)] == ["", ""]
