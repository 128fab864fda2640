"""Closed-form sweeps: a million builds in a second or two.

All that is said of a build is twelve numbers: mass, the moments of mass, tip lines, axle lines,
tracks, and how turned wheels stand; and the grip of each surface asked for. In nearly every key of
a truck file these are affine, and smooth in the others (links grow with the wheelbase), so that
they are known everywhere as polynomials through a few builds. That is checked against real builds
in between, at the ends and in the corners and, where it does not hold or one is no truck, every
build is made instead.
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.polynomial.chebyshev import chebvander

from crossfall.answers.conditions import choose_grip
from crossfall.statics import rigid
from crossfall.study.design import Axis, columns, points
from crossfall.study.draws import drawn_truck
from crossfall.study.scenario import Scenario
from crossfall.study.scenario_file import CONDITIONS, WORDS, given_values
from crossfall.truck.build import build
from crossfall.truck.edits import set_values
from crossfall.truck.errors import InputError
from crossfall.truck.massprops import whole
from crossfall.truck.model import Array, Truck

_ALIKE = 1e-9  # relative agreement with real builds that the corners must give
CHECKS = 7  # real builds it is checked against
_NODES = (2, 4, 7, 11)  # builds along an axis tried in turn until they are enough
MOST_NODES = 1000  # builds made to know the rest by
MOST_CORNERS = 64  # of the box that are built too
SIZES = (
    *("mass", "mx", "my", "mz", "half_front", "half_rear", "x_front", "x_rear"),
    *("front_track", "rear_track"),
    *("turned_back", "turned_in"),
)

_Table = dict[str, Any]


def sizes(truck: Truck) -> Array:
    """(12,) the numbers of SIZES: kg, kg m and m.

    Source: derived here from what `statics.rigid` asks of a truck.
    """
    _, (back, inwards) = truck.front.steered
    body = whole(truck)
    front, rear = (rigid.tip_line(a.track, a.tyre.contact_half_width) for a in truck.axles)
    axles = (truck.front.x, truck.rear.x, truck.front.track, truck.rear.track)
    cg = body.mass * body.cg
    return np.array([body.mass, *cg, front, rear, *axles, back, inwards])


def _surfaces(scenario: Scenario) -> list[str | None]:
    """Surfaces whose grip is asked for, none where one number is given."""
    if given_values(scenario.spec, "grip"):
        return []
    return list(dict.fromkeys(given_values(scenario.spec, "surface") or [scenario.spec.surface]))


def _numbers_of(scenario: Scenario, truck: Truck) -> Array:
    """(12 + S,) the sizes of a build, and its likely grip on each surface asked for."""
    grips = [choose_grip(truck, name).likely for name in _surfaces(scenario)]
    return np.array([*sizes(truck), *grips])


def block_table(
    scenario: Scenario,
    known: KnownSizes | None,
    some: slice,
    stop: Callable[[], bool] = lambda: False,
) -> _Table | None:
    """The lines of some points; None where `stop` said so on the way. Columns in mm, g and deg.

    known: as `known_sizes` has them, so that they are found once. slide_deg = atan(grip), on
    brakes. front_share = (x - x_rear) / (x_front - x_rear).
    Source: `statics.rigid` for tips; Coulomb friction for slides; moments for the front share.
    """
    if known is None:
        return _by_builds(scenario, some, stop)
    values = columns(scenario.axes, scenario.design, scenario.spec.seed, some)
    keys = [a.key for a in scenario.axes]
    sized = known.at([np.zeros(len(v)) if v.dtype.kind == "U" else v for v in values])
    return _table(scenario, some, dict(zip(keys, values, strict=True)), sized)


@dataclass(frozen=True)
class KnownSizes:
    """Sizes and grips over the box low to high (k,) as a tensor (m_1, ..., m_k, 12 + S) of
    Chebyshev terms.

    Source: L. N. Trefethen, Approximation Theory and Approximation Practice (SIAM 2013) (from
    memory).
    """

    low: Array
    high: Array
    terms: Array

    def at(self, values: Sequence[Array]) -> Array:
        """(12 + S, n) sizes and grips at n points, one (n,) array an axis."""
        n = len(values[0]) if values else 1
        found = self.terms.reshape(1, -1)
        for v, low, high, m in zip(values, self.low, self.high, self.terms.shape, strict=False):
            basis = chebvander((2 * v - low - high) / (high - low), m - 1)
            if len(found) == 1:
                found = basis @ found.reshape(m, -1)
            else:
                found = np.einsum("nm,nmr->nr", basis, found.reshape(n, m, -1))
        return np.ascontiguousarray(np.broadcast_to(found, (n, self.terms.shape[-1])).T)


def known_sizes(scenario: Scenario) -> KnownSizes | None:
    """Sizes over the whole design from a few builds; None where that would not be right.

    Interpolation at Chebyshev nodes cos(pi (i + 1/2) / m), held to real builds in between, at the
    ends of each axis and, of a few axes, in the corners.
    Source: L. N. Trefethen, Approximation Theory and Approximation Practice (SIAM 2013) (from
    memory).
    """
    ranged = [a.key in WORDS or _numbers(a.values) for a in scenario.axes]
    if scenario.spec.tolerances or not all(ranged):
        return None
    sides = [(0.0,) if a.key in WORDS else a.values for a in scenario.axes]
    low = np.array([min(s) for s in sides], np.float64)
    high = np.array([max(s) for s in sides], np.float64)
    high = np.where(high > low, high, low + 1.0)
    try:
        counts = [_nodes_needed(scenario, low, high, i) for i in range(len(low))]
        if None in counts or math.prod(c or 1 for c in counts) > MOST_NODES:
            return None
        known = _through(scenario, low, high, [c or 1 for c in counts])
        between = np.random.default_rng(0).random((CHECKS, len(low)))
        for unit in (*between, *_corners(scenario)):
            if not _alike(known, scenario, low + unit * (high - low)):
                return None
    except InputError:
        return None  # some build is no truck: then each has to be asked
    return known


def _corners(scenario: Scenario) -> Iterator[Array]:
    """Corners (k,) of the unit box, 0 along axes that do not shape the build or hold one value;
    none where they are many."""
    ends = [(0.0, 1.0) if _shapes(a) and len(set(a.values)) > 1 else (0.0,) for a in scenario.axes]
    if math.prod(map(len, ends)) <= MOST_CORNERS:
        yield from map(np.array, itertools.product(*ends))


def _shapes(axis: Axis) -> bool:
    return axis.key not in (*CONDITIONS, *WORDS)


def _nodes_needed(scenario: Scenario, low: Array, high: Array, axis: int) -> int | None:
    """How many builds along one axis pin the sizes down, the others in the middle."""
    if not _shapes(scenario.axes[axis]):
        return 1
    middle = (low + high) / 2
    checked = (0.0, 0.13, 0.61, 1.0) if len(set(scenario.axes[axis].values)) > 1 else (0.0,)
    begin, end = (np.where(np.arange(len(low)) == axis, e, middle) for e in (low, high))
    for count in _NODES:
        counts = [count if i == axis else 1 for i in range(len(low))]
        known = _through(scenario, begin, end, counts)
        if all(_alike(known, scenario, begin + f * (end - begin)) for f in checked):
            return count
    return None


def _through(scenario: Scenario, low: Array, high: Array, counts: Sequence[int]) -> KnownSizes:
    """The polynomial through the builds at the Chebyshev nodes of the box."""
    unit = [np.cos(np.pi * (np.arange(m) + 0.5) / m) for m in counts]
    terms = np.empty((*counts, len(SIZES) + len(_surfaces(scenario))))
    for index in np.ndindex(*counts):
        u = np.array([nodes[i] for nodes, i in zip(unit, index, strict=True)])
        built = _built(scenario, (low + high + u * (high - low)) / 2)
        terms[index] = _numbers_of(scenario, built)
    for axis, nodes in enumerate(unit):
        inverse = np.linalg.inv(chebvander(nodes, len(nodes) - 1))
        terms = np.moveaxis(np.tensordot(inverse, terms, axes=(1, axis)), 0, axis)
    wide = np.where(high > low, high, low + 1.0)
    return KnownSizes(low, wide, terms)


def _alike(known: KnownSizes, scenario: Scenario, at: Array) -> bool:
    got = known.at([np.array([v]) for v in at])[:, 0]
    wanted = _numbers_of(scenario, _built(scenario, at))
    return bool(np.allclose(got, wanted, rtol=_ALIKE, atol=_ALIKE * 1e-3))


def tip_table(size: Array, headings: Array) -> Array:
    """(n, H) rad, tip angles of n builds from their (12, n) sizes; headings (H,) rad.

    Source: tan(theta) = a / (h n.d), as `statics.rigid`.
    """
    mass, mx, my, mz, front, rear, x_front, x_rear, _, _, *turned = size
    cg = mx / mass, my / mass, mz / mass
    back, inwards = turned
    return rigid.rigid_tip_angles(front, rear, x_front, x_rear, *cg, headings, (back, inwards))


def _built(scenario: Scenario, point: Any) -> Truck:
    chosen = dict(zip([a.key for a in scenario.axes], point, strict=True))
    edits = {k: v for k, v in {**scenario.spec.fixed, **chosen}.items() if "." in k}
    edits = {k: float(v) if isinstance(v, np.floating) else v for k, v in edits.items()}
    return build(set_values(scenario.loaded.spec, edits), scenario.loaded.folder)[0]


def _numbers(values: tuple[Any, ...]) -> bool:
    return all(isinstance(v, (int, float)) and not isinstance(v, bool) for v in values)


def _by_builds(scenario: Scenario, some: slice, stop: Callable[[], bool]) -> _Table | None:
    """The slow way round: a truck for every point. One that is no truck has its cause noted."""
    chosen = itertools.islice(
        points(scenario.axes, scenario.design, scenario.spec.seed), some.start, some.stop
    )
    keys = [a.key for a in scenario.axes]
    at = list(chosen)
    values: Mapping[str, Any] = {key: np.array([p[i] for p in at]) for i, key in enumerate(keys)}
    repeats = scenario.spec.repeats
    size = np.full((len(SIZES) + len(_surfaces(scenario)), len(at) * repeats), np.nan)
    causes = np.full(len(at) * repeats, None, dtype=object)
    for i, point in enumerate(at):
        try:
            truck = _built(scenario, point)
            for r in range(repeats):
                if stop():
                    return None
                seed = scenario.seed_of(r)
                build_ = drawn_truck(truck, seed) if scenario.spec.tolerances else truck
                size[:, i * repeats + r] = _numbers_of(scenario, build_)
        except InputError as error:
            lines = slice(i * repeats, (i + 1) * repeats)
            size[:, lines], causes[lines] = np.nan, f"InputError: {error.problems[0]}"
    return _table(scenario, some, dict(values), size, causes)


def _table(
    scenario: Scenario, some: slice, values: _Table, size: Array, causes: Any = None
) -> _Table:
    """The columns, in the order point, repeat, heading; nan or null where there is no build."""
    n, repeats = some.stop - some.start, scenario.spec.repeats
    count = 1 if scenario.heading_varies else len(scenario.headings)
    every = size if size.shape[1] == n * repeats else np.repeat(size, repeats, axis=1)
    builds, grips = every[: len(SIZES)], np.repeat(every[len(SIZES) :], count, axis=1)
    table: _Table = {key: np.repeat(v, repeats * count) for key, v in values.items()}
    if scenario.heading_varies:
        tips = _tips_each(builds, np.repeat(np.radians(values["heading_deg"]), repeats))
    else:
        table["heading_deg"] = np.tile(scenario.headings, n * repeats)
        tips = tip_table(builds, np.radians(scenario.headings)).reshape(-1)
    table["repeat"] = np.tile(np.repeat(np.arange(repeats), count), n)
    seeds = [scenario.seed_of(r) for r in range(repeats)]
    table["seed"] = np.tile(np.repeat(seeds, count), n)
    mass, x_front, x_rear = builds[0], builds[6], builds[7]
    about = {"mass_g": 1000 * mass}
    about |= {f"cg_{axis}_mm": 1000 * builds[1 + i] / mass for i, axis in enumerate("xyz")}
    about["front_share"] = (builds[1] / mass - x_rear) / (x_front - x_rear)
    about |= {"front_track_mm": 1000 * builds[8], "rear_track_mm": 1000 * builds[9]}
    table |= {name: np.repeat(column, count) for name, column in about.items()}
    tips = np.where(np.isnan(table["mass_g"]), np.nan, tips)
    table["tip_deg"] = np.degrees(tips)
    table |= _slides(scenario, tips, grips, table)
    table["cause"] = None if causes is None else np.repeat(causes, count)
    return table


def _tips_each(builds: Array, headings: Array) -> Array:
    """(n,) rad where every build has a heading of its own, worked through by heading."""
    tips = np.empty(len(headings))
    for heading in np.unique(headings):
        same = headings == heading
        tips[same] = tip_table(builds[:, same], np.array([heading]))[:, 0]
    return tips


def _slides(scenario: Scenario, tips: Array, grips: Array, table: _Table) -> _Table:
    """Grip, hold, slide angle, which comes first, and what happens on the slope asked for. grips:
    (S, n) of each surface asked for."""
    spec, fixed = scenario.spec, scenario.spec.fixed
    none = np.isnan(tips)
    grip = table.get("grip", fixed.get("grip"))
    if grip is None:
        grip = grips[0]
        for name, other in zip(_surfaces(scenario)[1:], grips[1:], strict=True):
            grip = np.where(table["surface"] == name, other, grip)
        grip = np.round(grip, 12)  # without the polynomial's last digits: 0.9 as the file has it
    grip = np.broadcast_to(np.asarray(grip, np.float64), tips.shape)
    railed = np.broadcast_to(table.get("hold", np.array(spec.hold)) == "rail", tips.shape)
    slide = np.where(railed | none, np.nan, np.arctan(grip))
    slides = slide < tips
    held = _words(railed, none & ("hold" not in table), "brakes", "rail")
    out: _Table = {"grip": grip, "hold": held}
    out |= {"slide_deg": np.degrees(slide), "goes_at_deg": np.degrees(np.fmin(tips, slide))}
    out["first"] = _words(slides, none, "tips", "slides")
    slope = table.get("slope_deg", fixed.get("slope_deg"))
    if slope is not None:
        stands = np.radians(slope) < np.fmin(tips, slide)
        out["on_slope"] = _words(np.where(stands, 2, slides), none, "tips", "slides", "stands")
    return out


def _words(codes: Any, none: Any, *words: str) -> Any:
    """An arrow column of a few words, null where there is none: making each line's own would take
    longer than the answers."""
    import pyarrow as pa

    codes = pa.array(np.asarray(codes, np.int8), mask=none)
    return pa.DictionaryArray.from_arrays(codes, list(words))
