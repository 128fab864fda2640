"""Readings that no truck could give end in a sentence, not in a matrix without an inverse."""

from __future__ import annotations

import warnings
from collections.abc import Callable

import numpy as np
import pytest

from crossfall.measurement.reconcile_fit import fit_within
from crossfall.measurement.scatter import Scatter
from crossfall.measurement.weighted_fit import Datum, Prior, fit
from crossfall.truck.errors import InputError
from crossfall.truck.model import Array

DATA = [Datum("one", 1.0, 1), Datum("two", 2.0, 1)]
KINDS = [Scatter(1e-6, 0.0, np.inf)]


def steep(p: Array) -> Array:
    """A pose that leaves its range at once, as an arcsine of more than 1 does."""
    return np.arcsin(np.hstack([p, p]) * 1e3)


def endless(p: Array) -> Array:
    """Overflows wherever a step leads."""
    return np.exp(np.hstack([p, 2 * p]) * 1e5)


@pytest.mark.parametrize("method", [fit, fit_within])
@pytest.mark.parametrize("model", [steep, endless])
def test_a_model_without_an_answer_is_said_in_a_sentence(
    method: Callable[..., object], model: Callable[[Array], Array]
) -> None:
    known = [Prior("p", 0.5, 1.0)]
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        with pytest.raises(InputError, match="no truck gives these readings"):
            method(model, DATA, KINDS, known)
