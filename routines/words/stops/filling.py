"""What stands between the braces of the sentences about one stop. Every number in it comes from the count."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from functools import cached_property
from typing import Literal

from routines.counting.audience import Audience, band_of
from routines.counting.checking import judge
from routines.counting.claims import Claim, DigitClaim, DigitRunClaim
from routines.counting.grid import Grid
from routines.counting.slips.jump import Jump
from routines.counting.stops import StopSuggestion
from routines.counting.written_units import in_larger_unit

from ..claims import Words
from ..describing import describe
from ..families.runs import stands_in_front
from ..hard_jumps import READ_BY_DIGITS
from ..language import Language
from ..languages import LANGUAGES
from ..page import page_of
from ..sentences import capital, filled
from ..slips import jump_phrase, written
from ..spoken_units import has_signs, with_unit_names

# Kindergarten adds within 10. Source: Common Core State Standards (2010), K.OA.A.2.
YOUNGEST, MOST_FOR_THE_YOUNGEST = 0, 10


class Filling:
    """A stop of a grid as an audience hears it: its jump, and its numbers and statements as they are written."""

    def __init__(self, stop: StopSuggestion, grid: Grid, audience: Audience) -> None:
        self.stop, self.grid, self.audience = stop, grid, audience
        self.band = band_of(audience.level)
        self.jump = Jump(grid, stop.after + 1)

    @property
    def language(self) -> Language:
        """The language of the audience."""
        return LANGUAGES[self.audience.language]

    def amount(self, text: str) -> str:
        """An amount as it stands in a sentence."""
        return text

    def is_before_digits(self, claim: Claim | None) -> bool:
        """Whether a claim is about digits, and the class has not met them."""
        before_digits = page_of(self.grid, self.audience).before_place_value
        return before_digits and isinstance(claim, DigitClaim | DigitRunClaim) and claim.part is None

    @cached_property
    def looked_at(self) -> Literal["", "end", "front"]:
        """Where those who have not met digits look at each number, of an idea about what it ends in or begins with."""
        claim, count = self.stop.claim, self.grid.count
        if self.stop.reason != "dies" or not isinstance(claim, DigitRunClaim) or claim.along != "count":
            return ""
        if not self.is_before_digits(claim) or min(count.start, self.jump.b) < 0:
            return ""
        place = claim.place or 0
        if place == 0:
            return "end"
        return "front" if stands_in_front(self.grid.cut(self.stop.after), place) else ""

    def size(self, value: Fraction) -> str:
        """A distance, or so many jumps together, without a sign."""
        return self.amount(self.grid.count.difference_text(abs(value)))

    def written(self, text: str) -> str:
        """A count's text as it stands in a sentence."""
        return written(self.jump, self.amount(text), self.language)

    def how(self, key: str, amounts: Mapping[str, str], **fields: str) -> str:
        """How something can be told, with these amounts and fields of its own."""
        named = {name: self.amount(text) for name, text in amounts.items()}
        return filled(self.language.stops.hows[key], {**self.fields, **fields, **named})

    def filled(self, wording: str) -> str:
        """A wording with the numbers as they are written."""
        return capital(filled(wording, self.fields))

    def told(self, wording: str, *amounts: str, facts: Mapping[str, str]) -> str:
        """For the teacher: these amounts in the larger unit too, where they fill one: "36 oz (2 lb 4 oz)"."""
        stop, count = self.stop, self.grid.count
        values = {"next": count.value(stop.after + 1), "far": count.value(stop.far)}
        if stop.spot is not None:
            values["landmark"] = stop.spot.landmark
        both = {name: self.in_both(self.fields[name], values[name]) for name in amounts if name in values}
        return capital(filled(wording, {**self.fields, **both, **facts}))

    def is_told_by_jumps(self, change: Fraction) -> bool:
        """Whether a change is too large for the youngest to add: they go on jump by jump."""
        return self.audience.level == YOUNGEST and abs(change) > MOST_FOR_THE_YOUNGEST

    def in_both(self, written: str, value: Fraction) -> str:
        """An amount as written, and in the larger unit where it fills one."""
        larger = in_larger_unit(self.grid.count, value)
        return self.language.value(f"{written} ({self.amount(larger)})", clock=False) if larger else written

    @cached_property
    def fields(self) -> dict[str, str]:
        """Every field that a wording may have."""
        language, grid, stop, here = self.language, self.grid, self.stop, self.jump
        count = grid.count
        row, column = grid.grown(max(stop.far, grid.terms)).place(stop.far)
        by = _ended(self._statement(stop.by)) if stop.reason in ("target", "end") else ""
        fields = {
            "a": self.written(here.said),
            "next": self.written(here.due),
            "jump": jump_phrase(here, language),
            "jumps": jump_phrase(here, language, several=True),
            "far": self.written(count.text(stop.far)),
            "place": language.cell.format(row=row, column=column),
            "idea": "",
            "by": by,
            "by_lower": _lower(by),
            "parts": language.stops.parts[count.kind not in READ_BY_DIGITS],
        }
        if stop.claim is not None:
            idea = _ended(self._statement(stop.claim))
            fields |= {"idea": idea, "idea_lower": _lower(idea)}
        if stop.spot is not None:
            fields["landmark"] = self.written(count.text_of(stop.spot.landmark))
        if stop.asked is not None:
            fields["probe"] = self.written(count.text_of(stop.asked))
        return fields

    def _statement(self, claim: Claim) -> str:
        """What is seen, and until when; of what dies with the next count, as a class would say it before."""
        grid, after = self.grid, self.stop.after
        view = grid if after >= grid.terms else grid.cut(after)
        if self.stop.reason == "dies":
            words = describe(claim, view, "always", None, self.audience, grid)
            return words.noticed if self.is_before_digits(claim) else self._stated(words)
        _, judged = judge(claim, grid)
        if not judged.true:  # one that dies in view is told as it stands on the board at the stop
            _, judged = judge(claim, view)
        breaks_at = judged.breaks_at if judged.true else None
        return self._stated(describe(claim, grid, "always" if breaks_at is None else "shown", breaks_at, self.audience))

    def _stated(self, words: Words) -> str:
        return words.statement


class ChildsFilling(Filling):
    """The same as a child says it: "1 hour later", with the names of units and not their signs."""

    def amount(self, text: str) -> str:
        """An amount with the names of its units."""
        return with_unit_names(text, self.language.code) if has_signs(self.grid.count) else text

    def _stated(self, words: Words) -> str:
        return words.said_aloud


def _ended(statement: str) -> str:
    return statement if statement.endswith((".", "!", "?")) else f"{statement}."


def _lower(statement: str) -> str:
    return statement[:1].lower() + statement[1:]
