"""What to do where a part of the machine is missing: say so, and on CI fail."""

import os
from typing import NoReturn

import pytest


def absent(what: str) -> NoReturn:
    if os.environ.get("CI") == "true":
        pytest.fail(f"{what} is missing, and CI skips nothing.")
    pytest.skip(f"NOT TESTED HERE: {what} is missing.")
