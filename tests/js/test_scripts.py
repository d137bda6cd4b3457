"""The scripts' own tests, run by node."""

import shutil
import subprocess
from pathlib import Path

from tests.absent import absent

HERE = Path(__file__).parent


def test_the_scripts_pass_their_own_tests():
    node = shutil.which("node") or absent("node")
    files = [str(path) for path in sorted(HERE.glob("*.test.js"))]
    assert files
    done = subprocess.run([node, "--test", *files], capture_output=True, text=True, timeout=120, check=False)
    assert done.returncode == 0, done.stdout[-4000:] + done.stderr[-2000:]
