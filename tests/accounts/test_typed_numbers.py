"""The one door for text that becomes a number."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from accounts.typed_numbers import LARGEST_ID, typed_id, typed_ids, typed_whole


@given(st.integers(0, 10**6), st.integers(0, 10**6), st.integers(0, 10**6))
def test_a_number_within_its_bounds_is_read_and_no_other(number, one, other):
    low, high = sorted((one, other))
    for text in (str(number), f" {number} ", f"000{number}"):
        assert typed_whole(text, low, high) == (number if low <= number <= high else None)


@given(st.text())
def test_any_text_is_answered(text):
    read = typed_whole(text, 0, 999)
    assert read is None or 0 <= read <= 999


@pytest.mark.parametrize("text", ["", " ", "²", "٣", "１", "-1", "+1", "1.0", "1_000", "0x10", "1e3", "9" * 5000, "½"])
def test_what_is_no_plain_number_is_none(text):
    assert typed_whole(text, 0, 10**9) is None


def test_ids_stay_within_what_a_database_holds():
    assert typed_id(str(LARGEST_ID)) == LARGEST_ID
    assert typed_id(str(LARGEST_ID + 1)) == typed_id("0") == typed_id("x") == 0
    assert typed_ids(["3", "x", "1", "9" * 40]) == [3, 1]
