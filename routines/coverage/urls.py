"""Addresses of coverage."""

from django.urls import path

from routines.coverage import files, views

urlpatterns = [
    path("coverage/", views.coverage_page, name="coverage"),
    path("coverage/coverage.csv", files.coverage_csv, name="coverage_csv"),
    path("coverage/<int:grade>/<slug:area>/", views.cell, name="coverage_cell"),
]
