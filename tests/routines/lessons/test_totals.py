"""Teaching numbers are what the lessons come to, after everything that can happen to a lesson."""

from datetime import timedelta
from functools import partial
from io import StringIO

import pytest
from django.core.management import call_command
from django.db.models import Sum

from routines.lessons.recording import delete_lesson, move_lesson, reopen_lesson, save_reflection
from routines.lessons.totals import NUMBERS_OF_A_DAY, Counted, count_again, wrong_days, wrong_weeks, wrong_years
from routines.models import (
    BankOwner,
    BankTotal,
    Lesson,
    Routine,
    SearchWord,
    TaughtInWeek,
    TaughtInYear,
    TaughtOn,
    TimesTaught,
)
from tests.at_once import at_once
from tests.factories import ClassGroupFactory, SchoolYearFactory, UserFactory
from tests.routines.lessons.making import append, event, identity, open_lesson
from tests.routines.making import TAUGHT_ON, make_lesson, make_routine

pytestmark = pytest.mark.django_db


def kept() -> tuple[int, int, int]:
    """Lessons by class, by year and by day, each added up; every row is one that the lessons come to."""
    years = {lesson.year for lesson in Lesson.objects.select_related("year")}
    assert wrong_years(Routine.objects.values_list("pk", flat=True)) == set()
    for wrong in (wrong_days, wrong_weeks):
        assert [wrong(year) for year in years] == [set() for _ in years]
    in_weeks, in_days = (rows.objects.aggregate(all=Sum("lessons"))["all"] for rows in (TaughtInWeek, TaughtOn))
    assert in_weeks == in_days
    return tuple(
        model.objects.aggregate(all=Sum("lessons"))["all"] or 0 for model in (TimesTaught, TaughtInYear, TaughtOn)
    )


def test_a_lesson_is_counted_from_its_first_term_and_no_longer_when_that_is_undone(owner):
    lesson = open_lesson(owner)
    assert kept() == (0, 0, 0)
    written = event(2)
    append(lesson, written)
    assert kept() == (1, 1, 1)
    append(lesson, event(3))
    assert kept() == (1, 1, 1)
    append(lesson, event(4, "undo", {"event": written["id"]}))
    assert kept() == (1, 1, 1)  # another term stands
    other = str(lesson.events.get(seq=3).id)
    append(lesson, event(5, "undo", {"event": other}))
    assert kept() == (0, 0, 0)


def test_ending_and_reopening_change_no_number(owner):
    lesson = make_lesson(make_routine(owner), owner)
    reopen_lesson(lesson=lesson)
    assert kept() == (1, 1, 1)
    append(lesson, event(900, "lesson.end", {}))
    assert kept() == (1, 1, 1)


def test_practice_is_never_counted_and_a_deleted_lesson_no_more(owner, teammate):
    routine = make_routine(owner)
    make_lesson(routine, owner, practice=True)
    assert kept() == (0, 0, 0)
    lesson = make_lesson(routine, owner)
    make_lesson(routine, teammate)
    assert kept() == (2, 2, 2)
    delete_lesson(lesson=lesson)
    assert kept() == (1, 1, 1)
    delete_lesson(lesson=lesson)
    assert kept() == (1, 1, 1)


def test_moving_takes_it_from_one_place_to_the_other(owner, grade_three, year):
    lesson = make_lesson(make_routine(owner), owner)
    other_year = SchoolYearFactory(name="2025-26", starts_on=year.starts_on.replace(year=2025), ends_on=year.starts_on)
    group = ClassGroupFactory(name="3 Fern", grade=grade_three, year=other_year, teachers=[owner])

    def move(**changes):
        now = {"class_group": lesson.class_group, "taught_on": lesson.taught_on, "practice": lesson.practice}
        move_lesson(lesson=lesson, **{**now, **changes})

    move(taught_on=TAUGHT_ON + timedelta(days=1))
    assert kept() == (1, 1, 1)
    assert TaughtOn.objects.get(lessons=1).day == TAUGHT_ON + timedelta(days=1)
    move(class_group=group)
    assert kept() == (1, 1, 1)
    row = TimesTaught.objects.get()
    assert (row.class_group, row.grade, row.year) == (group, grade_three, other_year)
    move(practice=True)
    assert kept() == (0, 0, 0)
    move(practice=False)
    assert kept() == (1, 1, 1)


def said() -> tuple[dict[str, int], dict[str, int]]:
    """What a day's totals say of target patterns to a team, and to a coach; every one is what the lessons come to."""
    kept()
    of_day = TaughtOn.objects.aggregate(**{name: Sum(name) for name in NUMBERS_OF_A_DAY if name != "lessons"})
    team, coach = (
        {name.removeprefix(f"{to}_"): of_day[name] for name in of_day if name.startswith(to)}
        for to in ("team", "coach")
    )
    return team, coach


NOTHING = {"seen": 0, "not_yet": 0, "not_recorded": 0}


def test_what_was_said_of_targets_follows_the_events_and_whom_they_are_shared_with(owner):
    lesson = make_lesson(make_routine(owner), owner)  # its targets: two
    share = partial(save_reflection, lesson=lesson)
    assert said() == (NOTHING, NOTHING)
    append(lesson, event(901, "target", {"position": 0, "seen": "seen"}))
    assert said() == (NOTHING, NOTHING)
    share(sharing="team")
    assert said() == ({"seen": 1, "not_yet": 0, "not_recorded": 1}, NOTHING)
    append(lesson, event(902, "target", {"position": 1, "seen": "not-yet"}))
    share(sharing="team-coach")
    assert said() == ({"seen": 1, "not_yet": 1, "not_recorded": 0},) * 2
    append(lesson, event(903, "target", {"position": 0, "seen": ""}))
    assert said() == ({"seen": 0, "not_yet": 1, "not_recorded": 1},) * 2
    share(sharing="team")
    assert said() == ({"seen": 0, "not_yet": 1, "not_recorded": 1}, NOTHING)
    delete_lesson(lesson=lesson)
    assert said() == (NOTHING, NOTHING)


def test_a_shared_lesson_that_moves_takes_along_what_was_said(owner):
    lesson = make_lesson(make_routine(owner), owner, sharing="team-coach")
    other_day = TAUGHT_ON + timedelta(days=1)
    move_lesson(lesson=lesson, class_group=lesson.class_group, taught_on=other_day, practice=False)
    assert said() == ({**NOTHING, "not_recorded": 2},) * 2
    assert TaughtOn.objects.get(coach_not_recorded=2).day == other_day
    move_lesson(lesson=lesson, class_group=lesson.class_group, taught_on=other_day, practice=True)
    assert said() == (NOTHING, NOTHING)


def test_counting_again_changes_nothing(owner):
    lesson = make_lesson(make_routine(owner), owner)
    before = kept()
    for _ in range(2):
        count_again(Counted.of(lesson), Counted.of(lesson))
    assert kept() == before == (1, 1, 1)


@pytest.mark.django_db(transaction=True)
def test_lessons_that_begin_at_one_moment_are_all_counted(owner, teammate):
    """On PostgreSQL none of these sees the others' lessons before they are written; each is counted all the same."""
    routine = make_routine(owner)
    lessons = [open_lesson(teacher, routine=routine) for teacher in (owner, teammate) * 3]
    at_once(*(lambda lesson=lesson: append(lesson, event(2, identity=identity())) for lesson in lessons))
    assert kept() == (6, 6, 6)
    assert TaughtInYear.objects.get().classes == 2


@pytest.mark.django_db(transaction=True)
def test_lessons_that_change_places_at_one_moment_wait_in_no_ring(owner, teammate):
    here, there = make_routine(owner, title="Here"), make_routine(owner, title="There")
    lessons = [make_lesson(routine, teacher) for routine in (here, there) for teacher in (owner, teammate)]
    days = [TAUGHT_ON, TAUGHT_ON + timedelta(days=1)]

    def swap(lesson, first):
        for day in (days[first], days[1 - first]) * 3:
            move_lesson(lesson=lesson, class_group=lesson.class_group, taught_on=day, practice=False)

    at_once(*(lambda lesson=lesson, at=at: swap(lesson, at % 2) for at, lesson in enumerate(lessons)))
    assert kept() == (4, 4, 4)


def check(*words: str) -> str:
    said = StringIO()
    call_command("check_kept", *words, stdout=said)
    return said.getvalue()


def spoil(what: str) -> None:
    {
        "a number too high": lambda: TimesTaught.objects.update(lessons=7),
        "a row that is gone": lambda: TimesTaught.objects.all().delete(),
        "a total": lambda: TaughtInYear.objects.update(classes=5),
        "a total that is gone": lambda: TaughtInYear.objects.all().delete(),
        "a day": lambda: TaughtOn.objects.update(lessons=0),
        "another day": lambda: TaughtOn.objects.update(day=TAUGHT_ON + timedelta(days=3)),
        "what a team saw": lambda: TaughtOn.objects.update(team_seen=4),
        "what a coach may read": lambda: TaughtOn.objects.update(coach_not_recorded=0),
        "the monday of a day": lambda: TaughtOn.objects.update(monday=TAUGHT_ON),
        "a week": lambda: TaughtInWeek.objects.update(lessons=0),
        "a week that is gone": lambda: TaughtInWeek.objects.all().delete(),
        "another week": lambda: TaughtInWeek.objects.update(monday=TAUGHT_ON + timedelta(days=7)),
        "what a team saw in a week": lambda: TaughtInWeek.objects.update(team_seen=4),
        "a word": lambda: SearchWord.objects.filter(word="sevens").update(word="eights"),
        "no words": lambda: SearchWord.objects.all().delete(),
        "a place in the title": lambda: SearchWord.objects.filter(word="sevens").update(in_title=False),
        "what is shown": lambda: Routine.objects.update(shows=0),
        "a total of the bank": lambda: BankTotal.objects.update(counts=3),
        "a total of the bank that is gone": lambda: BankTotal.objects.all().delete(),
        "an owner": lambda: BankOwner.objects.update(has_counts=False),
        "an owner that is gone": lambda: BankOwner.objects.all().delete(),
        "an owner of nothing": lambda: BankOwner.objects.create(owner=UserFactory(), has_counts=True),
        "one of nothing": lambda: BankTotal.objects.update(area="money"),
    }[what]()


@pytest.mark.parametrize(
    "what",
    ["a number too high", "a row that is gone", "a total", "a total that is gone", "a day", "another day",
     "what a team saw", "what a coach may read", "the monday of a day",
     "a week", "a week that is gone", "another week", "what a team saw in a week",
     "a word", "no words", "a place in the title", "what is shown",
     "a total of the bank", "a total of the bank that is gone", "one of nothing",
     "an owner", "an owner that is gone", "an owner of nothing"],
)  # fmt: skip
def test_the_check_finds_and_mends_what_differs(owner, what):
    make_lesson(make_routine(owner), owner, sharing="team-coach")
    assert "Everything is as" in check()
    spoil(what)
    with pytest.raises(SystemExit, match="differ"):
        check()
    assert "made anew" in check("--mend")
    assert "Everything is as" in check()
    assert "Everything is as" in check("--mend")
    assert kept() == (1, 1, 1)
