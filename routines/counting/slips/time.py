"""Slips in counts of clock times and of elapsed times: sixty minutes taken for a hundred, and the turn of the clock."""

from dataclasses import replace

from ..grid import Grid
from ..kinds.clock import DAY
from ..kinds.clock_words import NOON
from ..kinds.names import Kind
from ..kinds.piece import join
from ..kinds.registry import number_kind
from ..kinds.units import UNITS
from .jump import Jump
from .rule import Area, Rule
from .sources import KAMII_RUSSELL_2012, NIST_TIME
from .writing import in_two_units, with_part


def serves(grid: Grid) -> bool:
    count = grid.count
    return count.kind == Kind.CLOCK or (count.kind == Kind.ELAPSED and count.part_names() == ("hours", "minutes"))


def _clock(jump: Jump) -> bool:
    return jump.count.kind == Kind.CLOCK


def _twelve(jump: Jump) -> bool:
    return _clock(jump) and jump.count.style.clock == 12


def _minutes_written(jump: Jump, minutes: int) -> str:
    return with_part(jump, jump.a, "minutes", f"{minutes:02d}")


def _sixty(jump: Jump, language: str) -> str:
    return _minutes_written(jump, 60)


def _hundred_minutes(jump: Jump, language: str) -> str:
    """4:70 after 4:45; past a hundred the hour is changed there."""
    minutes = int(jump.a % 60 + jump.s)
    if minutes < 100:
        return _minutes_written(jump, minutes)
    return with_part(jump, jump.a + 60, "minutes", f"{minutes - 100:02d}")


def _hour_kept(jump: Jump, language: str) -> str:
    return _minutes_written(jump, int(jump.b % 60))


def _thirteen(jump: Jump, language: str) -> str:
    return f"13:{int(jump.b % 60):02d}"


def _other_half_of_the_day(jump: Jump, language: str) -> str:
    """12:05 a.m. for 12:05 p.m."""
    style = replace(jump.count.style, halves=True, language=language)
    return join(number_kind(Kind.CLOCK, style, jump.count.form.grain).pieces(jump.minutes[1] + NOON))


def _past_twenty_four(jump: Jump, language: str) -> str:
    return f"{24 + int(jump.b % DAY) // 60}:{int(jump.b % 60):02d}"


def _hundred_minutes_elapsed(jump: Jump, language: str) -> str:
    """1 h 70 min after 1 h 35 min; past a hundred the hour is changed there."""
    hours, minutes = jump.a // 60, jump.a % 60 + jump.s
    if minutes >= 100:
        hours, minutes = hours + 1, minutes - 100
    return in_two_units(jump, UNITS["h"], UNITS["min"], hours, minutes)


def _hour_kept_elapsed(jump: Jump, language: str) -> str:
    """1 h 10 min for 2 h 10 min."""
    return in_two_units(jump, UNITS["h"], UNITS["min"], jump.a // 60, jump.b % 60)


def _from_twelve_to_one(jump: Jump) -> bool:
    return _twelve(jump) and jump.a // 60 % 12 == 0 and jump.b // 60 % 12 == 1


def _past_noon(jump: Jump) -> bool:
    before, due = (minutes % DAY for minutes in jump.minutes)
    return jump.s > 0 and before < NOON <= due


def _past_midnight(jump: Jump) -> bool:
    before, due = (minutes // DAY for minutes in jump.minutes)
    return jump.s > 0 and before < due


def _up(jump: Jump) -> bool:
    return 0 < jump.s < 60


def _down(jump: Jump) -> bool:
    return -60 < jump.s < 0


def _passes_an_hour(jump: Jump) -> bool:
    return _up(jump) and jump.b // 60 > jump.a // 60


RULES = (
    Rule("T01", (2, 3), lambda j: _clock(j) and _up(j) and j.b % 60 == 0, _sixty, 3),
    Rule(
        "T02",
        (3, 4),
        lambda j: _clock(j) and _passes_an_hour(j) and j.b % 60 != 0,
        _hundred_minutes,
        3,
        source=KAMII_RUSSELL_2012,
    ),
    Rule("T03", (3, 4), lambda j: _clock(j) and _passes_an_hour(j), _hour_kept, source=KAMII_RUSSELL_2012),
    Rule(
        "T04",
        (2, 4),
        _from_twelve_to_one,
        _thirteen,
        of_writing=True,
    ),
    Rule(
        "T05",
        (2, 4),
        lambda j: _twelve(j) and _past_noon(j),
        _other_half_of_the_day,
        source=NIST_TIME,
    ),
    Rule(
        "T06",
        (2, 4),
        lambda j: _twelve(j) and _past_midnight(j),
        _other_half_of_the_day,
        source=NIST_TIME,
    ),
    Rule(
        "T07",
        (1, 3),
        lambda j: _clock(j) and 0 < j.b % 60 < 10,
        lambda j, _: with_part(j, j.b, "minutes", str(int(j.b % 60))),
        of_writing=True,
    ),
    Rule(
        "T08",
        (3, 4),
        lambda j: _clock(j) and _down(j) and j.a % 60 == 0,
        lambda j, _: _minutes_written(j, int(60 + j.s)),
        3,
    ),
    Rule(
        "T09",
        (4, 5),
        lambda j: not _clock(j) and _passes_an_hour(j),
        _hundred_minutes_elapsed,
        3,
        source=KAMII_RUSSELL_2012,
    ),
    # Beyond the table: the 24-hour clock at midnight, counting back across the hour without landing on it, and the
    # hour passed in the grade that reads the clock to five minutes.
    Rule(
        "T10",
        (4, 5),
        lambda j: _clock(j) and not _twelve(j) and _past_midnight(j),
        _past_twenty_four,
    ),
    Rule(
        "T11",
        (3, 4),
        lambda j: _clock(j) and _down(j) and j.a % 60 != 0 and j.b // 60 < j.a // 60,
        lambda j, _: j.text(j.b + 60),
    ),
    Rule("T12", (2, 2), lambda j: _clock(j) and _passes_an_hour(j) and j.b % 60 != 0, _hundred_minutes, 3),
    Rule("T13", (2, 2), lambda j: _clock(j) and _passes_an_hour(j), _hour_kept),
    # The first grades, which count by hours and halves: the hour hand is nearly at the next one, and full hours are known best.
    Rule(
        "T15",
        (0, 2),
        lambda j: j.b % 60 == 30,
        lambda j, _: j.text(j.b + 60),
        counts=lambda count: count.kind == Kind.CLOCK and count.step == 30,
    ),
    Rule("T16", (0, 1), _from_twelve_to_one, _thirteen, of_writing=True),
    Rule(
        "T17",
        (0, 3),
        lambda j: j.b % 60 != 0,
        lambda j, _: j.text(j.b - j.b % 60),
        counts=lambda count: count.kind == Kind.CLOCK and count.step == 60,
    ),
    Rule("T14", (4, 5), lambda j: not _clock(j) and _passes_an_hour(j), _hour_kept_elapsed),
)

AREA = Area("time", serves, RULES)
