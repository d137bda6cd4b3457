"""The access table, row by row and role by role, with planted words that must not come through."""

import pytest
from django.urls import reverse

from routines.models import Lesson, Routine
from tests.routines.making import make_lesson, make_routine

EVERYONE = ["owner", "co_author", "teammate", "other_teacher", "coach", "administrator"]


@pytest.fixture
def person(request, owner, co_author, teammate, other_teacher, coach, administrator):
    return request.getfixturevalue(request.param)


def everyone(**allowed):
    """One case per person: (person, what is expected of her), False where she is not named."""
    return pytest.mark.parametrize(
        ("person", "expected"), [(name, allowed.get(name, False)) for name in EVERYONE], indirect=["person"]
    )


@pytest.mark.parametrize("person", EVERYONE, indirect=True)
def test_shared_routines_are_read_copied_and_noted_by_everyone(person, owner, visit):
    routine = make_routine(owner)
    client = visit(person)
    assert client.get(reverse("routine", args=[routine.pk])).status_code == 200
    assert client.post(reverse("routine_copy", args=[routine.pk])).status_code == 302
    assert client.post(reverse("routine_note", args=[routine.pk]), {"text": "worked"}).status_code == 302
    assert Routine.objects.filter(owner=person, copied_from=routine).exists()


@everyone(owner=True, co_author=True)
def test_drafts_are_seen_by_their_authors_alone(person, expected, owner, co_author, visit):
    routine = make_routine(owner, co_authors=[co_author], shared=False, title="Secret plum count")
    client = visit(person)
    page = client.get(reverse("routine", args=[routine.pk]))
    assert page.status_code == (200 if expected else 404)
    assert ("Secret plum" in page.text) is expected
    for name in ("routine_copy", "routine_note", "routine_share", "routine_retire"):
        answer = client.post(reverse(name, args=[routine.pk]), {"text": "x"})
        assert (answer.status_code != 404) is expected
    assert ("Secret plum" in client.get(reverse("bank")).text) is False or expected


@everyone(owner=True, coach=True, administrator=True)
def test_retiring_and_restoring(person, expected, owner, co_author, visit):
    routine = make_routine(owner, co_authors=[co_author])
    answer = visit(person).post(reverse("routine_retire", args=[routine.pk]))
    routine.refresh_from_db()
    assert (routine.status == "retired") is expected
    assert answer.status_code == (302 if expected else 403)


@everyone(owner=True, co_author=True, coach=True, administrator=True)
def test_a_retired_routine_is_seen_by_authors_and_those_who_may_bring_it_back(
    person, expected, owner, co_author, visit
):
    routine = make_routine(owner, co_authors=[co_author])
    routine.retire()
    assert visit(person).get(reverse("routine", args=[routine.pk])).status_code == (200 if expected else 404)


@everyone(owner=True, co_author=True)
def test_sharing_a_draft(person, expected, owner, co_author, visit):
    routine = make_routine(owner, co_authors=[co_author], shared=False)
    visit(person).post(reverse("routine_share", args=[routine.pk]))
    routine.refresh_from_db()
    assert (routine.status == "shared") is expected


@pytest.mark.parametrize(
    ("sharing", "readers"),
    [
        ("only-me", {"owner"}),
        ("team", {"owner", "co_author", "teammate"}),
        ("team-coach", {"owner", "co_author", "teammate", "coach"}),
    ],
)
@pytest.mark.parametrize("person", EVERYONE, indirect=True)
def test_a_reflection_is_read_by_whom_it_is_shared_with(person, sharing, readers, owner, visit):
    routine = make_routine(owner)
    lesson = make_lesson(routine, owner, sharing=sharing, seen="planted mulberry words")
    client = visit(person)
    reads = person.sign_in_name.replace("-", "_") in {name.replace("other_teacher", "other") for name in readers}
    page = client.get(reverse("lesson", args=[lesson.key]))
    assert page.status_code == (200 if reads else 404)
    assert ("mulberry" in page.text) is reads
    for address in (reverse("routine", args=[routine.pk]), reverse("lessons")):
        told = "mulberry" in client.get(address).text or lesson.get_absolute_url() in client.get(address).text
        assert told is reads


@everyone(owner=True, teammate=True, coach=True)
def test_that_a_lesson_took_place_is_known_in_the_grade_and_to_the_coach(person, expected, owner):
    lesson = make_lesson(make_routine(owner), owner)
    assert Lesson.objects.known_to(person).filter(pk=lesson.pk).exists() is expected


@pytest.mark.parametrize("name", ["teammate", "coach", "administrator"])
def test_nobody_else_changes_a_reflection(name, request, owner, visit):
    lesson = make_lesson(make_routine(owner), owner, sharing="team-coach", seen="mine")
    who = request.getfixturevalue(name)
    answer = visit(who).post(reverse("lesson", args=[lesson.key]), {"outcome": "not-yet", "sharing": "team-coach"})
    assert answer.status_code == 404
    lesson.reflection.refresh_from_db()
    assert (lesson.reflection.outcome, lesson.reflection.seen) == ("as-planned", "mine")


def test_the_note_to_next_years_self_is_never_shown_to_others(owner, teammate, visit):
    lesson = make_lesson(make_routine(owner), owner, sharing="team-coach")
    lesson.reflection.to_next_year = "planted quince"
    lesson.reflection.save()
    address = reverse("lesson", args=[lesson.key])
    assert "quince" in visit(owner).get(address).text
    assert "quince" not in visit(teammate).get(address).text


def test_the_signed_out_get_the_sign_in_page(signed_out, owner):
    routine = make_routine(owner)
    for address in (reverse("bank"), reverse("routine", args=[routine.pk]), reverse("lessons"), reverse("coverage")):
        answer = signed_out.get(address)
        assert answer.status_code == 302
        assert reverse("accounts:sign_in") in answer["Location"]
