"""One pool of memory for all threads of a server.

The C library of most Linux systems gives each thread a pool of its own, so that threads need not wait for each other, and each
keeps what it once needed. Threads of Python take turns anyway.
"""

import sys

M_ARENA_MAX = -8  # of glibc's malloc.h


def share_one_pool() -> bool:
    """Whether it could be settled: not on other systems, nor with other C libraries. To be called before threads start."""
    if sys.platform != "linux":
        return False
    import ctypes

    mallopt = getattr(ctypes.CDLL(None), "mallopt", None)
    return mallopt is not None and bool(mallopt(M_ARENA_MAX, 1))
