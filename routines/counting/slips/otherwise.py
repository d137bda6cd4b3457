"""What it would take to say what is on no list: the wrong way, some jumps more, digits swapped, a place off."""

from fractions import Fraction

from ..grid import Grid
from ..kinds.decimal import DecimalNumber
from ..kinds.names import Kind

# So few jumps are a likelier cause than a place that is off; so many nobody counts.
FEW, MANY = 3, 12
HALF_DAY = 720
# The kinds that are written in places.
IN_PLACES = (Kind.WHOLE, Kind.DECIMAL, Kind.MONEY)


def what_it_takes(grid: Grid, n: int, said: str, value: Fraction, away: Fraction) -> tuple[str, str | None]:
    """What would lead from what was due to what was said, and of a place what is off.

    Units: value and away (said minus due) are in the base unit.
    """
    count = grid.count
    jumps = away / count.step
    if jumps == -2 and n > 1:
        return "wrong-way", None
    if count.wrap is not None and abs(away) == HALF_DAY:
        return "half-day", None
    if _mark_moved(grid, n, value):
        return "place", "digits moved"
    if _swapped(count.text(n), said):
        return "swapped", None
    if jumps.denominator > 1 or abs(jumps) > FEW:
        if _one_place_off(grid, n, value):
            return "place", "place off"
        if _one_in_a_place(grid, away):
            return "place", "one in a place"
    if jumps.denominator == 1 and abs(jumps) <= max(MANY, grid.line_length):
        return "jumps", None
    return "difference", None


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


def _one_place_off(grid: Grid, n: int, value: Fraction) -> bool:
    """The jump made a place too far left or right, or a zero too many or too few."""
    count = grid.count
    due = count.value(n)
    if count.kind not in IN_PLACES and count.system != "metric":
        return False
    jumped = value - due + count.step in (10 * count.step, count.step / 10)
    zero = count.kind == Kind.WHOLE and _differ_by_a_zero(str(abs(due)), str(abs(value)))
    return jumped or zero


def _one_in_a_place(grid: Grid, away: Fraction) -> bool:
    """One more or less in a place, but for the last place: 75 for 76 is one too little and nothing more."""
    count = grid.count
    last = Fraction(1, 10**count.form.places_shown) if isinstance(count.form, DecimalNumber) else 1
    return count.kind in IN_PLACES and abs(away) > last and _is_a_place(abs(away))


def _differ_by_a_zero(one: str, other: str) -> bool:
    """Whether one numeral is the other with one more 0 among its digits.

    >>> _differ_by_a_zero("76", "706"), _differ_by_a_zero("5020", "502"), _differ_by_a_zero("76", "716")
    (True, True, False)
    """
    short, long = sorted((one, other), key=len)
    return any(long[i] == "0" and long[:i] + long[i + 1 :] == short for i in range(1, len(long)))


def _mark_moved(grid: Grid, n: int, value: Fraction) -> bool:
    """Whether all digits have moved: 30 for 3.0, $105 for $1.05, 20 L for 2 L."""
    if grid.count.kind in (Kind.FRACTION, Kind.CLOCK) or not value:
        return False
    ratio = grid.count.value(n) / value
    return ratio > 0 and ratio != 1 and _is_a_place(ratio)


def _is_a_place(size: Fraction) -> bool:
    """Whether a number is 1, 10, 100 ... or 1/10, 1/100 ..."""
    parts = (size.numerator, size.denominator)
    return 1 in parts and all(part == 10 ** (len(str(part)) - 1) for part in parts)
