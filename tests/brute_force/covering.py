"""What a coverage has to say, counted by looking at every lesson and every one of its events, one by one.

Imports nothing of the app. All that it is given are rows as plain values; what the app keeps beside them (when the first term
was written, totals of a day or a week, what was said of targets) it works out anew.
"""

from collections import Counter, defaultdict
from collections.abc import Iterable
from dataclasses import dataclass, field
from datetime import date, timedelta

TERMS = {"term.write", "term.correct", "term.left-out", "filled"}


@dataclass(frozen=True)
class Event:
    id: str
    t: int
    device: str
    kind: str
    data: dict


@dataclass(frozen=True)
class Taught:
    """A lesson: where, when and by whom, whether it is kept, who may read its log, and what happened in it."""

    key: int
    routine: int
    year: int
    grade: int
    area: str
    class_group: int
    teacher: int
    day: date
    practice: bool
    deleted: bool
    sharing: str
    targets: tuple[str, ...]
    events: tuple[Event, ...]

    @property
    def standing(self) -> list[Event]:
        undone = {event.data["event"] for event in self.events if event.kind == "undo"}
        return [event for event in self.events if event.id not in undone]

    @property
    def counts(self) -> bool:
        return not self.practice and not self.deleted and any(event.kind in TERMS for event in self.standing)

    def said(self) -> dict[str, Counter]:
        """Of each family of its targets how many were seen, not yet, and neither."""
        last = {}
        for event in sorted(self.standing, key=lambda event: (event.t, event.device)):
            if event.kind == "target":
                last[event.data["position"]] = event.data["seen"]
        said: dict[str, Counter] = defaultdict(Counter)
        for position, family in enumerate(self.targets):
            said[family][last.get(position, "not recorded")] += 1
        return said


@dataclass(frozen=True)
class Reader:
    key: int
    role: str


@dataclass
class Cell:
    available: int = 0
    taught: int = 0
    weeks: Counter = field(default_factory=Counter)
    said: Counter = field(default_factory=Counter)
    families: dict[str, Counter] = field(default_factory=lambda: defaultdict(Counter))
    classes: set[int] = field(default_factory=set)
    lessons: list[int] = field(default_factory=list)


@dataclass(frozen=True)
class School:
    """bands: of each grade. classes: of each its grade, its year and its teachers. routines: of each in the bank its grade,
    its area and its standards; standards: of every routine, in the bank or not."""

    bands: dict[int, int]
    classes: dict[int, tuple[int, int, set[int]]]
    routines: list[tuple[int, str, set[int]]]
    standards: dict[int, set[int]]
    lessons: list[Taught]

    def grades_of(self, reader: Reader, year: int) -> set[int]:
        if reader.role in ("coach", "administrator"):
            return set(self.bands)
        return {
            grade for grade, of_year, teachers in self.classes.values() if of_year == year and reader.key in teachers
        }

    def hides(self, reader: Reader, grade: int, year: int) -> bool:
        """Whether no number of lessons is told: with one class it would be one teacher's."""
        classes = [one for one, of_year, _teachers in self.classes.values() if (one, of_year) == (grade, year)]
        return reader.role == "administrator" and len(classes) < 2

    def opens(self, reader: Reader, lesson: Taught) -> bool:
        """Whether the log may be read."""
        if lesson.teacher == reader.key:
            return True
        if reader.role == "administrator" or lesson.sharing == "only-me":
            return False
        team = any(
            year == lesson.year and reader.key in teachers and self.bands[grade] == self.bands[lesson.grade]
            for grade, year, teachers in self.classes.values()
        )
        return team or (reader.role == "coach" and lesson.sharing == "team-coach")

    def by_area(self, reader: Reader, year: int, days: tuple[date, date], group: int | None) -> dict[tuple, Cell]:
        return self._cells(reader, year, days, group, by_standard=False)

    def by_standard(self, reader: Reader, year: int, days: tuple[date, date], group: int | None) -> dict[tuple, Cell]:
        return self._cells(reader, year, days, group, by_standard=True)

    def _cells(
        self, reader: Reader, year: int, days: tuple[date, date], group: int | None, *, by_standard: bool
    ) -> dict[tuple, Cell]:
        first, last = days
        cells: dict[tuple, Cell] = defaultdict(Cell)
        seen = self.grades_of(reader, year)
        for grade, area, standards in self.routines:
            for about in standards if by_standard else [area]:
                if grade in seen:
                    cells[grade, about].available += 1
        for lesson in self.lessons:
            if not lesson.counts or lesson.year != year or lesson.grade not in seen or not first <= lesson.day <= last:
                continue
            if group and lesson.class_group != group:
                continue
            for about in self.standards[lesson.routine] if by_standard else [lesson.area]:
                self._add(cells[lesson.grade, about], lesson, reader)
        return cells

    def _add(self, cell: Cell, lesson: Taught, reader: Reader) -> None:
        cell.taught += 1
        cell.weeks[lesson.day - timedelta(days=lesson.day.weekday())] += 1
        cell.lessons.append(lesson.key)
        if self.opens(reader, lesson) and reader.role != "administrator":
            cell.classes.add(lesson.class_group)
            for family, said in lesson.said().items():
                cell.families[family].update(said)
                cell.said.update(said)


def weeks_of(first: date, last: date) -> Iterable[date]:
    monday = first - timedelta(days=first.weekday())
    while monday <= last:
        yield monday
        monday += timedelta(weeks=1)
