"""Words that come after they were removed, from a page opened or an event made before: they do not come back, what else
was typed stays, and whoever types them on a new page means them.
"""

from datetime import timedelta

import pytest
from django.urls import reverse
from django.utils import timezone

from routines.erasing.doing import begin, finish
from routines.erasing.places import CALLED
from routines.models import LessonEvent, PlanDraft, Reflection, RoutineNote, Suggestion
from routines.words_erased.matching import mark_of
from tests.routines.lessons.making import event, open_lesson
from tests.routines.making import make_lesson, make_routine

NAME = "Zebulina"


@pytest.fixture(autouse=True)
def own_data_folder(settings, tmp_path):
    settings.DATA_DIR = tmp_path


@pytest.fixture(autouse=True)
def files_left_alone(monkeypatch):
    """The database's file cannot be written anew inside a test's transaction, and there are no backups."""
    monkeypatch.setattr("routines.erasing.doing.rewrite_pages", lambda: None)


@pytest.fixture
def routine(owner):
    return make_routine(owner, title="Sevens")


def erase(by, *, whose=None, places=tuple(CALLED), done=True):
    begin(*mark_of(NAME), by=by, places=places, whose=whose)
    if done:
        finish()


def page_of(routine) -> str:
    return reverse("routine", args=[routine.pk])


def form_of(page) -> dict:
    """What the browser would send of the page's form: as it was opened."""
    return {"opened": page.text.split('name="opened" value="')[1].split('"')[0]}


# Notes


def test_a_note_typed_before_comes_back_without_the_words_and_with_the_rest(visit, owner, administrator, routine):
    client = visit(owner)
    sent = form_of(client.get(page_of(routine))) | {"text": "zebulina’s tens fall in a column"}
    erase(administrator)
    answer = client.post(reverse("routine_note", args=[routine.pk]), sent)
    assert answer.status_code == 422
    assert "Removed everywhere after this page was opened" in answer.text
    assert "“zebulina”" in answer.text
    assert "[words removed]’s tens fall in a column" in answer.text
    assert not RoutineNote.objects.exists()
    again = form_of(answer) | {"text": "[words removed]’s tens fall in a column"}
    assert client.post(reverse("routine_note", args=[routine.pk]), again).status_code == 302


def test_a_note_without_the_words_is_kept_as_ever(visit, owner, administrator, routine):
    client = visit(owner)
    sent = form_of(client.get(page_of(routine))) | {"text": "the tens fall in a column"}
    erase(administrator)
    assert client.post(reverse("routine_note", args=[routine.pk]), sent).status_code == 302


def test_on_a_page_opened_afterwards_the_word_is_meant(visit, owner, administrator, routine):
    client = visit(owner)
    erase(administrator)
    sent = form_of(client.get(page_of(routine))) | {"text": "Zebulina is a place in our story", "no_names": "on"}
    assert client.post(reverse("routine_note", args=[routine.pk]), sent).status_code == 302
    begin(*mark_of("Otherword"), by=administrator, places=tuple(CALLED), whose=None)
    finish()
    assert NAME in RoutineNote.objects.get().text, "a later removal of other words takes nothing that was meant"


def test_until_the_removal_is_at_its_end_every_page_is_from_before(visit, owner, administrator, routine):
    client = visit(owner)
    erase(administrator, done=False)
    sent = form_of(client.get(page_of(routine))) | {"text": f"{NAME} said so"}
    assert client.post(reverse("routine_note", args=[routine.pk]), sent).status_code == 422
    assert not RoutineNote.objects.exists()


def test_what_a_colleague_removed_from_her_own_texts_stays_in_mine(visit, owner, teammate, routine):
    client = visit(owner)
    sent = form_of(client.get(page_of(routine))) | {"text": f"{NAME} tells it", "no_names": "on"}
    erase(teammate, whose=teammate.pk)
    assert client.post(reverse("routine_note", args=[routine.pk]), sent).status_code == 302
    assert NAME in RoutineNote.objects.get().text


@pytest.mark.parametrize("opened", ["", "yesterday", "2026-11-03T10:00:00", "x" * 5000])
def test_a_moment_that_cannot_be_read_is_none(visit, owner, routine, opened):
    sent = {"text": "the tens", "opened": opened}
    assert visit(owner).post(reverse("routine_note", args=[routine.pk]), sent).status_code == 302


def test_a_form_sent_after_its_session_ended_carries_when_it_was_opened(
    visit, signed_out, owner, administrator, routine
):
    sent = form_of(visit(owner).get(page_of(routine))) | {"text": f"{NAME} said so"}
    answer = signed_out.post(reverse("routine_note", args=[routine.pk]), sent)
    assert sent["opened"] in answer.text


# Plans


def plan_form(page) -> dict:
    return {name: list(texts) for name, texts in page.context["form"].typed.items()} | form_of(page)


def test_a_plan_open_in_another_tab_is_saved_without_them_once_it_was_looked_over(visit, owner, administrator, routine):
    client, address = visit(owner), reverse("plan_edit", args=[routine.pk])
    sent = plan_form(client.get(address)) | {"notes": [f"Ask {NAME} first, then count on"]}
    erase(administrator)
    answer = client.post(address, sent)
    assert answer.status_code == 422
    assert "Removed everywhere after this page was opened" in answer.text
    assert "Ask [words removed] first, then count on" in answer.text
    assert routine.versions.count() == 1
    assert NAME not in str(PlanDraft.objects.get().fields)
    again = plan_form(answer)
    assert client.post(address, again).status_code == 302
    routine.refresh_from_db()
    assert routine.plan.notes == "Ask [words removed] first, then count on"


def test_a_late_autosave_keeps_all_but_the_words_and_says_so(visit, owner, administrator, routine):
    client = visit(owner)
    sent = plan_form(client.get(reverse("plan_edit", args=[routine.pk]))) | {"notes": [f"{NAME}, then count on"]}
    client.post(reverse("plan_draft", args=[routine.pk]), sent)
    assert NAME in str(PlanDraft.objects.get().fields)
    erase(administrator)
    answer = client.post(reverse("plan_draft", args=[routine.pk]), sent, headers={"HX-Request": "true"})
    assert answer.status_code == 422
    assert answer.text.startswith("Not kept. Removed everywhere")
    assert PlanDraft.objects.get().fields["typed"]["notes"] == ["[words removed], then count on"]


def test_a_button_that_changes_the_plan_brings_nothing_back(visit, owner, administrator, routine):
    client = visit(owner)
    sent = plan_form(client.get(reverse("plan_edit", args=[routine.pk]))) | {"notes": [f"{NAME}, then count on"]}
    erase(administrator)
    client.post(
        reverse("plan_change", args=[routine.pk]), sent | {"change": "add stops"}, headers={"HX-Request": "true"}
    )
    assert NAME not in "".join(str(draft.fields) for draft in PlanDraft.objects.all())


# Lessons


def log_form(page) -> dict:
    form = page.context["form"]
    return {name: form[name].value() or "" for name in form.fields if name not in ("practice", "no_names")} | form_of(
        page
    )


def test_a_log_open_in_another_tab_is_kept_without_them_once_it_was_looked_over(visit, owner, administrator, routine):
    lesson = make_lesson(routine, owner)
    client, address = visit(owner), lesson.get_absolute_url()
    sent = log_form(client.get(address)) | {
        "stuck": f"at the hundred, with {NAME}",
        "next_step": "tens",
        "heard-8": [NAME],
    }
    erase(administrator)
    answer = client.post(address, sent)
    assert answer.status_code == 422
    assert "at the hundred, with [words removed]" in answer.text
    assert Reflection.objects.get().stuck == ""
    assert client.post(address, log_form(answer)).status_code == 302
    assert Reflection.objects.get().next_step == "tens"
    assert NAME not in str(list(LessonEvent.objects.values_list("data", flat=True)))


def post_events(client, lesson, *events, now=None):
    body = {"epoch": None, "events": list(events)} | ({"now": now} if now else {})
    return client.post(reverse("lesson_events", args=[lesson.key]), body, content_type="application/json").json()


def notice(t, at, words=f"{NAME}: tens go up"):
    return event(t, "notice.add", {"text": words, "expected": None}) | {"at": at.isoformat()}


def test_events_made_before_and_sent_after_are_accepted_as_stubs(visit, owner, administrator, routine):
    lesson, client = open_lesson(owner, routine=routine), visit(owner)
    before = timezone.now()
    erase(administrator)
    held, other = notice(5, before), notice(6, before, "tens go up")
    answer = post_events(client, lesson, held, other)
    assert set(answer["accepted"]) == {held["id"], other["id"]}
    stub = LessonEvent.objects.get(pk=held["id"])
    assert (stub.erased, stub.data) == (True, {})
    assert LessonEvent.objects.get(pk=other["id"]).data["text"] == "tens go up"
    assert post_events(client, lesson, held)["accepted"] == {held["id"]: stub.seq}


def test_an_event_made_afterwards_is_meant(visit, owner, administrator, routine):
    lesson, client = open_lesson(owner, routine=routine), visit(owner)
    erase(administrator)
    later = notice(5, timezone.now())
    post_events(client, lesson, later)
    assert LessonEvent.objects.get(pk=later["id"]).data["text"] == f"{NAME}: tens go up"


@pytest.mark.parametrize("hours", [-5, 5])
def test_a_device_whose_clock_is_wrong_says_so_and_is_understood(visit, owner, administrator, routine, hours):
    lesson, client, wrong = open_lesson(owner, routine=routine), visit(owner), timedelta(hours=hours)
    before = notice(5, timezone.now() - timedelta(minutes=1) + wrong)
    erase(administrator)
    after = notice(6, timezone.now() + wrong)
    post_events(client, lesson, before, after, now=(timezone.now() + wrong).isoformat())
    assert LessonEvent.objects.get(pk=before["id"]).erased
    assert not LessonEvent.objects.get(pk=after["id"]).erased


@pytest.mark.parametrize("now", ["soon", 5, {"a": 1}, "0001-01-01T00:00:00Z", "9999-12-31T23:59:59Z"])
def test_a_clock_that_cannot_be_read_loses_no_event(visit, owner, administrator, routine, now):
    lesson, client = open_lesson(owner, routine=routine), visit(owner)
    erase(administrator)
    sent = notice(5, timezone.now(), "tens go up")
    assert sent["id"] in post_events(client, lesson, sent, now=now)["accepted"]
    assert LessonEvent.objects.get(pk=sent["id"]).data["text"] == "tens go up"


def test_where_lessons_were_not_chosen_their_events_stay(visit, owner, administrator, routine):
    lesson, client = open_lesson(owner, routine=routine), visit(owner)
    sent = notice(5, timezone.now())
    erase(administrator, places=("routines.RoutineNote.text",))
    post_events(client, lesson, sent)
    assert not LessonEvent.objects.get(pk=sent["id"]).erased


# Between colleagues


def test_a_suggestion_and_a_changed_note_come_back_without_the_words(visit, owner, teammate, administrator, routine):
    client, note = visit(owner), routine.notes.create(by=owner, text="old")
    suggest, change = reverse("suggest", args=[routine.pk]), reverse("note_change", args=[note.pk])
    band = owner.class_groups.get().grade.band_id
    sent = {
        suggest: form_of(client.get(suggest)) | {"to": f"band-{band}", "why": "as with Zebulina’s tens"},
        change: form_of(client.get(change)) | {"text": "as with Zebulina’s tens"},
    }
    erase(administrator)
    for address, fields in sent.items():
        answer = client.post(address, fields)
        assert answer.status_code == 422
        assert "Removed everywhere after this page was opened" in answer.text
        assert "as with [words removed]’s tens" in answer.text
    note.refresh_from_db()
    assert note.text == "old"
    assert not Suggestion.objects.exists()
