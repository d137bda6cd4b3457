"""When does an arithmetic progression first meet a window of remainders? The number theory under every `breaks_at`."""

from __future__ import annotations


def first_in_window(start: int, step: int, modulus: int, low: int, high: int) -> int | None:
    """Give the least j >= 0 with low <= (start + j*step) mod modulus <= high, or None if there is none.

    Needs 0 <= low <= high < modulus.
    Source: proof - take the start away on both sides; then j*step must land in a window mod the modulus. If a multiple
    of step lies in it before the first turn, that is the answer; else the turns themselves are the same question
    with the modulus step, and the numbers shrink as in Euclid's algorithm.

    >>> first_in_window(3, 7, 10, 9, 9)  # 3, 10, 17, 24, 31, 38, 45, 52, 59
    8
    >>> first_in_window(0, 4, 10, 5, 5) is None
    True
    """
    if low <= start % modulus <= high:
        return 0
    low, high = (low - start) % modulus, (high - start) % modulus
    # 0 is outside the window, so it does not wrap: low <= high.
    return _first_multiple(step % modulus, modulus, low, high)


def _first_multiple(step: int, modulus: int, low: int, high: int) -> int | None:
    """Give the least j >= 1 with low <= j*step mod modulus <= high, where 0 < low <= high < modulus."""
    if step == 0:
        return None
    if 2 * step > modulus:  # go the short way round: mirror the circle
        step, low, high = modulus - step, modulus - high, modulus - low
    j = -(-low // step)
    if j * step <= high:
        return j
    # No multiple of step lies in the window as it stands; it lies in the window raised by t turns where
    # (t*modulus + low .. t*modulus + high) holds a multiple of step: a window for t*modulus mod step.
    turns = _first_multiple(modulus % step, step, -high % step, -low % step)
    return None if turns is None else -(-(turns * modulus + low) // step)
