"""Where a value is counted, why or why not, and the ways to it, in words."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from fractions import Fraction
from functools import cached_property

from routines.counting.audience import Audience, band_of
from routines.counting.count import Count
from routines.counting.grid import Fill, Grid
from routines.counting.kinds.clock import DAY
from routines.counting.kinds.currency import currency_named
from routines.counting.kinds.names import Kind
from routines.counting.kinds.units import UNITS
from routines.counting.locate import Location, Move, Route
from routines.counting.locate import locate as located
from routines.counting.locate.clock import part_of_day, since_midnight, turn_of
from routines.counting.locate.marks import Mark, mark_against
from routines.counting.locate.routes import terms_moved
from routines.counting.written_units import in_both_units

from .language import Language
from .languages import LANGUAGES
from .sentences import capital, filled


@dataclass(frozen=True)
class SpokenRoute(Route):
    """A way through a grid in words."""

    grid: Grid = field(repr=False)
    audience: Audience = field(repr=False)

    @cached_property
    def text(self) -> str:
        """The way in one line."""
        return _said(self.grid, self, self.audience)

    def __str__(self) -> str:
        return self.text


@dataclass(frozen=True, kw_only=True)
class SpokenLocation(Location):
    """Where a value is, with the reason for an audience."""

    routes: tuple[SpokenRoute, ...]
    grid: Grid = field(repr=False)
    audience: Audience = field(repr=False)

    @cached_property
    def reason(self) -> str:
        """Why the value is counted there, or why it is not, in one or two sentences."""
        return _reason_for(self.grid, self, self.audience)


def locate(grid: Grid, value: Fraction | int | str, audience: Audience | None = None) -> SpokenLocation:
    """Whether a value is counted if the count goes on, where, and why (or why not): see `routines.counting.locate`."""
    audience = audience or Audience()
    found = located(grid, value)
    return SpokenLocation(
        value=found.value,
        appears=found.appears,
        n=found.n,
        row=found.row,
        column=found.column,
        before=found.before,
        after=found.after,
        jumps=found.jumps,
        distance=found.distance,
        half_of_day=found.half_of_day,
        routes=spoken_routes(grid, found.routes, audience),
        turn=found.turn,
        day_part=found.day_part,
        grid=grid,
        audience=audience,
    )


def spoken_routes(grid: Grid, routes: tuple[Route, ...], audience: Audience) -> tuple[SpokenRoute, ...]:
    """Ways through a grid with their words."""
    return tuple(SpokenRoute(route.start, route.moves, grid, audience) for route in routes)


def _said(grid: Grid, route: Route, audience: Audience) -> str:
    language, count = LANGUAGES[audience.language], grid.count
    words = language.locating
    known = language.value(count.text(route.start), clock=count.wrap is not None)
    if route.start > 1:
        known = words.known.format(value=known, nth=language.nth(route.start))
    moves = [_moved(grid, move, language) + _change(grid, move, audience.level, language) for move in route.moves]
    return words.way.format(known=known, moves=f" {language.conjunction} ".join(moves))


def _moved(grid: Grid, move: Move, language: Language) -> str:
    if move.way == "on":
        return language.many_jumps(move.times, grid.count.difference_text(grid.count.step))
    return f"{move.times} {language.locating.ways[move.way][move.times > 1]}"


def _change(grid: Grid, move: Move, level: int, language: Language) -> str:
    """Say what a move changes: "(60 more)", "(200 less)"; nothing to the youngest, who point and count on."""
    if level < 2:
        return ""
    change = grid.count.step * terms_moved(grid, move)
    return f" ({grid.count.difference_text(change)} {language.compared(change, clock=grid.count.wrap is not None)})"


def _reason_for(grid: Grid, met: Location, audience: Audience) -> str:
    """Say in one or two sentences why the value is met where it is, or why it is not."""
    language = LANGUAGES[audience.language]
    words = language.locating
    count = grid.count
    clock = count.wrap is not None
    time = language.value(_time(count, met.value, half=False), clock=True) if clock else ""
    facts = {
        "value": time or in_both_units(count, met.value),
        "start": language.value(count.text(1), clock=clock),
        "step": count.difference_text(abs(count.step)),
        "total": count.difference_text(abs(met.distance)),
        "after": language.value(count.text_of(met.after), clock=clock),
        "way": words.forwards[count.step < 0],
    }
    # "9:30 in the morning" says it once; what is first or never met must say which 9:30 was asked for.
    facts["asked"] = (
        language.value(_time(count, met.value, half=True), clock=True) if met.half_of_day else facts["value"]
    )
    if met.n is None:
        facts["value"] = facts["asked"]
    if met.jumps is not None:
        facts["jumps"] = language.many_jumps(met.jumps, facts["step"])
        facts["make"] = words.make[met.jumps != 1]
        facts["lead"] = words.lead[met.jumps != 1]
    if met.n is not None:
        name = _met_facts(grid, met.n, language, facts)
    elif met.before is None:
        name = "behind"
    else:
        name = "skipped, on a clock" if clock else "skipped" if met.jumps else "skipped at once"
        own = facts["value"] if clock else language.value(count.text_of(met.value), clock=False)
        _skipped_facts(count, met, language, facts, own)
    return capital(filled(words.sentences[name][band_of(audience.level)], facts))


def _time(count: Count, value: Fraction, *, half: bool) -> str:
    """A time with or without a.m. or p.m."""
    written: str = replace(count, style=replace(count.style, halves=half)).text_of(value)
    return written


def _met_facts(grid: Grid, n: int, language: Language, facts: dict[str, str]) -> str:
    row, column = grid.place(n)
    facts |= {
        "nth": language.nth(n),
        "row": str(row),
        "column": str(column),
        "where": _where_past_the_end(grid, n, language),
    }
    if grid.count.wrap is not None:
        minute = since_midnight(grid.count, grid.count.value(n)) % DAY
        facts["part"] = language.locating.parts_of_day[part_of_day(minute, language.code)]
        facts["turn"] = language.turn(turn_of(grid.count, n))
    if n == 1:
        return "start"
    where = "here" if n <= grid.terms else "later"
    return where if grid.count.wrap is None else f"{where}, on a clock"


def _where_past_the_end(grid: Grid, n: int, language: Language) -> str:
    """Where the n-th count stands, or will stand; a page that is filled from below has no row yet for what lies above it."""
    row, column = grid.place(n)
    if grid.fill is not Fill.ACROSS_UP or n <= grid.terms:
        return language.cell.format(row=row, column=column)
    lines = (grid.lead + n - 1) // grid.line_length - (grid.lead + grid.terms - 1) // grid.line_length
    return language.locating.above[min(lines, 2)].format(column=column, lines=lines)


def _skipped_facts(count: Count, met: Location, language: Language, facts: dict[str, str], value: str) -> None:
    assert met.before is not None
    assert met.jumps is not None
    length = abs(count.step)
    facts["before"] = language.value(count.text_of(met.before), clock=count.wrap is not None)
    facts["reached"] = count.difference_text(met.jumps * length)
    facts["passed"] = count.difference_text((met.jumps + 1) * length)
    facts["mark"] = _mark_sentence(
        count, mark_against(count, met.value, DAY if met.half_of_day else count.wrap), language, value
    )


def _mark_sentence(count: Count, mark: Mark, language: Language, value: str) -> str:
    facts = {"value": value, "modulus": count.difference_text(mark.modulus)}
    if mark.sort == "parity":
        return filled(language.locating.marks["odd" if mark.shown[0] else "even"], facts)
    if mark.sort == "remainder":
        name = "remainder" if mark.shown[0] and mark.own else "not multiple" if mark.shown[0] else "multiple"
        facts |= {"shown": count.difference_text(mark.shown[0]), "own": count.difference_text(mark.own)}
        return filled(language.locating.marks[name], facts)
    shown = [_ending(count, mark, ending) for ending in mark.shown]
    facts |= {"shown": language.listing(shown), "either": language.either(shown), "own": _ending(count, mark, mark.own)}
    if mark.sort == "part":
        facts["part"] = _part_name(count, mark.part, language)
    sentence = filled(language.locating.marks[mark.sort if len(shown) > 1 else f"{mark.sort}, one"], facts)
    return language.locating.down_to_zero + sentence[0].lower() + sentence[1:] if mark.down_to_zero else sentence


def _part_name(count: Count, part: str, language: Language) -> str:
    """The name of a part: of a unit, or of the small coin of a currency."""
    if count.kind == Kind.MONEY:
        return language.coins(currency_named(count.style.currency, language.code).small.several)
    return language.units(next(unit.symbol for unit in UNITS.values() if unit.part == part))


def _ending(count: Count, mark: Mark, ending: Fraction) -> str:
    if mark.sort == "ending":
        return str(ending).zfill(len(str(mark.modulus)) - 1)
    return count.difference_text(ending) if mark.sort == "left" else str(ending)
