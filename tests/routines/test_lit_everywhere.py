"""The same plan lights the same patterns wherever it is drawn, until somebody lights others."""

import re
from functools import partial
from html import unescape

import pytest
from django.urls import reverse

from accounts.text import read_json
from routines.counting import Claim
from routines.demo.plans import PLANS
from routines.models import Routine
from routines.models.plan_document import Target
from routines.models.shown_plan import ShownPlan
from routines.paper import picture
from routines.paper.follow_up import follow_up_sheets, patterns_to_use
from routines.paper.plan_page import plan_sheet
from routines.paper.poster import poster_sheets
from routines.paper.subject import Subject
from routines.paper.substitute import substitute_sheet
from routines.plans.actions import start_routine
from routines.plans.forms.draft import fields_of
from routines.templatetags import countfold
from routines.worked_out import says

pytestmark = pytest.mark.django_db

HTMX = {"HTTP_HX_REQUEST": "true"}
BOX = re.compile(r"<input[^>]* name=\"(lit|lit_before|lit_by_itself|target|words_of|words)\"[^>]*>")
targets = pytest.mark.parametrize("targets", [True, False], ids=["with targets", "without"])
plans = pytest.mark.parametrize("demo", PLANS[::4], ids=lambda demo: demo.key)


@pytest.fixture
def drawn(monkeypatch):
    """What was lit in each drawing of a size since it was asked last, as claims."""
    seen: list[tuple[str, list[object]]] = []

    def noting(draw):
        def draw_grid(grid, *, size, lit=(), **options):
            seen.append((size, [pattern.claim for pattern in lit]))
            return draw(grid, size=size, lit=lit, **options)

        return draw_grid

    monkeypatch.setattr(countfold.drawing, "draw_grid", noting(countfold.drawing.draw_grid))
    monkeypatch.setattr(picture, "draw_grid", noting(picture.draw_grid))
    monkeypatch.setattr(says, "draw_grid", noting(says.draw_grid))

    def since(size: str) -> list[list[object]]:
        taken = [lit for of_size, lit in seen if of_size == size]
        seen.clear()
        return taken

    return since


@pytest.fixture
def made(owner):
    def make(demo, targets: bool) -> Routine:
        plan = demo.plan.changed(grade="2", standards=(), **({} if targets else {"targets": ()}))
        routine = start_routine(plan=plan, by=owner)
        routine.share()
        return Routine.objects.for_cards().get(pk=routine.pk)

    return make


def boxes_of(page: str) -> dict[str, list[str]]:
    """The list's fields as a browser sends them: a box only where it is checked."""
    sent: dict[str, list[str]] = {}
    for box in BOX.finditer(page):
        if 'type="checkbox"' not in box[0] or " checked" in box[0]:
            value = re.search(r'value="([^"]*)"', box[0])
            sent.setdefault(box[1], []).append(unescape(value[1]) if value else "")
    return sent


@targets
@plans
def test_a_plan_lights_the_same_wherever_it_is_drawn(demo, targets, owner, school, visit, made, drawn):
    routine, client = made(demo, targets), visit(owner)
    lit = [item.pattern.claim for item in ShownPlan(routine.plan, 2).lit]
    assert lit

    client.get(reverse("routine", args=[routine.pk]))
    assert drawn("plan") == [lit]
    client.get(reverse("bank"))
    assert drawn("card") == [lit]

    page = client.get(reverse("plan_edit", kwargs={"pk": routine.pk})).text
    assert drawn("plan") == [lit]
    typed = {**fields_of(routine.plan), **boxes_of(page)}
    client.post(reverse("plan_preview", kwargs={"pk": routine.pk}), typed, **HTMX)
    assert drawn("plan") == [lit]
    client.post(reverse("plan_draft", kwargs={"pk": routine.pk}), typed)  # what a browser without scripts presses
    client.get(reverse("plan_edit", kwargs={"pk": routine.pk}))
    assert drawn("plan") == [lit]

    subject = Subject(routine.newest_save, school)
    for sheets in (plan_sheet, substitute_sheet, partial(poster_sheets, lit=True)):
        sheets(subject)
        assert drawn("print") == [lit]
    follow_up_sheets(subject)
    assert drawn("print") == [[], lit]  # the questions give nothing away, the answers light what finds them
    assert targets or [pattern.claim for pattern in patterns_to_use(subject.shown)] == lit


@plans
def test_a_suggestion_taken_lights_as_in_the_plan_it_makes(demo, owner, visit, made, drawn):
    """Of what nobody lit, with scripts and without."""
    routine, client = made(demo, targets=False), visit(owner)
    page = client.get(reverse("plan_edit", kwargs={"pk": routine.pk})).text
    boxes = re.findall(r'name="target" value="([^"]*)"', page)
    taken = unescape(boxes[-1])
    typed = {**fields_of(routine.plan), **boxes_of(page), "change": f"target.add {taken}"}
    drawn("plan")
    address = reverse("plan_change", kwargs={"pk": routine.pk})
    client.post(address, typed, **HTMX)
    with_scripts = drawn("plan")
    client.post(address, typed)
    client.get(reverse("plan_edit", kwargs={"pk": routine.pk}))
    without = drawn("plan")
    with_target = routine.plan.changed(targets=(Target(read_json(taken)),))
    lit = [item.pattern.claim for item in ShownPlan(with_target, 2).lit]
    assert Claim.from_dict(read_json(taken)) in lit
    assert with_scripts == without == [lit]


def test_what_somebody_lit_stays_lit_without_scripts_the_newest_before_the_older(owner, visit, made, drawn):
    """Three boxes checked, as a page without scripts lets one do: of the two that hold alike the older goes out."""
    routine, client = made(PLANS[0], targets=False), visit(owner)
    address = reverse("plan_edit", kwargs={"pk": routine.pk})
    page = client.get(address).text
    boxes = boxes_of(page)
    unlit = [
        unescape(value) for value in re.findall(r'name="lit" value="([^"]+)" id="[^"]*" aria[^>]*"(?! checked)>', page)
    ]
    newest = next(value for value in unlit if value not in boxes["lit"])
    typed = {**fields_of(routine.plan), **boxes, "lit": [*boxes["lit"], newest]}
    client.post(reverse("plan_draft", kwargs={"pk": routine.pk}), typed)
    drawn("plan")
    client.get(address)
    (lit,) = drawn("plan")
    assert len(lit) == 2
    assert Claim.from_dict(read_json(newest)) in lit
