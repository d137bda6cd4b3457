"""The rooms' addresses together."""

from django.urls import include, path

ROOMS = ("bank", "plans", "lessons", "coverage", "team", "erasing", "paper", "exchange", "own_words")

urlpatterns = [path("", include(f"routines.{room}.urls")) for room in ROOMS]
