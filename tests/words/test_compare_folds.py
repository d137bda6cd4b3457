"""The folds strip: what lines up, slides or vanishes, against looking at every cell."""

import re
from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting.audience import Audience
from routines.counting.checking import check
from routines.counting.count import Count
from routines.counting.errors import CountError
from routines.counting.grid import Grid
from routines.words import compare_folds, find_patterns
from tests.words.rules_of_folds import RULES
from tests.words.sentence_checker import Context, SentenceChecker

MOVES = {"column": (1, 0), "row": (0, 1), "down-right": (1, 1), "down-left": (1, -1)}


def report(kind, start, step, terms, length, fill="across", before=None, **audience):
    count = Count.parse(kind=kind, start=start, step=step, terms=terms)
    lengths = (length,) if before is None else (before, length)
    return compare_folds(count, lengths, (fill,), Audience(**audience))[-1]


def names(sights) -> list[str]:
    return [sight.name for sight in sights]


@st.composite
def counts(draw: st.DrawFn) -> Count:
    kind = draw(st.sampled_from(["whole", "decimal", "fraction", "money", "length", "clock"]))
    bottom = {"decimal": 10, "fraction": draw(st.integers(2, 8))}.get(kind, 1)
    terms = draw(st.integers(4, 30))
    step = draw(st.integers(1, 40))
    start = draw(st.integers(0, 90))
    if kind not in ("money", "length") and draw(st.booleans()):
        step = -step
    return Count.parse(kind=kind, start=Fraction(start, bottom), step=Fraction(step, bottom), terms=terms)


def what_is_read(claim, value: Fraction, count: Count) -> object:
    if claim.parameters.get("place") is not None:
        return abs(value) // Fraction(10) ** claim.parameters.get("place") % 10
    if claim.parameters.get("part") is not None:
        return count.form.parts(value).get(claim.parameters.get("part"))
    return value % claim.parameters.get("modulus")


@given(counts(), st.sampled_from(["across", "down", "across-up"]))
def test_what_lines_up_or_slides_reads_the_same_in_every_cell_of_its_way(count, fill):
    for fold in compare_folds(count, fills=(fill,)):
        for sight in (*fold.lines_up, *fold.slides):
            if sight.claim.family == "landmarks":
                continue
            cells = {
                (row, column): cell for row, cells in enumerate(fold.grid.cells()) for column, cell in enumerate(cells)
            }
            down, right = MOVES[sight.way]
            pairs = [
                (cell, other)
                for (row, column), cell in cells.items()
                if cell and (other := cells.get((row + down, column + right)))
            ]
            assert pairs
            for cell, other in pairs:
                read = what_is_read(sight.claim, cell.value, count)
                assert read == what_is_read(sight.claim, other.value, count)


@given(counts(), st.sampled_from(["across", "down", "across-up"]))
def test_the_claims_of_what_lines_up_are_true_and_seen(count, fill):
    for fold in compare_folds(count, fills=(fill,)):
        for sight in fold.lines_up:
            verdict = check(sight.claim, fold.grid)
            assert verdict.true
            assert verdict.seen
        for sight in fold.slides:
            assert sight.claim.family == "landmarks" or not check(sight.claim, fold.grid).true


@given(counts(), st.sampled_from(["across", "down", "across-up"]))
def test_every_constant_line_that_patterns_list_lines_up_or_is_said_by_another(count, fill):
    for fold in compare_folds(count, line_lengths=(2, 4, 5), fills=(fill,)):
        across_fill = "row" if fill == "down" else "column"
        said = {
            str(sight.claim.parameters.get("place")) + str(sight.claim.parameters.get("part"))
            for sight in fold.lines_up
        }
        for pattern in find_patterns(fold.grid):
            claim = pattern.claim
            if claim.family == "digit" and claim.parameters.get("along") == across_fill and claim.block_length == 1:
                assert str(claim.parameters.get("place")) + str(claim.parameters.get("part")) in said


@given(counts())
def test_what_vanishes_was_there_one_fold_before_and_is_not_here(count):
    for before, fold in pairwise(compare_folds(count, fills=("across",))):
        there = {*names(before.lines_up), *names(before.slides)}
        here = {*names(fold.lines_up), *names(fold.slides)}
        assert set(names(fold.vanishes)) <= there
        assert not set(names(fold.vanishes)) & here
        for sight in fold.vanishes:
            verdict = check(sight.claim, fold.grid)
            assert sight.claim.family == "landmarks" or not (verdict.true and verdict.seen)


def test_rows_of_eight_keep_the_inches_and_rows_of_five_do_not():
    eight = report("length", "1 ft 3 in", "9 in", 12, 8)
    five = report("length", "1 ft 3 in", "9 in", 12, 5)
    assert "the inches" in names(eight.lines_up)
    assert "the inches" not in names(five.lines_up)


def test_ones_digits_line_up_in_rows_of_five_and_slide_beside_them():
    five = report("whole", "58", "6", 20, 5)
    four, six = report("whole", "58", "6", 20, 4), report("whole", "58", "6", 20, 6)
    assert names(five.lines_up)[:2] == ["the tens", "the ones digits"]
    assert [(sight.name, sight.way) for sight in four.slides][:1] == [("the ones digits", "down-right")]
    # 70, 100, 130 are three tens on one diagonal.
    assert [(sight.name, sight.way) for sight in six.slides][:2] == [
        ("the tens", "down-left"),
        ("the ones digits", "down-left"),
    ]


@pytest.mark.parametrize(
    ("step", "length", "fill", "name"),
    [
        # 3, 6, 9 ... are the whole of column 3 in rows of 3; 9, 18 ... only every third cell of it.
        ("1", 3, "across", "the multiples of 3"),
        ("2", 2, "across", "the multiples of 4"),
        ("2", 2, "down", "the multiples of 4"),
        ("1", 5, "across", "the multiples of 5"),
        ("1", 10, "across", "the tens"),
    ],
)
def test_landmarks_that_fill_a_line_are_named_and_not_those_with_gaps_between_them(step, length, fill, name):
    fold = report("whole", step, step, 40, length, fill, before=length + 1, level=0)
    assert fold.sentence.endswith(f": {name} now line up.")
    for sight in fold.lines_up:
        if sight.claim.family == "landmarks":
            lines = fold.grid.lines(sight.way)
            chosen = [lines[number - 1] for number in sight.claim.parameters.get("lines")]
            assert all(
                fold.grid.count.value(n) % sight.claim.parameters.get("multiple") == 0 for line in chosen for n in line
            )


def test_a_row_that_is_turned_into_a_column_keeps_what_lines_up():
    across, down = report("whole", "58", "6", 20, 5), report("whole", "58", "6", 20, 5, "down")
    assert names(across.lines_up) == names(down.lines_up)
    assert {sight.way for sight in across.lines_up} == {"column"}
    assert {sight.way for sight in down.lines_up} == {"row"}


def test_line_lengths_over_the_number_of_terms_are_left_out():
    count = Count.parse(kind="whole", start="58", step="6", terms=7)
    assert [(fold.fill, fold.line_length) for fold in compare_folds(count, range(5, 12))] == [
        (fill, length) for fill in ("across", "down") for length in (5, 6, 7)
    ]


@pytest.mark.parametrize(
    ("before", "length", "level", "language", "sentence"),
    [
        (4, 5, 0, "en", "Rows of 5 instead of 4: the tens now line up."),
        (
            4,
            5,
            3,
            "en",
            "Rows of 5 instead of 4: the tens and the ones digits now line up; the multiples of 4 and the multiples of 8 slide.",
        ),
        (
            4,
            5,
            3,
            "es",
            "Filas de 5 en lugar de 4: ahora se alinean las decenas completas y las cifras de las unidades; se deslizan "
            "los múltiplos de 4 y los múltiplos de 8.",
        ),
    ],
)
def test_one_line_says_what_one_more_cell_does(before, length, level, language, sentence):
    # 58, 64, 70, ...: tens at every 5th count, multiples of 8 at every 4th (64, 88, ...), of 4 at every 2nd.
    fold = report("whole", "58", "6", 20, length, before=before, level=level, language=language)
    assert fold.sentence == sentence


def problems_of(fold, against: Grid | None, language: str) -> list[str]:
    """What its sentence says that is not so of the cells of the fold, or of the one it is compared with."""
    assert fold.before == (None if against is None else against.line_length)
    extra = {} if against is None else {"before": against.line_length, "against": against}
    return SentenceChecker(RULES, language).problems(fold.sentence, Context(fold.grid, extra=extra))


@given(counts(), st.sampled_from([0, 3, 5, 8]), st.sampled_from(["en", "es"]))
def test_every_sentence_names_its_fold_and_only_what_is_so(count, level, language):
    for fill in ("across", "down"):
        before = None
        for fold in compare_folds(count, fills=(fill,), audience=Audience(level, language)):
            assert re.search(rf"\b{fold.line_length}\b", fold.sentence)
            assert not re.search(r"[{}]", fold.sentence)
            assert fold.sentence.endswith(".")
            assert problems_of(fold, before, language) == []
            before = fold.grid


@given(
    counts(),
    st.integers(1, 12),
    st.integers(0, 11),
    st.sampled_from(["across", "down", "across-up"]),
    st.integers(0, 8),
)
def test_against_a_given_fold_every_sentence_is_so_of_both(count, length, lead, fill, level):
    length = min(length, count.terms)
    mine = Grid(count, length, fill, min(lead, length - 1))
    for language in ("en", "es"):
        for fold in compare_folds(count, fills=(fill,), audience=Audience(level, language), against=mine):
            assert problems_of(fold, None if fold.grid == mine else mine, language) == []


@given(counts(), st.integers(1, 12), st.sampled_from(["across", "down", "across-up"]))
def test_nothing_lines_up_only_where_no_landmark_line_and_no_constant_block_can_be_seen(count, length, fill):
    mine = Grid(count, min(length, count.terms), fill)
    for fold in compare_folds(count, fills=(fill,), against=mine):
        if not re.search("nothing lines up", fold.sentence):
            continue
        for pattern in find_patterns(fold.grid, implied=True):
            claim = pattern.claim
            if claim.family == "landmarks":
                assert claim.parameters["lie"] == "scattered", pattern.statement
            elif claim.family in ("digit", "remainder"):
                assert claim.block_length != 1 or claim.parameters["along"] == "count", pattern.statement


@given(counts(), st.integers(1, 12), st.sampled_from(["across", "down", "across-up"]))
def test_what_no_longer_lines_up_is_no_pattern_of_a_line_in_the_picture(count, length, fill):
    mine = Grid(count, min(length, count.terms), fill)
    for fold in compare_folds(count, fills=(fill,), against=mine):
        for sight in fold.vanishes:
            for pattern in find_patterns(fold.grid, implied=True):
                if pattern.claim.family != sight.of.family or pattern.claim.subject.items() < sight.of.subject.items():
                    continue
                about = {name: value for name, value in pattern.claim.subject.items() if name != "along"}
                if about == {name: value for name, value in sight.of.subject.items() if name != "along"}:
                    lie = pattern.claim.parameters.get("lie", "scattered")
                    assert lie == "scattered"
                    assert pattern.claim.family == "landmarks" or pattern.claim.block_length != 1


def test_a_fold_is_compared_with_the_one_that_i_have():
    # 58 64 70 ... in rows of 5 keep tens and ones digits in their columns; rows of 7 keep none of them.
    count = Count.parse(kind="whole", start="58", step="6", terms=20)
    mine = Grid(count, 5)
    five, seven = compare_folds(count, (5, 7), ("across",), Audience(3), against=mine)
    assert (five.before, five.sentence[:13]) == (None, "In rows of 5,")
    assert seven.sentence == (
        "Rows of 7 instead of 5: the multiples of 7 now line up; the tens and the ones digits no longer line up or slide."
    )
    (columns,) = compare_folds(count, (7,), ("down",), Audience(3), against=mine)
    assert columns.before is None


def test_what_stays_along_the_fill_is_said_where_nothing_else_lines_up():
    # 20 21 22 / 23 24 25 / ... 29: no digit stays in a column of 3, but 1 2 / 3 4 ... each column of 10 keeps its tens.
    count = Count.parse(kind="whole", start="20", step="1", terms=10)
    (ten,) = compare_folds(count, (10,), ("down",))
    assert ten.sentence == "In columns of 10, only what all counts share lines up."


def test_the_patterns_of_a_fold_are_those_of_its_grid():
    fold = report("whole", "58", "6", 20, 5, level=2)
    expected = find_patterns(Grid(fold.grid.count, 5), audience=Audience(2))
    assert list(fold.patterns) == expected


@pytest.mark.parametrize(
    ("changed", "field"), [({"fills": ("round",)}, "fill"), ({"line_lengths": (0,)}, "line_length")]
)
def test_a_fold_that_cannot_be_is_refused(changed, field):
    with pytest.raises(CountError) as refused:
        compare_folds(Count.parse(kind="whole", start="58", step="6", terms=7), **changed)
    assert refused.value.field == field
