"""A printed page draws its grid once, however many places are tried for it, and reads its count once."""

import pytest
from django.urls import reverse

from routines.counting import Count
from routines.models import plan_document
from routines.paper import picture
from tests.routines.making import make_routine
from tests.routines.paper.plans import FULL


@pytest.mark.parametrize("name", ["plan", "substitute", "poster"])
def test_a_sheet_draws_its_grid_once(owner, visit, monkeypatch, name):
    drawn = []

    def drawing(*args, **options):
        drawn.append(options["title"])
        return draw(*args, **options)

    draw = picture.draw_grid
    monkeypatch.setattr(picture, "draw_grid", drawing)
    assert visit(owner).get(reverse("print_html", args=[make_routine(owner, plan=FULL).pk, name])).status_code == 200
    assert len(drawn) == 1


@pytest.mark.parametrize("address", ["/routines/{}/print/plan/", "/routines/{}/edit/", "/routines/{}/"])
def test_a_page_reads_its_count_once(owner, visit, monkeypatch, address):
    routine = make_routine(owner, plan=FULL)
    read = []

    def reading(cls, **typed):
        read.append((typed["kind"], typed["start"], typed["step"], typed["terms"]))
        return parse(**typed)

    parse = Count.parse
    monkeypatch.setattr(Count, "parse", classmethod(reading))
    plan_document._parsed.cache_clear()
    assert visit(owner).get(address.format(routine.pk)).status_code == 200
    assert len(read) == len(set(read))
    assert ("whole", "4", "7", 20) in read
