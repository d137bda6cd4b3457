"""Addresses of coverage."""

from django.urls import path

from routines.coverage import views

urlpatterns = [
    path("coverage/", views.coverage_page, name="coverage"),
    path("coverage/<int:grade>/<slug:area>/", views.cell, name="coverage_cell"),
]
