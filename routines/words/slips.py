"""Slips and what was heard, with what the teacher may say and ask."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Set
from dataclasses import dataclass, field
from functools import cached_property
from typing import Any

from routines.counting.audience import Audience, band_of
from routines.counting.grid import Fill, Grid
from routines.counting.kinds.currency import currency_named
from routines.counting.kinds.names import Kind
from routines.counting.kinds.unit_names import NAMES
from routines.counting.kinds.units import UNITS
from routines.counting.slips import Carried, EqualName, Hearing, Other, Repeated, Right, SkippedAhead, Slip
from routines.counting.slips import classify as classified
from routines.counting.slips import likely_slips as foreseen
from routines.counting.slips.checked import reader_of
from routines.counting.slips.crossings import what_is_not_counted
from routines.counting.slips.jump import Jump
from routines.counting.slips.measurement import two_units
from routines.counting.slips.reading import value_of
from routines.counting.slips.spanish_words import OF_SAYING, another_made_up
from routines.counting.written_units import written_units

from .language import Language, SlipWords
from .languages import LANGUAGES
from .sentences import STUDENT_BANDS, capital, filled

# A line is looked along where so many counts are written in it: with fewer there is nothing to compare.
ENOUGH_TO_LOOK_ALONG = 3

# An ending that starts at the count before.
FROM_THE_COUNT_BEFORE = re.compile(r"{a[:}]")


@dataclass(frozen=True, kw_only=True)
class SpokenSlip(Slip):
    """A slip with its sentences for an audience."""

    grid: Grid = field(repr=False)
    audience: Audience = field(repr=False)

    @classmethod
    def saying(cls, slip: Slip, grid: Grid, audience: Audience) -> SpokenSlip:
        """The slip with its sentences."""
        return cls(
            slip.rule,
            slip.n,
            slip.heard,
            slip.correct,
            slip.equal_name,
            slip.of_writing,
            grid=grid,
            audience=audience,
        )

    @cached_property
    def why(self) -> str:
        """Why this slip happens here, for the teacher."""
        return capital(filled(self._words.why, self._fields))

    @cached_property
    def reply(self) -> str:
        """What the teacher may ask: a question, and the way back to the grid. It never holds the count that is due."""
        told, band = self._language.replies, band_of(self.audience.level)
        words = self._words
        asked = words.show if band == 0 and words.show else words.ask
        of_number = told.about_saying if self.rule in OF_SAYING else told.about_writing
        endings = (of_number if self.of_writing else told.about_a_jump)[band]
        if self.equal_name:
            endings = told.about_names[band]
        if band == 0 and endings == told.about_a_jump[band] and not self._is_in_view:
            endings = (*filter(FROM_THE_COUNT_BEFORE.search, endings), endings[-1])
        for where in ("along", "alike"):
            if not self._fields[where]:
                endings = tuple(ending for ending in endings if f"{{{where}}}" not in ending)
        replies = [capital(filled(f"{asked} {ending}", self._fields)) for ending in endings]
        least, most = STUDENT_BANDS[band]
        fitting = [text for text in replies[:-1] if least <= text.count(" ") + 1 <= most] or replies[-1:]
        return fitting[self.n % len(fitting)]

    @property
    def _is_in_view(self) -> bool:
        """Whether what was said can be pointed to on the page; of what is no number, that nobody asks."""
        count = self.grid.count
        value = value_of(count, self.heard)
        return value is None or any(count.value(n) == value for n in range(1, self.grid.terms + 1))

    @property
    def _language(self) -> Language:
        return LANGUAGES[self.audience.language]

    @cached_property
    def _words(self) -> SlipWords:
        """The sentences of the rule; where it has several, those of what happens here."""
        slips, jump = self._language.replies.slips, Jump(self.grid, self.n)
        ends = {
            "named": self.equal_name,
            "landed": jump.crossing.landed,
            "back": jump.s < 0 and jump.count.wrap is None,
            what_is_not_counted(jump): True,
        }
        keys = [f"{self.rule} {end}" for end, is_so in ends.items() if is_so]
        return slips[next((key for key in keys if key in slips), self.rule)]

    def _counted_on(self, jump: Jump) -> str:
        """What was counted on by: the distance of what was heard from the count before."""
        value = value_of(jump.count, self.heard)
        if value is None:
            return ""
        by, wrap = value - jump.a, jump.count.wrap
        if wrap:  # from 12:00 to 11:59 it is 1 min back
            by = (by + wrap // 2) % wrap - wrap // 2
        return jump.count.difference_text(by)

    @cached_property
    def _fields(self) -> dict[str, str]:
        """What stands between the braces of the sentences."""
        jump, language = Jump(self.grid, self.n), self._language
        line = _line_of(jump.grid, jump.n - 1, language)
        along = line if _written_in_line(jump.grid, jump.n - 1) >= ENOUGH_TO_LOOK_ALONG else ""
        fields = {
            "a": written(jump, jump.said.partition(" = ")[0], language),
            "b": written(jump, jump.due, language),
            "heard": self.heard,
            "start": jump.count.text(1),
            "line": line,
            "along": along,
            "alike": along if _is_alike_in_line(jump) else "",
            "jump": jump_phrase(jump, language),
            "size": jump.count.difference_text(jump.s),
            "least": self._counted_on(jump),
            "made_up": another_made_up(jump),
            "joined": language.replies.joined[jump.s < 0],
            "onward": language.replies.onward[jump.count.wrap is not None][jump.s < 0],
        }
        units = written_units(jump.count)
        if units is not None:
            name = NAMES[units.small.symbol, language.code]
            fields |= {"smalls": name.several, **language.replies.of_gender[name.form == "feminine"]}
        called = language.replies.called[jump.count.wrap is not None]
        return {**fields, **_unit_names(jump, language), **called}


@dataclass(frozen=True)
class SpokenHearing:
    """What was heard, with a line for the teacher."""

    hearing: Hearing
    grid: Grid = field(repr=False)
    audience: Audience = field(repr=False)

    @property
    def slip(self) -> SpokenSlip | None:
        """The slip that it is, or that foresees it here, with its sentences."""
        slip = self.hearing if isinstance(self.hearing, Slip) else getattr(self.hearing, "slip", None)
        return SpokenSlip.saying(slip, self.grid, self.audience) if slip is not None else None

    @cached_property
    def note(self) -> str:
        """What it is, in one line."""
        hearing, language = self.hearing, LANGUAGES[self.audience.language]
        if isinstance(hearing, Slip):
            return SpokenSlip.saying(hearing, self.grid, self.audience).why
        notes, facts = language.replies.notes, {"correct": hearing.correct, "said": hearing.said}
        match hearing:
            case Right():
                key = "right"
            case EqualName():
                key = "equal name"
            case Repeated():
                key = "repeated"
            case Carried(since=since):
                key = "carried"
                facts["nth"] = language.nth(since)
            case SkippedAhead(by=by):
                key = "skipped one" if by == 1 else "skipped"
                facts["by"] = str(by)
            case Other():
                key = _otherwise(hearing, self.grid, facts)
        return filled(notes[key], facts)


def _otherwise(hearing: Other, grid: Grid, facts: dict[str, str]) -> str:
    """Under which key the note stands on what is on no list."""
    if hearing.difference is None:
        return "unreadable"
    count = grid.count
    facts |= {"size": count.difference_text(hearing.difference), "step": count.difference_text(count.step)}
    if hearing.takes == "jumps":
        by = hearing.difference / count.step
        facts["many"] = str(abs(by))
        return f"{'jump' if abs(by) == 1 else 'jumps'} {'too many' if by > 0 else 'to go'}"
    if hearing.takes in ("place", "difference"):
        return f"{hearing.place or hearing.takes}, {'more' if hearing.difference > 0 else 'less'}"
    return hearing.takes or "unreadable"


def likely_slips(grid: Grid, grade: int | None = None, *, audience: Audience | None = None) -> list[SpokenSlip]:
    """What a class will probably say wrong, with what to ask: see `routines.counting.likely_slips`."""
    reader = reader_of(grid, grade, audience)
    return [SpokenSlip.saying(slip, grid, reader) for slip in foreseen(grid, audience=reader)]


def classify(grid: Grid, n: int, said: str, earlier: Any = (), *, audience: Audience | None = None) -> SpokenHearing:
    """Name what was said at the n-th count, with a note: see `routines.counting.classify`."""
    reader = reader_of(grid, None, audience)
    return SpokenHearing(classified(grid, n, said, facts_of(earlier), audience=reader), grid, reader)


def facts_of(heard: Any) -> Any:
    """What was heard without its words; all else as it is."""
    if isinstance(heard, Iterable) and not isinstance(heard, (str, bytes, Mapping, Set)):
        return [one.hearing if isinstance(one, SpokenHearing) else one for one in heard]
    return heard


def jump_phrase(jump: Jump, language: Language, *, several: bool = False) -> str:
    """The jump with its size, never its end: "a jump back of 50"; of several such jumps: "jumps back of 50"."""
    phrases = language.replies.jumps if several else language.replies.jump
    return phrases[jump.s < 0].format(size=jump.count.difference_text(jump.s))


def written(jump: Jump, text: str, language: Language) -> str:
    """A count inside a sentence."""
    return language.value(text, clock=jump.count.wrap is not None)


def _line_of(grid: Grid, n: int, language: Language) -> str:
    """The line that the fill runs along, through the n-th count: "row 3"."""
    row, column = grid.place(n)
    return language.line("column", column) if grid.fill is Fill.DOWN else language.line("row", row)


def _written_in_line(grid: Grid, n: int) -> int:
    """How many counts stand in that line when the n-th is written."""
    return min(n, (grid.lead + n - 1) % grid.line_length + 1)


def _is_alike_in_line(jump: Jump) -> bool:
    """Whether a jump of this sort was made in that line before: across such a place, or past zero."""
    n, written = jump.n - 1, _written_in_line(jump.grid, jump.n - 1)
    return any(_sort_of(Jump(jump.grid, m)) == _sort_of(jump) for m in range(n - written + 2, n + 1))


def _sort_of(jump: Jump) -> tuple[set[str], bool]:
    """Which places it crosses, fills and leaves, and whether it passes zero."""
    return jump.crossing.touched, jump.how_hard()[0]


def larger_units(grid: Grid, language: str) -> str:
    """The larger unit of a count in two, several of them, as they are called: "feet", "dollars"; else nothing."""
    return _unit_names(Jump(grid, 2), LANGUAGES[language]).get("larges", "")


def _unit_names(jump: Jump, language: Language) -> dict[str, str]:
    if jump.count.kind == Kind.MONEY:
        currency = currency_named(jump.count.style.currency, language.code)
        cent = currency.small.one or language.replies.cent
        cents = currency.small.several or f"{cent}s"
        return {"small": cent, "smalls": cents, "large": currency.main.one, "larges": currency.main.several}
    units = (UNITS["h"], UNITS["min"]) if jump.count.kind == Kind.CLOCK else two_units(jump.grid)
    if units is None:
        return {}
    large, small = (NAMES[unit.symbol, language.code] for unit in units)
    return {"small": small.one, "smalls": small.several, "large": large.one, "larges": large.several}
