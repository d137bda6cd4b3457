"""A page says the same whether what it says was kept or is worked out for it, and asks the engine for nothing kept."""

import re

import pytest
from django.urls import reverse

from accounts.written_once import remembered
from routines import worked_out
from routines.demo.plans import PLANS
from routines.drawing import draw_grid, draw_timeline
from routines.drawing.pictures import NARROW, draw_picture
from routines.models import WorkedOut
from routines.models.shown_ideas import ideas_to_show
from routines.models.shown_plan import ShownPlan
from routines.plans.actions import copy_routine
from tests.routines.making import make_lesson, make_routine

NEW_FOR_EACH_PAGE = re.compile(r'"X-CSRFToken": "[^"]*"|name="\w+" value="[^"]{36,}"|\d\d:\d\d:\d\d\.\d+')
ONE_OF_EACH_AREA = list({demo.plan.area: demo.plan for demo in PLANS}.values())


def page_of(client, address: str, **headers) -> str:
    answer = client.get(address, headers=headers)
    assert answer.status_code == 200
    return NEW_FOR_EACH_PAGE.sub("", answer.content.decode())


@pytest.fixture
def routine(owner, teammate):
    routine = make_routine(owner)
    for step in ("8", "9"):
        count = routine.plan.count
        make_routine(teammate, title=f"By {step}", count=type(count)("whole", "4", step, 48), targets=())
    copy_routine(routine=routine, by=teammate).share()
    make_lesson(routine, owner, sharing="team")
    return routine


PAGES = [
    ("/bank/", {}),
    ("/bank/?grade=2", {}),
    ("/plans/", {}),
    ("/", {}),
    ("/routines/{0}/", {}),
    ("/routines/{0}/?lit=p0&lit=p3", {}),
    ("/routines/{0}/?lit=", {}),
    ("/routines/{0}/?lit=p2", {"HX-Request": "true", "HX-Target": "lit-grid"}),
    ("/routines/{0}/?layers=all&lit=", {"HX-Request": "true", "HX-Target": "lit-grid"}),
    ("/routines/{0}/?first=13", {}),
    ("/routines/{0}/", {"HX-Request": "true", "HX-Target": "pictures"}),
    ("/coverage/{1}/whole/", {}),
]


@pytest.mark.parametrize(("address", "headers"), PAGES)
def test_kept_and_new_are_the_same_to_the_letter(address, headers, routine, owner, visit, monkeypatch):
    client, at = visit(owner), address.format(routine.pk, routine.grade_id)
    assert not WorkedOut.objects.exists()
    new = page_of(client, at, **headers)
    assert WorkedOut.objects.exists()

    def never(*args, **options):
        raise AssertionError("Looked for patterns of a plan whose patterns are kept.")

    for name in ("routines.models.shown_plan.patterns_to_say", "routines.models.shown_ideas.ideas_of"):
        monkeypatch.setattr(name, never)
    monkeypatch.setattr("routines.worked_out.keeping._keep", never)
    assert page_of(client, at, **headers) == new  # remembered
    remembered.clear()
    assert page_of(client, at, **headers) == new  # kept


@pytest.mark.parametrize("plan", ONE_OF_EACH_AREA, ids=lambda plan: plan.area)
def test_it_is_what_the_engine_finds_and_the_drawing_draws(plan, owner, grade_two):
    """Beside the plan itself, asked directly."""
    routine = make_routine(owner, plan=plan.changed(grade="2"))
    save = worked_out.save_of(routine.newest_save, 6)
    worked_out.work_out(save)
    shown = ShownPlan(routine.plan, 6)
    grid, landmarks, best = shown.grid, shown.landmarks, [item.pattern for item in shown.lit]

    card = worked_out.cards([save])[0]()
    assert card.picture == draw_grid(grid, size="card", lit=best, landmarks=landmarks, beside_words=True)
    assert [line.statement for line in card.patterns] == [pattern.statement for pattern in best]

    page = worked_out.page(save)()
    overlays = [(item.key, item.pattern) for item in shown.listed]
    assert [(item.key, item.target, item.holds, item.statement, item.because) for item in page.patterns] == [
        (item.key, item.target, item.pattern.holds, item.pattern.statement, item.pattern.because)
        for item in shown.listed
    ]
    for keys, grids in [
        (set(page.lit), page.grids),
        ({"p0", "p2"}, worked_out.drawn_grids(shown, page.patterns, ["p0", "p2"])),
        ({"p0", "p7"}, worked_out.drawn_grids(shown, page.patterns, ["p0", "p7"])),
    ]:
        folded = [key for key, _ in overlays[6:]]
        lit = [pattern for key, pattern in overlays if key in keys]
        assert grids.phone == draw_grid(
            grid, size="phone", lit=lit, overlays=overlays, left_out=folded, landmarks=landmarks
        )
    whole = worked_out.drawn_grids(shown, page.patterns, page.lit, every=True)
    lit = [pattern for key, pattern in overlays if key in page.lit]
    assert whole.phone == draw_grid(grid, size="phone", lit=lit, overlays=overlays, landmarks=landmarks)
    ideas = ideas_to_show(grid, shown.audience, shown.target_claims) if shown.plan.stops else []
    stops = [stop.after for stop in shown.plan.stops]
    assert page.timeline == (draw_timeline(ideas, stops, grid.terms, count=grid.count) if ideas else "")
    assert page.pictures.narrow == draw_picture(
        grid.count, kind=page.picture, width=NARROW, language=shown.plan.language
    )
    assert page.rule == shown.rule


def test_nothing_that_people_wrote_is_kept(owner):
    """What is kept follows from numbers, claims and choices: no title, story, answer or word about children is in it."""
    planted = "Zebulina"
    plan = make_routine(owner).plan
    stop = type(plan.stops[0])(10, planted, planted, (planted,))
    target = type(plan.targets[0])(plan.targets[0].claim, planted)
    routine = make_routine(
        owner, title=planted, notes=planted, stops=(stop,), targets=(target,), story=type(plan.story)(planted, planted, "60")
    )  # fmt: skip
    save = worked_out.save_of(routine.newest_save, 2)
    assert planted not in repr((worked_out.cards([save])[0](), worked_out.page(save)()))


def test_the_bank_shows_the_picture_that_is_kept(routine, owner, visit):
    """Sees to it that the tests above compare what was kept at all."""
    says = worked_out.cards([worked_out.save_of(routine.newest_save, 2)])[0]()
    assert says.picture in visit(owner).get("/bank/").content.decode()
    page = worked_out.page(worked_out.save_of(routine.newest_save, 2))()
    assert page.grids.plan in visit(owner).get(reverse("routine", args=[routine.pk])).content.decode()
