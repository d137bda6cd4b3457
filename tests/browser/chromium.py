"""Chromium as this machine has it, and whether it starts. `python -m tests.browser.chromium` says what is missing."""

import os
import shutil
import sys

from playwright.sync_api import Browser, Playwright, sync_playwright

QUIET = ["--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking"]


# The one without windows first: the same engine, less than half the work, for nobody looks at a browser's own frame.
NAMES = ("chromium-headless-shell", "chromium", "chromium-browser", "google-chrome")


def find_chromium() -> str | None:
    return next(filter(None, map(shutil.which, NAMES)), None)


def start_chromium(playwright: Playwright, path: str) -> Browser:
    as_root = hasattr(os, "geteuid") and os.geteuid() == 0
    return playwright.chromium.launch(executable_path=path, args=[*QUIET, *(["--no-sandbox"] if as_root else [])])


def what_is_missing() -> str:
    """What to call absent, in one line; nothing where the browser starts."""
    path = find_chromium()
    if path is None:
        return "Chromium"
    try:
        with sync_playwright() as playwright:
            start_chromium(playwright, path).close()
    except Exception as error:  # a driver that can't be loaded ends in whatever its broken pipe raises
        lines = [line.strip() for line in str(error).splitlines() if line.strip()]
        why = next((line for line in lines if "error while loading" in line), lines[0] if lines else repr(error))
        return f"A Chromium that starts ({why[:200]}; on Debian and Ubuntu Playwright needs libatomic1 too)"
    return ""


if __name__ == "__main__":
    missing = what_is_missing()
    sys.stdout.write(missing)
    sys.exit(1 if missing else 0)
