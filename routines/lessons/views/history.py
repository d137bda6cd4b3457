"""Lessons that were taught: one's own, those of one of one's classes, and what colleagues shared."""

from django.core.paginator import Paginator
from django.http import HttpResponse
from django.shortcuts import get_object_or_404, render
from django.views.decorators.http import require_GET

from accounts.requests import SignedInRequest
from accounts.typed_numbers import typed_whole
from grade_bands.models import ClassGroup
from routines.models import Lesson

PAGE_SIZE = 30
SHARED_ON_A_PAGE = 12


@require_GET
def lessons(request: SignedInRequest) -> HttpResponse:
    """My own lessons, newest first, and what colleagues shared with me. `class` asks for one of my classes."""
    titled = Lesson.objects.with_titles_for(request.user).select_related("class_group", "reflection")
    own = titled.taught_by(request.user)
    classes = ClassGroup.objects.filter(teachers=request.user).with_people().in_grade_order()
    group = None
    if request.GET.get("class"):
        group = get_object_or_404(classes, pk=typed_whole(request.GET["class"], 1, 2**31 - 1))
        own = own.filter(class_group=group)
    shared = (
        titled.open_to(request.user).exclude(teacher=request.user).exclude(reflection=None).select_related("teacher")
    )
    context = {
        "section": "lessons",
        "page": Paginator(own, PAGE_SIZE).get_page(request.GET.get("page")),
        "classes": classes,
        "group": group,
        "shared": Paginator(shared, SHARED_ON_A_PAGE).get_page(request.GET.get("shared")) if group is None else None,
    }
    return render(request, "lessons/lessons.html", context)
