"""A browser that can't start is one missing part with a name, and on CI a failed run."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.browser.chromium import NAMES

ROOT = Path(__file__).resolve().parents[2]
LOADS_NOTHING = "#!/bin/sh\necho 'error while loading shared libraries: libnosuch.so.1: cannot open' >&2\nexit 127\n"


@pytest.fixture
def broken_browser(tmp_path) -> Path:
    for name in NAMES:
        (tmp_path / name).write_text(LOADS_NOTHING)
        (tmp_path / name).chmod(0o755)
    return tmp_path


@pytest.mark.skipif(os.name != "posix", reason="the stand-in is a shell script")
def test_a_browser_that_can_not_start_is_named_once_and_fails_the_run_on_ci(broken_browser, monkeypatch):
    monkeypatch.setenv("PATH", str(broken_browser), prepend=os.pathsep)
    monkeypatch.setenv("CI", "true")
    monkeypatch.setenv("COUNTFOLD_DATA", str(broken_browser / "data"))  # with a database of its own for its tests
    monkeypatch.delenv("DATABASE_URL", raising=False)
    done = subprocess.run(
        [sys.executable, "-m", "pytest", "tests/browser/test_lighting.py"],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == pytest.ExitCode.TESTS_FAILED
    assert done.stdout.count("A Chromium that starts") == 1
    assert "libnosuch.so.1" in done.stdout
    assert "CI skips nothing" in done.stdout
    assert "error" not in done.stdout.splitlines()[-1]
