"""Three hundred malformed inputs and more: each one clear sentence at its field, never another exception or an answer."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Audience, Count, CountError, Grid, Style, compare_folds, locate
from routines.counting.stories import Story
from routines.errors import say
from tests.counting.any_count import KINDS

GOOD = {
    "whole": ("58", "6"),
    "decimal": ("0.5", "0.25"),
    "fraction": ("2/3", "1/3"),
    "length": ("1 ft 3 in", "9 in"),
    "mass": ("1 lb 4 oz", "6 oz"),
    "capacity": ("1 L 50 mL", "150 mL"),
    "money": ("$0.35", "$0.25"),
    "clock": ("10:50", "20 min"),
    "elapsed": ("1 h 35 min", "25 min"),
}

# Text that is no number, amount or time of any kind.
NOT_A_NUMBER = [
    "", "   ", "abc", "1e5", "1_000", "nan", "inf", "-inf", "Infinity", "0x10", "1..2", "--5", "+-5", "5-", "1+2",
    "1/", "/2", "1/0", "1//2", "2 1/0", "1 2 3", "1,23", "12,34,567", ",", ".", "-", "1.2.3", "$$1", "5%", "5!", "#5",
    "five", "\u0663", "\uff15", "\u2460", "5\u00b2", "1\n2", "5;6", "5,", "(5)", "[5]", "9" * 61, "\u221e", "None",
    "1 h 2 ft", "10:5", "10:50:10", "25:00", "1:75",
]  # fmt: skip
NOT_TEXT = [1.0, 0.1, float("nan"), float("inf"), None, True, False, b"5", [], {}, (1,), 5j, object(), Style()]

# Text that another kind would take.
NOT_OF_THIS_KIND = {
    "whole": ["1.5", "1/2", "2 1/3", "9 in", "$1", "10:50", "25 min", "3.0", "4/2"],
    "decimal": ["1/3", "0.0001", "0.0005", "9 cm", "$0.5", "10:50", "1,5", "2 1/3"],
    "fraction": ["1/1001", "1/2/3", "1/2 in", "$1/2", "2/3 = 1", "1/2 = 2/4 = 3/6", "-1/-2", "1 -1/2", "1/2.5"],
    "length": [
        "9",
        "9 oz",
        "9 L",
        "9 min",
        "1 ft 3 cm",
        "3 in 1 ft",
        "1 ft 1 ft",
        "1.5 ft 3 in",
        "ft",
        "9 furlongs",
        "$9",
    ],
    "mass": ["9", "9 in", "9 fl oz", "9 min", "1 lb 3 g", "4 oz 1 lb", "lb", "9 stone", "1/2001 lb"],
    "capacity": ["9", "9 oz", "9 lb", "9 cm", "1 cup 50 mL", "1 qt 3", "L", "9 barrels", "50 mL 1 L"],
    "money": [
        "0.355",
        "$1.2.3",
        "35.5c",
        "$",
        "c",
        "1 dollar 35",
        "\u00a31",
        "$1,35",
        "0.35c",
        "1/3",
        "9 in",
        "-$0.35",
    ],
    "clock": ["10", "10.50", "10:70", "9:60", "7:5", "24:15", "13:10 pm", "0:30 am", "12:30 noon", "-1:00", "10:50 xm"],
    "elapsed": ["1:60", "9 in", "1 h 2 h", "5 min 1 h", "1.5 h 3 min", "h", "9 fortnights", "1 h 35 min 7", "-5 min"],
}
STEPS_OF_OTHER_KINDS = {
    **NOT_OF_THIS_KIND,
    "money": [text for text in NOT_OF_THIS_KIND["money"] if text != "-$0.35"],
    "elapsed": [text for text in NOT_OF_THIS_KIND["elapsed"] if text != "-5 min"],
    "clock": ["10:60", "10:50 pm", "noon", "45 s", "12 h", "720", "-12 h", "24 h", "0", "0 min", "1.5 min", "9 in"],
}
NO_STEP = {
    "whole": "0", "decimal": "0.00", "fraction": "0/3", "length": "0 in", "mass": "0 lb", "capacity": "0 mL",
    "money": "$0.00", "clock": "0 h", "elapsed": "0",
}  # fmt: skip
TOO_LARGE = {
    "whole": "1,000,000,001", "decimal": "2000000000.5", "fraction": "2000000000 1/2", "length": "20000 mi",
    "mass": "40000 ton", "capacity": "1000001 L", "money": "$10,000,001", "elapsed": "700000 d",
}  # fmt: skip
TERMS = [1, 0, -5, 201, 10**9, 5.0, 5.5, "5", "", None, True, Fraction(5), [5], b"5"]


def malformed_counts() -> list[tuple[str, str, dict[str, object]]]:
    """(field, kind, keywords that differ from a good count of the kind)."""
    cases: list[tuple[str, str, dict[str, object]]] = []
    for kind in KINDS:
        cases += [("start", kind, {"start": text}) for text in NOT_OF_THIS_KIND[kind]]
        cases += [("step", kind, {"step": text}) for text in STEPS_OF_OTHER_KINDS[kind]]
        cases += [("start", kind, {"start": value}) for value in NOT_TEXT[::3]]
        cases += [("step", kind, {"step": value}) for value in NOT_TEXT[1::3]]
        cases += [("terms", kind, {"terms": value}) for value in TERMS[::4]]
        cases.append(("step", kind, {"step": NO_STEP[kind]}))
        if kind in TOO_LARGE:
            cases += [("start", kind, {"start": TOO_LARGE[kind]}), ("step", kind, {"step": TOO_LARGE[kind]})]
    for text in NOT_A_NUMBER:
        cases += [("start", kind, {"start": text}) for kind in KINDS]
        cases += [("step", kind, {"step": text}) for kind in KINDS]
    cases += [("terms", "whole", {"terms": value}) for value in TERMS]
    cases += [("start", "whole", {"start": value}) for value in NOT_TEXT]
    cases += [("step", "whole", {"step": value}) for value in NOT_TEXT]
    cases += [
        ("kind", "whole", {"kind": kind}) for kind in ("", "integer", "Whole", "ratio", None, 3, True, [], b"whole")
    ]
    cases += [("style", "whole", {"style": style}) for style in ({}, "mixed", 12, [], False)]
    return cases


MALFORMED = malformed_counts()


def test_there_are_three_hundred_and_every_kind_has_some_on_every_parameter() -> None:
    assert len({(field, kind, repr(keywords)) for field, kind, keywords in MALFORMED}) >= 300
    for field in ("start", "step", "terms"):
        assert {kind for at, kind, _ in MALFORMED if at == field} == set(KINDS)


@pytest.mark.parametrize(("field", "kind", "keywords"), MALFORMED)
def test_a_malformed_count_is_refused_at_its_field(field: str, kind: str, keywords: dict[str, object]) -> None:
    start, step = GOOD[kind]
    good: dict[str, object] = {"kind": kind, "start": start, "step": step, "terms": 5}
    Count.parse(**good)  # type: ignore[arg-type]
    with pytest.raises(CountError) as refused:
        Count.parse(**{**good, **keywords})  # type: ignore[arg-type]
    assert refused.value.field == field
    sentence = say(refused.value)
    assert sentence[0].isupper()
    assert sentence.endswith(".")


@pytest.mark.parametrize("kind", KINDS)
def test_a_malformed_value_is_refused(kind: str) -> None:
    start, step = GOOD[kind]
    count = Count.parse(kind=kind, start=start, step=step, terms=5)
    below_zero = ("-$0.35", "-5 min")  # a value may be asked for that is never counted
    for text in [*NOT_OF_THIS_KIND[kind], *NOT_A_NUMBER, *NOT_TEXT]:
        if text in below_zero:
            continue
        with pytest.raises(CountError) as refused:
            count.read(text)  # type: ignore[arg-type]
        assert refused.value.field == "value", text


@pytest.mark.parametrize("value", NOT_TEXT)
def test_a_malformed_goal_group_level_or_fold_is_refused(value: object) -> None:
    count = Count.parse(kind="whole", start="58", step="6", terms=20)
    with pytest.raises(CountError) as refused:
        count.reaching(value)  # type: ignore[arg-type]
    assert refused.value.field == "value"
    with pytest.raises(CountError) as refused:
        Story(count, group=value)  # type: ignore[arg-type]
    assert refused.value.field == "group"
    with pytest.raises(CountError) as refused:
        Audience(level=value)  # type: ignore[arg-type]
    assert refused.value.field == "level"
    for field in ("line_length", "fill", "lead"):
        if field == "lead" and value in (None, False):
            continue
        keywords: dict[str, object] = {"line_length": 5, field: value}
        with pytest.raises(CountError) as refused:
            Grid(count, **keywords)  # type: ignore[arg-type]
        assert refused.value.field == field


@pytest.mark.parametrize("kind", KINDS)
@given(text=st.one_of(st.text(max_size=12), st.text("0123456789 ,./:-$ftinhmlLgozcapK'\"", max_size=12)))
def test_any_text_at_all_is_a_count_or_one_sentence(kind: str, text: str) -> None:
    _, step = GOOD[kind]
    refused: CountError | None = None
    try:
        count = Count.parse(kind=kind, start=text, step=step, terms=2)
    except CountError as error:
        refused = error
    if refused is not None:
        assert refused.field in ("start", "step")
        assert say(refused)
        return
    away = count.read(count.text(1)) - count.start
    assert away == 0 or (count.wrap is not None and away % count.wrap == 0)


NO_POSITION = [0, -3, True, 1.0, 1.5, "1", None, Fraction(3, 2), [1]]


@pytest.mark.parametrize("n", NO_POSITION)
def test_what_is_no_number_of_a_count_is_refused(n: object) -> None:
    count = Count.parse(kind="whole", start="58", step="6", terms=12)
    for ask in (count.value, count.text, count.words, count.parts, count.pieces, Grid(count, 4).place):
        with pytest.raises(CountError) as refused:
            ask(n)
        assert refused.value.field == "n"


@pytest.mark.parametrize("lengths", [["a"], [4, None], [True], [2.0], 5.0, None])
def test_line_lengths_to_compare_are_whole_numbers(lengths: object) -> None:
    with pytest.raises(CountError) as refused:
        compare_folds(Count.parse(kind="whole", start="58", step="6", terms=12), lengths)
    assert refused.value.field == "line_length"


@pytest.mark.parametrize(
    ("kind", "value"),
    [
        ("whole", 10**5000),
        ("whole", -(10**13)),
        ("whole", 0.5),
        ("whole", None),
        ("clock", Fraction(1, 2)),
        ("length", "42 cm"),
        ("mass", "1 kg"),
        ("whole", "12,34"),
    ],
    ids=range(8),
)
def test_what_no_count_of_the_kind_says_is_not_looked_for(kind: str, value: object) -> None:
    start, step = GOOD[kind]
    with pytest.raises(CountError) as refused:
        locate(Grid(Count.parse(kind=kind, start=start, step=step, terms=12), 4), value)
    assert refused.value.field == "value"
