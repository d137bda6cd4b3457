"""Goals met or passed, groups, landmarks to ring and their larger names."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Count, CountError, Grid, Style
from routines.counting.stories import Story, landmark_terms, larger_name
from routines.counting.stories import proposed_landmarks as proposed
from routines.words import proposed_landmarks
from tests.counting.any_count import KINDS, counts
from tests.saying import saying


def crates() -> Count:
    return Count.parse(kind="mass", start="3 lb 8 oz", step="3 lb 8 oz", terms=8)


def test_a_goal_met_exactly() -> None:
    # 6 crates of 3 lb 8 oz hold 6 x 56 oz = 336 oz, and 336 / 16 = 21 lb.
    goal = crates().reaching("21 lb")
    assert (goal.n, goal.met, goal.by, goal.value) == (6, True, 0, 336)


def test_a_goal_passed_says_by_how_much() -> None:
    goal = crates().reaching("20 lb")
    assert (goal.n, goal.met, crates().difference_text(goal.by)) == (6, False, "1 lb")


@pytest.mark.parametrize("kind", [kind for kind in KINDS if kind != "clock"])
@given(data=st.data())
def test_the_first_count_at_or_past_the_goal_is_found_by_listing(kind: str, data: st.DataObject) -> None:
    count = data.draw(counts(kind))
    steps = Fraction(data.draw(st.integers(-20, 700)), 3)
    value = count.start + steps * count.step
    if not count.form.goes_below_zero:
        value = max(value, Fraction(0))
    n = 1
    while (count.value(n) - value) * count.step < 0:
        n += 1
    goal = count.reaching(value)
    assert goal.n == n
    assert goal.by == abs(count.value(n) - value)


@given(counts("clock"), st.integers(0, 1439))
def test_a_goal_on_a_clock_is_the_next_time_it_comes_round(count: Count, minutes: int) -> None:
    assert count.wrap is not None
    direction = 1 if count.step > 0 else -1
    until = 0
    while (count.start + direction * until - minutes) % count.wrap:
        until += 1
    n = 1
    while abs(count.value(n) - count.start) < until:
        n += 1
    goal = count.reaching(minutes)
    assert (goal.n, goal.by) == (n, abs(count.value(n) - count.start) - until)


@pytest.mark.parametrize("goal", ["", "21", "21 in", "21 lb lb", "twenty pounds", 21.0, None, True])
def test_a_goal_that_is_no_amount_is_refused(goal: object) -> None:
    with pytest.raises(CountError) as refused:
        crates().reaching(goal)  # type: ignore[arg-type]
    assert refused.value.field == "value"


@pytest.mark.parametrize("goal", ["-3 lb", Fraction(-48), -1])
def test_a_goal_below_zero_is_refused_where_no_count_goes_below_zero(goal: str | Fraction | int) -> None:
    with pytest.raises(CountError, check=saying("0 or more")) as refused:
        crates().reaching(goal)
    assert refused.value.field == "value"
    assert Count.parse(kind="whole", start="10", step="-7", terms=5).reaching("-3").n == 3


def test_a_goal_in_units_of_another_system_is_refused() -> None:
    with pytest.raises(
        CountError, check=saying("Write the value in customary units, as this count is: 3 lb 8 oz")
    ) as refused:
        crates().reaching("2 kg")
    assert refused.value.field == "value"


def test_a_story_names_its_groups_and_what_each_holds() -> None:
    story = Story(crates(), group="crate", goal="21 lb")
    assert [story.label(n) for n in (1, 2)] == ["crate 1", "crate 2"]
    assert story.each == "3 lb 8 oz"
    reached = story.reached()
    assert reached is not None
    assert reached.n == 6


def test_a_story_needs_no_goal() -> None:
    assert Story(crates(), group="crate").reached() is None


@pytest.mark.parametrize(
    ("field", "group", "goal"), [("group", " ", ""), ("group", "x" * 41, ""), ("value", "crate", "many")]
)
def test_a_story_that_cannot_be_told_is_refused(field: str, group: str, goal: str) -> None:
    with pytest.raises(CountError) as refused:
        Story(crates(), group=group, goal=goal)
    assert refused.value.field == field


@pytest.mark.parametrize("kind", KINDS)
@given(data=st.data())
def test_landmark_terms_are_found_by_listing(kind: str, data: st.DataObject) -> None:
    count = data.draw(counts(kind))
    for multiple in count.friendly_multiples():
        listed = tuple(n for n in range(1, count.terms + 1) if (count.value(n) / multiple).denominator == 1)
        assert landmark_terms(count, multiple, count.terms) == listed


@pytest.mark.parametrize(
    ("kind", "start", "step", "first"),
    [
        ("whole", "58", "6", ("tens", (3, 8, 13, 18))),
        ("fraction", "1/3", "2/3", ("wholes", (2, 5, 8, 11, 14, 17, 20))),
        ("length", "1 ft 3 in", "9 in", ("feet", (2, 6, 10, 14, 18))),
        ("money", "$0.10", "30c", ("dollars", (4, 14))),
        ("clock", "10:30", "15 min", ("hours", (3, 7, 11, 15, 19))),
        ("capacity", "250 mL", "250 mL", ("liters", (4, 8, 12, 16, 20))),
    ],
)
def test_the_landmarks_a_teacher_would_ring_come_first(kind: str, start: str, step: str, first: object) -> None:
    count = Count.parse(kind=kind, start=start, step=step, terms=20)
    proposed = proposed_landmarks(Grid(count, 5))
    assert (proposed[0].name, proposed[0].terms) == first


def test_money_is_ringed_at_its_own_coins_or_at_an_amount() -> None:
    # 31 U.S.C. 5112(a) names the dime, the quarter dollar and the half dollar.
    dollars = Count.parse(kind="money", start="5c", step="5c", terms=40)
    assert [marks.name for marks in proposed_landmarks(Grid(dollars, 5))][:2] == ["dollars", "half dollars"]
    euros = Count.parse(kind="money", start="0.05", step="0.05", terms=30, style=Style(currency="EUR"))
    assert [marks.name for marks in proposed_landmarks(Grid(euros, 5))][:2] == ["euros", "multiples of €0.50"]


@pytest.mark.parametrize(
    ("kind", "start", "step", "terms", "name", "ringed"),
    [
        # No count lands on a ten, a hundred or a thousand, and every one passes a hundred: the thousand crossed.
        ("whole", "240", "100", 16, "the first past each thousand", ["1,040"]),
        ("whole", "7", "10", 15, "the first past each hundred", ["107"]),
        ("whole", "1,325", "-50", 16, "the first below each thousand", ["975"]),
        ("whole", "10", "10", 12, "hundreds", ["100"]),
        ("mass", "6 oz", "6 oz", 20, "pounds", ["48 oz", "96 oz"]),
        ("money", "35c", "25c", 16, "the first past each dollar", ["110¢", "210¢", "310¢", "410¢"]),
        ("money", "5c", "5c", 24, "dollars", ["100¢"]),
    ],
)
def test_landmarks_are_ringed_as_a_class_would(
    kind: str, start: str, step: str, terms: int, name: str, ringed: list[str]
) -> None:
    count = Count.parse(kind=kind, start=start, step=step, terms=terms)
    best = proposed_landmarks(Grid(count, 4))[0]
    assert (best.name, [count.text(n) for n in best.terms]) == (name, ringed)


@given(st.integers(0, 999), st.integers(-120, 120).filter(bool), st.integers(4, 40))
def test_what_is_ringed_lands_on_a_landmark_or_is_the_first_past_one(start: int, step: int, terms: int) -> None:
    count = Count.parse(kind="whole", start=str(start), step=str(step), terms=terms)
    values = [start + i * step for i in range(terms)]
    for marks in proposed(Grid(count, 4)):
        m = int(marks.multiple)
        if marks.crossed:
            assert not any(value % 10 == 0 for value in values) or all(value % 10 == 0 for value in values)
            between = [n + 1 for n in range(1, terms) if values[n] // m != values[n - 1] // m]
            assert list(marks.terms) == between
        else:
            assert list(marks.terms) == [n + 1 for n in range(terms) if values[n] % m == 0]


def test_landmark_names_follow_the_language() -> None:
    count = Count.parse(kind="length", start="1 ft 3 in", step="9 in", terms=12, style=Style(language="es"))
    assert proposed_landmarks(Grid(count, 4))[0].name == "pies"


def test_where_every_count_is_a_multiple_there_is_nothing_to_ring() -> None:
    count = Count.parse(kind="whole", start="10", step="10", terms=9)
    assert "tens" not in [landmarks.name for landmarks in proposed_landmarks(Grid(count, 3))]


@pytest.mark.parametrize(
    ("kind", "start", "n", "multiple", "name"),
    [
        # NIST Handbook 44, Appendix C: 16 oz = 1 lb, 12 in = 1 ft, 36 in = 1 yd, 8 fl oz = 1 cup, 128 fl oz = 1 gal.
        ("mass", "12 oz", 4, 16, "3 lb"),
        ("length", "12 in", 3, 12, "3 ft"),
        ("length", "12 in", 3, 36, "1 yd"),
        ("capacity", "8 fl oz", 1, 8, "1 cup"),
        ("capacity", "8 fl oz", 2, 8, "2 cups"),
        ("capacity", "8 fl oz", 16, 128, "1 gal"),
        ("elapsed", "20 min", 6, 60, "2 h"),
        ("mass", "12 oz", 3, 16, None),
        ("whole", "10", 3, 10, None),
        ("clock", "1:00", 3, 60, None),
    ],
)
def test_a_landmark_under_its_larger_name(kind: str, start: str, n: int, multiple: int, name: str | None) -> None:
    step = "60 min" if kind == "clock" else start
    count = Count.parse(kind=kind, start=start, step=step, terms=20)
    assert larger_name(count, count.value(n), Fraction(multiple)) == name
