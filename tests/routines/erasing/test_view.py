"""The page: what each person finds and may remove, what is asked before, and what is said while it goes on and after."""

import uuid

import pytest
from django.urls import reverse

from routines.erasing.look_jobs import look_of
from routines.jobs import queue
from routines.jobs.runner import do_next
from routines.models import Job, JobFile, Routine, RoutineNote
from routines.words_erased import list_of_erasures
from tests.routines.making import make_routine

NAME = "Zebulina"
ADDRESS = "/remove-words/"
NOTES = "routines.RoutineNote.text"


@pytest.fixture(autouse=True)
def own_data_folder(settings, tmp_path, monkeypatch):
    """The database's file cannot be written anew inside a test's transaction."""
    settings.DATA_DIR = tmp_path
    monkeypatch.setattr("routines.erasing.doing.rewrite_pages", lambda: None)


@pytest.fixture
def note(owner, teammate) -> RoutineNote:
    routine = make_routine(owner, title="Sevens")
    RoutineNote.objects.create(routine=routine, by=teammate, text=f"A secret of mine, with {NAME} in it")
    return RoutineNote.objects.create(routine=routine, by=owner, text=f"Ask {NAME.upper()} first")


def page(response) -> str:
    return response.content.decode()


def ask(client, **fields):
    return client.post(ADDRESS, {"words": NAME, **fields})


def looked(client, **fields) -> str:
    """The page once the look is done, as one finds it on coming back."""
    assert ask(client, **fields).status_code == 200
    assert do_next(Job.Kind.LOOKING)
    return page(client.get(ADDRESS))


def remove(client, person, *places, **fields):
    return client.post(reverse("erase_begin", args=[look_of(person).key]), {"places": places, **fields})


def test_the_address_is_named(visit, owner):
    assert reverse("erase_words") == ADDRESS
    assert visit(owner).get(ADDRESS).status_code == 200


def test_the_signed_out_sign_in_first(signed_out):
    assert signed_out.get(ADDRESS).status_code == 302
    assert ask(signed_out).status_code in (302, 401, 403)
    assert signed_out.post(reverse("erase_finish")).status_code in (302, 401, 403)
    assert not Job.objects.exists()


@pytest.mark.parametrize("name", ["erase_look_again", "erase_leave", "erase_begin"])
def test_what_changes_something_is_posted(visit, owner, name):
    assert visit(owner).get(reverse(name, args=[uuid.uuid4()])).status_code == 405


def test_looking_answers_at_once_and_says_that_it_goes_on(visit, owner, note):
    client = visit(owner)
    text = page(ask(client))
    assert "Searching…" in text
    assert f'value="{NAME}"' in text, "the field keeps the words as long as this page stands"
    assert 'hx-trigger="load delay:300ms, every 1s"' in text
    assert "Searching…" in page(client.get(ADDRESS)), "it can be left and come back to"
    assert NAME not in page(client.get(ADDRESS))


def test_how_far_it_is_comes_as_a_fragment(visit, owner, note):
    client = visit(owner)
    ask(client)
    address = reverse("erase_look", args=[look_of(owner).key])
    text = page(client.get(address, headers={"HX-Request": "true"}))
    assert "<html" not in text
    assert 'hx-trigger="every 1s"' in text
    do_next(Job.Kind.LOOKING)
    text = page(client.get(address, headers={"HX-Request": "true"}))
    assert "hx-trigger" not in text
    assert "found in 1 text" in text
    assert client.get(address).status_code == 302


def test_a_look_is_seen_by_whom_it_is_of(visit, owner, teammate, note):
    looked(visit(owner))
    look = look_of(owner)
    other = visit(teammate)
    assert "found in" not in page(other.get(ADDRESS))
    answer = other.get(reverse("erase_look", args=[look.key]), headers={"HX-Request": "true"})
    assert "found in" not in page(answer)
    for name in ("erase_look_again", "erase_leave"):
        assert other.post(reverse(name, args=[look.key])).status_code == 404
    other.post(reverse("erase_begin", args=[look.key]), {"places": NOTES})
    assert not list_of_erasures.file().exists()
    assert look_of(owner) == look


def test_no_row_of_a_job_holds_the_words(visit, administrator, owner, note):
    client = visit(administrator)
    ask(client, whose="all")
    assert NAME.casefold() not in str(list(Job.objects.values())).casefold()
    do_next(Job.Kind.LOOKING)
    kept = str(list(Job.objects.values())) + bytes(JobFile.objects.get().content).decode()
    assert NAME.casefold() not in kept.casefold()
    remove(client, administrator, NOTES)
    do_next(Job.Kind.ERASING)
    assert NAME.casefold() not in str(list(Job.objects.values())).casefold()
    assert not JobFile.objects.exists(), "what was looked for is not kept any longer"


def test_looking_for_common_words_does_not_find_our_own_jobs(visit, administrator, school):
    assert "nowhere in what anyone wrote" in looked(visit(administrator), words="looking", whose="all")
    assert "nowhere in what anyone wrote" in looked(visit(administrator), words="removal", whose="all")


def test_one_sees_where_they_stand_in_what_one_wrote_and_what_becomes_of_it(visit, owner, note):
    text = looked(visit(owner))
    assert "“ZEBULINA” found in 1 text" in text
    assert "Ask <del>ZEBULINA</del> <ins>[words removed]</ins> first" in text
    assert "Sevens" in text
    assert "secret of mine" not in text


def test_a_title_that_one_may_not_see_is_not_shown(visit, owner, teammate, note):
    """The teammate's note stays hers when the count is a draft again that only its owner sees."""
    Routine.objects.update(status=Routine.Status.DRAFT)
    text = looked(visit(teammate))
    assert "A secret of mine, with <del>" in text
    assert "Sevens" not in text
    assert "not in the bank" in text


def test_what_was_changed_after_the_look_is_not_shown_as_it_was(visit, owner, note):
    client = visit(owner)
    looked(client)
    RoutineNote.objects.filter(pk=note.pk).update(text="Ask nobody first")
    text = page(client.get(ADDRESS))
    assert "Ask" not in text
    assert "The words found in 1 text" in text


def test_a_teacher_cannot_ask_for_everybodys_texts(visit, owner, teammate, note):
    client = visit(owner)
    assert "found in 1 text" in looked(client, whose="all")
    remove(client, owner, NOTES)
    do_next(Job.Kind.ERASING)
    assert RoutineNote.objects.filter(text__contains=NAME).get().by == teammate


def test_an_administrator_sees_places_and_the_words_and_no_other_text(visit, administrator, note):
    text = looked(visit(administrator), whose="all")
    assert "found in 2 texts" in text
    assert "ZEBULINA" in text
    assert "Notes on counts: 2" in text
    assert "secret of mine" not in text
    assert "Sevens" not in text


def test_who_is_no_administrator_any_more_does_not_go_on_for_everybody(visit, administrator, note):
    client = visit(administrator)
    ask(client, whose="all")
    administrator.role = administrator.Role.TEACHER
    administrator.save(update_fields=["role"])
    do_next(Job.Kind.LOOKING)
    assert look_of(administrator).has_failed
    assert "may not look through these texts" in page(client.get(ADDRESS))


def test_nor_removes_what_was_found_before(visit, administrator, note):
    client = visit(administrator)
    looked(client, whose="all")
    administrator.role = administrator.Role.TEACHER
    administrator.save(update_fields=["role"])
    assert "ZEBULINA" not in page(client.get(ADDRESS))
    assert remove(client, administrator, NOTES).status_code == 403
    assert not list_of_erasures.file().exists()


def test_a_coach_is_no_administrator_here(visit, coach, note):
    assert "nowhere in what you wrote" in looked(visit(coach), whose="all")


def test_looking_changes_nothing(visit, administrator, note):
    looked(visit(administrator), whose="all")
    note.refresh_from_db()
    assert NAME.upper() in note.text
    assert not list_of_erasures.file().exists()


def test_a_look_can_be_stopped(visit, owner, note):
    client = visit(owner)
    ask(client)
    answer = client.post(reverse("erase_leave", args=[look_of(owner).key]), follow=True)
    assert "Nothing was changed" in page(answer)
    assert not do_next(Job.Kind.LOOKING)
    assert look_of(owner) is None


def test_a_look_that_failed_says_so_and_is_tried_again(visit, owner, note, monkeypatch):
    client = visit(owner)
    ask(client)

    def broken(*args, **asked):
        raise RuntimeError("in the middle")

    with monkeypatch.context() as failing:
        failing.setattr("routines.erasing.look_jobs.look_for", broken)
        do_next(Job.Kind.LOOKING)
    assert "The search stopped in the middle. Nothing was changed." in page(client.get(ADDRESS))
    client.post(reverse("erase_look_again", args=[look_of(owner).key]))
    do_next(Job.Kind.LOOKING)
    assert "found in 1 text" in page(client.get(ADDRESS))


def test_a_full_queue_is_said_and_the_words_stay_in_the_field(visit, owner, note, monkeypatch):
    monkeypatch.setattr(queue, "WAITING_AT_MOST", 0)
    answer = ask(visit(owner))
    assert answer.status_code == 422
    assert "are waiting already" in page(answer)
    assert f'value="{NAME}"' in page(answer)


def test_removing_answers_at_once_and_goes_on_by_itself(visit, administrator, note):
    client = visit(administrator)
    looked(client, whose="all")
    assert remove(client, administrator, NOTES).status_code == 302
    text = page(client.get(ADDRESS))
    assert "Being removed" in text
    assert "It begins in a moment" in text
    assert Job.objects.get(kind=Job.Kind.ERASING).owner == administrator
    assert do_next(Job.Kind.ERASING)
    assert not RoutineNote.objects.filter(text__icontains=NAME).exists()
    after = page(client.get(ADDRESS))
    assert "Done: the words are out" in after
    assert "2 texts of anyone" in after
    assert NAME.casefold() not in after.casefold()


def test_a_fragment_says_how_far_removing_is(visit, owner, note):
    client = visit(owner)
    looked(client)
    remove(client, owner, NOTES)
    text = page(client.get(reverse("erase_progress"), headers={"HX-Request": "true"}))
    assert "<html" not in text
    assert 'hx-trigger="every 1s"' in text
    assert client.get(reverse("erase_progress")).status_code == 302


def test_a_page_opened_before_is_guarded_from_the_first_moment(visit, owner, teammate, administrator, note):
    """The removal waits for its turn; nothing that was opened before it brings the words into the rows meanwhile."""
    mine = visit(teammate)
    address = reverse("routine", args=[note.routine_id])
    opened = page(mine.get(address)).split('name="opened" value="')[1].split('"')[0]
    client = visit(administrator)
    looked(client, whose="all")
    remove(client, administrator, NOTES)
    answer = mine.post(reverse("routine_note", args=[note.routine_id]), {"opened": opened, "text": f"{NAME} again"})
    assert answer.status_code == 422
    assert not RoutineNote.objects.filter(text__contains="again").exists()


def test_as_many_are_removed_as_were_found(visit, administrator, owner):
    make_routine(owner, title=f"{NAME} sevens", notes=f"{NAME} and {NAME}, {NAME}")
    client = visit(administrator)
    assert "found in 2 texts" in looked(client, whose="all")
    remove(client, administrator, "routines.RoutineVersion.plan")
    do_next(Job.Kind.ERASING)
    assert ": 2 texts of anyone" in page(client.get(ADDRESS))


def test_two_removals_at_once_count_each_its_own(visit, administrator, owner, note):
    for person, whose in ((administrator, "all"), (owner, "")):
        looked(visit(person), whose=whose)
        remove(visit(person), person, NOTES)
    do_next(Job.Kind.ERASING)
    assert [entry.taken_out for entry in list_of_erasures.read()] == [2, 1]
    assert all(entry.finished_at for entry in list_of_erasures.read())


def test_names_of_people_are_said_to_stand_elsewhere(visit, administrator, owner):
    assert "Not changed from here: 1 names of people" in looked(visit(administrator), words="Owner Ota", whose="all")


def test_titles_and_search_follow_the_saved_plan(visit, owner):
    make_routine(owner, title=f"{NAME} sevens")
    client = visit(owner)
    looked(client)
    remove(client, owner, "routines.RoutineVersion.plan")
    do_next(Job.Kind.ERASING)
    routine = Routine.objects.get()
    assert routine.title == "[words removed] sevens"
    assert NAME.casefold() not in routine.search_text


def test_removing_asks_for_a_place(visit, owner, note):
    client = visit(owner)
    looked(client)
    response = remove(client, owner)
    assert response.status_code == 422
    assert "Tick at least one place" in page(response)
    assert "checked" not in page(response).split('id="erase-look"')[1]
    assert not list_of_erasures.file().exists()


def test_sent_twice_it_is_done_once(visit, owner, note):
    client = visit(owner)
    looked(client)
    address = reverse("erase_begin", args=[look_of(owner).key])
    form = {"places": NOTES, "form_key": "7d7f1c1e-0b52-4b6e-8f62-5c5a5b1c0a11"}
    for _ in range(2):
        assert client.post(address, form).status_code == 302
    assert len(list_of_erasures.read()) == 1


def test_what_another_page_looked_for_meanwhile_is_not_removed_by_this_one(visit, owner, note):
    client = visit(owner)
    looked(client)
    before = look_of(owner).key
    looked(client, words="first")
    answer = client.post(reverse("erase_begin", args=[before]), {"places": NOTES}, follow=True)
    assert "not kept any longer" in page(answer)
    assert not list_of_erasures.file().exists()


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
    response = ask(visit(owner), words=words)
    assert response.status_code == 422
    assert said in page(response)
    assert f'value="{words}"' in page(response) or not words
    assert not Job.objects.exists()


def test_others_do_not_see_what_was_removed(visit, owner, teammate, administrator, note):
    looked(visit(owner))
    remove(visit(owner), owner, NOTES)
    assert "Removed so far" in page(visit(owner).get(ADDRESS))
    assert "Removed so far" not in page(visit(teammate).get(ADDRESS))
    others = page(visit(administrator).get(ADDRESS))
    assert "Owner Ota" in others
    assert "Go on with it" not in others, "a colleague's removal is under way"


def test_what_was_left_unfinished_can_be_gone_on_with(visit, owner, note):
    client = visit(owner)
    looked(client)
    remove(client, owner, NOTES)
    Job.objects.all().delete()
    assert "Go on with it" in page(client.get(ADDRESS))
    client.post(reverse("erase_finish"))
    assert do_next(Job.Kind.ERASING)
    assert "Go on with it" not in page(client.get(ADDRESS))
    note.refresh_from_db()
    assert note.text == "Ask [words removed] first"


def test_a_removal_that_failed_says_so_and_is_gone_on_with(visit, owner, note, monkeypatch):
    client = visit(owner)
    looked(client)
    remove(client, owner, NOTES)

    def broken(*args, **asked):
        raise RuntimeError("in the middle")

    with monkeypatch.context() as failing:
        failing.setattr("routines.erasing.doing.take_out", broken)
        do_next(Job.Kind.ERASING)
    text = page(client.get(ADDRESS))
    assert "It stopped in the middle, and some words may be left." in text
    assert "Go on with it" in text
    client.post(reverse("erase_finish"))
    do_next(Job.Kind.ERASING)
    assert "Done: the words are out" in page(client.get(ADDRESS))


def test_a_damaged_list_stops_it_with_a_sentence(visit, administrator, note):
    client = visit(administrator)
    looked(client, whose="all")
    list_of_erasures.file().write_text("{")
    response = remove(client, administrator, NOTES)
    assert response.status_code == 422
    assert "erasures.json" in page(response)
    assert not Job.objects.filter(kind=Job.Kind.ERASING).exists()
    note.refresh_from_db()
    assert NAME.upper() in note.text


def test_the_page_asks_the_database_as_often_whatever_was_found(visit, owner, django_assert_max_num_queries):
    routine = make_routine(owner, title="Sevens")
    for number in range(30):
        RoutineNote.objects.create(routine=routine, by=owner, text=f"{NAME} {number}")
    client = visit(owner)
    looked(client)
    with django_assert_max_num_queries(14):
        assert "and 18 more" in page(client.get(ADDRESS))
