"""What stands on a lesson's pages in words that are not the page's own: the lesson is read in a made-up language without them."""

from collections.abc import Iterable

from routines.lessons.next_count import next_grids
from routines.lessons.shown_count import lectern_count, shown_of
from routines.lessons.slips_said import said_otherwise


def people_and_plan(lesson, state) -> set[str]:
    """All that a lesson's pages show in words that are not the page's: of people, and of the count in its language."""
    shown = shown_of(lesson)
    said = said_otherwise(state, shown.grid, shown.audience)
    words = set(_texts(lectern_count(lesson, shown)))
    words |= {note for one in said for note in (one.note, one.text, *(later.text for later in one.carried))}
    words |= {item.why for item in next_grids(shown)}
    words |= set(
        _texts([list(state.notices), list(state.phrases), {str(n): one for n, one in state.predictions.items()}])
    )
    words |= {text for entries in state.entries.values() for entry in entries for text in (entry.text, *entry.struck)}
    words |= {lesson.routine.title, lesson.class_group.name, lesson.teacher.display_name, lesson.year.name}
    words |= {"Larkfield School"}
    return words | {text.replace("-", "\u2212") for text in words}


def _texts(value) -> Iterable[str]:
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict):
        for one in value.values():
            yield from _texts(one)
    elif isinstance(value, list | tuple):
        for one in value:
            yield from _texts(one)
