"""Errors of the engine, asked for by the sentence that a teacher reads."""

import re
from collections.abc import Callable

from routines.counting import CountError
from routines.errors import say


def saying(words: str) -> Callable[[CountError], bool]:
    """For `pytest.raises(CountError, check=saying("..."))`."""
    return lambda error: re.search(words, say(error)) is not None
