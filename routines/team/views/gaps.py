"""The gap in the coverage that an address names, for whoever sees the coverage of its grade."""

from django.http import Http404
from django.shortcuts import get_object_or_404
from django.utils import timezone

from accounts.requests import SignedInRequest
from grade_bands.models import Area, Grade, SchoolYear, Standard
from routines.coverage.behind import Field
from routines.coverage.queries import grades_seen_by


def gap_of_area(request: SignedInRequest, grade: int, area: str) -> Field:
    """Raises: Http404."""
    if area not in Area.values:
        raise Http404
    return Field(_grade_seen(request, grade), Area(area))


def gap_of_standard(request: SignedInRequest, grade: int, standard: int) -> Field:
    """Raises: Http404."""
    found = get_object_or_404(Standard, pk=standard)
    return Field(_grade_seen(request, grade), Area(found.area), found)


def _grade_seen(request: SignedInRequest, grade: int) -> Grade:
    year = SchoolYear.objects.on(timezone.localdate())
    if year is None:
        raise Http404
    found: Grade = get_object_or_404(grades_seen_by.queryset(request.user, year), pk=grade)
    return found
