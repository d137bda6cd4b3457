"""What to count next, in words: what changes, why, and what the class may be asked about it."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass, field
from functools import cached_property
from typing import Any

from routines.counting.audience import Audience, band_of
from routines.counting.checking import judge
from routines.counting.grid import Fill, Grid
from routines.counting.slips.checked import reader_of
from routines.counting.slips.jump import Jump
from routines.counting.variations import Variation
from routines.counting.variations import next_counts as counted_next

from .describing import describe
from .language import Language
from .languages import LANGUAGES
from .page import page_of
from .sentences import capital, filled, sentence
from .slips import facts_of, jump_phrase

COUNTS_IN_SENTENCES = ("start", "last", "end", "before", "hard", "landmark", "larger", "until", "now", "then")
# The stop of a sentence; one that ends in a time ends in the time's own.
LAST_STOP = re.compile(r"(?<![ap]\.m)(?<![ap]\. m)\.$")
# Changes that ask what another one asks.
ASKED_LIKE = {
    "smaller place": "hard place",
    "smaller place reached": "hard place",
    "first jumps": "multiples",
    "few back": "back again",
    "other fold": "fold",
    "by tens from": "by tens",
    "ten times from zero": "ten times",
    "finer from zero": "finer",
    "ones digit kept": "round number more",
    "two digits kept": "round number more",
    "minutes kept": "round number more",
    "unfriendly seldom": "unfriendly",
}


@dataclass(frozen=True, kw_only=True)
class SpokenVariation(Variation):
    """A next count with its sentences for an audience."""

    audience: Audience = field(repr=False)

    @cached_property
    def what(self) -> str:
        """What changes: for the teacher, and so the same at all grades."""
        told = self._language.next_counts
        also = [told.in_a_line.format(self.written["in a line"])] if "in a line" in self.written else []
        if "empty" in self.written:
            also.append(told.empty[min(int(self.written["empty"]), 2)].format(self.written["empty"]))
        what = self._filled(told.changes[self.change][0])
        what = sentence(", ".join([LAST_STOP.sub("", what), *also])) if also else what
        return f"{what} {self._filled(told.cut)}" if "cut" in self.written else what

    @cached_property
    def reason(self) -> str:
        """Why this, after what happened: for the teacher, and so the same at all grades."""
        return self._filled(self._language.next_counts.changes[self.change][1])

    @cached_property
    def ask(self) -> str:
        """A question for the class, in the voice of its grade."""
        asked = ASKED_LIKE.get(self.change, self.change)
        return self._filled(self._language.next_counts.questions[asked][band_of(self.audience.level)])

    @property
    def why(self) -> str:
        """The reason with the question."""
        return self._language.next_counts.why.format(reason=self.reason, ask=self.ask)

    @property
    def _language(self) -> Language:
        return LANGUAGES[self.audience.language]

    def _filled(self, wording: str) -> str:
        return capital(filled(wording, self._fields))

    @property
    def _along(self) -> str:
        """Along which lines there is something to see: those of what is shown, else those that the fill does not run along."""
        if self.shows:
            told = self.shows[0].parameters
            along = str(told.get("along") or told.get("lie") or "count").removesuffix("s")
            return along if along in ("row", "column") else "count"
        return "row" if self.grid.fill is Fill.DOWN else "column"

    @cached_property
    def _fields(self) -> dict[str, str]:
        """What stands between the braces of the sentences; the change's own numbers before those of its grid."""
        count, language = self.grid.count, self._language
        mark = page_of(self.grid, self.audience).mark(count.form.round_number())
        fields = {
            "landmark": mark.one,
            "a_mark": language.a(mark),
            "jump": jump_phrase(Jump(self.grid, 2), language),
            "size": count.difference_text(count.step),
            "start": count.text(1),
            "length": str(self.grid.line_length),
            "along": language.next_counts.along[self._along],
            "beside": language.next_counts.beside[self.grid.fill],
            **language.next_counts.called[count.wrap is not None],
            **self.written,
        }
        for name in COUNTS_IN_SENTENCES:
            if name in self.written or name == "start":
                fields[name] = language.value(fields[name], clock=count.wrap is not None)
        if self.shows:
            claim, judged = judge(self.shows[0], self.grid)
            told = describe(claim, self.grid, judged.holds or "shown", judged.breaks_at, self.audience)
            fields["shows"] = sentence(told.statement.rstrip("."))
        return fields


def next_counts(
    grid: Grid,
    outcome: str,
    grade: int | None = None,
    *,
    slips: Iterable[Any] = (),
    unseen: Iterable[Any] = (),
    audience: Audience | None = None,
) -> list[SpokenVariation]:
    """Counts to do next with their sentences: see `routines.counting.next_counts`."""
    reader = reader_of(grid, grade, audience)
    return [
        SpokenVariation(found.outcome, found.change, found.grid, found.shows, found.written, audience=reader)
        for found in counted_next(grid, outcome, slips=facts_of(slips), unseen=unseen, audience=reader)
    ]
