"""What the runner costs and what it survives, at full size. Run as

    python tests/benchmarks/bench_runner.py [PART ...]

with PART one of overhead, machinery, kills, memory, disk, allocator; all if none is named.

Speeds are ratios against bare trials and a spin probe taken in the same run, so that the
machine's own speed cancels; run it on an otherwise idle machine.
"""

from __future__ import annotations

import os
import resource
import sqlite3
import subprocess
import sys
import tempfile
import time
from contextlib import closing
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path[:0] = [str(ROOT / "tests"), str(ROOT / "sim")]

from batches import burning, working  # noqa: E402
from crossfall.study.export import export  # noqa: E402
from crossfall.study.pool import child_environment  # noqa: E402
from crossfall.study.runner import RunProgress, run_batch  # noqa: E402
from crossfall.study.task import find_method  # noqa: E402
from shooting import shoot, start, times_begun  # noqa: E402

TRIALS, ROUNDS = 2000, 60_000

SPIN = "import time\nn=0\nb=time.perf_counter()\nwhile n<{n}: n+=1\nprint(time.perf_counter()-b)"
BARE = """
import sys, time
sys.path[:0] = {path!r}
from batches import working
from trial_methods import work
batch = working({trials}, {rounds})
payloads = [t.payload for t in batch.tasks()][{share}::{of}]
b = time.perf_counter()
for p in payloads:
    work(batch.common, p)
print(time.perf_counter() - b)
"""


def at_once(programs: list[str]) -> float:
    """s, the longest any of these programs says it took, all running together."""
    env = child_environment()
    running = [
        subprocess.Popen([sys.executable, "-c", p], stdout=subprocess.PIPE, env=env)
        for p in programs
    ]
    return max(float(p.communicate()[0]) for p in running)


def spin_speed_up() -> float:
    """What two processes that only count reach on this machine, now."""
    program = SPIN.format(n=30_000_000)
    return 2 * at_once([program]) / at_once([program] * 2)


def bare(of: int) -> float:
    """s for the trials in `of` plain loops at once."""
    path = sys.path[:2]
    programs = [
        BARE.format(path=path, trials=TRIALS, rounds=ROUNDS, share=i, of=of) for i in range(of)
    ]
    return at_once(programs)


def cpu() -> float:
    """s of processor used by this process and its ended children."""
    return sum(
        u.ru_utime + u.ru_stime
        for u in map(resource.getrusage, (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN))
    )


def at_work(store: Path) -> float:
    """s that trials took on the workers' clocks: unlike a speed-up, other load does not blur it."""
    with closing(sqlite3.connect(store)) as db:
        return float(db.execute("SELECT total(took) FROM trial").fetchone()[0])


def overhead() -> None:
    """The runner against bare loops in as many processes, and its speed-up against the probe."""
    probes = [spin_speed_up()]
    before = cpu()
    one = bare(1)
    bare_cpu = cpu() - before
    probes.append(spin_speed_up())
    two = bare(2)
    with tempfile.TemporaryDirectory() as folder:
        before, began = cpu(), time.perf_counter()
        run_batch(working(TRIALS, ROUNDS), Path(folder) / "trials.db", workers=2)
        took, used = time.perf_counter() - began, cpu() - before
        busy = at_work(Path(folder) / "trials.db") / (2 * took)
    two = (two + bare(2)) / 2
    probes.append(spin_speed_up())
    probe = sum(probes) / len(probes)
    print(f"bare trials: {1000 * one / TRIALS:.1f} ms each; two loops {two:.2f} s")
    print(f"runner, 2 workers, all included: {took:.2f} s, overhead {100 * (took / two - 1):.2f} %")
    print(f"workers at a trial {100 * busy:.1f} % of the time, start and end included")
    print(f"processor: bare {bare_cpu:.2f} s, runner {used:.2f} s: {used / bare_cpu - 1:+.2%}")
    print(f"speed-up {one / took:.3f}; spin probes {[round(p, 3) for p in probes]}")
    print(f"speed-up reached: {100 * one / took / probe:.1f} % of the probe")


def machinery() -> None:
    """Processor time of everything but the trials: a batch of trials that do nothing."""
    with tempfile.TemporaryDirectory() as folder:
        before, own = cpu(), time.process_time()
        run_batch(working(TRIALS, 0), Path(folder) / "trials.db", workers=2)
        all_in, own = cpu() - before, time.process_time() - own
    each = 1000 * all_in / TRIALS
    print(f"{TRIALS} empty trials: {all_in:.2f} s of processor, {own:.2f} s of it the runner's")
    print(f"{each:.3f} ms a trial, start-up of the workers included: {each / 0.5:.2f} % of 50 ms")


def kills() -> None:
    """50 random kill -9 of runner, worker or both during 2,000 trials."""
    count, ms = 2000, 25.0
    with tempfile.TemporaryDirectory() as folder:
        store = Path(folder) / "shot" / "trials.db"
        store.parent.mkdir()
        diary = store.parent / "diary"
        made = shoot(store, count, ms, 50, longest=1.6, seed=11)
        assert start(store, count, ms, diary).wait() == 0
        begun = times_begun(diary)
        calm = Path(folder) / "calm" / "trials.db"
        run_batch(burning(count, ms, diary), calm, workers=2)
        for path in (store, calm):
            export(path, path.parent / "table.parquet")
            export(path, path.parent / "table.csv")
        same = all(
            (store.parent / n).read_bytes() == (calm.parent / n).read_bytes()
            for n in ("table.parquet", "table.csv")
        )
        print(f"{made} kills; tables the same to the byte: {same}")
        print(
            f"trials begun more than once: {sum(begun.values()) - count}, all in flight at a kill"
        )
        assert same


def memory() -> None:
    """Resident memory of the runner from trial 1,000 to 10,000."""
    page, seen = os.sysconf("SC_PAGE_SIZE"), {}

    def watch(progress: RunProgress) -> None:
        with open("/proc/self/statm") as statm:
            seen[progress.finished] = int(statm.read().split()[1]) * page / 1e6

    with tempfile.TemporaryDirectory() as folder:
        run_batch(working(10_000, 2_000), Path(folder) / "trials.db", workers=2, watch=watch)
    first = min(n for n in seen if n >= 1000)
    print(f"runner: {seen[first]:.2f} MB at {first}, {seen[10_000]:.2f} MB at 10,000")
    print(f"growth {100 * (seen[10_000] / seen[first] - 1):.2f} %")


def disk() -> None:
    """A file system that really runs full, where one can be mounted."""
    with tempfile.TemporaryDirectory() as folder:
        small = Path(folder) / "small"
        small.mkdir()
        mount = ["mount", "-t", "tmpfs", "-o", "size=700k", "tmpfs", str(small)]
        if subprocess.run(mount, capture_output=True).returncode:
            print("disk: not run, for this user may not mount a small file system")
            return
        try:
            runner = start(small / "trials.db", 3000, 0.1)
            status = runner.wait()
            said = runner.stderr.read().decode() if runner.stderr else ""
            print(f"full: status {status}, said: {said.strip()}")
            again = start(small / "trials.db", 3000, 0.1)
            print(f"still full: status {again.wait()}")
            subprocess.run(["mount", "-o", "remount,size=50m", str(small)], check=True)
            print(f"with room again: status {start(small / 'trials.db', 3000, 0.1).wait()}")
        finally:
            subprocess.run(["umount", str(small)], check=True)


TRIALS_OF_TRUCK = """
import math, time
from crossfall.trials.tilt import tilt_trial
from crossfall.truck.build import load_truck
truck = load_truck("bramble").truck
tilt_trial(truck, math.pi / 2, grip=0.9)
b = time.process_time()
for _ in range(4):
    tilt_trial(truck, math.pi / 2, grip=0.9)
print((time.process_time() - b) / 4)
"""


def allocator() -> None:
    """A tilt trial with the allocator setting that cluster launchers add, and without."""
    program = [sys.executable, "-c", TRIALS_OF_TRUCK]
    plain = child_environment()
    times = {}
    for name, env in (
        ("without", plain),
        ("with MALLOC_TRIM_THRESHOLD_=65536", {**plain, "MALLOC_TRIM_THRESHOLD_": "65536"}),
    ):
        done = subprocess.run(program, env=env, capture_output=True, text=True, check=True)
        times[name] = float(done.stdout)
        print(f"{name}: {1000 * times[name]:.0f} ms of processor a trial")


def main() -> None:
    """Run what is named, or all."""
    every = (overhead, machinery, kills, memory, disk, allocator)
    parts = {part.__name__: part for part in every}
    assert find_method("trial_methods:work")
    for name in sys.argv[1:] or parts:
        print(f"--- {name}", flush=True)
        parts[name]()


if __name__ == "__main__":
    main()
