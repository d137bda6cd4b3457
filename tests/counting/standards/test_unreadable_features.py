"""Whatever stands in a standard's features is refused by `read_features`, or fits counts without a fault."""

from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Audience, Count, CountError, Grid
from routines.counting.standards import read_features
from routines.counting.standards.features import CONDITIONS, HINTS
from routines.errors import say
from routines.words import suggest_standards

GRIDS = [
    Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), 3)
    for kind, start, step, terms in [
        ("whole", "0", "7", 12),
        ("whole", "9", "-3", 12),
        ("decimal", "0.5", "0.25", 9),
        ("fraction", "2/3", "1/3", 9),
        ("length", "9 in", "1 ft 3 in", 9),
        ("mass", "500 g", "250 g", 9),
        ("money", "$0.10", "35c", 9),
        ("clock", "11:10", "25 min", 9),
        ("elapsed", "20 min", "25 min", 9),
    ]
]
KEYS = (*CONDITIONS, *HINTS, "fit", "colour")
PIECES = [
    *("0", "00", "-0", "0.0", "1", "-7", "1.5", "1.5/2", "1/2", "1/0", "0/5", "9" * 12, "9" * 5000, "٣", "²", "-"),
    *("1..9", "9..1", "1..2..3", "10,20,...,90", "10,10,...,90", "20,10,...,0", "multiple of 0", "multiple of 5"),
    *(
        "any",
        "any<5",
        "any to 0",
        "any to 0.01",
        "step",
        "n/0",
        "n/4",
        "a/b",
        "1/b",
        "30 min",
        "5 c",
        "hour",
        "half hour",
    ),
    *(
        "whole",
        "integer",
        "clock",
        "ratio",
        "unit",
        "noon",
        "100c",
        "different",
        "up",
        "both",
        "4 after 0",
        "in|ft",
        "direct",
    ),
    *(
        "1 (up to ²)",
        "1 (up to 99 if step has two digits)",
        "1 if step=1",
        "1 if colour=1",
        "1 if start=0 if step=1",
        "",
    ),
    "1" + " if step=1" * 2000,
]
ITEMS = st.builds(
    "{}{}{}".format,
    st.sampled_from(KEYS),
    st.sampled_from(["=", "<=", ">=", "<", ">", ""]),
    st.one_of(st.lists(st.sampled_from(PIECES), max_size=3).map("|".join), st.text(max_size=12)),
)


def fit_or_refused(text: str) -> bool:
    """Whether the features were refused."""
    rows = [{"code": "X.1", "grade": "3", "area": "whole", "summary": "Skips.", "count_features": text}]
    try:
        read_features(text)
    except CountError as error:
        refused = error
    else:
        refused = None
    if refused is not None:
        assert refused.field == "count_features"
        assert 10 < len(say(refused)) < 200
        return True
    for grid, language in product(GRIDS, ("en", "es")):
        for fit in suggest_standards(grid, rows, audience=Audience(3, language)):
            assert fit.reason.endswith(".")
    return False


@given(st.lists(ITEMS, max_size=3), st.sampled_from(["fit=direct", "fit=support", ""]))
def test_features_are_refused_or_fit_without_a_fault(items, fit):
    fit_or_refused("; ".join([fit, *items]))


@pytest.mark.parametrize("sign", ["=", "<=", ">"])
@pytest.mark.parametrize("key", KEYS)
def test_every_piece_after_every_key_is_refused_or_fits(key, sign):
    refused = [fit_or_refused(f"fit=direct; {key}{sign}{piece}") for piece in PIECES]
    assert any(refused)
    assert key in ("fit", "colour") or not all(refused)


@pytest.mark.parametrize(
    "item",
    [
        "start=1/0", "step=1.5/2", "start=multiple of 0", "start=any to 0", "step=10,10,...,90", "start=n/0",
        "min=1.5/2", "places<=1..2", "cross=0.0", "cross=10|00", "start=0 if colour=1", "start=0 if step=1 if step=2",
        "kind=ratio", "max=²", "max=٣", "min=" + "9" * 5000, "step=" + "1|" * 600 + "1",
    ],
)  # fmt: skip
def test_what_looks_like_the_language_and_is_not_is_refused(item):
    assert fit_or_refused(f"fit=direct; {item}")
