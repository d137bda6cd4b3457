"""What was noticed at its lessons, on a count's page; the voice of the class, in a log that is shared."""

import pytest
from django.urls import reverse

from routines.lessons.noticed import noticed_at
from routines.lessons.recording import delete_lesson, save_reflection
from tests.routines.lessons.making import append, event
from tests.routines.making import make_lesson, make_routine

EVERYONE = ["owner", "co_author", "teammate", "other_teacher", "coach", "administrator"]
READERS = {
    "only-me": {"owner"},
    "team": {"owner", "co_author", "teammate"},
    "team-coach": {"owner", "co_author", "teammate", "coach"},
}


def noticed_lesson(owner, routine, *, sharing="team", seen=""):
    lesson = make_lesson(routine, owner, sharing=sharing, seen=seen)
    first = event(t=50, kind="notice.add", data={"text": "planted damson idea", "expected": None})
    undone = event(t=51, kind="notice.add", data={"text": "planted sloe slip", "expected": None})
    append(
        lesson,
        first,
        undone,
        event(t=52, kind="undo", data={"event": undone["id"]}),
        event(t=53, kind="notice.edit", data={"event": first["id"], "text": "planted damson, changed"}),
        event(t=54, kind="voice", data={"from": 2, "to": 5, "how": "faded"}),
        event(t=55, kind="voice", data={"from": 4, "to": 5, "how": "alone"}),
    )
    return lesson


def test_noticings_as_they_stand_then_what_was_written_before(owner):
    lesson = noticed_lesson(owner, make_routine(owner), seen="kept from before")
    assert noticed_at([lesson]) == {lesson.pk: ["planted damson, changed", "kept from before"]}


@pytest.mark.parametrize("sharing", READERS)
@pytest.mark.parametrize("name", EVERYONE)
def test_a_counts_page_and_the_log_show_them_to_whom_the_lesson_is_shared_with(request, name, sharing, owner, visit):
    person = request.getfixturevalue(name)
    routine = make_routine(owner)
    lesson = noticed_lesson(owner, routine, sharing=sharing)
    reads = name in READERS[sharing]
    page = visit(person).get(reverse("routine", args=[routine.pk])).text
    assert ("planted damson, changed" in page) is reads
    assert "sloe" not in page
    log = visit(person).get(lesson.get_absolute_url())
    assert log.status_code == (200 if reads else 404)
    assert ("planted damson, changed" in log.text) is reads


def test_a_lesson_without_a_reflection_is_not_on_the_counts_page(owner, teammate, visit):
    routine = make_routine(owner)
    lesson = noticed_lesson(owner, routine, sharing="team")
    lesson.reflection.delete()
    assert "damson" not in visit(teammate).get(reverse("routine", args=[routine.pk])).text


def test_a_deleted_lesson_leaves_the_page(owner, visit):
    routine = make_routine(owner)
    delete_lesson(lesson=noticed_lesson(owner, routine))
    assert "damson" not in visit(owner).get(reverse("routine", args=[routine.pk])).text


def test_the_voice_is_drawn_and_said_in_a_shared_log(owner, teammate, visit):
    lesson = noticed_lesson(owner, make_routine(owner), sharing="team")
    page = visit(teammate).get(lesson.get_absolute_url()).text
    # counts 2 to 5 of 4, 11, ... are 11 to 32; where they overlap the later one is drawn
    assert page.count("g-voice-faded") == 2
    assert page.count("g-voice-alone") == 2
    assert "11 to 32: faded" in page
    assert "25 to 32: teacher alone" in page
    save_reflection(lesson=lesson, outcome="as-planned", sharing="only-me")
    assert visit(teammate).get(lesson.get_absolute_url()).status_code == 404


def test_one_query_for_any_number_of_lessons(owner, django_assert_num_queries):
    routine = make_routine(owner)
    lessons = [noticed_lesson(owner, routine) for _ in range(3)]
    with django_assert_num_queries(1):
        assert len(noticed_at(lessons)) == 3
