"""Table, files and what stands behind each field, against a look at every lesson of a school made at random.

Nothing that the app keeps beside lessons and events is believed: see tests/brute_force/covering.py.
"""

import csv
import io
import random
import re
from collections import Counter
from collections.abc import Callable
from datetime import date, timedelta
from html.parser import HTMLParser
from itertools import product

import pytest
from django.test import Client
from django.urls import reverse

from accounts.models import User
from grade_bands.models import Area, ClassGroup, Grade, SchoolYear, Standard
from routines.coverage.patterns import NAMES
from routines.lessons.recording import delete_lesson, move_lesson, record_paper_lesson, save_reflection, start_lesson
from routines.models import Lesson, LessonEvent, Routine
from routines.models.plan_document import Target
from tests.brute_force.covering import Cell, Event, Reader, School, Taught, weeks_of
from tests.factories import (
    ClassGroupFactory,
    GradeBandFactory,
    GradeFactory,
    SchoolYearFactory,
    StandardFactory,
    UserFactory,
)
from tests.routines.coverage.test_patterns import say
from tests.routines.lessons.making import append, event
from tests.routines.making import make_routine

TODAY = date(2026, 11, 30)
THIS_YEAR, LAST_YEAR = (date(2026, 8, 17), date(2027, 6, 18)), (date(2025, 8, 18), date(2026, 6, 19))
WINDOWS = {
    "this year": (None, (THIS_YEAR[0], TODAY)),
    "this term": ((date(2026, 10, 5), TODAY), (date(2026, 10, 5), TODAY)),
    "last year": (LAST_YEAR, LAST_YEAR),
    "parts of two weeks": ((date(2026, 9, 16), date(2026, 9, 22)), (date(2026, 9, 16), date(2026, 9, 22))),
    "one day": ((date(2026, 9, 16), date(2026, 9, 16)), (date(2026, 9, 16), date(2026, 9, 16))),
}
TARGETS = [
    {"family": "step", "difference": "7"},
    {"family": "neighbour", "direction": "down", "difference": "35"},
    {"family": "neighbour", "direction": "down-right", "difference": "42"},
]


@pytest.fixture(params=[14, 159])
def readers(request, school, monkeypatch) -> list[User]:
    """A school of two bands, three or four grades and two years; its people, of whom some teach several classes."""
    monkeypatch.setattr("routines.coverage.views.timezone.localdate", lambda: TODAY)
    luck = random.Random(request.param)
    bands = [GradeBandFactory(), GradeBandFactory()]
    grades = [
        GradeFactory(
            name=f"=G{n}", band=luck.choice(bands), areas=luck.sample(["whole", "fractions", "money", "ratios"], k=2)
        )
        for n in range(luck.choice([3, 4]))
    ]
    years = [
        SchoolYearFactory(name=f"{days[0]:%Y}", starts_on=days[0], ends_on=days[1]) for days in (THIS_YEAR, LAST_YEAR)
    ]
    coach, administrator = UserFactory(coach=True), UserFactory(administrator=True)
    people = [UserFactory() for _ in range(3)]
    for grade, year in product(grades, years):
        for _ in range(luck.choice([0, 1, 2, 3])):
            ClassGroupFactory(
                grade=grade, year=year, teachers=luck.sample([*people, *people, coach], k=luck.choice([1, 1, 2]))
            )
    _make_counts(luck, grades, people)
    _teach(luck, administrator)
    return [*people, coach, administrator]


def _make_counts(luck: random.Random, grades: list[Grade], people: list[User]) -> None:
    for n in range(5):
        StandardFactory(code=f"@S{n}", grade=luck.choice([*grades, None]), area=luck.choice(["whole", "money"]))
    for n in range(9):
        routine = make_routine(
            luck.choice(people),
            title=f"Count {n}",
            shared=luck.random() < 0.8,
            grade=luck.choice(grades).name,
            area=luck.choice(["whole", "fractions", "money"]),
            standards=tuple(f"@S{k}" for k in luck.sample(range(5), k=luck.choice([0, 1, 2]))),
            targets=tuple(map(Target, luck.sample(TARGETS, k=luck.choice([0, 1, 2, 3])))),
        )
        if luck.random() < 0.2:
            routine.retire()


def _teach(luck: random.Random, administrator: User) -> None:
    routines = list(Routine.objects.select_related("current_version").order_by("pk"))
    groups = list(ClassGroup.objects.select_related("grade", "year").order_by("pk"))
    some_days = [date(2026, 9, 14), date(2026, 9, 16), date(2026, 9, 20), date(2026, 9, 22), date(2026, 10, 5)]
    for _ in range(45):
        group = luck.choice(groups)
        day = group.year.starts_on + timedelta(days=luck.randrange(100))
        if group.year.starts_on == THIS_YEAR[0] and luck.random() < 0.5:
            day = luck.choice(some_days)
        if luck.random() < 0.08:  # written for a class of the other year
            day = luck.choice([date(2025, 9, 16), date(2026, 9, 16)])
        teacher = luck.choice([*group.teachers.order_by("pk"), administrator])
        given = {
            "version": luck.choice(routines).newest_save,
            "class_group": group,
            "teacher": teacher,
            "taught_on": day,
            "practice": luck.random() < 0.1,
        }
        _what_happens(luck, _begun(luck, given), groups)


def _begun(luck: random.Random, given: dict) -> Lesson:
    if luck.random() < 0.7:
        return record_paper_lesson(**given)
    lesson = start_lesson(**given, surface="board")
    if luck.random() < 0.8:
        first = event(2)
        append(lesson, first)
        if luck.random() < 0.4:
            append(lesson, event(3, "undo", {"event": first["id"]}))
    return lesson


def _what_happens(luck: random.Random, lesson: Lesson, groups: list[ClassGroup]) -> None:
    for position in range(len(lesson.version.plan["targets"])):
        for said in luck.choice([[], ["seen"], ["not-yet"], ["not-yet", "seen"]]):
            say(lesson, **{f"t{position}": said})
    targets = lesson.events.filter(kind="target")
    if targets and luck.random() < 0.2:
        append(lesson, event(500, "undo", {"event": str(luck.choice(list(targets)).pk)}))
    save_reflection(lesson=lesson, sharing=luck.choice(["only-me", "team", "team-coach"]))
    if luck.random() < 0.15:
        group = luck.choice(groups)
        day = group.year.starts_on + timedelta(days=luck.randrange(100))
        move_lesson(lesson=lesson, class_group=group, taught_on=day, practice=luck.random() < 0.3)
    if luck.random() < 0.1:
        delete_lesson(lesson=lesson)


def as_rows() -> School:
    """What is in the database, as plain values."""
    events: dict[int, list[Event]] = {}
    for one in LessonEvent.objects.filter(erased=False).order_by("seq"):
        events.setdefault(one.lesson_id, []).append(Event(str(one.id), one.t, one.device, one.kind, one.data))
    lessons = [
        Taught(
            key=one.pk,
            routine=one.routine_id,
            year=one.year_id,
            grade=one.grade_id,
            area=one.area,
            class_group=one.class_group_id,
            teacher=one.teacher_id,
            day=one.taught_on,
            practice=one.practice,
            deleted=one.deleted_at is not None,
            sharing=one.sharing,
            targets=tuple(target["claim"]["family"] for target in one.version.plan["targets"]),
            events=tuple(events.get(one.pk, ())),
        )
        for one in Lesson.objects.select_related("version")
    ]
    standards = {routine.pk: {one.pk for one in routine.standards.all()} for routine in Routine.objects.all()}
    return School(
        bands=dict(Grade.objects.values_list("pk", "band")),
        classes={
            group.pk: (group.grade_id, group.year_id, {person.pk for person in group.teachers.all()})
            for group in ClassGroup.objects.all()
        },
        routines=[
            (routine.grade_id, routine.area, standards[routine.pk])
            for routine in Routine.objects.filter(status="shared").order_by("pk")
        ],
        standards=standards,
        lessons=lessons,
    )


class Looked:
    """One reader's look at one window: what is asked for, what was counted, and what the app answers."""

    def __init__(self, school: School, person: User, name: str, group: ClassGroup | None = None) -> None:
        asked, self.days = WINDOWS[name]
        self.year = SchoolYear.objects.get(starts_on__lte=self.days[0], ends_on__gte=self.days[0])
        self.school, self.person, self.group = school, person, group
        self.reader = Reader(person.pk, person.role)
        self.query = dict(zip(("first", "last"), map(str, asked or ()), strict=False))
        if group:
            self.query["class"] = str(group.pk)
        self.client = Client()
        self.client.force_login(person, backend="accounts.backends.NameOrEmailBackend")
        self.mondays = list(weeks_of(*self.days))

    def counted(self, *, by_standard: bool, whole_grade: bool = False) -> dict[tuple, Cell]:
        count = self.school.by_standard if by_standard else self.school.by_area
        group = None if whole_grade or not self.group else self.group.pk
        cells = count(self.reader, self.year.pk, self.days, group)
        # A class by itself is shown in its own grade.
        return {at: cell for at, cell in cells.items() if not group or at[0] == self.group.grade_id}

    def hides(self, grade: int) -> bool:
        return self.school.hides(self.reader, grade, self.year.pk)

    def grades(self, *, whole_grade: bool = False) -> list[Grade]:
        keys = self.school.grades_of(self.reader, self.year.pk)
        if self.group and not whole_grade:
            keys &= {self.group.grade_id}
        return list(Grade.objects.filter(pk__in=keys).order_by("order"))

    def get(self, name: str, *args: object, **more: object):
        return self.client.get(reverse(name, args=args), {**self.query, **more})

    def csv_of(self, name: str) -> list[list[str]]:
        answer = self.get(name)
        if not self.grades(whole_grade=True):
            assert answer.status_code == 404
            return []
        return list(csv.reader(io.StringIO(answer.content.decode("utf-8-sig"))))[1:]


class TableText(HTMLParser):
    """The words of each row's cells, of the first table whose class is `name`."""

    def __init__(self, page: str, name: str) -> None:
        super().__init__()
        self.rows: list[list[str]] = []
        self.inside = self.in_cell = False
        self.name = name
        self.feed(page)

    def handle_starttag(self, tag, attrs) -> None:
        if tag == "table":
            self.inside = self.name in (dict(attrs).get("class") or "").split()
        elif self.inside and tag == "tr":
            self.rows.append([])
        elif self.inside and tag in ("td", "th"):
            self.rows[-1].append("")
            self.in_cell = True

    def handle_endtag(self, tag) -> None:
        if tag == "table":
            self.inside = False
        elif tag in ("td", "th"):
            self.in_cell = False

    def handle_data(self, data) -> None:
        if self.inside and self.in_cell:
            self.rows[-1][-1] = " ".join(f"{self.rows[-1][-1]} {data}".split())

    @property
    def body(self) -> list[list[str]]:
        return self.rows[1:]


def said_of(cell: Cell) -> tuple[int, int, int]:
    return cell.said["seen"], cell.said["not-yet"], cell.said["not recorded"]


def numbers(words: str, *names: str) -> tuple[int | None, ...]:
    """The number after each of these names, None where the name does not stand."""
    found = (re.search(rf"(?<!not ){name} (\d+)", words) for name in names)
    return tuple(int(one[1]) if one else None for one in found)


SAID = ("seen", "not yet", "not recorded")


def table_agrees(look: Looked) -> int:
    counted = look.counted(by_standard=False)
    page = look.get("coverage")
    assert page.status_code == 200
    rows = TableText(page.text, "coverage-table").body
    assert [row[0].removeprefix("Grade ") for row in rows] == [grade.name for grade in look.grades()]
    for grade, row in zip(look.grades(), rows, strict=True):
        in_grade = [counted.get((grade.pk, area.value), Cell()) for area in Area]
        for words, cell in zip(row[1:-1], in_grade, strict=True):
            assert int((re.search(r"· (\d+)", words) or [0, 0])[1]) == cell.available, words
            taught = None if look.hides(grade.pk) or not cell.taught else cell.taught
            assert numbers(words, "taught")[0] == taught, words
            said = said_of(cell) if any(said_of(cell)) else (None,) * 3
            assert numbers(words, *SAID) == said, (words, cell)
        if look.hides(grade.pk):
            assert row[-1] == "under two classes: not shown"
        else:
            weeks = [sum(cell.weeks[monday] for cell in in_grade) for monday in look.mondays]
            assert row[-1].endswith(f"{sum(weeks)} lesson" + "s" * (sum(weeks) != 1))
            shown = next(one for one in page.context["rows"] if one.grade == grade)
            assert list(shown.weeks) == weeks
    return sum(cell.taught for cell in counted.values())


def files_agree(look: Looked) -> None:
    """Files hold whole grades, whichever class is looked at; of target patterns what two classes or more said."""
    counted = look.counted(by_standard=False, whole_grade=True)
    for name, area, _expected, available, taught, *rest in look.csv_of("coverage_csv"):
        grade = Grade.objects.get(name=name.removeprefix("'"))
        cell = counted.get((grade.pk, next(one for one in Area if one.label == area).value), Cell())
        assert int(available) == cell.available
        _line_agrees(look, grade, cell, taught, rest)
    counted = look.counted(by_standard=True, whole_grade=True)
    lines = look.csv_of("coverage_standards_csv")
    for name, _scheme, code, _summary, _area, _expected, available, taught, *rest in lines:
        grade = Grade.objects.get(name=name.removeprefix("'"))
        cell = counted.pop((grade.pk, Standard.objects.get(code=code.removeprefix("'")).pk), Cell())
        assert (name[:2], code[:2]) == ("'=", "'@")
        assert int(available) == cell.available
        _line_agrees(look, grade, cell, taught, rest)
    assert not counted


def _line_agrees(look: Looked, grade: Grade, cell: Cell, taught: str, rest: list[str]) -> None:
    hidden = look.hides(grade.pk)
    assert taught == ("under two classes: not shown" if hidden else str(cell.taught))
    told = len(cell.classes) >= 2 and any(said_of(cell))
    assert rest[:3] == (list(map(str, said_of(cell))) if told else [""] * 3), (rest, cell)
    assert rest[3:5] == list(map(str, look.days))
    assert rest[5:] == ["" if hidden else str(cell.weeks[monday]) for monday in look.mondays]


def standards_agree(look: Looked) -> None:
    counted = look.counted(by_standard=True)
    for grade in look.grades():
        page = look.get("coverage_standards", grade=grade.pk)
        for words, bank, lessons, targets in TableText(page.text, "coverage-standards").body:
            standard = Standard.objects.get(code=words.split()[0])
            cell = counted.pop((grade.pk, standard.pk), Cell())
            assert int((re.search(r"· (\d+)", bank) or [0, 0])[1]) == cell.available, bank
            if look.hides(grade.pk):
                assert lessons == "under two classes: not shown"
            else:
                told = re.search(r"(\d+) lessons?$", lessons)
                assert (int(told[1]) if told else 0) == cell.taught, lessons
            said = said_of(cell) if any(said_of(cell)) else (None,) * 3
            assert numbers(targets, *SAID) == said, (targets, cell)
    assert not counted


def drill_down_agrees(look: Looked) -> None:
    fields = [
        *((at, cell, "coverage_cell") for at, cell in look.counted(by_standard=False).items()),
        *((at, cell, "coverage_standard") for at, cell in look.counted(by_standard=True).items()),
    ]
    for at, cell, name in fields:
        page = look.get(name, *at)
        assert page.context["more"] + len(page.context["cards"]) == cell.available
        lessons = [] if look.reader.role == "administrator" else cell.lessons
        assert (
            sorted(one.pk for one in page.context["page"].paginator.object_list) == sorted(cell.lessons) or not lessons
        )
        assert len(TableText(page.text, "table-stacks").body) == len(lessons)
        patterns = {words[0]: tuple(map(int, words[1:])) for words in TableText(page.text, "patterns-seen").body}
        families = {} if look.reader.role == "administrator" else cell.families
        assert patterns == {
            str(NAMES[family]): (said["seen"], said["not-yet"], said["not recorded"])
            for family, said in families.items()
        }


AGREE: dict[str, Callable[[Looked], object]] = {
    "table": table_agrees,
    "files": files_agree,
    "by standard": standards_agree,
    "drill-down": drill_down_agrees,
}


def test_every_number_is_what_a_look_at_every_lesson_finds(readers):
    school = as_rows()
    lessons: Counter[str] = Counter()
    for person, name in product(readers, WINDOWS):
        look = Looked(school, person, name)
        lessons[name] += table_agrees(look)
        files_agree(look)
        if name not in ("this term", "last year"):  # what these two look at differs by its days alone
            standards_agree(look)
            drill_down_agrees(look)
    assert all(lessons[name] for name in WINDOWS), lessons  # a school in which nothing can be wrong proves nothing


def test_a_class_by_itself_too(readers):
    school = as_rows()
    for group in ClassGroup.objects.select_related("year"):
        for person in readers:
            if person.role == "administrator" or not (person.is_coach or group.teachers.filter(pk=person.pk).exists()):
                continue
            name = "this year" if group.year.starts_on == THIS_YEAR[0] else "last year"
            look = Looked(school, person, name, group)
            table_agrees(look)
            files_agree(look)
            standards_agree(look)
            drill_down_agrees(look)
