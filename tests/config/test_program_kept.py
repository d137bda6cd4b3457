"""Of what a server's program is made of nothing is looked through again for what could be freed."""

import subprocess
import sys

OF_A_WHOLE_PROGRAM = 20_000  # objects; a bare Python has some thousands


def test_what_is_loaded_is_not_looked_through():
    asked = "import gc, config.wsgi; print(gc.get_freeze_count(), len(gc.get_objects()))"
    found = subprocess.run([sys.executable, "-c", asked], capture_output=True, text=True, check=True)
    kept, looked_through = map(int, found.stdout.split())
    assert looked_through < OF_A_WHOLE_PROGRAM < kept
