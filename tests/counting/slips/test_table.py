"""Every slip of the table is foreseen exactly where the table's own expression says it is likely, in its grades."""

import re

import pytest

from routines.counting import Audience, Count, Style
from routines.counting.slips.foreseeing import AREAS, likely_slips, rules_for
from routines.counting.slips.jump import Jump
from tests.counting.slips.table import NOT_OURS, TABLE, counts_for, fires, grid_of, level, rows

ROWS = rows()


def test_every_row_but_the_two_on_ratios_has_a_rule_with_its_grades_and_source() -> None:
    rules = {rule.id: rule for area in AREAS for rule in area.rules}
    assert NOT_OURS.isdisjoint(rules)
    for identity, row in ROWS.items():
        rule = rules[identity]
        assert rule.grades == (level(row["grade_low"]), level(row["grade_high"])), identity
        assert rule.source == row["source"], identity


@pytest.mark.parametrize("identity", ROWS)
def test_the_rule_fires_where_the_table_says_within_its_grades(identity: str) -> None:
    row = ROWS[identity]
    low, high = level(row["grade_low"]), level(row["grade_high"])
    fired = 0
    for count, places in counts_for(identity):
        grid = grid_of(count)
        expected = fires(row, count, places)
        for grade in {low, high}:
            (rule,) = [rule for rule in rules_for(grid, Audience(grade)) if rule.id == identity]
            found = {n for n in range(2, count.terms + 1) if rule.happens(Jump(grid, n))}
            assert found == expected, (count, found ^ expected)
        fired += len(expected)
    assert fired, "the counts tried must bring the slip about"


@pytest.mark.parametrize("identity", ROWS)
def test_the_rule_is_silent_below_its_grades(identity: str) -> None:
    low = level(ROWS[identity]["grade_low"])
    for count, _ in counts_for(identity)[:2]:
        for grade in range(low):
            assert identity not in {slip.rule for slip in likely_slips(grid_of(count), grade)}


def test_a_slip_of_the_lower_grades_is_no_longer_foreseen_above_them() -> None:
    grid = grid_of(Count.parse(kind="whole", start="55", step="1", terms=12))
    assert "W01" in {slip.rule for slip in likely_slips(grid, 1)}
    assert "W01" not in {slip.rule for slip in likely_slips(grid, 2)}


# The examples of the table: what is heard stands in its column student_says_example.
EXAMPLES = {
    "W01": ("whole", "57", "1", 4, "fifty-ten"),
    "W02": ("whole", "68", "1", 3, "50"),
    "W03": ("whole", "37", "1", 4, "41"),
    "W04": ("whole", "78", "1", 4, "80"),
    "W05": ("whole", "12", "1", 3, "40"),
    "W06": ("whole", "17", "1", 4, "91"),
    "W07": ("whole", "15", "1", 2, "61"),
    "W08": ("whole", "97", "1", 4, "ninety-ten"),
    "W09": ("whole", "99", "1", 3, "200"),
    "W10": ("whole", "407", "1", 4, "500"),
    "W11": ("whole", "638", "1", 3, "six hundred thirty-ten"),
    "W12": ("whole", "397", "1", 4, "1000"),
    "W13": ("whole", "4,998", "1", 3, "4,1000"),
    "W14": ("whole", "374", "10", 4, "304"),
    "W15": ("whole", "80", "10", 4, "200"),
    "W16": ("whole", "830", "100", 3, "1,300"),
    "W17": ("whole", "900", "100", 3, "2,000"),
    "W18": ("whole", "306", "1", 2, "3007"),
    "W19": ("whole", "24", "4", 3, "33"),
    "W20": ("whole", "7", "5", 3, "15"),
    "W21": ("whole", "72", "9", 4, "109"),
    "W22": ("whole", "77", "11", 4, "111"),
    "W23": ("whole", "72", "-1", 4, "79"),
    "W24": ("whole", "54", "-1", 5, "40"),
    "W25": ("whole", "602", "-1", 4, "699"),
    "W26": ("whole", "526", "-10", 4, "406"),
    "W27": ("whole", "7,200", "-100", 4, "7,900"),
    "F01": ("fraction", "1/6", "1/6", 2, "2/12"),
    "F02": ("fraction", "1/3", "1/3", 2, "1/4"),
    "F03": ("fraction", "1/8", "1/8", 2, "2/9"),
    "F04": ("fraction", "4/6", "1/6", 4, "1/6"),
    "F06": ("fraction", "1 4/5", "1/5", 2, "1 5/5"),
    "F07": ("fraction", "2 3/8", "1/8", 2, "3 3/8"),
    "F08": ("fraction", "1 1/3", "1/3", 2, "12/3"),
    "F09": ("fraction", "1/6", "1/6", 2, "1/3"),
    "F10": ("fraction", "1/8", "1/8", 3, "2/4"),
    "F11": ("fraction", "9/10", "1/10", 3, "11/100"),
    "F12": ("fraction", "1/2", "1/3", 2, "2/5"),
    "F13": ("fraction", "3 1/5", "-1/5", 3, "2"),
    "F14": ("fraction", "3/5", "3/5", 2, "1 2/5"),
    "D01": ("decimal", "2.7", "0.1", 4, "2.10"),
    "D02": ("decimal", "3.4", "0.3", 3, "3.10"),
    "D03": ("decimal", "5.97", "0.01", 4, "5.100"),
    "D04": ("decimal", "0.07", "0.01", 4, "0.010"),
    "D05": ("decimal", "1.248", "0.001", 3, "1.2410"),
    "D06": ("decimal", "0.39", "0.01", 2, "0.4"),
    "D07": ("decimal", "1.4", "0.03", 2, "1.7"),
    "D08": ("decimal", "1.8", "0.1", 4, "3.0"),
    "D09": ("decimal", "4.8", "0.1", 3, "5.1"),
    "D10": ("decimal", "6.2", "-0.1", 4, "6.9"),
    "M01": ("money", "$2.85", "5c", 4, "$2.100"),
    "M02": ("money", "$4.00", "5c", 2, "$4.5"),
    "M03": ("money", "$3.55", "5c", 2, "$3.6"),
    "M04": ("money", "60c", "5c", 2, "0.65¢"),
    "M05": ("money", "$1.50", "25c", 4, "$2.50"),
    "M06": ("money", "$7.10", "-5c", 4, "$7.95"),
    "M07": ("money", "$1.83", "10c", 3, "$1.103"),
    "T01": ("clock", "9:50", "5 min", 3, "9:60"),
    "T02": ("clock", "4:20", "25 min", 3, "4:70"),
    "T03": ("clock", "6:40", "15 min", 3, "6:10"),
    "T04": ("clock", "12:15", "25 min", 3, "13:05"),
    "T05": ("clock", "11:35 a.m.", "15 min", 3, "12:05 a.m."),
    "T06": ("clock", "11:30 p.m.", "15 min", 3, "12:00 noon"),
    "T07": ("clock", "7:00", "5 min", 2, "7:5"),
    "T08": ("clock", "8:10", "-5 min", 4, "8:55"),
    "T09": ("elapsed", "1 h 35 min", "35 min", 2, "1 h 70 min"),
    "L01": ("length", "2 ft 4 in", "4 in", 3, "2 ft 12 in"),
    "L03": ("length", "5 ft 3 in", "3 in", 2, "5.6 ft"),
    "L04": ("mass", "2 lb 6 oz", "3 oz", 3, "3 lb 2 oz"),
    "L05": ("mass", "1 lb 9 oz", "5 oz", 3, "1 lb 19 oz"),
    "L06": ("length", "4 yd 1 ft", "1 ft", 3, "4 yd 3 ft"),
    "L07": ("capacity", "2 gal 2 qt", "1 qt", 3, "2 gal 4 qt"),
    "L08": ("length", "1 m 75 cm", "15 cm", 3, "1 m 105 cm"),
    "L09": ("mass", "3 kg 30 g", "10 g", 2, "3.4 kg"),
    "L10": ("capacity", "1 L 700 mL", "150 mL", 3, "1 L 1000 mL"),
    "N01": ("whole", "2", "-1", 4, "0"),
    "N02": ("whole", "2", "-1", 3, "-1"),
    "N03": ("whole", "7", "-3", 4, "-3"),
    "N04": ("whole", "-5", "1", 2, "-6"),
    "N05": ("whole", "1", "-1", 3, "1"),
    "N06": ("whole", "-22", "1", 4, "-29"),
    "N07": ("whole", "-37", "-1", 4, "-30"),
}
# F05 is a silence; L02 is written "4 ft" here, as this count writes it.
NOT_TO_READ = {"F05", "L02"}


def test_the_examples_are_those_of_the_table() -> None:
    assert set(EXAMPLES) | NOT_TO_READ == set(ROWS)
    for identity, (*_, heard) in EXAMPLES.items():
        assert heard in ROWS[identity]["student_says_example"], identity


def _without_marks(text: str) -> str:
    """The table writes some thousands without their mark."""
    return re.sub(r"(?<=\d),(?=\d{3})", "", text)


@pytest.mark.parametrize("identity", EXAMPLES)
def test_what_is_heard_is_what_the_table_heard(identity: str) -> None:
    kind, start, step, n, heard = EXAMPLES[identity]
    top_heavy = identity == "F04"
    style = Style(shape="top-heavy", wholes="fraction") if top_heavy else Style()
    grid = grid_of(Count.parse(kind=kind, start=start, step=step, terms=8, style=style))
    (rule,) = [rule for rule in rules_for(grid) if rule.id == identity]
    jump = Jump(grid, n)
    assert rule.happens(jump)
    assert _without_marks(rule.heard(jump, "en")) == _without_marks(heard)


def test_a_foot_taken_for_ten_inches_and_a_count_that_stops() -> None:
    inches = grid_of(Count.parse(kind="length", start="3 ft 8 in", step="1 in", terms=6))
    (full,) = [slip for slip in likely_slips(inches, 4) if slip.rule == "L02"]
    assert (full.n, full.heard, full.correct) == (3, "4 ft", "3 ft 10 in")
    thirds = grid_of(Count.parse(kind="fraction", start="2/3", step="1/3", terms=6))
    assert [slip.n for slip in likely_slips(thirds, 3) if slip.rule == "F05"] == [3]
    assert TABLE.exists()


@pytest.mark.parametrize("identity", ROWS)
def test_every_rule_of_the_table_is_foreseen_somewhere_under_its_own_name(identity: str) -> None:
    grades = range(level(ROWS[identity]["grade_low"]), level(ROWS[identity]["grade_high"]) + 1)
    assert any(
        slip.rule == identity
        for count, _ in counts_for(identity)
        for grade in grades
        for slip in likely_slips(grid_of(count), grade)
    )
