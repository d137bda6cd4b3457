"""No page asks for a thing that is not there, and none writes an error into the browser's log."""

import re
from urllib.parse import urljoin

import pytest
from django.urls import get_resolver
from django.utils import timezone

from accounts.actions import invite, offer_new_passphrase
from accounts.models import School
from grade_bands.actions import load_standards
from grade_bands.models import Standard
from routines.plans.actions import copy_routine
from routines.team.planning import put_in_the_week
from routines.team.suggesting import suggest
from tests.config.test_urls import patterns
from tests.factories import UserFactory
from tests.routines.making import make_lesson, make_routine

pytestmark = pytest.mark.django_db(transaction=True)

# What a page names but a browser without a window may not fetch: icons, and maps of scripts and styles.
NAMED = (
    "[...document.querySelectorAll('link[href], script[src], img[src], source[src]')].map(one => one.href || one.src)"
)
MAP = re.compile(r"sourceMappingURL=(\S+?)(?:\s|\*/|$)")


class Watched:
    """A page that remembers every answer over 399, every request that failed, and every error in its log."""

    def __init__(self, page) -> None:
        self.page, self.wrong, self.named = page, [], set()
        page.on(
            "response", lambda answer: self.wrong.append(f"{answer.status} {answer.url}") if answer.status > 399 else 0
        )
        page.on("requestfailed", self.failed)
        page.on(
            "console", lambda line: self.wrong.append(f"log: {line.text}") if line.type in ("error", "warning") else 0
        )
        page.on("pageerror", lambda error: self.wrong.append(f"error: {error}"))

    def failed(self, request) -> None:
        # A page that is left breaks off what it was asking for: a board asks every second.
        if request.failure != "net::ERR_ABORTED" or "/events/" not in request.url:
            self.wrong.append(f"failed: {request.url} {request.failure}")

    def visit(self, address: str) -> None:
        self.page.goto(address, wait_until="networkidle")
        self.named |= set(self.page.evaluate(NAMED))

    def everything_wrong(self, live_server) -> list[str]:
        """With what the pages named: icons, and the maps that their scripts and styles name."""
        asked = [*sorted(self.named), f"{live_server.url}/favicon.ico"]
        for address in asked:
            answer = self.page.request.get(address)
            if not answer.ok:
                self.wrong.append(f"{answer.status} {address}")
            if address.split("?")[0].endswith((".js", ".css")):
                for found in MAP.findall(answer.text()):
                    asked.append(urljoin(address, found))
        return self.wrong


@pytest.fixture
def school_life(owner, teammate, coach, administrator, grade_two, year):
    """What addresses need to lead to a page; `pks`: of those that lead to something else than the count."""
    load_standards()
    routine = make_routine(owner)
    copy = copy_routine(routine=routine, by=owner)
    lesson = make_lesson(routine, owner, sharing="team")
    planned, _ = put_in_the_week(
        routine=routine, class_group=owner.class_groups.get(), on=timezone.localdate(), by=owner
    )
    suggestion = suggest(routine=routine, by=coach, why="For the fair.", by_when=None, to={"to_teacher": owner})
    note = routine.notes.create(by=owner, text="Chant it first.")
    pks = {"planned_move": planned.pk, "suggestion_withdraw": suggestion.pk}
    pks |= {"note_change": note.pk, "note_remove": note.pk, "routine_compare": copy.pk}
    pks |= {"hand_on": UserFactory(display_name="Leaver Lund", is_active=False).pk}
    return {"routine": routine, "lesson": lesson, "pks": pks}


def pages_for(school_life, grade, year) -> list[str]:
    """Every address of the URLconf, in its order."""
    pks = {"edit_grade": grade.pk, "edit_year": year.pk, "edit_band": grade.band_id, "carry_over": year.pk}
    group = grade.class_groups.first().pk
    pks |= {"edit_class": group, "remove_class": group, "remove_year": year.pk, **school_life["pks"]}
    values = {
        "<uuid:key>": str(school_life["lesson"].key),
        "<int:grade>": str(grade.pk),
        "<slug:area>": "whole",
        "<int:standard>": str(Standard.objects.filter(grade=grade).first().pk),
        "<slug:name>": "plan",
        "<str:token>": "none",
    }
    made = []
    for path, entry in patterns(get_resolver()):
        filled = path.replace("<int:pk>", str(pks.get(entry.name, school_life["routine"].pk)))
        for part, value in values.items():
            filled = filled.replace(part, value)
        made.append(f"/{filled}")
    return made


@pytest.mark.parametrize("name", ["owner", "administrator"])
def test_no_page_misses_anything(request, open_as, visit, live_server, school_life, grade_two, year, name):
    person = request.getfixturevalue(name)
    client = visit(person)
    page = Watched(open_as(person))
    seen = 0
    for address in pages_for(school_life, grade_two, year):
        answer = client.get(address)
        if answer.status_code == 200 and answer["Content-Type"].startswith("text/html"):
            page.visit(address)
            seen += 1
    assert seen > (15 if name == "owner" else 20)
    assert page.everything_wrong(live_server) == []


def test_neither_does_a_page_for_the_signed_out(open_as, live_server, owner, administrator):
    page = Watched(open_as(None))
    page.visit("/sign-in/")
    page.visit(f"/invitation/{invite(by=administrator, display_name='New', role='teacher')}/")
    page.visit(f"/new-passphrase/{offer_new_passphrase(by=administrator, person=owner)}/")
    assert page.everything_wrong(live_server) == []


def test_neither_does_the_first_page_of_an_empty_server(open_as, live_server, school):
    page = Watched(open_as(None))
    School.objects.all().delete()
    page.visit("/set-up/")
    assert page.everything_wrong(live_server) == []
