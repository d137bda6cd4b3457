"""How tall a sheet is foreseen, beside how tall WeasyPrint lays it out; and that this finds the look in few layouts."""

from functools import cache
from pathlib import Path

import pytest
from django.conf import settings

from accounts.models import School, User
from grade_bands.models import Grade
from routines.demo.plans import PLANS
from routines.drawing.metrics import text_width
from routines.models import Routine, RoutineVersion
from routines.paper.fitting import STEPS, find_look
from routines.paper.foreseeing import foreseen, heights
from routines.paper.picture import text_room
from routines.paper.print import Wishes
from routines.paper.prints import PRINTS, document_of
from routines.paper.sheet_parts import parts_of
from routines.paper.styles import LOOKS, paper_css
from routines.paper.subject import Subject
from routines.paper.worker import Press, measured

LINE = 13.5  # points: the roomiest look but one, whose letters have 10 points
SECOND = 1


def tall(sheet: str, room: float = 500) -> float:
    return heights(parts_of(sheet), room)[SECOND]


def test_words_are_broken_where_no_more_fit_a_line():
    width = text_width("one two", 10)
    assert tall("<p>one two</p>", width + 0.1) == pytest.approx(LINE)
    assert tall("<p>one two</p>", width - 0.1) == pytest.approx(2 * LINE)
    assert tall("<p>one\u00a0two</p>", width - 0.1) == pytest.approx(LINE)
    assert tall("<p>one <b>two</b></p>", width + 0.1) == pytest.approx(2 * LINE)  # bold letters are wider
    assert tall("<p>one<br>two</p>") == tall("<p>one<br/>two</p>") == pytest.approx(2 * LINE)
    assert tall("<p> \n </p>") == 0


def test_parts_stand_under_each_other_and_in_columns():
    stop = '<div class="stop"><p>one</p></div>'
    assert tall(f"{stop}{stop}") == pytest.approx(2 * (LINE + 5.5))
    assert tall(f'<div class="columns-2">{stop}{stop}</div>') == pytest.approx(LINE + 5.5)
    assert tall(f'<div class="columns-2">{3 * stop}</div>') == pytest.approx(2 * (LINE + 5.5))
    rows = 3 * '<div class="row"><p>one</p></div>'
    row = LINE + 2 * 2.5 + 0.6
    assert tall(f'<div class="stacked"><div class="rows">{rows}</div></div>') == pytest.approx(2 * row)
    assert tall(f'<div class="two"><div class="rows">{rows}</div></div>') == pytest.approx(3 * row)


def test_of_a_drawing_nothing_but_its_size_counts():
    drawing = '<svg width="90.0pt" height="120.5pt"><title>unread</title><path d="M0 0"/><svg height="9pt"/><text>7</text></svg>'
    assert tall(drawing) == 120.5
    beside = f'<div class="desk-beside"><div class="picture">{drawing}</div><section>{"one " * 80}</section></div>'
    assert tall(beside) == 120.5
    assert tall(beside, 90 + 18 + 42) == pytest.approx(40 * LINE)  # two words a line


def test_lines_to_write_on_are_those_of_the_look():
    ruled = "".join(f'<div class="ruled ruled-{number}"></div>' for number in range(1, 5))
    assert heights(parts_of(ruled), 500) == pytest.approx([4 * 17.6, 3 * 15.6, 2 * 14.6, 14.6])


def test_a_sheet_of_nothing_fits_the_roomiest_look():
    fit = foreseen("", (500, 700))
    assert fit.first == 0
    assert len(fit.least) == len(fit.most) == STEPS


def written(name: str, number: int, paper: str):
    plan = PLANS[number].plan
    routine = Routine(owner=User(display_name="First"), grade=Grade(name=plan.grade, level=2))
    version = RoutineVersion(routine=routine, number=1, plan=plan.as_dict())
    return document_of(name, Subject(version, School(name="Foreseen", paper=paper)), Wishes())


@pytest.mark.parametrize("name", ["plan", "substitute"])
def test_it_is_as_tall_as_it_is_laid_out_and_takes_hardly_more_than_one_layout(name, pango):
    """Of nine plans, chosen by nothing but their place in the school's list, on both papers by turns."""
    press = Press(Path(settings.BASE_DIR) / "static" / "fonts")
    tried, off = [], []
    for number, paper in zip(range(0, 36, 4), ["letter", "a4"] * 5, strict=False):
        document = written(name, number, paper)
        page, css = press._page(document.html()), paper_css(paper)
        width, height = text_room(School(paper=paper))

        @cache
        def laid_out(look: int, page=page, css=css):
            return measured(press._laid_out(page, css, LOOKS[look]))

        found = find_look(len(LOOKS), document.fit, lambda look, of=laid_out: tried.append(look) or of(look))
        assert laid_out(found).fits
        off.append(heights(parts_of(document.sheets[0]), width)[found] / height - laid_out(found).height)
    assert len(tried) <= 12
    # Shares of a page. Room that must be there below a column is foreseen, and not laid out.
    assert sorted(map(abs, off))[len(off) // 2] < 0.01
    assert max(map(abs, off)) < 0.03


def test_only_what_is_one_sheet_is_foreseen():
    assert {name for name, one in PRINTS.items() if not one.fit} == {"plan", "substitute"}
    assert all(len(written(name, 0, "letter").sheets) == 1 for name in ("plan", "substitute"))
