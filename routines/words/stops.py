"""What is asked and answered at a stop, for a level and a language. Every number in it comes from the count."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from fractions import Fraction
from functools import cached_property, partial
from typing import Any

from routines.counting.audience import Audience, band_of
from routines.counting.checking import judge
from routines.counting.claims import Claim
from routines.counting.grid import Fill, Grid
from routines.counting.kinds.names import Kind
from routines.counting.kinds.unit_names import NAMES
from routines.counting.kinds.units import UNITS
from routines.counting.locate import Location
from routines.counting.locate import locate as located
from routines.counting.slips.checked import reader_of
from routines.counting.slips.jump import Jump
from routines.counting.stops import StopSuggestion
from routines.counting.stops import suggest_stops as suggested
from routines.counting.stops.hard_spots import hard_spots
from routines.counting.written_units import in_larger_unit

from .describing import describe
from .hard_jumps import READ_BY_DIGITS, carried, changed_parts, ways_to_tell
from .language import Language
from .languages import LANGUAGES
from .locating import locate, spoken_routes, where_past_the_end
from .page import page_of
from .sentences import MOST_WORDS_OF_A_CHILD, STUDENT_BANDS, capital, filled, first_that_fits, opening
from .slips import jump_phrase, written

# What each question of a hard jump asks for, by level band: how, along the grid, which parts change, or two ways.
ASKS = (("how", "how"), ("grid", "parts"), ("ways", "grid"), ("ways", "parts"))


@dataclass(frozen=True, kw_only=True)
class SpokenStop(StopSuggestion):
    """A stop with its question, its answer and the routes to it; why: what makes this a good place, for the teacher."""

    grid: Grid = field(repr=False)
    audience: Audience = field(repr=False)
    ahead: tuple[SpokenStop, ...] = field(default=(), repr=False, compare=False)

    @cached_property
    def question(self) -> str:
        """What the class is asked."""
        least, most = STUDENT_BANDS[band_of(self.audience.level)]
        return first_that_fits((partial(self._filled, wording) for wording in self._questions), least, most)

    @property
    def _questions(self) -> tuple[str, ...]:
        asked = "target" if self.reason == "end" and self.asked is None else self.reason
        band = band_of(self.audience.level)
        wordings = self._language.stops.questions[asked][band]
        if not self._fields["idea"] or band == 0:
            wordings = tuple(wording for wording in wordings if "{idea}" not in wording)
        # Stops at the ends of lines follow each other with another question too.
        at = self.after // self.grid.line_length + self.after % self.grid.line_length
        ordered = wordings if at % 2 or asked == "dies" else wordings[::-1]
        if asked != "hard":
            return ordered
        alike = [stop for stop in self.ahead if stop.reason == "hard"]
        return tuple(
            sorted(ordered, key=lambda wording: sum(stop._filled(wording) == stop.question for stop in alike) > 1)
        )

    @cached_property
    def answer(self) -> str:
        """What is so, and how a child can tell; no two stops of a count are answered with the same two words first."""
        if self.asked is not None:
            met = located(self.grid, self.asked)
            return self._past_the_end(met) or locate(self.grid, self.asked, self.audience).reason
        answers, hows = self._language.stops.answers, [how for how in self._ways_asked_for() if how]
        key = "target" if self.reason == "end" else "plain" if self.reason == "hard" and not hows else self.reason
        key = "dies why" if self.reason == "dies" and hows else key
        told = [self._told(wording, "next", "far", how=how) for how in hows or [""] for wording in answers[key]]
        taken = {opening(stop.answer) for stop in self.ahead}
        free = [text for text in told if opening(text) not in taken] or told
        if self.reason != "hard":
            return free[0]
        most = MOST_WORDS_OF_A_CHILD[self.audience.level]
        return next((text for text in free if _words_in(text) <= most), min(free, key=_words_in))

    def _past_the_end(self, met: Location) -> str:
        """How the asked value follows from the last count on the board in its line; empty where it does not."""
        grid, language, length = self.grid, self._language, self.grid.line_length
        if met.n is None or met.jumps is None or met.n <= grid.terms:
            return ""
        lines = -(-(met.n - grid.terms) // length)
        last = met.n - lines * length
        if last < 1:
            return ""
        count, here, words = grid.count, Jump(grid, self.after + 1), language.stops.past_the_end
        change = lines * length * count.step
        more = f"{count.difference_text(abs(change))} {language.compared(change, clock=count.wrap is not None)}"
        row, column = grid.place(last)
        facts = {
            "known": written(here, count.text(last), language),
            "line": language.line("row", row) if grid.fill is Fill.DOWN else language.line("column", column),
            "moved": words.moved[grid.fill][lines > 1].format(k=lines),
            "change": words.change[lines > 1].format(change=more),
            "value": self._in_both("probe", self.asked),
            "where": where_past_the_end(grid, met.n, language),
            "start": written(here, count.text(1), language),
            "jumps": language.many_jumps(met.jumps, count.difference_text(abs(count.step))),
            "make": language.locating.make[met.jumps != 1],
            "total": count.difference_text(met.jumps * abs(count.step)),
        }
        return filled(words.sentences[band_of(self.audience.level)], facts)

    def _ways_asked_for(self) -> Iterator[str]:
        """What answers the question of a hard jump, or why an idea ends, the best first."""
        jump, hows = Jump(self.grid, self.after + 1), self._language.stops.hows
        if self.reason == "dies" and band_of(self.audience.level):
            met = [spot.landmark for spot in hard_spots(self.grid) if spot.n == jump.n]
            facts = self._fields | {"landmark": self._landmark(met)}
            told = list(carried(jump)) if jump.count.kind in READ_BY_DIGITS else []
            told += [way for landmark in met for way in ways_to_tell(jump, landmark)]
            yield from (filled(hows[key], facts | own) for key, own in told)
        if self.reason != "hard" or self.spot is None:
            return
        asks = self._asks
        how = [
            filled(hows[key], self._fields | facts)
            for key, facts in ways_to_tell(jump, self.spot.landmark, asked_for_digits=asks == "parts")
        ]
        along, larger = self._along, in_larger_unit(self.grid.count, jump.a)
        if asks == "ways" and along:
            yield from (filled(hows["two ways"], along | {"first": first}) for first in how)
        same = filled(hows["larger"], self._fields | {"larger": larger}) if larger else ""
        asked = (
            filled(hows["along"], along) if asks == "grid" and along else self._changed(jump) if asks == "parts" else ""
        )
        for first in filter(None, (asked, *how)):
            more = (same, *(how if asks == "parts" else ()))
            yield from (
                filled(hows["both"], {"first": first, "second": second}) for second in more if second not in ("", first)
            )
            yield first

    def _landmark(self, met: list[Fraction]) -> str:
        here = Jump(self.grid, self.after + 1)
        return written(here, self.grid.count.text_of(met[0]), self._language) if met else ""

    @property
    def _asks(self) -> str:
        """What the question of a hard jump asks for: see ASKS."""
        band = band_of(self.audience.level)
        wordings = self._language.stops.questions["hard"][band]
        return next(
            asks for asks, wording in zip(ASKS[band], wordings, strict=True) if self._filled(wording) == self.question
        )

    @property
    def _along(self) -> dict[str, str]:
        """Where the next count goes, seen from the one a line before it; empty where there is none."""
        known, count, stops = self.after + 1 - self.grid.line_length, self.grid.count, self._language.stops
        if known < 1 or self.grid.line_length == 1:
            return {}
        change = self.grid.line_length * count.step
        compared = self._language.compared(change, clock=count.wrap is not None)
        return {
            "beside": stops.beside[self.grid.fill],
            "known": written(Jump(self.grid, self.after + 1), count.text(known), self._language),
            "change": f"{count.difference_text(abs(change))} {compared}",
        }

    def _changed(self, jump: Jump) -> str:
        """The parts that change, of what is written in parts: the hour, 12 to 1, and the minutes, 50 to 10."""
        if jump.count.kind in READ_BY_DIGITS or len(jump.count.part_names()) < 2:
            return ""
        language, page = self._language, page_of(self.grid, self.audience)
        told = []
        for part, x, y in changed_parts(jump):
            feature = page.part(part)
            name = language.the_many(feature.noun) if feature.plural else language.the_one(feature.noun)
            width = 2 if part == "minutes" and jump.count.kind == Kind.CLOCK else 1
            told.append(
                filled(language.stops.hows["one part"], {"part": name, "x": f"{x:0{width}}", "y": f"{y:0{width}}"})
            )
        return f", {language.conjunction} ".join(told)

    @property
    def routes(self) -> tuple[str, ...]:
        """The ways to the answer, each in one line."""
        return tuple(route.text for route in spoken_routes(self.grid, self.ways, self.audience))

    @cached_property
    def why(self) -> str:
        """What makes this a good place."""
        key = self.reason
        if self.spot is not None and key == "hard":
            back, landed = self.grid.count.step < 0, self.grid.count.value(self.spot.n) == self.spot.landmark
            key = "hard back" if back else "hard on" if landed else "hard"
        reasons = [key, "target"] if self.spot is not None and self._fields["idea"] else [key]
        told = self._language.stops.reasons
        return " ".join(self._told(told[reason], "landmark", how=self._what_changes) for reason in reasons)

    @property
    def _what_changes(self) -> str:
        """What changes in a hard jump back: its parts, its digits, or how far it leads below zero."""
        if self.spot is None or self.grid.count.step > 0:
            return ""
        jump, hows = Jump(self.grid, self.after + 1), self._language.stops.hows
        ways = ways_to_tell(jump, self.spot.landmark, asked_for_digits=True)
        return self._changed(jump) or next((filled(hows[key], self._fields | own) for key, own in ways), "")

    @property
    def _language(self) -> Language:
        return LANGUAGES[self.audience.language]

    def _filled(self, wording: str) -> str:
        return capital(filled(wording, self._fields))

    def _told(self, wording: str, *amounts: str, **fields: str) -> str:
        """For the teacher: these amounts in the larger unit too, where they fill one: "36 oz (2 lb 4 oz)"."""
        count = self.grid.count
        values = {"next": count.value(self.after + 1), "far": count.value(self.far)}
        if self.spot is not None:
            values["landmark"] = self.spot.landmark
        both = {name: self._in_both(name, values[name]) for name in amounts if name in values}
        return capital(filled(wording, self._fields | both | fields))

    def _in_both(self, name: str, value: Fraction | None) -> str:
        """An amount as written, and in the larger unit where it fills one."""
        larger = "" if value is None else in_larger_unit(self.grid.count, value)
        return self._language.value(f"{self._fields[name]} ({larger})", clock=False) if larger else self._fields[name]

    @cached_property
    def _fields(self) -> dict[str, str]:
        """What stands between the braces of the sentences."""
        language, grid = self._language, self.grid
        count, here = grid.count, Jump(grid, self.after + 1)
        row, column = grid.grown(max(self.far, grid.terms)).place(self.far)
        fields = {
            "a": written(here, here.said, language),
            "next": written(here, here.due, language),
            "jump": jump_phrase(here, language),
            "far": written(here, count.text(self.far), language),
            "place": language.cell.format(row=row, column=column),
            "idea": "",
            "by_lower": _lower(_ended(self._statement(self.by))) if self.reason in ("target", "end") else "",
            "parts": language.stops.parts[count.kind not in READ_BY_DIGITS],
        }
        if self.claim is not None:
            idea = _ended(self._statement(self.claim))
            fields |= {"idea": idea, "idea_lower": _lower(idea)}
        if self.spot is not None:
            fields["landmark"] = written(here, count.text_of(self.spot.landmark), language)
        if self.asked is not None:
            fields["probe"] = written(here, count.text_of(self.asked), language)
        return fields

    def _statement(self, claim: Claim) -> str:
        """What is seen, and until when; of what dies with the next count, as a class would say it before."""
        grid = self.grid
        view = grid if self.after >= grid.terms else grid.cut(self.after)
        if self.reason == "dies":
            return describe(claim, view, "always", None, self.audience, grid).statement
        _, judged = judge(claim, grid)
        if not judged.true:  # one that dies in view is told as it stands on the board at the stop
            _, judged = judge(claim, view)
        breaks_at = judged.breaks_at if judged.true else None
        return describe(claim, grid, "always" if breaks_at is None else "shown", breaks_at, self.audience).statement


def suggest_stops(
    grid: Grid, targets: Iterable[Any] = (), grade: int | None = None, *, audience: Audience | None = None
) -> list[SpokenStop]:
    """Places to stop with what to ask there: see `routines.counting.suggest_stops`."""
    reader = reader_of(grid, grade, audience)
    spoken: list[SpokenStop] = []
    for stop in suggested(grid, targets, audience=reader):
        spoken.append(
            SpokenStop(
                stop.after,
                stop.reason,
                stop.claim,
                stop.spot,
                stop.far,
                stop.by,
                stop.asked,
                stop.ways,
                stop.think,
                stop.partner,
                stop.share,
                grid=grid,
                audience=reader,
                ahead=tuple(spoken),
            )
        )
    return spoken


def _words_in(text: str) -> int:
    """How many words a text has, an amount being one, however it is written: 1 2/3; 2 lb 10 oz; 48 oz (3 lb)."""
    return len(_AMOUNT.sub("#", text).split())


_NAMES = {form for name in NAMES.values() for form in (name.one, name.several)}
_UNIT = "|".join(sorted(map(re.escape, {*UNITS, *_NAMES, "a.m.", "p.m.", "a. m.", "p. m."}), key=len, reverse=True))
_ONE = rf"\d[\d.,/:]*(?: \d+/\d+)?(?: (?:de )?(?:{_UNIT})(?!\w))"
_AMOUNT = re.compile(rf"{_ONE}(?: {_ONE})?(?: \({_ONE}(?: {_ONE})?\))?|\d+ \d+/\d+")


def _ended(statement: str) -> str:
    return statement if statement.endswith((".", "!", "?")) else f"{statement}."


def _lower(statement: str) -> str:
    return statement[:1].lower() + statement[1:]
