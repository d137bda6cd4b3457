"""Exporting and importing through the app: who may, what is shown before, and progress on a large file."""

import csv
import io
import json

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.urls import reverse

from accounts.models import User
from grade_bands.models import Grade
from routines.exchange import importing
from routines.exchange.writing import written
from routines.jobs.queue import WAITING_AT_MOST
from routines.jobs.runner import do_next
from routines.models import ImportFile, Job, Routine
from tests.factories import UserFactory
from tests.routines.making import SEVENS, make_routine


def upload(client, content, name="counts.json"):
    return client.post(reverse("import"), {"file": SimpleUploadedFile(name, content, "application/json")})


def add(client, **fields):
    """Begins to add the file that was sent, lets it go on to its end, and hands back the page that says how it went."""
    answer = client.post(reverse("import_add", args=[ImportFile.objects.get().key]), fields)
    assert answer.status_code == 302
    assert do_next(Job.Kind.IMPORT)
    return client.get(answer["Location"]).text


@pytest.fixture(autouse=True)
def no_pause(monkeypatch):
    monkeypatch.setattr(importing, "PAUSE", 0)


def plans(number):
    return [SEVENS.changed(title=f"Sevens {i}") for i in range(number)]


def test_a_routine_goes_out_as_a_file_and_comes_in_as_a_draft_of_ones_own(owner, teammate, visit):
    routine = make_routine(owner)
    file = visit(owner).get(reverse("export_routine", args=[routine.pk]))
    assert "attachment" in file["Content-Disposition"]
    changed = json.loads(file.content)
    changed["routines"][0]["title"] = "Brought in"
    client = visit(teammate)
    look = client.get(upload(client, json.dumps(changed).encode())["Location"])
    assert "Brought in" in look.text
    assert not Routine.objects.filter(title="Brought in").exists()
    add(client)
    made = Routine.objects.get(title="Brought in")
    assert (made.owner, made.status) == (teammate, "draft")


def test_out_in_and_out_again_is_the_same_to_the_byte(owner, teammate, coach, visit):
    for plan in plans(3):
        make_routine(owner, plan=plan)
    first = visit(coach).get(reverse("export_bank")).content
    Routine.objects.update(current_version=None, copied_from_version=None)
    Routine.objects.all().delete()
    client = visit(coach)
    upload(client, first)
    add(client, into_bank="1")
    assert client.get(reverse("export_bank")).content == first


def test_what_is_here_already_is_not_added_again(owner, visit):
    make_routine(owner)
    client = visit(owner)
    upload(client, written([SEVENS, SEVENS.changed(title="New one")]))
    key = ImportFile.objects.get().key
    assert "Already here" in client.get(reverse("import_look", args=[key])).text
    assert "1 added, 1 were here already" in add(client)
    assert Routine.objects.count() == 2


def test_a_partly_bad_file_says_which_and_why_and_adds_the_rest(owner, visit):
    good, bad = SEVENS.as_dict(), {**SEVENS.as_dict(), "title": "Bad one", "grade": "99"}
    content = json.dumps({"format": "countfold-routines", "version": 1, "routines": [bad, good]}).encode()
    client = visit(owner)
    look = client.get(upload(client, content)["Location"]).text
    assert "Bad one" in look
    assert "no grade" in look
    assert "Bad one" in add(client)
    assert [routine.title for routine in Routine.objects.all()] == ["Sevens from four"]


def test_many_routines_come_in_by_themselves_with_progress(owner, visit, monkeypatch):
    client = visit(owner)
    upload(client, written(plans(200)))
    file = ImportFile.objects.get()
    address = reverse("import_progress", args=[file.key])
    begun = client.post(reverse("import_add", args=[file.key]))
    assert begun["Location"] == address
    assert "It begins in a moment" in client.get(address).text
    looks = []

    def look(seconds: float) -> None:
        looks.append(client.get(address, headers={"HX-Request": "true"}).text)

    monkeypatch.setattr(importing.time, "sleep", look)
    assert do_next(Job.Kind.IMPORT)
    assert 'value="5"' in looks[0]
    assert 'value="195"' in looks[-1]
    assert all('hx-trigger="every 1s"' in text for text in looks)
    last = client.get(address, headers={"HX-Request": "true"}).text
    assert "200 added" in last
    assert "hx-trigger" not in last
    assert Routine.objects.count() == 200


def test_without_scripts_the_page_refreshes_until_all_are_in(owner, visit):
    client = visit(owner)
    upload(client, written(plans(2)))
    address = client.post(reverse("import_add", args=[ImportFile.objects.get().key]))["Location"]
    assert '<meta http-equiv="refresh"' in client.get(address).text
    assert do_next(Job.Kind.IMPORT)
    assert '<meta http-equiv="refresh"' not in client.get(address).text


def test_begun_twice_it_is_added_once(owner, visit):
    client = visit(owner)
    upload(client, written(plans(2)))
    client.post(reverse("import_add", args=[ImportFile.objects.get().key]))
    add(client)
    client.post(reverse("import_add", args=[ImportFile.objects.get().key]))
    assert not do_next(Job.Kind.IMPORT)
    assert Routine.objects.count() == 2


def test_stopped_it_keeps_what_was_added_and_can_go_on(owner, visit, monkeypatch):
    client = visit(owner)
    upload(client, written(plans(12)))
    key = ImportFile.objects.get().key
    with monkeypatch.context() as patch:
        patch.setattr(importing.time, "sleep", lambda seconds: client.post(reverse("import_stop", args=[key])))
        text = add(client)
    assert "Stopped. What was added stays. 5 of 12 are done." in text
    assert "Go on" in text
    assert not do_next(Job.Kind.IMPORT)
    assert client.get(reverse("import_look", args=[key]))["Location"] == reverse("import_progress", args=[key])
    assert "12 added" in add(client)
    assert Routine.objects.count() == 12


def test_another_file_waits_until_this_one_is_in(owner, visit):
    client = visit(owner)
    upload(client, written(plans(2)), name="first.json")
    client.post(reverse("import_add", args=[ImportFile.objects.get().key]))
    answer = upload(client, written(plans(1)))
    assert answer.status_code == 422
    assert "first.json are still being added" in answer.text
    assert reverse("import_progress", args=[ImportFile.objects.get().key]) in answer.text
    assert do_next(Job.Kind.IMPORT)
    assert upload(client, written(plans(1))).status_code == 302


def test_what_the_school_can_no_longer_take_is_told_and_the_rest_comes_in(owner, visit, grade_three):
    client = visit(owner)
    upload(client, written([SEVENS.changed(title="Lost plum", grade="3"), SEVENS]))
    Grade.objects.filter(pk=grade_three.pk).update(name="Third")
    text = add(client)
    assert "1 added" in text
    assert "Lost plum" in text
    assert "This school has no grade “3”." in text
    assert [routine.title for routine in Routine.objects.all()] == [SEVENS.title]


@pytest.mark.parametrize("change", [{"role": "teacher"}, {"is_active": False}])
def test_who_may_no_longer_do_it_when_its_turn_comes_does_not(coach, owner, visit, change):
    client = visit(coach)
    upload(client, written(plans(2)))
    client.post(reverse("import_add", args=[ImportFile.objects.get().key]), {"into_bank": "1"})
    User.objects.filter(pk=coach.pk).update(**change)
    assert do_next(Job.Kind.IMPORT)
    assert Job.objects.get().has_failed
    assert not Routine.objects.exists()


def test_a_full_queue_is_said(owner, visit):
    Job.objects.bulk_create(
        Job(kind="import", owner=person, title="Another") for person in UserFactory.create_batch(WAITING_AT_MOST)
    )
    client = visit(owner)
    upload(client, written(plans(2)))
    answer = client.post(reverse("import_add", args=[ImportFile.objects.get().key]), follow=True)
    assert "imports are waiting already" in answer.text
    assert "Add 2 counts" in answer.text


def test_what_is_here_already_is_not_among_what_can_be_added(owner, visit):
    make_routine(owner)
    client = visit(owner)
    page = client.get(upload(client, written([SEVENS, SEVENS.changed(title="New one")])).url).text
    for words in ("1 count can be added.", "Add 1 count<", "whole numbers"):
        assert words in page
    page = client.get(upload(client, written([SEVENS])).url).text
    assert "All of its counts are here already" in page
    assert "/add/" not in page


@pytest.mark.parametrize("content", [b"", b"junk", b"{}"])
def test_what_is_no_file_is_refused_at_its_field(owner, visit, content):
    answer = upload(visit(owner), content)
    assert answer.status_code == 422
    assert "field-error" in answer.text


def test_no_file_chosen(owner, visit):
    assert "Choose a file first." in visit(owner).post(reverse("import")).text


@pytest.mark.parametrize(("name", "status"), [("owner", 403), ("coach", 200), ("administrator", 200)])
def test_who_may_export_the_bank(request, owner, visit, name, status):
    make_routine(owner)
    assert visit(request.getfixturevalue(name)).get(reverse("export_bank")).status_code == status


def test_a_teachers_import_never_goes_straight_into_the_bank(owner, visit):
    client = visit(owner)
    upload(client, written([SEVENS]))
    add(client, into_bank="1")
    assert Routine.objects.get().status == "draft"


def test_a_draft_of_someone_else_is_not_exported_and_a_file_of_someone_else_not_added(owner, teammate, visit):
    draft = make_routine(owner, shared=False)
    for name in ("export_routine", "export_grid"):
        assert visit(teammate).get(reverse(name, args=[draft.pk])).status_code == 404
    upload(visit(owner), written(plans(1)))
    key = ImportFile.objects.get().key
    assert visit(teammate).get(reverse("import_look", args=[key])).status_code == 404
    assert visit(teammate).get(reverse("import_progress", args=[key])).status_code == 404
    for name in ("import_add", "import_stop"):
        assert visit(teammate).post(reverse(name, args=[key])).status_code == 404
        assert visit(owner).get(reverse(name, args=[key])).status_code == 405


def test_the_bank_holds_no_drafts_and_no_people(owner, coach, visit):
    make_routine(owner)
    make_routine(owner, shared=False, title="Secret plum")
    text = visit(coach).get(reverse("export_bank")).text
    assert "Secret plum" not in text
    assert "Owner" not in text


def test_the_grid_goes_out_as_a_table(owner, visit):
    answer = visit(owner).get(reverse("export_grid", args=[make_routine(owner).pk]))
    rows = list(csv.reader(io.StringIO(answer.content.decode("utf-8-sig"))))
    # 4, 11, 18, 25, 32 / 39 ...
    assert rows[0] == ["4", "11", "18", "25", "32"]
    assert rows[1][0] == "39"


def test_the_format_is_published(owner, visit):
    assert visit(owner).get(reverse("file_schema")).json()["title"] == "Countfold routines"
