"""Exporting and importing through the app: who may, what is shown before, and progress on a large file."""

import csv
import io
import json

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.urls import reverse

from routines.exchange.written import written
from routines.models import ImportFile, Routine
from tests.routines.making import SEVENS, make_routine


def upload(client, content, name="counts.json"):
    return client.post(reverse("import"), {"file": SimpleUploadedFile(name, content, "application/json")})


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
    client.post(reverse("import_add", args=[ImportFile.objects.get().key]))
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
    client.post(reverse("import_add", args=[ImportFile.objects.get().key]), {"into_bank": "1"})
    assert client.get(reverse("export_bank")).content == first


def test_what_is_here_already_is_not_added_again(owner, visit):
    make_routine(owner)
    client = visit(owner)
    upload(client, written([SEVENS, SEVENS.changed(title="New one")]))
    key = ImportFile.objects.get().key
    assert "Already here" in client.get(reverse("import_look", args=[key])).text
    assert "1 added, 1 were here already" in client.post(reverse("import_add", args=[key])).text
    assert Routine.objects.count() == 2


def test_a_partly_bad_file_says_which_and_why_and_adds_the_rest(owner, visit):
    good, bad = SEVENS.as_dict(), {**SEVENS.as_dict(), "title": "Bad one", "grade": "99"}
    content = json.dumps({"format": "countfold-routines", "version": 1, "routines": [bad, good]}).encode()
    client = visit(owner)
    look = client.get(upload(client, content)["Location"]).text
    assert "Bad one" in look
    assert "no grade" in look
    client.post(reverse("import_add", args=[ImportFile.objects.get().key]))
    assert [routine.title for routine in Routine.objects.all()] == ["Sevens from four"]


def test_a_thousand_routines_come_in_some_at_a_time_with_progress(owner, visit):
    client = visit(owner)
    upload(client, written(plans(1000)))
    address = reverse("import_add", args=[ImportFile.objects.get().key])
    first = client.post(address, headers={"HX-Request": "true"})
    assert 'value="25"' in first.text
    assert 'hx-trigger="load"' in first.text
    assert Routine.objects.count() == 25
    for _ in range(39):
        last = client.post(address, headers={"HX-Request": "true"})
    assert "1000 added" in last.text
    assert 'hx-trigger="load"' not in last.text
    assert Routine.objects.count() == 1000


def test_without_scripts_a_button_goes_on(owner, visit):
    client = visit(owner)
    upload(client, written(plans(30)))
    address = reverse("import_add", args=[ImportFile.objects.get().key])
    assert "Go on" in client.post(address).text
    assert "Go on" not in client.post(address).text
    assert Routine.objects.count() == 30


def test_going_on_after_the_end_adds_nothing(owner, visit):
    client = visit(owner)
    upload(client, written(plans(2)))
    for _ in range(3):
        client.post(reverse("import_add", args=[ImportFile.objects.get().key]))
    assert Routine.objects.count() == 2


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
    client.post(reverse("import_add", args=[ImportFile.objects.get().key]), {"into_bank": "1"})
    assert Routine.objects.get().status == "draft"


def test_a_draft_of_someone_else_is_not_exported_and_a_file_of_someone_else_not_added(owner, teammate, visit):
    draft = make_routine(owner, shared=False)
    for name in ("export_routine", "export_grid"):
        assert visit(teammate).get(reverse(name, args=[draft.pk])).status_code == 404
    upload(visit(owner), written(plans(1)))
    key = ImportFile.objects.get().key
    assert visit(teammate).get(reverse("import_look", args=[key])).status_code == 404
    assert visit(teammate).post(reverse("import_add", args=[key])).status_code == 404


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
