"""The page that the class sees, and the service worker that keeps it for a reload without network."""

import uuid
from pathlib import Path

from django.contrib.staticfiles import finders
from django.http import Http404, HttpRequest, HttpResponse
from django.shortcuts import get_object_or_404, render
from django.urls import reverse
from django.views.decorators.http import require_GET

from django.contrib.auth.decorators import login_not_required
from routines.lessons.words import board_words
from routines.models import Lesson


@require_GET
def board(request: HttpRequest, key: uuid.UUID) -> HttpResponse:
    """The empty board: count and events come as JSON, so that nothing unwritten stands in the page."""
    lesson = get_object_or_404(Lesson.objects.taught_by(request.user).select_related("version", "grade"), key=key)
    context = {
        "lesson": lesson,
        "title": lesson.version.read_plan().title,
        "words": board_words(),
        "addresses": {
            "count": reverse("board_json", args=[lesson.key]),
            "events": reverse("lesson_events", args=[lesson.key]),
            "worker": reverse("lesson_worker"),
        },
    }
    return render(request, "lessons/board.html", context)


@require_GET
@login_not_required
def worker(request: HttpRequest) -> HttpResponse:
    """The service worker, under /lessons/ because a worker answers for pages beneath its own address only."""
    path = finders.find("js/lesson/worker.js")
    if path is None:
        raise Http404
    answer = HttpResponse(Path(path).read_bytes(), content_type="text/javascript")
    answer["Cache-Control"] = "no-cache"
    return answer
