"""Addresses of lessons."""

from django.urls import path

from routines.lessons.views import log

urlpatterns = [
    path("routines/<int:pk>/taught/", log.taught, name="lesson_taught"),
    path("lessons/", log.lessons, name="lessons"),
    path("lessons/<uuid:key>/", log.lesson, name="lesson"),
]
