"""Makes .venv and keeps it as the requirement files say. Standard library only: run.py needs it before there is one.

.venv is made where it stays, for the scripts inside hold its path. The file `.venv.unfinished` is there for as long as
something in .venv is being changed: a start that finds it knows that the last one was cut off, and makes .venv anew.
"""

import errno
import hashlib
import os
import shutil
import subprocess
import sys
from pathlib import Path
from typing import Any, NoReturn

from .one_at_a_time import one_at_a_time

HERE = Path(__file__).resolve().parent.parent
VENV = HERE / ".venv"
UNFINISHED = HERE / ".venv.unfinished"
LOCK = HERE / ".venv.lock"
WINDOWS = os.name == "nt"
PYTHON = VENV / ("Scripts/python.exe" if WINDOWS else "bin/python")
# What is free below this is as good as nothing: pip takes what it needs in pieces, and clears some away when it fails.
LITTLE_ROOM = 30 * 1024 * 1024


def say(text: str) -> None:
    print(text, flush=True)  # noqa: T201 - this is what the person at the terminal reads


def stop(text: str) -> NoReturn:
    say(text)
    raise SystemExit(1)


def prepare(files: tuple[str, ...]) -> None:
    """Bring .venv up to date with these requirement files; stamps by their hash make this free the next time."""
    if is_ready(files):
        return
    try:
        with one_at_a_time(LOCK, when_waiting=lambda: say("Another start is making .venv. Waiting for it ...")) as lock:
            if not is_ready(files):
                bring_up_to_date(files, lock)
    except OSError as error:
        stop(why_not_written(error))


def is_ready(files: tuple[str, ...]) -> bool:
    return is_sound() and all(map(is_stamped, files))


def is_sound() -> bool:
    """Whether .venv was finished, by a Python that is still there and of the version that runs this."""
    made_by = VENV / "pyvenv.cfg"
    if UNFINISHED.exists() or not PYTHON.exists() or not made_by.exists() or not any(VENV.glob("*.stamp")):
        return False
    said = dict(
        line.split(" = ", 1) for line in made_by.read_text("utf-8", errors="replace").splitlines() if " = " in line
    )
    version = f"{sys.version_info.major}.{sys.version_info.minor}."
    return said.get("version", "").startswith(version) and Path(said.get("home", "")).is_dir()


def stamp(name: str) -> Path:
    return VENV / f"{name}.stamp"


def is_stamped(name: str) -> bool:
    return stamp(name).exists() and stamp(name).read_bytes() == digest(name).encode()


def digest(name: str) -> str:
    return hashlib.sha256((HERE / name).read_bytes()).hexdigest()


def bring_up_to_date(files: tuple[str, ...], lock: int) -> None:
    if not is_sound():
        UNFINISHED.touch()
        make(lock)
        stamp("made").touch()
        finished()
    for name in files:
        if not is_stamped(name):
            install(name, lock)


def finished() -> None:
    if sys.platform != "win32":
        os.sync()  # after a power cut too, what calls itself finished is
    UNFINISHED.unlink()


def make(lock: int) -> None:
    try:
        import ensurepip  # noqa: F401 - on Debian its absence is the sign that venv is missing
        import venv
    except ImportError:
        stop(
            f"Python's venv module is missing. On Debian or Ubuntu: sudo apt install "
            f"python{sys.version_info.major}.{sys.version_info.minor}-venv. Then run this again."
        )
    say("Making .venv ...")
    if VENV.is_file():
        VENV.unlink()
    venv.create(VENV, clear=VENV.exists())
    pip_comes_in = subprocess.run(  # noqa: S603
        [PYTHON, "-Im", "ensurepip", "--upgrade", "--default-pip"],
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        errors="replace",
        check=False,
        **handing_on(lock),
    )
    if pip_comes_in.returncode:
        stop_if_no_room(pip_comes_in.stdout)
        stop(f"{pip_comes_in.stdout}\nPython could not put pip into .venv; the lines above say why.".lstrip())


def install(name: str, lock: int) -> None:
    say(f"Installing what {name} lists; the first time takes about a minute.")
    command: list[str | Path] = [
        PYTHON,
        "-m",
        "pip",
        "install",
        "--require-hashes",
        "--no-input",
        "--disable-pip-version-check",
    ]
    command += ["--progress-bar", "off", "-r", HERE / name]
    last_lines: list[str] = []
    collected = 0
    changing = False
    UNFINISHED.touch()
    with subprocess.Popen(  # noqa: S603
        command,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        errors="replace",
        **handing_on(lock),
    ) as pip:
        for line in pip.stdout or ():
            last_lines = [*last_lines[-14:], line]
            changing = changing or line.startswith("Installing collected packages")
            if line.startswith("Collecting"):
                collected += 1
                if collected % 10 == 0:
                    say(f"  {collected} packages ...")
    if pip.returncode:
        if pip.returncode > 0 and not changing:
            UNFINISHED.unlink()  # pip gave up by itself before it touched anything
        said = "".join(last_lines)
        stop_if_no_room(said)
        stop(
            f"{said}\nThe packages in {name} could not be installed; the lines above say why. "
            "Mostly this machine has no way to the package index. Run this again when it has."
        )
    stamp(name).write_text(digest(name), encoding="ascii")
    finished()
    say(f"  {collected or 'no'} new packages. Done.")


def handing_on(lock: int) -> dict[str, Any]:
    """The child holds the lock too: if this process is killed and the child lives on, the next start waits for it."""
    return {} if WINDOWS else {"pass_fds": [lock]}


def stop_if_no_room(said: str) -> None:
    if "No space left on device" in said or shutil.disk_usage(HERE).free < LITTLE_ROOM:
        raise OSError(errno.ENOSPC, "no room")


def why_not_written(error: OSError) -> str:
    if error.errno in (errno.ENOSPC, getattr(errno, "EDQUOT", None)):
        return f"The disk is full: .venv in {HERE} needs about 300 MB. Make some room, then run this again."
    return (
        f"{HERE} can't be written to ({error.strerror or error}), and Countfold makes .venv in it. "
        "Copy the folder to a place of your own, and run this there."
    )
