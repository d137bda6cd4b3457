"""False ideas that a class would believe: near misses, each so close to what is so that only the grid can tell.

Sources: that what is twice as far on is twice as much is the illusion of linearity (De Bock, Van Dooren, Janssens and
Verschaffel, The Illusion of Linearity, 2007); that below zero a number with larger digits is larger is from Bofferding, Negative
Integer Understanding, Journal for Research in Mathematics Education 45(2), 2014; the others are common practice, no source.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from routines.counting import Audience, Count, Fill, Grid, Kind
from routines.counting.claims import DigitRunClaim, Direction, NeighbourClaim, TableClaim
from routines.counting.kinds.unit_names import NAMES
from routines.counting.written_units import larger_unit_size, unit_to_reach
from routines.words import LANGUAGES, check, locate
from routines.words.describing import describe
from routines.words.page import page_of
from routines.words.spoken_units import with_unit_names

from .sentences import said, ways

# From which level a class speaks of tables and of doubles: 3.OA.C.7, 4.OA.A.1 (Common Core State Standards, 2010).
TABLES_FROM, DOUBLES_FROM = 3, 4
TABLES = range(2, 13)
NEAR = 5
# From which level a class divides with remainders: 4.OA.A.3 (Common Core State Standards, 2010).
REMAINDERS_FROM = 4
# Levels K and 1.
YOUNG = 1
# So many round numbers past the end are thought of at most.
NEAREST = 3


@dataclass(frozen=True, slots=True)
class NearMiss:
    """In which words a child may say it, what to ask back, and for the teacher why it is not so."""

    words: tuple[str, ...]
    replies: tuple[str, ...]
    why: str


def near_misses(grid: Grid, audience: Audience) -> Iterator[NearMiss]:
    """The most believable for the level first."""
    finds = {
        "table": _the_table,
        "below zero": _bigger_below_zero,
        "digit": _only_the_first_digit,
        "double": _twice_as_far_is_double,
        "lands": _lands_on_a_round_number,
        "even": _every_even_number,
        "line": _one_jump_too_few,
    }
    older = ("table", "below zero", "lands", "double", "digit", "line", "even")
    order = older if audience.level >= TABLES_FROM else ("below zero", "lands", "even", "digit", "line")
    for name in order:
        yield from finds[name](grid, audience)


def _the_table(grid: Grid, audience: Audience) -> Iterator[NearMiss]:
    """Counting by 6 sounds like the six times table, from wherever it starts."""
    count, step = grid.count, grid.count.step
    if count.kind != Kind.WHOLE or abs(step) not in TABLES or count.start % step == 0:
        return
    between = abs(step) * (int(min(count.value(1), count.value(3)) // abs(step)) + 1)
    yield NearMiss(
        ways("table", audience.language, step=count.difference_text(step)),
        ways("table reply", audience.language, multiple=count.text_of(between)),
        check(TableClaim(step), grid, audience=audience).because,
    )


def _lands_on_a_round_number(grid: Grid, audience: Audience) -> Iterator[NearMiss]:
    """A round number just past the end that is jumped over."""
    count, last = grid.count, grid.count.value(grid.terms)
    on, reach = (1 if count.step > 0 else -1), abs(last - count.value(1)) / 2
    sizes = [count.form.round_number() * power for power in (100, 10, 1)]
    # Nobody expects 300 of 240, 340, 440: what is round to a count by hundreds is a thousand.
    friendly = [size for size in sizes if count.step % size] or sizes[:1]
    if count.kind == Kind.WHOLE and audience.level <= YOUNG and count.step % 5 == 0:
        friendly = [Fraction(10), Fraction(5), *friendly]  # the youngest look no further than the next ten
    for multiple in friendly:
        first = last // multiple + 1 if on > 0 else -(-last // multiple) - 1
        for value in ((first + on * further) * multiple for further in range(NEAREST)):
            if value <= 0 or abs(value - last) > max(reach, abs(count.step)):
                break
            location = locate(grid, value, audience)
            if not location.appears:
                written = _in_the_larger_unit(count, value, audience.language) or _as_said(count, value)
                written = with_unit_names(written, audience.language)
                beside = audience.level < REMAINDERS_FROM and _between_two_in_a_line(grid, value, multiple, audience)
                yield NearMiss(
                    ways("lands", audience.language, value=_in_a_sentence(grid, written, audience)),
                    ways("lands reply", audience.language),
                    beside or location.reason,
                )
                return


def _as_said(count: Count, value: Fraction) -> str:
    """A value as a child says it: of 7.0 only the 7."""
    written = count.text_of(value)
    whole = count.kind == Kind.DECIMAL and value.denominator == 1
    return written.partition(count.style.decimal_mark)[0] if whole else written


def _in_the_larger_unit(count: Count, value: Fraction, language: str) -> str:
    """A whole number of the unit above the one that is written, as it is said: 420 min is "7 hours"; else empty."""
    unit = unit_to_reach(count) if larger_unit_size(count) else None
    if unit is None or value % unit.size:
        return ""
    name, many = NAMES[unit.symbol, language], value // unit.size
    return f"{count.style.thousands.join(f'{many:,}'.split(','))} {name.one if many == 1 else name.several}"


def _between_two_in_a_line(grid: Grid, value: Fraction, multiple: Fraction, audience: Audience) -> str:
    """Two that are as round as the value, and stand in one line with it between them, for those who know no remainders."""
    count, along = grid.count, "row" if grid.fill is Fill.DOWN else "column"
    lines = [line for line in grid.lines(along) if any(count.value(n) % multiple == 0 for n in line)]
    page = page_of(grid, audience)
    mark, language = page.named_mark(multiple), page.language
    if count.kind != Kind.WHOLE or len(lines) != 1 or mark is None:
        return ""
    round_ones = [count.value(n) for n in lines[0] if count.value(n) % multiple == 0]
    if len(round_ones) != len(lines[0]) or len(round_ones) < 2:
        return ""
    apart = round_ones[1] - round_ones[0]
    last, after = round_ones[-1], round_ones[-1] + apart
    if not min(last, after) < value < max(last, after):
        return ""
    at = grid.place(lines[0][0])[along == "column"]
    return said(
        "lands why",
        audience.language,
        line=language.in_line(along, at),
        marks=language.the_many(mark),
        apart=count.difference_text(apart),
        a=count.text_of(last),
        b=count.text_of(after),
        value=count.text_of(value),
    )


def _every_even_number(grid: Grid, audience: Audience) -> Iterator[NearMiss]:
    """All are even, so all the even ones seem to be there."""
    count = grid.count
    if count.kind != Kind.WHOLE or count.start % 2 or count.step % 2 or abs(count.step) == 2:
        return
    left_out = count.value(1) + (2 if count.step > 0 else -2)
    yield NearMiss(
        ways("every even", audience.language),
        ways("every even reply", audience.language, value=count.text(1)),
        locate(grid, left_out, audience).reason,
    )


def _bigger_below_zero(grid: Grid, audience: Audience) -> Iterator[NearMiss]:
    """Past zero the digits grow again, and so the numbers seem to."""
    count = grid.count
    below = next((n for n in range(1, grid.terms) if count.value(n) < 0), None)
    if below is None or count.step > 0 or count.value(1) < 0:
        return
    told = {
        "a": _in_a_sentence(grid, count.text(below), audience),
        "b": _in_a_sentence(grid, count.text(below + 1), audience),
        "step": count.difference_text(count.step),
    }
    yield NearMiss(
        ways("below zero", audience.language),
        ways("below zero reply", audience.language, **told),
        said("below zero why", audience.language, **told),
    )


def _only_the_first_digit(grid: Grid, audience: Audience) -> Iterator[NearMiss]:
    """Of a jump of 0.25 only the 2 is looked at: it fits the first jump, and is over before the first line is."""
    count, size = grid.count, abs(grid.count.step)
    if count.kind not in (Kind.WHOLE, Kind.DECIMAL) or min(count.value(1), count.value(grid.line_length)) < 0:
        return
    place = next(
        place for place in range(len(str(int(size))), -len(str(count.scale)) - 1, -1) if size >= Fraction(10) ** place
    )
    if size % Fraction(10) ** place == 0:
        return  # the digit is all there is to the jump
    change = int(size // Fraction(10) ** place) * (1 if count.step > 0 else -1)
    digits = [count.value(n) // Fraction(10) ** place % 10 for n in range(1, grid.line_length + 1)]
    at = next((i + 2 for i, (a, b) in enumerate(pairwise(digits)) if b - a != change), 0)
    if at <= 2:
        return  # the first jump must bear it out, and the line belie it
    claim = DigitRunClaim(place, None, "count", change)
    row, column = grid.place(at)
    yield NearMiss(
        describe(claim, grid, "shown", None, audience).ways_to_say_it,
        ways("write on", audience.language, place=LANGUAGES[audience.language].cell.format(row=row, column=column)),
        check(claim, grid, audience=audience).because,
    )


def _one_jump_too_few(grid: Grid, audience: Audience) -> Iterator[NearMiss]:
    """From the first to the last of a line is one jump less than from line to line."""
    count, length = grid.count, grid.line_length
    across: Direction = "right" if grid.fill is Fill.DOWN else "down"
    if length < 3 or grid.terms <= length:
        return
    seen = count.step * (length - 1)
    on_the_page = -seen if grid.fill is Fill.ACROSS_UP else seen
    verdict = check(NeighbourClaim(across, on_the_page), grid, audience=audience)
    way = ("later", "earlier") if count.wrap else ("", "back")
    key = f"line {way[count.step < 0]}".strip()
    line = LANGUAGES[audience.language].lines["column" if grid.fill is Fill.DOWN else "row"].one
    at = (Fill.ACROSS, Fill.DOWN, Fill.ACROSS_UP).index(grid.fill)
    told = {
        "way": ways("line way", audience.language)[at],
        "line": line,
        "value": with_unit_names(count.difference_text(seen), audience.language),
        "first": _in_a_sentence(grid, count.text(1), audience),
    }
    yield NearMiss(ways(key, audience.language, **told), ways("line reply", audience.language, **told), verdict.because)


def _twice_as_far_is_double(grid: Grid, audience: Audience) -> Iterator[NearMiss]:
    """Twice as far on seems to be twice as much, which is so of the tables only."""
    count, near = grid.count, min(NEAR, grid.terms // 2)
    a, b = count.value(near), count.value(2 * near)
    if audience.level < DOUBLES_FROM or count.wrap is not None or near < 2 or b == 2 * a or min(a, b) <= 0:
        return
    if count.step < 0:
        return  # further on is less: nobody expects the double
    nth = LANGUAGES[audience.language].nth
    told = {"near": nth(near), "far": nth(2 * near), "a": count.text(near), "b": count.text(2 * near)}
    twice = count.text_of(Fraction(2 * a))
    yield NearMiss(
        ways("double", audience.language, **told),
        ways("double reply", audience.language, **told),
        said("double why", audience.language, twice=twice, **told),
    )


def _in_a_sentence(grid: Grid, text: str, audience: Audience) -> str:
    return LANGUAGES[audience.language].value(text, clock=grid.count.wrap is not None)
