"""How a child can tell where a hard jump leads: what fills up, what is broken apart, what lies on the way, what digits change."""

from collections.abc import Iterator
from fractions import Fraction

from routines.counting.kinds.names import Kind
from routines.counting.kinds.unit_names import WRITTEN_BY_NAME
from routines.counting.kinds.units import UNITS, Unit
from routines.counting.slips.jump import Jump
from routines.counting.written_units import unit_above, written_units

READ_BY_DIGITS = (Kind.WHOLE, Kind.DECIMAL, Kind.MONEY)

Told = tuple[str, dict[str, str]]
"""Under which key it is told, and what stands between the braces."""


def ways_to_tell(jump: Jump, landmark: Fraction, *, asked_for_digits: bool = False) -> Iterator[Told]:
    """The ways to tell a jump past, onto or away from a landmark, the best first; there may be none."""
    read_by_digits = jump.count.kind in READ_BY_DIGITS
    if asked_for_digits and read_by_digits and len(jump.said) == len(jump.due):
        yield from digits_changed(jump)
    yield from ways_by_the_jump(jump, landmark)
    if read_by_digits:
        yield from digits_changed(jump)


def ways_by_the_jump(jump: Jump, landmark: Fraction) -> Iterator[Told]:
    """Those that lead to the next count: what changes in it comes after."""
    yield from _at_zero(jump)
    yield from _filled(jump, landed=landmark == jump.b)
    yield from _over(jump, landmark)
    yield from _opened(jump)


def _at_zero(jump: Jump) -> Iterator[Told]:
    """0.4 more reaches zero; that is 5 below zero; 20 and 5 make 25, below zero."""
    before, by, text = abs(jump.a), abs(jump.s), jump.count.difference_text
    if jump.b == 0 and jump.s > 0:
        yield "to zero", {"by": text(by)}
    elif jump.b < 0 and jump.s < 0 and jump.a == 0:
        yield "from zero", {"by": text(by)}
    elif jump.b < 0 and jump.s < 0 and jump.a < 0:
        yield "below zero", {"rest": text(before), "by": text(by), "sum": text(before + by)}


def _sizes(jump: Jump) -> list[Fraction]:
    """What the jump may fill or open: a whole or a larger unit first, then tens, hundreds, thousands."""
    above = unit_above(jump.count)
    places = sorted(jump.places.above, key=lambda place: (place.name not in ("unit", "whole"), place.size))
    sizes = [*([above] if above else []), *(place.size for place in places)]
    return [size for size in sizes if size > abs(jump.s)]


def _filled(jump: Jump, *, landed: bool) -> Iterator[Told]:
    """9 in and 9 in more is 18 in, that is 1 ft 6 in; 4 and 6 make 10 on the way to 100."""
    before, by, text = abs(jump.a), abs(jump.s), jump.count.difference_text
    if abs(jump.b) <= before or jump.a * jump.b < 0:
        return
    # Within the first whole or the first ten nothing is left over of the count: only what fills it exactly is news.
    filling = (
        before % size
        for size in _sizes(jump)
        if before % size > 0 and (before % size + by == size or (before % size < before and before % size + by > size))
    )
    rest = next(filling, None)
    if rest is None:
        return
    told = {"rest": text(rest), "by": text(by), "sum": text(rest + by)}
    small = _small_unit(jump)
    if small is not None and (rest + by) % small.size == 0:
        yield "filled in units", told | {"many": f"{(rest + by) / small.size} {small.symbol}"}
    elif landed or small is not None:
        yield "filled", told


def carried(jump: Jump) -> Iterator[Told]:
    """9 and 1 make 10, in the jump from 89 to 100: the first place that is filled exactly."""
    before, by, text = abs(jump.a), abs(jump.s), jump.count.difference_text
    if abs(jump.b) > before and jump.a * jump.b >= 0:
        for place in jump.places.above:
            rest, more = before % place.size, by % place.size
            if rest and rest + more == place.size:
                yield "filled", {"rest": text(rest), "by": text(more), "sum": text(place.size)}
                return


def changed_parts(jump: Jump) -> list[tuple[str, int, int]]:
    """Which parts of what is written change, larger first: hours, 12 to 1; minutes, 50 to 10. No tops and no bottoms."""
    before, due = jump.count.parts(jump.n - 1), jump.count.parts(jump.n)
    return [
        (part, before[part], due[part])
        for part in jump.count.part_names()
        if part not in ("top", "bottom") and part in before and part in due and before[part] != due[part]
    ]


def fraction_changes(jump: Jump) -> bool:
    """Whether a top or a bottom changes, or comes or goes."""
    before, due = jump.count.parts(jump.n - 1), jump.count.parts(jump.n)
    return any(before.get(part) != due.get(part) for part in ("top", "bottom"))


def _small_unit(jump: Jump) -> Unit | None:
    """The smaller one of two units that are written by their signs; minutes on a clock."""
    if jump.count.kind == Kind.CLOCK:
        return UNITS["min"]
    units = written_units(jump.count)
    return units.small if units and units.large and units.small.symbol not in WRITTEN_BY_NAME else None


def _over(jump: Jump, landmark: Fraction) -> Iterator[Told]:
    """2 to 60, then 4 more."""
    to, on = abs(landmark - jump.a), abs(jump.b - landmark)
    if to and on and to + on == abs(jump.s):
        text = jump.count.difference_text
        yield ("over back" if jump.s < 0 else "over"), {"to": text(to), "on": text(on)}


def _opened(jump: Jump) -> Iterator[Told]:
    """1 less than 10 is 9; from 50 to 48: 10 is 8 and 2, so 50 is 48 and 2."""
    before, by, text = abs(jump.a), abs(jump.s), jump.count.difference_text
    if abs(jump.b) >= before or jump.a * jump.b < 0:
        return
    full = next((size for size in _sizes(jump) if before % size == 0), None)
    if full is not None:
        key = "opened" if before == full else "opened like ten"
        told = {"full": text(full), "by": text(by), "rest": text(full - by)}
        yield key, told
        if key != "opened":
            yield "opened", told


def digits_changed(jump: Jump) -> Iterator[Told]:
    """Both digits change; 2 of 3 digits change; now there are 3 digits; nothing where that would be no news."""
    before, due = ([sign for sign in text if sign.isdigit()] for text in (jump.said, jump.due))
    many = {"many": str(len(due))}
    if len(due) > len(before):
        yield "more digits", many
    elif len(due) == len(before) > 1:
        changed = sum(a != b for a, b in zip(before, due, strict=True))
        key = "some digits" if changed < len(due) else "both digits" if changed == 2 else "all digits"
        if changed > 1:
            yield key, many | {"k": str(changed)}
