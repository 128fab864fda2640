"""What a truck drives over, one module a ground: what stands here is found, and listed nowhere."""

from __future__ import annotations

import pkgutil
from collections.abc import Mapping
from functools import cache
from importlib import import_module
from pathlib import Path
from typing import Any

from crossfall.trials.grounds.base import Ground, GroundKey
from crossfall.trials.grounds.plane import Plane


@cache
def grounds() -> dict[str, type[Ground]]:
    """Name -> kind of ground, of every module of this package, by name."""
    found = {}
    for module in pkgutil.iter_modules(__path__):
        for value in vars(import_module(f"{__name__}.{module.name}")).values():
            if isinstance(value, type) and issubclass(value, Ground) and value is not Ground:
                found[value.kind] = value
    return dict(sorted(found.items()))


@cache
def ground_keys() -> dict[str, GroundKey]:
    """Key -> how it is asked for, of every ground."""
    return {key.key: key for kind in grounds().values() for key in kind.keys}


def asked_grounds(values: Mapping[str, Any]) -> list[type[Ground]]:
    """The kinds of ground that values of keys ask for; none of them means the plane."""
    return [k for k in grounds().values() if k.keys and values.get(k.keys[0].key)]


def ground_of(values: Mapping[str, Any], folder: Path) -> Ground:
    """The ground that values of keys ask for. folder: where the files they name lie.

    ValueError for more than one, or sizes that make none; InputError for a file that makes none.
    """
    kinds = asked_grounds(values)
    if len(kinds) > 1:
        raise ValueError(f"{' and '.join(k.kind for k in kinds)} at once")
    return kinds[0].asked(values, folder) if kinds else Plane()


def ground_file(values: Mapping[str, Any]) -> str:
    """The name of the file that values of keys ask to be read, "" for none."""
    return next(
        (str(values[k]) for k, key in ground_keys().items() if key.file and values.get(k)), ""
    )
