"""When the count goes on: the first term at which a reading stops keeping step along its lines, and the last."""

from __future__ import annotations

from collections.abc import Iterator

from ..count import Count
from .lines import Progression
from .readings import Reading


def crossing(count: Count) -> int | None:
    """The first term on the other side of zero than the first one (0 itself counts as above), None if never."""
    start, step = count.scaled_start, count.scaled_step
    if start >= 0 > step:
        return start // -step + 2
    if start < 0 < step:
        return -(start // step) + 1
    return None


def first_break(reading: Reading, pairs: list[Progression], gap: int, change: int) -> int | None:
    """The first of these terms that does not read `change` more than the one `gap` terms before it, None if none."""
    zero = None if reading.reads_sign else crossing(reading.count)
    if zero is None:
        return _earliest(reading, pairs, gap, change)
    found = _earliest(reading, [p for pair in pairs if (p := _until(pair, zero))], gap, change)
    if found is None:
        found = min(_listed(reading, pairs, zero, zero + gap, gap, change), default=None)
    return _earliest(reading, [_since(pair, zero + gap) for pair in pairs], gap, change) if found is None else found


def last_break(reading: Reading, pairs: list[Progression], gap: int, change: int) -> int | None:
    """The last of these terms that does not read `change` more than the one `gap` terms before it; 0 if none does.

    None: there is no last one. Source: proof - from `settled` on the readings come again for ever in the same way, so
    one break there means that they never end.
    """
    ends = [pair.end for pair in pairs if pair.end is not None]
    if len(ends) == len(pairs):  # lines that end: look at every term
        return max(_listed(reading, pairs, 1, max(ends, default=1), gap, change), default=0)
    settled = reading.settled(crossing(reading.count)) + gap
    if _earliest(reading, [_since(pair, settled) for pair in pairs], gap, change) is not None:
        return None
    zero = 1 if reading.reads_sign else crossing(reading.count) or 1
    last = max(_listed(reading, pairs, zero, settled, gap, change), default=0)
    if last:
        return last
    before = [p for pair in pairs if (p := _until(pair, zero))]
    return max((reading.last_miss(pair, gap, change) for pair in before), default=0)


def _earliest(reading: Reading, pairs: list[Progression], gap: int, change: int) -> int | None:
    found: int | None = None
    for pair in pairs:
        until = _until(pair, pair.end if found is None else found)
        n = reading.first_miss(until, gap, change) if until else None
        found = n if n is not None else found
    return found


def _listed(reading: Reading, pairs: list[Progression], start: int, end: int, gap: int, change: int) -> Iterator[int]:
    for pair in pairs:
        part = _until(_since(pair, start), end)
        for n in range(part.first, part.end or 0, part.by) if part else ():
            if reading.differs(n, gap, change):
                yield n


def _until(terms: Progression, end: int | None) -> Progression | None:
    """The same terms below `end` (None: all of them); None if there are none."""
    ends = [at for at in (end, terms.end) if at is not None]
    return Progression(terms.first, terms.by, min(ends, default=None)) if all(terms.first < at for at in ends) else None


def _since(terms: Progression, start: int) -> Progression:
    if terms.first >= start:
        return terms
    return Progression(start + (terms.first - start) % terms.by, terms.by, terms.end)
