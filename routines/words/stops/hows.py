"""How a child can tell where the jump at a stop leads: what it answers to the question, and what the jump changes."""

from collections.abc import Iterator
from fractions import Fraction

from routines.counting.claims import Claim, DigitClaim, DigitRunClaim, DigitSumClaim, stated
from routines.counting.grid import Fill
from routines.counting.kinds.names import Kind
from routines.counting.patterns.lines import lines_of
from routines.counting.slips.jump import Jump
from routines.counting.stops.hard_spots import hard_spots
from routines.counting.written_units import in_larger_unit

from ..families.digits import DigitReader
from ..hard_jumps import (
    READ_BY_DIGITS,
    carried,
    changed_parts,
    digits_changed,
    fraction_changes,
    ways_by_the_jump,
    ways_to_tell,
)
from ..page import page_of
from ..sentences import filled
from .filling import Filling


def why_it_dies(filling: Filling, claim: Claim) -> Iterator[str]:
    """Why an idea ends with the next count, the best first: what becomes of its digit or part, and how that comes about."""
    ends, reached = ("", "") if filling.is_before_digits(claim) else _what_ends(filling, claim)
    ways = _ways_into_the_next(filling) if filling.band else []
    in_line = _in_its_line(filling, claim)
    if in_line and ends:
        yield filled(filling.language.stops.hows["both"], {"first": in_line, "second": ends})
    if in_line:
        yield in_line
    elif ends:
        yield from (filled(filling.language.stops.hows["both"], {"first": ends, "second": way}) for way in ways)
        yield from (ends, reached)
    yield from ways


def how_it_begins_or_ends(filling: Filling) -> tuple[str, dict[str, str]]:
    """What becomes of the end of the next number, or of its front, as those see it who have not met digits: the key of an
    answer, and what it holds. 10 ends in 0: after 9 it starts again; 100 begins with 1: ten tens make a hundred."""
    claim, a, b = filling.stop.claim, int(filling.jump.a), int(filling.jump.b)
    if filling.looked_at == "end" and b >= 10:
        return "ends otherwise" if b % 10 else "starts again", {"x": str(a % 10), "y": str(b % 10)}
    if filling.looked_at == "front" and isinstance(claim, DigitRunClaim):
        place, places, y = claim.place or 0, filling.language.places, str(b)[0]
        if b >= 10 ** (place + 1) and place + 1 in places:
            names = {"places": places[place].many, "a_larger": filling.language.a(places[place + 1])}
            return "is longer", {"y": y, **names}
        due = int(str(a)[0]) + (claim.change or 0)
        if b >= 10**place and 0 < due < 10:
            return "begins otherwise", {"y": y, "due": str(due)}
    return "", {}


def _what_ends(filling: Filling, claim: Claim) -> tuple[str, str]:
    """The tens digit goes from 8 to 0: from the count before it in its line; and the same without the first of the two."""
    if isinstance(claim, DigitSumClaim):
        before, due = (
            sum(int(sign) for sign in text if sign.isdigit()) for text in (filling.jump.said, filling.jump.due)
        )
        return (filled(filling.language.stops.hows["sum"], {"x": str(before), "y": str(due)}),) * 2
    if not isinstance(claim, DigitClaim | DigitRunClaim):
        return "", ""
    n, stride = filling.jump.n, lines_of(filling.grid, stated(claim.along)).stride
    page, hows, language = page_of(filling.grid, filling.audience), filling.language.stops.hows, filling.language
    reader = DigitReader(page, claim.place, claim.part)
    x, y = reader.number(n - stride), reader.number(n)
    if x is None or y is None:
        return "", ""
    feature = reader.feature()
    facts = {
        "part": language.the_many(feature.noun) if feature.plural else language.the_one(feature.noun),
        "x": reader.shown(x),
        "y": reader.shown(y),
    }
    many = " of several" if feature.plural else ""
    if x == y:
        return (filled(hows[f"stays{many}"], facts),) * 2
    return filled(hows[f"changes{many}"], facts), filled(hows[f"becomes{many}"], facts)


def _in_its_line(filling: Filling, claim: Claim) -> str:
    """In column 4, after 80 comes 100: what a line runs into, which is not what was said just before."""
    along = claim.along if isinstance(claim, DigitClaim | DigitRunClaim) else None
    # Rows of a page that is filled from below have other numbers when it is full.
    if along not in ("row", "column") or (along == "row" and filling.grid.fill is Fill.ACROSS_UP):
        return ""
    n, stride = filling.jump.n, lines_of(filling.grid, along).stride
    if stride == 1 or n <= stride:
        return ""
    number = filling.grid.place(n)[0 if along == "row" else 1]
    facts = {
        "line": filling.language.line(along, number),
        "before": filling.written(filling.grid.count.text(n - stride)),
        "next": filling.fields["next"],
    }
    return filled(filling.language.stops.hows["in its line"], facts)


def _ways_into_the_next(filling: Filling) -> list[str]:
    """How the jump leads to the next count, where it meets a landmark or fills a place."""
    jump = filling.jump
    met = [spot.landmark for spot in hard_spots(filling.grid) if spot.n == jump.n]
    landmark = filling.written(filling.grid.count.text_of(met[0])) if met else ""
    told = list(carried(jump)) if jump.count.kind in READ_BY_DIGITS else []
    told += [way for landmark in met for way in ways_to_tell(jump, landmark)]
    return [filling.how(key, own, landmark=landmark) for key, own in told]


def how_the_jump_goes(filling: Filling, landmark: Fraction, asks: str) -> Iterator[str]:
    """What answers the question of a hard jump, the best first; asks: what it asks for."""
    jump, hows = filling.jump, filling.language.stops.hows
    how = [filling.how(key, facts) for key, facts in ways_to_tell(jump, landmark, asked_for_digits=asks == "parts")]
    along = along_to(filling, filling.jump.n)
    if asks == "ways" and along:
        by_the_jump = (filling.how(key, facts) for key, facts in ways_by_the_jump(jump, landmark))
        yield from (filled(hows["two ways"], along | {"first": first}) for first in by_the_jump)
    same = _in_larger_units(filling)
    asked = _changed(filling, jump) if asks == "parts" else ""
    if asks == "grid" and along:
        asked = filled(hows["along"], filling.fields | along)
    for first in filter(None, (asked, *how)):
        more = (same, *(how if asks == "parts" else ()))
        yield from (
            filled(hows["both"], {"first": first, "second": second}) for second in more if second not in ("", first)
        )
        yield first


def _in_larger_units(filling: Filling) -> str:
    """2 m 75 cm and 25 cm make 3 m; only what the last count is, where the count goes back."""
    jump = filling.jump
    larger, made = (in_larger_unit(jump.count, value) for value in (jump.a, jump.b))
    if not larger:
        return ""
    facts = {"larger": larger, "made": made, "by": jump.count.difference_text(abs(jump.s))}
    return filling.how("larger, on" if jump.s > 0 and made else "larger", facts)


def tells_what_changes(filling: Filling) -> bool:
    """Whether a child can tell which digits or parts change in the jump: all of them, and not only that there are more."""
    if filling.jump.count.kind in READ_BY_DIGITS:
        return any(key != "more digits" for key, _ in digits_changed(filling.jump))
    return bool(_changed(filling, filling.jump)) and not fraction_changes(filling.jump)


def tells_along_the_grid(filling: Filling) -> bool:
    """Whether a count on the board stands a line before the next one."""
    return bool(along_to(filling, filling.jump.n))


def tells_in_two_ways(filling: Filling) -> bool:
    """Whether a child can tell it by the jump, and along the grid."""
    spot = filling.stop.spot
    by_the_jump = spot is not None and any(ways_by_the_jump(filling.jump, spot.landmark))
    return by_the_jump and tells_along_the_grid(filling)


def what_changes(filling: Filling, landmark: Fraction) -> str:
    """What changes in a hard jump back: its parts, its digits, or how far it leads below zero."""
    jump = filling.jump
    ways = ways_to_tell(jump, landmark, asked_for_digits=True)
    return _changed(filling, jump) or next((filling.how(key, own) for key, own in ways), "")


def along_to(filling: Filling, n: int) -> dict[str, str]:
    """Where the n-th count goes, seen from the one a line before it; empty where no such step is on the board yet."""
    grid, count, language = filling.grid, filling.grid.count, filling.language
    known = n - grid.line_length
    if known < 1 or grid.line_length == 1 or filling.stop.after <= grid.line_length:
        return {}
    change = grid.line_length * count.step
    compared = language.compared(change, clock=count.wrap is not None)
    return {
        "beside": language.stops.beside[grid.fill],
        "known": filling.written(count.text(known)),
        "change": f"{filling.size(change)} {compared}",
    }


def _changed(filling: Filling, jump: Jump) -> str:
    """The parts that change, of what is written in parts: the hour, 12 to 1, and the minutes, 50 to 10."""
    if jump.count.kind in READ_BY_DIGITS or len(jump.count.part_names()) < 2:
        return ""
    language, page = filling.language, page_of(filling.grid, filling.audience)
    told = []
    for part, x, y in changed_parts(jump):
        feature = page.part(part)
        name = language.the_many(feature.noun) if feature.plural else language.the_one(feature.noun)
        width = 2 if part == "minutes" and jump.count.kind == Kind.CLOCK else 1
        told.append(filled(language.stops.hows["one part"], {"part": name, "x": f"{x:0{width}}", "y": f"{y:0{width}}"}))
    return f", {language.conjunction} ".join(told)
