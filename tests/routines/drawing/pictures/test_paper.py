"""Pictures print: WeasyPrint draws each of them, dark where its ink is, from attributes alone."""

import pytest

from routines.drawing.pictures import NARROW, WIDE, draw_picture
from tests.absent import absent
from tests.routines.drawing.pictures.drawn import count

COUNTS = {
    "line": count("whole", "-22", "4"),
    "clock": count("clock", "7:10", "40 min"),
    "ruler": count("length", "1 ft 2 in", "10 in"),
    "scale": count("mass", "1 lb 4 oz", "1 lb 4 oz"),
    "jugs": count("capacity", "750 mL", "750 mL"),
    "coins": count("money", "$1.15", "$1.15"),
    "bars": count("fraction", "3/4", "3/4"),
}


@pytest.mark.parametrize("kind", COUNTS)
def test_every_picture_prints_with_all_its_words_on_one_page(kind: str) -> None:
    try:
        from weasyprint import HTML
    except (ImportError, OSError):
        absent("WeasyPrint with Pango")
    drawn = draw_picture(COUNTS[kind], kind=kind, on_paper=True)
    rendered = HTML(string=f"<!doctype html><title>Picture</title><body>{drawn}").render()
    assert len(rendered.pages) == 1
    assert draw_picture(COUNTS[kind], kind=kind, on_paper=True, width=NARROW) != drawn
    assert f'width="{WIDE}"' in drawn
    assert 'stroke="#' in drawn
    assert 'fill="#' in drawn
