"""The commands a school uses, run as it runs them: on a data folder of its own, on SQLite whatever the suite runs on."""

import os
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]


def environment(folder: Path) -> dict[str, str]:
    inherited = {name: value for name, value in os.environ.items() if name != "DATABASE_URL"}
    return {**inherited, "COUNTFOLD_DATA": str(folder), "DJANGO_SETTINGS_MODULE": "config.settings"}


def manage(folder: Path, *words: str | Path, typed: str = "") -> subprocess.CompletedProcess:
    return subprocess.run(
        [sys.executable, ROOT / "manage.py", *words],
        env=environment(folder),
        input=typed,
        capture_output=True,
        text=True,
        check=False,
    )
