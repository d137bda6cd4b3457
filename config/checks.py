"""What a look at the machine can tell before something is missing at print time: named, with what to do."""

import ctypes
import os
import sys
from contextlib import suppress

from django.conf import settings
from django.core.checks import CheckMessage, Warning, register

# The names under which WeasyPrint looks for Pango, by system.
PANGO_NAMES = ("libpango-1.0.so.0", "libpango-1.0.dylib", "libpango-1.0-0.dll", "libpango-1.0-0", "pango-1.0-0")

# The folders it looks in on Windows, which looks for a program's libraries nowhere that it was not told of.
PANGO_FOLDERS = (r"C:\msys64\ucrt64\bin", r"C:\msys64\mingw64\bin", r"C:\Program Files\GTK3-Runtime Win64\bin")

PANGO_HINT = {
    "linux": (
        "Debian and Ubuntu: sudo apt install libpango-1.0-0 libpangoft2-1.0-0 libharfbuzz-subset0. "
        "Fedora: sudo dnf install pango."
    ),
    "darwin": "With Homebrew: brew install pango, and start Countfold again.",
    "win32": (
        "Install MSYS2 as it proposes, then in its window MSYS2 UCRT64: pacman -S mingw-w64-ucrt-x86_64-pango, "
        "and start Countfold again."
    ),
}


def look_where_weasyprint_looks() -> None:
    if sys.platform == "win32":
        folders = os.environ.get("WEASYPRINT_DLL_DIRECTORIES")
        for folder in folders.split(";") if folders else PANGO_FOLDERS:
            with suppress(OSError):
                os.add_dll_directory(folder)


def pango_is_there() -> bool:
    """Ask the system for the library itself: importing WeasyPrint would answer too, but takes most of a second."""
    look_where_weasyprint_looks()
    for name in PANGO_NAMES:
        try:
            ctypes.CDLL(name)
        except OSError:
            continue
        return True
    return False


@register
def check_pango(**kwargs: object) -> list[CheckMessage]:
    if pango_is_there():
        return []
    return [
        Warning(
            "Pango is not installed, so plans can't be made into PDF files. They still print from the browser.",
            hint=PANGO_HINT.get(sys.platform, PANGO_HINT["linux"]),
            id="countfold.W001",
        )
    ]


@register
def check_plain_http(**kwargs: object) -> list[CheckMessage]:
    others = [host for host in settings.ALLOWED_HOSTS if host not in ("localhost", "127.0.0.1", "[::1]")]
    if settings.HTTPS or not others:
        return []
    return [
        Warning(
            f"Served without HTTPS to {', '.join(others)}: passphrases cross the network readable.",
            hint="Give run.py serve --cert and --key, or set COUNTFOLD_HTTPS=1 behind a proxy that does HTTPS.",
            id="countfold.W002",
        )
    ]
