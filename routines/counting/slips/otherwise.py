"""What it would take to say what is on no list: the wrong way, some jumps more, digits swapped, a place off."""

from fractions import Fraction

from ..grid import Grid
from . import notes

# So few jumps are a likelier cause than a place that is off.
FEW = 3


def what_it_takes(grid: Grid, n: int, said: str, value: Fraction, away: Fraction, language: str) -> tuple[str, str]:
    """What would lead from what was due to what was said, and the same as a note.

    Units: value and away (said minus due) are in the base unit.
    """
    count = grid.count
    size = count.difference_text(away)
    jumps = away / count.step
    if jumps == -2 and n > 1:
        return "wrong-way", notes.wrong_way(count.difference_text(count.step), language)
    if _swapped(count.text(n), said):
        return "swapped", notes.swapped(language)
    if _one_place_off(grid, n, value, away) and (jumps.denominator > 1 or abs(jumps) > FEW):
        return "place", notes.place(size, away > 0, language)
    if jumps.denominator == 1:
        return "jumps", notes.jumps(int(jumps), count.difference_text(count.step), language)
    return "difference", notes.difference(size, away > 0, language)


def _swapped(due: str, said: str) -> bool:
    """Two digits have changed places, and nothing else.

    >>> _swapped("1,325", "1235"), _swapped("1,325", "5321"), _swapped("16", "61"), _swapped("16", "66")
    (True, True, True, False)
    """
    ours, theirs = ([sign for sign in text if sign.isdigit()] for text in (due, said))
    if len(ours) != len(theirs):
        return False
    at = [i for i, (mine, other) in enumerate(zip(ours, theirs, strict=True)) if mine != other]
    return len(at) == 2 and ours[at[0]] == theirs[at[1]] and ours[at[1]] == theirs[at[0]]


def _one_place_off(grid: Grid, n: int, value: Fraction, away: Fraction) -> bool:
    """One more or less in one place, the jump made a place too far left or right, or all digits moved a place."""
    count = grid.count
    before = count.value(n) - count.step
    if count.kind not in ("whole", "decimal", "money"):
        return False
    moved = value != 0 and count.value(n) / value in (10, Fraction(1, 10))
    jumped = value - before in (10 * count.step, count.step / 10)
    return moved or jumped or _is_a_place(abs(away))


def _is_a_place(size: Fraction) -> bool:
    """Whether a number is 1, 10, 100 ... or 1/10, 1/100 ..."""
    parts = (size.numerator, size.denominator)
    return 1 in parts and all(part == 10 ** (len(str(part)) - 1) for part in parts)
