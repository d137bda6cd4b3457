"""The small grid under a thumb: cells of 44 px, or narrower only where a whole line of the fold fits so; every count in reach."""

import pytest

from routines.models.plan_document import CountSection, Fold
from tests.browser.lectern_page import Lectern
from tests.routines.lessons.making import open_lesson
from tests.routines.making import make_routine

pytestmark = pytest.mark.django_db(transaction=True)

COUNTS = {
    "four": (CountSection("whole", "10", "6", 24), 4, 4),
    "ten": (CountSection("whole", "1", "1", 100), 10, 10),
    "twelve": (CountSection("whole", "12", "12", 60), 12, None),
    "money": (CountSection("money", "$1,250.75", "$125.25", 24), 4, None),
}
"""Count, columns, and how many of them are in view at once; None: as many as fit."""


@pytest.mark.parametrize("width", [360, 390])
@pytest.mark.parametrize("name", COUNTS)
def test_cells_are_large_enough_for_a_thumb_and_hold_their_texts(open_as, owner, name, width, request):
    count, columns, in_view = COUNTS[name]
    routine = make_routine(owner, count=count, fold=Fold(columns), stops=(), targets=())
    lectern = Lectern(open_as(owner, width=width, height=780), open_lesson(owner, routine=routine)).open()
    lectern.write(5)
    lectern.expect_next(6)
    cells = lectern.page.eval_on_selector_all(
        "[data-part=grid] [data-n]",
        """all => all.filter(one => one.offsetParent).map(one => {
          const box = one.getBoundingClientRect(), text = one.querySelector(".numeral")?.getBoundingClientRect();
          return [box.width, box.height, text ? text.width : 0, Math.round(box.top)];
        })""",
    )
    in_a_line = max(sum(one[3] == top for one in cells) for top in {one[3] for one in cells})
    assert in_view is None or in_a_line == in_view
    narrowest = 32 if in_a_line == columns else 44
    assert [one for one in cells if one[0] < narrowest or one[1] < 44] == []
    assert [one for one in cells if one[2] > one[0]] == []
    assert lectern.page.evaluate("document.documentElement.scrollWidth - innerWidth") <= 0
    if in_a_line < columns:
        lectern.part("later").click()
        lectern.page.locator("[data-part=grid] [data-n]:visible").last.click()
        assert lectern.part("cell-sheet").is_visible()
