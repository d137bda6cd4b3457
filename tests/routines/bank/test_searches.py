"""A search finds what a look at every word of every count finds, in its order, whichever way it takes; and says how many."""

from itertools import product

import pytest
from django.http import QueryDict

from accounts.models import User
from bench._many_counts import fill
from grade_bands.models import Grade
from routines.bank.forms.filters import BankFilter
from routines.bank.paging import read_page
from routines.models import Routine, SearchWord
from routines.models.search_word import words_of
from routines.models.searched_words import Asked, asked_for
from routines.models.spellings import spellings_of

pytestmark = pytest.mark.django_db

COUNTS = 120
SEARCHES = [
    "golden",
    "lad",
    "orchard",
    "gol orch",
    "lan gol",
    "from each",
    "from",
    "t",
    "s t",
    "b la",
    "m",
    "12",
    "golden xyz",
    "so from",
]
FILTERS = [
    "",
    "grade=2",
    "direction=forward&grade=3&grade=4",
    "whose=mine",
    "owner={owner}",
    "kind=clock&shows=opposites",
]
# How many spellings lead, how many keys are read of more, how far it is looked ahead, how common a word is too common.
WAYS = [(16, 2000, 200, 5), (16, 2000, 3, 5), (1, 2000, 3, 5), (0, 30, 2, 1), (0, 0, 0, 5), (2, 10, 5, 50)]


def has(words: dict[str, bool], asked: Asked, *, in_title: bool) -> bool:
    met = [word for word in words if word == asked.word or (not asked.whole and word.startswith(asked.word))]
    return any(words[word] or not in_title for word in met)


def looked_through(routines, text: str) -> list[int]:
    """The keys, those with all the words in the title first, in each part the one made last first."""
    titled, others = [], []
    for routine in sorted(routines, key=lambda one: -one.pk):
        words = words_of(routine.title, routine.search_text)
        if all(has(words, asked, in_title=True) for asked in asked_for(text)):
            titled.append(routine.pk)
        elif all(has(words, asked, in_title=False) for asked in asked_for(text)):
            others.append(routine.pk)
    return titled + others


def take(monkeypatch, way: tuple[int, int, int, int]) -> None:
    most, read, ahead, common = way
    monkeypatch.setattr("routines.models.spellings.MOST_SPELLINGS", most)
    monkeypatch.setattr("routines.models.spellings.LOOKED_AHEAD", ahead)
    monkeypatch.setattr("routines.bank.searching.LOOKED_AHEAD", ahead)
    monkeypatch.setattr("routines.bank.searching.KEYS_READ", read)
    monkeypatch.setattr("routines.bank.searching.COMMON", common)


def test_every_way_finds_what_a_look_at_all_words_finds(monkeypatch):
    fill(COUNTS, people=4, kinds_of_count=12)
    Routine.objects.filter(pk__in=range(5, COUNTS, 11)).update(status=Routine.Status.RETIRED)
    reader = User.objects.get(sign_in_name="person2")
    grades = list(Grade.objects.all())
    found_some = 0
    for filtered, text in product(FILTERS, SEARCHES):
        query = filtered.format(owner=reader.pk)
        wanted = BankFilter.read(QueryDict(f"{query}&q={text}"), grades)
        expected = looked_through(wanted.chosen(Routine.objects.in_bank(), reader, None), text)
        found_some += bool(expected)
        for way in WAYS:
            with monkeypatch.context() as patched:
                take(patched, way)
                order = wanted.order(reader, None)
                page = read_page(order, {}, reader=reader, size=COUNTS)
                assert page.routines == expected, (text, query, way)
                assert order.how_many().number == min(len(expected), 101), (text, query, way)
                for at in (len(expected) // 3, len(expected) - 2):
                    if at < 1:
                        continue
                    after = read_page(order, {"after": str(expected[at - 1])}, reader=reader, size=7)
                    before = read_page(order, {"before": str(expected[at])}, reader=reader, size=at)
                    assert after.routines == expected[at : at + 7], (text, query, way, at)
                    assert before.routines == expected[:at], (text, query, way, at)
    assert found_some > len(FILTERS) * len(SEARCHES) // 2


def test_one_more_than_a_hundred_is_more_than_a_hundred(visit):
    fill(102, people=4, kinds_of_count=6)
    client = visit(User.objects.get(sign_in_name="person2"))
    assert "More than 100 counts." in client.get("/bank/?q=from").text
    for key in (1, 2):
        assert "More than 100 counts." in client.get("/bank/?q=from&sort=title").text
        Routine.objects.filter(pk=key).update(status=Routine.Status.DRAFT)
    for query in ("q=from", "q=from&sort=title"):
        assert "100 of 100 counts." in client.get(f"/bank/?{query}").text


@pytest.mark.parametrize(("titled", "others"), [(5, 0), (0, 5), (3, 2), (6, 0), (0, 6), (4, 2), (2, 9), (1, 0)])
def test_how_many_are_found_is_counted_up_to_the_bound(monkeypatch, titled, others):
    monkeypatch.setattr("routines.bank.searching.FOUND_UP_TO", 5)
    fill(30, people=4, kinds_of_count=6)
    keys = list(Routine.objects.order_by("pk").values_list("pk", flat=True))[: titled + others]
    SearchWord.objects.bulk_create(
        SearchWord(routine_id=key, word="quince", in_title=number < titled) for number, key in enumerate(keys)
    )
    order = BankFilter.read(QueryDict("q=quin"), []).order(User.objects.get(sign_in_name="person2"), None)
    page = read_page(order, {}, reader=User.objects.get(sign_in_name="person2"), size=2)
    found = page.how_many(order)
    assert found.number == min(titled + others, 6)
    assert str(found) == ("more than 5" if titled + others > 5 else str(titled + others))


def test_the_words_that_begin_so_and_how_far_it_is_to_some_counts(monkeypatch):
    monkeypatch.setattr("routines.models.spellings.LOOKED_AHEAD", 2)
    fill(COUNTS, people=4, kinds_of_count=12)
    rows = list(SearchWord.objects.values_list("word", "in_title", "routine"))
    for text in ("t", "lad", "golden", "12", "from", "xyz", "-3", "1/4"):
        asked = asked_for(text)[0]
        words = sorted(
            {word for word, *_ in rows if word == asked.word or (not asked.whole and word.startswith(asked.word))}
        )
        found = spellings_of(asked)
        if len(words) > 16:
            assert found is None
            continue
        assert found is not None
        expected = []
        for word, in_title in product(words, (True, False)):
            keys = sorted((key for one, place, key in rows if (one, place) == (word, in_title)), reverse=True)
            expected.append((word, in_title, keys[2] if len(keys) > 2 else 0))
        assert [(one.word, one.in_title, one.reach) for one in found] == expected
