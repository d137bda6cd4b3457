"""Opening a count for a class, ending, opening again, deleting."""

from datetime import date, timedelta

import pytest
from django.urls import reverse
from django.utils import timezone

from grade_bands.models import SchoolYear
from routines.lessons.recording import end_lesson
from routines.models import Lesson, Planned
from tests.at_once import at_once
from tests.factories import ClassGroupFactory
from tests.routines.lessons.making import append, event, open_lesson
from tests.routines.making import make_routine


@pytest.fixture(autouse=True)
def this_year(year):
    """The school year holds today, whenever the tests run."""
    today = timezone.localdate()
    SchoolYear.objects.filter(pk=year.pk).update(
        starts_on=today - timedelta(days=100), ends_on=today + timedelta(days=100)
    )


@pytest.fixture
def routine(owner):
    return make_routine(owner)


def teach(routine) -> str:
    return reverse("lesson_teach", args=[routine.pk])


def wish(person, **changes) -> dict:
    return {"class_group": person.class_groups.first().pk, "begin": "lectern", **changes}


def test_one_press_opens_the_lesson(owner, visit, routine):
    answer = visit(owner).post(teach(routine), wish(owner))
    lesson = Lesson.objects.get()
    assert answer["Location"] == reverse("lesson_lectern", args=[lesson.key])
    assert (lesson.teacher, lesson.surface, lesson.practice) == (owner, "board", False)
    assert lesson.taught_on == timezone.localdate()
    assert lesson.version == routine.current_version
    assert lesson.events.get().kind == "lesson.open"
    assert not Lesson.objects.counted().exists()


@pytest.mark.parametrize(
    ("begin", "end"), [("lectern", "/lectern/"), ("board", "/board/"), ("alone", "/board/?alone=1")]
)
def test_it_begins_where_one_chose(owner, visit, routine, begin, end):
    client = visit(owner)
    address = client.post(teach(routine), wish(owner, begin=begin))["Location"]
    assert address.endswith(end)
    page = client.get(address)
    assert page.status_code == 200
    assert ("/lectern/" in page.text) is (begin != "alone")


def test_the_board_alone_shows_no_way_to_the_lectern(owner, visit, routine):
    lesson = open_lesson(owner, routine=routine)
    page = visit(owner).get(reverse("lesson_board", args=[lesson.key]) + "?alone=1").text
    assert reverse("lesson_lectern", args=[lesson.key]) not in page


def chosen(page) -> int:
    return page.context["form"]["class_group"].initial


def test_the_own_class_is_chosen_at_first(owner, visit, routine):
    assert chosen(visit(owner).get(teach(routine))) == owner.class_groups.get().pk


def test_the_class_it_is_planned_for_today_is_chosen_before_all(owner, visit, routine, grade_three, year):
    other = ClassGroupFactory(name="3 Reed", grade=grade_three, year=year, teachers=[owner])
    client = visit(owner)
    assert chosen(client.get(teach(routine))) == owner.class_groups.get(name="2 Wren").pk
    Planned.objects.create(routine=routine, class_group=other, on=timezone.localdate(), by=owner)
    assert chosen(client.get(teach(routine))) == other.pk
    Planned.objects.update(on=timezone.localdate() - timedelta(days=1))
    assert chosen(client.get(teach(routine))) == owner.class_groups.get(name="2 Wren").pk


def test_a_practice_run_is_one(owner, visit, routine):
    visit(owner).post(teach(routine), wish(owner, practice="on"))
    assert Lesson.objects.get().practice


@pytest.mark.django_db(transaction=True)
def test_three_presses_at_once_open_one_lesson(owner, visit, routine):
    found = at_once(*[lambda: visit(owner).post(teach(routine), wish(owner))] * 3)
    lesson = Lesson.objects.get()
    assert {answer["Location"] for answer in found} == {reverse("lesson_lectern", args=[lesson.key])}
    assert lesson.events.count() == 1


def test_pressing_twice_opens_one_lesson(owner, visit, routine):
    client = visit(owner)
    first = client.post(teach(routine), wish(owner))["Location"]
    assert client.post(teach(routine), wish(owner))["Location"] == first
    append(Lesson.objects.get(), event(2))
    assert client.post(teach(routine), wish(owner))["Location"] != first
    assert "Open lessons" in client.get(teach(routine)).text


@pytest.mark.parametrize(
    ("changes", "words"),
    [
        ({"class_group": ""}, "Choose the class."),
        ({"class_group": "999"}, "Choose one of your own classes."),
        ({"class_group": "x"}, "Choose one of your own classes."),
        ({"begin": "wall"}, "not one of the available choices"),
    ],
)
def test_bad_input_says_so_at_its_field(owner, visit, routine, changes, words):
    answer = visit(owner).post(teach(routine), wish(owner, **changes))
    assert answer.status_code == 422
    assert words in answer.text
    assert not Lesson.objects.exists()


def test_another_teachers_class_and_one_of_last_year_are_not_ones_own(owner, teammate, visit, routine, grade_two):
    last = SchoolYear.objects.create(name="last", starts_on=date(2020, 8, 1), ends_on=date(2021, 6, 1))
    old = ClassGroupFactory(name="2 Old", grade=grade_two, year=last, teachers=[owner])
    client = visit(owner)
    for group in (teammate.class_groups.get(), old):
        assert client.post(teach(routine), wish(owner, class_group=group.pk)).status_code == 422


def test_who_has_no_class_is_told_where_classes_come_from(coach, visit, routine):
    assert "You have no class this year" in visit(coach).get(teach(routine)).text


def test_someone_elses_draft_cannot_be_taught(teammate, owner, visit):
    draft = make_routine(owner, shared=False)
    assert visit(teammate).get(teach(draft)).status_code == 404
    assert visit(teammate).post(teach(draft), wish(teammate)).status_code == 404


def test_the_signed_out_are_asked_to_sign_in(signed_out, routine):
    assert "sign-in" in signed_out.get(teach(routine))["Location"]


def test_ending_leads_to_the_log(owner, visit, routine):
    lesson = open_lesson(owner, routine=routine)
    answer = visit(owner).post(reverse("lesson_end", args=[lesson.key]))
    assert answer["Location"] == lesson.get_absolute_url()
    lesson.refresh_from_db()
    assert lesson.ended


def test_a_second_teacher_ends_but_does_not_open_again_or_delete(owner, teammate, visit, routine):
    lesson = open_lesson(owner, routine=routine)
    owner.class_groups.get().teachers.add(teammate)
    client = visit(teammate)
    assert client.post(reverse("lesson_end", args=[lesson.key]))["Location"] == reverse("lessons")
    for name in ("lesson_reopen", "lesson_delete"):
        assert client.post(reverse(name, args=[lesson.key])).status_code == 404
    lesson.refresh_from_db()
    assert (lesson.ended, lesson.deleted_at) == (True, None)


def test_its_teacher_opens_it_again(owner, visit, routine):
    lesson = open_lesson(owner, routine=routine)
    end_lesson(lesson=lesson)
    answer = visit(owner).post(reverse("lesson_reopen", args=[lesson.key]))
    assert answer["Location"] == reverse("lesson_lectern", args=[lesson.key])
    lesson.refresh_from_db()
    assert not lesson.ended


def test_deleting_asks_first_and_is_final(owner, visit, routine):
    lesson = open_lesson(owner, routine=routine)
    append(lesson, event(2))
    client, address = visit(owner), reverse("lesson_delete", args=[lesson.key])
    assert "It does not come back." in client.get(address).text
    assert Lesson.objects.counted().count() == 1
    assert client.post(address)["Location"] == reverse("lessons")
    assert Lesson.objects.counted().count() == 0
    assert str(lesson.key) not in client.get(reverse("lessons")).text
    for name in ("lesson", "lesson_lectern", "lesson_delete"):
        assert client.get(reverse(name, args=[lesson.key])).status_code == 404


@pytest.mark.parametrize("name", ["lesson_end", "lesson_reopen"])
def test_what_changes_a_lesson_is_posted(owner, visit, routine, name):
    lesson = open_lesson(owner, routine=routine)
    assert visit(owner).get(reverse(name, args=[lesson.key])).status_code == 405


def test_the_count_leads_to_teaching_and_the_log_to_what_can_be_done_with_it(owner, teammate, visit, routine):
    assert teach(routine) in visit(owner).get(reverse("routine", args=[routine.pk])).text
    lesson = open_lesson(owner, routine=routine)
    Lesson.objects.update(sharing="team")
    client, log = visit(owner), lesson.get_absolute_url()
    assert reverse("lesson_lectern", args=[lesson.key]) in client.get(log).text
    end_lesson(lesson=lesson)
    page = client.get(log).text
    assert reverse("lesson_reopen", args=[lesson.key]) in page
    assert reverse("lesson_delete", args=[lesson.key]) in page
    assert reverse("lesson_reopen", args=[lesson.key]) not in visit(teammate).get(log).text
