"""`axle_forces` compiled, from the disk where that has been done before.

numba compiles each of its entries to an object file, which is kept by what it was made of: the
source, the compiler and the processor. Later processes load that with llvmlite alone, in a tenth of
the time and a third of the memory that numba itself takes. Kept beside the source's bytecode, or
else in the user's cache; where neither can be written, each process compiles anew. An object that
calls anything but what llvmlite finds without numba is not kept.
"""

from __future__ import annotations

import ctypes
import hashlib
import os
import platform
import re
import sys
from collections.abc import Callable, Sequence
from contextlib import suppress
from functools import cache
from importlib.metadata import version
from pathlib import Path
from typing import Any

import llvmlite.binding as llvm
from numpy.typing import NDArray

from crossfall.engines import axle_forces
from crossfall.truck import axle_law
from crossfall.truck.files import write_atomically

_SOURCE = Path(axle_forces.__file__)
_WITH = Path(axle_law.__file__)  # of which it has constants
_KINDS = {"p": ctypes.c_void_p, "i": ctypes.c_int64, "d": ctypes.c_double}
_MATHEMATICS = ("atan2", "hypot", "sqrt", "sin", "cos", "acos", "pow", "fmod")
_held: list[Any] = []  # what must live as long as its functions


@cache
def entry(name: str) -> Callable[..., None]:
    """The compiled entry of `axle_forces`, which takes addresses and numbers.

    Raises KeyError for a name that is none.
    """
    kinds = axle_forces.ENTRIES[name]
    shape = ctypes.CFUNCTYPE(None, *(_KINDS[k] for k in kinds))
    file = f"{name}-{_made_of()}.o"
    for folder in _folders():
        with suppress(OSError):
            return shape(_loaded(name, (folder / file).read_bytes()))
    made, code = _compiled(name, kinds)
    for folder in _folders():
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
def _made_of() -> str:
    """Of what the object files here are made, in short."""
    names = [platform.machine(), llvm.get_default_triple(), llvm.get_host_cpu_name()]
    names += [llvm.get_host_cpu_features().flatten(), version("numba"), version("llvmlite")]
    digest = hashlib.sha256()
    for part in (_SOURCE.read_bytes(), _WITH.read_bytes(), *(name.encode() for name in names)):
        digest.update(part + b"\0")
    return digest.hexdigest()[:24]


def _folders() -> tuple[Path, ...]:
    """Where object files may lie, the likeliest first."""
    home = Path.home() if "HOME" in os.environ or sys.platform == "win32" else None
    own = os.environ.get("LOCALAPPDATA" if sys.platform == "win32" else "XDG_CACHE_HOME")
    cached = Path(own) if own else home and home / ".cache"
    beside = _SOURCE.parent / "__pycache__"
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


def _compiled(name: str, kinds: str) -> tuple[Any, bytes | None]:
    """numba's function, which takes the same, and what is kept of it if it can do without numba: a
    checksum, the functions it needs, and its object file."""
    import numba
    from numba import types

    given = {
        "__file__": str(_SOURCE),
        "__name__": axle_forces.__name__,
        "compiler": numba.njit(error_model="numpy"),
        "arrays": numba.carray,
    }
    exec(compile(_SOURCE.read_text("utf-8"), str(_SOURCE), "exec"), given)
    taken = {"p": types.voidptr, "i": types.int64, "d": types.float64}
    signature = types.void(*(taken[k] for k in kinds))
    made = numba.cfunc(signature, error_model="numpy")(given[name])
    text, needs = _bare(made.inspect_llvm())
    if not _there(needs):
        return made, None
    module = llvm.parse_assembly(text)
    module.get_function(made.native_name).name = f"crossfall_{name}"
    rest = " ".join(needs).encode() + b"\n" + _machine().emit_object(module)
    return made, _digest(rest) + b"\n" + rest


def _digest(data: bytes) -> bytes:
    return hashlib.sha256(data).hexdigest().encode()


def _bare(text: str) -> tuple[str, list[str]]:
    """The same without what numba would do about errors, of which none can come here, and which
    functions of the C library's mathematics it calls."""
    needs: list[str] = []

    def cut(found: re.Match[str]) -> str:
        if found["name"].startswith("llvm."):
            return found[0]
        if found["name"] in _MATHEMATICS:
            needs.append(found["name"])
            return found[0]
        return f"define internal {found['rest']} {{ unreachable }}"

    text = re.sub(r'^declare (?P<rest>.*?@"?(?P<name>[^"( ]+)"?\(.*)$', cut, text, flags=re.M)
    known = r"^(@\S+ = )external (?:\w+ )*?global (\w+)(.*)$"
    return re.sub(known, r"\1internal global \2 zeroinitializer\3", text, flags=re.M), needs


def _there(names: Sequence[str]) -> bool:
    return all(llvm.address_of_symbol(name) for name in names)
