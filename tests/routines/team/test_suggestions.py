"""Suggesting a count: to a teacher or a team, taken, kept or left unseen; its sender learns that it was taken, or nothing."""

import re
from datetime import timedelta

import pytest
from django.urls import reverse
from django.utils import timezone

from accounts.templatetags.dates import day
from routines.models import Planned, Routine, Suggestion, SuggestionAnswer
from routines.models.routine import NOT_IN_BANK
from routines.team.suggesting import waiting_for
from routines.team.views import suggestions
from tests.factories import ClassGroupFactory, SchoolYearFactory
from tests.routines.making import make_routine

EVERYONE = ["owner", "co_author", "teammate", "other_teacher", "coach", "administrator"]


@pytest.fixture
def year(school):
    """The year that is on: a team is who teaches together now."""
    today = timezone.localdate()
    return SchoolYearFactory(name="on now", starts_on=today - timedelta(days=90), ends_on=today + timedelta(days=200))


@pytest.fixture
def routine(owner):
    return make_routine(owner)


def suggested(by, routine, **to) -> Suggestion:
    return Suggestion.objects.create(routine=routine, by=by, why="planted mulberry", **to)


def fields(to: str, **more) -> dict[str, str]:
    return {"to": to, "why": "The tens line up.", "by_when": "", **more}


# Sending


def test_a_coach_suggests_a_count_from_its_page(coach, teammate, routine, visit):
    client, address = visit(coach), reverse("suggest", args=[routine.pk])
    assert f'href="{address}"' in client.get(reverse("routine", args=[routine.pk])).text
    day = timezone.localdate() + timedelta(days=10)
    answer = client.post(address, fields(f"teacher-{teammate.pk}", by_when=day.isoformat()))
    assert answer["Location"] == reverse("suggestions") + "#sent"
    sent = Suggestion.objects.get()
    assert (sent.routine, sent.by, sent.to_teacher, sent.why, sent.by_when) == (
        routine, coach, teammate, "The tens line up.", day,
    )  # fmt: skip
    assert "The tens line up." in visit(teammate).get(reverse("suggestions")).text


@pytest.mark.parametrize(
    ("sort", "receivers"), [("band", {"owner", "co_author", "teammate"}), ("grade", {"owner", "teammate"})]
)
def test_a_team_is_those_who_teach_there_now(
    request, sort, receivers, owner, co_author, teammate, other_teacher, coach, grade_two, grade_five, routine, visit
):
    today = timezone.localdate()
    days = {"starts_on": today - timedelta(days=460), "ends_on": today - timedelta(days=160)}
    last = SchoolYearFactory(name="last", **days)
    ClassGroupFactory(name="2 Old", grade=grade_two, year=last, teachers=[other_teacher])
    to = f"band-{grade_two.band_id}" if sort == "band" else f"grade-{grade_two.pk}"
    visit(coach).post(reverse("suggest", args=[routine.pk]), fields(to, why="planted mulberry"))
    told = {
        name for name in EVERYONE if "mulberry" in visit(request.getfixturevalue(name)).get(reverse("suggestions")).text
    }
    assert told == receivers | {"coach"}


def test_the_grade_of_the_count_is_chosen_at_first(coach, owner, co_author, grade_two, routine, visit):
    form = visit(coach).get(reverse("suggest", args=[routine.pk])).context["form"]
    assert form["to"].value() == f"grade-{grade_two.pk}"
    offered = dict(form.fields["to"].choices)
    assert "Owner Ota" in dict(offered["Colleagues"]).values()
    assert "Coach Cruz" not in dict(offered["Colleagues"]).values()


def test_a_team_of_one_grade_is_offered_once(coach, other_teacher, grade_five, routine, visit):
    form = visit(coach).get(reverse("suggest", args=[make_routine(other_teacher, grade="5").pk])).context["form"]
    values = {value for _group, some in form.fields["to"].choices[1:] for value, _label in some}
    assert f"band-{grade_five.band_id}" in values
    assert f"grade-{grade_five.pk}" not in values
    assert form["to"].value() == f"band-{grade_five.band_id}"


@pytest.mark.parametrize("name", EVERYONE)
def test_who_may_suggest(request, name, co_author, teammate, routine, grade_two, visit):
    """Teachers and coaches; an administrator is refused."""
    client = visit(request.getfixturevalue(name))
    expected = 403 if name == "administrator" else 302
    answer = client.post(reverse("suggest", args=[routine.pk]), fields(f"grade-{grade_two.pk}"))
    assert answer.status_code == expected
    page = client.get(reverse("routine", args=[routine.pk])).text
    assert ("Suggest to colleagues" in page) is (expected == 302)


@pytest.mark.parametrize(("name", "status"), [("owner", 403), ("teammate", 404), ("coach", 404)])
def test_a_draft_is_not_suggested(request, name, status, owner, routine, visit):
    draft = make_routine(owner, shared=False, title="Planted damson count")
    answer = visit(request.getfixturevalue(name)).get(reverse("suggest", args=[draft.pk]))
    assert (answer.status_code, "damson" in answer.text) == (status, False)


@pytest.mark.parametrize(
    ("wrong", "sentence"),
    [
        ({"to": ""}, "Choose a team or a colleague."),
        ({"to": "teacher-999999"}, "Choose a team or a colleague from the list."),
        ({"to": "by-1"}, "Choose a team or a colleague from the list."),
        ({"why": " "}, "Write a few words: why this count?"),
        ({"why": "Maya said it is fun."}, "Is Maya a child?"),
        ({"why": "x" * 1001}, "1000"),
        ({"by_when": "2001-01-01"}, "Choose a day from today"),
        ({"by_when": "soon"}, "Write the day as year-month-day"),
    ],
)
def test_what_is_wrong_comes_back_as_typed(coach, co_author, routine, grade_two, visit, wrong, sentence):
    sent = fields(f"grade-{grade_two.pk}") | wrong
    answer = visit(coach).post(reverse("suggest", args=[routine.pk]), sent)
    assert answer.status_code == 422
    assert sentence in answer.text
    assert sent["why"].strip() in answer.text
    assert not Suggestion.objects.exists()


def test_a_name_that_is_no_childs_is_kept_when_said_so(coach, co_author, routine, grade_two, visit):
    sent = fields(f"grade-{grade_two.pk}", why="Maya said it is fun.", no_names="on")
    assert visit(coach).post(reverse("suggest", args=[routine.pk]), sent).status_code == 302


def test_from_a_gap_two_clicks_and_the_words(coach, owner, co_author, grade_three, routine, visit):
    """Grade 3 expects fractions; the bank has none there, but has one for grade 2."""
    near = make_routine(owner, title="Nearest", area="fractions")
    client, address = visit(coach), reverse("suggest_for_gap", args=[grade_three.pk, "fractions"])
    assert f'href="{address}"' in client.get(reverse("coverage")).text
    form = client.get(address).context["form"]
    sent = {"to": form["to"].value(), "routine": form["routine"].value(), "why": "Thirds come first.", "by_when": ""}
    assert client.post(address, sent).status_code == 302
    made = Suggestion.objects.get()
    assert (made.routine, made.to_grade, made.why) == (near, grade_three, "Thirds come first.")


def test_counts_of_the_nearest_grades_are_offered_for_a_gap(coach, owner, other_teacher, co_author, grade_three, visit):
    make_routine(other_teacher, title="Two grades up", grade="5", area="fractions")
    make_routine(owner, title="One grade down", grade="2", area="fractions")
    make_routine(owner, title="Of another area", grade="3")
    make_routine(owner, title="Planted damson draft", grade="3", area="fractions", shared=False)
    page = visit(coach).get(reverse("suggest_for_gap", args=[grade_three.pk, "fractions"]))
    assert [routine.title for routine, _says, _chosen in page.context["counts"]] == ["One grade down", "Two grades up"]
    assert "damson" not in page.text


def test_a_gap_that_no_count_fits_leads_to_designing_one(coach, co_author, grade_three, visit):
    address = reverse("suggest_for_gap", args=[grade_three.pk, "money"])
    page = visit(coach).get(address)
    assert "No count of this area yet" in page.text
    assert visit(coach).post(address, fields(f"grade-{grade_three.pk}")).status_code == 422


@pytest.mark.parametrize(
    ("name", "status"), [("co_author", 200), ("owner", 404), ("coach", 200), ("administrator", 403)]
)
def test_who_may_suggest_for_a_gap(request, name, status, owner, co_author, grade_three, routine, visit):
    """A teacher where she sees the gap: in her own grades."""
    client = visit(request.getfixturevalue(name))
    assert client.get(reverse("suggest_for_gap", args=[grade_three.pk, "whole"])).status_code == status
    assert client.get(reverse("suggest_for_gap", args=[grade_three.pk, "no-area"])).status_code == 404


# Answering


def respond(client, suggestion, answer: str):
    return client.post(reverse("suggestion_answer", args=[suggestion.pk]), {"answer": answer})


def test_taken_as_a_copy(coach, teammate, routine, visit):
    one, client = suggested(coach, routine, to_teacher=teammate), visit(teammate)
    answer = respond(client, one, "copy")
    copy = Routine.objects.get(owner=teammate)
    assert (copy.copied_from, copy.status) == (routine, "draft")
    assert answer["Location"] == reverse("plan_edit", kwargs={"pk": copy.pk})
    assert waiting_for(teammate, 9) == []


def test_taken_for_a_day(coach, owner, routine, visit):
    one, client = suggested(coach, routine, to_teacher=owner), visit(owner)
    page = client.get(reverse("suggestions"))
    address = f"{reverse('planned_new', args=[routine.pk])}?suggestion={one.pk}"
    assert f'href="{address}"' in page.text
    form = client.get(address)
    assert f'name="suggestion" value="{one.pk}"' in form.text
    sent = {"class_group": owner.class_groups.get().pk, "on": timezone.localdate().isoformat(), "suggestion": one.pk}
    client.post(reverse("planned_new", args=[routine.pk]), sent)
    assert Planned.objects.count() == 1
    assert Suggestion.objects.with_taken().get().taken


def test_planning_marks_no_suggestion_that_was_made_to_somebody_else(coach, owner, teammate, routine, visit):
    theirs = suggested(coach, routine, to_teacher=teammate)
    another = suggested(coach, make_routine(owner, title="Another"), to_teacher=owner)
    for one in (theirs.pk, another.pk, 999999, "x"):
        sent = {"class_group": owner.class_groups.get().pk, "on": timezone.localdate().isoformat(), "suggestion": one}
        visit(owner).post(reverse("planned_new", args=[routine.pk]), sent)
    assert not SuggestionAnswer.objects.exists()


def test_kept_for_later_it_stays_in_the_list(coach, teammate, routine, visit):
    one = suggested(coach, routine, to_teacher=teammate)
    respond(visit(teammate), one, "keep")
    assert waiting_for(teammate, 9) == [one]


def test_declined_it_goes_and_can_be_brought_back(coach, teammate, routine, visit):
    one, client = suggested(coach, routine, to_teacher=teammate), visit(teammate)
    respond(client, one, "decline")
    assert waiting_for(teammate, 9) == []
    page = client.get(reverse("suggestions"))
    assert page.context["declined"] == [one]
    respond(client, one, "again")
    assert waiting_for(teammate, 9) == [one]


@pytest.mark.parametrize("answer", ["keep", "decline", "again", "no-such"])
def test_the_sender_sees_only_open_until_it_is_taken(coach, owner, teammate, grade_two, routine, visit, answer):
    """The page of the sender is the same to the letter, whatever was left or kept, and says nothing of who took it."""
    one, sender = suggested(coach, routine, to_grade=grade_two), visit(coach)

    def page() -> str:
        text = sender.get(reverse("suggestions")).text
        return re.sub(r'name="(form_key|csrfmiddlewaretoken)" value="[^"]*"|"X-CSRFToken": "[^"]*"', "", text)

    before = page()
    assert "<td>open</td>" in before
    respond(visit(owner), one, answer)
    assert page() == before
    respond(visit(teammate), one, "copy")
    after = page()
    assert after == before.replace("<td>open</td>", "<td>taken</td>")
    assert "Teammate Tao" not in after


def test_what_one_of_a_team_makes_of_it_is_told_to_no_other(coach, owner, teammate, grade_two, routine, visit):
    one = suggested(coach, routine, to_grade=grade_two)
    for answer in ("decline", "copy"):
        respond(visit(owner), one, answer)
        assert waiting_for(teammate, 9) == [one]
    assert "Owner Ota" not in visit(teammate).get(reverse("suggestions")).text


@pytest.mark.parametrize(
    ("name", "status"),
    [("teammate", 302), ("coach", 403), ("owner", 404), ("other_teacher", 404), ("administrator", 404)],
)
def test_who_may_answer(request, name, status, coach, owner, teammate, routine, visit):
    one = suggested(coach, routine, to_teacher=teammate)
    client = visit(request.getfixturevalue(name))
    for answer in ("keep", "decline", "again", "copy"):
        reply = respond(client, one, answer)
        assert (reply.status_code, "mulberry" in reply.text) == (status, False)
    if status != 302:
        assert not SuggestionAnswer.objects.exists()
    page = client.get(reverse("suggestions")).text
    assert ("mulberry" in page) is (name == "coach")


@pytest.mark.parametrize(
    ("name", "status"),
    [("coach", 302), ("teammate", 403), ("owner", 404), ("other_teacher", 404), ("administrator", 404)],
)
def test_who_may_withdraw(request, name, status, coach, owner, teammate, routine, visit):
    one = suggested(coach, routine, to_teacher=teammate)
    client, address = visit(request.getfixturevalue(name)), reverse("suggestion_withdraw", args=[one.pk])
    asked = client.get(address)
    assert asked.status_code == (200 if status == 302 else status)
    assert ("mulberry" in asked.text) is (status == 302)
    assert client.post(address).status_code == status
    assert Suggestion.objects.exists() is (status != 302)


def test_a_suggested_count_that_left_the_bank_is_named_to_nobody_and_cannot_be_taken(
    coach, owner, teammate, other_teacher, visit
):
    count = make_routine(owner, title="Planted damson count")
    received = suggested(coach, count, to_teacher=teammate)
    suggested(other_teacher, count, to_teacher=teammate)
    count.retire()
    for reader in (teammate, other_teacher):
        page = visit(reader).get(reverse("suggestions")).text
        assert NOT_IN_BANK in page
        assert "damson" not in page
        assert f"/routines/{count.pk}/" not in page
    answer = visit(teammate).post(reverse("suggestion_answer", args=[received.pk]), {"answer": "copy"}, follow=True)
    assert "no longer in the bank" in answer.text
    assert not Routine.objects.filter(owner=teammate).exists()


def test_what_waits_stands_above_ones_own_plans(coach, teammate, routine, visit):
    assert "Suggested to you" not in visit(teammate).get(reverse("my_plans")).text
    suggested(coach, routine, to_teacher=teammate)
    assert "mulberry" in visit(teammate).get(reverse("my_plans")).text


def test_many_suggestions_take_as_many_queries_as_one(
    coach, owner, teammate, grade_two, visit, django_assert_num_queries
):
    client = visit(teammate)
    for number in range(9):
        count = make_routine(owner, notes=f"{number}")
        suggested(coach, count, to_grade=grade_two)
        suggested(teammate, count, to_teacher=owner)
        respond(client, suggested(coach, count, to_teacher=teammate), "decline")
        if number in (0, 8):
            client.get(reverse("suggestions"))
            with django_assert_num_queries(11):
                client.get(reverse("suggestions"))


def test_more_than_a_page_holds_is_said(coach, teammate, routine, visit, monkeypatch):
    monkeypatch.setattr(suggestions, "WAITING_AT_MOST", 2)
    client, said = visit(teammate), "Older ones follow when some are answered."
    for _time in range(3):
        assert said not in client.get(reverse("suggestions")).text
        suggested(coach, routine, to_teacher=teammate)
    page = client.get(reverse("suggestions"))
    assert said in page.text
    assert len(page.context["waiting"]) == 2


@pytest.mark.parametrize(("days", "words"), [(3, "by "), (0, "by "), (-1, "it was meant for ")])
def test_a_day_that_is_past_is_said_as_past(coach, teammate, routine, visit, days, words):
    until = timezone.localdate() + timedelta(days=days)
    suggested(coach, routine, to_teacher=teammate, by_when=until)
    client = visit(teammate)
    for path in ("/", "/suggestions/"):
        assert f"; {words}{day(until)}" in client.get(path).text
