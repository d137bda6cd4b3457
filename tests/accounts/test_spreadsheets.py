"""Nothing that a spreadsheet opens is run."""

import pytest

from accounts.spreadsheets import neutral


@pytest.mark.parametrize("text", ["=1+1", "+1", "-1+1", "@sum", "\tx", "\r=1", "-3/4", "-1 1/2"])
def test_what_would_be_run_is_made_text(text):
    assert neutral(text) == f"'{text}"


@pytest.mark.parametrize("text", ["7", "-7", "-1,325", "0.5", "3/4", "$0.35", "10:50", "2 ft"])
def test_numbers_and_plain_texts_stay_as_they_are(text):
    assert neutral(text) == text
