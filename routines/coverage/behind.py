"""What stands behind one field of the coverage: the counts of the bank, and the lessons that took place (never what was
written).
"""

from dataclasses import dataclass
from typing import Any

from django.core.paginator import Paginator
from django.http import HttpResponse
from django.shortcuts import render

from accounts.models import User
from accounts.requests import SignedInRequest
from grade_bands.models import Area, Grade, Standard
from routines.bank.cards import cards_of
from routines.coverage.forms import Window, WindowForm
from routines.coverage.patterns import patterns_seen
from routines.coverage.ways import Ways
from routines.models import Lesson, Routine
from routines.models.routine import tell_times_taught

PAGE_SIZE = 60
CARDS_SHOWN = 12


@dataclass(frozen=True, slots=True)
class Field:
    """A grade with an area, or with a standard where there is one."""

    grade: Grade
    area: Area
    standard: Standard | None = None

    @property
    def name(self) -> str:
        return self.standard.code if self.standard else str(self.area.label)

    @property
    def ways(self) -> Ways:
        return Ways.for_standard(self.grade, self.standard) if self.standard else Ways.for_area(self.grade, self.area)

    def of_lessons(self, window: Window) -> dict[str, Any]:
        about = {"routine__standards": self.standard} if self.standard else {"area": self.area}
        by_class = {"class_group": window.class_group} if window.class_group else {}
        days = {"year": window.year, "taught_on__range": (window.first, window.last)}
        return {"grade": self.grade, **about, **by_class, **days}

    def of_routines(self) -> dict[str, Any]:
        return {"grade": self.grade, **({"standards": self.standard} if self.standard else {"area": self.area})}


def behind(request: SignedInRequest, field: Field, form: WindowForm, window: Window) -> HttpResponse:
    looked_at = field.of_lessons(window)
    lessons = (
        Lesson.objects.known_to(request.user)
        .counted()
        .filter(**looked_at)
        .with_titles_for(request.user)
        .select_related("class_group")
    )
    page = Paginator(lessons, PAGE_SIZE).get_page(request.GET.get("page"))
    logs = Lesson.objects.open_to(request.user).counted().filter(**looked_at)
    sees_lessons = not request.user.is_administrator
    patterns, read = patterns_seen(logs) if sees_lessons and page.paginator.count else ([], 0)
    routines = Routine.objects.in_bank().filter(**field.of_routines())
    first_ones = list(routines.as_cards()[:CARDS_SHOWN])
    tell_times_taught(first_ones, request.user, form.this_year)
    context = {
        "section": "coverage",
        "field": field,
        "grade": field.grade,
        "ways": field.ways,
        "window": window,
        "cards": cards_of(first_ones, reader=request.user, may_teach=request.user.class_groups.exists()),
        "more": max(0, routines.count() - CARDS_SHOWN),
        "page": page,
        "sees_lessons": sees_lessons,
        "patterns": patterns,
        "read": read,
        "may_suggest": not request.user.is_administrator,
        "main_way": "suggest" if request.user.is_coach else "design",
        "may_plan": request.user.role == User.Role.TEACHER,
        "not_shared": max(0, page.paginator.count - read),
    }
    return render(request, "coverage/cell.html", context)
