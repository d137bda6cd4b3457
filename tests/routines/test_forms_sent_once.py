"""Every form that makes something: sent three times at once or again later, it makes one."""

import re

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.urls import reverse

from routines.exchange.writing import written
from routines.jobs.queue import ask
from routines.jobs.runner import do_next
from routines.models import ImportFile, Job, Lesson, Routine, RoutineNote
from routines.paper.views import booklets as booklet
from tests.at_once import at_once
from tests.routines.making import SEVENS, make_routine

pytestmark = pytest.mark.django_db(transaction=True)

LESSON = {"taught_on": "2026-09-15", "outcome": "as-planned", "sharing": "only-me", "seen": "the columns"}


@pytest.fixture
def routine(owner):
    return make_routine(owner)


def key_in(page, address: str) -> str:
    """The key of the form on this page that is sent to `address`."""
    form = re.search(rf'<form[^>]*action="{re.escape(address)}".*?</form>', page.text, re.DOTALL)
    return re.search(r'name="form_key" value="([^"]+)"', form[0] if form else page.text)[1]


def thrice(visit, person, address: str, fields: dict) -> set[str]:
    """Where three sends at once of one form lead."""
    answers = at_once(*[lambda: visit(person).post(address, fields)] * 3)
    assert {answer.status_code for answer in answers} == {302}
    return {answer["Location"] for answer in answers}


def test_one_copy(owner, visit, routine):
    address = reverse("routine_copy", args=[routine.pk])
    key = key_in(visit(owner).get(reverse("routine", args=[routine.pk])), address)
    led = thrice(visit, owner, address, {"form_key": key})
    copy = Routine.objects.get(copied_from=routine)
    assert led == {reverse("plan_edit", args=[copy.pk])}
    visit(owner).post(address, {"form_key": key, "more": "than the page has"})
    assert Routine.objects.filter(copied_from=routine).count() == 1


def test_two_copies_where_two_are_wanted(owner, visit, routine):
    for _page in range(2):
        address = reverse("routine_copy", args=[routine.pk])
        key = key_in(visit(owner).get(reverse("routine", args=[routine.pk])), address)
        visit(owner).post(address, {"form_key": key})
    assert Routine.objects.filter(copied_from=routine).count() == 2


def test_one_note(teammate, visit, routine):
    address = reverse("routine_note", args=[routine.pk])
    key = key_in(visit(teammate).get(reverse("routine", args=[routine.pk])), address)
    led = thrice(visit, teammate, address, {"form_key": key, "text": "The columns helped."})
    assert led == {reverse("routine", args=[routine.pk]) + "#notes"}
    assert RoutineNote.objects.count() == 1


def test_a_note_changed_after_back_is_shown_again_with_the_choice(teammate, visit, routine):
    client, address = visit(teammate), reverse("routine_note", args=[routine.pk])
    key = key_in(client.get(reverse("routine", args=[routine.pk])), address)
    client.post(address, {"form_key": key, "text": "The columns helped."})
    answer = client.post(address, {"form_key": key, "text": "The rows helped even more."})
    assert answer.status_code == 422
    assert "This page was sent before" in answer.text
    assert "The rows helped even more." in answer.text
    assert RoutineNote.objects.count() == 1
    fresh = key_in(answer, address)
    assert fresh != key
    client.post(address, {"form_key": fresh, "text": "The rows helped even more."})
    assert RoutineNote.objects.count() == 2


def test_one_lesson(owner, visit, routine):
    address = reverse("lesson_taught", args=[routine.pk])
    fields = {**LESSON, "class_group": owner.class_groups.get().pk}
    led = thrice(visit, owner, address, {**fields, "form_key": key_in(visit(owner).get(address), address)})
    lesson = Lesson.objects.get()
    assert led == {lesson.get_absolute_url()}
    assert lesson.events.filter(kind="filled").count() == 1


def test_a_lesson_changed_after_back_is_not_counted_twice_unasked(owner, visit, routine):
    client, address = visit(owner), reverse("lesson_taught", args=[routine.pk])
    fields = {**LESSON, "class_group": owner.class_groups.get().pk, "form_key": key_in(visit(owner).get(address), "")}
    kept = client.post(address, fields)["Location"]
    answer = client.post(address, {**fields, "noticed": "the rows"})
    assert answer.status_code == 422
    assert Lesson.objects.count() == 1
    assert f'<a href="{kept}">what it held then is kept</a>' in answer.text
    assert "the rows" in answer.text


def test_a_wrong_try_does_not_burn_the_key(owner, visit, routine):
    client, address = visit(owner), reverse("lesson_taught", args=[routine.pk])
    fields = {**LESSON, "class_group": owner.class_groups.get().pk, "form_key": key_in(visit(owner).get(address), "")}
    assert client.post(address, {**fields, "taught_on": "2199-01-01"}).status_code == 422
    assert client.post(address, fields).status_code == 302
    assert Lesson.objects.count() == 1


def test_one_file_looked_into(owner, visit):
    address, content = reverse("import"), written([SEVENS])
    key = key_in(visit(owner).get(address), "")

    def send():
        return visit(owner).post(address, {"form_key": key, "file": SimpleUploadedFile("counts.json", content)})

    led = {answer["Location"] for answer in at_once(send, send, send)}
    assert led == {reverse("import_look", args=[ImportFile.objects.get().key])}
    other = {"form_key": key, "file": SimpleUploadedFile("others.json", written([SEVENS, SEVENS]))}
    assert visit(owner).post(address, other)["Location"] not in led
    assert ImportFile.objects.get().name == "others.json"


def test_a_file_is_added_once_however_often_the_button_is_pressed(owner, visit):
    client = visit(owner)
    content = written([SEVENS.changed(title=f"Sevens {n}") for n in range(4)])
    client.post(reverse("import"), {"file": SimpleUploadedFile("counts.json", content)})
    address = reverse("import_add", args=[ImportFile.objects.get().key])
    at_once(*[lambda: visit(owner).post(address)] * 3)
    assert do_next(Job.Kind.IMPORT)
    assert not do_next(Job.Kind.IMPORT)
    assert Routine.objects.count() == 4


def test_one_booklet(owner, visit, routine, monkeypatch):
    begun = []

    def begin(request, form):
        begun.append(form.cleaned_data["title"])
        return ask(Job.Kind.BOOKLET, owner=request.user, title=form.cleaned_data["title"], total=1)

    monkeypatch.setattr(booklet, "_start", begin)
    address = reverse("booklet_choose")
    fields = {"title": "Plums", "routine": [routine.pk], "contents": ["plan"], "language": ""}
    led = thrice(visit, owner, address, {**fields, "form_key": key_in(visit(owner).get(address), "")})
    assert len(led) == 1
    assert begun == ["Plums"]


def test_a_co_author_taken_in_twice_is_taken_in(owner, co_author, visit, routine):
    address = reverse("routine_co_authors", args=[routine.pk])
    client = visit(owner)
    for _time in range(2):
        answer = client.post(address, {"person": co_author.pk}, follow=True)
        assert "can change this plan now" in answer.text
        assert "Choose a colleague" not in "".join(map(str, answer.context["messages"]))
    assert list(routine.co_authors.all()) == [co_author]
    at_once(*[lambda: visit(owner).post(address, {"person": co_author.pk})] * 3)
    assert routine.co_authors.count() == 1
