"""The features language of the standards table, read item by item.

Source: tests/reference/SOURCES.md, "How to read the machine-ish columns".
"""

import csv
from pathlib import Path

import pytest

from routines.counting import Count, CountError
from routines.counting.standards import read_features
from routines.counting.standards.amounts import read_amounts
from routines.counting.standards.conditions import Facts, meets
from routines.counting.standards.features import Condition

TABLE = Path(__file__).parents[2] / "reference" / "standards.csv"


def rows() -> list[dict[str, str]]:
    with TABLE.open(encoding="utf-8") as file:
        return list(csv.DictReader(file))


def met(item: str, *, kind: str = "whole", start: str, step: str, terms: int = 10) -> bool:
    (condition,) = read_features(f"fit=direct; {item}").conditions
    count = Count.parse(kind=kind, start=start, step=step, terms=terms)
    return meets(condition, Facts(count, terms))


def test_every_row_of_the_table_can_be_read_and_judged() -> None:
    counts = [
        Count.parse(kind="whole", start="5", step="5", terms=10),
        Count.parse(kind="fraction", start="1/4", step="1/4", terms=10),
        Count.parse(kind="length", start="1 ft 3 in", step="9 in", terms=10),
        Count.parse(kind="clock", start="10:50", step="20 min", terms=10),
    ]
    for row in rows():
        features = read_features(row["count_features"])
        assert features.direct == ("fit=direct" in row["count_features"])
        for condition in features.conditions:
            for count in counts:
                assert meets(condition, Facts(count, count.terms)) in (True, False)


def test_conditions_hints_remarks_and_dependence_are_told_apart() -> None:
    features = read_features(
        "fit=direct; step=1|10; start=0|1 if step=1; max=100 (from K.CC.A.1); look_for=parity; "
        "prefer=start multiple of 5 when step=5|10"
    )
    assert features.conditions == (
        Condition("step", "=", "1|10"),
        Condition("start", "=", "0|1", Condition("step", "=", "1")),
        Condition("max", "=", "100", None, "from K.CC.A.1"),
    )
    assert features.hints == {"look_for": "parity", "prefer": "start multiple of 5 when step=5|10"}


@pytest.mark.parametrize(
    ("item", "start", "step", "terms", "expected"),
    [
        ("step=1|10", "0", "10", 5, True),
        ("step=1|10", "0", "5", 5, False),
        ("step=1|10", "50", "-10", 5, True),
        ("step=1..9|10,20,...,90", "4", "7", 5, True),
        ("step=1..9|10,20,...,90", "4", "40", 5, True),
        ("step=1..9|10,20,...,90", "4", "45", 5, False),
        ("start=any>1", "1", "1", 5, False),
        ("start=any<120", "119", "1", 2, True),
        ("start=0|step", "6", "6", 5, True),
        ("start=0|step", "3", "6", 5, False),
        ("start=0|1 if step=1", "7", "10", 5, True),
        ("start=0|1 if step=1", "7", "1", 5, False),
        ("start=multiple of step", "60", "20", 5, True),
        ("start=multiple of step", "50", "20", 5, False),
        ("max=100", "5", "5", 20, True),
        ("max=100", "5", "5", 21, False),
        ("max>0", "-9", "3", 4, False),
        ("min<0", "14", "-6", 5, True),
        ("min=0", "14", "-6", 5, False),
        ("direction=up", "9", "-1", 5, False),
        ("direction=down", "9", "-1", 5, True),
        ("direction=both", "9", "-1", 5, True),
        ("terms<=5", "5", "5", 5, True),
        ("terms<=5", "5", "5", 6, False),
        ("terms<=9 after 0", "0", "20", 10, True),
        ("terms<=9 after 0", "20", "20", 10, False),
        ("terms<=9 after 0 (up to 99 if step has two digits)", "12", "12", 60, True),
        ("terms<=9 after 0 (up to 99 if step has two digits)", "7", "7", 60, False),
        ("given=10..99", "10", "-10", 2, True),
        ("given=10..99", "99", "10", 2, True),
        ("given=10..99", "9", "10", 2, False),
        ("given=10..99", "100", "-10", 2, False),
        ("given=100..900", "900", "100", 2, True),
        ("given=100..900", "100", "-100", 2, True),
        ("cross=10", "12", "1", 8, False),
        ("cross=10", "12", "1", 9, True),
        ("cross=10", "13", "-4", 2, True),
        ("cross=10", "20", "1", 5, False),
        ("cross=100", "103", "-1", 4, True),
        ("cross=0", "14", "-6", 5, True),
        ("cross=0", "14", "-6", 3, False),
        ("kind=integer", "14", "-6", 5, True),
        ("kind=integer", "14", "-6", 3, False),
    ],
)
def test_a_condition_on_whole_numbers(item: str, start: str, step: str, terms: int, expected: bool) -> None:
    # The given-number limits are those of the edges in worked_examples.csv, CC-09 and CC-15.
    assert met(item, start=start, step=step, terms=terms) is expected


@pytest.mark.parametrize(
    ("item", "kind", "start", "step", "expected"),
    [
        ("step=1/b", "fraction", "0", "1/8", True),
        ("step=1/b", "fraction", "0", "3/8", False),
        ("step=1/b", "fraction", "0", "2/8", False),
        ("step=a/b with a>1", "fraction", "0", "3/8", True),
        ("step=a/b with a>1", "fraction", "0", "1/8", False),
        ("denominators=2|3|4|6|8", "fraction", "1/8", "1/8", True),
        ("denominators=2|3|4|6|8", "fraction", "1/5", "1/5", False),
        ("start and step with different denominators", "fraction", "1/2", "1/3", True),
        ("start and step with different denominators", "fraction", "1/3", "1/3", False),
        ("cross=1", "fraction", "1/8", "1/8", True),
        ("cross=1", "fraction", "1/100", "1/100", False),
        ("places=1|2", "decimal", "0.05", "0.05", True),
        ("places=1|2", "decimal", "0.005", "0.005", False),
        ("places<=2", "decimal", "0.5", "0.5", True),
        ("step=any to 0.01", "decimal", "0.5", "0.125", False),
        ("step=1c|5c|10c|25c|100c", "money", "$1.35", "25c", True),
        ("step=1c|5c|10c|25c|100c", "money", "$1.35", "35c", False),
        ("cross=100c", "money", "$1.35", "25c", True),
        ("step=30 min|60 min", "clock", "9:00", "30 min", True),
        ("step=5 min|multiple of 5 min", "clock", "9:00", "35 min", True),
        ("step=5 min|multiple of 5 min", "clock", "9:00", "12 min", False),
        ("start=hour|half hour", "clock", "9:30", "30 min", True),
        ("start=hour|half hour", "clock", "9:15", "30 min", False),
        ("cross=noon", "clock", "11:50", "20 min", True),
        ("cross=noon", "clock", "1:50 pm", "20 min", False),
        ("unit=g|kg|L", "mass", "200 g", "150 g", True),
        ("unit=g|kg|L", "mass", "2 lb", "3 oz", False),
        ("max=100", "length", "2 ft", "3 ft", True),
        ("cross=unit", "length", "1 ft 3 in", "9 in", True),
        ("kind=clock|duration", "elapsed", "25 min", "25 min", True),
        ("pair=two counts", "whole", "5", "5", False),
    ],
)
def test_a_condition_on_other_kinds(item: str, kind: str, start: str, step: str, expected: bool) -> None:
    assert met(item, kind=kind, start=start, step=step) is expected


@pytest.mark.parametrize(
    "text",
    [
        "",
        "step=1",
        "fit=maybe",
        "fit=direct; colour=red",
        "fit=direct; step",
        "fit=direct; = 3",
        "fit=direct; step=1 if",
    ],
)
def test_features_that_cannot_be_read_are_refused_by_name(text: str) -> None:
    with pytest.raises(CountError) as error:
        read_features(text)
    assert error.value.field == "count_features"


@pytest.mark.parametrize("text", ["one", "1...9", "any of them", "1/x", ""])
def test_amounts_that_cannot_be_read_are_refused(text: str) -> None:
    with pytest.raises(CountError) as error:
        read_amounts(text)
    assert error.value.field == "count_features"
