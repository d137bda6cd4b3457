"""The first page by role: what waits for this person, bounded, and nothing that is not for her eyes."""

from datetime import timedelta

import pytest
from django.urls import reverse
from django.utils import timezone

from accounts.actions import invite
from accounts.recovery import make_recovery_code
from accounts.templatetags.dates import day
from grade_bands.models import ClassGroup
from routines.models import Lesson, Planned, Suggestion
from routines.models.routine import NOT_IN_BANK
from routines.plans.actions import keep_draft
from routines.team.school_days import monday_now
from tests.factories import ClassGroupFactory, SchoolYearFactory, UserFactory
from tests.routines.making import make_lesson, make_routine

EVERYONE = ["owner", "co_author", "teammate", "other_teacher", "coach", "administrator"]


@pytest.fixture
def year(school):
    """The year that is on."""
    today = timezone.localdate()
    return SchoolYearFactory(name="on now", starts_on=today - timedelta(days=90), ends_on=today + timedelta(days=200))


@pytest.fixture
def monday(school):
    return monday_now(timezone.localdate())


def home(client) -> str:
    answer = client.get("/")
    assert answer.status_code == 200
    return answer.text


@pytest.mark.parametrize("name", EVERYONE)
def test_an_old_address_of_the_bank_still_finds_what_it_found(request, name, owner, visit):
    make_routine(owner)
    client = visit(request.getfixturevalue(name))
    answer = client.get("/?q=sevens&grade=2")
    assert answer["Location"] == reverse("bank") + "?q=sevens&grade=2"
    assert "Sevens from four" in client.get(answer["Location"]).text
    assert f'href="{reverse("bank")}"' in home(client)


@pytest.mark.parametrize("name", ["owner", "coach", "administrator"])
def test_an_empty_school_leads_to_the_first_count(request, name, owner, visit):
    page = home(visit(request.getfixturevalue(name)))
    assert "The grid appears as you type." in page
    assert f'href="{reverse("plan_new")}"' in page
    assert page.count("button-main") == 1


def test_a_coach_with_a_class_and_no_plans_sees_one_filled_button(coach, owner, visit):
    owner.class_groups.get().teachers.add(coach)
    page = home(visit(coach))
    assert "Nothing planned yet" in page
    assert page.count("button-main") == 1


def test_a_teachers_week_with_print_and_teach(owner, monday, visit):
    routine = make_routine(owner)
    Planned.objects.create(routine=routine, class_group=owner.class_groups.get(), on=monday, by=owner)
    page = home(visit(owner))
    assert "Sevens from four" in page
    assert f'href="{reverse("print", args=[routine.pk])}"' in page
    assert f'href="{reverse("lesson_teach", args=[routine.pk])}?class={owner.class_groups.get().pk}"' in page


def test_a_teachers_drafts(owner, teammate, visit):
    make_routine(owner, shared=False, title="Half a plan")
    keep_draft(by=owner, fields={"typed": {"start": ["3"], "step": ["4"]}})
    assert "Half a plan" in home(visit(owner))
    assert "By 4 from 3" in home(visit(owner))
    assert "Half a plan" not in home(visit(teammate))
    assert "By 4 from 3" not in home(visit(teammate))


@pytest.mark.parametrize("name", EVERYONE)
def test_what_is_new_from_colleagues(request, name, owner, visit):
    make_routine(owner, title="Fresh medlars")
    make_routine(owner, title="Planted damson draft", shared=False)
    make_routine(owner, title="Planted damson, put away").retire()
    page = home(visit(request.getfixturevalue(name)))
    assert ("Fresh medlars" in page) is (name != "owner")
    assert ("Planted damson draft" in page) is (name == "owner")
    assert "put away" not in page


@pytest.mark.parametrize("name", EVERYONE)
def test_lessons_are_told_to_those_they_are_shared_with(request, name, owner, co_author, visit):
    hidden = make_routine(owner, shared=False, title="Planted damson count")
    lesson = make_lesson(hidden, owner, sharing="team", seen="planted mulberry words")
    page = home(visit(request.getfixturevalue(name)))
    told = name in ("co_author", "teammate")
    assert (lesson.get_absolute_url() in page) is told
    assert (NOT_IN_BANK in page) is told
    assert ("damson" in page) is (name == "owner")
    assert "mulberry" not in page


def test_what_colleagues_wrote_on_ones_counts(owner, teammate, visit):
    routine = make_routine(owner)
    routine.notes.create(by=teammate, text="planted quince")
    routine.notes.create(by=owner, text="planted sorb")
    pages = {person.sign_in_name: home(visit(person)) for person in (owner, teammate)}
    assert "quince" in pages["owner"]
    assert "sorb" not in pages["owner"]
    assert "quince" not in pages["teammate"]


def test_notes_to_oneself_of_last_year_and_of_what_is_planned(owner, teammate, monday, visit):
    today = timezone.localdate()

    def noted(routine, day, words, teacher=owner):
        lesson = make_lesson(routine, teacher, taught_on=day, sharing="team-coach")
        lesson.reflection.to_next_year = words
        lesson.reflection.save()

    planned, other = make_routine(owner), make_routine(owner, title="Another")
    Planned.objects.create(routine=planned, class_group=owner.class_groups.get(), on=monday, by=owner)
    noted(planned, today - timedelta(days=40), "planned-now")
    noted(other, today - timedelta(days=364), "a-year-ago")
    noted(other, today - timedelta(days=200), "half-a-year-ago")
    noted(planned, today - timedelta(days=41), "anothers", teammate)
    page = home(visit(owner))
    told = {words: words in page for words in ("planned-now", "a-year-ago", "half-a-year-ago", "anothers")}
    assert told == {"planned-now": True, "a-year-ago": True, "half-a-year-ago": False, "anothers": False}
    assert "planned-now" not in home(visit(teammate))


def test_suggestions_wait_on_the_first_page(owner, teammate, coach, visit):
    Suggestion.objects.create(routine=make_routine(owner), by=coach, to_teacher=teammate, why="planted mulberry")
    assert "mulberry" in home(visit(teammate))
    assert "mulberry" not in home(visit(owner))


def test_a_coach_sees_gaps_and_what_became_of_suggestions(owner, teammate, coach, grade_two, visit):
    count = make_routine(owner)
    suggestion = Suggestion.objects.create(routine=count, by=coach, to_teacher=teammate, why="planted mulberry")
    client = visit(coach)
    page = home(client)
    assert f'href="{reverse("suggest_for_gap", args=[grade_two.pk, "money"])}"' in page
    assert "to Teammate Tao: open" in page
    suggestion.answer(teammate, "declined")
    assert "to Teammate Tao: open" in home(client)
    suggestion.answer(teammate, "taken")
    assert "to Teammate Tao: taken" in home(client)
    for person in (owner, teammate):
        assert "What you suggested" not in home(visit(person))


def test_an_administrator_sees_what_the_school_needs(owner, administrator, grade_five, year, visit):
    UserFactory(administrator=True)
    make_recovery_code(by=administrator)
    client = visit(administrator)
    page = home(client)
    assert "Nothing. Every class has a teacher, and every teacher a class." in page
    assert "There is none yet." in page or "The newest is of" in page or "outside of this app" in page
    ClassGroupFactory(name="5 Empty", grade=grade_five, year=year)
    UserFactory(display_name="Idle Ibe")
    leaver = UserFactory(display_name="Leaver Lund")
    make_routine(leaver, grade="5")
    leaver.leave()
    invite(by=administrator, display_name="New Nour", role="teacher")
    year.ends_on = timezone.localdate() + timedelta(days=10)
    year.save()
    page = home(client)
    for words in (
        "Nobody teaches this class: 5 Empty.",
        "Has no class this year: Idle Ibe.",
        "Leaver Lund has left, and counts still stand in that name.",
        "New Nour",
        "there is no next one yet",
    ):
        assert words in page, words
    assert f'href="{reverse("hand_on", args=[leaver.pk])}"' in page


def test_an_administrator_is_told_when_there_is_no_year_or_no_class(administrator, year, visit):
    assert "This school year has no classes yet." in home(visit(administrator))
    ClassGroup.objects.all().delete()
    year.delete()
    assert "There is no school year yet" in home(visit(administrator))


@pytest.mark.parametrize("name", ["owner", "coach"])
def test_the_schools_affairs_are_for_administrators(request, name, owner, administrator, visit):
    invite(by=administrator, display_name="New Nour", role="teacher")
    page = home(visit(request.getfixturevalue(name)))
    assert "New Nour" not in page
    assert "Backups" not in page


@pytest.mark.parametrize(("name", "most"), [("owner", 27), ("coach", 20), ("administrator", 20)])
def test_lists_are_bounded_and_so_are_queries(
    request, name, most, owner, teammate, coach, administrator, grade_two, monday, visit, django_assert_max_num_queries
):
    person = request.getfixturevalue(name)
    client = visit(person)

    def fill() -> None:
        for number in range(9):
            mine, theirs = make_routine(owner, notes=f"{number}"), make_routine(teammate, notes=f"{number}")
            make_routine(owner, shared=False, notes=f"draft {number}")
            mine.notes.create(by=teammate, text="worked")
            lesson = make_lesson(mine, owner, taught_on=timezone.localdate())
            lesson.reflection.to_next_year = "again"
            lesson.reflection.save()
            make_lesson(theirs, teammate, sharing="team", taught_on=timezone.localdate())
            Planned.objects.create(routine=mine, class_group=owner.class_groups.get(), on=monday, by=owner)
            Suggestion.objects.create(routine=theirs, by=coach, to_grade=grade_two, why="Try it.")
            invite(by=administrator, display_name=f"New {number}", role="teacher")

    fill()
    client.get("/")
    with django_assert_max_num_queries(most) as few:
        client.get("/")
        number = len(few)
    fill()
    client.get("/")
    with django_assert_max_num_queries(number):
        page = client.get("/")
    lists = {
        key: len(page.context[key])
        for key in ("waiting", "new_counts", "sent", "notes", "noted", "lessons", "drafts")
        if key in page.context
    }
    assert max(lists.values()) <= 6, lists
    assert Lesson.objects.count() == 36


def test_who_runs_the_school_and_teaches_sees_her_week_first(administrator, owner, monday, visit):
    group = owner.class_groups.get()
    group.teachers.add(administrator)
    Planned.objects.create(routine=make_routine(owner), class_group=group, on=monday, by=administrator)
    page = home(visit(administrator))
    assert page.index("Sevens from four") < page.index("to-do-title") < page.index("backups-title")


@pytest.mark.parametrize("drafts", [False, True])
def test_a_teacher_without_a_class_is_told_why_nothing_can_be_put_in_the_week(owner, drafts, visit):
    newcomer = UserFactory()
    if drafts:
        make_routine(newcomer, shared=False)
    page = home(visit(newcomer))
    assert "You have no class this year" in page
    assert "put it in the week" not in page
    assert page.count("button-main") == 1
    assert "You have no class" not in home(visit(owner))


def test_a_gap_leads_to_designing_and_its_buttons_name_it(coach, owner, grade_two, visit):
    page = home(visit(coach))
    assert f'href="{reverse("plan_new")}?grade=2&amp;area=money&amp;design=1#tool-design"' in page
    for words in ("Suggest one: grade 2, money", "Design one: grade 2, money"):
        assert f'aria-label="{words}"' in page


@pytest.mark.parametrize(
    ("days", "gone", "answer", "words"),
    [
        (None, False, "", "open"),
        (5, False, "", "open, by {day}"),
        (0, False, "declined", "open, by {day}"),
        (-1, False, "", "open; it was meant for {day}"),
        (-1, False, "taken", "taken"),
        (5, True, "", "open; Teammate Tao has left"),
        (5, True, "taken", "taken"),
    ],
)
def test_what_became_of_a_suggestion_says_what_its_sender_can_do(
    coach, owner, teammate, visit, days, gone, answer, words
):
    today = timezone.localdate()
    by_when = None if days is None else today + timedelta(days=days)
    routine = make_routine(owner)
    made = Suggestion.objects.create(routine=routine, by=coach, to_teacher=teammate, why="Try it.", by_when=by_when)
    if answer:
        made.answer(teammate, answer)
    if gone:
        teammate.leave()
    said = words.format(day=day(by_when) if by_when else "")
    client = visit(coach)
    assert f"to Teammate Tao: {said}</span>" in home(client)
    assert f"<td>{said}</td>" in client.get("/suggestions/").text


def test_an_administrator_is_told_of_a_class_whose_only_teacher_left(administrator, owner, co_author, year, visit):
    shared, alone = owner.class_groups.get(), co_author.class_groups.get()
    shared.teachers.add(UserFactory())
    for person in (owner, co_author):
        person.leave()
    assert f"Nobody teaches this class: {alone.name}." in home(visit(administrator))
