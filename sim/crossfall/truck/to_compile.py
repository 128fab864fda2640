"""What Python needs that is written to be compiled, by `native`: light, so that it can stand
anywhere."""

from __future__ import annotations

import ctypes
from collections.abc import Callable
from math import prod
from typing import Any, TypeVar

import numpy as np
from numpy.typing import DTypeLike

FLOAT, WHOLE, BYTE = np.float64, np.int64, np.uint8
_Function = TypeVar("_Function", bound=Callable[..., Any])


def outer(kinds: str) -> Callable[[_Function], _Function]:
    """Marks what is called from Python once compiled. kinds: of its arguments, a letter each: p
    address of an array, i whole number, d number."""

    def mark(function: _Function) -> _Function:
        vars(function)["kinds"] = kinds
        return function

    return mark


def inner(function: _Function) -> _Function:
    """Marks what one that is `outer` calls; compiled with it."""
    vars(function)["inner"] = True
    return function


def arrays(address: Any, shape: tuple[int, ...], kind: DTypeLike) -> Any:
    """The array that begins at an address, as compiled code and its Python see it.

    shape, kind: of it. Its memory must live as long as it does.
    """
    kind = np.dtype(kind)
    memory: Any = (ctypes.c_char * (prod(shape) * kind.itemsize)).from_address(address)
    found = np.frombuffer(memory, kind).reshape(shape)
    return found.view(np.recarray) if kind.names else found
