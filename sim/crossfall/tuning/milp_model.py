"""Everything asked of a set of changes, as linear inequalities for a given set-up.

With column y_j chosen or not, mass and first moments are sums, S(y) = S_0 + sum_j s_j y_j with
s = (m, m x, m y, m z). The rigid truck stands at theta on heading psi when for every edge that
faces downhill, with p a corner on it, n its normal and d the downhill direction,

    a >= h tan(theta) n.d,  a = n.(p - c), c the CG in plan, h its height.

Times the total mass, which is positive, this is linear in S and hence in y:

    (n.p) M - n_x M_x - n_y M_y - tan(theta) (n.d) M_z >= 0.                              (1)

Mass, front share, run time (energy against a power proportional to mass), money, named details,
requirements and exclusions are linear in the same way.

Source: derived here from the rigid tip angle (`statics.rigid`), times the total mass.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from crossfall.statics import rigid
from crossfall.truck import meshes, shapes
from crossfall.truck.build import Loaded, as_it_stands, steered
from crossfall.truck.errors import InputError
from crossfall.truck.model import GRAVITY, Array
from crossfall.truck.pieces import pieces, setting
from crossfall.truck.read import contained
from crossfall.truck.schema import PartSpec, TruckSpec
from crossfall.truck.solids import MM, Solid
from crossfall.tuning.apply import Lengthening, apply, stretch, stretched
from crossfall.tuning.battery import specific_power, usable_energy
from crossfall.tuning.limits import ClassLimits, free_diameter
from crossfall.tuning.menu import Menu, Picks, only_softens, touched_names

GRAM = 1e3  # rows are scaled so that a solver's 1e-7 is nothing: grams, gram metres
_NOTHING = np.zeros(4)


@dataclass(frozen=True)
class Bounds:
    """What a set of changes must keep to; None is free.

    budget: money. added_mass: kg more than now. run_time: s at least. front_share: least and
    most share of the weight on the front axle.
    """

    budget: float | None = None
    added_mass: float | None = None
    run_time: float | None = None
    front_share: tuple[float, float] | None = None
    limits: ClassLimits | None = None


@dataclass(frozen=True)
class MilpModel:
    """One set-up. n columns, of which the last `helpers` are counters that are no changes.

    sums: (4,) kg and kg m of the set-up alone; columns: (4, n). price, prices: (n,). normals,
    corners: (4, 2) of the polygon's edges. ends: x of the front and rear axle, halves: tip lines,
    turned: how far front tyres stand back or ahead and inwards, m. rows, least: (r, n) and (r,),
    with rows @ y + least >= 0 for all that is asked but the angle.
    """

    setup: Picks
    sums: Array
    columns: Array
    price: float
    prices: Array
    normals: Array
    corners: Array
    ends: tuple[float, float]
    halves: tuple[float, float]
    turned: tuple[float, float]
    rows: Array
    least: Array
    starts: NDArray[np.intp]
    helpers: int

    def stability(self, headings: Array, thetas: Array) -> tuple[Array, Array]:
        """(k, n) and (k,): inequality (1) for thetas (H,) on headings (H,), and that it stands."""
        h, e = self.facing(headings)
        tilt = (rigid.downhill(headings) @ self.normals.T)[h, e]
        edge = np.concatenate([e, np.arange(4)])
        up = np.concatenate([np.tan(thetas[h]) * tilt, np.zeros(4)])
        weights = np.column_stack([self.frame()[edge], -up]) * GRAM
        return weights @ self.columns, weights @ self.sums

    def facing(self, headings: Array) -> tuple[NDArray[np.intp], NDArray[np.intp]]:
        """Which edges face downhill on which headings: (k,) indices of headings and of edges."""
        h, e = np.nonzero(rigid.downhill(headings) @ self.normals.T > 1e-12)
        return h, e

    def frame(self) -> Array:
        """(4, 3) the weights of M, M_x and M_y in (1), by edge."""
        lever = np.sum(self.normals * self.corners, axis=1)
        return np.column_stack([lever, -self.normals])

    def angles(self, chosen: Array, headings: Array) -> Array:
        """(K, H) rad, rigid tip angles of K sets (K, n)."""
        sums = self.sums + chosen @ self.columns.T
        cg = sums[:, 1:] / sums[:, :1]
        x, y, z = cg.T
        sides = *self.halves, *self.ends
        return rigid.rigid_tip_angles(*sides, x, y, z, headings, self.turned)

    def money(self, chosen: Array) -> Array:
        """(K,) price of each set."""
        total: Array = self.price + chosen @ self.prices
        return total

    def allowed(self, chosen: Array) -> NDArray[np.bool_]:
        """(K,) whether each set keeps to all rows, and takes one column a cluster at most."""
        slack = chosen @ self.rows.T + self.least
        each = np.add.reduceat(chosen, self.starts, axis=1) if len(self.starts) else chosen
        return np.asarray((slack >= -1e-7).all(axis=1) & (each <= 1).all(axis=1))


@dataclass(frozen=True)
class _Tally:
    """Sums (4,), energy J, and how many parts carry each detail."""

    sums: Array
    energy: float
    details: Mapping[str, int]


@dataclass(frozen=True)
class _Core:
    """What set-ups that differ only in how the truck gives have in common."""

    spec: TruckSpec
    whole: _Tally
    tallies: tuple[_Tally, ...]
    rows: tuple[tuple[Array, float], ...]
    counters: tuple[tuple[Array, float], ...]
    count_least: float | None


class Modeller:
    """Makes the models of one truck and menu; what many set-ups share is worked out once.

    Where collars say how high the truck stands, sets are counted at the height it has now; what
    they lift or let down comes in when they are answered as they stand, as all that gives does.
    Free tyres are measured with the set-up's loads, before its parts change: 100 g more make one
    look about 0.1 mm larger.
    """

    def __init__(self, loaded: Loaded, menu: Menu, bounds: Bounds) -> None:
        self.loaded, self.menu, self.bounds = loaded, menu, bounds
        self.base = as_it_stands(loaded.spec, loaded.folder)
        self._moments: dict[tuple[object, ...], tuple[PartSpec, Array]] = {}
        self._cores: dict[Picks, _Core | None] = {}
        self._specs = [apply(self.base, menu.catalogue, dict(c)) for c in menu.columns]
        self._names = [_names(menu, c) for c in menu.columns]
        changes = menu.catalogue.changes
        self._prices = np.array([sum(changes[i].cost(n) for i, n in c) for c in menu.columns])
        self._rules = Rules(menu)
        self.mass_now = float(self._tally(self.base.part, self.base, 0.0).sums[0])

    def model(self, setup: Picks) -> MilpModel | None:
        """The model of a set-up; None where it breaks a limit that parts cannot mend."""
        changes = self.menu.catalogue.changes
        stiff = tuple(p for p in setup if not only_softens(changes[p[0]]))
        if stiff not in self._cores:
            self._cores[stiff] = self._core(stiff)
        core = self._cores[stiff]
        if core is None or not self._tyres_allowed(setup, core):
            return None
        price = float(sum(changes[i].cost(n) for i, n in setup))
        found = [*core.rows, *self._rules.rows(setup)]
        if self.bounds.budget is not None:
            found.insert(0, (-self._prices, self.bounds.budget - price))
        helpers = len(core.counters)
        rows, least = _with_counters(found, core, len(self._prices))
        front, rear = (
            rigid.tip_line(e.track_mm * MM, e.tyre.contact_half_width_mm * MM)
            for e in (core.spec.front, core.spec.rear)
        )
        half = core.spec.chassis.wheelbase_mm * MM / 2
        _, turned = steered(core.spec.front, core.spec.chassis)
        back, inwards = turned
        points = np.array(
            [
                (half - back, front - inwards),
                (half + back, inwards - front),
                (-half, rear),
                (-half, -rear),
            ]
        )
        straight = rigid.edge_normals(front, rear, 2 * half)
        sums = _sums(core.tallies)
        starts = [*self.menu.starts, *(len(core.tallies) + h for h in range(helpers))]
        return MilpModel(
            setup=setup,
            sums=core.whole.sums,
            columns=np.hstack([sums, np.zeros((4, helpers))]),
            price=price,
            prices=np.concatenate([self._prices, np.zeros(helpers)]),
            normals=rigid.normals_between(points) if any(turned) else straight,
            corners=points[[3, 0, 0, 1]],
            ends=(half, -half),
            halves=(front, rear),
            turned=turned,
            rows=rows,
            least=least,
            starts=np.array(starts, dtype=np.intp),
            helpers=helpers,
        )

    def _core(self, setup: Picks) -> _Core | None:
        menu, chosen = self.menu, dict(setup)
        spec = apply(self.base, menu.catalogue, chosen)
        if self.bounds.limits is not None and not _geometry_allowed(self.bounds.limits, spec):
            return None
        whole = self._tally(spec.part, spec, _energy(spec))
        touched, along = _names(menu, setup), stretch(menu.catalogue, chosen)
        tallies = tuple(
            self._column(k, setup, spec, touched.isdisjoint(self._names[k]), along)
            for k in range(len(menu.columns))
        )
        rows = self._weight_rows(whole, tallies, spec.chassis.wheelbase_mm * MM)
        counters: list[tuple[Array, float]] = []
        count_least = None
        if self.bounds.limits is not None:
            named, counters, count_least = _detail_rows(self.bounds.limits, whole, tallies)
            rows += named
        return _Core(spec, whole, tallies, tuple(rows), tuple(counters), count_least)

    def _tyres_allowed(self, setup: Picks, core: _Core) -> bool:
        """Whether the free tyres are of the class; how stiff they are is no matter of the core."""
        limits = self.bounds.limits
        if limits is None:
            return True
        least, most = limits.least_tyre_diameter_mm, limits.most_tyre_diameter_mm
        if least is None and most is None:
            return True
        spec = apply(self.base, self.menu.catalogue, dict(setup))
        weight, moment = core.whole.sums[:2] * GRAVITY
        lean = moment / (spec.chassis.wheelbase_mm * MM)
        diameters = [
            free_diameter(t.radius_mm, t.stiffness_n_per_mm, float(load))
            for t, load in (
                (spec.front.tyre, weight / 2 + lean),
                (spec.rear.tyre, weight / 2 - lean),
            )
        ]
        return _under(max(diameters), most) and _under(-min(diameters), least and -least)

    def _column(
        self, k: int, setup: Picks, spec: TruckSpec, apart: bool, along: Lengthening
    ) -> _Tally:
        """What a column adds on this set-up: the parts it brings less the parts it takes."""
        if apart:
            new, old = self._specs[k], self.base
            gone, come = _differing(old.part, new.part)
            gone, come = ([stretched(p, along) for p in rows] for rows in (gone, come))
        else:
            try:
                new = apply(
                    self.base, self.menu.catalogue, {**dict(setup), **dict(self.menu.columns[k])}
                )
            except InputError:
                return _Tally(_NOTHING, 0.0, {})  # barred together, and a row says so
            old = spec
            if along.chassis or along.along:
                gone, come = list(old.part), list(new.part)
            else:
                gone, come = _differing(old.part, new.part)
        plus, minus = self._tally(come, spec, _energy(new)), self._tally(gone, spec, _energy(old))
        tags = {
            t: plus.details.get(t, 0) - minus.details.get(t, 0)
            for t in plus.details.keys() | minus.details.keys()
        }
        return _Tally(plus.sums - minus.sums, plus.energy - minus.energy, tags)

    def _tally(self, parts: Iterable[PartSpec], spec: TruckSpec, energy: float) -> _Tally:
        sums, details = _NOTHING.copy(), dict[str, int]()
        ends = (spec.front.track_mm, spec.front.tyre.radius_mm, spec.rear.track_mm)
        lengths = (spec.rear.tyre.radius_mm, spec.chassis.wheelbase_mm, spec.chassis.raise_mm)
        frame = (*ends, *lengths, id(spec.materials))
        for part in parts:
            sums += self._row(part, spec, frame)
            if part.detail:
                tag = part.detail.casefold()
                details[tag] = details.get(tag, 0) + 1
        return _Tally(sums, energy, details)

    def _row(self, part: PartSpec, spec: TruckSpec, frame: tuple[float, ...]) -> Array:
        """(4,) mass and first moments of all pieces of a row; frame: what else they depend on."""
        key = (id(part), *frame)
        if key not in self._moments:
            found = pieces(part, 0, setting(part, spec), self._mesh(part))
            mass = np.array([p.body.mass for p in found])
            places = np.array([p.body.cg for p in found])
            # The part is kept, so that no other can take its id.
            self._moments[key] = part, np.array([mass.sum(), *(mass @ places)])
        return self._moments[key][1]

    def _mesh(self, part: PartSpec) -> Solid | None:
        if not isinstance(part.shape, shapes.Mesh):
            return None
        path = contained(self.loaded.folder, part.shape.file)
        assert path is not None  # the truck was built, or the change checked, before
        return meshes.load_mesh(path, part.shape.unit).solid

    def _weight_rows(
        self, whole: _Tally, tallies: Sequence[_Tally], length: float
    ) -> list[tuple[Array, float]]:
        """Mass, front share and run time: rows that do not depend on money."""
        b, sums = self.bounds, _sums(tallies)
        found: list[tuple[Array, float]] = []

        def weigh(weights: Sequence[float], least: float) -> None:
            w = np.array(weights) * GRAM
            found.append((w @ sums, float(w @ whole.sums) - least * GRAM))

        if b.added_mass is not None:
            weigh((-1, 0, 0, 0), -(self.mass_now + b.added_mass))
        if b.front_share is not None:
            low, high = b.front_share
            weigh((length / 2 - low * length, 1, 0, 0), 0.0)
            weigh((high * length - length / 2, -1, 0, 0), 0.0)
        if b.run_time is not None and self.base.battery is not None:
            power = specific_power(self.base.battery)[0]
            energies = np.array([t.energy for t in tallies])
            row = energies - b.run_time * power * sums[0]
            least = whole.energy - b.run_time * power * whole.sums[0]
            found.append((row / 100.0, float(least) / 100.0))
        if b.limits is not None and b.limits.least_mass_g is not None:
            weigh((1, 0, 0, 0), b.limits.least_mass_g * 1e-3)
        if b.limits is not None and b.limits.most_mass_g is not None:
            weigh((-1, 0, 0, 0), -b.limits.most_mass_g * 1e-3)
        return found


class Rules:
    """Requirements, exclusions and groups, as rows over the columns of a menu."""

    def __init__(self, menu: Menu) -> None:
        self.menu = menu
        changes = menu.catalogue.changes
        self.holds = np.zeros((len(changes), len(menu.columns)))
        for k, picks in enumerate(menu.columns):
            for i, _ in picks:
                self.holds[i, k] = 1.0
        self.free = self.holds.sum(axis=1) > 0
        self.needs = [[menu.catalogue.position(n) for n in c.requires] for c in changes]
        self._always = [*self._requirements(), *self._exclusions()]

    def rows(self, setup: Picks) -> list[tuple[Array, float]]:
        """All rules on a set-up, as (n,) and a constant: row @ y + constant >= 0."""
        there = {i for i, _ in setup}
        barred = np.zeros(len(self.holds), dtype=bool)
        for i in there:
            barred |= self.menu.barred[i]
        for i, needs in enumerate(self.needs):
            if self.free[i] and any(not self.free[j] and j not in there for j in needs):
                barred[i] = True
        found = list(self._always)
        never = self.holds[barred].sum(axis=0)
        found.append((-never, 0.0))
        for j in {j for i in there for j in self.needs[i] if self.free[j]}:
            found.append((self.holds[j], -1.0))
        return found

    def _requirements(self) -> list[tuple[Array, float]]:
        return [
            (self.holds[j] - self.holds[i], 0.0)
            for i, needs in enumerate(self.needs)
            for j in needs
            if self.free[i] and self.free[j]
        ]

    def _exclusions(self) -> list[tuple[Array, float]]:
        """One row for each group, and one for every other pair that is not in one cluster."""
        changes = self.menu.catalogue.changes
        found, stated = [], np.zeros_like(self.menu.barred)
        for group in sorted({c.group for c in changes if c.group}):
            members = [i for i, c in enumerate(changes) if c.group == group and self.free[i]]
            stated[np.ix_(members, members)] = True
            if len(members) > 1:
                found.append((-np.minimum(self.holds[members].sum(axis=0), 1.0), 1.0))
        cluster = self.menu.cluster_of()
        home = [int(cluster[np.argmax(h)]) if h.any() else -1 for h in self.holds]
        for i, j in zip(*np.nonzero(np.triu(self.menu.barred & ~stated)), strict=True):
            if self.free[i] and self.free[j] and home[i] != home[j]:
                found.append((-self.holds[i] - self.holds[j], 1.0))
        return found


def _sums(tallies: Sequence[_Tally]) -> Array:
    """(4, n)."""
    return np.stack([t.sums for t in tallies], axis=1) if tallies else np.zeros((4, 0))


def _with_counters(
    found: Sequence[tuple[Array, float]], core: _Core, n: int
) -> tuple[Array, Array]:
    """Rows and constants with a column for every detail that is counted, 0 or 1."""
    helpers = len(core.counters)
    rows = [np.concatenate([row, np.zeros(helpers)]) for row, _ in found]
    least = [constant for _, constant in found]
    for h, (row, there) in enumerate(core.counters):
        unit = np.zeros(helpers)
        unit[h] = -1.0
        rows.append(np.concatenate([row, unit]))
        least.append(there)
    if core.count_least is not None:
        rows.append(np.concatenate([np.zeros(n), np.ones(helpers)]))
        least.append(core.count_least)
    return np.array(rows).reshape(len(rows), n + helpers), np.array(least)


def _detail_rows(
    limits: ClassLimits, whole: _Tally, tallies: Sequence[_Tally]
) -> tuple[list[tuple[Array, float]], list[tuple[Array, float]], float | None]:
    """Rows for named details; a counter for each detail that may come or go; the count's row."""
    tags = sorted(set(whole.details).union(*(t.details for t in tallies)))
    by_tag = {t: np.array([float(c.details.get(t, 0)) for c in tallies]) for t in tags}
    named = []
    for name in limits.details:
        row = by_tag.get(name.casefold(), np.zeros(len(tallies)))
        named.append((row, whole.details.get(name.casefold(), 0) - 1.0))
    if limits.least_details is None:
        return named, [], None
    moving = [t for t in tags if by_tag[t].any()]
    steady = sum(1 for t in tags if t not in moving and whole.details.get(t, 0) > 0)
    counters = [(by_tag[t], float(whole.details.get(t, 0))) for t in moving]
    return named, counters, float(steady - limits.least_details)


def _geometry_allowed(limits: ClassLimits, spec: TruckSpec) -> bool:
    width = max(e.track_mm + e.tyre.width_mm for e in (spec.front, spec.rear))
    base = spec.chassis.wheelbase_mm
    return (
        _under(width, limits.most_width_mm)
        and _under(base, limits.most_wheelbase_mm)
        and _under(-base, limits.least_wheelbase_mm and -limits.least_wheelbase_mm)
    )


def _under(value: float, most: float | None) -> bool:
    return most is None or value <= most + 1e-6


def _names(menu: Menu, picks: Picks) -> frozenset[str]:
    return frozenset().union(*(touched_names(menu.hands[i]) for i, _ in picks))


def _differing(
    old: Sequence[PartSpec], new: Sequence[PartSpec]
) -> tuple[list[PartSpec], list[PartSpec]]:
    """Rows only in one of two specs made from each other: untouched rows are the same objects."""
    before, after = {id(p) for p in old}, {id(p) for p in new}
    return [p for p in old if id(p) not in after], [p for p in new if id(p) not in before]


def _energy(spec: TruckSpec) -> float:
    return usable_energy(spec.battery) if spec.battery is not None else 0.0
