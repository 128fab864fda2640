"""Coverage of the critical slope's interval over simulated searches, at full size. Run as

python tests/benchmarks/bench_critical.py [REPEATS]
"""

from __future__ import annotations

import sys
from pathlib import Path

import numpy as np

ROOT = Path(__file__).resolve().parents[2]
sys.path[:0] = [str(ROOT / "sim")]

from crossfall.study.critical import fit_logistic, next_angle  # noqa: E402

LOW, HIGH = 10.0, 70.0
LOOKS = (20, 30, 40, 60)


def search(seed: int, spread: float) -> list[tuple[bool, float]]:
    """Whether the interval holds the truth, and its width, after each number of trials."""
    rng = np.random.default_rng(seed)
    truth = rng.uniform(25, 45)
    angles: list[float] = []
    failed: list[bool] = []
    out = []
    for _ in range(max(LOOKS)):
        angles.append(next_angle(angles, failed, LOW, HIGH))
        failed.append(bool(rng.random() < 1 / (1 + np.exp(-(angles[-1] - truth) / spread))))
        if len(angles) in LOOKS:
            fit = fit_logistic(angles, failed)
            out.append((fit.low <= truth <= fit.high, fit.high - fit.low))
    return out


def main() -> None:
    """Coverage and median width for sharp, middling and gradual slopes."""
    repeats = int(sys.argv[1]) if len(sys.argv) > 1 else 1000
    for spread in (0.2, 1.0, 4.0):
        found = np.array([search(seed, spread) for seed in range(repeats)])
        for i, trials in enumerate(LOOKS):
            covered, width = found[:, i, 0].mean(), np.median(found[:, i, 1])
            print(
                f"spread {spread:g}, {trials} trials: {100 * covered:.1f} % cover, "
                f"width {width:.2f}",
                flush=True,
            )


if __name__ == "__main__":
    main()
