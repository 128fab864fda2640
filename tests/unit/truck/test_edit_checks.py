"""An edit puts nothing into a spec that reading the file would refuse."""

from __future__ import annotations

import pytest

from crossfall.truck.build import load_truck
from crossfall.truck.edits import get_value, set_value
from crossfall.truck.errors import InputError


@pytest.mark.parametrize("key", ["part.winch", "grip.rock", "materials.brass", "front.tyre"])
def test_a_number_is_no_table(key: str) -> None:
    with pytest.raises(InputError, match="must be a table"):
        set_value(load_truck("bramble").spec, key, 5)


@pytest.mark.parametrize("key", ["part.winch.mass_g", "grip.rock.likely", "front.track_mm"])
def test_a_value_below_is_checked_and_kept(key: str) -> None:
    spec = load_truck("bramble").spec
    with pytest.raises(InputError):
        set_value(spec, key, -1.0)
    value = get_value(spec, key) * 1.01
    assert get_value(set_value(spec, key, value), key) == pytest.approx(value)
