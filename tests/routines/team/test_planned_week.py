"""Planned days: put in, moved, taken out and put back, seen by whom they are for, ticked by the lesson taught from them."""

from datetime import date, timedelta

import pytest
from django.urls import reverse
from django.utils import timezone

from accounts.models import User
from grade_bands.models import ClassGroup, SchoolYear, classes_in_year
from routines.lessons.recording import delete_lesson
from routines.models import Planned, Routine
from routines.models.routine import NOT_IN_BANK
from routines.team.planned_week import own_week, year_of
from routines.team.planning import way_back
from routines.team.school_days import monday_now, next_school_day
from tests.factories import ClassGroupFactory, SchoolYearFactory, StandardFactory, UserFactory
from tests.routines.making import make_lesson, make_routine
from tests.routines.plan_sheets import sheet

EVERYONE = ["owner", "co_author", "teammate", "other_teacher", "coach", "administrator"]


@pytest.fixture
def year(school):
    """The year that is on, so that days can be planned for."""
    today = timezone.localdate()
    return SchoolYearFactory(name="on now", starts_on=today - timedelta(days=90), ends_on=today + timedelta(days=200))


@pytest.fixture
def today(school) -> date:
    return timezone.localdate()


@pytest.fixture
def monday(today) -> date:
    return monday_now(today)


@pytest.fixture
def routine(owner):
    return make_routine(owner)


def planned_for(person: User, routine, on: date, *, by: User | None = None) -> Planned:
    return Planned.objects.create(routine=routine, class_group=person.class_groups.get(), on=on, by=by or person)


def send(client, routine, group: ClassGroup, on: date, **more):
    fields = {"class_group": group.pk, "on": on.isoformat(), **more}
    return client.post(reverse("planned_new", args=[routine.pk]), fields)


# Putting in


def test_a_count_goes_into_the_week(owner, routine, today, visit):
    client, group, on = visit(owner), owner.class_groups.get(), next_school_day(today)
    page = client.get(reverse("planned_new", args=[routine.pk]))
    assert page.context["form"]["class_group"].value() == group.pk
    assert page.context["form"]["on"].value() == on
    answer = send(client, routine, group, on)
    assert answer["Location"] == f"{reverse('week')}?day={on.isoformat()}"
    assert list(Planned.objects.values_list("routine", "class_group", "on", "by")) == [
        (routine.pk, group.pk, on, owner.pk)
    ]
    assert "Sevens from four" in client.get(answer["Location"]).text


def test_the_class_of_the_counts_grade_is_chosen_at_first(owner, grade_five, year, visit):
    group = ClassGroupFactory(name="5 Amber", grade=grade_five, year=year, teachers=[owner])
    count = make_routine(owner, grade="5")
    page = visit(owner).get(reverse("planned_new", args=[count.pk]))
    assert page.context["form"]["class_group"].value() == group.pk


@pytest.fixture
def coming(year) -> ClassGroup:
    """The class of the same name, in the year that follows."""
    first = year.ends_on + timedelta(days=60)
    following = SchoolYearFactory(name="coming", starts_on=first, ends_on=first + timedelta(days=280))
    owner = User.objects.get(sign_in_name="owner")
    grade = owner.class_groups.get().grade
    return ClassGroupFactory(name="2 Wren", grade=grade, year=following, teachers=[owner])


def test_classes_of_two_years_are_told_apart_and_that_of_now_is_chosen(owner, routine, coming, year, visit):
    page = visit(owner).get(reverse("planned_new", args=[routine.pk]))
    assert page.context["form"]["class_group"].value() == owner.class_groups.get(year=year).pk
    assert "2 Wren (on now)" in page.text
    assert "2 Wren (coming)" in page.text


def test_before_a_year_begins_its_first_day_is_proposed(owner, routine, coming, year, visit):
    """In the holidays, when what is coming is planned for."""
    SchoolYear.objects.filter(pk=year.pk).update(ends_on=timezone.localdate() - timedelta(days=1))
    form = visit(owner).get(reverse("planned_new", args=[routine.pk])).context["form"]
    assert (form["class_group"].value(), form["on"].value()) == (coming.pk, coming.year.starts_on)
    assert "2 Wren (coming)" not in str(form["class_group"])
    assert send(visit(owner), routine, coming, form["on"].value()).status_code == 302


def test_on_the_last_day_of_a_year_that_day_is_proposed(owner, routine, year, today, visit):
    SchoolYear.objects.filter(pk=year.pk).update(ends_on=today)
    assert visit(owner).get(reverse("planned_new", args=[routine.pk])).context["form"]["on"].value() == today


def test_choosing_a_class_takes_as_many_queries_with_many_classes_as_with_one(
    owner, routine, coming, grade_two, year, visit, django_assert_max_num_queries
):
    client, address = visit(owner), reverse("planned_new", args=[routine.pk])
    client.get(address)
    with django_assert_max_num_queries(15) as few:
        client.get(address)
        number = len(few)
    for of in (year, coming.year):
        ClassGroupFactory.create_batch(6, grade=grade_two, year=of, teachers=[owner])
    with django_assert_max_num_queries(number):
        client.get(address)


def test_the_same_count_for_class_and_day_is_kept_once(owner, routine, today, visit):
    client, group = visit(owner), owner.class_groups.get()
    for _time in range(2):
        answer = client.post(
            reverse("planned_new", args=[routine.pk]), {"class_group": group.pk, "on": today.isoformat()}, follow=True
        )
    assert "was in the week already" in answer.text
    assert Planned.objects.count() == 1


@pytest.mark.parametrize(
    ("days", "sentence"),
    [(-1, "Choose today or a later day."), (201, "the school year of 2 Wren"), (None, "Choose the day.")],
)
def test_a_day_that_cannot_be_planned_for_comes_back_with_what_to_do(owner, routine, today, visit, days, sentence):
    on = "" if days is None else (today + timedelta(days=days)).isoformat()
    answer = visit(owner).post(
        reverse("planned_new", args=[routine.pk]), {"class_group": owner.class_groups.get().pk, "on": on}
    )
    assert answer.status_code == 422
    assert sentence in answer.text
    assert not Planned.objects.exists()


def test_only_ones_own_classes_are_planned_for(owner, teammate, routine, today, visit):
    answer = send(visit(teammate), routine, owner.class_groups.get(), today)
    assert answer.status_code == 422
    assert "Choose one of your own classes." in answer.text
    assert "2 Wren" not in answer.text


def test_someone_without_a_class_is_told_so(coach, routine, visit):
    assert "You have no class this year" in visit(coach).get(reverse("planned_new", args=[routine.pk])).text


def test_a_draft_of_somebody_else_cannot_be_planned(owner, teammate, today, visit):
    draft = make_routine(owner, shared=False, title="Planted damson count")
    client = visit(teammate)
    for answer in (
        client.get(reverse("planned_new", args=[draft.pk])),
        send(client, draft, teammate.class_groups.get(), today),
    ):
        assert (answer.status_code, "damson" in answer.text) == (404, False)


def test_count_card_draft_and_drill_down_lead_to_it(owner, routine, grade_two, visit):
    client, address = visit(owner), reverse("planned_new", args=[routine.pk])
    for page in (
        reverse("routine", args=[routine.pk]),
        reverse("bank"),
        reverse("my_plans"),
        reverse("coverage_cell", args=[grade_two.pk, "whole"]),
    ):
        assert f'href="{address}"' in client.get(page).text, page


# Moving, taking out, putting back


def test_the_plan_page_saves_and_leads_to_it(owner, routine, visit):
    """Also of a plan that was just designed: two presses from its page to the week."""
    client = visit(owner)
    new = client.get(reverse("plan_new"))["Location"]
    assert 'value="week"' in client.get(new).text
    made = client.post(new, sheet(do="week"))
    latest = Routine.objects.latest("pk")
    assert made["Location"] == reverse("planned_new", args=[latest.pk])
    page = client.get(reverse("plan_edit", args=[routine.pk])).text
    assert 'value="week"' in page


@pytest.mark.parametrize("by_standard", [False, True])
def test_a_gap_goes_into_the_week_in_two_presses(owner, other_teacher, grade_two, today, visit, by_standard):
    """From the coverage: its link, and the button of the page, where all is chosen."""
    grade_two.areas = ["whole", "fractions"]
    grade_two.save()
    standard = StandardFactory(code="LS.2", grade=grade_two, area="fractions")
    make_routine(other_teacher, grade="5", area="whole", title="Of another area")
    thirds = make_routine(other_teacher, grade="5", area="fractions", title="Thirds in threes")
    client = visit(owner)
    if by_standard:
        name, args = "planned_for_standard", [grade_two.pk, standard.pk]
        overview = client.get(reverse("coverage_standards"), {"grade": grade_two.pk})
    else:
        name, args = "planned_for_gap", [grade_two.pk, "fractions"]
        overview = client.get(reverse("coverage"))
    address = reverse(name, args=args)
    assert f'href="{address}"' in overview.text
    form = client.get(address).context["form"]
    assert list(form.offered.values()) == [thirds]
    shown = {name: form[name].value() for name in ("routine", "class_group", "on")}
    answer = client.post(address, {**shown, "on": shown["on"].isoformat()})
    assert answer["Location"].startswith(reverse("week"))
    planned = Planned.objects.get()
    assert (planned.routine, planned.class_group) == (thirds, owner.class_groups.get())


def test_a_gap_of_another_grade_is_not_found_and_what_was_not_offered_is_refused(
    owner, coach, grade_two, grade_five, routine, today, visit
):
    thirds = make_routine(owner, area="fractions", title="Thirds in threes")
    assert visit(owner).get(reverse("planned_for_gap", args=[grade_five.pk, "fractions"])).status_code == 404
    assert visit(owner).get(reverse("planned_for_gap", args=[grade_two.pk, "nothing"])).status_code == 404
    address = reverse("planned_for_gap", args=[grade_two.pk, "fractions"])
    group = owner.class_groups.get()
    answer = visit(owner).post(address, {"routine": routine.pk, "class_group": group.pk, "on": today.isoformat()})
    assert (answer.status_code, "Choose one of these counts." in answer.text) == (422, True)
    assert "Design one first" in visit(owner).get(reverse("planned_for_gap", args=[grade_two.pk, "time"])).text
    assert "You have no class this year" in visit(coach).get(address).text
    assert thirds.title in visit(owner).get(address).text
    assert not Planned.objects.exists()


def test_moving_and_moving_back(owner, routine, today, visit):
    planned, client = planned_for(owner, routine, today), visit(owner)
    later = today + timedelta(days=3)
    fields = {"class_group": planned.class_group_id, "on": later.isoformat()}
    answer = client.post(reverse("planned_move", args=[planned.pk]), fields)
    planned.refresh_from_db()
    assert planned.on == later
    undo = client.get(answer["Location"]).context["undo"]
    client.post(reverse("planned_put_back"), {"undo": undo})
    planned.refresh_from_db()
    assert planned.on == today


def test_moved_to_where_it_stands_already_the_two_become_one(owner, routine, today, visit):
    there, planned = planned_for(owner, routine, today), planned_for(owner, routine, today + timedelta(days=1))
    fields = {"class_group": there.class_group_id, "on": today.isoformat()}
    assert visit(owner).post(reverse("planned_move", args=[planned.pk]), fields).status_code == 302
    assert list(Planned.objects.all()) == [there]


def test_taken_out_and_put_back(owner, routine, today, visit):
    planned, client = planned_for(owner, routine, today), visit(owner)
    answer = client.post(reverse("planned_remove", args=[planned.pk]))
    assert not Planned.objects.exists()
    page = client.get(answer["Location"])
    assert "Put it back" in page.text
    back = client.post(reverse("planned_put_back"), {"undo": page.context["undo"]})
    assert "Sevens from four" in client.get(back["Location"]).text
    assert Planned.objects.get().on == today
    client.post(reverse("planned_put_back"), {"undo": page.context["undo"]})
    assert Planned.objects.count() == 1


def test_the_way_back_is_for_one_person_alone(owner, teammate, routine, today, visit):
    token = way_back(planned_for(owner, routine, today), owner)
    Planned.objects.all().delete()
    for undo in (token, "no token", ""):
        answer = visit(teammate).post(reverse("planned_put_back"), {"undo": undo}, follow=True)
        assert "can’t be put back" in answer.text
    assert not Planned.objects.exists()


@pytest.mark.parametrize(
    ("name", "status"),
    [
        ("owner", 302),
        ("teammate", 403),
        ("co_author", 403),
        ("coach", 403),
        ("other_teacher", 404),
        ("administrator", 404),
    ],
)
def test_who_may_move_and_take_out(request, name, status, owner, co_author, routine, today, visit):
    """The team and the coach read it; other teachers and the administrator never learn that it is there."""
    person = request.getfixturevalue(name)
    planned = planned_for(owner, routine, today)
    client = visit(person)
    fields = {"class_group": planned.class_group_id, "on": today.isoformat()}
    assert client.post(reverse("planned_move", args=[planned.pk]), fields).status_code == status
    assert client.post(reverse("planned_remove", args=[planned.pk])).status_code == status
    assert Planned.objects.filter(pk=planned.pk).exists() is (status != 302)


def test_a_second_teacher_of_the_class_moves_what_the_first_planned(owner, routine, today, visit):
    second = UserFactory(sign_in_name="second", display_name="Second Sato")
    owner.class_groups.get().teachers.add(second)
    planned = planned_for(owner, routine, today)
    assert visit(second).post(reverse("planned_remove", args=[planned.pk])).status_code == 302


# The week


@pytest.mark.parametrize("name", EVERYONE)
def test_whose_week_is_read_by_whom(request, name, owner, co_author, monday, visit, middle_band):
    """Own and the team's for a teacher, all for a coach, none for an administrator."""
    person = request.getfixturevalue(name)
    planned_for(owner, make_routine(owner, title="Planted medlar count"), monday)
    client, team = visit(person), f"{reverse('week')}?team={middle_band.pk}"
    in_team = client.get(team)
    status = {"other_teacher": 404, "administrator": 403}.get(name, 200)
    assert in_team.status_code == status
    assert ("medlar" in in_team.text) is (status == 200)
    own = client.get(reverse("week"))
    assert own.status_code == (403 if name == "administrator" else 200)
    assert ("medlar" in own.text) is (name in ("owner", "coach"))
    all_teams = client.get(reverse("week") + "?team=all")
    assert all_teams.status_code == {"coach": 200, "administrator": 403}.get(name, 404)


def test_an_administrator_who_teaches_sees_her_own_week_and_no_other(
    owner, administrator, grade_two, year, monday, visit
):
    ClassGroupFactory(name="2 Sorrel", grade=grade_two, year=year, teachers=[administrator])
    planned_for(owner, make_routine(owner, title="Planted medlar count"), monday)
    planned_for(administrator, make_routine(owner, title="Mine to teach"), monday)
    page = visit(administrator).get(reverse("week"))
    assert ("Mine to teach" in page.text, "medlar" in page.text) == (True, False)


@pytest.mark.parametrize("name", ["teammate", "coach"])
def test_a_count_that_may_not_be_read_is_named_and_drawn_to_nobody_else(
    request, name, owner, monday, middle_band, visit
):
    reader = request.getfixturevalue(name)
    draft = make_routine(owner, shared=False, title="Planted damson count")
    planned_for(owner, draft, monday)
    page = visit(reader).get(f"{reverse('week')}?team={middle_band.pk}")
    assert NOT_IN_BANK in page.text
    assert "damson" not in page.text
    assert "planned-picture" not in page.text
    assert f"/routines/{draft.pk}/" not in page.text
    assert "planned-picture" in visit(owner).get(reverse("week")).text


def test_weeks_before_and_after(owner, routine, monday, visit):
    planned_for(owner, routine, monday + timedelta(days=7))
    client = visit(owner)
    now = client.get(reverse("week"))
    assert "Nothing planned yet" in now.text
    assert "Sevens from four" in client.get(f"{reverse('week')}?{now.context['later']}").text
    after = client.get(f"{reverse('week')}?{now.context['later']}")
    assert client.get(f"{reverse('week')}?{after.context['earlier']}").context["week"].monday == monday


@pytest.mark.parametrize("day", ["", "x", "0001-01-01", "9999-12-31", "2026-13-41", "9" * 5000])
def test_a_day_that_is_none_shows_this_week(owner, monday, visit, day):
    assert visit(owner).get(reverse("week"), {"day": day}).context["week"].monday == monday


def test_a_day_of_the_weekend_has_a_column_only_where_something_is_planned(owner, routine, monday, visit):
    client = visit(owner)
    planned_for(owner, routine, monday)
    assert len(client.get(reverse("week")).context["week"].days) == 5
    planned_for(owner, routine, monday + timedelta(days=5))
    assert [day.weekday() for day in client.get(reverse("week")).context["week"].days] == [0, 1, 2, 3, 4, 5]


def test_print_and_teach_stand_beside_it(owner, teammate, routine, monday, middle_band, visit):
    planned = planned_for(owner, routine, monday)
    teach = f'{reverse("lesson_teach", args=[routine.pk])}?class={planned.class_group_id}"'
    own = visit(owner).get(reverse("week")).text
    assert teach in own
    assert f'"{reverse("print", args=[routine.pk])}"' in own
    colleague = visit(teammate).get(f"{reverse('week')}?team={middle_band.pk}").text
    assert teach not in colleague
    assert reverse("planned_remove", args=[planned.pk]) not in colleague


def test_teach_begins_with_the_class_it_is_planned_for(owner, routine, grade_five, year, visit):
    group = ClassGroupFactory(name="5 Amber", grade=grade_five, year=year, teachers=[owner])
    address = reverse("lesson_teach", args=[routine.pk])
    client = visit(owner)
    assert client.get(address).context["form"]["class_group"].value() != group.pk
    assert client.get(f"{address}?class={group.pk}").context["form"]["class_group"].value() == group.pk
    assert client.get(f"{address}?class=99999").context["form"]["class_group"].value() != 99999


# Ticked by a lesson


def ticked(person, monday) -> list[tuple[int, int | None]]:
    """(day of the week it was planned for, day it was taught)."""
    shown = own_week(person, monday, classes_in_year(person, year_of(monday))).planned
    return [(count.planned.on.weekday(), count.lesson.taught_on.weekday() if count.lesson else None) for count in shown]


def test_a_lesson_ticks_the_plan_it_was_taught_from(owner, teammate, routine, monday, visit):
    planned_for(owner, routine, monday)
    planned_for(owner, routine, monday + timedelta(days=3))
    assert ticked(owner, monday) == [(0, None), (3, None)]
    make_lesson(routine, teammate, taught_on=monday)
    make_lesson(routine, owner, taught_on=monday, practice=True)
    make_lesson(make_routine(owner, title="Another"), owner, taught_on=monday)
    make_lesson(routine, owner, taught_on=monday - timedelta(days=1))
    assert ticked(owner, monday) == [(0, None), (3, None)]
    lesson = make_lesson(routine, owner, taught_on=monday)
    assert ticked(owner, monday) == [(0, 0), (3, None)]
    delete_lesson(lesson=lesson)
    assert ticked(owner, monday) == [(0, None), (3, None)]


def test_a_lesson_on_another_day_of_the_week_ticks_what_no_lesson_of_its_own_day_does(owner, routine, monday):
    planned_for(owner, routine, monday)
    planned_for(owner, routine, monday + timedelta(days=2))
    make_lesson(routine, owner, taught_on=monday + timedelta(days=2))
    assert ticked(owner, monday) == [(0, None), (2, 2)]
    make_lesson(routine, owner, taught_on=monday + timedelta(days=1))
    assert ticked(owner, monday) == [(0, 1), (2, 2)]


def test_that_it_was_taught_is_told_to_those_who_may_know_it(
    owner, co_author, teammate, coach, routine, monday, middle_band, visit
):
    """A colleague of another grade reads the team's plans, but not which lessons took place."""
    planned_for(owner, routine, monday)
    make_lesson(routine, owner, taught_on=monday)
    told = {
        person.sign_in_name: "planned-done" in visit(person).get(f"{reverse('week')}?team={middle_band.pk}").text
        for person in (teammate, co_author, coach)
    }
    assert told == {"teammate": True, "co-author": False, "coach": True}


def test_a_full_week_takes_as_many_queries_as_an_empty_one_with_one_count(
    owner, routine, monday, visit, django_assert_num_queries
):
    client = visit(owner)
    planned_for(owner, routine, monday)
    client.get(reverse("week"))
    with django_assert_num_queries(11):
        client.get(reverse("week"))
    for day in range(5):
        for number in range(4):
            planned_for(owner, make_routine(owner, notes=f"{day} {number}"), monday + timedelta(days=day))
    client.get(reverse("week"))
    with django_assert_num_queries(11):
        client.get(reverse("week"))


@pytest.mark.parametrize(("weeks", "told"), [(0, False), (-12, False), (-15, True), (28, False), (31, True)])
def test_a_week_outside_the_school_year_says_so(owner, coach, year, monday, visit, weeks, told):
    day = monday + timedelta(weeks=weeks)
    for person, team in ((owner, ""), (coach, "&team=all")):
        page = visit(person).get(f"/week/?day={day}{team}").text
        assert ("This week is outside the school year on now" in page) is told


def test_a_teacher_without_a_class_is_told_why_her_week_is_empty(owner, visit):
    assert "You have no class this year" in visit(UserFactory()).get("/week/").text
    assert "You have no class this year" not in visit(owner).get("/week/").text
