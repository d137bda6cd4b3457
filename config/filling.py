"""What pages say of saved plans, made anew beside the server after an upgrade, so that soon nobody waits for it.

A page makes what it misses when it is asked for; this only comes before. It is a process of its own that yields to every
other, ends with the server whose input it holds, and may be ended at any time: what it made stays. Run as
`python -m config.filling`.
"""

import os
import subprocess
import sys
import threading

import django

STAMP = "filled.stamp"


def fill_beside() -> None:
    """Start it, where there are plans and this program has not been through all of them. Whoever serves calls this once."""
    from django.conf import settings

    from routines.models import Routine

    if filled() or not Routine.objects.exists():
        return
    low = 0
    if sys.platform == "win32":
        low = subprocess.BELOW_NORMAL_PRIORITY_CLASS
    beside.append(
        subprocess.Popen(
            [sys.executable, "-m", "config.filling"],
            cwd=settings.BASE_DIR, stdin=subprocess.PIPE, stdout=subprocess.DEVNULL, creationflags=low,
        )
    )  # fmt: skip


beside: "list[subprocess.Popen[bytes]]" = []
"""Held for as long as the server lives: the pipe is closed with it, however it ends."""


def filled() -> bool:
    """Whether this program has been through all plans."""
    from django.conf import settings

    from routines.worked_out.made_by import made_by

    stamp = settings.DATA_DIR / STAMP
    return bool(stamp.exists() and stamp.read_text(encoding="ascii") == made_by())


def fill_again() -> None:
    """Whoever puts other plans in the place of these calls this: the next start goes through all of them."""
    from django.conf import settings

    (settings.DATA_DIR / STAMP).unlink(missing_ok=True)


def fill() -> None:
    """Make what is missing; a second one waits for the first and finds nothing to do."""
    from django.conf import settings
    from django.core.management import call_command

    from routines.worked_out.made_by import made_by

    from .one_at_a_time import one_at_a_time

    with one_at_a_time(settings.DATA_DIR / "filling.lock", when_waiting=lambda: None):
        if not filled():
            call_command("recompute_facts")
            (settings.DATA_DIR / STAMP).write_text(made_by(), encoding="ascii")


def end_with_the_server() -> None:
    sys.stdin.read()
    os._exit(0)


if __name__ == "__main__":
    if sys.platform != "win32":
        os.nice(19)
    threading.Thread(target=end_with_the_server, daemon=True).start()
    os.environ.setdefault("DJANGO_SETTINGS_MODULE", "config.settings")
    django.setup()
    fill()
