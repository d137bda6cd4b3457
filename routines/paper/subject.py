"""One saved plan as it is printed: its numbers and texts, in the languages of the print."""

from collections.abc import Callable
from functools import cache, cached_property, partial

from django.utils.safestring import SafeString

from accounts.models import School
from routines.counting import Fill, Grid
from routines.counting.stories import Story
from routines.counting.written_units import in_larger_unit
from routines.models import RoutineVersion
from routines.models.plan_document import Plan
from routines.models.shown_plan import ShownPlan
from routines.paper.languages import LANGUAGES, PrintLanguages, phrase
from routines.words import SpokenPattern, ordinal, proposed_landmarks, series


class Subject:
    """`language` is "en", "es" or "both"; without one, the plan's own."""

    def __init__(self, version: RoutineVersion, school: School, language: str = "") -> None:
        self.version = version
        self.routine = version.routine
        self.school = school
        self.plan: Plan = version.read_plan()
        self.say = PrintLanguages(LANGUAGES[language or self.plan.language])
        self.shown_in = cache(self._shown_in)

    def _shown_in(self, language: str) -> ShownPlan:
        return ShownPlan(self.plan.changed(language=language), self.routine.grade.level)

    @property
    def shown(self) -> ShownPlan:
        return self.shown_in(self.say.main)

    @property
    def grid(self) -> Grid:
        return self.shown.grid

    @property
    def written(self) -> str:
        """The language the teacher wrote her own words in."""
        return self.plan.first_language

    @cached_property
    def story(self) -> Story | None:
        """The groups of the word problem, where the plan names them."""
        if not self.plan.story.group.strip():
            return None
        return Story(self.grid.count, self.plan.story.group)

    @property
    def group_labels(self) -> dict[int, str]:
        """What stands small in each cell: which crate, which ticket."""
        return {n: self.story.label(n) for n in range(1, self.grid.terms + 1)} if self.story else {}

    def text(self, n: int) -> str:
        """The n-th count as written, kept on one line."""
        return self.grid.count.text(n).replace(" ", "\u00a0")

    def in_both(self, n: int) -> str:
        """The n-th count as written, and in the larger unit where it fills one, for teachers: "32 oz (2 lb)"."""
        larger = self.larger(n)
        return f"{self.text(n)} ({larger})".replace(" ", "\u00a0") if larger else self.text(n)

    def larger(self, n: int) -> str:
        """The n-th count in the larger unit; nothing where it does not fill one."""
        return in_larger_unit(self.grid.count, self.grid.count.value(n))

    def nth(self, n: int) -> Callable[[str], str]:
        """The place of a term, as a function of the language: "22nd", "22.º"."""
        return lambda language: ordinal(n, language, before_noun=True)

    def phrase(self, key: str, **facts: object) -> str:
        """Fixed words in the main language alone, where there is no room for two."""
        return phrase(key, self.say.main, **facts)

    def count_words(self, language: str, grid: Grid | None = None) -> str:
        """The count in one line: "By 6 from 20"; of this plan, or of another grid."""
        count = (grid or self.grid).count
        step = count.difference_text(abs(count.step))
        return phrase("by" if count.step > 0 else "back_by", language, step=step, start=count.text(1))

    @property
    def by_line(self) -> SafeString:
        """The count without its fold: "By 6 from 20"."""
        return self.say.each(self.count_words)

    def fold_words(self, language: str, grid: Grid | None = None) -> str:
        folded = grid or self.grid
        return phrase(f"fold_{folded.fill}", language, length=folded.line_length)

    def line_of(self, grid: Grid) -> SafeString:
        """A count and its fold in one sentence."""
        return self.say.each(lambda language: self.sentence_of(language, grid))

    def sentence_of(self, language: str, grid: Grid) -> str:
        return f"{self.count_words(language, grid)}, {self.fold_words(language, grid)}."

    @cached_property
    def count_line(self) -> SafeString:
        """This plan's count, its fold and how far it goes."""
        return self.say.tell(
            "counts_to",
            line=lambda language: self.sentence_of(language, self.grid),
            terms=self.grid.terms,
            last=self.text(self.grid.terms),
        )

    @property
    def lines(self) -> list[str]:
        """The count line by line, as it is folded: for grids too wide to be read on paper."""
        along = "column" if self.grid.fill is Fill.DOWN else "row"
        return [series([self.text(n) for n in line]) for line in self.grid.lines(along)]

    @cached_property
    def picture_title(self) -> str:
        """What the picture is called for those who hear it."""
        return f"{self.count_words(self.say.main)}, {self.fold_words(self.say.main)}"

    def pattern_words(self, pattern: SpokenPattern, part: str) -> SafeString:
        """A pattern's statement, reason or student words (`part`) in the languages of the print."""

        def words(language: str) -> str:
            for item in self.shown_in(language).listed:
                if item.pattern.claim == pattern.claim:
                    return str(getattr(item.pattern, part))
            return ""

        return self.say.each(words)

    def landmark_words(self, language: str) -> str:
        """What the landmarks are multiples of: as the teacher typed it, or the engine's name where it is in this language."""
        name = self.plan.landmark
        if not name and self.grid.count.style.language == language:
            proposed = proposed_landmarks(self.grid)
            name = proposed[0].name if proposed else ""
        if not name:
            return phrase("landmark_plain", language)
        first = next(iter(self.shown.landmarks), 1)
        return phrase("landmark", language, name=f"{name}, {self.in_both(first)}" if self.larger(first) else name)

    @cached_property
    def goal(self) -> SafeString | str:
        """At which group (or count) the goal is met or passed, and by how much."""
        reached = self.shown.goal
        if reached is None:
            return ""
        n = reached.n
        label = self.as_written(self.story.label(n)) if self.story else partial(phrase, "count_number", n=n)
        if not reached.by:
            return self.say.tell("goal_met", goal=reached.goal, label=label)
        return self.say.tell("goal_passed", goal=reached.goal, label=label, by=reached.by)

    @cached_property
    def each(self) -> SafeString | str:
        if self.story is None:
            return ""
        return self.say.tell("story_each", group=self.as_written(self.story.group.strip()), each=self.story.each)

    def as_written(self, words: str) -> Callable[[str], str]:
        """The teacher's words within a sentence of ours: quoted where that is in another language than hers."""
        return lambda language: words if language == self.written else phrase("quoted", language, words=words)
