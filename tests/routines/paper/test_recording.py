"""Recording sheets: each is solved here from its givens alone, by exact arithmetic of the test's own."""

import re
from fractions import Fraction
from importlib import import_module

import pytest
from hypothesis import given as for_all
from hypothesis import strategies as st

from routines.counting import Count, Grid
from routines.models.plan_document import Fold
from routines.paper.recording import AMOUNTS, givens, recording_sheets
from routines.paper.subject import Subject
from tests.routines.making import make_routine
from tests.routines.paper.plans import BY_KIND, plan_of

DEMO = [
    demo.plan
    for module in ("first_grades", "measures", "middle_grades", "upper_areas", "whole_numbers")
    for demo in import_module(f"routines.demo.plans.{module}").PLANS
]

# How large each unit is, in the smallest of its family (NIST Handbook 44, Appendix C: 12 in = 1 ft, 16 oz = 1 lb).
UNITS = {"in": 1, "ft": 12, "oz": 1, "lb": 16, "cm": 1, "m": 100, "mL": 1, "L": 1000, "fl oz": 1, "min": 1, "h": 60}
HALF_DAY = 720


def number(text: str) -> Fraction:
    """A whole number, decimal, fraction or mixed number, with this school's marks."""
    sign, rest = (-1, text[1:]) if text.startswith("-") else (1, text)
    parts = rest.replace(",", "").split()
    return sign * sum((Fraction(part) for part in parts), Fraction(0))


def read(text: str, kind: str) -> Fraction:
    """What a child reads in a cell, as one exact number."""
    if kind == "clock":
        hours, minutes = text.split(":")
        return Fraction(int(hours) % 12 * 60 + int(minutes))
    if kind == "money":
        return number(text.replace("$", ""))
    if kind in ("whole", "decimal", "fraction"):
        return number(text.split(" = ")[0])
    found = re.findall(r"([\d.,/ ]+?)\s*(fl oz|[a-zA-Z]+)", text)
    return sum((number(amount.strip()) * UNITS[unit] for amount, unit in found), Fraction(0))


def place(n: int, plan) -> tuple[int, int]:
    """Row and column of the n-th count, worked out from the fold alone."""
    line, at = divmod(plan.fold.lead + n - 1, plan.fold.line_length)
    lines = -(-(plan.fold.lead + plan.count.terms) // plan.fold.line_length)
    return {"across": (line, at), "down": (at, line), "across-up": (lines - 1 - line, at)}[plan.fold.fill]


def position(row: int, column: int, plan) -> int:
    """The other way round: which count stands in a cell, from 0."""
    lines = -(-(plan.fold.lead + plan.count.terms) // plan.fold.line_length)
    line, at = {"across": (row, column), "down": (column, row), "across-up": (lines - 1 - row, column)}[plan.fold.fill]
    return line * plan.fold.line_length + at - plan.fold.lead


def solutions(given: dict[tuple[int, int], Fraction], plan) -> list[list[Fraction]]:
    """Every count that agrees with the given cells."""
    (first, value), *others = sorted((position(*cell, plan), value) for cell, value in given.items())
    terms = range(plan.count.terms)
    if plan.count.kind != "clock":
        steps = {(other - value) / (n - first) for n, other in others}
        return [[value + (n - first) * step for n in terms] for step in steps] if len(steps) == 1 else []
    fitting = [
        step
        for step in range(HALF_DAY)
        if all((value + (n - first) * step - other) % HALF_DAY == 0 for n, other in others)
    ]
    return [[(value + (n - first) * step) % HALF_DAY for n in terms] for step in fitting]


def solved(plan, amount: str, level: int) -> list[list[Fraction]]:
    grid = plan.grid()
    cells = {place(n, plan): read(grid.count.text(n), plan.count.kind) for n in givens(grid, amount, level)}
    return solutions(cells, plan)


@pytest.mark.parametrize("amount", AMOUNTS)
@pytest.mark.parametrize("plan", DEMO, ids=lambda plan: plan.title)
def test_every_demo_count_follows_from_what_is_given(plan, amount):
    if plan.count.style.get("decimal_mark") == ",":
        plan = plan.changed(count=type(plan.count)(plan.count.kind, "75 cm", "75 cm", 12))
    whole = [read(plan.grid().count.text(n), plan.count.kind) for n in range(1, plan.count.terms + 1)]
    for level in (0, 4):
        assert solved(plan, amount, level) == [whole]


@for_all(
    start=st.fractions(0, 500, max_denominator=12),
    step=st.fractions(-9, 40, max_denominator=12).filter(bool),
    terms=st.integers(2, 60),
    line=st.integers(1, 12),
    fill=st.sampled_from(["across", "down", "across-up"]),
    lead=st.integers(0, 11),
    amount=st.sampled_from(AMOUNTS),
    level=st.integers(0, 8),
)
def test_any_fold_is_solvable_and_leaves_something_to_fill(start, step, terms, line, fill, lead, amount, level):
    line = min(line, terms)
    grid = Grid(Count.parse(kind="fraction", start=start, step=step, terms=terms), line, fill, lead % line)
    given = givens(grid, amount, level)
    assert given == sorted(set(given))
    assert all(1 <= n <= terms for n in given)
    assert len(given) >= 2
    assert len(given) < terms or terms == 2
    plan = plan_of(BY_KIND["fraction"], Fold(line, fill, lead % line))
    plan = plan.changed(count=type(plan.count)("fraction", str(start), str(step), terms))
    cells = {place(n, plan): start + (n - 1) * step for n in given}
    assert solutions(cells, plan) == [[start + n * step for n in range(terms)]]


def test_two_distant_times_would_not_be_enough():
    """Why the sheets of a clock give two neighbours: 7:10 and, two counts on, 8:30 also fit a step of 6 h 40 min."""
    plan = plan_of(BY_KIND["clock"], Fold(3))
    cells = {(0, 0): read("7:10", "clock"), (0, 2): read("8:30", "clock")}
    assert len(solutions(cells, plan)) == 2


def test_less_is_given_from_sheet_to_sheet():
    for plan in DEMO:
        most, some, few = (len(givens(plan.grid(), amount, 3)) for amount in AMOUNTS)
        assert most >= some >= few == 2, plan.title


@pytest.mark.parametrize("kind", BY_KIND)
def test_what_is_not_given_is_nowhere_on_the_sheet(kind, owner, school, words):
    plan = plan_of(BY_KIND[kind], Fold(4), title="Planted damson")
    subject = Subject(make_routine(owner, plan=plan).current_version, school)
    for amount in AMOUNTS:
        given = givens(subject.grid, amount, subject.routine.grade.level)
        (sheet,) = recording_sheets(subject, (amount,))
        told = re.search(r"<desc>(.*?)</desc>", sheet)[1].replace("\u2212", "-")
        heard = [text for text in re.split(r"[:;,] |\.$", told) if text and "row" not in text and "column" not in text]
        assert [text for text in heard if text != "empty"] == [subject.grid.count.text(n) for n in given]
        assert "damson" not in sheet


def test_the_sheet_asks_for_what_is_seen_and_has_no_place_for_a_name(owner, school, words):
    subject = Subject(make_routine(owner).current_version, school, "both")
    for sheet in recording_sheets(subject):
        said = words(sheet)
        assert "What do you see?" in said
        assert "¿Qué ves?" in said
        assert not re.search(r"\b[Nn]ame\s*[:_]", said)
        assert owner.display_name not in said


def test_each_amount_is_one_page(owner, printed):
    routine = make_routine(owner, plan=plan_of(BY_KIND["fraction"], Fold(4)))
    assert len(printed(routine, "recording", language="both").pdf.pages) == 3
    assert len(printed(routine, "recording", amount="few").pdf.pages) == 1


@pytest.mark.parametrize("language", ["en", "both"])
def test_what_a_low_grid_leaves_of_the_page_is_for_writing(language, owner, school):
    """Two long lines leave most of a page across; a grid that fills it leaves the two lines that there always are."""
    lines = {
        line: recording_sheets(
            Subject(make_routine(owner, plan=plan_of(BY_KIND["length"], Fold(line))).current_version, school, language)
        )[0].count('class="ruled"')
        for line in (4, 10)
    }
    assert 2 <= lines[4] < lines[10] - 2
