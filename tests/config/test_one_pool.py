"""All threads of a server take their memory from one pool, where the C library can be told so."""

import platform
import subprocess
import sys

from config.one_pool import share_one_pool

# Each thread takes a little and holds it until all have; then glibc is asked how many pools there are.
POOLS = """
import ctypes, sys, threading
if sys.argv[1] == "server":
    import config.wsgi
c = ctypes.CDLL(None)
c.malloc.argtypes, c.malloc.restype = [ctypes.c_size_t], ctypes.c_void_p
c.fopen.argtypes, c.fopen.restype = [ctypes.c_char_p, ctypes.c_char_p], ctypes.c_void_p
c.malloc_info.argtypes, c.fclose.argtypes = [ctypes.c_int, ctypes.c_void_p], [ctypes.c_void_p]
together = threading.Barrier(5)
def take():
    c.malloc(10_000)
    together.wait()
threads = [threading.Thread(target=take) for _ in range(4)]
for thread in threads:
    thread.start()
together.wait()
told = c.fopen(b"/dev/stdout", b"w")
c.malloc_info(0, told)
c.fclose(told)
"""


def test_threads_of_a_server_share_one_pool():
    if platform.libc_ver()[0] != "glibc":  # there is nothing to be told
        assert not share_one_pool()
        return
    pools = {}
    for how in ("server", "plain"):
        asked = subprocess.run([sys.executable, "-c", POOLS, how], capture_output=True, text=True, check=True)
        pools[how] = asked.stdout.count("<heap nr=")
    assert pools["server"] == 1 < pools["plain"]
