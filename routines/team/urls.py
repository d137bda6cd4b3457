"""Addresses of the planned week."""

from django.urls import path

from routines.team.views import planned, week

urlpatterns = [
    path("week/", week.week, name="week"),
    path("week/put-back/", planned.put_back, name="planned_put_back"),
    path("week/<int:pk>/move/", planned.move, name="planned_move"),
    path("week/<int:pk>/remove/", planned.remove, name="planned_remove"),
    path("routines/<int:pk>/week/", planned.put_in, name="planned_new"),
]
