"""How much work one request may be: counted in Python calls, which are the same on a slow machine and on a fast one."""

import cProfile
import signal
from collections.abc import Iterator
from contextlib import contextmanager
from types import FrameType

CALLS_AT_MOST = 6_000_000  # the widest search for a design that is let through makes 4.2 million, the largest page 0.4
ENDLESS = 60  # seconds of the processor's time, long past the calls above on any machine: ends what would not end


class TooMuchWork(BaseException):
    """Not an Exception: nothing in the app may answer it as if it were a fault of its own."""


@contextmanager
def bounded_work(at_most: int = CALLS_AT_MOST) -> Iterator[list[int]]:
    """Raises TooMuchWork after what made more calls. Yields a list that ends with how many there were."""
    made: list[int] = []
    counted = cProfile.Profile(builtins=False)
    with ended_some_day():
        counted.enable()
        try:
            yield made
        finally:
            counted.disable()
            made.append(sum(entry.callcount for entry in counted.getstats()))
    if made[-1] > at_most:
        raise TooMuchWork(f"{made[-1]} calls")


@contextmanager
def ended_some_day() -> Iterator[None]:
    if not hasattr(signal, "setitimer"):  # Windows waits
        yield
        return

    def end(number: int, frame: FrameType | None) -> None:
        raise TooMuchWork(f"over {ENDLESS} seconds, the last in {frame.f_code.co_qualname if frame else 'nothing'}")

    before = signal.signal(signal.SIGVTALRM, end)
    signal.setitimer(signal.ITIMER_VIRTUAL, ENDLESS)
    try:
        yield
    finally:
        signal.setitimer(signal.ITIMER_VIRTUAL, 0)
        signal.signal(signal.SIGVTALRM, before)
