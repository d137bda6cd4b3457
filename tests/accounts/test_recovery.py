"""The recovery code on paper: the way back in for an administrator whom nobody else can let in."""

import re
from datetime import timedelta

import pytest
from django.test import Client
from django.utils import timezone

from accounts.models import CodeTries, RecoveryCode, User
from accounts.recovery import CodeRefused, make_recovery_code, recover
from tests.at_once import at_once
from tests.factories import UserFactory

OWN = "otter violin sandwich moon"
NEW = "lantern gravel piano thunder"
WRONG = "aaaa-bbbb-cccc-dddd-eeee-ffff"


@pytest.fixture
def head(school) -> User:
    return UserFactory(sign_in_name="head", display_name="Hana Head", administrator=True, passphrase=OWN)


@pytest.fixture
def code(head) -> str:
    return make_recovery_code(by=head)


def answers(code: str, **other: str) -> dict[str, str]:
    return {"name": "head", "pass_code": code, "passphrase": NEW, "passphrase_again": NEW, **other}


def code_on(page: str) -> str:
    return re.search(r'class="recovery-code">([a-z0-9-]+)<', page)[1]


def test_the_printed_code_lets_in_with_a_new_passphrase(visit, head, signed_out):
    paper = visit(head).post("/school/recovery-code/", {"current": OWN})
    assert "no-store" in paper["Cache-Control"]
    assert "http://testserver/recovery/" in paper.text
    assert "Hana Head (head)" in paper.text
    answer = signed_out.post("/recovery/", answers(code_on(paper.text).upper().replace("-", " ")))
    assert (answer.status_code, answer["Location"]) == (302, "/school/recovery-code/")
    assert "One was used on" in signed_out.get("/school/recovery-code/").text
    assert User.objects.get(pk=head.pk).check_password(NEW)


def test_it_works_once(signed_out, head, code):
    signed_out.post("/recovery/", answers(code))
    again = Client().post("/recovery/", answers(code, passphrase=OWN, passphrase_again=OWN))
    assert again.status_code == 422
    assert "the code was used" in again.text
    assert User.objects.get(pk=head.pk).check_password(NEW)


@pytest.mark.django_db(transaction=True)
def test_of_two_at_once_one_gets_through(head, code):
    def one(passphrase: str) -> str:
        try:
            recover(person=User.objects.get(pk=head.pk), code=code, passphrase=passphrase)
        except CodeRefused:
            return ""
        return passphrase

    (through,) = [passphrase for passphrase in at_once(lambda: one(OWN), lambda: one(NEW)) if passphrase]
    assert User.objects.get(pk=head.pk).check_password(through)


def test_a_new_one_takes_the_place_of_the_old(signed_out, head, code):
    newer = make_recovery_code(by=head)
    assert signed_out.post("/recovery/", answers(code)).status_code == 422
    assert signed_out.post("/recovery/", answers(newer)).status_code == 302


def test_only_its_hash_is_kept(code):
    (row,) = RecoveryCode.objects.values_list("code_hash", flat=True)
    assert code not in row
    assert code.replace("-", "") not in row
    assert len(code.replace("-", "")) == 24


def test_sessions_from_before_end(visit, head, code, signed_out):
    before = visit(head)
    signed_out.post("/recovery/", answers(code))
    assert before.get("/me/").status_code == 302
    assert signed_out.get("/me/").status_code == 200


@pytest.mark.parametrize("who", ["teacher", "coach", "left", "unknown"])
def test_it_lets_in_administrators_only_and_does_not_say_who_is_one(signed_out, code, who):
    if who != "unknown":
        UserFactory(sign_in_name=who, role="administrator" if who == "left" else who, is_active=who != "left")
    refused = signed_out.post("/recovery/", answers(code, name=who))
    wrong_code = signed_out.post("/recovery/", answers(WRONG))
    sentence = "Name and code don&#x27;t go together, or the code was used. It works for administrators only."
    for page in (refused, wrong_code):
        assert page.status_code == 422
        assert sentence in page.text
        assert NEW not in page.text
    assert RecoveryCode.objects.usable().exists()


def test_a_weak_passphrase_uses_nothing_up(signed_out, head, code):
    for _try in range(12):  # the right code may be mended as often as it takes
        weak = signed_out.post("/recovery/", answers(code, passphrase="short", passphrase_again="short"))
        assert weak.status_code == 422
    assert signed_out.post("/recovery/", answers(code)).status_code == 302


def test_guesses_are_slowed_down_by_address(head, code):
    for _try in range(8):
        assert Client(REMOTE_ADDR="10.1.1.1").post("/recovery/", answers(WRONG)).status_code == 422
    locked = Client(REMOTE_ADDR="10.1.1.1").post("/recovery/", answers(code))
    assert locked.status_code == 429
    assert "Wait 15 minutes" in locked.text
    assert Client(REMOTE_ADDR="10.1.1.2").post("/recovery/", answers(code)).status_code == 302


def test_guesses_from_many_addresses_are_counted_in_all_and_the_wait_ends(head, code):
    for number in range(60):
        Client(REMOTE_ADDR=f"10.1.1.{number}").post("/recovery/", answers(WRONG))
    assert Client(REMOTE_ADDR="10.2.2.2").post("/recovery/", answers(code)).status_code == 429
    tries = CodeTries.objects.filter(door="recovery", address="")
    tries.update(since=tries.get().since - timedelta(minutes=15))
    assert Client(REMOTE_ADDR="10.2.2.2").post("/recovery/", answers(code)).status_code == 302


def test_making_one_asks_for_the_passphrase_and_its_guesses_are_slowed_down(visit, head, code):
    browser = visit(head)
    for number in range(7):
        assert browser.post("/school/recovery-code/", {"current": f"{WRONG} {number}"}).status_code == 422
    for current in (WRONG, OWN):
        locked = browser.post("/school/recovery-code/", {"current": current})
        assert locked.status_code == 429
        assert "Wait a quarter of an hour" in locked.text
    assert RecoveryCode.objects.usable().for_typed(code).exists()


def test_nobody_else_makes_one(visit, owner, coach):
    for person in (owner, coach):
        assert visit(person).get("/school/recovery-code/").status_code == 403
        assert visit(person).post("/school/recovery-code/", {"current": OWN}).status_code == 403


def test_first_page_and_people_page_advise_two_administrators_and_a_code(visit, head):
    def advice() -> tuple[bool, bool]:
        page = visit(head).get("/").text
        alone = "Two are better" in page
        assert ("You are the only administrator" in visit(head).get("/school/people/").text) == alone
        return alone, "There is no recovery code on paper yet" in page

    assert advice() == (True, True)
    make_recovery_code(by=head)
    assert advice() == (True, False)
    UserFactory(administrator=True)
    assert advice() == (False, False)


def test_in_the_demo_school_there_is_nothing_to_recover(visit, administrator, school):
    school.is_demo = True
    school.save()
    page = visit(administrator).get("/school/recovery-code/").text
    assert "nothing to recover" in page
    assert "no recovery code" not in visit(administrator).get("/").text


def test_other_administrators_are_told_that_it_was_used(visit, head, code, signed_out):
    other = UserFactory(administrator=True)
    assert "with the recovery code" not in visit(other).get("/").text
    sent = {"name": head.sign_in_name, "pass_code": code, "passphrase": NEW, "passphrase_again": NEW}
    assert signed_out.post("/recovery/", sent).status_code == 302
    assert f"{head.display_name} came in with the recovery code" in visit(other).get("/").text
    RecoveryCode.objects.filter(used_by=head).update(used_at=timezone.now() - timedelta(days=31))
    assert "with the recovery code" not in visit(other).get("/").text
