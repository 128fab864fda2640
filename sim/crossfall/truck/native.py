"""Python compiled, from the disk where that has been done before.

What is to be compiled is marked (`to_compile`): functions that take addresses of arrays and numbers
as `outer`, and what they call, in their own or other modules, as `inner`. numba compiles each of
the former to an object file, which is kept by what it was made of: the sources, their constants,
the compiler and the processor. Later processes load that with llvmlite alone, in a tenth of the
time and a third of the memory that numba itself takes. Kept beside the source's bytecode, or else
in the user's cache; where neither can be written, each process compiles anew. An object that calls
anything but what llvmlite finds without numba is not kept.
"""

from __future__ import annotations

import ctypes
import hashlib
import logging
import os
import platform
import re
import sys
from collections.abc import Callable, Sequence
from contextlib import suppress
from functools import cache
from importlib.metadata import version
from pathlib import Path
from types import FunctionType
from typing import Any

import llvmlite.binding as llvm
import numpy as np
from numpy.typing import NDArray

from crossfall.truck.files import write_atomically
from crossfall.truck.to_compile import arrays

_KINDS = {"p": ctypes.c_void_p, "i": ctypes.c_int64, "d": ctypes.c_double}
_ABOUT_ERRORS = "Py", "NRT_", "numba_gil", "numba_unpickle", "numba_do_raise", "numba_runtime"
_LOG = logging.getLogger(__name__)
_held: list[Any] = []  # what must live as long as its functions


@cache
def entry(written: Callable[..., None]) -> Callable[..., None]:
    """The compiled function of one that is marked as `outer`. Raises KeyError where it is not."""
    module, name, kinds = written.__module__, written.__name__, vars(written)["kinds"]
    shape = ctypes.CFUNCTYPE(None, *(_KINDS[k] for k in kinds))
    file = f"{name}-{_made_of(module)}.o"
    for folder in _folders(module):
        with suppress(OSError):
            return shape(_loaded(name, (folder / file).read_bytes()))
    made, code = _compiled(module, name, kinds)
    for folder in _folders(module):
        with suppress(OSError):
            if code is not None:
                folder.mkdir(parents=True, exist_ok=True)
                write_atomically(folder / file, code)
            break
    _held.append(made)
    return shape(made.address)


def address(array: NDArray[Any]) -> int:
    """Where an array begins; it must be whole in memory, and live as long as that is used.

    Raises ValueError for one in pieces.
    """
    if not array.flags.c_contiguous:
        raise ValueError("an array in pieces has no one place")
    return array.ctypes.data


@cache
def _machine() -> Any:
    llvm.initialize_native_target()
    llvm.initialize_native_asmprinter()
    target = llvm.Target.from_default_triple()
    features = llvm.get_host_cpu_features().flatten()
    how = {"opt": 3, "jit": True, "codemodel": "jitdefault"}
    return target.create_target_machine(llvm.get_host_cpu_name(), features, **how)


@cache
def _made_of(module: str) -> str:
    """Of what the object files here are made, in short."""
    names = [platform.machine(), llvm.get_default_triple(), llvm.get_host_cpu_name()]
    names += [llvm.get_host_cpu_features().flatten(), version("numba"), version("llvmlite")]
    digest = hashlib.sha256(repr(names).encode())
    for own in _with(module):
        digest.update(_source(own).read_bytes())
        known = vars(sys.modules[own]).items()
        constants = {n: v for n, v in known if isinstance(v, int | float | str | tuple | np.dtype)}
        digest.update(repr({n: v for n, v in constants.items() if not n.startswith("__")}).encode())
    return digest.hexdigest()[:24]


def _source(module: str) -> Path:
    return Path(str(sys.modules[module].__file__))


def _with(module: str) -> list[str]:
    """The module and all others that what it calls is written in."""
    found, left = [], [module]
    while left:
        found.append(left.pop())
        called = {f.__module__ for f in vars(sys.modules[found[-1]]).values() if _is_inner(f)}
        left += sorted(called - {*found, *left})
    return found


def _is_inner(value: object) -> bool:
    return isinstance(value, FunctionType) and "inner" in vars(value)


def _folders(module: str) -> tuple[Path, ...]:
    """Where object files may lie, the likeliest first."""
    home = Path.home() if "HOME" in os.environ or sys.platform == "win32" else None
    own = os.environ.get("LOCALAPPDATA" if sys.platform == "win32" else "XDG_CACHE_HOME")
    cached = Path(own) if own else home and home / ".cache"
    beside = _source(module).parent / "__pycache__"
    return (beside, *([cached / "crossfall"] if cached else []))


def _loaded(name: str, code: bytes) -> int:
    """The address of the function in an object file. Raises OSError where that is damaged, or calls
    what is not here."""
    digest, _, rest = code.partition(b"\n")
    if digest != _digest(rest):  # LLVM would end the process
        raise OSError("damaged")
    needs, _, code = rest.partition(b"\n")
    try:
        engine = llvm.create_mcjit_compiler(llvm.parse_assembly(""), _machine())
        if not _there(needs.decode("ascii", "replace").split()):  # known once there is an engine
            raise OSError(f"not all of {needs!r} is here")
        engine.add_object_file(llvm.ObjectFileRef.from_data(code))
        engine.finalize_object()
    except RuntimeError as error:
        raise OSError(str(error)) from None
    if not (address := engine.get_function_address(f"crossfall_{name}")):
        raise OSError(f"no {name} in it")
    _held.append(engine)
    return int(address)


def _compiled(module: str, name: str, kinds: str) -> tuple[Any, bytes | None]:
    """numba's function, which takes the same, and what is kept of it if it can do without numba: a
    checksum, the functions it needs, and its object file."""
    _tell()
    import numba
    from numba import types

    given = _to_compile(module, numba, {})
    taken = {"p": types.voidptr, "i": types.int64, "d": types.float64}
    signature = types.void(*(taken[k] for k in kinds))
    written = vars(sys.modules[module])[name]
    made = numba.cfunc(signature, error_model="numpy")(FunctionType(written.__code__, given, name))
    text, needs = _bare(made.inspect_llvm())
    if any(n.startswith("numba") for n in needs) or not _there(needs):
        return made, None
    whole = llvm.parse_assembly(text)
    whole.get_function(made.native_name).name = f"crossfall_{name}"
    rest = " ".join(needs).encode() + b"\n" + _machine().emit_object(whole)
    return made, _digest(rest) + b"\n" + rest


@cache
def _tell() -> None:
    _LOG.info("compiling what is worked out at every look, once on this machine: some 15 s")


def _to_compile(module: str, numba: Any, known: dict[str, dict[str, Any]]) -> dict[str, Any]:
    """What the module's functions find by name, the inner ones to be compiled when called."""
    if module not in known:
        given = known[module] = dict(vars(sys.modules[module]))
        for name, value in vars(sys.modules[module]).items():
            if value is arrays:
                given[name] = numba.carray
            elif _is_inner(value) and value.__module__ != module:
                given[name] = _to_compile(value.__module__, numba, known)[value.__name__]
            elif _is_inner(value):
                again = FunctionType(value.__code__, given, name)
                given[name] = numba.njit(error_model="numpy")(again)
    return known[module]


def _digest(data: bytes) -> bytes:
    return hashlib.sha256(data).hexdigest().encode()


def _bare(text: str) -> tuple[str, list[str]]:
    """The same without what numba would do about errors, of which none can come here, and which
    functions it calls: of the C library's mathematics, or numba's, with which it is not kept."""
    needs: list[str] = []

    def cut(found: re.Match[str]) -> str:
        if found["name"].startswith("llvm."):
            return found[0]
        if found["name"].startswith(_ABOUT_ERRORS):
            return f"define internal {found['rest']} {{ unreachable }}"
        needs.append(found["name"])
        return found[0]

    text = re.sub(r'^declare (?P<rest>.*?@"?(?P<name>[^"( ]+)"?\(.*)$', cut, text, flags=re.M)
    known = r"^(@\S+ = )external (?:\w+ )*?global (\w+)(.*)$"
    return re.sub(known, r"\1internal global \2 zeroinitializer\3", text, flags=re.M), needs


def _there(names: Sequence[str]) -> bool:
    return all(llvm.address_of_symbol(name) for name in names)
