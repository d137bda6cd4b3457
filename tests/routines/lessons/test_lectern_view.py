"""The lectern's page, its two questions, and the devices of a lesson."""

import pytest
from django.test import Client
from django.urls import reverse

from routines.lessons.recording import delete_lesson
from routines.models import LessonPass
from tests.routines.lessons.making import open_lesson, paired
from tests.routines.making import make_routine

HTMX = {"HX-Request": "true"}


@pytest.fixture
def lesson(owner):
    return open_lesson(owner)  # sevens from 4


def ask(client, lesson, **asked):
    return client.post(reverse("lesson_ask", args=[lesson.key]), asked, headers=HTMX)


def pair(lesson) -> str:
    return reverse("lesson_pair", args=[lesson.key])


def test_will_it_appear_says_where_or_between_which_counts(owner, visit, lesson):
    client = visit(owner)
    shown = lesson.version.read_plan().count.count()
    assert "is the 3rd count" in ask(client, lesson, value=shown.text(3)).text
    told = ask(client, lesson, probe=shown.text(3), value="what was typed before").text
    assert "is the 3rd count" in told
    assert "field-error" in ask(client, lesson, value="a cat").text
    assert "<html" not in told


def test_a_claim_is_judged_and_a_wrong_field_named(owner, visit, lesson):
    client = visit(owner)
    told = ask(
        client, lesson, **{"claim-saying": "jump", "claim-jump": "7", "claim-direction": "count", "check": "1"}
    ).text
    assert "It always holds." in told
    told = ask(
        client, lesson, **{"claim-saying": "jump", "claim-jump": "8", "claim-direction": "count", "check": "1"}
    ).text
    assert "l-verdict" in told
    assert "It always holds." not in told
    told = ask(client, lesson, **{"claim-saying": "jump", "claim-jump": "", "check": "1"}).text
    assert "field-error" in told
    told = ask(client, lesson, **{"claim-saying": "lands", "claim-multiple": ""}).text
    assert 'name="claim-multiple"' in told
    assert "aria-invalid" not in told
    assert "field-error" not in told


def test_the_questions_are_for_the_lectern_alone(owner, teammate, visit, lesson):
    assert ask(paired(Client(), lesson, "substitute"), lesson, value="11").status_code == 200
    assert ask(paired(Client(), lesson, "board"), lesson, value="11").status_code == 404
    assert ask(visit(teammate), lesson, value="11").status_code == 404
    assert visit(owner).get(reverse("lesson_ask", args=[lesson.key])).status_code == 405
    delete_lesson(lesson=lesson)
    assert ask(visit(owner), lesson, value="11").status_code == 404


def test_who_is_signed_out_is_told_so_in_the_sheet_itself(lesson):
    told = ask(Client(), lesson, value="11")
    assert told.status_code == 401
    assert "Sign in again" in told.text
    assert "<html" not in told.text


def test_the_page_holds_nothing_that_only_the_scripts_may_show(owner, visit, lesson):
    page = visit(owner).get(reverse("lesson_lectern", args=[lesson.key]))
    assert page.status_code == 200
    assert 'id="words"' in page.text
    assert 'id="names"' in page.text


def test_a_substitute_is_offered_neither_devices_nor_the_end(owner, visit, lesson):
    own = visit(owner).get(reverse("lesson_lectern", args=[lesson.key])).text
    guest = paired(Client(), lesson, "substitute").get(reverse("lesson_lectern", args=[lesson.key])).text
    for words in ("End the lesson", "Pair a device", "The log", "Open it again"):
        assert words in own
        assert words not in guest


def test_a_code_typed_on_the_lectern_is_answered_there(owner, visit, lesson):
    client = visit(owner)
    waiting, _secret = LessonPass.objects.wait(address="127.0.0.1")
    told = client.post(pair(lesson), {"code": waiting.code, "role": "board"}, headers=HTMX)
    assert told.status_code == 200
    assert "<html" not in told.text
    assert "The board is paired." in told.text
    assert "Disconnect" in told.text
    wrong = client.post(pair(lesson), {"code": "12"}, headers=HTMX)
    assert wrong.status_code == 422
    assert "Type the six digits" in wrong.text
    assert "<html" not in wrong.text


def test_a_device_is_disconnected_once_and_only_from_ones_own_lesson(owner, teammate, visit, lesson):
    device = paired(Client(), lesson)
    held = LessonPass.objects.get()
    address = reverse("lesson_disconnect", args=[lesson.key, held.pk])
    other = open_lesson(owner, routine=make_routine(owner, title="Other"))
    client = visit(owner)
    assert visit(teammate).post(address).status_code == 404
    assert client.get(address).status_code == 405
    client.post(reverse("lesson_disconnect", args=[other.key, held.pk]))
    assert device.get(reverse("lesson_board", args=[lesson.key])).status_code == 200
    assert "The device is disconnected." in client.post(address, headers=HTMX).text
    assert client.post(address).status_code == 302
    assert device.get(reverse("lesson_board", args=[lesson.key])).status_code != 200
