"""Notes on a count: read by all who may read it, changed and removed by who wrote them."""

import pytest
from django.urls import reverse

from routines.models import RoutineNote
from tests.routines.making import make_routine

EVERYONE = ["owner", "co_author", "teammate", "other_teacher", "coach", "administrator"]


@pytest.fixture
def note(owner, teammate) -> RoutineNote:
    return make_routine(owner).notes.create(by=teammate, text="planted mulberry")


@pytest.mark.parametrize("name", EVERYONE)
def test_who_may_read_the_count_reads_its_notes_and_its_writer_alone_changes_them(request, name, note, visit):
    person = request.getfixturevalue(name)
    client, own = visit(person), name == "teammate"
    page = client.get(reverse("routine", args=[note.routine_id])).text
    assert "mulberry" in page
    for address in (reverse("note_change", args=[note.pk]), reverse("note_remove", args=[note.pk])):
        assert (f'href="{address}"' in page) is own
        assert client.get(address).status_code == (200 if own else 403)
    changed = client.post(reverse("note_change", args=[note.pk]), {"text": "in other words"})
    assert changed.status_code == (302 if own else 403)
    note.refresh_from_db()
    assert (note.text == "in other words") is own
    assert client.post(reverse("note_remove", args=[note.pk])).status_code == (302 if own else 403)
    assert RoutineNote.objects.exists() is not own


@pytest.mark.parametrize("name", ["teammate", "other_teacher", "coach", "administrator"])
def test_a_note_on_a_draft_is_found_by_its_authors_alone(request, name, owner, visit):
    draft = make_routine(owner, shared=False, title="Planted damson count")
    note = draft.notes.create(by=owner, text="planted mulberry")
    client = visit(request.getfixturevalue(name))
    for address in (reverse("note_change", args=[note.pk]), reverse("note_remove", args=[note.pk])):
        for answer in (client.get(address), client.post(address, {"text": "x"})):
            assert answer.status_code == 404
            assert "damson" not in answer.text
            assert "mulberry" not in answer.text
    assert RoutineNote.objects.get().text == "planted mulberry"


def test_changing_begins_with_the_words_and_keeps_day_and_place(note, teammate, visit):
    client, at = visit(teammate), note.at
    page = client.get(reverse("note_change", args=[note.pk]))
    assert "planted mulberry" in page.text
    assert "Write the idea, not who said it." in page.text
    answer = client.post(reverse("note_change", args=[note.pk]), {"text": "the rows helped"})
    assert answer["Location"] == reverse("routine", args=[note.routine_id]) + "#notes"
    note.refresh_from_db()
    assert (note.text, note.at) == ("the rows helped", at)


@pytest.mark.parametrize(
    ("text", "sentence"),
    [("Maya said it.", "Is Maya a child?"), ("", "Write a few words first."), ("x" * 2001, "2000")],
)
def test_what_cannot_be_kept_comes_back(note, teammate, visit, text, sentence):
    answer = visit(teammate).post(reverse("note_change", args=[note.pk]), {"text": text})
    assert answer.status_code == 422
    assert sentence in answer.text
    assert text in answer.text
    note.refresh_from_db()
    assert note.text == "planted mulberry"


def test_removing_asks_first(note, teammate, visit):
    client = visit(teammate)
    assert "planted mulberry" in client.get(reverse("note_remove", args=[note.pk])).text
    assert RoutineNote.objects.exists()
