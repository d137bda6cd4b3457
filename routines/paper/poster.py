"""The grid for the wall: plain, with the targets lit, or as it happened in one lesson."""

from collections.abc import Mapping

from django.utils.safestring import SafeString

from routines.drawing import Entry
from routines.lessons.state import Entry as Written
from routines.lessons.state import LessonState, reduce_events
from routines.models import Lesson
from routines.paper.full_page import full_page, placed
from routines.paper.plan_page import legend
from routines.paper.subject import Subject

HEADING, ONE_MORE_LINE = 76.0, 28.0  # points


def poster_sheets(subject: Subject, *, lit: bool = False) -> list[SafeString]:
    """The whole grid. Lit, it says what is lit; plain, it gives nothing away: not even the plan's title."""
    patterns = [item.pattern for item in subject.shown.lit_at_first] if lit else []
    lines = len(patterns) * len(subject.say.languages) + len(subject.say.languages) - 1
    kind, picture = placed(subject, HEADING + ONE_MORE_LINE * lines, lit=patterns, landmarks=lit)
    signs = [sign for sign, _ in legend(subject, patterns)]
    words = [subject.pattern_words(pattern, "statement") for pattern in patterns]
    context = {"picture": picture, "words": list(zip(signs, words, strict=False)), "titled": lit}
    return [full_page("poster.html", subject, kind, **context)]


def lesson_poster_sheets(subject: Subject, lesson: Lesson, *, cleaned: bool = False) -> list[SafeString]:
    """The grid as one class filled it; cleaned, without what was struck."""
    state = reduce_events(event.as_dict() for event in lesson.events.all())
    taken = HEADING + ONE_MORE_LINE * (2 * len(subject.say.languages) - 1)
    kind, picture = placed(subject, taken, entries=entries_of(state, cleaned=cleaned), landmarks=False)
    context = {"picture": picture, "happened": True, "lesson": lesson}
    return [full_page("poster.html", subject, kind, **context)]


def entries_of(state: LessonState, *, cleaned: bool) -> Mapping[int, Entry]:
    """What stands in each cell that was written: as it was said, with what was struck unless cleaned."""
    return {n: _drawn(written[-1], cleaned) for n, written in state.entries.items() if written}


def _drawn(written: Written, cleaned: bool) -> Entry:
    if written.struck and not cleaned:
        return Entry("corrected", written.text, written.struck[-1])
    return Entry("written", written.text)
