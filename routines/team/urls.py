"""Addresses of what colleagues plan and suggest for each other."""

from django.urls import path

from routines.team.views import handing_on, home, notes, planned, suggestions, week

urlpatterns = [
    path("", home.home, name="home"),
    path("week/", week.week, name="week"),
    path("week/put-back/", planned.put_back, name="planned_put_back"),
    path("week/<int:pk>/move/", planned.move, name="planned_move"),
    path("week/<int:pk>/remove/", planned.remove, name="planned_remove"),
    path("routines/<int:pk>/week/", planned.put_in, name="planned_new"),
    path("routines/<int:pk>/suggest/", suggestions.suggest_count, name="suggest"),
    path("coverage/<int:grade>/<slug:area>/suggest/", suggestions.suggest_for_gap, name="suggest_for_gap"),
    path(
        "coverage/<int:grade>/standards/<int:standard>/suggest/",
        suggestions.suggest_for_standard,
        name="suggest_for_standard",
    ),
    path("coverage/<int:grade>/<slug:area>/week/", planned.put_in_for_gap, name="planned_for_gap"),
    path(
        "coverage/<int:grade>/standards/<int:standard>/week/",
        planned.put_in_for_standard,
        name="planned_for_standard",
    ),
    path("notes/<int:pk>/", notes.change, name="note_change"),
    path("notes/<int:pk>/remove/", notes.remove, name="note_remove"),
    path("suggestions/", suggestions.suggestions, name="suggestions"),
    path("suggestions/<int:pk>/answer/", suggestions.answer, name="suggestion_answer"),
    path("suggestions/<int:pk>/withdraw/", suggestions.withdraw, name="suggestion_withdraw"),
    path("school/people/<int:pk>/hand-on/", handing_on.hand_on, name="hand_on"),
]
