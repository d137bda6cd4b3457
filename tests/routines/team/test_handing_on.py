"""A leaver's counts and classes are handed on by an administrator, and by nobody else."""

import re
from datetime import timedelta

import pytest
from django.urls import reverse
from django.utils import timezone

from routines.models import Planned, Routine
from routines.team.school_days import next_school_day
from tests.factories import ClassGroupFactory, SchoolYearFactory, UserFactory
from tests.routines.making import make_lesson, make_routine

EVERYONE = ["owner", "co_author", "teammate", "other_teacher", "coach", "administrator"]


@pytest.fixture
def year(school):
    """The year that is on."""
    today = timezone.localdate()
    return SchoolYearFactory(name="on now", starts_on=today - timedelta(days=90), ends_on=today + timedelta(days=200))


@pytest.fixture
def leaver(owner):
    """Owner Ota, who has left: a count in the bank, one taken out of it, and a draft."""
    make_routine(owner, title="In the bank")
    make_routine(owner, title="Taken out").retire()
    make_routine(owner, title="Planted damson draft", shared=False)
    owner.leave()
    return owner


def owners() -> dict[str, str]:
    return dict(Routine.objects.values_list("title", "owner__sign_in_name"))


@pytest.mark.parametrize("name", ["co_author", "teammate", "other_teacher", "coach", "administrator"])
def test_who_may_hand_on(request, name, leaver, teammate, visit):
    client, address = visit(request.getfixturevalue(name)), reverse("hand_on", args=[leaver.pk])
    allowed = name == "administrator"
    page = client.get(address)
    assert page.status_code == (200 if allowed else 403)
    assert "damson" not in page.text
    assert client.post(address, {"to": teammate.pk}).status_code == (302 if allowed else 403)
    assert (owners()["In the bank"] == "teammate") is allowed


def test_drafts_stay_unless_they_are_asked_for(leaver, teammate, administrator, visit):
    client, address = visit(administrator), reverse("hand_on", args=[leaver.pk])
    answer = client.post(address, {"to": teammate.pk}, follow=True)
    assert "2 counts are now Teammate Tao’s." in answer.text
    assert owners() == {"In the bank": "teammate", "Taken out": "teammate", "Planted damson draft": "owner"}
    client.post(address, {"to": teammate.pk, "drafts": "on"})
    assert set(owners().values()) == {"teammate"}


def test_the_bank_names_the_new_owner_to_choose_by_and_no_longer_the_leaver(leaver, teammate, administrator, visit):
    make_routine(UserFactory(display_name="Other Olu"))
    client = visit(administrator)

    def offered() -> list[str]:
        menu = client.get("/bank/").text.split('<select id="planned-by"')[1].split("</select>")[0]
        return re.findall(r">([^<>]+)</option>", menu)

    assert offered() == ["anyone", "Other Olu", "Owner Ota"]
    client.post(reverse("hand_on", args=[leaver.pk]), {"to": teammate.pk})
    assert offered() == ["anyone", "Other Olu", "Teammate Tao"]
    Routine.objects.get(title="In the bank").retire()
    assert offered() == ["anyone", "Other Olu"]


def test_the_new_owner_is_no_longer_co_author_and_the_other_co_author_stays(
    owner, co_author, teammate, administrator, visit
):
    routine = make_routine(owner, co_authors=[co_author, teammate])
    lesson = make_lesson(routine, owner)
    owner.leave()
    visit(administrator).post(reverse("hand_on", args=[owner.pk]), {"to": teammate.pk})
    routine.refresh_from_db()
    assert (routine.owner, list(routine.co_authors.all())) == (teammate, [co_author])
    assert (routine.current_version.by, lesson.routine.pk) == (owner, routine.pk)
    assert visit(teammate).get(reverse("plan_edit", args=[routine.pk])).status_code == 200


@pytest.mark.parametrize("to", ["", "x", "999999"])
def test_to_a_colleague_who_is_here(leaver, administrator, visit, to):
    gone = UserFactory(is_active=False)
    client, address = visit(administrator), reverse("hand_on", args=[leaver.pk])
    for person in (to, gone.pk, leaver.pk):
        answer = client.post(address, {"to": person})
        assert answer.status_code == 422
        assert "Choose a colleague" in answer.text
    assert set(owners().values()) == {"owner"}


def test_who_still_works_here_keeps_her_own(owner, teammate, administrator, visit):
    make_routine(owner)
    client, address = visit(administrator), reverse("hand_on", args=[owner.pk])
    assert client.get(address).status_code == 404
    assert client.post(address, {"to": teammate.pk}).status_code == 404
    assert address not in client.get(reverse("accounts:people")).text
    owner.leave()
    assert address in client.get(reverse("accounts:people")).text


def test_without_any_count_or_class_there_is_nothing_to_hand_on(owner, administrator, visit):
    gone = UserFactory(is_active=False)
    client, address = visit(administrator), reverse("hand_on", args=[gone.pk])
    assert "No count and no class of now stands in this name." in client.get(address).text
    assert client.post(address, {"to": owner.pk, "drafts": "on", "classes": "on"}).status_code == 422


def test_the_classes_go_too_where_they_are_ticked_with_what_is_planned_for_them(
    owner, co_author, other_teacher, administrator, grade_two, year, visit
):
    last = year.starts_on - timedelta(days=300)
    old = SchoolYearFactory(name="last year", starts_on=last, ends_on=last + timedelta(days=280))
    of_last_year = ClassGroupFactory(name="2 of last year", grade=grade_two, year=old, teachers=[owner])
    mine = ClassGroupFactory(name="2 Siskin", grade=grade_two, year=year, teachers=[owner, co_author])
    of_now = {group.name for group in owner.class_groups.filter(year=year)}
    routine = make_routine(owner)
    planned = Planned.objects.create(
        routine=routine, class_group=mine, on=next_school_day(timezone.localdate()), by=owner
    )
    owner.leave()
    client, address = visit(administrator), reverse("hand_on", args=[owner.pk])
    assert "2 Siskin" in client.get(address).text
    assert "2 of last year" not in client.get(address).text
    client.post(address, {"to": other_teacher.pk})
    assert set(mine.teachers.all()) == {owner, co_author}
    answer = client.post(address, {"to": other_teacher.pk, "classes": "on"}, follow=True)
    assert "now teaches" in answer.text
    assert set(mine.teachers.all()) == {co_author, other_teacher}
    assert of_now <= set(other_teacher.class_groups.values_list("name", flat=True))
    assert list(of_last_year.teachers.all()) == [owner]
    hers = visit(other_teacher)
    assert "Sevens from four" in hers.get(f"/week/?day={planned.on}").text
    hers.post(reverse("planned_remove", args=[planned.pk]))
    assert not Planned.objects.exists()


def test_where_nothing_is_ticked_nothing_is_done_and_it_says_so(owner, teammate, administrator, visit):
    make_routine(owner, shared=False)
    owner.leave()
    answer = visit(administrator).post(reverse("hand_on", args=[owner.pk]), {"to": teammate.pk})
    assert answer.status_code == 422
    assert "Tick what is to be handed on." in answer.text
    assert set(owners().values()) == {"owner"}
    assert owner.class_groups.exists()
