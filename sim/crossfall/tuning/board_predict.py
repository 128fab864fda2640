"""What a board should show for a truck as its file has it, and how sure that is."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from crossfall.compare import spec_uncertainty
from crossfall.statics import rigid
from crossfall.statics.compliant import tips
from crossfall.truck.massprops import whole
from crossfall.truck.model import Array, Truck, frozen

GIVE_SD = 0.10  # of the angle that tyres and springs cost: rates are seldom known better
STEP = 1e-3  # m, for derivatives: small to the truck, large to the accuracy of the compliant tip
SHARED = 1 / np.sqrt(3)  # sd of anywhere within +-1


@dataclass(frozen=True)
class Prediction:
    """Predicted tip angles, all (n,) rad, one per heading asked.

    angle: compliant, middle of the window that friction leaves. low, high: that window. rigid:
    closed form. u: standard uncertainty from the file's tolerances, from spring and tyre rates,
    and from the window.
    """

    angle: Array
    low: Array
    high: Array
    rigid: Array
    u: Array

    @property
    def give(self) -> Array:
        """(n,) rad, what tyres, springs and lean change; usually negative."""
        return self.angle - self.rigid


@dataclass(frozen=True)
class Outlook:
    """What is expected on some headings, and its (n, 4) `slopes`."""

    expected: Prediction
    slopes: Array


def outlook(truck: Truck, headings: Sequence[float], locked: Sequence[bool]) -> Outlook:
    """Both for the same headings (rad)."""
    return Outlook(predict(truck, headings, locked), slopes(truck, headings, locked))


def held(truck: Truck) -> Truck:
    """The truck with its suspension locked."""
    front, rear = (replace(a, suspension=replace(a.suspension, locked=True)) for a in truck.axles)
    return replace(truck, front=front, rear=rear)


def predict(truck: Truck, headings: Sequence[float], locked: Sequence[bool]) -> Prediction:
    """The truck's tip angle on each heading (rad), suspension free or locked."""
    psi = np.asarray(headings, dtype=np.float64)
    lock = np.asarray(locked, dtype=bool)
    ends = np.empty((2, len(psi)))
    for some, build in ((~lock, truck), (lock, held(truck))):
        if np.any(some):
            ends[0, some] = tips(build, psi[some], "uniform").tip
            ends[1, some] = tips(build, psi[some], "sticking").tip
    low, high = np.fmin(*ends), np.fmax(*ends)
    stiff = rigid.tip_angle(truck, psi)
    angle = (low + high) / 2
    u = np.sqrt(
        spec_uncertainty(truck, psi) ** 2
        + (GIVE_SD * (angle - stiff)) ** 2
        + (SHARED * (high - low) / 2) ** 2
    )
    return Prediction(angle, low, high, stiff, u)


def slopes(truck: Truck, headings: Sequence[float], locked: Sequence[bool]) -> Array:
    """(n, 4) rad/m, change of the compliant tip angle with the CG's x, y, z and with the contact
    half-width of all tyres: what the rigid polygon promises for a wider contact, soft tyres do
    not keep.
    """
    psi, lock = np.asarray(headings, dtype=np.float64), np.asarray(locked, dtype=bool)
    changes = [(sign * STEP * axis, 0.0) for axis in np.eye(3) for sign in (1.0, -1.0)]
    least = min(a.tyre.contact_half_width for a in truck.axles)
    ends = (STEP, -min(least, STEP))
    changes += [(np.zeros(3), end) for end in ends]
    found = np.empty((len(changes), len(psi)))
    for some, build in ((~lock, truck), (lock, held(truck))):
        if np.any(some):
            builds = [changed(build, shift, wider) for shift, wider in changes]
            found[:, some] = tips(builds, psi[some], "uniform").tip
    spans = np.array([2 * STEP] * 3 + [ends[0] - ends[1]])
    out: Array = ((found[::2] - found[1::2]) / spans[:, None]).T
    return out


def changed(truck: Truck, shift: Array, wider: float) -> Truck:
    """The truck with its CG moved by (3,) m, all in the chassis, and its tyres' half-widths."""
    share = whole(truck).mass / truck.chassis.mass
    body = replace(truck.chassis, cg=frozen(truck.chassis.cg + share * shift))
    front, rear = (
        replace(a, tyre=replace(a.tyre, contact_half_width=a.tyre.contact_half_width + wider))
        for a in truck.axles
    )
    return replace(truck, chassis=body, front=front, rear=rear)
