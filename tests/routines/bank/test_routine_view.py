"""The routine page: patterns that light up by address, the plan, lineage, and notes."""

from datetime import date

import pytest
from django.urls import reverse

from grade_bands.standards import COMMON_CORE_NOTICE
from routines.bank.alike import alike
from routines.models import RoutineNote
from routines.models.plan_document import CountSection, ExpectedAnswer, Story, Target
from routines.plans.actions import copy_routine, save_version
from tests.factories import StandardFactory
from tests.routines.making import SEVENS, make_lesson, make_routine


def page_of(routine, client, query=""):
    return client.get(reverse("routine", args=[routine.pk]) + query)


def test_the_page_shows_grid_patterns_and_plan(owner, visit):
    page = page_of(make_routine(owner), visit(owner)).text
    for words in ("Sevens from four", "35 more", "What is under 11?", "5 jumps of 7 make 35", "7 more"):
        assert words in page


@pytest.mark.parametrize(
    ("expected", "says", "slips"),
    [
        ((), "Nothing written yet.", "Nothing written yet."),
        ((ExpectedAnswer("55", sort="slip", n=8),), "Nothing written yet.", "55"),
        ((ExpectedAnswer("It goes up by seven", sort="easy"),), "It goes up by seven", "Nothing written yet."),
    ],
)
def test_a_list_of_what_they_may_say_or_slip_is_never_silently_empty(owner, visit, expected, says, slips):
    page = page_of(make_routine(owner, expected=expected), visit(owner)).text
    they_say, they_slip = page.split('id="says-title"')[1].split("</section>")[:2]
    assert (says in they_say, slips in they_slip) == (True, True)
    assert they_say.count("<li") == they_slip.count("<li") == 1


def test_the_lit_patterns_stand_in_the_address(owner, visit):
    client, routine = visit(owner), make_routine(owner)
    lit = page_of(routine, client, "?lit=p1&lit=p0").text
    assert lit.count('aria-pressed="true"') == 2
    assert page_of(routine, client, "?lit=p0").text.count('aria-pressed="true"') == 1
    assert page_of(routine, client, "?lit=").text.count('aria-pressed="true"') == 0


def test_at_most_two_are_lit_and_unknown_ones_are_none(owner, visit):
    page = page_of(make_routine(owner), visit(owner), "?lit=p0&lit=p1&lit=p2&lit=zz").text
    assert page.count('aria-pressed="true"') == 2


def test_htmx_gets_the_grid_alone(owner, visit):
    answer = visit(owner).get(reverse("routine", args=[make_routine(owner).pk]), headers={"HX-Request": "true"})
    assert "<html" not in answer.text
    assert 'id="lit-grid"' in answer.text


def test_copy_leads_to_the_copys_plan_and_the_pages_name_each_other(owner, teammate, visit):
    routine = make_routine(owner)
    answer = visit(teammate).post(reverse("routine_copy", args=[routine.pk]))
    copy = routine.copies.get()
    assert answer["Location"] == reverse("plan_edit", args=[copy.pk])
    assert "Copied from" in page_of(copy, visit(teammate)).text
    copy.share()
    assert "Copied as" in page_of(routine, visit(owner)).text


def test_a_draft_copy_is_not_told_to_the_owner_of_the_original(owner, teammate, visit):
    routine = make_routine(owner)
    visit(teammate).post(reverse("routine_copy", args=[routine.pk]))
    assert "Copied as" not in page_of(routine, visit(owner)).text


def test_an_origin_no_longer_in_the_bank_is_neither_named_nor_linked(owner, teammate, visit):
    routine = make_routine(owner, title="Planted damson count")
    copy = copy_routine(routine=routine, by=teammate)
    save_version(routine=copy, plan=copy.plan.changed(title="My own"), based_on=copy.current_version, by=teammate)
    routine.retire()
    page = page_of(copy, visit(teammate)).text
    assert "Copied from a count that is not in the bank" in page
    assert "damson" not in page
    assert f'href="{reverse("routine", args=[routine.pk])}"' not in page


def test_a_note_that_seems_to_name_a_child_is_asked_about_and_kept_when_confirmed(owner, visit):
    client, routine = visit(owner), make_routine(owner)
    address = reverse("routine_note", args=[routine.pk])
    asked = client.post(address, {"text": "Maya said it is always even"})
    assert asked.status_code == 422
    assert "Maya said it is always even" in asked.text
    assert not routine.notes.exists()
    client.post(address, {"text": "Maya said it is always even", "no_names": "on"})
    assert routine.notes.get().text == "Maya said it is always even"


def test_an_empty_note_is_refused(owner, visit):
    answer = visit(owner).post(reverse("routine_note", args=[make_routine(owner).pk]), {"text": " "})
    assert answer.status_code == 422
    assert "Write a few words first." in answer.text


def test_hostile_words_stay_words(owner, visit):
    routine = make_routine(owner, title="<script>alert(1)</script>", notes='"><img src=x onerror=alert(1)>')
    page = page_of(routine, visit(owner)).text
    assert "<script>alert(1)" not in page
    assert "<img src=x" not in page


def test_changing_states_takes_a_post(owner, visit):
    routine = make_routine(owner)
    for name in ("routine_copy", "routine_share", "routine_retire", "routine_note"):
        assert visit(owner).get(reverse(name, args=[routine.pk])).status_code == 405


def test_what_does_not_exist_is_not_found(owner, visit):
    assert visit(owner).get(reverse("routine", args=[999])).status_code == 404


def test_queries_are_bounded(owner, visit, all_through, django_assert_max_num_queries):
    with all_through():
        routine = make_routine(owner)
    for _ in range(5):
        make_lesson(routine, owner, sharing="team")
    client = visit(owner)
    with django_assert_max_num_queries(22):
        page_of(routine, client)


def test_a_copy_is_laid_beside_its_original(owner, teammate, visit):
    routine = make_routine(owner)
    copy = copy_routine(routine=routine, by=teammate)
    plan = SEVENS.changed(title="Eights from four", count=CountSection("whole", "4", "8", 20), targets=())
    save_version(routine=copy, plan=plan, based_on=copy.current_version, by=teammate)
    page = visit(teammate).get(reverse("routine_compare", args=[copy.pk])).text
    for words in ("By 7 from 4", "By 8 from 4", "Eights from four", "Title", "Target patterns"):
        assert words in page


def test_what_was_not_copied_has_nothing_to_compare(owner, visit):
    assert visit(owner).get(reverse("routine_compare", args=[make_routine(owner).pk])).status_code == 404


def test_a_copy_in_draft_is_compared_by_its_authors_alone(owner, teammate, visit):
    copy = copy_routine(routine=make_routine(owner), by=teammate)
    assert visit(owner).get(reverse("routine_compare", args=[copy.pk])).status_code == 404


def test_three_like_it_come_from_the_bank_most_alike_first(owner, visit):
    routine = make_routine(owner)
    far = make_routine(owner, title="Back by nines", count=CountSection("whole", "180", "-9", 20), targets=())
    near = make_routine(owner, title="Sevens from five", count=CountSection("whole", "5", "7", 20), targets=())
    make_routine(owner, title="A hidden draft", shared=False)
    make_routine(owner, title="Thirds", area="fractions", count=CountSection("fraction", "1/3", "1/3", 20), targets=())
    assert list(alike(routine)) == [near, far]


def test_the_owner_takes_a_co_author_in_and_lets_her_go(owner, teammate, visit):
    routine = make_routine(owner, shared=False)
    address = reverse("routine_co_authors", args=[routine.pk])
    visit(owner).post(address, {"person": teammate.pk})
    assert list(routine.co_authors.all()) == [teammate]
    assert page_of(routine, visit(teammate)).status_code == 200
    visit(owner).post(address, {"leave": teammate.pk})
    assert not routine.co_authors.exists()
    assert page_of(routine, visit(teammate)).status_code == 404


@pytest.mark.parametrize("person", ["0", "x", "", "99999"])
def test_a_co_author_is_a_colleague(owner, visit, person):
    routine = make_routine(owner)
    address = reverse("routine_co_authors", args=[routine.pk])
    assert visit(owner).post(address, {"person": person}, follow=True).status_code == 200
    assert visit(owner).post(address, {"leave": person}).status_code == 404
    assert not routine.co_authors.exists()


@pytest.mark.parametrize("name", ["co_author", "coach", "administrator", "other_teacher"])
def test_only_the_owner_chooses_co_authors(request, owner, co_author, teammate, visit, name):
    routine = make_routine(owner, co_authors=[co_author, teammate])
    client = visit(request.getfixturevalue(name))
    for asked in ({"leave": teammate.pk}, {"leave": owner.pk}, {"person": owner.pk}, {}):
        assert client.post(reverse("routine_co_authors", args=[routine.pk]), asked).status_code == 403
    assert set(routine.co_authors.all()) == {co_author, teammate}


@pytest.mark.parametrize("shared", [False, True])
def test_a_co_author_takes_her_own_name_off(owner, co_author, teammate, visit, shared):
    routine = make_routine(owner, co_authors=[co_author, teammate], shared=shared)
    client = visit(co_author)
    assert "Take my name off" in page_of(routine, client).text
    assert "Take my name off" not in page_of(routine, visit(owner)).text
    answer = client.post(reverse("routine_co_authors", args=[routine.pk]), {"leave": co_author.pk}, follow=True)
    assert answer.status_code == 200
    assert "Your name is off “Sevens from four”." in answer.text
    assert list(routine.co_authors.all()) == [teammate]
    assert page_of(routine, client).status_code == (200 if shared else 404)
    assert "Take my name off" not in page_of(routine, client).text


def test_a_storys_goal_says_where_it_is_reached(owner, visit):
    # 4, 11, 18, ...: 60 is the 9th count (4 + 8 x 7), 64 is passed at the 10th, 67, by 3
    met = make_routine(owner, story=Story("A tray of cups.", "tray", "60"))
    passed = make_routine(owner, title="Passed", story=Story("A tray of cups.", "tray", "64"))
    client = visit(owner)
    assert "The goal, 60, is met at <b>tray 9</b>." in page_of(met, client).text
    assert "The goal, 64, is passed at <b>tray 10</b>, by 3." in page_of(passed, client).text


def test_a_target_that_means_nothing_for_its_count_breaks_no_page(owner, visit):
    clock = CountSection("clock", "7:10", "40 min", 12)
    odd = Target({"family": "digit", "place": 0, "along": "count", "blocks": [[0]]})
    routine = make_routine(owner, area="time", count=clock, targets=(odd,), stops=())
    assert page_of(routine, visit(owner)).status_code == 200


def test_the_owners_of_the_standards_are_named_wherever_their_codes_are(owner, grade_two, visit):
    StandardFactory(code="2.NBT.A.2", grade=grade_two)
    routine = make_routine(owner, standards=("2.NBT.A.2",))
    client = visit(owner)
    for page in (page_of(routine, client), client.get(reverse("plan_edit", args=[routine.pk]))):
        assert "2.NBT.A.2" in page.text
        assert COMMON_CORE_NOTICE in page.text


def test_notes_beyond_the_newest_are_a_press_away(owner, visit):
    routine = make_routine(owner)
    for number in range(22):
        RoutineNote.objects.create(routine=routine, by=owner, text=f"Note number {number}.")
    client, address = visit(owner), reverse("routine", args=[routine.pk])
    page = client.get(address).text
    assert "Note number 2." in page
    assert "Note number 1." not in page
    assert "Show 2 older notes" in page
    everything = client.get(address, {"notes": "all"}).text
    assert "Note number 0." in everything
    assert "older note" not in everything


def test_lessons_saves_and_copies_beyond_the_newest_are_a_press_away(owner, teammate, visit):
    routine = make_routine(owner)
    for day in range(1, 9):
        make_lesson(routine, owner, taught_on=date(2026, 9, day), sharing="team", seen=f"Seen on day {day}.")
    for number in range(2, 11):
        plan = SEVENS.changed(title=f"Title {number}")
        save_version(routine=routine, plan=plan, based_on=routine.versions.get(number=number - 1), by=owner)
    for _copy in range(7):
        copy_routine(routine=routine, by=teammate).share()
    client, address = visit(teammate), reverse("routine", args=[routine.pk])
    page = client.get(address).text
    assert ("Seen on day 3." in page, "Seen on day 2." in page) == (True, False)
    assert "Show 2 earlier lessons" in page
    assert (page.count("<li>Version "), page.count("<li>Copied as ")) == (8, 6)
    assert "Show 3 more" in page
    everything = client.get(address, {"lessons": "all", "lineage": "all"}).text
    assert "Seen on day 1." in everything
    assert (everything.count("<li>Version "), everything.count("<li>Copied as ")) == (10, 7)
    assert "earlier lesson" not in everything
    assert "Show 3 more" not in everything


@pytest.mark.parametrize(("grade", "there"), [("2", False), ("5", True)])
def test_the_rule_of_the_count_stands_on_the_pages_of_upper_grades(owner, grade_two, grade_five, visit, grade, there):
    routine = make_routine(owner, grade=grade)
    assert ("The n-th count is" in visit(owner).get(f"/routines/{routine.pk}/").text) is there
    sheet = visit(owner).get(f"/routines/{routine.pk}/print/plan/", {"language": "both"}).text
    assert ("The n-th count is" in sheet) is there
    assert ("El número n es" in sheet) is there
    for name in ("substitute", "recording"):
        assert "n-th" not in visit(owner).get(f"/routines/{routine.pk}/print/{name}/").text
