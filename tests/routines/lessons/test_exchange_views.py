"""Sending and hearing events over the network: who, what is answered, and that nothing is lost."""

import json
import uuid
from datetime import timedelta

import pytest
from django.db import OperationalError
from django.test import Client
from django.urls import reverse
from django.utils import timezone

from accounts.models import School
from routines.lessons.kinds import KINDS
from routines.lessons.recording import delete_lesson, end_lesson
from routines.lessons.views import exchange
from routines.models import Lesson, LessonEvent, LessonPass, RoutineVersion
from tests.routines.lessons.making import append, event, identity, open_lesson, paired
from tests.routines.making import make_routine


@pytest.fixture
def lesson(owner):
    return open_lesson(owner)


@pytest.fixture
def second_teacher(owner, teammate):
    """Teaches the owner's class with her."""
    owner.class_groups.get().teachers.add(teammate)
    return teammate


def address(lesson_or_key) -> str:
    return reverse("lesson_events", args=[getattr(lesson_or_key, "key", lesson_or_key)])


def send(client, lesson, *events, epoch=None, **how):
    body = json.dumps({"epoch": epoch, "events": list(events)})
    return client.post(address(lesson), body, content_type="application/json", **how)


def hear(client, lesson, after=0):
    return client.get(address(lesson), {"after": after})


def test_what_is_sent_is_heard_once_and_in_order(owner, visit, lesson):
    client = visit(owner)
    one, two = event(2), event(3, "cover", {"n": 2})
    told = send(client, lesson, one, two).json()
    assert told["accepted"] == {one["id"]: 2, two["id"]: 3}
    assert told["rejected"] == {}
    assert told["last"] == 3
    answer = hear(client, lesson, after=1).json()
    assert [(row["id"], row["seq"]) for row in answer["events"]] == [(one["id"], 2), (two["id"], 3)]
    assert (answer["last"], answer["more"], answer["ended"]) == (3, False, False)
    assert hear(client, lesson, after=3).json()["events"] == []


def test_an_answer_that_was_lost_makes_no_second_row(owner, visit, lesson):
    client = visit(owner)
    batch = [event(t) for t in range(2, 32)]
    first = send(client, lesson, *batch).json()["accepted"]
    assert send(client, lesson, *batch).json()["accepted"] == first
    assert send(client, lesson, *batch[10:], event(40)).json()["last"] == 32
    assert lesson.events.count() == 32


def test_a_refused_event_says_why_and_the_others_are_kept(owner, visit, lesson):
    good, bad = event(2), event(3, data={"n": 99, "text": "4", "over": None})
    told = send(visit(owner), lesson, bad, good, "junk").json()
    assert list(told["accepted"]) == [good["id"]]
    assert told["rejected"][bad["id"]] == {
        "reason": "unknown-term",
        "words": "There is no count number 99 here; the last is 70.",
    }
    assert told["rejected"]["2"]["reason"] == "malformed"


def test_at_most_five_hundred_are_told_at_once(owner, visit, lesson):
    for first in range(0, 600, 100):
        append(lesson, *(event(2, "cover", {"n": 1}) for _ in range(first, first + 100)))
    client = visit(owner)
    page = hear(client, lesson).json()
    assert (len(page["events"]), page["last"], page["more"]) == (500, 500, True)
    rest = hear(client, lesson, after=500).json()
    assert (len(rest["events"]), rest["last"], rest["more"]) == (101, 601, False)


def test_to_ask_whether_there_is_news_reads_the_lesson_alone(owner, visit, lesson, django_assert_max_num_queries):
    """Sixty devices ask every second: no plan, class or teacher is read with it."""
    client = visit(owner)
    hear(client, lesson)
    lesson.refresh_from_db()
    with django_assert_max_num_queries(4) as asked:
        assert hear(client, lesson, after=lesson.last_seq).json()["events"] == []
    assert [query["sql"] for query in asked.captured_queries if " JOIN " in query["sql"]] == []


def test_a_board_goes_on_past_what_it_may_not_hear(visit, lesson):
    for _ in range(6):
        append(lesson, *(event(2, "notice.add", {"text": "planted", "expected": None}) for _ in range(100)))
    append(lesson, event(3))
    board = paired(Client(), lesson)
    page = hear(board, lesson).json()
    assert (page["events"], page["last"], page["more"]) == ([], 500, True)
    rest = hear(board, lesson, after=500).json()
    assert ([row["kind"] for row in rest["events"]], rest["last"], rest["more"]) == (["term.write"], 602, False)


@pytest.mark.parametrize("after", ["", "-1", "x", "99999999999999999999", "1.5", "٣"])
def test_an_after_that_is_no_number_begins_at_a_bound(owner, visit, lesson, after):
    assert hear(visit(owner), lesson, after=after).status_code == 200


def test_no_answer_is_kept_in_between(owner, visit, lesson):
    client = visit(owner)
    for answer in (
        hear(client, lesson),
        send(client, lesson, event(2)),
        client.get(reverse("lesson_board_json", args=[lesson.key])),
        client.get(reverse("lesson_lectern_json", args=[lesson.key])),
        client.get(reverse("board_status")),
        hear(Client(), lesson),
    ):
        assert answer["Cache-Control"] == "private, no-store"
        assert answer["Content-Type"].startswith("application/json")


# Who may


def statuses(client, lesson) -> dict[str, int]:
    """What each address of a lesson answers to this browser."""
    key = [lesson.key]
    return {
        "hear": hear(client, lesson).status_code,
        "send": send(client, lesson, event(5)).status_code,
        "board.json": client.get(reverse("lesson_board_json", args=key)).status_code,
        "lectern.json": client.get(reverse("lesson_lectern_json", args=key)).status_code,
        "board": client.get(reverse("lesson_board", args=key)).status_code,
        "lectern": client.get(reverse("lesson_lectern", args=key)).status_code,
        "pair": client.get(reverse("lesson_pair", args=key)).status_code,
        "log": client.get(reverse("lesson", args=key)).status_code,
        "ask to delete": client.get(reverse("lesson_delete", args=key)).status_code,
    }


EVERYTHING = {
    "hear": 200, "send": 200, "board.json": 200, "lectern.json": 200, "board": 200, "lectern": 200, "pair": 200,
    "log": 200, "ask to delete": 200,
}  # fmt: skip
NOTHING = dict.fromkeys(EVERYTHING, 404)


def test_the_lessons_teacher_opens_everything(owner, visit, lesson):
    assert statuses(visit(owner), lesson) == EVERYTHING


def test_a_second_teacher_of_the_class_teaches_and_reads_no_log(second_teacher, visit, lesson):
    assert statuses(visit(second_teacher), lesson) == {**EVERYTHING, "log": 404, "ask to delete": 404}


def test_a_second_teacher_is_there_while_the_lesson_is_on(second_teacher, visit, lesson):
    append(lesson, event(2))
    Lesson.objects.update(last_event_at=timezone.now() - timedelta(hours=5))
    assert statuses(visit(second_teacher), lesson) == NOTHING


@pytest.mark.parametrize("person", ["teammate", "other_teacher", "coach", "administrator"])
def test_for_all_others_there_is_no_such_lesson(request, visit, lesson, person):
    assert statuses(visit(request.getfixturevalue(person)), lesson) == NOTHING
    assert lesson.events.count() == 1


def test_a_paired_board_has_its_board_and_nothing_else(lesson):
    allowed = {"hear": 200, "send": 200, "board.json": 200, "board": 200}
    assert statuses(paired(Client(), lesson), lesson) == {**NOTHING, **allowed}


def test_a_substitutes_lectern_has_plan_and_events_and_nothing_else(lesson):
    allowed = {"hear": 200, "send": 200, "board.json": 200, "lectern.json": 200, "board": 200, "lectern": 200}
    assert statuses(paired(Client(), lesson, "substitute"), lesson) == {**NOTHING, **allowed}


@pytest.mark.parametrize("role", ["board", "substitute"])
def test_a_pass_opens_one_lesson_only(owner, lesson, role):
    other = open_lesson(owner, routine=make_routine(owner))
    assert statuses(paired(Client(), lesson, role), other) == NOTHING


@pytest.mark.parametrize("name", ["lesson_end", "lesson_reopen", "lesson_delete"])
@pytest.mark.parametrize("role", ["board", "substitute"])
def test_a_pass_neither_ends_nor_opens_nor_deletes(lesson, role, name):
    client = paired(Client(), lesson, role)
    assert client.post(reverse(name, args=[lesson.key])).status_code == 404
    lesson.refresh_from_db()
    assert (lesson.ended, lesson.deleted_at) == (False, None)


def test_someone_else_who_signs_in_on_a_paired_device_still_has_its_board(teammate, visit, lesson):
    client = paired(visit(teammate), lesson)
    assert hear(client, lesson).status_code == 200
    assert client.get(reverse("lesson_lectern", args=[lesson.key])).status_code == 404


# Signed out, tokens, deleted, bad bodies


def test_the_signed_out_are_told_to_sign_in(lesson):
    client = Client()
    assert hear(client, lesson).status_code == 401
    assert send(client, lesson, event(2)).status_code == 401
    assert client.get(reverse("lesson_board_json", args=[lesson.key])).status_code == 401
    assert "sign-in" in client.get(reverse("lesson_board", args=[lesson.key]))["Location"]
    assert hear(client, uuid.uuid4()).status_code == 401  # no word of whether there is one


def test_a_page_speaks_only_for_whoever_opened_it(owner, second_teacher, visit, lesson):
    page = reverse("lesson_lectern", args=[lesson.key])
    mine, hers = visit(owner).get(page).context["person"], visit(second_teacher).get(page).context["person"]
    assert mine != hers
    sending, asked = {"epoch": None, "person": mine, "events": [event(2)]}, f"{address(lesson)}?person={mine}"

    def told(client):
        sent = client.post(address(lesson), json.dumps(sending), content_type="application/json")
        return sent.status_code, client.get(asked).status_code

    assert told(visit(second_teacher)) == (409, 409)
    assert told(Client()) == (401, 401)
    assert told(paired(Client(), lesson)) == (401, 401)
    assert lesson.events.count() == 1
    assert told(visit(owner)) == (200, 200)
    assert lesson.events.get(seq=2).user == owner


def test_a_device_that_is_no_longer_paired_is_told_so(lesson):
    board = paired(Client(), lesson)
    LessonPass.objects.all().delete()
    told = hear(board, lesson)
    assert (told.status_code, told.json()["reason"]) == (404, "not-paired")


def test_a_page_that_nobody_signed_in_has_opened_speaks_for_the_device(lesson):
    board = paired(Client(), lesson)
    assert board.get(reverse("lesson_board", args=[lesson.key])).context["person"] == ""
    assert board.get(f"{address(lesson)}?person=").status_code == 200


def test_a_kind_that_the_server_takes_no_more_is_refused_alone(monkeypatch, owner, lesson):
    board = paired(Client(), lesson)
    monkeypatch.delitem(KINDS, "predict")
    guess, count = event(2, "predict", {"n": 9, "text": "40"}), event(3)
    told = send(board, lesson, guess, count).json()
    assert list(told["accepted"]) == [count["id"]]
    assert told["rejected"][guess["id"]] == {
        "reason": "not-allowed",
        "words": "This page and the server no longer match (predict). Load it again after the lesson.",
    }


def test_a_stale_token_is_403_and_an_answer_to_get_brings_a_fresh_one(owner, lesson):
    client = Client(enforce_csrf_checks=True)
    client.force_login(owner, backend="accounts.backends.NameOrEmailBackend")
    hear(client, lesson)
    refused = send(client, lesson, event(2), headers={"X-CSRFToken": "x" * 64})
    assert refused.status_code == 403
    assert refused.json() == {"reason": "token"}
    token = hear(client, lesson).json()["token"]
    sent = send(client, lesson, event(2), headers={"X-CSRFToken": token})
    assert sent.status_code == 200
    assert send(client, lesson, event(3), headers={"X-CSRFToken": sent.json()["token"]}).status_code == 200


def test_a_paired_board_is_held_to_the_token_too(lesson):
    client = paired(Client(enforce_csrf_checks=True), lesson)
    assert send(client, lesson, event(2)).status_code == 403
    token = hear(client, lesson).json()["token"]
    assert send(client, lesson, event(2), headers={"X-CSRFToken": token}).status_code == 200


def test_a_deleted_lesson_is_gone_for_whoever_knew_it(owner, teammate, visit, lesson):
    board = paired(Client(), lesson)
    delete_lesson(lesson=lesson)
    for client in (visit(owner), board):
        assert hear(client, lesson).status_code == 410
        told = send(client, lesson, event(2))
        assert (told.status_code, told.json()["reason"]) == (410, "deleted")
        assert client.get(reverse("lesson_board", args=[lesson.key])).status_code == 404
    assert hear(visit(teammate), lesson).status_code == 404


@pytest.mark.parametrize(
    "body",
    [
        "",
        "no json",
        "[]",
        "5",
        "null",
        "{}",
        '{"events": {}}',
        '{"events": null}',
        "[" * 5000,
    ],
)
def test_a_body_that_holds_no_events_is_refused_whole(owner, visit, lesson, body):
    answer = visit(owner).post(address(lesson), body, content_type="application/json")
    assert answer.status_code == 400
    assert answer.json()["reason"] == "malformed"


def test_a_number_without_end_is_refused_by_itself(owner, visit, lesson):
    body = '{"events": [' + "9" * 5000 + "]}"
    told = visit(owner).post(address(lesson), body, content_type="application/json").json()
    assert told["rejected"]["0"]["reason"] == "malformed"


def test_a_form_is_no_batch_of_events(owner, visit, lesson):
    for content_type in ("application/x-www-form-urlencoded", "text/plain"):
        assert visit(owner).post(address(lesson), "events=1", content_type=content_type).status_code == 400
    assert visit(owner).post(address(lesson), {"events": "[]"}).status_code == 400


def test_a_body_over_the_bound_is_refused_whole(owner, visit, lesson):
    answer = visit(owner).post(address(lesson), " " * (exchange.BODY_BYTES + 1), content_type="application/json")
    assert (answer.status_code, answer.json()["reason"]) == (413, "too-large")


def test_the_largest_batch_there_can_be_is_taken(owner, visit, lesson):
    data = {"x": "x" * 4087}
    assert len(json.dumps(data)) == 4096
    told = send(visit(owner), lesson, *(event(2, "sparkle", data, device="d" * 36) for _ in range(100)))
    assert len(told.json()["accepted"]) == 100


@pytest.mark.parametrize("method", ["put", "delete", "patch"])
def test_other_methods_are_refused(owner, visit, lesson, method):
    assert getattr(visit(owner), method)(address(lesson)).status_code == 405


def test_a_database_that_takes_nothing_is_503_and_the_device_keeps_what_it_has(owner, visit, lesson, monkeypatch):
    def full(**kwargs):
        raise OperationalError("database or disk is full")

    monkeypatch.setattr(exchange, "append_events", full)
    assert send(visit(owner), lesson, event(2)).status_code == 503


def test_the_end_is_told(owner, visit, lesson):
    board = paired(Client(), lesson)
    end_lesson(lesson=lesson)
    told = hear(board, lesson).json()
    assert told["ended"] is True
    assert told["events"][-1]["kind"] == "lesson.end"
    late = timezone.now() - timedelta(minutes=20)
    LessonEvent.objects.update(received_at=late)
    assert send(board, lesson, event(9)).json()["rejected"].popitem()[1]["reason"] == "ended"
    assert hear(board, lesson).status_code == 200


# An older backup was put back


def lost(lesson) -> list[dict]:
    """What a lectern holds of a lesson that the server holds no more."""
    held = [{k: v for k, v in row.as_dict().items() if k != "seq"} for row in lesson.events.order_by("seq")]
    lesson.events.all().delete()
    lesson.delete()
    School.objects.update(epoch=uuid.uuid4())
    return held


def test_another_epoch_tells_the_device_to_send_all_it_holds(owner, visit, lesson):
    client = visit(owner)
    before = hear(client, lesson).json()["epoch"]
    held = [event(t) for t in range(2, 12)]
    send(client, lesson, *held, epoch=before)
    lesson.events.filter(seq__gt=6).delete()  # the backup was made after the first five
    Lesson.objects.update(last_seq=6)
    School.objects.update(epoch=uuid.uuid4())
    after = hear(client, lesson, after=11).json()
    assert after["epoch"] != before
    told = send(client, lesson, *held, epoch=after["epoch"]).json()
    assert sorted(told["accepted"].values()) == list(range(2, 12))
    assert list(lesson.events.order_by("seq").values_list("seq", flat=True)) == list(range(1, 12))


def test_a_lesson_that_the_backup_lacks_is_made_again_from_what_opened_it(owner, visit, lesson):
    append(lesson, event(2), event(3, "voice", {"from": 1, "to": 1, "how": "strong"}))
    before = {
        name: getattr(lesson, name)
        for name in ("key", "teacher", "class_group", "version", "taught_on", "practice", "surface")
    }
    held = lost(lesson)
    client = visit(owner)
    assert hear(client, before["key"]).status_code == 404
    told = send(client, before["key"], *held)
    assert told.status_code == 200
    assert list(told.json()["accepted"].values()) == [1, 2, 3]
    made = Lesson.objects.get()
    assert {name: getattr(made, name) for name in before} == before
    assert made.written_at is not None
    assert send(client, made, *held).json()["accepted"] == told.json()["accepted"]


def test_a_second_teacher_makes_it_again_for_its_teacher(owner, second_teacher, visit, lesson):
    held = lost(lesson)
    assert send(visit(second_teacher), lesson, *held).status_code == 200
    assert Lesson.objects.get().teacher == owner


def opened(held, **changes) -> dict:
    return {**held[0], "id": identity(), "data": {**held[0]["data"], **changes}}


def test_nobody_else_makes_it_again(owner, teammate, visit, lesson):
    held = lost(lesson)
    assert send(visit(teammate), lesson, *held).status_code == 404
    assert send(paired(Client(), open_lesson(owner)), lesson, *held).status_code == 404
    assert send(Client(), lesson, *held).status_code == 401
    assert Lesson.objects.filter(key=lesson.key).count() == 0


def test_what_opened_it_must_fit_what_is_here(owner, teammate, visit, lesson):
    held = lost(lesson)
    client = visit(owner)
    hidden = make_routine(teammate, shared=False).current_version
    for changes in (
        {"version": 10**9},
        {"plan": "another plan"},
        {"version": hidden.pk},
        {"class_group": teammate.class_groups.get().pk},
        {"class_group": 10**9},
        {"teacher": teammate.pk},
        {"taught_on": "2019-01-01"},
        {"taught_on": (timezone.localdate() + timedelta(days=3)).isoformat()},
        {"taught_on": "no day"},
    ):
        assert send(client, lesson, opened(held, **changes), *held[1:]).status_code == 404, changes
    assert send(client, lesson, *held[1:]).status_code == 404
    assert not Lesson.objects.exists()


def test_a_number_that_now_stands_for_another_plan_opens_nothing(owner, visit, lesson):
    held = lost(lesson)
    RoutineVersion.objects.update(plan={**RoutineVersion.objects.first().plan, "title": "Another"})
    assert send(visit(owner), lesson, *held).status_code == 404


# The count


def test_the_board_is_told_the_count_and_nothing_of_the_plan(owner, visit):
    plan_words = {
        "title": "planted title", "notes": "planted notes", "words": "planted target", "answer": "planted answer",
    }  # fmt: skip
    routine = make_routine(owner)
    plan = {**routine.current_version.plan, "title": plan_words["title"], "notes": plan_words["notes"]}
    plan["targets"] = [{**plan["targets"][0], "words": plan_words["words"]}]
    plan["stops"] = [
        {
            **plan["stops"][0],
            "question": "planted question",
            "answer": plan_words["answer"],
            "routes": ["planted route"],
        }
    ]
    plan["expected"] = [{"words": "planted slip", "reply": "planted reply", "sort": "slip", "n": 8}]
    RoutineVersion.objects.update(plan=plan)
    lesson = open_lesson(owner, routine=routine)
    board = paired(Client(), lesson)
    told = board.get(reverse("lesson_board_json", args=[lesson.key]))
    assert "planted" not in told.text
    assert "planted" not in board.get(reverse("lesson_board", args=[lesson.key])).text
    count = told.json()
    # 4, 11, 18 ... in rows of five; the 70th is 4 + 7 x 69
    assert (count["terms"], count["rows"], count["columns"]) == (20, 4, 5)
    assert (count["texts"][0], count["texts"][19], count["texts"][69], len(count["texts"])) == ("4", "137", "487", 70)
    assert (count["places"][0], count["places"][7], count["places"][69]) == ([1, 1], [2, 3], [14, 5])
    assert (count["jumps"]["1"], count["jumps"]["-2"], count["jumps"]["10"]) == ("+7", "−14", "+70")
    assert count["stops"] == [10]
    assert count["title"] == "By 7 from 4"
    lectern = visit(owner).get(reverse("lesson_lectern_json", args=[lesson.key])).json()
    assert (lectern["plan_title"], lectern["targets"]) == ("planted title", ["planted target"])
    assert lectern["stops"][0]["answer"] == "planted answer"
    assert lectern["coming"]["8"][0] == {"heard": "planted slip", "why": "", "reply": "planted reply", "equal": False}
    assert lectern["expected"][0]["words"] == "planted slip"
    assert {name: lectern[name] for name in count if name != "stops"} == {
        k: v for k, v in count.items() if k != "stops"
    }


def test_the_boards_page_holds_no_count_at_all(owner, visit, lesson):
    page = visit(owner).get(reverse("lesson_board", args=[lesson.key])).text
    for later in ("137", "46", "53"):
        assert f">{later}<" not in page


def test_hearing_nothing_new_is_cheap(owner, visit, lesson, django_assert_max_num_queries):
    client = visit(owner)
    with django_assert_max_num_queries(4):  # session, person, school, lesson
        hear(client, lesson, after=1)
    board = paired(Client(), lesson)
    with django_assert_max_num_queries(2):  # school, pass with its lesson
        hear(board, lesson, after=1)
