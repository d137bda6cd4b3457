"""Coins and notes: what lies in a row is worth what is written beside it, to the cent."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Count, Style
from routines.demo.plans import PLANS
from routines.drawing.pictures import DOZEN, NARROW, WIDE, draw_picture, pictures_for
from routines.drawing.pictures.purses import PURSES, change
from tests.routines.drawing.pictures.drawn import count, number, of_class, written

DEMO = [demo.plan.count.count() for demo in PLANS if demo.plan.count.count().kind == "money"]
# What a face says, in cents; written out here so that a wrong face is found.
FACES = {"1¢": 1, "5¢": 5, "10¢": 10, "25¢": 25, "50¢": 50, "$1": 100, "$5": 500, "$10": 1000, "$20": 2000}


def worth(drawn: str, amounts: list[str]) -> list[int]:
    """What lies below each written amount and above the next one (wide: beside it), added up by face value."""
    texts = written(drawn)
    starts = [next(text for text in texts if text.words == amount and text.size > 16) for amount in amounts]
    shift = 40 if number(of_class(drawn, "g-root")[0], "width") == WIDE else 5
    totals = []
    for index, start in enumerate(starts):
        end = starts[index + 1].top if index + 1 < len(starts) else 10**6
        inside = [text for text in texts if start.top - shift / 2 <= text.top < end - shift / 2]
        times = [text for text in inside if text.words.endswith(" ×")]
        total = 0
        for text in inside:
            if text.words in FACES:
                before = [t for t in times if 0 < text.left - t.right < 40 and abs(text.bottom - t.bottom) < 10]
                total += FACES[text.words] * (int(before[0].words.split()[0]) if before else 1)
        totals.append(total)
    return totals


@pytest.mark.parametrize("of", DEMO, ids=lambda of: of.text(1))
@pytest.mark.parametrize("width", [WIDE, NARROW])
def test_the_coins_of_every_money_count_of_the_demo_school_add_up(of: Count, width: int) -> None:
    for first in range(1, of.terms + 1, DOZEN):
        terms = range(first, min(first + DOZEN, of.terms + 1))
        drawn = draw_picture(of, kind="coins", first=first, width=width)
        assert worth(drawn, [of.text(n) for n in terms]) == [of.start + (n - 1) * of.step for n in terms]


@given(st.integers(0, 50_000), st.integers(1, 3_000), st.integers(2, 12))
def test_the_coins_of_any_count_in_dollars_add_up(start: int, step: int, terms: int) -> None:
    of = Count("money", start, step, terms)
    drawn = draw_picture(of, kind="coins")
    amounts = [start + step * k for k in range(terms)]
    assert worth(drawn, [f"${value // 100:,}.{value % 100:02d}" for value in amounts]) == amounts


@given(st.sampled_from(sorted(PURSES)), st.integers(0, 10**6), st.integers(1, 1000))
def test_change_adds_up_in_every_currency_or_is_none(code: str, amount: int, step: int) -> None:
    purse = PURSES[code]
    paid = change(purse, amount, step)
    if paid is None:
        smallest = min(piece.value for piece in purse.denominations)
        assert amount % smallest  # nothing but a rest below the smallest coin is in the way
    else:
        assert sum(piece.value * many for piece, many in paid) == amount
        values = [piece.value for piece, _ in paid]
        assert values == sorted(set(values), reverse=True)


def fewest(values: list[int], up_to: int) -> list[int]:
    """How few pieces make each amount, by trying every last piece."""
    found = [0]
    for amount in range(1, up_to + 1):
        found.append(1 + min(found[amount - value] for value in values if value <= amount))
    return found


def test_change_in_dollars_takes_the_fewest_pieces() -> None:
    few = fewest([1, 5, 10, 25, 100, 500, 1000, 2000], 2500)
    for amount in range(1, 2501):
        assert sum(many for _, many in change(PURSES["USD"], amount, 7)) == few[amount]


def test_the_half_dollar_comes_only_where_the_count_steps_by_it() -> None:
    assert [piece.value for piece, _ in change(PURSES["USD"], 75, 25)] == [25]
    assert [piece.value for piece, _ in change(PURSES["USD"], 75, 50)] == [50, 25]


def test_a_coin_is_a_disc_a_note_a_slip_and_both_say_what_they_are_worth() -> None:
    drawn = draw_picture(count("money", "$1.15", "$1.15", 2))
    assert len(of_class(drawn, "p-note")) == 1 + 2
    assert len(of_class(drawn, "p-coin")) == 2 + 2
    faces = [text.words for text in written(drawn) if text.words in FACES]
    assert sorted(faces) == sorted(["$1", "10¢", "5¢", "$1", "$1", "25¢", "5¢"])


def test_many_of_one_kind_are_drawn_once_with_how_many() -> None:
    words = [text.words for text in written(draw_picture(count("money", "$200", "$20", 2)))]
    assert "10 ×" in words
    assert "11 ×" in words


@pytest.mark.parametrize("code", sorted(PURSES))
def test_faces_write_the_value_in_every_currency(code: str) -> None:
    purse = PURSES[code]
    for piece in purse.denominations:
        said = int(re.search(r"\d+", purse.face(piece.value))[0])
        assert piece.value in (said, said * purse.unit)
    of = Count("money", purse.denominations[-1].value, purse.denominations[-1].value, 3, Style(currency=code))
    assert pictures_for(of)[0][0] == "coins"
