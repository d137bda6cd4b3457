"""What the record of a lesson holds at most is said at its field; nothing is cut."""

import pytest
from django.urls import reverse

from routines.lessons.log_form import NOTICED_LIMIT, SLIP_LIMIT
from routines.models import Lesson
from tests.routines.making import make_routine


@pytest.mark.parametrize(
    ("field", "text", "sentence"),
    [
        ("heard-8", "5" * 41, "Shorten what was said at count 8 to 40 characters; it has 41."),
        ("noticed", "short\n" + "n" * 281, "to 280 characters, or break it into two lines; it has 281."),
        ("stuck", "s" * 2001, "Shorten this to 2000 characters; it has 2001."),
        ("to_next_year", "s" * 2001, "Shorten this to 2000 characters; it has 2001."),
    ],
)
def test_a_text_too_long_is_refused_and_stays(owner, visit, field, text, sentence):
    routine = make_routine(owner)
    fields = {
        "class_group": owner.class_groups.get().pk,
        "taught_on": "2026-09-15",
        "outcome": "as-planned",
        "sharing": "only-me",
        field: text,
    }
    answer = visit(owner).post(reverse("lesson_taught", args=[routine.pk]), fields)
    assert answer.status_code == 422
    assert sentence in answer.text
    assert text in answer.text
    assert not Lesson.objects.exists()


@pytest.mark.parametrize("letter", ["n", "ñ", "🐘"])
def test_as_much_as_is_taken_reaches_the_list_whatever_its_letters(owner, visit, letter):
    routine = make_routine(owner)
    fields = {
        "class_group": owner.class_groups.get().pk,
        "taught_on": "2026-09-15",
        "outcome": "as-planned",
        "sharing": "only-me",
        "noticed": letter * NOTICED_LIMIT,
        "heard-8": letter * SLIP_LIMIT,
    }
    assert visit(owner).post(reverse("lesson_taught", args=[routine.pk]), fields).status_code == 302
    events = Lesson.objects.get().events
    assert [event.data["text"] for event in events.filter(kind="notice.add")] == [letter * NOTICED_LIMIT]
    assert letter * SLIP_LIMIT in [event.data["text"] for event in events.filter(kind="term.write")]
