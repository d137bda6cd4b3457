"""Ruler, measuring jugs and scales: marks, levels and pointers stand at the exact amount."""

import re
from itertools import pairwise
from math import atan2, degrees

import pytest

from routines.counting import Count
from routines.drawing.pictures import draw_picture
from routines.drawing.pictures.ladders import rungs
from tests.routines.drawing.pictures.drawn import count, number, of_class, written

TENTH = 0.15


def marks(drawn: str, look: str) -> list[float]:
    """The x of the strokes of one look, one path a line of the page."""
    return [float(x) for path in of_class(drawn, look) for x in re.findall(r"M([-\d.]+) ", path.get("d"))]


def test_the_ruler_has_its_own_mark_at_every_term_and_one_an_inch() -> None:
    drawn = draw_picture(count("length", "2 in", "2 in", 10))
    terms = marks(drawn, "p-mark")
    assert len(terms) == 10
    inch = (terms[1] - terms[0]) / 2
    assert [x - terms[0] for x in terms] == pytest.approx([2 * inch * k for k in range(10)], abs=TENTH)
    fine = sorted(
        {round((x - terms[0]) / inch * 8, 1) for look in ("p-tick", "p-tick-fine") for x in marks(drawn, look)}
    )
    assert all(eighth == pytest.approx(round(eighth), abs=0.1) for eighth in fine)
    assert {2 * k - 2 for k in range(10)} <= {round(eighth / 8) for eighth in fine}


def test_a_ruler_that_begins_at_0_has_an_edge_there() -> None:
    drawn = draw_picture(count("length", "2 in", "2 in", 10))
    [edge] = of_class(drawn, "p-outline")
    left = float(re.search(r"M([\d.]+) [\d.]+V", edge.get("d"))[1])
    first, second, *_ = marks(drawn, "p-mark")
    assert left == pytest.approx(first - (second - first), abs=TENTH)
    far = draw_picture(count("length", "20 in", "2 in", 6))
    assert "V" not in of_class(far, "p-outline")[0].get("d")


def test_every_second_foot_is_a_shade_darker() -> None:
    drawn = draw_picture(count("length", "1 ft", "1 ft", 6, units="two"))
    first, second, *_ = marks(drawn, "p-mark")
    foot = second - first
    dark = of_class(drawn, "p-body-second")
    assert number(dark[0], "x") == pytest.approx(first, abs=TENTH)  # the second foot begins at 1 ft
    assert number(dark[0], "width") == pytest.approx(foot, abs=TENTH)
    assert number(dark[1], "x") == pytest.approx(first + 2 * foot, abs=TENTH)


@pytest.mark.parametrize(
    "of",
    [
        count("length", "2 in", "2 in"),
        count("length", "1 cm", "1 cm"),
        count("mass", "1 oz", "1 oz"),
        count("capacity", "1 fl oz", "1 fl oz"),
        count("elapsed", "1 min", "1 min"),
        count("clock", "1:00", "1 min"),
        count("fraction", "1/8", "3/8"),
        count("fraction", "1/6", "1/6"),
        count("whole", "3", "7"),
    ],
    ids=lambda of: f"{of.kind} {of.base_unit}",
)
def test_every_rung_is_a_multiple_of_the_one_before(of: Count) -> None:
    ladder = rungs(of)
    assert all(coarse > fine and coarse % fine == 0 for fine, coarse in pairwise(ladder))
    assert 1 in ladder


@pytest.mark.parametrize("step", ["750 mL", "-750 mL"])
def test_a_jug_is_filled_in_proportion(step: str) -> None:
    start = "750 mL" if step[0] != "-" else "9 L"
    of = count("capacity", start, step, 12)
    levels = [number(liquid, "height") for liquid in of_class(draw_picture(of), "p-liquid")]
    amounts = [750 * k for k in range(1, 13)]
    amounts = amounts if step[0] != "-" else amounts[::-1]
    px = sum(levels) / sum(amounts)
    assert levels == pytest.approx([px * amount for amount in amounts], abs=TENTH)


def test_the_numbers_of_a_jug_stand_at_their_level() -> None:
    drawn = draw_picture(count("capacity", "750 mL", "750 mL", 12))
    liquid = of_class(drawn, "p-liquid")[3]  # 3 L
    floor = number(liquid, "y") + number(liquid, "height")
    litre = number(liquid, "height") / 3
    jug = [text for text in written(drawn) if text.size == 12 and 0 < text.left - number(liquid, "x") < 80]
    for text in jug:
        if floor - 160 < text.top < floor and text.words.endswith(" L"):
            middle = floor - (text.top + text.bottom) / 2
            assert middle == pytest.approx(litre * int(text.words.split()[0]), abs=0.4)


@pytest.mark.parametrize(("start", "step"), [("1 lb 4 oz", "1 lb 4 oz"), ("15 lb", "-1 lb 4 oz"), ("250 g", "250 g")])
def test_the_pointer_of_a_scale_turns_in_proportion(start: str, step: str) -> None:
    of = count("mass", start, step, 10)
    angles = []
    for line in of_class(draw_picture(of), "p-minute"):
        x, y, end_x, end_y = map(float, re.findall(r"-?[\d.]+", line.get("d")))
        angles.append(degrees(atan2(end_x - x, y - end_y)) % 360)
    values = [float(of.value(n)) for n in range(1, 11)]
    turn = sum(angles) / sum(values)
    assert angles == pytest.approx([turn * value for value in values], abs=0.4)
