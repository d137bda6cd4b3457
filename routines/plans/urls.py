"""Addresses of the plan page."""

from django.urls import path

from routines.plans import views

urlpatterns = [
    path("plans/worth-teaching/", views.worth_teaching, name="worth_teaching"),
    path("plans/new/", views.new, name="plan_new"),
    path("plans/new/<uuid:key>/preview/", views.preview, name="plan_preview"),
    path("plans/new/<uuid:key>/", views.edit, name="plan_edit"),
    path("plans/new/<uuid:key>/draft/", views.draft, name="plan_draft"),
    path("plans/new/<uuid:key>/drop/", views.drop_draft, name="plan_drop"),
    path("plans/new/<uuid:key>/change/", views.change, name="plan_change"),
    path("plans/new/<uuid:key>/part/<slug:name>/", views.part, name="plan_part"),
    path("routines/<int:pk>/edit/", views.edit, name="plan_edit"),
    path("routines/<int:pk>/edit/part/<slug:name>/", views.part, name="plan_part"),
    path("routines/<int:pk>/edit/preview/", views.preview, name="plan_preview"),
    path("routines/<int:pk>/edit/draft/", views.draft, name="plan_draft"),
    path("routines/<int:pk>/edit/drop/", views.drop_draft, name="plan_drop"),
    path("routines/<int:pk>/edit/change/", views.change, name="plan_change"),
    path("routines/<int:pk>/edit/merge/", views.merge, name="plan_merge"),
    path("routines/<int:pk>/edit/history/", views.history, name="plan_history"),
    path("routines/<int:pk>/edit/restore/", views.restore, name="plan_restore"),
]
