"""What counts may be wanted for: each standard of the bundled table, and each area where schools usually expect it."""

import csv
from collections.abc import Iterator
from pathlib import Path

from routines.counting import Wanted

STANDARDS = Path(__file__).parents[3] / "grade_bands" / "data" / "standards.csv"
ROWS = list(csv.DictReader(STANDARDS.open(encoding="utf-8")))
LEVELS = {"K": 0, **{str(grade): grade for grade in range(1, 9)}}
AREAS = {"whole numbers": "whole"}

# Where coverage expects an area, grade by grade (grade_bands/starting_point.py, written down here once more).
EXPECTED = {
    0: "whole",
    1: "whole measurement time",
    2: "whole measurement money time",
    3: "whole fractions measurement time",
    4: "whole fractions decimals measurement",
    5: "whole fractions decimals measurement",
    6: "integers decimals ratios",
    7: "integers decimals ratios",
    8: "integers decimals ratios",
}


def area_of(row: dict[str, str]) -> str:
    return AREAS.get(row["area"], row["area"])


def of_standard(row: dict[str, str]) -> Wanted:
    ratios = "ratios" if row["area"] == "ratios" else ""
    return Wanted(LEVELS[row["grade"]], (row["count_features"],), ratios)


def standards() -> Iterator[tuple[str, Wanted]]:
    """Every standard that says what it asks of a count."""
    for row in ROWS:
        if row["count_features"]:
            yield row["code"], of_standard(row)


def areas() -> Iterator[tuple[str, Wanted]]:
    """Every area at every level where it is expected: as its standards ask, where there are some, and by itself."""
    for level, expected in EXPECTED.items():
        for area in expected.split():
            named = [row for row in ROWS if LEVELS[row["grade"]] == level and area_of(row) == area]
            asked = tuple(row["count_features"] for row in named if row["count_features"])
            if asked:
                yield f"{area} at level {level}", Wanted(level, asked, area)
            yield f"{area} at level {level}, without standards", Wanted(level, (), area)
