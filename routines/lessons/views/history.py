"""Lessons that were taught: one's own, those of one of one's classes, and what colleagues shared."""

from typing import Any

from django.db.models import QuerySet
from django.http import Http404, HttpResponse
from django.shortcuts import render
from django.views.decorators.http import require_GET

from accounts.compiled_once import compiled_once
from accounts.listed import Part, how_many, listed_page
from accounts.models import User
from accounts.requests import SignedInRequest
from accounts.typed_numbers import typed_whole
from grade_bands.models import ClassGroup
from routines.lessons.lines import COLUMNS, Line, own_lines, shared_lines
from routines.models import Lesson
from routines.models.lesson import LessonQuerySet

PAGE_SIZE = 30
SHARED_ON_A_PAGE = 12


@require_GET
def lessons(request: SignedInRequest) -> HttpResponse:
    """My own lessons, newest first, and what colleagues shared with me. `class` asks for one of my classes."""
    classes = _classes_of(request.user)
    group = None
    if request.GET.get("class"):
        asked = typed_whole(request.GET["class"], 1, 2**31 - 1)
        group = next((one for one in classes if one.pk == asked), None)
        if group is None:
            raise Http404
    own = listed_page(Line, _own, request.user, group, size=PAGE_SIZE, asked=request.GET.get("page"))
    shared = None
    if group is None:
        shared = listed_page(Line, _shared, request.user, size=SHARED_ON_A_PAGE, asked=request.GET.get("shared"))
    context = {
        "section": "lessons",
        "page": own,
        "own_lines": own_lines(own),
        "classes": classes,
        "group": group,
        "shared": shared,
        "shared_lines": shared_lines(shared) if shared else "",
    }
    return render(request, "lessons/lessons.html", context)


@compiled_once
def _classes_of(teacher: User) -> QuerySet[ClassGroup]:
    return ClassGroup.objects.taught_by(teacher).select_related("grade", "year").in_grade_order()


@compiled_once
def _own(teacher: User, group: ClassGroup | None, *, part: Part) -> QuerySet[Any, Any]:
    own = Lesson.objects.taught_by(teacher)
    return _part(own.filter(class_group=group) if group else own, teacher, part)


@compiled_once
def _shared(reader: User, *, part: Part) -> QuerySet[Any, Any]:
    return _part(Lesson.objects.open_to(reader).exclude(teacher=reader).exclude(reflection=None), reader, part)


def _part(lessons: LessonQuerySet, reader: User, part: Part) -> QuerySet[Any, Any]:
    if part is None:
        return lessons.order_by().values("pk")
    lines = lessons.with_titles_for(reader).values_list(*COLUMNS, how_many(lessons))
    return lines[part[0] : part[1]]
