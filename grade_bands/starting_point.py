"""What a school starts from: grades K to 6 (or further), in bands, with the areas a count is expected to touch.

Source of the areas: each is one that the Common Core standards of that grade name for counting (data/standards.csv);
which of them a school expects is its own choice, on its page of grades. Grades 7 and 8 go on from 6: common practice,
no source.
"""

from .models import Area

GRADE_NAMES = ("K", "1", "2", "3", "4", "5", "6", "7", "8")
USUAL_LEVELS = range(7)
BANDS = ((0, 1), (2, 3), (4, 5), (6, 7, 8))

EXPECTED_AREAS = (
    (Area.WHOLE,),
    (Area.WHOLE, Area.MEASUREMENT, Area.TIME),
    (Area.WHOLE, Area.MEASUREMENT, Area.MONEY, Area.TIME),
    (Area.WHOLE, Area.FRACTIONS, Area.MEASUREMENT, Area.TIME),
    (Area.WHOLE, Area.FRACTIONS, Area.DECIMALS, Area.MEASUREMENT),
    (Area.WHOLE, Area.FRACTIONS, Area.DECIMALS, Area.MEASUREMENT),
    (Area.INTEGERS, Area.DECIMALS, Area.RATIOS),
    (Area.INTEGERS, Area.DECIMALS, Area.RATIOS),
    (Area.INTEGERS, Area.DECIMALS, Area.RATIOS),
)


def band_name(levels: list[int]) -> str:
    """ "K-1", or the grade's own name where the band has one grade."""
    first, last = GRADE_NAMES[levels[0]], GRADE_NAMES[levels[-1]]
    return first if first == last else f"{first}-{last}"
