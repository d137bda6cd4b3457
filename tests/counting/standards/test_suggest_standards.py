"""Which standards a count serves.

Source: Common Core State Standards for Mathematics (NGA Center and CCSSO, 2010), as in tests/reference/standards.csv;
the split into direct and support is the table's own judgment.
"""

from dataclasses import dataclass

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Audience, Count, CountError, Grid
from routines.words import SpokenFit, suggest_standards
from tests.counting.any_count import KINDS, grids
from tests.counting.standards.test_features import rows

ROWS = rows()


def fits(kind: str, start: str, step: str, terms: int = 12, grade: int | None = None) -> list[SpokenFit]:
    grid = Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), min(4, terms))
    return suggest_standards(grid, ROWS, grade)


def direct(found: list[SpokenFit]) -> set[str]:
    return {fit.code for fit in found if fit.fit == "direct"}


@pytest.mark.parametrize(
    ("code", "kind", "start", "step", "terms"),
    [
        ("K.CC.A.1", "whole", "1", "1", 100),
        ("K.CC.A.1", "whole", "10", "10", 10),
        ("K.CC.A.2", "whole", "37", "1", 20),
        ("1.NBT.A.1", "whole", "94", "1", 27),
        ("1.NBT.C.5", "whole", "13", "10", 9),
        ("1.MD.B.3", "clock", "9:00", "30 min", 8),
        ("2.NBT.A.2", "whole", "35", "5", 30),
        ("2.NBT.B.8", "whole", "374", "10", 12),
        ("2.MD.C.7", "clock", "10:50", "20 min", 12),
        ("2.MD.C.8", "money", "$2.85", "5c", 12),
        ("3.OA.C.7", "whole", "7", "7", 10),
        ("3.NF.A.1", "fraction", "1/4", "1/4", 12),
        ("3.MD.A.2", "mass", "200 g", "150 g", 12),
        ("4.NF.B.3", "fraction", "1/8", "1/8", 12),
        ("4.OA.C.5", "whole", "1,325", "-50", 16),
        ("4.NF.C.6", "decimal", "0.1", "0.1", 12),
        ("4.MD.A.2", "length", "1 ft 3 in", "9 in", 12),
        ("5.NF.A.1", "fraction", "1/2", "1/3", 12),
        ("5.NBT.B.7", "decimal", "1.40", "0.03", 12),
        ("6.NS.C.5", "whole", "14", "-6", 12),
    ],
)
def test_a_count_made_for_a_standard_serves_it_directly(
    code: str, kind: str, start: str, step: str, terms: int
) -> None:
    assert code in direct(fits(kind, start, step, terms))


@pytest.mark.parametrize(
    ("code", "kind", "start", "step", "terms"),
    [
        ("1.NBT.A.1", "whole", "94", "1", 28),  # past 120, CC-07 of the worked examples
        ("1.NBT.C.5", "whole", "100", "-10", 4),  # three digits given, CC-09
        ("2.NBT.B.8", "whole", "90", "10", 4),
        ("2.OA.C.3", "whole", "2", "2", 11),
        ("3.NF.A.1", "fraction", "1/5", "1/5", 12),
        ("3.NF.A.1", "fraction", "2/4", "2/4", 12),
        ("2.MD.C.7", "clock", "10:50", "12 min", 12),
        ("K.CC.A.1", "whole", "1", "-1", 2),
        ("6.NS.C.5", "whole", "14", "-1", 6),
        ("4.OA.C.5", "length", "1 ft 3 in", "9 in", 12),
    ],
)
def test_a_count_outside_a_limit_does_not_serve_the_standard(
    code: str, kind: str, start: str, step: str, terms: int
) -> None:
    assert code not in {fit.code for fit in fits(kind, start, step, terms)}


def test_direct_fits_come_first() -> None:
    kinds = [fit.fit for fit in fits("whole", "5", "5", 20)]
    assert kinds == sorted(kinds, key=lambda kind: kind != "direct")
    assert {"direct", "support"} == set(kinds)


def test_the_grade_asked_for_and_its_neighbours_come_before_the_rest_and_far_grades_stay_out() -> None:
    grades = [fit.grade for fit in fits("whole", "1", "1", 100, grade=0)]
    assert grades[0] == "K"
    assert "2" in grades
    assert grades.index("2") > max(i for i, grade in enumerate(grades) if grade in ("K", "1"))
    assert not {"3", "4", "5", "6"} & set(grades)


def test_a_count_far_from_its_grade_still_finds_its_standards() -> None:
    assert direct(fits("whole", "13", "10", 9, grade=8)) == direct(fits("whole", "13", "10", 9)) != set()


@pytest.mark.parametrize(
    ("kind", "step", "terms", "fit", "told"),
    [
        ("mass", "250 g", 4, "direct", "reaches or passes a whole kilogram"),
        ("mass", "250 g", 3, "support", "does not reach a whole kilogram"),
        ("length", "3 in", 4, "direct", "reaches or passes a whole foot"),
        ("length", "3 in", 3, "support", "does not reach a whole foot"),
        ("capacity", "8 fl oz", 2, "direct", "reaches or passes a whole cup"),
        ("elapsed", "25 min", 4, "direct", "reaches or passes a whole hour"),
        ("mass", "2 kg", 12, "support", "written in the largest"),
    ],
)
def test_a_measure_in_one_unit_passes_wholes_of_the_next_larger_one(
    kind: str, step: str, terms: int, fit: str, told: str
) -> None:
    found = {one.code: one for one in fits(kind, step, step, terms)}["4.MD.A.2"]
    assert (found.fit, told in found.reason) == (fit, True)


def test_a_landmark_that_is_not_passed_leaves_the_standard_supported() -> None:
    found = {fit.code: fit for fit in fits("money", "$1.05", "5c", 10)}
    assert found["2.MD.C.8"].fit == "support"
    assert "does not reach a whole dollar" in found["2.MD.C.8"].reason


def test_what_takes_two_counts_is_at_most_supported() -> None:
    found = {fit.code: fit.fit for fit in fits("fraction", "2/3", "2/3")}
    assert found["4.NF.B.4.b"] == "support"
    assert not [fit for fit in fits("whole", "5", "5", 20) if fit.area == "ratios"]


def test_the_reason_holds_the_counts_own_numbers() -> None:
    found = {fit.code: fit.reason for fit in fits("whole", "5", "5", 20)}
    assert found["3.OA.C.7"] == "The count goes up by 5, starts at 5 and has 100 as its largest number."
    spanish = suggest_standards(
        Grid(Count.parse(kind="whole", start="5", step="5", terms=20), 5), ROWS, audience=Audience(3, "es")
    )
    assert all(fit.reason.startswith("El conteo sube de 5 en 5") for fit in spanish)


def test_rows_may_be_objects_and_rows_without_features_are_left_out() -> None:
    @dataclass
    class Row:
        code: str
        count_features: str
        grade: str = "3"
        area: str = "whole numbers"
        summary: str = "Our own."

    grid = Grid(Count.parse(kind="whole", start="5", step="5", terms=20), 5)
    found = suggest_standards(
        grid, [Row("X.1", "fit=direct; step=5"), Row("X.2", ""), Row("X.3", "fit=direct; step=6")]
    )
    assert [fit.code for fit in found] == ["X.1"]


def test_features_that_cannot_be_read_are_an_error_not_a_guess() -> None:
    grid = Grid(Count.parse(kind="whole", start="5", step="5", terms=20), 5)
    with pytest.raises(CountError):
        suggest_standards(grid, [{"code": "X", "count_features": "fit=direct; step=several"}])


@given(st.sampled_from(KINDS).flatmap(grids), st.integers(0, 8), st.sampled_from(["en", "es"]))
def test_any_grid_can_be_asked(grid: Grid, grade: int, language: str) -> None:
    for fit in suggest_standards(grid, ROWS, grade, audience=Audience(3, language)):
        assert fit.fit in ("direct", "support")
        assert fit.reason.endswith(".")
