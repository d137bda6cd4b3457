"""The bank: the filter state is the URL, nobody's drafts are in it, and its queries do not grow with the cards."""

import pytest
from django.urls import reverse

from routines.models.plan_document import CountSection, Fold
from tests.routines.making import make_lesson, make_routine


@pytest.fixture
def bank(owner, grade_three, visit):
    """Three counts: sevens up (grade 2), eights back (grade 3), thirds (grade 3)."""
    make_routine(owner, title="Sevens up")
    make_routine(
        owner,
        title="Eights back",
        grade="3",
        count=CountSection("whole", "160", "-8", 20),
        fold=Fold(5, "down"),
        targets=(),
        stops=(),
    )
    make_routine(
        owner,
        title="Thirds to four",
        grade="3",
        area="fractions",
        count=CountSection("fraction", "1/3", "1/3", 12),
        fold=Fold(3),
        targets=(),
        stops=(),
        standards=(),
    )
    return visit(owner)


def titles(answer):
    return {title for title in ("Sevens up", "Eights back", "Thirds to four") if title in answer.text}


@pytest.mark.parametrize(
    ("query", "found"),
    [
        ("", {"Sevens up", "Eights back", "Thirds to four"}),
        ("?grade=2", {"Sevens up"}),
        ("?grade=2&grade=3", {"Sevens up", "Eights back", "Thirds to four"}),
        ("?area=fractions", {"Thirds to four"}),
        ("?direction=backward", {"Eights back"}),
        ("?step=small", {"Thirds to four"}),
        ("?step=ones", {"Sevens up", "Eights back"}),
        ("?kind=fraction", {"Thirds to four"}),
        ("?shows=table", {"Thirds to four"}),
        ("?shows=opposites", set()),
        ("?q=eights", {"Eights back"}),
        ("?q=THIRDS+four", {"Thirds to four"}),
        ("?q=nothing-like-it", set()),
        ("?taught=ever", set()),
        ("?taught=not-yet", {"Sevens up", "Eights back", "Thirds to four"}),
        ("?grade=nonsense&area=%00&owner=x&sort=wild&page=zz", {"Sevens up", "Eights back", "Thirds to four"}),
        ("?q=%00", {"Sevens up", "Eights back", "Thirds to four"}),
        ("?owner=999999", set()),
    ],
)
def test_a_filter_finds_what_it_says(bank, query, found):
    answer = bank.get("/bank/" + query)
    assert answer.status_code == 200
    assert titles(answer) == found


def test_a_taught_count_is_found_by_when_it_was_taught(bank, owner):
    from routines.models import Routine

    make_lesson(Routine.objects.get(title="Eights back"), owner)
    make_lesson(Routine.objects.get(title="Sevens up"), owner, practice=True)
    assert titles(bank.get("/bank/?taught=ever")) == {"Eights back"}
    assert titles(bank.get("/bank/?taught=this-year")) == {"Eights back"}
    assert "taught once" in bank.get("/bank/?taught=ever").text


def test_htmx_gets_the_cards_alone_and_a_restored_page_gets_all(bank):
    fragment = bank.get("/bank/", headers={"HX-Request": "true"})
    restored = bank.get("/bank/", headers={"HX-Request": "true", "HX-History-Restore-Request": "true"})
    assert "<html" not in fragment.text
    assert 'id="bank-cards"' in fragment.text
    assert "<html" in restored.text
    assert "HX-Request" in fragment["Vary"]


def test_no_result_says_what_to_do(bank):
    assert "Take one filter off, or design one" in bank.get("/bank/?q=zzz").text


def test_an_empty_bank_asks_for_the_first_count(owner, visit):
    assert "The bank is empty" in visit(owner).get("/bank/").text


def test_a_card_shows_the_grid_the_count_and_its_patterns(bank):
    page = bank.get("/bank/?grade=2").text
    assert "By 7 from 4, across, 5 in a line" in page
    assert "<svg" in page
    # The first target; the second fills the whole grid too, so it is not lit with it.
    assert "Each count is 7 more" in page


def test_the_number_of_queries_does_not_grow_with_the_cards(owner, visit, all_through, django_assert_max_num_queries):
    with all_through():
        for number in range(30):
            make_routine(owner, title=f"Count {number}")
    client = visit(owner)
    with django_assert_max_num_queries(13):  # one's own grades and the others are read in turn
        client.get("/bank/")


def test_posting_to_the_bank_is_refused(bank):
    assert bank.post("/bank/").status_code == 405


def test_mine_and_my_teams(owner, teammate, other_teacher, visit):
    make_routine(owner, title="Sevens up")
    make_routine(teammate, title="Eights back")
    make_routine(other_teacher, title="Thirds to four", grade="5")
    assert titles(visit(owner).get("/bank/?whose=mine")) == {"Sevens up"}
    assert titles(visit(owner).get("/bank/?whose=team")) == {"Sevens up", "Eights back"}
    assert titles(visit(owner).get("/bank/?whose=everyone")) == {"Sevens up", "Eights back", "Thirds to four"}


def test_the_reader_s_own_grades_come_first_and_all_is_one_link_away(owner, other_teacher, grade_three, visit):
    make_routine(owner, title="Sevens up")
    for title, grade in (("Eights back", "3"), ("Thirds to four", "5")):
        make_routine(other_teacher, title=title, grade=grade)
    page = visit(owner).get("/bank/").text
    order = ("For your grade 2", "Sevens up", "For other grades", "Thirds to four", "Eights back")
    places = [page.index(words) for words in order]
    assert places == sorted(places)
    assert "Your grades come first." in page
    assert 'href="?sort=newest"' in page
    newest = visit(owner).get("/bank/?sort=newest").text
    assert newest.index("Eights back") < newest.index("Sevens up")
    assert "For other grades" not in newest
    assert "For your grade" not in visit(owner).get("/bank/?grade=2&grade=3").text


def test_who_has_no_class_sees_the_newest_first(bank, coach, visit):
    page = visit(coach).get("/bank/").text
    assert "come first" not in page
    assert page.index("Thirds to four") < page.index("Sevens up")


def test_planning_a_count_is_in_sight_and_is_the_one_filled_button(bank):
    page = bank.get("/bank/").text
    assert page.count("button-main") == 1
    assert f'<a class="button button-main" href="{reverse("plan_new")}">Plan a count</a>' in page


def test_a_grade_without_such_a_count_leads_to_those_of_others(bank):
    page = bank.get("/bank/?grade=2&area=fractions").text
    assert "See 1 of another grade" in page
    assert 'href="?area=fractions"' in page
    assert "of another grade" not in bank.get("/bank/?grade=2&area=money").text


@pytest.mark.parametrize(
    ("asked", "sentence"),
    [
        ("sevens " * 13, "Only the first 12 words were looked for."),
        ("sevens" + "x" * 100, "Only the first 100 characters were looked for."),
    ],
)
def test_a_search_for_too_much_says_what_was_left_out(owner, visit, asked, sentence):
    assert sentence in visit(owner).get("/bank/", {"q": asked}).text
    assert "were looked for" not in visit(owner).get("/bank/", {"q": "sevens " * 12}).text


def test_a_card_leads_to_teaching_for_whoever_has_a_class(bank, owner):
    address = f'href="/routines/{owner.owned_routines.first().pk}/teach/"'
    assert address in bank.get("/bank/").text
    owner.class_groups.clear()
    assert address not in bank.get("/bank/").text
