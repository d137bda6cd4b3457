"""The remembered column of filters says what one drawn anew would say."""

import re

import pytest

from accounts.written_once import Later, remembered
from routines.bank.filter_column import filter_column
from routines.bank.forms.filters import BankFilter
from tests.routines.making import make_routine


def column_of(client, query: str = "") -> str:
    page = client.get(f"/bank/{query}").content.decode()
    return page[page.index('<form class="bank-filters"') : page.index('id="bank-cards"')]


@pytest.mark.parametrize("query", ["?grade=2", "?area=fractions&kind=fraction", "?q=eights", "?taught=ever&sort=title"])
def test_each_choice_has_its_own(owner, grade_three, visit, query):
    make_routine(owner)
    client = visit(owner)
    column_of(client)
    first = column_of(client, query), column_of(client)
    remembered.clear()
    assert (column_of(client, query), column_of(client)) == first
    assert first[0] != first[1]


def test_who_planned_a_count_stands_under_the_name_of_today(owner, teammate, visit):
    make_routine(owner)
    client = visit(teammate)
    assert f">{owner.display_name}</option>" in column_of(client)
    owner.display_name = "Another Name"
    owner.save()
    assert ">Another Name</option>" in column_of(client)
    make_routine(teammate)
    assert len(re.findall(r"<option", column_of(client).split('id="standard"')[0])) == 3


def test_what_was_drawn_in_one_language_is_not_given_in_another(settings):
    columns = []
    for language in ("en", "es", "en"):
        settings.LANGUAGE_CODE = language
        columns.append(filter_column(BankFilter(), (), Later("nobody", tuple)))
    assert columns[0] == columns[2]
    assert remembered.size > len(columns[0]) + len(columns[1])
