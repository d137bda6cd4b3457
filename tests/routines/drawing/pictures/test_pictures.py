"""What every picture keeps to, whatever the count: titled, readable, nothing on top of anything, a dozen terms at most."""

import re
from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Count
from routines.demo.plans import PLANS
from routines.drawing.pictures import DOZEN, NARROW, WIDE, draw_picture, pictures_for
from routines.drawing.svg import rules, tokens
from tests.routines.drawing.pictures.drawn import SVG, count, counts, number, parse, written
from tests.routines.drawing.test_tokens import TEXT, contrast

SMALLEST_TEXT = 12
DEMO = [(demo.key, demo.plan.count.count(), demo.plan.language) for demo in PLANS]
widths = pytest.mark.parametrize("width", [WIDE, NARROW])


def assert_readable(drawn: str) -> None:
    root, texts = parse(drawn), written(drawn)
    assert root.find(f"{SVG}title").text
    assert root.find(f"{SVG}desc").text
    assert " id=" not in drawn  # two pictures may stand on one page
    assert "style=" not in drawn
    wide, tall = number(root, "width"), number(root, "height")
    for text in texts:
        assert text.size >= SMALLEST_TEXT - 0.05, text
        assert text.left >= -0.1, text
        assert text.right <= wide + 0.1, text
        assert text.top >= 0, text
        assert text.bottom <= tall, text
    for one, other in combinations(texts, 2):
        assert not one.meets(other), (one, other)


@widths
@pytest.mark.parametrize(("key", "of", "language"), DEMO, ids=[key for key, *_ in DEMO])
def test_every_picture_of_every_count_of_the_demo_school_is_readable(key, of: Count, language, width) -> None:
    for kind, label in pictures_for(of, language):
        assert label
        for first in range(1, of.terms + 1, DOZEN):
            assert_readable(draw_picture(of, kind=kind, first=first, width=width, language=language))


@given(counts(), st.sampled_from([WIDE, NARROW]), st.data())
def test_pictures_of_any_count_are_readable(of: Count, width: int, data: st.DataObject) -> None:
    kind = data.draw(st.sampled_from([kind for kind, _ in pictures_for(of)]))
    first = data.draw(st.integers(1, of.terms))
    assert_readable(draw_picture(of, kind=kind, first=first, width=width, language=of.style.language))


@pytest.mark.parametrize(
    ("of", "kinds"),
    [
        (count("whole", "10", "6"), ["line"]),
        (count("whole", "6", "-4"), ["line"]),
        (count("fraction", "3/4", "3/4"), ["bars", "line"]),
        (count("fraction", "1", "-1/4"), ["line"]),  # goes below zero
        (count("fraction", "1/40", "1/40"), ["line"]),  # parts too thin to be seen
        (count("decimal", "0.2", "0.2"), ["line", "bars"]),
        (count("decimal", "0.25", "0.25"), ["line"]),
        (count("length", "2 in", "2 in"), ["ruler", "line"]),
        (count("mass", "1 lb 4 oz", "1 lb 4 oz"), ["scale", "line"]),
        (count("capacity", "750 mL", "750 mL"), ["jugs", "line"]),
        (count("capacity", "10 L", "10 mL"), ["line"]),  # jumps too small to be seen
        (count("money", "$0.05", "$0.10"), ["coins", "line"]),
        (count("money", "0.07", "0.10", currency="CAD"), ["line"]),  # no cent coin
        (count("money", "7", "1", currency="SEK"), ["line"]),  # coins not known here
        (count("clock", "7:10", "40 min"), ["clock", "line"]),
        (count("elapsed", "35 min", "35 min"), ["line"]),
    ],
)
def test_which_pictures_fit_a_count(of: Count, kinds: list[str]) -> None:
    assert [kind for kind, _ in pictures_for(of)] == kinds


def test_the_best_picture_is_drawn_when_none_is_chosen() -> None:
    assert parse(draw_picture(count("clock", "7:10", "40 min"))).get("data-picture") == "clock"


def test_what_does_not_fit_is_refused() -> None:
    with pytest.raises(ValueError, match="coins"):
        draw_picture(count("whole", "1", "1"), kind="coins")
    with pytest.raises(ValueError, match="terms"):
        draw_picture(count("whole", "1", "1"), first=13)


def test_a_dozen_at_most_and_the_words_tell_which() -> None:
    of = count("whole", "10", "6", 30)
    told = parse(draw_picture(of, first=13, last=30)).find(f"{SVG}desc").text
    values = re.findall(r"\d+", told)
    assert [int(value) for value in values] == [10 + 6 * (n - 1) for n in range(13, 25)] + [6]
    assert "82 to 148" in parse(draw_picture(of, first=13)).find(f"{SVG}title").text


def test_pictures_speak_spanish() -> None:
    of = count("clock", "7:10", "40 min")
    drawn = draw_picture(of, language="es")
    assert "Relojes" in parse(drawn).find(f"{SVG}title").text
    assert any(text.words == "40 min después" for text in written(drawn))
    assert pictures_for(of, "es")[1] == ("line", "Línea de tiempo")


@given(counts())
def test_on_paper_every_rule_is_an_attribute_and_nothing_else_changes(of: Count) -> None:
    for kind, _ in pictures_for(of):
        screen, paper = draw_picture(of, kind=kind), draw_picture(of, kind=kind, on_paper=True)
        assert "class=" not in paper
        assert "var(" not in paper
        assert [text.words for text in written(paper)] == [text.words for text in written(screen)]
        assert parse(paper).get("height") == parse(screen).get("height")


@pytest.mark.parametrize("theme", ["paper", "slate", "print"])
@pytest.mark.parametrize(
    ("colour", "ground"),
    [("--ink", "--hairline"), ("--ink", "--blue-wash"), ("--ink", "--wash"), ("--ink-2", "--pleat")],
)
def test_words_stand_out_from_the_grounds_of_the_pictures(theme: str, colour: str, ground: str) -> None:
    assert contrast(tokens(theme)[colour], tokens(theme)[ground]) >= TEXT


def test_every_class_of_the_pictures_has_its_rule() -> None:
    used = set()
    for _, of, language in DEMO:
        for kind, _ in pictures_for(of):
            drawn = draw_picture(of, kind=kind, language=language)
            used |= {name for shape in parse(drawn).iter() for name in (shape.get("class") or "").split()}
    assert {name for name in used if name.startswith("p-")} > {
        "p-jump",
        "p-dot",
        "p-face",
        "p-coin",
        "p-note",
        "p-whole",
    }
    assert used <= set(rules())
