"""The page: what each person finds and may remove, what is asked before, and what is said after."""

import pytest
from django.urls import reverse

from routines.models import Job, Routine, RoutineNote
from routines.words_erased import list_of_erasures
from tests.routines.making import make_routine

NAME = "Zebulina"
ADDRESS = "/remove-words/"


@pytest.fixture(autouse=True)
def own_data_folder(settings, tmp_path):
    settings.DATA_DIR = tmp_path


@pytest.fixture
def note(owner, teammate) -> RoutineNote:
    routine = make_routine(owner, title="Sevens")
    RoutineNote.objects.create(routine=routine, by=teammate, text=f"A secret of mine, with {NAME} in it")
    return RoutineNote.objects.create(routine=routine, by=owner, text=f"Ask {NAME.upper()} first")


def post(client, **fields):
    return client.post(ADDRESS, {"words": NAME, "do": "look", **fields})


def page(response) -> str:
    return response.content.decode()


def test_the_address_is_named(visit, owner):
    assert reverse("erase_words") == ADDRESS
    assert visit(owner).get(ADDRESS).status_code == 200


def test_the_signed_out_sign_in_first(signed_out):
    assert signed_out.get(ADDRESS).status_code == 302
    assert post(signed_out, do="remove", places="routines.RoutineNote.text").status_code in (302, 401, 403)
    assert not list_of_erasures.file().exists()


def test_one_sees_where_they_stand_in_what_one_wrote_and_what_becomes_of_it(visit, owner, note):
    text = page(post(visit(owner)))
    assert "stands in 1 text" in text
    assert "Ask <del>ZEBULINA</del> <ins>[words removed]</ins> first" in text
    assert "Sevens" in text
    assert "secret of mine" not in text


def test_a_teacher_cannot_ask_for_everybodys_texts(visit, owner, teammate, note):
    client = visit(owner)
    assert "stands in 1 text" in page(post(client, whose="all"))
    post(client, whose="all", do="remove", places="routines.RoutineNote.text")
    assert RoutineNote.objects.filter(text__contains=NAME).get().by == teammate


def test_an_administrator_sees_places_and_the_words_and_no_other_text(visit, administrator, note):
    text = page(post(visit(administrator), whose="all"))
    assert "stands in 2 texts" in text
    assert "ZEBULINA" in text
    assert "Notes on counts: 2" in text
    assert "secret of mine" not in text
    assert "Sevens" not in text


def test_a_coach_is_no_administrator_here(visit, coach, note):
    assert "stands nowhere" in page(post(visit(coach), whose="all"))


def test_looking_changes_nothing(visit, administrator, note):
    post(visit(administrator), whose="all")
    note.refresh_from_db()
    assert NAME.upper() in note.text
    assert not list_of_erasures.file().exists()


def test_removing_changes_what_was_chosen_and_begins_the_rest(visit, administrator, note):
    response = post(visit(administrator), whose="all", do="remove", places="routines.RoutineNote.text")
    assert response.status_code == 302
    assert not RoutineNote.objects.filter(text__icontains=NAME).exists()
    assert Job.objects.get(kind=Job.Kind.ERASING).owner == administrator
    after = page(visit(administrator).get(ADDRESS))
    assert "2 texts of anyone" in after
    assert NAME.casefold() not in after.casefold()


def test_as_many_are_removed_as_were_found(visit, administrator, owner):
    make_routine(owner, title=f"{NAME} sevens", notes=f"{NAME} and {NAME}, {NAME}")
    client = visit(administrator)
    assert "stands in 2 texts" in page(post(client, whose="all"))
    post(client, whose="all", do="remove", places="routines.RoutineVersion.plan")
    assert ": 2 texts of anyone" in page(client.get(ADDRESS))


def test_names_of_people_are_said_to_stand_elsewhere(visit, administrator, owner):
    text = page(post(visit(administrator), words="Owner Ota", whose="all"))
    assert "Not changed from here: 1 names of people" in text


def test_titles_and_search_follow_the_saved_plan(visit, owner):
    make_routine(owner, title=f"{NAME} sevens")
    post(visit(owner), do="remove", places="routines.RoutineVersion.plan")
    routine = Routine.objects.get()
    assert routine.title == "[words removed] sevens"
    assert NAME.casefold() not in routine.search_text


def test_removing_asks_for_a_place(visit, owner, note):
    response = post(visit(owner), do="remove")
    assert response.status_code == 422
    assert "Tick at least one place" in page(response)
    assert not list_of_erasures.file().exists()


def test_sent_twice_it_is_done_once(visit, owner, note):
    client = visit(owner)
    key = "7d7f1c1e-0b52-4b6e-8f62-5c5a5b1c0a11"
    for _ in range(2):
        post(client, do="remove", places="routines.RoutineNote.text", form_key=key)
    assert len(list_of_erasures.read()) == 1


@pytest.mark.parametrize(
    ("words", "said"),
    [
        ("", "required"),
        ("a", "at least 2"),
        ("12", "at least one letter"),
        ("x" * 81, "80"),
        ("a b c d e f g h i j k l m", "at most 12 words"),
        ("-!", "at least one letter"),
    ],
)
def test_what_cannot_be_looked_for_is_said_and_kept_in_the_field(visit, owner, words, said):
    response = post(visit(owner), words=words)
    assert response.status_code == 422
    assert said in page(response)
    assert f'value="{words}"' in page(response) or not words


def test_others_do_not_see_what_was_removed(visit, owner, teammate, administrator, note):
    post(visit(owner), do="remove", places="routines.RoutineNote.text")
    assert "Removed so far" in page(visit(owner).get(ADDRESS))
    assert "Removed so far" not in page(visit(teammate).get(ADDRESS))
    assert "Owner Ota" in page(visit(administrator).get(ADDRESS))


def test_what_was_left_unfinished_can_be_gone_on_with(visit, owner, note):
    client = visit(owner)
    post(client, do="remove", places="routines.RoutineNote.text")
    Job.objects.all().delete()
    assert "Go on with them" in page(client.get(ADDRESS))
    client.post(ADDRESS, {"do": "finish"})
    assert Job.objects.filter(kind=Job.Kind.ERASING).exists()


def test_a_fragment_says_how_far_it_is(visit, owner, note):
    client = visit(owner)
    post(client, do="remove", places="routines.RoutineNote.text")
    text = page(client.get(ADDRESS, headers={"HX-Request": "true"}))
    assert "<html" not in text
    assert "hx-trigger" in text


def test_a_damaged_list_stops_it_with_a_sentence(visit, administrator, note):
    list_of_erasures.file().write_text("{")
    response = post(visit(administrator), whose="all", do="remove", places="routines.RoutineNote.text")
    assert response.status_code == 422
    assert "erasures.json" in page(response)
    note.refresh_from_db()
    assert NAME.upper() in note.text
