"""Which look is tried first: the more stands on a sheet, the tighter it is; and mostly it is the one."""

from pathlib import Path

import pytest
from django.conf import settings

from accounts.models import School, User
from grade_bands.models import Grade
from routines.demo.plans import PLANS
from routines.models import Routine, RoutineVersion
from routines.paper.guessing import Guess
from routines.paper.print import Wishes
from routines.paper.prints import PRINTS, document_of
from routines.paper.styles import LOOKS, paper_css
from routines.paper.subject import Subject
from routines.paper.worker import Press

GUESS = Guess(empty=200, picture=1, letter=0.5, beside=-100, growth=1.2)
ROOM = 700


def sheet(letters: int, picture: int = 100, desk: str = "desk-above") -> str:
    words = "x" * letters
    return f'<div class="{desk}"><svg width="90" height="{picture}"><text>unread</text></svg><p class="row">{words}</p></div>'


@pytest.mark.parametrize(
    ("letters", "look"),
    [(433, 0), (434, 1), (600, 1), (601, 2), (800, 2), (801, 3), (9000, 3)],
)
def test_the_more_words_the_tighter(letters, look):
    assert GUESS.first_look(sheet(letters), ROOM) == look


def test_pictures_words_beside_them_and_paper_count():
    assert GUESS.first_look(sheet(700), ROOM) == 2
    assert GUESS.first_look(sheet(700, picture=250), ROOM) == 3
    assert GUESS.first_look(sheet(700, desk="desk-beside"), ROOM) == 1
    assert GUESS.first_look(sheet(700), ROOM + 60) == 1
    assert GUESS.first_look("", ROOM) == 0


class Counting(Press):
    """The press, which also counts its layouts."""

    layouts = 0

    def _laid_out(self, page, *sheets):
        self.layouts += 1
        return super()._laid_out(page, *sheets)


def written(name: str, number: int, paper: str):
    plan = PLANS[number].plan
    routine = Routine(owner=User(display_name="First"), grade=Grade(name=plan.grade, level=2))
    version = RoutineVersion(routine=routine, number=1, plan=plan.as_dict())
    return document_of(name, Subject(version, School(name="Guessed", paper=paper)), Wishes())


@pytest.mark.parametrize("name", ["plan", "substitute"])
def test_most_pages_are_laid_out_once(name, pango):
    """Of nine plans, chosen by nothing but their place in the school's list; each begins where its guess says."""
    press = Counting(Path(settings.BASE_DIR) / "static" / "fonts")
    documents = [
        written(name, number, paper) for number, paper in zip(range(0, 36, 4), ["letter", "a4"] * 5, strict=False)
    ]
    for document in documents:
        _pdf, pages = press.pdf(document.html(), paper_css(document.paper), LOOKS, document.fit)
        assert pages == 1
    assert len({document.fit.first for document in documents}) > 1
    assert press.layouts <= 1.5 * len(documents)


def test_only_what_is_one_sheet_is_guessed_at():
    assert {name for name, one in PRINTS.items() if one.guess} == {"plan", "substitute"}
    assert all(len(written(name, 0, "letter").sheets) == 1 for name in ("plan", "substitute"))
