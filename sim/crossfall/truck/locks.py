"""Locks on files that the system takes back when their process ends, however it ends."""

from __future__ import annotations

import sys

if sys.platform == "win32":
    import msvcrt

    FAR = 1 << 30  # the byte that is locked: far past what a lock file may hold

    def lock(handle: int) -> bool:
        """Lock an open file for this process alone; False where another holds it."""
        import os

        os.lseek(handle, FAR, os.SEEK_SET)
        try:
            msvcrt.locking(handle, msvcrt.LK_NBLCK, 1)
        except OSError:
            return False
        return True

    def is_locked(handle: int) -> bool:
        """Whether another process holds the file."""
        if not lock(handle):
            return True
        msvcrt.locking(handle, msvcrt.LK_UNLCK, 1)
        return False

else:
    import fcntl

    def lock(handle: int) -> bool:
        """Lock an open file for this process alone; False where another holds it."""
        try:
            fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except OSError:
            return False
        return True

    def is_locked(handle: int) -> bool:
        """Whether another process holds the file."""
        try:
            fcntl.flock(handle, fcntl.LOCK_SH | fcntl.LOCK_NB)
        except OSError:
            return True
        fcntl.flock(handle, fcntl.LOCK_UN)
        return False
