"""Which look is tried first: the more stands on a sheet, the tighter it is; and mostly it is the one."""

from dataclasses import replace
from functools import cache
from pathlib import Path

import pytest
from django.conf import settings

from accounts.models import School, User
from grade_bands.models import Grade
from routines.demo.plans import PLANS
from routines.models import Routine, RoutineVersion
from routines.paper.fitting import find_look
from routines.paper.guessing import Guess
from routines.paper.print import Wishes
from routines.paper.prints import PRINTS, document_of
from routines.paper.styles import LOOKS, paper_css
from routines.paper.subject import Subject
from routines.paper.worker import Press, measured

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


def written(name: str, number: int, paper: str):
    plan = PLANS[number].plan
    routine = Routine(owner=User(display_name="First"), grade=Grade(name=plan.grade, level=2))
    version = RoutineVersion(routine=routine, number=1, plan=plan.as_dict())
    return document_of(name, Subject(version, School(name="Guessed", paper=paper)), Wishes())


@pytest.mark.parametrize("name", ["plan", "substitute"])
def test_it_takes_fewer_layouts_than_to_begin_with_the_third(name, pango):
    """Of nine plans, chosen by nothing but their place in the school's list, on both papers by turns."""
    press = Press(Path(settings.BASE_DIR) / "static" / "fonts")
    guessed, third = [], []
    for number, paper in zip(range(0, 36, 4), ["letter", "a4"] * 5, strict=False):
        document = written(name, number, paper)
        page, css = press._page(document.html()), paper_css(paper)

        @cache
        def laid_out(look: int, page=page, css=css):
            return measured(press._laid_out(page, css, LOOKS[look]))

        for fit, looks in ((document.fit, guessed), (replace(document.fit, first=2), third)):
            found = find_look(len(LOOKS), fit, lambda look, looks=looks, of=laid_out: looks.append(look) or of(look))
            assert laid_out(found).fits
    assert len(guessed) < len(third)


def test_only_what_is_one_sheet_is_guessed_at():
    assert {name for name, one in PRINTS.items() if one.guess} == {"plan", "substitute"}
    assert all(len(written(name, 0, "letter").sheets) == 1 for name in ("plan", "substitute"))
