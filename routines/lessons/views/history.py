"""Lessons that were taught: one's own, those of one of one's classes, and what colleagues shared."""

from typing import Any

from django.db.models import QuerySet
from django.http import Http404, HttpResponse
from django.shortcuts import render
from django.views.decorators.http import require_GET

from accounts.compiled_once import compiled_once
from accounts.listed import Listed, Part
from accounts.models import User
from accounts.requests import SignedInRequest
from accounts.typed_numbers import typed_whole
from grade_bands.models import ClassGroup
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
    own, shared = Listed(_own, request.user, group), Listed(_shared, request.user)
    context = {
        "section": "lessons",
        "page": own.page(PAGE_SIZE, request.GET.get("page")),
        "classes": classes,
        "group": group,
        "shared": shared.page(SHARED_ON_A_PAGE, request.GET.get("shared")) if group is None else None,
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
    titled = lessons.with_titles_for(reader).select_related("class_group", "reflection", "teacher")
    return titled[part[0] : part[1]]
