"""The plan document: everything a teacher decides about one routine, as one JSON document with a schema version.

The same document is what a saved version freezes, what a draft holds, what is copied, exported and imported, and what
a lesson was taught from. Numbers stay as they were typed and are read by the counting engine, so nothing is lost.

Its parts, their labels and their bounds are declared here and nowhere else: `plan_reading` checks documents by them, the
published JSON Schema is made from them, and the plan form takes its fields from them. `Words` are what people write.
"""

from collections.abc import Mapping
from dataclasses import asdict, dataclass, field, replace
from enum import Enum
from functools import lru_cache
from typing import Annotated, Any, Literal, Self

from django.utils.translation import gettext_noop as _

from routines.counting import Audience, Claim, Count, Fill, Grid, Kind, Outcome, Style
from routines.counting.languages import LANGUAGES
from routines.models.plan_field import Field

SCHEMA = 1

TITLE_LIMIT = 120
SENTENCE_LIMIT = 400
TEXT_LIMIT = 2000
LIST_LIMIT = 40
KEPT_COUNTS = 2000  # of a few hundred bytes each

Sort = Literal["easy", "deeper", "not-for-long", "not-so", "slip", "own"]
Language = Literal["en", "es", "both"]


class Words:
    """Marks a text that people write in their own words: it is searched, and it can be erased."""


Choice = Annotated[str, Field(max_length=20)]
Value = Annotated[str, Field(max_length=40)]  # a number as typed
Label = Annotated[str, Field(max_length=40), Words]
Sentence = Annotated[str, Field(max_length=SENTENCE_LIMIT), Words]
Text = Annotated[str, Field(max_length=TEXT_LIMIT), Words]
Terms = Annotated[int, Field(ge=2, le=200)]


@dataclass(frozen=True, slots=True)
class Part:
    """A group of named parts that holds none but its own."""

    __pydantic_config__ = {"extra": "forbid"}


@dataclass(frozen=True, slots=True)
class CountSection(Part):
    """A count as the teacher typed it. `style` holds the engine's style keywords."""

    kind: Annotated[Choice, Field(title=_("Kind of number"))] = Kind.WHOLE.value
    start: Annotated[Value, Field(title=_("Start"))] = "0"
    step: Annotated[Value, Field(title=_("Step"), description=_("May carry the sign: -50."))] = "1"
    terms: Annotated[Terms, Field(title=_("Number of counts"))] = 20
    style: Annotated[Mapping[str, Any], Field(description=_("How the count is written and said."))] = field(
        default_factory=dict
    )

    def count(self) -> Count:
        """Read the typed count. Raises CountError with the field at fault."""
        return _parsed(self.kind, self.start, self.step, self.terms, Style.from_dict(self.style))


@lru_cache(maxsize=KEPT_COUNTS)
def _parsed(kind: str, start: str, step: str, terms: int, style: Style) -> Count:
    """The same typing is the same count: a page asks for it when it reads, checks and shows a plan."""
    return Count.parse(kind=kind, start=start, step=step, terms=terms, style=style)


@dataclass(frozen=True, slots=True)
class Fold(Part):
    """How the count is written: the length of a line, which way it is filled, and how many cells stay empty before the
    first count."""

    line_length: Annotated[int, Field(ge=1, le=200, title=_("Line length"))] = 5
    fill: Annotated[Fill, Field(title=_("How it is filled"))] = Fill.ACROSS
    lead: Annotated[int, Field(ge=0, le=199, title=_("Empty cells before the first count"))] = 0

    def grid(self, count: Count) -> Grid:
        """The count folded so. Raises CountError with the field at fault."""
        return Grid(count, line_length=self.line_length, fill=self.fill, lead=self.lead)


@dataclass(frozen=True, slots=True)
class Target(Part):
    """A pattern the teacher wants the class to see: a claim of the engine and, if she likes, her own words for it."""

    claim: Mapping[str, Any]
    words: Sentence = ""


@dataclass(frozen=True, slots=True)
class ExpectedAnswer(Part):
    """What students will probably say; `n` is the term it is about (0 when none)."""

    words: Annotated[Sentence, Field(title=_("Words"), example=_("What they may say"))] = ""
    reply: Annotated[Sentence, Field(title=_("Reply"), example=_("What you ask back"))] = ""
    sort: Annotated[Sort, Field(title=_("Sort"))] = "own"
    n: Annotated[int, Field(ge=0, le=400, title=_("About count"))] = 0


@dataclass(frozen=True, slots=True)
class Stop(Part):
    """A chosen place to pause: after the `after`-th count. Times are in seconds."""

    after: Annotated[int, Field(ge=1, le=200, title=_("After count"))] = 1
    question: Annotated[Sentence, Field(title=_("Question"), example=_("What do you ask here?"))] = ""
    answer: Annotated[Sentence, Field(title=_("Answer"), example=_("The answer you hope for"))] = ""
    routes: Annotated[
        tuple[Sentence, ...],
        Field(
            max_length=LIST_LIMIT,
            title=_("Routes to it, one a line"),
            example=_("Routes through the grid, one a line"),
        ),
    ] = ()
    think: Annotated[int, Field(ge=0, le=600, title=_("Think, seconds"))] = 20
    partner: Annotated[int, Field(ge=0, le=1200, title=_("Partner, seconds"))] = 60
    share: Annotated[int, Field(ge=0, le=1800, title=_("Share, seconds"))] = 90


@dataclass(frozen=True, slots=True)
class NextCount(Part):
    """What to count next, by how it went."""

    outcome: Annotated[Outcome, Field(title=_("How it went"))] = Outcome.AS_PLANNED
    why: Annotated[Sentence, Field(title=_("Why"), example=_("What changes, and why"))] = ""
    count: CountSection | None = None
    fold: Fold | None = None

    def grid(self) -> Grid | None:
        """The next grid, where a count and its fold are given. Raises CountError with the field at fault."""
        if self.count is None or self.fold is None:
            return None
        return self.fold.grid(self.count.count())


@dataclass(frozen=True, slots=True)
class Story(Part):
    """The word problem a count answers: groups with a label and what each holds, and a goal as typed (may be "")."""

    text: Annotated[Text, Field(title=_("Story"))] = ""
    group: Annotated[
        Label, Field(title=_("Each count is"), description=_("What one group is called, such as crate."))
    ] = ""
    goal: Annotated[Label, Field(title=_("Until"), description=_("A value of the count's kind, as typed."))] = ""


@dataclass(frozen=True, slots=True)
class Plan(Part):
    title: Annotated[
        str,
        Field(strip_whitespace=True, min_length=1, max_length=TITLE_LIMIT),
        Words,
        Field(title=_("Title")),
    ]
    grade: Annotated[
        Choice, Field(title=_("Grade"), description=_("The name of a grade of the school that reads the file."))
    ]
    area: Annotated[Choice, Field(title=_("Area"))]
    count: CountSection
    fold: Fold
    language: Annotated[Language, Field(title=_("Language"))] = "en"
    story: Story = Story()
    landmark: Annotated[
        Label,
        Field(
            title=_("Landmark"),
            description=_("Counts at multiples of this value are landmarks; empty: the app proposes one."),
        ),
    ] = ""
    targets: Annotated[tuple[Target, ...], Field(max_length=LIST_LIMIT)] = ()
    expected: Annotated[tuple[ExpectedAnswer, ...], Field(max_length=LIST_LIMIT)] = ()
    stops: Annotated[tuple[Stop, ...], Field(max_length=LIST_LIMIT)] = ()
    next_counts: Annotated[tuple[NextCount, ...], Field(max_length=LIST_LIMIT)] = ()
    standards: Annotated[
        tuple[Annotated[str, Field(max_length=60), Words], ...],
        Field(max_length=LIST_LIMIT, title=_("Standards")),
    ] = ()
    notes: Annotated[Text, Field(title=_("Notes to yourself and colleagues"))] = ""

    def grid(self) -> Grid:
        """The folded grid. Raises CountError with the field at fault."""
        return self.fold.grid(self.count.count())

    def claims(self) -> list[Claim]:
        return [Claim.from_dict(dict(target.claim)) for target in self.targets]

    def audience(self, level: int) -> Audience:
        return Audience(level=level, language=self.first_language)

    @property
    def first_language(self) -> str:
        """The language of its sentences: of a plan in both the first."""
        return LANGUAGES[0] if self.language == "both" else self.language

    def minutes(self) -> int:
        """Estimated length in whole minutes: five seconds a count and the times of the stops (common practice, no source)."""
        seconds = 5 * self.count.terms + sum(stop.think + stop.partner + stop.share for stop in self.stops)
        return max(1, -(-seconds // 60))

    def changed(self, **changes: Any) -> Self:
        return replace(self, **changes)

    def as_dict(self) -> dict[str, Any]:
        """The JSON document: plain lists, dicts, strings and integers, keys always all present."""
        return {"schema": SCHEMA, **_plain(asdict(self))}


def _plain(value: Any) -> Any:
    if isinstance(value, Mapping):
        return {key: _plain(item) for key, item in value.items()}
    if isinstance(value, list | tuple):
        return [_plain(item) for item in value]
    return value.value if isinstance(value, Enum) else value
