"""What to do where a part of the machine is missing: say so, and on CI fail.

A skip on CI fails the run (tests/conftest.py), which then names each missing part once, however many tests need it.
"""

from typing import NoReturn

import pytest

NOT_TESTED = "NOT TESTED HERE: "


def absent(what: str) -> NoReturn:
    pytest.skip(f"{NOT_TESTED}{what} is missing.")
