"""Makes .venv and keeps it as the requirement files say. Standard library only: run.py needs it before there is one."""

import hashlib
import os
import subprocess
import sys
from pathlib import Path

HERE = Path(__file__).resolve().parent.parent
VENV = HERE / ".venv"
WINDOWS = os.name == "nt"
PYTHON = VENV / ("Scripts/python.exe" if WINDOWS else "bin/python")
NEEDED_PYTHON = (3, 11)


def say(text: str) -> None:
    print(text, flush=True)  # noqa: T201 - this is what the person at the terminal reads


def stop(text: str) -> None:
    say(text)
    raise SystemExit(1)


def make_venv() -> None:
    """Make .venv, or make it anew where it belongs to another Python than the one running this."""
    made_by = VENV / "pyvenv.cfg"
    version = f"version = {sys.version_info.major}.{sys.version_info.minor}."
    if PYTHON.exists() and made_by.exists() and version in made_by.read_text(encoding="utf-8"):
        return
    try:
        import ensurepip  # noqa: F401 - on Debian its absence is the sign that venv is missing
        import venv
    except ImportError:
        stop(
            f"Python's venv module is missing. On Debian or Ubuntu: sudo apt install "
            f"python{sys.version_info.major}.{sys.version_info.minor}-venv. Then run this again."
        )
    say("Making .venv ...")
    venv.create(VENV, with_pip=True, clear=VENV.exists())


def prepare(files: tuple[str, ...]) -> None:
    """Bring .venv up to date with these requirement files; a stamp by their hash makes this free the next time."""
    if sys.version_info < NEEDED_PYTHON:
        stop(f"Countfold needs Python 3.11 or newer; this is {sys.version.split()[0]}.")
    make_venv()
    for name in files:
        stamp = VENV / f"{name}.stamp"
        digest = hashlib.sha256((HERE / name).read_bytes()).hexdigest()
        if not stamp.exists() or stamp.read_text(encoding="ascii") != digest:
            install(name)
            stamp.write_text(digest, encoding="ascii")


def install(name: str) -> None:
    say(f"Installing what {name} lists; the first time takes about a minute.")
    command = [PYTHON, "-m", "pip", "install", "--require-hashes", "--no-input", "--disable-pip-version-check"]
    command += ["--progress-bar", "off", "-r", HERE / name]
    last_lines: list[str] = []
    collected = 0
    with subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True) as pip:  # noqa: S603
        for line in pip.stdout:
            last_lines = [*last_lines[-14:], line]
            if line.startswith("Collecting"):
                collected += 1
                if collected % 10 == 0:
                    say(f"  {collected} packages ...")
    if pip.returncode:
        stop(
            "".join(last_lines) + f"\nThe packages in {name} could not be installed; the lines above say why. "
            "Mostly this machine has no way to the package index. Run this again when it has."
        )
    say(f"  {collected or 'no'} new packages. Done.")
