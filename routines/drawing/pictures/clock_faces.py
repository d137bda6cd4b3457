"""Clock faces: the hands of every term, with what the minute hand swept since the term before.

The hour hand moves with the minutes. A 24-hour count has the hours from 13 to 24 on a second ring outside the rim.
"""

from fractions import Fraction
from math import cos, pi, radians, sin

from routines.counting import Count, Kind

from ..numerals import HALF_DIGIT
from .jumps import arrow
from .sheet import Sheet
from .shelf import draw_side_by_side
from .wording import since

RADIUS, SMALL_RADIUS, RING = 58.0, 51.0, 17.0  # of the face, of one with a second ring; what that takes
NUMBERS, SECOND = 13, 12
NUMBERS_AT, HOUR_HAND, MINUTE_HAND, SWEPT_AT = 0.8, 0.4, 0.62, 0.5  # of the radius
TURN_APART = 5.0  # how far out each further turn of the sweep runs
CELL = 136.0  # two stand side by side on a phone
MOST_TURNS = 2  # longer sweeps are drawn without their whole turns; the words tell the jump


def fits(count: Count) -> bool:
    return count.kind == Kind.CLOCK


def hour_angle(value: Fraction) -> Fraction:
    """Degrees from 12, clockwise. Units: value in minutes. The hour hand turns once in 720 minutes."""
    return value % 720 / 2


def minute_angle(value: Fraction) -> Fraction:
    """Degrees from 12, clockwise: the minute hand turns once in 60 minutes."""
    return value % 60 * 6


def draw(sheet: Sheet, count: Count, first: int, last: int) -> float:
    """Draw terms first..last; return the height."""
    radius, ring = (SMALL_RADIUS, RING) if count.style.clock == 24 else (RADIUS, 0.0)
    across = 2 * (radius + ring)

    def draw_one(value: Fraction, before: Fraction | None, x: float, top: float) -> None:
        y = top + across / 2
        sheet.put("circle", "p-face", cx=x, cy=y, r=radius)
        if before is not None:
            _draw_swept(sheet, before, count.step, x, y, radius)
        _draw_dial(sheet, x, y, radius)
        if ring:
            _draw_second_ring(sheet, x, y, radius)
        _draw_hand(sheet, "p-hour", x, y, HOUR_HAND * radius, hour_angle(value))
        _draw_hand(sheet, "p-minute", x, y, MINUTE_HAND * radius, minute_angle(value))
        sheet.put("circle", "p-dot", cx=x, cy=y, r=4)

    passed = since(count, sheet.language)
    return draw_side_by_side(sheet, count, range(first, last + 1), (CELL, across), passed, draw_one)


def _draw_dial(sheet: Sheet, x: float, y: float, radius: float) -> None:
    """A mark a minute, longer at the fives, and the hours from 1 to 12."""
    for look, minutes, long in (("p-tick-fine", range(60), 4), ("p-tick", range(0, 60, 5), 7)):
        ends = [(_at(x, y, radius - 2, 6 * m), _at(x, y, radius - long, 6 * m)) for m in minutes]
        sheet.path(look, "".join(f"M{a:.1f} {b:.1f}L{c:.1f} {d:.1f}" for (a, b), (c, d) in ends))
    for hour in range(1, 13):
        at_x, at_y = _at(x, y, NUMBERS_AT * radius, 30 * hour)
        sheet.words(str(hour), at_x, at_y + HALF_DIGIT * NUMBERS, NUMBERS, "g-numeral")


def _draw_second_ring(sheet: Sheet, x: float, y: float, radius: float) -> None:
    for hour in range(1, 13):
        at_x, at_y = _at(x, y, radius + RING / 2 + 1, 30 * hour)
        sheet.words(f"{(hour + 12) % 24:02d}", at_x, at_y + HALF_DIGIT * SECOND, SECOND)


def _draw_hand(sheet: Sheet, look: str, x: float, y: float, long: float, angle: Fraction) -> None:
    end_x, end_y = _at(x, y, long, angle)
    sheet.path(look, f"M{x:.2f} {y:.2f}L{end_x:.2f} {end_y:.2f}")


def _draw_swept(sheet: Sheet, before: Fraction, step: Fraction, x: float, y: float, radius: float) -> None:
    """The turn of the minute hand from the term before: its ground, and its path with an arrowhead."""
    start, turn = minute_angle(before), step * 6
    if abs(turn) > 360 * MOST_TURNS:
        turn = abs(turn) % 360 * (1 if step > 0 else -1)
    if not turn:
        return
    radius *= SWEPT_AT
    pieces = max(2, int(abs(turn) / 6))
    spread = [
        (start + turn * k / pieces, radius + float(TURN_APART * abs(turn) * k / pieces / 360))
        for k in range(pieces + 1)
    ]
    path = [_at(x, y, at, angle) for angle, at in spread]
    line = "L".join(f"{a:.1f} {b:.1f}" for a, b in path)
    if abs(turn) < 360:
        sheet.path("p-swept", f"M{x:.1f} {y:.1f}L{line}Z")
    else:
        sheet.put("circle", "p-swept", cx=x, cy=y, r=radius)
    sheet.path("p-jump", f"M{line}")
    heading = radians(float(start + turn)) + (0 if step > 0 else pi)
    arrow(sheet, "p-jump-tip", path[-1], heading)


def _at(x: float, y: float, far: float, angle: Fraction | int) -> tuple[float, float]:
    """The point `far` from the middle at an angle in degrees from 12, clockwise."""
    turn = radians(float(angle))
    return x + far * sin(turn), y - far * cos(turn)
