"""Looking for counts: by how words begin, accents and capitals aside, numbers as typed; the title counts most."""

import pytest

from routines.counting import Audience
from routines.models import Routine, SearchWord
from routines.models.plan_document import CountSection, Story
from routines.models.search_word import words_of
from routines.plans.actions import save_version
from routines.words import patterns_to_say
from tests.routines.bank.walking import titles_on
from tests.routines.making import make_routine

pytestmark = pytest.mark.django_db


@pytest.fixture
def found(owner, visit):
    """Titles found by a search, in order."""
    client = visit(owner)

    def look(words: str) -> list[str]:
        answer = client.get("/bank/", {"q": words})
        assert answer.status_code == 200
        return titles_on(answer)

    return look


@pytest.fixture
def bank(owner):
    plums = Story("A basket of plums, 1,325 in all, with 2.5 left over.", "plum", "")
    make_routine(owner, title="Plum baskets")
    make_routine(owner, title="Canción del niño", story=plums)
    make_routine(owner, title="By ¾ and 3/4", count=CountSection("whole", "40", "-7", 5), targets=(), stops=())
    make_routine(owner, title="ÆON Größe 10,50", standards=("3.OA.D.9",))


@pytest.mark.parametrize(
    ("words", "titles"),
    [
        ("plum", ["Plum baskets", "Canción del niño"]),  # the older one has it in its title
        ("PLU bask", ["Plum baskets", "Canción del niño"]),
        ("cancion NINO", ["Canción del niño"]),
        ("CANCIÓN", ["Canción del niño"]),
        ("lum", []),  # not the middle of a word
        ("1,325", ["Canción del niño"]),
        ("1325", ["Canción del niño"]),
        ("1,32", []),
        ("2.5", ["Canción del niño"]),
        ("3/4", ["By ¾ and 3/4"]),
        ("¾", ["By ¾ and 3/4"]),
        ("grosse", ["ÆON Größe 10,50"]),
        ("10,50", ["ÆON Größe 10,50"]),
        ("3.oa", ["ÆON Größe 10,50"]),
        ("3.OA.D.9", ["ÆON Größe 10,50"]),
        ("plum nothing-like-it", []),
        ("plum -- !", ["Plum baskets", "Canción del niño"]),
    ],
)
def test_what_is_found(bank, found, words, titles):
    assert found(words) == titles


@pytest.mark.parametrize("words", ["\0", "?!… —", "%", "_", "'", '"', "\\", "-", "plum\0"])
def test_signs_are_no_error_and_no_pattern(bank, found, owner, visit, words):
    titles = found(words)
    assert titles == (["Plum baskets", "Canción del niño"] if "plum" in words else found(""))
    if words.strip("\0") and "plum" not in words:
        assert "holds no letter and no number" in visit(owner).get("/bank/", {"q": words}).text


def test_ten_thousand_signs_are_looked_for_up_to_a_hundred(bank, found):
    assert found("plum " * 2000) == ["Plum baskets", "Canción del niño"]
    assert found("x" * 10_000) == []
    assert found("1," * 5000) == []


def test_what_is_saved_anew_is_found_by_its_new_words_alone(owner, found):
    routine = make_routine(owner, title="Plum baskets")
    save_version(
        routine=routine, plan=routine.plan.changed(title="Pear baskets"), based_on=routine.current_version, by=owner
    )
    assert (found("plum"), found("pear")) == ([], ["Pear baskets"])
    routine.refresh_from_db()
    kept = dict(SearchWord.objects.values_list("word", "in_title"))
    assert kept == words_of(routine.title, routine.search_text)
    assert kept["pear"] is True


def test_drafts_are_found_by_their_authors_among_their_plans_alone(owner, teammate, visit):
    make_routine(owner, title="Plum draft", shared=False)
    make_routine(owner, title="Plum in the bank")
    assert titles_on(visit(owner).get("/plans/", {"q": "plum"})) == ["Plum draft", "Plum in the bank"]
    assert titles_on(visit(teammate).get("/bank/", {"q": "plum"})) == ["Plum in the bank"]
    none = visit(teammate).get("/plans/", {"q": "plum"})
    assert titles_on(none) == []
    assert "None of your plans has these words." in none.text


def test_a_search_meets_what_begins_so_whatever_else_is_there(owner):
    """Against a look at every word of every count."""
    for title in ("Tens", "tenths of ten", "Often", "ten", "TEN-frames", "Tëns", "10 tens", "t"):
        make_routine(owner, title=title, targets=(), stops=())
    for asked in ("t", "te", "ten", "tens", "tent", "10", "1", "frames"):
        expected = {
            routine.title
            for routine in Routine.objects.all()
            if any(
                word == asked if asked.isdigit() else word.startswith(asked)
                for word in words_of(routine.title, routine.search_text)
            )
        }
        assert set(Routine.objects.matching(asked).values_list("title", flat=True)) == expected


@pytest.mark.parametrize("often", [20_000, 5, 4, 2, 1, 0])
def test_the_same_is_found_by_title_however_often_the_words_are_met(owner, visit, monkeypatch, often):
    """Each way to look in an order that is not the search's own, for words that few, many and most counts have."""
    monkeypatch.setattr("routines.models.routine.OFTEN", often)
    monkeypatch.setattr("routines.models.routine.FEW", min(often, 2))
    ways = {"red": range(6), "amber": range(1, 6), "blue": (0, 2, 4), "green": (4, 5), "greens": (4,), "white": (5,)}
    titles = {number: " ".join(way for way, numbers in ways.items() if number in numbers) for number in range(6)}
    for title in titles.values():
        make_routine(owner, title=title)
    for words in (
        "red amber",
        "red blue",
        "amber blue",
        "green blue",
        "amber green blue",
        "white red",
        "white blue",
        "red",
    ):
        wanted = sorted(title for title in titles.values() if all(word in title for word in words.split()))
        assert titles_on(visit(owner).get("/bank/", {"q": words, "sort": "title"})) == wanted, words


@pytest.mark.parametrize(
    ("kind", "start", "step"), [("whole", "58", "6"), ("decimal", "4.75", "-0.25"), ("whole", "240", "100")]
)
def test_what_the_page_says_first_is_found(owner, kind, start, step):
    routine = make_routine(owner, count=CountSection(kind, start, step, 20), targets=(), stops=())
    grid, level = routine.plan.grid(), routine.grade.level
    first = patterns_to_say(grid, audience=Audience(level))[:6]
    assert all(pattern.statement.casefold() in routine.search_text for pattern in first)
