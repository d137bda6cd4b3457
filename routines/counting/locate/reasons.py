"""Why a value is counted, or never is: the facts, put into the sentence that suits the level."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from ..audience import Audience
from ..count import Count
from ..grid import Grid
from ..kinds.clock import DAY
from ..kinds.currency import currency_named
from ..kinds.names import Kind
from ..kinds.units import UNITS
from ..texts.words import band_of, capital
from .clock import since_midnight, turn_of
from .marks import Mark, mark_against
from .meeting import Meeting
from .tongues import tongue
from .wording import Wording, filled


def reason_for(grid: Grid, met: Meeting, audience: Audience) -> str:
    """Say in one or two sentences why the value is met where it is, or why it is not."""
    words = tongue(audience.language)
    count = grid.count
    clock = count.wrap is not None
    facts = {
        "value": words.value(_time(count, met.value, half=False) if clock else count.text_of(met.value), clock=clock),
        "start": words.value(count.text(1), clock=clock),
        "step": count.difference_text(abs(count.step)),
        "total": count.difference_text(abs(met.distance)),
        "after": words.value(count.text_of(met.after), clock=clock),
        "way": words.way(up=count.step > 0),
    }
    # "9:30 in the morning" says it once; what is first or never met must say which 9:30 was asked for.
    facts["asked"] = words.value(_time(count, met.value, half=True), clock=True) if met.half_of_day else facts["value"]
    if met.n is None:
        facts["value"] = facts["asked"]
    if met.jumps is not None:
        facts["jumps"] = words.jumps(met.jumps, facts["step"])
        facts["make"] = words.make(met.jumps)
        facts["lead"] = words.lead(met.jumps)
    if met.n is not None:
        name = _met_facts(grid, met.n, words, facts)
    elif met.before is None:
        name = "behind"
    else:
        name = "skipped, on a clock" if clock else "skipped" if met.jumps else "skipped at once"
        _skipped_facts(count, met, words, facts)
    return capital(filled(words.sentences[name][band_of(audience.level)], facts))


def _time(count: Count, value: Fraction, *, half: bool) -> str:
    """A time with or without a.m. or p.m."""
    written: str = replace(count, style=replace(count.style, halves=half)).text_of(value)
    return written


def _met_facts(grid: Grid, n: int, words: Wording, facts: dict[str, str]) -> str:
    row, column = grid.place(n)
    facts |= {"nth": words.nth(n), "row": str(row), "column": str(column)}
    if grid.count.wrap is not None:
        minute = since_midnight(grid.count, grid.count.value(n)) % DAY
        facts["part"] = words.part_of_day(minute)
        facts["turn"] = words.turn(turn_of(grid.count, n))
    if n == 1:
        return "start"
    where = "here" if n <= grid.terms else "later"
    return where if grid.count.wrap is None else f"{where}, on a clock"


def _skipped_facts(count: Count, met: Meeting, words: Wording, facts: dict[str, str]) -> None:
    assert met.before is not None
    assert met.jumps is not None
    length = abs(count.step)
    facts["before"] = words.value(count.text_of(met.before), clock=count.wrap is not None)
    facts["reached"] = count.difference_text(met.jumps * length)
    facts["passed"] = count.difference_text((met.jumps + 1) * length)
    facts["mark"] = _mark_sentence(
        count, mark_against(count, met.value, DAY if met.half_of_day else count.wrap), words, facts["value"]
    )


def _mark_sentence(count: Count, mark: Mark, words: Wording, value: str) -> str:
    facts = {"value": value, "modulus": count.difference_text(mark.modulus)}
    if mark.sort == "parity":
        return filled(words.marks["odd" if mark.shown[0] else "even"], facts)
    if mark.sort == "remainder":
        name = "remainder" if mark.shown[0] and mark.own else "not multiple" if mark.shown[0] else "multiple"
        facts |= {"shown": count.difference_text(mark.shown[0]), "own": count.difference_text(mark.own)}
        return filled(words.marks[name], facts)
    shown = [_ending(count, mark, ending) for ending in mark.shown]
    facts |= {"shown": words.listing(shown), "own": _ending(count, mark, mark.own)}
    if mark.sort == "part":
        facts["part"] = _part_name(count, mark.part, words)
    sentence = filled(words.marks[mark.sort if len(shown) > 1 else f"{mark.sort}, one"], facts)
    return words.down_to_zero + sentence[0].lower() + sentence[1:] if mark.down_to_zero else sentence


def _part_name(count: Count, part: str, words: Wording) -> str:
    """The name of a part: of a unit, or of the small coin of a currency."""
    if count.kind == Kind.MONEY:
        return words.small_coins(currency_named(count.style.currency, words.language).small.several)
    return words.units(next(unit.symbol for unit in UNITS.values() if unit.part == part))


def _ending(count: Count, mark: Mark, ending: Fraction) -> str:
    if mark.sort == "ending":
        return str(ending).zfill(len(str(mark.modulus)) - 1)
    return count.difference_text(ending) if mark.sort == "left" else str(ending)
