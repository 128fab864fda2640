"""Links that make no suspension are refused in one sentence; the fitted path is the exact one."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from crossfall.truck.axle_law import (
    VALUE,
    YAW,
    X,
    Y,
    axle_law_values,
    basis,
    powers,
    travel,
)
from crossfall.truck.axle_law import _guided as guided
from crossfall.truck.linkage import LinkageError, geometry, linkage_poses, refuse
from crossfall.truck.model import Links, frozen
from linkages import FRONT, links


def without(own: Links, *gone: int) -> Links:
    keep = [i for i in range(len(own.axle)) if i not in gone]
    return replace(
        own,
        chassis=frozen(own.chassis[keep]),
        axle=frozen(own.axle[keep]),
        names=tuple(own.names[i] for i in keep),
    )


@pytest.mark.parametrize("name", FRONT)
def test_sound_links_are_taken(name: str) -> None:
    refuse(links(name), "front")


@pytest.mark.parametrize(("gone", "left"), [((3,), "3 freedoms"), ((2, 3), "4 freedoms")])
def test_too_few_links_are_counted(gone: tuple[int, ...], left: str) -> None:
    with pytest.raises(LinkageError, match=left):
        refuse(without(links("four links"), *gone), "rear")


def test_a_link_too_many_is_counted() -> None:
    own, bar = links("four links"), links("three links and a track bar")
    five = replace(
        own,
        chassis=frozen(np.vstack([own.chassis, bar.chassis[3]])),
        axle=frozen(np.vstack([own.axle, bar.axle[3]])),
        names=(*own.names, "track bar"),
    )
    with pytest.raises(LinkageError, match="5 rods, which leaves it one freedom"):
        refuse(five, "front")


def test_parallel_links_without_a_track_bar_do_not_hold_the_axle_sideways() -> None:
    own = links("four links")
    flat = replace(own, chassis=frozen(np.column_stack(
        [own.chassis[:, 0], own.axle[:, 1], own.chassis[:, 2]]
    )))  # fmt: skip
    with pytest.raises(LinkageError, match="a third freedom: nothing holds it sideways"):
        refuse(flat, "front")


def test_a_link_without_length_is_named() -> None:
    own = links("three links and a track bar")
    chassis = own.chassis.copy()
    chassis[3] = own.axle[3]
    with pytest.raises(LinkageError, match="track bar has both ends at the same place"):
        refuse(replace(own, chassis=frozen(chassis)), "front")


def test_links_too_short_for_the_travel_bind() -> None:
    own = links("three links and a track bar")
    chassis = own.axle + 0.25 * (own.chassis - own.axle)
    with pytest.raises(LinkageError, match=r"bind within the stops: with the left corner at [+-]"):
        guided(replace(own, chassis=frozen(chassis)))
    with pytest.raises(LinkageError, match="bind"):
        geometry(replace(own, chassis=frozen(chassis)), 0.1, 0.05, np.array([0.06]), np.zeros(1))


@pytest.mark.parametrize("name", FRONT)
def test_the_fitted_path_is_within_two_thousandths_of_the_exact_one(name: str) -> None:
    own = links(name)
    guide = guided(own)
    heave, roll = travel(own.bump, own.droop, own.spacing, 14)
    many = (len(heave), 4, 3)
    exact = linkage_poses(
        np.broadcast_to(own.chassis, many), np.broadcast_to(own.axle, many), heave, roll
    )
    path = axle_law_values(np.pad(guide, ((0, 2), (0, 0))), heave, roll)[:, VALUE]
    assert np.abs(path[[X, Y]].T - exact.place[:, :2]).max() < 2e-6
    assert np.degrees(np.abs(path[YAW] - exact.yaw).max()) < 2e-3


def test_the_derivatives_of_a_path_are_those_of_its_values() -> None:
    rng = np.random.default_rng(4)
    coefficients = rng.normal(size=(7, len(powers(6))))
    q, r, h = rng.uniform(-0.5, 0.5, 20), rng.uniform(-0.5, 0.5, 20), 1e-5

    def at(q: np.ndarray, r: np.ndarray) -> np.ndarray:
        return axle_law_values(coefficients, q, r)

    now = at(q, r)
    by_q = (at(q + h, r) - at(q - h, r)) / (2 * h)
    by_r = (at(q, r + h) - at(q, r - h)) / (2 * h)
    size = np.abs(now).max()
    assert now[:, 1] == pytest.approx(by_q[:, 0], abs=1e-8 * size)
    assert now[:, 2] == pytest.approx(by_r[:, 0], abs=1e-8 * size)
    assert now[:, 3:5] == pytest.approx(by_q[:, 1:3], abs=1e-8 * size)
    assert now[:, 4:] == pytest.approx(by_r[:, 1:3], abs=1e-8 * size)
    assert basis(np.zeros(1), np.zeros(1), 27)[VALUE].any() == np.False_
