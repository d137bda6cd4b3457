"""The grid for the wall: plain, with the targets lit, or as it happened in one lesson."""

from collections.abc import Sequence
from math import ceil

from django.utils.html import strip_tags
from django.utils.safestring import SafeString
from django.utils.translation import gettext_lazy as _

from accounts.templatetags.dates import day
from routines.drawing.metrics import text_width
from routines.lessons.drawn import cells_clean, cells_on_board, ink_of
from routines.lessons.recording import state_of
from routines.models import Lesson
from routines.paper.fitting import ALONE_FIT
from routines.paper.full_page import full_page, placed, text_widths
from routines.paper.languages import phrase
from routines.paper.picture import draw
from routines.paper.plan_page import landmark_legend, sign
from routines.paper.print import Print, Wishes
from routines.paper.subject import Subject

# Points: what stands above the grid with a title of one line, and one more line of text; the sizes of title and texts.
HEADING, ONE_MORE_LINE = 76.0, 30.0
TITLE, WORDS = 26.0, 14.0


def poster_sheets(subject: Subject, *, lit: bool = False) -> list[SafeString]:
    """The whole grid. Lit, it says what is lit; plain, it gives nothing away: not even the plan's title."""
    patterns = [item.pattern for item in subject.shown.lit] if lit else []
    told = [(sign(subject, one.holds), subject.pattern_words(one, "statement")) for one in patterns]
    if lit:
        told += landmark_legend(subject)
    taken = _taken(subject, title=subject.plan.title if lit else "", said=[words for _, words in told])
    kind, picture = placed(subject, draw(subject, lit=patterns, landmarks=lit), *taken)
    context = {"picture": picture, "words": told, "titled": lit}
    return [full_page("poster.html", subject, kind, **context)]


def lesson_poster_sheets(subject: Subject, lesson: Lesson, *, cleaned: bool = False) -> list[SafeString]:
    """The grid as one class filled it, with its marks and words; cleaned, the true counts as far as it came."""
    state = state_of(lesson)
    entries = cells_clean(state) if cleaned else cells_on_board(state, subject.grid.count)
    phrases = [] if cleaned else [phrase["text"] for phrase in state.phrases]
    ink = None if cleaned else ink_of(state, subject.grid)
    happened = "" if cleaned else subject.say.each(lambda language: _as_it_happened(lesson, language))
    taken = _taken(subject, said=[happened] if happened else [], typed=phrases)
    kind, picture = placed(subject, draw(subject, entries=entries, landmarks=False, ink=ink), *taken)
    context = {"picture": picture, "happened": happened, "phrases": phrases}
    return [full_page("poster.html", subject, kind, **context)]


def _taken(
    subject: Subject, *, title: str = "", said: Sequence[str] = (), typed: Sequence[str] = ()
) -> tuple[float, float]:
    """The height that words take above and below the grid, on a page upright and on one across.

    said: in the languages of the print, each on lines of its own. typed: in the one they were typed in. Units: points.
    """
    second = len(subject.say.languages) - 1

    def height(width: float) -> float:
        lines = second + sum(_lines(text, WORDS, width) for text in (*said, *typed)) + second * len(said)
        return HEADING + ONE_MORE_LINE * lines + ONE_MORE_LINE * max(_lines(title, TITLE, width) - 1, 0)

    upright, across = map(height, text_widths(subject))
    return upright, across


def _lines(text: str, size: float, width: float) -> int:
    """In how many lines it is set, in the wider letters; words leave up to a tenth of a line empty. Units: points."""
    return ceil(text_width(strip_tags(text), size, "bold") / (0.9 * width))


def _as_it_happened(lesson: Lesson, language: str) -> str:
    return f"{phrase('as_it_happened', language)}, {lesson.class_group.name}, {day(lesson.taught_on, language)}"


def _wished(subject: Subject, wishes: Wishes) -> list[SafeString]:
    if wishes.lesson is not None:
        return lesson_poster_sheets(subject, wishes.lesson, cleaned=wishes.cleaned)
    return poster_sheets(subject, lit=wishes.lit)


POSTER = Print(
    title=_("Poster"),
    about=_("The grid as large as the paper. Plain, it gives nothing away."),
    button=_("Print the poster"),
    picture_title=_("The grid alone"),
    choices="paper/_poster_choices.html",
    sheets=_wished,
    pages=1,
    fit=ALONE_FIT,
    for_children=lambda wishes: not wishes.lit,
)
