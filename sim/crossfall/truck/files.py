"""Writing files so that a reader never sees half of one."""

from __future__ import annotations

import os
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path


def write_atomically(path: str | Path, content: str | bytes) -> None:
    """Put `content` (text as UTF-8) at `path` in one step: all of it, or what was there before.

    The temporary file is made beside the target, since a rename is only atomic within one file
    system. Raises OSError where the folder is missing or not writable.
    """
    target = Path(path)
    data = content.encode("utf-8") if isinstance(content, str) else content
    with in_one_step(target) as part, part.open("wb") as stream:
        stream.write(data)
        stream.flush()
        os.fsync(stream.fileno())


@contextmanager
def in_one_step(target: Path) -> Iterator[Path]:
    """A file beside the target that takes its place when all went well, and goes if not.

    An OSError names the target: the system says no name where a file grows too large or the disk
    is full.
    """
    try:
        handle, name = tempfile.mkstemp(dir=target.parent, prefix=f".{target.name[:100]}.")
        os.close(handle)
        try:
            yield Path(name)
            os.chmod(name, target.stat().st_mode & 0o777 if target.exists() else 0o644)
            os.replace(name, target)
        except BaseException:
            Path(name).unlink(missing_ok=True)
            raise
    except OSError as error:
        raise OSError(error.errno, error.strerror or str(error), str(target)) from error
