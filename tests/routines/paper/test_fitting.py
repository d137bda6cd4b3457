"""The look of a page: the one that trying them all would find, in few layouts."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.paper.fitting import STEPS, Fit, LaidOut, find_look
from routines.paper.styles import LOOKS
from routines.paper.worker import measured


def tried_one_by_one(pages: list[LaidOut]) -> int:
    return next((look for look, page in enumerate(pages) if page.fits), (len(LOOKS) - 1) // 2)


def found(pages: list[LaidOut], fit: Fit) -> tuple[int, list[int]]:
    """The look, and those that were laid out for it."""
    laid_out: list[int] = []

    def lay_out(look: int) -> LaidOut:
        laid_out.append(look)
        return pages[look]

    return find_look(len(LOOKS), fit, lay_out), laid_out


@st.composite
def pages_and_fits(draw) -> tuple[list[LaidOut], Fit]:
    """A page with each look, as tall as the bounds of its fit allow."""
    least = draw(st.lists(st.floats(1, 1.3), min_size=STEPS, max_size=STEPS))
    most = [low + draw(st.floats(0, 0.3)) for low in least]
    picture = draw(st.floats(0, 0.9))
    rest = draw(st.floats(0.01, 1.5))
    pages = [LaidOut(picture + rest <= 1, picture + rest, picture)]
    for low, high in reversed(list(zip(least, most, strict=True))):
        rest *= draw(st.floats(low, high))
        pages.insert(0, LaidOut(picture + rest <= 1, picture + rest, picture))
    first = draw(st.integers(0, STEPS))
    return pages, Fit(first, [low / 1.000001 for low in least], [high * 1.000001 for high in most])


@given(pages_and_fits())
def test_it_is_the_one_that_trying_them_all_would_find(known):
    pages, fit = known
    look, laid_out = found(pages, fit)
    assert look == tried_one_by_one(pages)
    assert len(laid_out) == len(set(laid_out))


def pages_of(*heights: float, picture: float = 0.3) -> list[LaidOut]:
    return [LaidOut(height <= 1, height, picture) for height in heights]


@pytest.mark.parametrize(
    ("heights", "layouts"),
    [
        ((1.18, 1.05, 0.96, 0.87), [2]),  # nearly full: the next is certainly too tall
        ((1.15, 1.02, 0.89, 0.79), [2, 1]),
        ((0.93, 0.84, 0.75, 0.68), [2, 0]),  # so empty that the roomiest is tried at once
        ((1.31, 1.17, 1.03, 0.94), [2, 3]),
        ((2.4, 2.2, 2.0, 1.9), [2]),  # no look would bring it on one page
    ],
)
def test_what_is_certain_is_not_laid_out(heights, layouts):
    assert found(pages_of(*heights), Fit.alike(first=2, least=1.09, most=1.22))[1] == layouts


def test_each_step_has_bounds_of_its_own():
    steep, flat = [1.0, 1.0, 1.2], [1.0, 1.0, 1.01]
    pages = pages_of(1.3, 1.2, 1.1, 0.9)
    assert found(pages, Fit(3, steep, [1.3, 1.3, 1.3])) == (3, [3])  # 0.3 + 0.6 * 1.2 is too tall
    assert found(pages, Fit(3, flat, [1.3, 1.3, 1.3])) == (3, [3, 2])


def test_there_is_a_step_between_any_two_looks():
    assert len(LOOKS) == STEPS + 1


def test_pages_taller_than_was_thought_still_get_a_look_that_fits():
    pages = pages_of(0.99, 0.98, 0.97, 0.96)
    look, _ = found(pages, Fit.alike(first=3, least=1.09, most=1.22))
    assert pages[look].fits


def test_how_tall_a_page_is_laid_out_is_read_off_its_boxes(pango):
    """The boxes are private to WeasyPrint: an upgrade that changes them fails here."""
    from weasyprint import CSS, HTML

    css = CSS(string="@page { size: 200pt 400pt; margin: 100pt 0 } body, div, svg { margin: 0; display: block }")
    picture = '<svg width="100pt" height="50pt" viewBox="0 0 1 1"></svg>'

    def of(*heights: int) -> LaidOut:
        boxes = "".join(f'<div style="height: {height}pt"></div>' for height in heights)
        return measured(HTML(string=f"<body><section>{picture}{boxes}</section></body>").render(stylesheets=[css]))

    assert of(50) == LaidOut(True, pytest.approx(0.5), pytest.approx(0.25))
    assert of(50, 90) == LaidOut(True, pytest.approx(0.95), pytest.approx(0.25))
    assert of(50, 90, 30) == LaidOut(False, pytest.approx(1.1), pytest.approx(0.25))
