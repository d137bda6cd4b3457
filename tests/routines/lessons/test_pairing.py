"""A device in the classroom gets its place in one lesson by a code, and nothing else by it."""

import re
from datetime import timedelta

import pytest
from django.test import Client
from django.urls import URLPattern, URLResolver, get_resolver, reverse
from django.utils import timezone

from routines.lessons.recording import delete_lesson, end_lesson, reopen_lesson
from routines.models import Lesson, LessonEvent, LessonPass, PairingTries
from routines.models import lesson_pass as passes
from tests.routines.lessons.making import append, event, open_lesson, paired

WAIT, STATUS = "/board/", "/board/status/"


@pytest.fixture
def lesson(owner):
    return open_lesson(owner)


@pytest.fixture
def device(school):
    return Client()


def shown_code(device) -> str:
    page = device.get(WAIT).text
    (code,) = re.findall(r'class="waiting-code">(\d{3} \d{3})<', page)
    return code


def pair(teacher, lesson, code, role="board"):
    return teacher.post(reverse("lesson_pair", args=[lesson.key]), {"code": code, "role": role})


def test_a_typed_code_gives_the_waiting_device_the_board(owner, visit, device, lesson):
    code = shown_code(device)
    assert device.get(STATUS).json() == {"state": "waiting"}
    answer = pair(visit(owner), lesson, code)
    assert answer["Location"] == reverse("lesson_lectern", args=[lesson.key])
    board = reverse("lesson_board", args=[lesson.key])
    assert device.get(STATUS).json() == {"state": "ready", "address": board}
    assert device.get(board).status_code == 200
    assert device.get(WAIT)["Location"] == board


@pytest.mark.parametrize("typed", ["{0}{1}", "{0} {1}", " {0}-{1} "])
def test_a_code_may_be_typed_as_one_likes(owner, visit, device, lesson, typed):
    assert pair(visit(owner), lesson, typed.format(*shown_code(device).split())).status_code == 302


def test_a_substitute_gets_a_lectern(owner, visit, device, lesson):
    pair(visit(owner), lesson, shown_code(device), "substitute")
    lectern = reverse("lesson_lectern", args=[lesson.key])
    assert device.get(STATUS).json()["address"] == lectern
    page = device.get(lectern).text
    assert "End the lesson" not in page
    assert "Pair a device" not in page


def test_the_same_device_keeps_its_code_while_it_lasts(device):
    first = shown_code(device)
    assert shown_code(device) == first
    assert LessonPass.objects.count() == 1


def test_a_code_lasts_ten_minutes_then_the_device_shows_another(owner, visit, device, lesson):
    code = shown_code(device)
    LessonPass.objects.update(code_until=timezone.now() - timedelta(seconds=1))
    assert pair(visit(owner), lesson, code).status_code == 422
    assert device.get(STATUS).json() == {"state": "over"}
    assert shown_code(device) != code
    assert LessonPass.objects.count() == 1
    until = LessonPass.objects.get().code_until - timezone.now()
    assert timedelta(minutes=9, seconds=50) < until <= timedelta(minutes=10)


def test_a_code_is_used_up(owner, visit, device, lesson):
    code = shown_code(device)
    teacher = visit(owner)
    pair(teacher, lesson, code)
    assert pair(teacher, lesson, code).status_code == 422


def test_two_devices_never_show_one_code(device, monkeypatch):
    numbers = iter([7, 7, 8])
    monkeypatch.setattr(passes.secrets, "randbelow", lambda most: next(numbers))
    assert (shown_code(device), shown_code(Client())) == ("000 007", "000 008")


@pytest.mark.parametrize("code", ["", "12345", "1234567", "abcdef", "１２３４５６", "12 34", "0" * 200])
def test_what_is_no_code_is_said_and_not_counted(owner, visit, lesson, code):
    answer = pair(visit(owner), lesson, code)
    assert answer.status_code == 422
    assert "Type the six digits that the device shows." in answer.text
    assert not PairingTries.objects.filter(wrong__gt=0).exists()


def test_wrong_codes_slow_down_after_five_and_say_for_how_long(owner, teammate, visit, device, lesson):
    code, teacher = shown_code(device), visit(owner)
    wrong = "000000" if code != "000 000" else "000001"
    for _ in range(5):
        answer = pair(teacher, lesson, wrong)
        assert answer.status_code == 422
        assert "No waiting device shows this code." in answer.text
    stopped = pair(teacher, lesson, code)
    assert stopped.status_code == 429
    assert "Try again in 30 seconds." in stopped.text
    assert device.get(STATUS).json() == {"state": "waiting"}
    # counted by person: a colleague is not slowed down
    assert pair(visit(teammate), open_lesson(teammate), wrong).status_code == 422

    PairingTries.objects.filter(user=owner).update(last_at=timezone.now() - timedelta(seconds=31))
    assert pair(teacher, lesson, wrong).status_code == 422
    assert "Try again in a minute." in pair(teacher, lesson, code).text
    PairingTries.objects.filter(user=owner).update(last_at=timezone.now() - timedelta(seconds=61))
    assert pair(teacher, lesson, code).status_code == 302
    assert PairingTries.objects.get(user=owner).wrong == 0


@pytest.mark.parametrize(("wrong", "seconds"), [(0, 0), (4, 0), (5, 30), (6, 60), (9, 480), (10, 600), (200, 600)])
def test_the_wait_doubles_up_to_ten_minutes(owner, wrong, seconds):
    now = timezone.now()
    assert PairingTries(user=owner, wrong=wrong, last_at=now).wait_left(now) == timedelta(seconds=seconds)


def test_the_cookie_is_kept_from_scripts_and_other_sites(device, settings):
    device.get(WAIT)
    cookie = device.cookies["countfold_pass"]
    assert (cookie["httponly"], cookie["samesite"], cookie["secure"]) == (True, "Lax", "")
    settings.HTTPS = True
    other = Client()
    other.get(WAIT, secure=True)
    assert other.cookies["countfold_pass"]["secure"] is True


def test_the_secret_is_kept_only_as_its_hash(device):
    device.get(WAIT)
    assert device.cookies["countfold_pass"].value not in str(LessonPass.objects.values())


def test_many_waiting_devices_are_bounded(device, monkeypatch):
    monkeypatch.setattr(passes, "MANY_FROM_ONE_ADDRESS", 3)
    for _ in range(3):
        Client().get(WAIT)
    answer = device.get(WAIT)
    assert answer.status_code == 503
    assert "Too many devices are waiting" in answer.text
    LessonPass.objects.update(code_until=timezone.now() - timedelta(minutes=11))
    assert device.get(WAIT).status_code == 200
    assert LessonPass.objects.count() == 1


def test_a_browser_without_cookies_is_told_so_once(device):
    assert device.get(STATUS).json() == {"state": "lost"}


# The QR


def test_the_code_is_drawn_to_be_scanned(device):
    shown_code(device)
    drawn = device.get(reverse("board_code"))
    assert drawn["Content-Type"] == "image/svg+xml"
    assert "no-store" in drawn["Cache-Control"]
    assert b"<svg" in drawn.content
    assert Client().get(reverse("board_code")).status_code == 404


def test_what_the_qr_opens_asks_which_lesson_and_pairs(owner, visit, device, lesson):
    address = reverse("lesson_pair_code", args=[shown_code(device).replace(" ", "")])
    teacher = visit(owner)
    page = teacher.get(address)
    assert f'value="{lesson.key}"' in page.text
    assert teacher.post(address, {"lesson": lesson.key, "role": "board"}).status_code == 302
    assert device.get(STATUS).json()["state"] == "ready"


def test_what_the_qr_opens_offers_only_ones_own_open_lessons(owner, teammate, visit, device, lesson):
    code = shown_code(device).replace(" ", "")
    address = reverse("lesson_pair_code", args=[code])
    stranger = visit(teammate)
    assert "No lesson of yours is open." in stranger.get(address).text
    assert stranger.post(address, {"lesson": lesson.key, "role": "board"}).status_code == 404
    assert stranger.post(address, {"lesson": "no key"}).status_code == 404
    end_lesson(lesson=lesson)
    assert str(lesson.key) not in visit(owner).get(address).text
    assert "sign-in" in Client().get(address)["Location"]


def test_open_lessons_that_are_not_offered_are_counted(owner, visit, device, lesson, monkeypatch):
    monkeypatch.setattr("routines.lessons.views.pairing.LESSONS_OFFERED", 1)
    open_lesson(owner)
    address = reverse("lesson_pair_code", args=[shown_code(device).replace(" ", "")])
    page = visit(owner).get(address).text
    assert page.count('name="lesson"') == 1
    assert "These are the 1 latest of 2 open lessons." in page


def test_the_page_of_a_code_does_not_tell_whether_a_device_shows_it(owner, visit, device, lesson):
    code = shown_code(device).replace(" ", "")
    other = "000000" if code != "000000" else "000001"
    teacher = visit(owner)
    pages = [re.sub(r'value="\w{64}"', "", teacher.get(f"/pair/{one}/").text.replace(one, "")) for one in (code, other)]
    pages = [re.sub(r'"X-CSRFToken": "\w+"', "", page) for page in pages]
    assert pages[0] == pages[1]
    for _ in range(5):
        assert teacher.post(f"/pair/{other}/", {"lesson": lesson.key}).status_code == 422
    assert teacher.post(f"/pair/{code}/", {"lesson": lesson.key}).status_code == 429


@pytest.mark.parametrize("code", ["12345", "1234567", "abcdef"])
def test_an_address_without_six_digits_is_none(owner, visit, code):
    assert visit(owner).get(f"/pair/{code}/").status_code == 404


# What a pass ends with


def test_an_ended_lesson_takes_no_new_device(owner, visit, device, lesson):
    end_lesson(lesson=lesson)
    answer = pair(visit(owner), lesson, shown_code(device))
    assert answer.status_code == 422
    assert "This lesson has ended." in answer.text


def test_after_the_lesson_the_device_can_wait_for_another(owner, visit, lesson):
    device = paired(Client(), lesson)
    end_lesson(lesson=lesson)
    code = shown_code(device)
    other = open_lesson(owner)
    pair(visit(owner), other, code)
    assert device.get(STATUS).json()["address"] == reverse("lesson_board", args=[other.key])


def test_a_lesson_opened_again_needs_no_new_code(lesson):
    device = paired(Client(), lesson)
    append(lesson, event(2))
    end_lesson(lesson=lesson)
    reopen_lesson(lesson=lesson)
    assert device.get(reverse("lesson_board", args=[lesson.key])).status_code == 200


def test_a_device_can_be_given_another_lesson_while_one_is_open(lesson):
    device = paired(Client(), lesson)
    before = device.cookies["countfold_pass"].value
    assert device.get(f"{WAIT}?again").status_code == 200
    assert device.cookies["countfold_pass"].value != before


@pytest.mark.parametrize("over", ["quiet", "deleted"])
def test_a_pass_ends_with_its_lesson(lesson, over):
    device = paired(Client(), lesson)
    append(lesson, event(2))
    if over == "quiet":
        long_ago = timezone.now() - timedelta(hours=4, minutes=1)
        Lesson.objects.update(last_event_at=long_ago)
        LessonEvent.objects.update(received_at=long_ago)
    else:
        delete_lesson(lesson=lesson)
    assert device.get(reverse("lesson_board", args=[lesson.key])).status_code == 404
    assert device.get("/")["Location"].startswith("/sign-in/")  # as for anybody who is signed out


def every_address(resolver: URLResolver, before: str = ""):
    for entry in resolver.url_patterns:
        path = before + str(entry.pattern)
        if isinstance(entry, URLPattern):
            yield path
        else:
            yield from every_address(entry, path)


FILLED_IN = {
    "<uuid:key>": "{key}", "<int:pk>": "{pk}", "<int:grade>": "1", "<int:standard>": "1",
    "<slug:area>": "whole", "<slug:name>": "plan",
    "<str:token>": "token", "<six_digits:code>": "123456",
}  # fmt: skip
REACHED = {
    "board": {"sign-in/", "board/", "board/status/", "lessons/worker.js", "lessons/{key}/board/",
              "lessons/{key}/board.json", "lessons/{key}/events/"},
    "substitute": {"sign-in/", "board/", "board/status/", "lessons/worker.js", "lessons/{key}/board/",
                   "lessons/{key}/board.json", "lessons/{key}/events/", "lessons/{key}/lectern/",
                   "lessons/{key}/lectern.json", "lessons/{key}/ask/"},
}  # fmt: skip


@pytest.mark.parametrize("role", ["board", "substitute"])
def test_a_browser_with_a_pass_and_nobody_signed_in_finds_nothing_else(lesson, role, settings, tmp_path):
    device = paired(Client(), lesson, role)
    reached = set()
    for pattern in every_address(get_resolver()):
        path = pattern
        for part, value in FILLED_IN.items():
            path = path.replace(part, value)
        assert "<" not in path, f"say in FILLED_IN what stands for the parts of {pattern}"
        address = "/" + path.format(key=lesson.key, pk=lesson.routine_id)
        for ask in (device.get, device.post):
            if ask(address).status_code not in (404, 405):
                reached.add(path)
    missing = set() if finders_find_worker() else {"lessons/worker.js"}
    assert reached == REACHED[role] - missing


def finders_find_worker() -> bool:
    from django.contrib.staticfiles import finders

    return finders.find("js/lesson/worker.js") is not None


def test_the_device_can_be_taken_over_by_signing_in(owner, lesson):
    device = paired(Client(), lesson)
    assert device.get("/sign-in/").status_code == 200
    assert device.get("/lessons/").status_code == 404
    device.force_login(owner, backend="accounts.backends.NameOrEmailBackend")
    assert device.get("/lessons/").status_code == 200


def test_a_waiting_device_is_as_any_signed_out_one(device):
    device.get(WAIT)
    assert device.get("/lessons/")["Location"].startswith("/sign-in/")


def test_a_made_up_cookie_is_no_pass(device, lesson):
    device.cookies["countfold_pass"] = "made up"
    assert device.get(reverse("lesson_board", args=[lesson.key])).status_code == 404
    assert device.get("/lessons/")["Location"].startswith("/sign-in/")
