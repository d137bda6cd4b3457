"""When a phrase about where a value is counted, and about the way there, is so: the count is said term after term."""

import re
from collections.abc import Iterable
from fractions import Fraction
from typing import Any

from tests.words.feature_names import SMALL, feature_named
from tests.words.line_checks import parity_of
from tests.words.number_checks import signed
from tests.words.number_names import multiple_named
from tests.words.readings_back import PART_SYMBOLS
from tests.words.sentence_checker import Context
from tests.words.written_values import UNIT_SIZES

MOST_LISTED = 400
# From which minute of the day on. Source: Unicode CLDR, day period rules.
PARTS_OF_DAY = {
    "in the morning": (1, 720),
    "at noon": (720, 721),
    "in the afternoon": (721, 1080),
    "in the evening": (1080, 1260),
    "at night": (1260, 1440),
    "at midnight": (0, 1),
    "de la mañana": (360, 720),
    "del mediodía": (720, 721),
    "de la tarde": (721, 1200),
    "de la noche": (1200, 1440),
    "de la medianoche": (0, 1),
    "de la madrugada": (1, 360),
}


def asked(c: Context) -> Fraction:
    """The value that was asked for."""
    return Fraction(c.extra["value"])  # type: ignore[arg-type]


def met(c: Context) -> int | None:
    """At which count the value is said."""
    return c.extra["n"]  # type: ignore[return-value]


def size(c: Context) -> Fraction:
    return abs(Fraction(c.grid.count.step))


def is_start(c: Context, h: dict[str, Any]) -> bool:
    return c.same(h["a"], c.value(1))


def is_asked(c: Context, h: dict[str, Any]) -> bool:
    return c.same(h["v"], asked(c))


def is_start_itself(c: Context, h: dict[str, Any]) -> bool:
    return met(c) == 1 and is_met(c, h)


def is_met(c: Context, h: dict[str, Any]) -> bool:
    """The value asked for is the n-th count and stands there; what the phrase leaves out is not looked at."""
    n = met(c)
    if n is None or not c.same(h.get("v", asked(c)), asked(c)) or not c.same(c.value(n), asked(c)):
        return False
    row, column = c.place(n)
    place = h.get("row", row) == row and h.get("column", column) == column
    part = "part" not in h or is_part_of_day(c, str(h["part"]), c.value(n))
    return place and h.get("n", n) == n and part and h.get("turn", 1) == (turn(c, n) if "turn" in h else 1)


def stands_above(c: Context, h: dict[str, Any]) -> bool:
    """A page that is filled from below: so many lines above the line that is its top line now."""
    n, end = met(c), c.grid.terms
    if n is None or c.grid.fill != "across-up":
        return False
    lines = c.place(end, upto=n)[0] - c.place(n, upto=n)[0]
    return h["column"] == c.place(n)[1] and h.get("lines", 0) == lines


def is_met_now(c: Context, h: dict[str, Any]) -> bool:
    return is_met(c, h) and (met(c) or 0) <= c.grid.terms


def is_met_later(c: Context, h: dict[str, Any]) -> bool:
    return is_met(c, h) and (met(c) or 0) > c.grid.terms


def turn(c: Context, n: int) -> int:
    """The how many-eth time round the clock: once more whenever the hands have gone all the way round since the start."""
    wrap, turns, gone = c.grid.count.wrap or 1, 1, 0
    for k in range(2, n + 1):
        gone += abs(int(c.value(k) - c.value(k - 1)))
        while gone >= turns * wrap:
            turns += 1
    return turns


def is_part_of_day(c: Context, said: str, value: Fraction) -> bool:
    """A bare 12-hour start outside 7:00 to 11:59 is in the afternoon or evening."""
    style = c.grid.count.style
    bare = style.clock == 12 and not style.halves and c.value(1) % 1440 < 420
    minute = (value + (720 if bare else 0)) % 1440
    low, high = PARTS_OF_DAY[said]
    return low <= minute < high


def jumps_to_asked(c: Context, h: dict[str, Any]) -> bool:
    """So many jumps lead from the start to the value, and make the total."""
    n = met(c)
    ahead = h["k"] * h.get("s", size(c))
    return (
        n is not None
        and h["k"] == n - 1
        and h.get("s", size(c)) == size(c)
        and h.get("t", ahead) == ahead
        and is_start(c, {"a": h.get("a", c.value(1))})
        and is_met(c, h)
    )


def rule_for_any_number(c: Context, h: dict[str, Any]) -> bool:
    """The asked value is so many jumps past the start in the direction of the count: that is the rule of all its counts."""
    less = c.grid.count.step < 0
    told = {str(h["way"]).lower() in ("back", "retroceder"), str(h["more2"]).lower() in ("less", "menos")}
    return jumps_to_asked(c, h) and h["again"] == h["s"] and told == {less}


def jumps_say(c: Context, h: dict[str, Any]) -> bool:
    """So many jumps make the total: one jump makes, several make."""
    one = h.get("verb", "").lower() in ("makes", "hace", "leads", "lleva")
    return h["s"] == size(c) and h["k"] * h["s"] == h["t"] and ("verb" not in h or one == (h["k"] == 1))


def far_from_start(c: Context, h: dict[str, Any]) -> bool:
    """From the start to the value it is so far, in the direction of counting; on a clock when it is met."""
    forwards = h["t"] if c.grid.count.step > 0 else -h["t"]
    part = "part" not in h or is_part_of_day(c, str(h["part"]), c.value(1) + forwards)
    return is_start(c, h) and is_asked(c, h) and c.same(h["a"] + forwards, h["v"]) and part


def is_behind(c: Context, h: dict[str, Any]) -> bool:
    behind = (c.value(1) - asked(c)) * (1 if c.grid.count.step > 0 else -1)
    return (
        behind > 0
        and h.get("t", behind) == behind
        and is_asked(c, {"v": h.get("v", asked(c))})
        and is_start(c, {"a": h.get("a", c.value(1))})
        and h.get("s", size(c)) == size(c)
    )


def goes(c: Context, h: dict[str, Any]) -> bool:
    up = str(h["way"]).lower() in ("up", "arriba")
    right_way = up == (c.grid.count.step > 0) and h.get("s", size(c)) == h.get("s2", size(c)) == size(c)
    return right_way and is_start(c, {"a": h.get("a", c.value(1))})


def is_skipped(c: Context, h: dict[str, Any]) -> bool:
    return met(c) is None and is_asked(c, h)


def neighbours_are(c: Context, h: dict[str, Any]) -> bool:
    """The two are said one after the other, from the start on, and the value lies between them."""
    count = c.grid.count
    if not is_start(c, {"a": h.get("start", c.value(1))}):
        return False
    for n in range(1, MOST_LISTED):
        if not (c.same(c.value(n), h["a"]) and c.same(c.value(n + 1), h["b"])):
            continue
        past = (asked(c) - c.value(n)) * (1 if count.step > 0 else -1)
        if 0 < (past % count.wrap if count.wrap else past) < size(c):
            from_start = c.same(h.get("start", c.value(1)), c.value(1))
            return h.get("k", n - 1) == n - 1 and h.get("s", size(c)) == size(c) and from_start
    return False


def reached_and_passed(c: Context, h: dict[str, Any]) -> bool:
    """So many jumps make less than the distance, and one more makes more."""
    distance = abs(asked(c) - c.value(1))
    return (
        h["s"] == size(c) and h["k"] * h["s"] == h["t"] < distance < h["u"] == (h["k"] + 1) * h["s"] and met(c) is None
    )


def short_of_a_jump(c: Context, h: dict[str, Any]) -> bool:
    return far_from_start(c, h) and h["s"] == size(c) and h["t"] < h["s"]


# Marks: what every count has and the value has not.


def listed(c: Context, h: dict[str, Any]) -> list[int]:
    """A long listing of the count; down to zero where the phrase says so."""
    ns = range(1, MOST_LISTED)
    return [n for n in ns if c.value(n) >= 0] if h.get("down") else list(ns)


def all_of_parity(c: Context, h: dict[str, Any]) -> bool:
    every = all(parity_of(c, {"a": c.value(n), "p": h["p"]}) for n in listed(c, h))
    return every and is_skipped(c, h) and parity_of(c, {"a": h["v"], "p": h["q"]})


def ends_in(c: Context, h: dict[str, Any]) -> bool:
    """The digits at the end of the written counts are just these, and the value ends otherwise."""
    width = len(h["x"][0])
    seen = {digits(c, c.grid.count.text(n))[-width:].zfill(width) for n in listed(c, h)}
    own = digits(c, c.grid.count.text_of(asked(c)))[-width:].zfill(width)
    return seen == set(h["x"]) and h["y"] == [own] and own not in seen and is_skipped(c, h)


def digits(c: Context, text: str) -> str:
    return re.sub(r"\D", "", text)


def part_is_only(c: Context, h: dict[str, Any]) -> bool:
    """What is left past the larger part is just these numbers of the named one, and the value has another."""
    unit, larger = part_sizes(c, str(h["f"]))
    seen = {c.value(n) % larger / unit for n in listed(c, h)}
    own = asked(c) % larger / unit
    said = {Fraction(number) for number in h["x"]}
    return seen == said and h["y"] == [str(own)] and own not in said and is_skipped(c, h)


def part_sizes(c: Context, words: str) -> tuple[Fraction, Fraction]:
    """The size of the named part and of the larger one written before it, in base units."""
    sort, name = feature_named(words, c.notation) or ("", "")
    if sort == "coin" and name == SMALL:
        return Fraction(1), Fraction(10**c.notation.digits)
    if name == "minutes" and c.grid.count.kind == "clock":
        return Fraction(1), Fraction(60)
    sizes = {
        part: UNIT_SIZES[re.sub(r"s\?$", "", PART_SYMBOLS[part].split("|")[0]) if part not in UNIT_SIZES else part]
        for part in c.grid.count.part_names()
    }
    return sizes[str(name)], min(size for size in sizes.values() if size > sizes[str(name)])


def left_past_whole(c: Context, h: dict[str, Any]) -> bool:
    left = {c.value(n) % 1 for n in listed(c, h)}
    said = {c.notation.read(text) for text in h["x"]}
    own = asked(c) % 1
    return left == said and [own] == [c.notation.read(text) for text in h["y"]] and own not in left


def past_multiple(c: Context, h: dict[str, Any]) -> bool:
    """Every count is so much past a multiple, and the value is something else past one."""
    own, every = h.get("y", Fraction(0)), h.get("x", Fraction(0))
    turn_of_day = turn_length(c)
    counts = {c.value(n) % h["m"] for n in listed(c, h)}
    sized = turn_of_day is None or (turn_of_day % h["m"] == 0)
    return (
        sized and counts == {every} and asked(c) % h["m"] == own != every and is_skipped(c, {"v": h.get("v", asked(c))})
    )


def turn_length(c: Context) -> int | None:
    if c.grid.count.wrap is None:
        return None
    return 1440 if c.extra.get("half") else c.grid.count.wrap


# Routes.

STEPS = {
    "down": (1, 0),
    "abajo": (1, 0),
    "up": (-1, 0),
    "arriba": (-1, 0),
    "right": (0, 1),
    "derecha": (0, 1),
    "left": (0, -1),
    "izquierda": (0, -1),
}


def start_of_route(c: Context, h: dict[str, Any]) -> int | None:
    n = h.get("o", 1)
    return n if c.same(c.value(n), h["a"]) else None


def route_of_jumps(c: Context, h: dict[str, Any]) -> bool:
    start, n = start_of_route(c, h), met(c)
    ahead = h["k"] * h["s"]
    return (
        start is not None
        and n is not None
        and h["s"] == size(c)
        and start + h["k"] == n
        and changes(c, h, start, n, "d", "more")
        and h.get("d", ahead) == ahead
    )


def route_of_moves(c: Context, h: dict[str, Any]) -> bool:
    start, n = start_of_route(c, h), met(c)
    if start is None or n is None:
        return False
    row, column = c.place(start, upto=max(n, c.grid.terms))
    goal = c.place(n, upto=max(n, c.grid.terms))
    here = start
    for move in ("1", "2"):
        if f"way{move}" not in h:
            break
        down, right = STEPS[str(h[f"way{move}"]).split()[-1]]
        row, column = row + down * h[f"k{move}"], column + right * h[f"k{move}"]
        there = here + c.terms_apart(down, right) * h[f"k{move}"]
        if not changes(c, h, here, there, f"d{move}", f"more{move}"):
            return False
        here = there
    return here == n and (row, column) == goal


def changes(c: Context, h: dict[str, Any], here: int, there: int, amount: str, more: str) -> bool:
    if amount not in h:
        return True
    return signed(h[amount], str(h[more])) == c.value(there) - c.value(here)


WAYS_ON = {
    "under": "across",
    "debajo": "across",
    "beside": "down",
    "past": "down",
    "al lado": "down",
    "después": "down",
    "above": "across-up",
    "encima": "across-up",
}


def lines_past_the_end(c: Context, h: dict[str, Any]) -> bool:
    """So many lines on from the last count on the board in this row or column the value comes, so much more or less."""
    n, length = met(c), c.grid.line_length
    if n is None or WAYS_ON.get(str(h.get("way")).lower(), c.grid.fill) != c.grid.fill:
        return False
    lines = int(h.get("k", 1)) if "way" in h else -(-(n - c.grid.terms) // length)
    last = n - lines * length
    return bool(
        1 <= last <= c.grid.terms < last + length
        and c.same(h["a"], c.value(last))
        and changes(c, h, last, n, "d", "more")
        and is_met(c, h)
    )


def jumps_past_the_end(c: Context, h: dict[str, Any]) -> bool:
    """So many jumps on from the last count in view the value comes."""
    end = c.grid.terms
    return c.same(h["a"], c.value(end)) and met(c) == end + h["k"] and is_met(c, h)


# Probes.


def is_probe_landmark(c: Context, h: dict[str, Any]) -> bool:
    multiple = marked(c, h)
    return is_met_later(c, h) and multiple is not None and asked(c) % multiple == 0 and is_friendly(c, multiple)


def marked(c: Context, h: dict[str, Any]) -> Fraction | None:
    """What is meant by a multiple of 8, or by the name of one: a ten, a whole foot."""
    return h["m"] if "m" in h else multiple_named(str(h["mark"]).lower(), c.notation)


def like_a_mark(c: Context, h: dict[str, Any]) -> bool:
    """As one count, the value is a ten, a whole foot, an even number, though it is never counted."""
    multiple = marked(c, h)
    return (
        met(c) is None and multiple is not None and asked(c) % multiple == h["a"] % multiple == 0 and c.is_term(h["a"])
    )


def multiple_of_the_step(c: Context, h: dict[str, Any]) -> bool:
    """It is so many jumps from nothing, from where the count does not start."""
    return met(c) is None and h["m"] == h["s"] == size(c) and asked(c) % size(c) == 0 and is_start(c, {"a": h["a"]})


def is_friendly(c: Context, multiple: Fraction) -> bool:
    """Whether it is one of the multiples that children know."""
    return multiple in c.grid.count.friendly_multiples()


def lines_on(c: Context, h: dict[str, Any]) -> bool:
    n = met(c) or 0
    before = n - h["k"] * c.grid.line_length
    return is_met_later(c, h) and before >= 1 and c.same(c.value(before), h["a"])


def jumps_on(c: Context, h: dict[str, Any]) -> bool:
    return is_met_later(c, h) and c.same(c.value((met(c) or 0) - h.get("k", 1)), h["a"])


def ends_alike(c: Context, h: dict[str, Any]) -> bool:
    own, like = (abs(int(value)) % 10 for value in (asked(c), h["a"]))
    return met(c) is None and own == like == h["y"] and c.is_term(h["a"])


def like_a_count(c: Context, h: dict[str, Any]) -> bool:
    """As one count (or as every one) is past a multiple, so is the value."""
    rest = h.get("x", Fraction(0))
    wrapped = c.grid.count.wrap is None or c.grid.count.wrap % h["m"] == 0
    like: Iterable[Fraction] = [h["a"]] if "a" in h else [c.value(n) for n in range(1, MOST_LISTED)]
    told = all(value % h["m"] == rest for value in like) and asked(c) % h["m"] == rest
    return met(c) is None and told and wrapped and is_friendly(c, h["m"]) and (c.is_term(h["a"]) if "a" in h else True)
