"""A lesson again, moment by moment, for those who may read its log."""

from uuid import UUID

from django.http import HttpResponse
from django.shortcuts import get_object_or_404, render
from django.views.decorators.http import require_GET
from django.views.decorators.vary import vary_on_headers

from accounts.fragments import wants_fragment
from accounts.requests import SignedInRequest
from accounts.typed_numbers import typed_whole
from routines.lessons.drawn import cells_on_board, ink_of
from routines.lessons.moments import moments_of, state_at
from routines.lessons.shown_count import shown_of
from routines.models import Lesson
from routines.models.facts import count_in_words


@require_GET
@vary_on_headers("HX-Request", "HX-History-Restore-Request")
def replay(request: SignedInRequest, key: UUID) -> HttpResponse:
    """`moment` counts from 0, before the first count. Every step is a link; a script steps by key."""
    lesson = get_object_or_404(
        Lesson.objects.open_to(request.user)
        .with_titles_for(request.user)
        .select_related("version", "class_group", "teacher", "grade"),
        key=key,
    )
    shown = shown_of(lesson)
    stored = [event.as_dict() for event in lesson.events.all()]
    ordered, moments = moments_of(stored, shown.plan, shown.grid.count)
    at = typed_whole(request.GET.get("moment", ""), 0, len(moments) - 1) or 0
    state = state_at(ordered, moments[at])
    context = {
        "section": "lessons",
        "lesson": lesson,
        "shown": shown,
        "count": count_in_words(shown.grid),
        "moments": list(enumerate(moments)),
        "now": moments[at],
        "at": at,
        "last": len(moments) - 1,
        "before": at - 1 if at else None,
        "after": at + 1 if at + 1 < len(moments) else None,
        "next_slip": next((i for i, moment in enumerate(moments) if i > at and moment.sort == "slip"), None),
        "entries": cells_on_board(state, shown.grid.count),
        "ink": ink_of(state, shown.grid),
        "phrases": [phrase["text"] for phrase in state.phrases],
        "wide": shown.grid.columns > 7,
    }
    return render(request, "lessons/_replay.html" if wants_fragment(request) else "lessons/replay.html", context)
