"""Slips where a jump crosses, fills or leaves a ten, a hundred, a whole or a larger unit, in counts of every kind.

They hold for every start, step, level and direction; the rows of the table are instances of them, and stand for them
where both hear the same. Common practice, no source, unless a row of the table says otherwise.
"""

from collections.abc import Callable
from fractions import Fraction

from ..grid import Grid
from .jump import Jump
from .places import Place
from .rule import Area, Rule

ALL = (0, 8)
STARTS_AGAIN = ("whole", "unit")


def serves(grid: Grid) -> bool:
    return True


def _up(jump: Jump) -> bool:
    return abs(jump.b) > abs(jump.a)


def _signed(jump: Jump, size: Fraction) -> Fraction:
    """A size as a value on the count's side of zero."""
    return -size if jump.a < 0 or jump.b < 0 else size


def _on_its_side(jump: Jump, size: Fraction) -> str:
    """A size in the writing of the count; nothing where it would lie beyond zero, or is where the class just was."""
    return jump.text(_signed(jump, size)) if size >= 0 and size != abs(jump.a) else ""


def _kept(jump: Jump) -> tuple[Place | None, str]:
    """The largest place that is crossed where it can be left as it was, and what is said then: 304 for 404.

    Of a ten or hundred there has to be one before and after, or two on the way back; a whole or a unit may start again:
    1/8 after 7/8, 10 min after 50 min. The double of what is counted by is known by heart.
    """
    a, b = abs(jump.a), abs(jump.b)
    for place in reversed(jump.crossing.crossed):
        if b < a:
            opened = b >= place.size or place.name in STARTS_AGAIN
            return place, _on_its_side(jump, b + place.size) if opened else ""
        if b > a != abs(jump.s) and b > place.size and (a >= place.size or place.name in STARTS_AGAIN):
            return place, _on_its_side(jump, b - place.size)
    return None, ""


def what_is_not_counted(jump: Jump) -> str:
    """What happens with the place that is left as it was, where the rule of its name hears it.

    "opened": counting back one of it is opened, and still counted, so that what is heard turns back; "opened far": the
    jump has some of it, and what is heard goes on, but too little. "neared": going up below zero there are fewer, and it is
    still counted. "made": the jump has some of it, and its smaller parts make one more, so the digit does change, but by
    too little. "entered": the next of it is entered, and its digit stays, so that what is heard turns back.
    """
    place, _ = _kept(jump)
    has_some = place is not None and abs(jump.s) > place.size
    if abs(jump.b) < abs(jump.a):
        return ("opened far" if has_some else "opened") if jump.a > 0 else "neared"
    return "made" if has_some else "entered"


def _kept_rule(identity: str, name: str) -> Rule:
    return Rule(identity, ALL, _crosses(name), _kept_as(name), 3)


def _crosses(name: str) -> Callable[[Jump], bool]:
    def happens(jump: Jump) -> bool:
        for place in jump.crossing.crossed:  # noqa: SIM110 - asked of every jump, and half as long as a generator
            if place.name == name:
                return True
        return False

    return happens


def _kept_as(name: str) -> Callable[[Jump, str], str]:
    def heard(jump: Jump, language: str) -> str:
        kept, text = _kept(jump)
        return text if kept is not None and kept.name == name else ""

    return heard


def _left_out(jump: Jump, language: str) -> str:
    """41 after 39, 110 cm after 90 cm: the full ten is left out."""
    return jump.text(jump.b + jump.s) if abs(jump.b + jump.s) >= abs(jump.b) or abs(jump.s) <= abs(jump.b) else ""


def _stops(jump: Jump, language: str) -> str:
    """100 for 107, 3 lb for 3 lb 2 oz: the jump ends at the full ten that it crosses."""
    small = [place for place in jump.crossing.crossed if place.size > abs(jump.s)]
    return _on_its_side(jump, _passed(jump, small[-1])) if small else ""


def _passed(jump: Jump, place: Place) -> Fraction:
    """The full ten that a jump crosses without landing there; what is due where it lands there."""
    further = max(abs(jump.a), abs(jump.b))
    passed = further // place.size * place.size
    return passed if passed not in (abs(jump.a), abs(jump.b)) else Fraction(-1)


def _next_full_one(jump: Jump, language: str) -> str:
    """200 after 100, 4.0 after 3.0, 5 after 6: the tens, hundreds or wholes are counted on."""
    left = jump.crossing.left
    assert left is not None, "the rule asks for a full ten, hundred or whole before the jump"
    return _on_its_side(jump, size) if (size := abs(jump.a) + (left.size if _up(jump) else -left.size)) else ""


def _full_one_beyond(jump: Jump, language: str) -> str:
    """200 for 107: where a hundred is crossed the next one is named."""
    place = jump.crossing.crossed[-1]
    return _on_its_side(jump, (abs(jump.b) // place.size + 1) * place.size)


def _one_too_early(jump: Jump, language: str) -> str:
    """40 after 51: the word of the next ten is said in place of the one that is due. Zero has no such word."""
    landed = jump.crossing.landed
    assert landed is not None, "the rule asks for a full ten, hundred or whole that is due"
    size = abs(jump.b) - landed.size
    return _on_its_side(jump, size) if size else ""


def _lands_on_one_soon_counted(jump: Jump) -> bool:
    """Towards zero, on a full ten or hundred of which ten jumps make one: by thirty nobody is a thousand ahead."""
    landed = jump.crossing.landed
    return landed is not None and not _up(jump) and landed.size <= 10 * abs(jump.s)


def _crosses_a_hundred_up(jump: Jump) -> bool:
    crossed = jump.crossing.crossed
    return bool(crossed) and _up(jump) and crossed[-1].name in ("hundred", "thousand") and not jump.crossing.left


def _passes_one_soon_counted(jump: Jump) -> bool:
    """Past a hundred or thousand of which ten jumps make one."""
    return jump.crossing.landed is None and jump.crossing.crossed[-1].size <= 10 * abs(jump.s)


RULES = (
    _kept_rule("C01", "ten"),
    _kept_rule("C02", "hundred"),
    _kept_rule("C03", "thousand"),
    _kept_rule("C04", "whole"),
    _kept_rule("C05", "unit"),
    _kept_rule("C06", "place"),
    Rule("C07", ALL, lambda j: j.crossing.landed is not None and j.b != 0, _left_out),
    Rule("C08", ALL, lambda j: bool(j.crossing.crossed), _stops),
    Rule("C09", ALL, lambda j: j.crossing.left is not None, _next_full_one, 1),
    Rule("C10", (0, 2), lambda j: _crosses_a_hundred_up(j) and _passes_one_soon_counted(j), _full_one_beyond, 1),
    Rule("C13", (0, 2), lambda j: _crosses_a_hundred_up(j) and not _passes_one_soon_counted(j), _full_one_beyond, 0),
    Rule("C11", ALL, lambda j: j.crossing.left is not None, lambda j, _: j.said, 0),
    Rule("C12", ALL, _lands_on_one_soon_counted, _one_too_early, 1),
)

AREA = Area("crossings", serves, RULES, of_every_kind=True)
