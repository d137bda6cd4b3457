"""Claims as data: what is stored is read back, and what makes no claim is refused by the parameter at fault."""

import pickle
from fractions import Fraction
from random import Random
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Claim, CountError
from routines.counting.claims import StepClaim
from routines.counting.patterns import find_patterns
from routines.errors import say
from tests.counting.claims import a_claim
from tests.counting.random_grids import any_grid
from tests.saying import saying

# The design's own examples, in its own form.
STORED: list[dict[str, Any]] = [
    {"family": "step", "difference": "7"},
    {"family": "neighbour", "direction": "down", "difference": "28"},
    {"family": "digit", "place": 0, "along": "column", "blocks": [[1, 6], [2, 7]]},
    {"family": "digit", "part": "inches", "along": "column", "blocks": [[3], [0], [9], [6]]},
    {"family": "digit-run", "place": 1, "along": "count", "change": 1},
    {"family": "digit-sum", "along": "count", "blocks": [[9]]},
    {"family": "remainder", "modulus": "2", "along": "count", "blocks": [["1", "0"]]},
    {"family": "landmarks", "multiple": "10", "every": 5, "first": 3, "lie": "column", "lines": [3]},
    {"family": "how-many", "multiple": "10", "block": [1, 2, 2]},
    {"family": "sums", "which": "block-corners"},
    {"family": "sums", "which": "line-totals", "along": "row", "difference": "100"},
    {"family": "table", "step": "6"},
    {"family": "opposites", "pairs": [[1, 8], [2, 7]]},
]


@pytest.mark.parametrize("stored", STORED, ids=lambda stored: stored["family"])
def test_a_stored_claim_reads_back_the_same(stored: dict[str, Any]) -> None:
    claim = Claim.from_dict(stored)
    assert claim.as_dict() == stored
    assert list(claim.as_dict()) == list(stored)
    assert Claim.from_dict(claim.as_dict()) == claim
    assert hash(Claim.from_dict(claim.as_dict())) == hash(claim)
    assert pickle.loads(pickle.dumps(claim)) == claim


@given(st.integers(0, 2**32))
def test_every_claim_that_is_found_reads_back_the_same(seed: int) -> None:
    for found in find_patterns(any_grid(Random(seed)), implied=True):
        assert Claim.from_dict(found.claim.as_dict()) == found.claim


def test_exact_values_are_strings_in_lowest_terms() -> None:
    claim = a_claim("remainder", modulus="6/8", along="count", blocks=[["2/4", Fraction(0)]])
    assert claim.as_dict() == {
        "family": "remainder",
        "modulus": "3/4",
        "along": "count",
        "blocks": [["1/2", "0"]],
    }
    assert a_claim("step", difference="-0.25").as_dict()["difference"] == "-1/4"


def test_what_is_left_out_is_left_out_of_the_data_too() -> None:
    assert a_claim("digit", place=0, along="column", length=1).as_dict() == {
        "family": "digit",
        "place": 0,
        "along": "column",
        "length": 1,
    }


def test_claims_differ_by_their_parameters_and_never_change() -> None:
    claim = a_claim("step", difference=7)
    assert claim != a_claim("step", difference=8) != a_claim("table", step=8)
    assert claim == StepClaim(Fraction(7))
    with pytest.raises(AttributeError):
        claim.difference = Fraction(8)


WRONG: list[tuple[str, dict[str, Any], str]] = [
    ("colour", {}, "family"),
    ("step", {"colour": "red"}, "family"),
    ("step", {"difference": 0.5}, "difference"),
    ("step", {"difference": "1e5"}, "difference"),
    ("step", {"difference": "1_000"}, "difference"),
    ("step", {"difference": "nan"}, "difference"),
    ("step", {"difference": "seven"}, "difference"),
    ("step", {"difference": True}, "difference"),
    ("step", {"difference": "1/0"}, "difference"),
    ("step", {"difference": " 7"}, "difference"),
    ("step", {"difference": "٣"}, "difference"),
    ("neighbour", {"direction": "up"}, "direction"),
    ("neighbour", {"direction": ["down"]}, "direction"),
    ("digit", {"place": 0.0}, "place"),
    ("digit", {"place": 10}, "place"),
    ("digit", {"place": -4}, "place"),
    ("digit", {"part": ""}, "part"),
    ("digit", {"place": 0, "part": "inches"}, "part"),
    ("digit", {"place": 0, "along": "diagonal"}, "along"),
    ("digit", {"place": 0, "along": "count", "blocks": []}, "blocks"),
    ("digit", {"place": 0, "along": "count", "blocks": [[]]}, "blocks"),
    ("digit", {"place": 0, "along": "count", "blocks": [[-1]]}, "blocks"),
    ("digit", {"place": 0, "along": "count", "blocks": [["1"]]}, "blocks"),
    ("digit", {"place": 0, "along": "count", "blocks": "12"}, "blocks"),
    ("digit", {"place": 0, "along": "count", "blocks": [[1]], "length": 1}, "length"),
    ("digit", {"place": 0, "along": "column", "length": 0}, "length"),
    ("digit", {"place": 0, "along": "column", "length": 201}, "length"),
    ("digit", {"place": 0, "along": "column", "length": 1, "lines": []}, "lines"),
    ("digit", {"place": 0, "along": "column", "length": 1, "lines": [2, 1]}, "lines"),
    ("digit", {"place": 0, "along": "column", "length": 1, "lines": [0]}, "lines"),
    ("digit", {"place": 0, "along": "count", "length": 1, "lines": [1]}, "lines"),
    ("digit-run", {"place": 0, "change": "1"}, "change"),
    ("digit-sum", {"along": 1}, "along"),
    ("remainder", {"modulus": 0}, "modulus"),
    ("remainder", {"modulus": -2}, "modulus"),
    ("remainder", {"modulus": 2, "blocks": [["2"]]}, "blocks"),
    ("remainder", {"modulus": 2, "blocks": [["-1"]]}, "blocks"),
    ("landmarks", {"multiple": "0"}, "multiple"),
    ("landmarks", {"multiple": 10, "every": 0}, "every"),
    ("landmarks", {"multiple": 10, "first": -1}, "first"),
    ("landmarks", {"multiple": 10, "lie": "circle"}, "lie"),
    ("landmarks", {"multiple": 10, "lie": "column", "lines": [1, 2]}, "lines"),
    ("landmarks", {"multiple": 10, "lie": "rows", "lines": [1]}, "lines"),
    ("landmarks", {"multiple": 10, "lie": "scattered", "lines": [1]}, "lines"),
    ("how-many", {"multiple": 10, "block": []}, "block"),
    ("how-many", {"multiple": 10, "block": 1}, "block"),
    ("sums", {"which": "all"}, "which"),
    ("sums", {"which": "ends", "difference": 1}, "difference"),
    ("sums", {"which": "line-totals", "along": "count"}, "along"),
    ("table", {"step": None, "colour": 1}, "family"),
    ("opposites", {"pairs": [[2, 1]]}, "pairs"),
    ("opposites", {"pairs": [[1, 2, 3]]}, "pairs"),
    ("opposites", {"pairs": [[2, 3], [1, 4]]}, "pairs"),
    ("opposites", {"pairs": [1]}, "pairs"),
]


@pytest.mark.parametrize(("family", "parameters", "field"), WRONG)
def test_what_makes_no_claim_is_refused_with_its_field(family: str, parameters: dict[str, Any], field: str) -> None:
    with pytest.raises(CountError) as error:
        a_claim(family, **parameters)
    assert error.value.field == field
    assert say(error.value).endswith(".")


@pytest.mark.parametrize("data", [None, [], {}, {"family": 3}, {"difference": "7"}, {"family": "stepp"}])
def test_data_without_a_family_is_refused(data: Any) -> None:
    with pytest.raises(CountError) as error:
        Claim.from_dict(data)
    assert error.value.field == "family"


LONG = 10**5000


@pytest.mark.parametrize(
    ("family", "name"),
    [
        ("step", "difference"),
        ("table", "step"),
        ("remainder", "modulus"),
        ("digit-run", "change"),
        ("landmarks", "first"),
    ],
)
def test_numbers_too_long_for_any_count_are_refused_at_once(family: str, name: str) -> None:
    for value in (LONG, -LONG, "9" * 5000, "1/" + "9" * 31, 10**30):
        with pytest.raises(CountError) as refused:
            a_claim(family, **{name: value})
        assert refused.value.field == name


def test_no_block_holds_a_number_too_long() -> None:
    for family, item in (("remainder", "9" * 5000), ("digit", LONG)):
        with pytest.raises(CountError) as refused:
            a_claim(family, blocks=[[item]])
        assert refused.value.field == "blocks"


@pytest.mark.parametrize(
    ("family", "parameter", "value"),
    [
        ("digit", "blocks", [[1]] * 201),
        ("digit", "lines", list(range(1, 202))),
        ("how-many", "block", [1] * 201),
        ("opposites", "pairs", [[n, n + 1] for n in range(1, 202)]),
    ],
)
def test_lists_longer_than_any_count_are_refused(family, parameter, value):
    with pytest.raises(CountError, check=saying("200")) as refused:
        Claim.from_dict({"family": family, parameter: value})
    assert refused.value.field == parameter
