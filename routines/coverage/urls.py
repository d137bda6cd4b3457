"""Addresses of coverage."""

from django.urls import path

from routines.coverage import files, views

urlpatterns = [
    path("coverage/", views.coverage_page, name="coverage"),
    path("coverage/coverage.csv", files.coverage_csv, name="coverage_csv"),
    path("coverage/coverage.pdf", files.coverage_pdf, name="coverage_pdf"),
    path("coverage/print/", files.coverage_print, name="coverage_print"),
    path("coverage/<int:grade>/<slug:area>/", views.cell, name="coverage_cell"),
]
